"""The halves of a screwed joint told apart: those that the screw passes, and the one it holds."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Diagnostic
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.seen import Seen


@dataclass(frozen=True, slots=True)
class Roles:
    """The head sits on the first of `passed`; the thread holds in `held`."""

    passed: tuple[Half, ...]
    held: Half


def roles_of(seen: Seen) -> Roles | Diagnostic:
    """Which half is clear and which is tapped, by the written holes, else by their order."""
    return _in_wood(seen) if seen.asked.thread is None else _in_metal(seen)


def _in_wood(seen: Seen) -> Roles | Diagnostic:
    """A wood screw holds in the last half that is of wood."""
    wooden = [half for half in seen.halves if half.is_wood or not half.group]
    if not wooden:
        return hole_codes.NOTHING_TO_SCREW_INTO.at(
            seen.halves[-1].end.at,
            f"a wood screw does not hold in {_metal(seen.halves[-1])}",
            help="use a machine screw and tap it, or a bolt and nut",
        )
    return _roles(seen, wooden[-1])


def _in_metal(seen: Seen) -> Roles | Diagnostic:
    tapped = [half for half in seen.halves if half.is_tapped]
    if len(tapped) == len(seen.halves):
        return hole_codes.BOTH_TAPPED.at(
            seen.halves[0].end.at,
            f"all halves of '{seen.joint.name}' are tapped",
            help=f"open '{seen.halves[0].end}' out to clearance",
        )
    open_ends = [half for half in seen.halves if _can_be_tapped(half)]
    if not tapped and not open_ends:
        return _nothing(seen)
    held = tapped[-1] if tapped else open_ends[-1]
    if held.is_wood:
        return _nothing(seen, held)
    return _roles(seen, held)


def _can_be_tapped(half: Half) -> bool:
    """Nothing is written here yet, or the item is not made here, so it may well be tapped."""
    return half.hole is None or not half.is_made or half.is_tapped


def _nothing(seen: Seen, held: Half | None = None) -> Diagnostic:
    last = held or seen.halves[-1]
    why = f"no machine thread holds in {_metal(last)}" if last.is_wood else "no half is tapped"
    return hole_codes.NOTHING_TO_SCREW_INTO.at(
        last.end.at,
        f"'{seen.asked.name.says}' has nothing to screw into: {why}",
        help="use a wood screw or a bolt and nut" if last.is_wood else f"tap '{last.end}'",
    )


def _metal(half: Half) -> str:
    return half.group or "that"


def _roles(seen: Seen, held: Half) -> Roles:
    return Roles(tuple(half for half in seen.halves if half is not held), held)
