"""Stepped pulleys whose steps are left to suit, to the sizes that keep one belt for all."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    End,
    Fact,
    Joint,
    Size,
    StepSizeFact,
    Working,
    made_size,
    shown_length,
)
from binder_plugins.drive import belt_codes, codes
from binder_plugins.drive.train.cones import Steps, layout_of, suited_steps
from binder_plugins.drive.train.pulleys import belt_steps
from binder_plugins.drive.train.seats import Seat, seats_of
from binder_trade.explained import NotDefined

Seats = Sequence[Sequence[Seat]]
# A belt that stretches evens out as much; what is written is rounded by hand.
_NEAR = Fraction(1, 20)
_TOLD = ("steps", "ratios", "diameters")


def settle_stepped(design: Design) -> Contribution:
    """The diameter of each step that a belt's pulleys leave to suit, or why there is none."""
    made: list[Fact | Diagnostic] = []
    for joint in design.joints.values():
        if joint.kind == "belted":
            made += _settled(joint, design)
    facts = [one for one in made if isinstance(one, StepSizeFact)]
    return Contribution(
        facts=facts,
        findings=[one for one in made if isinstance(one, Diagnostic)],
        workings=[_working(one, design) for one in facts],
    )


def _settled(joint: Joint, design: Design) -> Iterator[Fact | Diagnostic]:
    section = section_of(joint)
    seats = [seats_of(end, section, design) for end in joint.ends]
    if not any(seat.outside.is_to_suit for row in seats for seat in row):
        return
    steps = belt_steps(joint, design) if _is_told(joint) else _completed(joint, seats)
    if isinstance(steps, Diagnostic):
        yield steps
        return
    for number, (end, row) in enumerate(zip(joint.ends, seats, strict=True)):
        if row and len(row) != len(steps):
            yield _uneven(joint, end, len(row), len(steps))
            continue
        for step, seat in zip(steps, row, strict=False):
            if seat.outside.is_to_suit:
                size = made_size(step[number] + seat.sunk, joint)
                name = f"{end.item} step {seat.number + 1}"
                yield StepSizeFact(name, end.item, seat.number, size, joint.name)


def section_of(joint: Joint) -> Fraction:
    """How thick the belt is in mm, nothing where it is not told."""
    said = getattr(joint.entry, "section", None)
    return said.exact if isinstance(said, Size) else Fraction(0)


def _is_told(joint: Joint) -> bool:
    return any(getattr(joint.entry, name, None) is not None for name in _TOLD)


def _uneven(joint: Joint, end: End, has: int, wants: int) -> Diagnostic:
    return codes.BELT_DIAMETERS.at(
        end.at,
        f"'{end.item}' has {has} steps for a belt, and '{joint.name}' wants {wants}",
        help="give the pulley as many, each with its groove",
    )


def _completed(joint: Joint, seats: Seats) -> Steps | Diagnostic:
    """The running diameters of two pulleys, one of which has steps to suit the other."""
    centres = getattr(joint.entry, "centres", None)
    if len(seats) != 2 or len(seats[0]) != len(seats[1]):
        return _asked(joint, "the steps to suit have no partners on one other pulley")
    if not isinstance(centres, Size):
        return _asked(joint, "steps to suit want the centres of the belt")
    rows = [
        tuple(None if one.outside.is_to_suit else one.outside.exact - one.sunk for one in pair)
        for pair in zip(*seats, strict=True)
    ]
    try:
        return suited_steps(rows, centres.mm, layout_of(joint))
    except NotDefined as refusal:
        return _asked(joint, refusal.reason, refusal.way_out)


def _asked(joint: Joint, reason: str, way_out: str = "") -> Diagnostic:
    usual = "write `ratios: [0.5, 1, 2]`, the `smallest:` diameter and the `centres:`"
    return belt_codes.CONE_IMPOSSIBLE.at(joint.at, reason, help=way_out or usual)


def _working(fact: StepSizeFact, design: Design) -> Working:
    return Working(
        id=f"{fact.item}.step_{fact.number + 1}",
        title=f"step {fact.number + 1} of '{fact.item}'",
        given=(),
        formula=f"one belt for all steps of '{fact.joint}', and its groove",
        result=str(fact.size.text),
        source="length of an open or crossed belt, solved for the diameter",
        span=design.joints[fact.joint].at,
    )


def differing(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    """Each written step of a pulley that is another size than its belt says."""
    if not _is_told(joint) or getattr(joint.entry, "belt", None) == "toothed":
        return
    steps = belt_steps(joint, design)
    if isinstance(steps, Diagnostic):
        return
    for number, end in enumerate(joint.ends):
        row = seats_of(end, section_of(joint), design)
        wanted = [step[number] + seat.sunk for step, seat in zip(steps, row, strict=False)]
        if len(row) == len(steps):
            yield from _differing(joint, end, zip(row, wanted, strict=True), design)


def _differing(
    joint: Joint, end: End, pairs: Iterable[tuple[Seat, Fraction]], design: Design
) -> Iterator[Diagnostic]:
    for seat, wanted in pairs:
        if abs(seat.outside.exact - wanted) > _NEAR:
            size = shown_length(wanted, design.units)
            yield belt_codes.PULLEY_DIFFERS.at(
                seat.outside.span,
                f"step {seat.number + 1} of '{end.item}' is "
                f"{shown_length(seat.outside.exact, design.units)}, and the belt of "
                f"'{joint.name}' wants {size}",
                help=f"turn it to {size}, or leave it `to suit`",
            )
