"""Bearings made in line: their housings are screwed up, and one tool goes through each row."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Before, Design, Joint, Task, TaskKind, TogetherFact, shown_length
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import BONDED, HOT, MOVING, PRESSED
from binder_plugins.fits.naming import is_made, listed, title_of
from binder_solid.glued_in import FILLED, fills

_DONE = {"reamed in line": "ream", "lapped together": "lap"}
_HOLDING = ("screwed", "bolted", "studded", "buttoned")
_WHY = "its bearings are finished in line, so measure them first"
_MARK = "mark which way round each stands before it comes apart"


@dataclass(frozen=True, slots=True)
class Lining:
    """Running fits whose bores are finished in one putting up; each fit is a row of bores.

    `sunk` are the joints that fix a bush in a housing, `held` those that hold the housings up,
    `bushes` the bearings that are sunk.
    """

    fits: tuple[MadeFit, ...]
    sunk: tuple[Joint, ...]
    held: tuple[Joint, ...]
    bushes: tuple[str, ...] = ()

    @property
    def task(self) -> str:
        """The id of its task."""
        return f"line up {self.fits[0].joint.name}"

    @property
    def how(self) -> str:
        """`reamed in line`, or as the joints say."""
        return str(self.fits[0].joint.made)

    @property
    def shafts(self) -> tuple[str, ...]:
        """The items that run in the rows."""
        return tuple(dict.fromkeys(fit.shaft.end.item for fit in self.fits))

    @property
    def items(self) -> tuple[str, ...]:
        """All that is put up for it, bushes and housings and what carries them."""
        found = [fit.hole.end.item for fit in self.fits]
        for joint in (*self.sunk, *self.held):
            found += joint.items
        return tuple(dict.fromkeys(found))


def linings(fits: list[MadeFit], design: Design) -> Iterator[Lining]:
    """The fits made in line, those together that the same screws hold up.

    What is only pressed into one piece is finished by the task that presses it.
    """
    rows: dict[tuple[str, ...], list[Lining]] = {}
    for fit in fits:
        if fit.joint.made not in _DONE or fit.joint.kind not in MOVING:
            continue
        if not is_made(fit.hole.end.item, design):
            continue
        one = _lining(fit, fits, design)
        if one.held or not any(joint.kind in PRESSED for joint in one.sunk):
            names = tuple(joint.name for joint in one.held) or (fit.joint.name,)
            rows.setdefault((one.how, *names), []).append(one)
    for found in rows.values():
        yield Lining(
            tuple(fit for one in found for fit in one.fits),
            tuple({joint.name: joint for one in found for joint in one.sunk}.values()),
            found[0].held,
            tuple(bush for one in found for bush in one.bushes),
        )


def _lining(fit: MadeFit, fits: list[MadeFit], design: Design) -> Lining:
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
    bushes = (bearing,) if sunk else ()
    return Lining((fit,), sunk, tuple(design.joints[name] for name in held), bushes)


def _joints(item: str, kinds: tuple[str, ...], shaft: str, design: Design) -> Iterator[Joint]:
    for joint in design.joints.values():
        if joint.kind in kinds and item in joint.items and shaft not in joint.items:
            yield joint


def lining_task(one: Lining, design: Design) -> Task:
    """Screw up, go through each row at once, measure, write down, and finish the shafts."""
    verb = _DONE[one.how]
    sizes = dict.fromkeys(shown_length(fit.nominal, design.units) for fit in one.fits)
    tool = " and ".join(f"one {size} {'reamer' if verb == 'ream' else 'lap'}" for size in sizes)
    through = "through all" if len(one.fits) == 1 else "through one row of bores after the other,"
    return Task(
        one.task,
        f"{verb} the bearings of {_named(one.shafts, design)} in line",
        TaskKind.JOIN,
        one.fits[0].hole.end.item,
        f"{up_words(one, design)}; {verb} {through} in line with {tool}, measure each bore and "
        f"write it down, then {_then(one, design)}; {_MARK}",
        one.fits[0].joint.at,
    )


def _suited(one: Lining, design: Design) -> list[str]:
    """The shafts that are made to their bores, and so still to be made."""
    return [
        fit.shaft.end.item
        for fit in one.fits
        if is_made(fit.shaft.end.item, design) and fit.suit == "shaft"
    ]


def _then(one: Lining, design: Design) -> str:
    """What is done with the shafts."""
    suited = _suited(one, design)
    others = [name for name in one.shafts if name not in suited]
    words = []
    if suited:
        words.append(f"finish {_named(suited, design)} to {'it' if len(suited) == 1 else 'them'}")
    if others:
        words.append(f"try {_named(others, design)} through all")
    return " and ".join(words)


def _named(items: tuple[str, ...] | list[str], design: Design) -> str:
    return listed(f"the {title_of(item, design)}" for item in dict.fromkeys(items))


def up_words(one: Lining, design: Design) -> str:
    """`the bush fixed in place, the cheek screwed to the block`."""
    fixed = [f"{_named(one.bushes, design)} fixed in place"] if one.bushes else []
    up = [_up(joint, design) for joint in one.held] or ["all put up as they will stand"]
    return ", ".join([*fixed, *up])


def _up(joint: Joint, design: Design) -> str:
    first, *others = (title_of(item, design) for item in joint.items)
    return f"the {first} screwed to {' and '.join(f'the {one}' for one in others)}"


def lining_fact(one: Lining, design: Design) -> TogetherFact:
    """The rows of bores, which get their size here."""
    places = tuple(str(fit.hole.end) for fit in one.fits)
    suited = _suited(one, design)
    shafts = tuple(name for name in one.shafts if name not in suited)
    return TogetherFact(
        one.task,
        one.how,
        tuple(fit.joint.name for fit in one.fits),
        tuple((place,) for place in places),
        places,
        up_words(one, design),
        _MARK,
        tuple(joint.name for joint in one.held),
        (*one.items, *shafts),
    )


def lining_befores(one: Lining, design: Design) -> Iterator[Before]:
    """What is made before the reamer goes through, and what waits for it."""
    at = one.fits[0].joint.at
    for item in one.items:
        if is_made(item, design):
            yield Before(f"make {item}", one.task, "it is put up for the reamer", at=at)
    for fit in one.fits:
        shaft = fit.shaft.end.item
        if is_made(shaft, design) and fit.suit == "shaft":
            yield Before(one.task, f"make {shaft}", _WHY, is_must=False, at=fit.joint.at)
    for name, assembly in design.assemblies.items():
        members = {member.item for member in assembly.members}
        if members & {*one.shafts, *(fit.hole.end.item for fit in one.fits)}:
            why = "the shaft goes in when its bearings are in line"
            yield Before(one.task, f"assemble {name}", why, at=at)
        elif fills(assembly, design) in one.items:
            yield Before(f"assemble {name}", one.task, FILLED, at=at)
        elif members & {*one.items}:
            why = "what is put up for the reamer is bare, free of chips and oil"
            yield Before(one.task, f"assemble {name}", why, is_must=False, at=at)


def hot_on(items: tuple[str, ...], besides: tuple[str, ...], design: Design) -> Iterator[Joint]:
    """Joints made in a flame on any of these items, without those of some items."""
    for joint in design.joints.values():
        if (
            joint.kind in HOT
            and set(items) & set(joint.items)
            and not set(besides) & set(joint.items)
        ):
            yield joint
