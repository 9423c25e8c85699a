"""Bearings made in line: their housings are screwed up, and one tool goes through them all."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Before, Design, Joint, Task, TaskKind, shown_length
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import BONDED, HOT, MOVING, PRESSED
from binder_plugins.fits.naming import is_made, title_of

_DONE = {"reamed in line": "ream", "lapped together": "lap"}
_HOLDING = ("screwed", "bolted", "studded", "buttoned")
_WHY = "its bearings are finished in line, so measure them first"


@dataclass(frozen=True, slots=True)
class Lining:
    """A running fit whose bores are finished in place.

    `sunk` are the joints that fix its bush in a housing, `held` those that hold the housings up.
    """

    fit: MadeFit
    sunk: tuple[Joint, ...]
    held: tuple[Joint, ...]

    @property
    def task(self) -> str:
        """The id of its task."""
        return f"line up {self.fit.joint.name}"

    @property
    def items(self) -> tuple[str, ...]:
        """All that is put up for it, bushes and housings and what carries them."""
        found = [self.fit.hole.end.item]
        for joint in (*self.sunk, *self.held):
            found += joint.items
        return tuple(dict.fromkeys(found))


def linings(fits: list[MadeFit], design: Design) -> Iterator[Lining]:
    """The fits made in line whose housings are parts that are screwed up."""
    for fit in fits:
        if fit.joint.made not in _DONE or fit.joint.kind not in MOVING:
            continue
        bearing, shaft = fit.hole.end.item, fit.shaft.end.item
        sunk = tuple(
            one.joint
            for one in fits
            if one.joint.kind in (*BONDED, *PRESSED) and one.shaft.end.item == bearing
        )
        housings = dict.fromkeys([bearing, *(item for one in sunk for item in one.items)])
        held = dict.fromkeys(
            joint.name for one in housings for joint in _joints(one, _HOLDING, shaft, design)
        )
        if held:
            yield Lining(fit, sunk, tuple(design.joints[name] for name in held))


def _joints(item: str, kinds: tuple[str, ...], shaft: str, design: Design) -> Iterator[Joint]:
    for joint in design.joints.values():
        if joint.kind in kinds and item in joint.items and shaft not in joint.items:
            yield joint


def lining_task(one: Lining, design: Design) -> Task:
    """Screw up, go through all bores at once, measure, write down, and finish the shaft."""
    fit, shaft = one.fit, title_of(one.fit.shaft.end.item, design)
    verb = _DONE[fit.joint.made]
    up = ", ".join(_up(joint, design) for joint in one.held)
    tool = f"one {shown_length(fit.nominal, design.units)} reamer" if verb == "ream" else "one lap"
    made = is_made(fit.shaft.end.item, design) and fit.suit == "shaft"
    then = f"finish the {shaft} to it" if made else f"try the {shaft} through all"
    in_place = f"the {title_of(fit.hole.end.item, design)} fixed in its place, " if one.sunk else ""
    return Task(
        one.task,
        f"{verb} the bearings of the {shaft} in line",
        TaskKind.JOIN,
        fit.hole.end.item,
        f"{in_place}{up}; {verb} through all at one go with {tool}, measure each bore and write "
        f"it down, then {then}; mark which way round each stands before it comes apart",
        fit.joint.at,
    )


def _up(joint: Joint, design: Design) -> str:
    first, *others = (title_of(item, design) for item in joint.items)
    return f"the {first} screwed to {' and '.join(f'the {one}' for one in others)}"


def lining_befores(one: Lining, design: Design) -> Iterator[Before]:
    """What is made before the reamer goes through, and what waits for it."""
    at, shaft = one.fit.joint.at, one.fit.shaft.end.item
    for item in one.items:
        if is_made(item, design):
            yield Before(f"make {item}", one.task, "it is put up for the reamer", at=at)
    if is_made(shaft, design) and one.fit.suit == "shaft":
        yield Before(one.task, f"make {shaft}", _WHY, is_must=False, at=at)
    for name, assembly in design.assemblies.items():
        members = {member.item for member in assembly.members}
        if members & {shaft, one.fit.hole.end.item}:
            why = "the shaft goes in when its bearings are in line"
            yield Before(one.task, f"assemble {name}", why, at=at)


def hot_on(items: tuple[str, ...], besides: str, design: Design) -> Iterator[Joint]:
    """Joints made in a flame on any of these items, without those of one item."""
    for joint in design.joints.values():
        if joint.kind in HOT and set(items) & set(joint.items) and besides not in joint.items:
            yield joint
