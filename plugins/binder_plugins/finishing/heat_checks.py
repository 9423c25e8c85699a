"""Heat to findings: does it do anything, at the right colour and time, does it stay straight."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import CutSize, Design, Diagnostic, FitFact, HalfFact
from binder_plugins.finishing import heat_codes as codes
from binder_plugins.finishing.heat import colour_in, said
from binder_plugins.finishing.treated import Treated
from binder_solid.drilled_as_one import is_drilled_as_one

# The quench bends what is longer than so many diameters: common practice, no source.
_SLENDER = 12.0
# A colour is told by eye to about half a step: °C.
_BY_EYE = 10
_REAMED = ("reamed in line", "reamed together")


def check_heat(one: Treated, design: Design) -> Iterator[Diagnostic]:
    """All findings about the heat of one item."""
    yield from _tempering(one)
    yield from _softening(one)
    if one.is_hardened:
        yield from _too_soon(one, design)
        yield from _slender(one, design)


def _tempering(one: Treated) -> Iterator[Diagnostic]:
    heat = one.heat
    if heat is None or not one.is_tempered:
        return
    if not one.is_hardened and not heat.hardens:
        yield codes.TEMPER_DOES_NOTHING.at(
            one.at,
            f"{heat.name} is never hard, so tempering does nothing to it",
            help="make it of silver steel, hardened and tempered",
        )
    colour = colour_in(one.text)
    if colour is None or heat.tempers is None:
        return
    least, most = heat.tempers
    if not least - _BY_EYE <= colour.celsius <= most + _BY_EYE:
        yield codes.TEMPER_COLOUR_WRONG.at(
            one.at,
            f"{colour.colour} is {colour.celsius} °C, and {heat.name} is tempered at "
            f"{said(heat.tempers)}",
            help=f"let it down: {heat.temper}",
        )


def _softening(one: Treated) -> Iterator[Diagnostic]:
    knows = one.heat is not None and one.heat.anneal is not None
    if one.is_softened and not knows:
        yield _unknown(one, "soften")
    if one.is_eased and (one.heat is None or one.heat.stress is None):
        yield _unknown(one, "ease the stress of")


def _unknown(one: Treated, verb: str) -> Diagnostic:
    what = one.material.designation if one.material is not None else f"'{one.item.name}'"
    return codes.HEAT_NOT_KNOWN.at(
        one.at, f"no heat is known to {verb} {what}", help="its maker's sheet tells it"
    )


def _too_soon(one: Treated, design: Design) -> Iterator[Diagnostic]:
    """Cutting that is left for when both parts are together comes after the hardening."""
    for joint in design.joints.values():
        if one.item.name not in joint.items:
            continue
        fit = design.facts.about(FitFact, joint.name)
        has_hole = fit is not None and fit.hole.partition(".")[0] == one.item.name
        if is_drilled_as_one(joint) or (joint.made in _REAMED and has_hole):
            yield codes.HARDENED_TOO_SOON.at(
                one.at,
                f"'{joint.name}' is {joint.made}, and '{one.item.name}' is hard by then",
                help="say `made: to drawing`, or harden it after that and say so in `because:`",
            )


def _slender(one: Treated, design: Design) -> Iterator[Diagnostic]:
    cut = design.facts.about(CutSize, one.item.name)
    if cut is None or cut.width is not None or not cut.section:
        return
    across, long = float(min(cut.section)), float(cut.length)
    fits = any(half.item == one.item.name for half in design.facts.all(HalfFact))
    if fits and long > _SLENDER * across:
        yield codes.BENDS_IN_THE_QUENCH.at(
            one.at,
            f"'{one.item.name}' is {long / across:.0f} times as long as it is thick, and is "
            "quenched",
            help="harden the end that wears alone, or leave 0.2 mm to grind",
        )
