"""Coats to findings: what their heat lets go, when they are put on, what they do to hard steel."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Fabrication, Joint, JointFact
from binder_plugins.finishing import coat_codes as codes
from binder_plugins.finishing.processes import Process
from binder_plugins.finishing.treated import Treated
from binder_solid.glued_in import fills
from binder_trade.fits.gaps import gap

_BONDS = ("retained", "glued")
# Steel over about 1000 N/mm² is baked after plating: ISO 4042 and ISO 2081 (from memory).
_PLATED = ("nickel plate", "chrome plate", "zinc plate")
_HARD = ("spring-steel", "music-wire")
_HELD = ("solder", "braz", "weld", "glue", "bond", "retain")


def check_coats(one: Treated, design: Design) -> Iterator[Diagnostic]:
    """All findings about the coats of one item."""
    coats = [process for process in one.processes if process.acts and not process.is_bright]
    for process in coats:
        yield from _lets_go(one, process, design)
    if coats:
        yield from _too_early(one, design)
        yield from _locked_in(one, design)
    if any(process.name in _PLATED for process in coats):
        yield from _hydrogen(one)


def _lets_go(one: Treated, process: Process, design: Design) -> Iterator[Diagnostic]:
    """Joints of the item that hold less than the heat of the coat."""
    if not process.heat:
        return
    melts = gap("soft soldered").melts_deg or 0
    if isinstance(one.item, Fabrication) and "soft" in one.item.joined and process.heat >= melts:
        words = f"{process.name} is {process.heat} °C hot, and '{one.item.name}' holds to {melts:g}"
        yield codes.FINISH_MELTS_SOLDER.at(one.at, f"{words} °C", help="paint it cold")
    for joint in design.joints.values():
        if one.item.name not in joint.items:
            continue
        if joint.kind == "soft_soldered" and process.heat >= melts:
            yield codes.FINISH_MELTS_SOLDER.at(
                one.at, _hot(process, joint, melts), help="paint it cold"
            )
        elif joint.kind in _BONDS and process.heat > (gap(joint.kind).hottest_deg or 0):
            yield codes.FINISH_LOOSENS_BOND.at(
                one.at,
                _hot(process, joint, gap(joint.kind).hottest_deg),
                help="finish it cold, or before it is bonded and say so in `because:`",
            )


def _hot(process: Process, joint: Joint, holds: float | None) -> str:
    return f"{process.name} is {process.heat} °C hot, and '{joint.name}' holds to {holds:g} °C"


def _too_early(one: Treated, design: Design) -> Iterator[Diagnostic]:
    for whole in design.fabrications.values():
        how = whole.joined.replace("_", " ")
        if one.item.name in {piece.item for piece in whole.pieces} and any(
            word in how for word in _HELD
        ):
            yield codes.FINISH_BEFORE_JOINING.at(
                one.at,
                f"'{one.item.name}' gets its coat, and then '{whole.name}' is {how}",
                help=f"write the finish on '{whole.name}'",
            )


def _locked_in(one: Treated, design: Design) -> Iterator[Diagnostic]:
    """What a lasting joint keeps together, and only one half of it is to be coated."""
    if "mask" in one.text.lower():
        return
    wholes = [whole for whole in design.assemblies.values() if fills(whole, design)]
    mine = [whole for whole in wholes if fills(whole, design) == one.item.name]
    filling = {member.item for whole in mine for member in whole.members}
    for joint in design.joints.values():
        fact = design.facts.about(JointFact, joint.name)
        if fact is None or not fact.is_lasting or one.item.name not in joint.items:
            continue
        others = [name for name in joint.items if name != one.item.name]
        if {*others} <= filling:
            continue  # A peg that was glued in flush takes the coat with its part.
        bare = next((name for name in others if not _same(one, name, design)), "")
        if bare:
            yield codes.FINISH_LOCKED_IN.at(
                one.at,
                f"'{joint.name}' keeps '{one.item.name}' and '{bare}' together, and '{bare}' "
                "gets no such coat",
                help=f"write the same finish on '{bare}', or that it is masked",
            )
            return


def _same(one: Treated, name: str, design: Design) -> bool:
    other = design.parts.get(name) or design.fabrications.get(name)
    return other is not None and other.finish == one.text


def _hydrogen(one: Treated) -> Iterator[Diagnostic]:
    is_hard = one.is_hardened or (one.material is not None and one.material.id in _HARD)
    if is_hard and "baked" not in one.text.lower():
        yield codes.PLATED_HARD_STEEL.at(
            one.at,
            f"'{one.item.name}' is hard, and plating makes it brittle",
            help="write `..., baked`, and order it so",
        )
