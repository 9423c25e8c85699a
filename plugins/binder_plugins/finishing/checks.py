"""Finishes to findings: does the material take it, and does the heat do what is wanted."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.finishing import codes
from binder_plugins.finishing.coat_checks import check_coats
from binder_plugins.finishing.heat_checks import check_heat
from binder_plugins.finishing.processes import processes
from binder_plugins.finishing.treated import Treated, treated

_FLAME = ("silver_soldered", "shrunk")
_JOINED = ("solder", "braz", "weld")


def check_finishes(design: Design) -> Iterator[Diagnostic]:
    """All findings about finishes and heat treatment."""
    for one in treated(design):
        yield from _metal(one)
        yield from _hardening(one)
        yield from _flame(one, design)
        yield from check_heat(one, design)
        yield from check_coats(one, design)
        if not one.processes:
            yield codes.FINISH_UNKNOWN.at(
                one.at,
                f"no process is known for '{_short(one.text)}'",
                help="use a word of the trade, as `painted` or `polished`",
            )


def _metal(one: Treated) -> Iterator[Diagnostic]:
    group = one.material.group if one.material is not None else ""
    for process in one.processes:
        if process.takes(group):
            continue
        others = [other.name for other in processes() if other.on and other.takes(group)]
        yield codes.FINISH_ON_WRONG_METAL.at(
            one.at,
            f"{group} does not take {process.name}",
            help=f"it takes {', '.join([*others, 'polish'])}, or paint",
        )


def _hardening(one: Treated) -> Iterator[Diagnostic]:
    if not one.is_hardened or one.heat is None:
        return
    if one.is_case:
        if one.heat.case is None:
            yield _no_case(one)
        return
    if not one.heat.hardens:
        way = "write `case hardened`, or " if one.heat.case else ""
        yield codes.WILL_NOT_HARDEN.at(
            one.at,
            f"{one.heat.name} does not harden by quenching",
            help=f"{way}make it of silver steel or gauge plate",
        )
    elif not one.is_tempered:
        yield codes.HARDENED_NOT_TEMPERED.at(
            one.at,
            f"'{one.item.name}' is hardened and not tempered",
            help="write `hardened and tempered to dark straw`, or the colour that it wants",
        )


def _no_case(one: Treated) -> Diagnostic:
    name = one.heat.name if one.heat is not None else "this"
    return codes.WILL_NOT_HARDEN.at(
        one.at,
        f"{name} is not case-hardened",
        help="mild steel takes a case; steel with carbon enough is `hardened and tempered`",
    )


def _flame(one: Treated, design: Design) -> Iterator[Diagnostic]:
    if not one.is_hardened:
        return
    for joint in design.joints.values():
        if joint.kind in _FLAME and one.item.name in joint.items:
            yield _drawn(one, f"'{joint.name}' heats it")
    for whole in design.fabrications.values():
        pieces = [piece.item for piece in whole.pieces]
        if one.item.name in pieces and any(word in whole.joined for word in _JOINED):
            yield _drawn(one, f"'{whole.name}' is {whole.joined.replace('_', ' ')}")


def _drawn(one: Treated, why: str) -> Diagnostic:
    return codes.FLAME_DRAWS_TEMPER.at(
        one.at,
        f"'{one.item.name}' is hardened, and {why}",
        help="pin, screw or bond it instead, or harden it after joining",
    )


def _short(text: str) -> str:
    return text if len(text) <= 40 else f"{text[:39]}…"
