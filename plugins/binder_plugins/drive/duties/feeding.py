"""A feed screw and its dial to travel, and which way it goes when the wheel is turned."""

from __future__ import annotations

from collections.abc import Iterator
from math import isclose

from binder.api import Design, Diagnostic, Joint, Size, ThreadFact, exact, shown_length
from binder_plugins.drive import feed_codes as codes
from binder_plugins.drive.duties.duty import DutyFact, Told
from binder_plugins.drive.duties.screw_length import short_of_travel
from binder_plugins.drive.duties.shown import INCH, is_inch
from binder_solid.screw_ends import screw_ends
from binder_trade.explained import NotDefined
from binder_trade.screws.handwheel import Hand, Handwheel, best_dial, handwheel, moves_toward_hand

# What a division is wanted to be, in mm, and in inches for an inch model: common practice.
_ROUND_MM = (0.1, 0.05, 0.02, 0.025, 0.01)
_ROUND_IN = (0.005, 0.002, 0.001, 0.0005)
_LEFT = (" LH", "-LH")


def feeding(joint: Joint, design: Design) -> Told:
    """Travel for a turn and for a division, and the way of the slide."""
    lead = _lead(joint, design)
    if lead is None:
        finding = codes.LEAD_MISSING.at(
            joint.ends[0].at,
            f"nothing tells the lead of '{joint.ends[0].item}'",
            help="give it a thread that leads in a nut, or write `lead: 1 mm`",
        )
        return Told(None, (finding,))
    divisions = getattr(joint.entry, "divisions", None)
    try:
        made = handwheel(lead, int(divisions or 1))
    except NotDefined as refusal:
        finding = codes.LEAD_MISSING.at(joint.at, refusal.reason, help=refusal.way_out)
        return Told(None, (finding,))
    rows = [("Travel for a turn", _size(made.turn_mm, design))]
    if divisions:
        rows.append(("For a division", f"{_size(made.division_mm, design, 4)}, of {divisions}"))
    travel = getattr(joint.entry, "travel", None)
    if isinstance(travel, Size):
        rows.append(("From end to end", _dialled(made, travel.mm, divisions)))
    rows += _ends(joint, design)
    toward = _goes_toward(joint, design)
    rows.append(("Turned clockwise", f"it {'comes to' if toward else 'goes from'} the hand"))
    steps = made.steps if divisions else made.steps[:1]
    duty = DutyFact(joint.name, "Feed screw", tuple(rows), steps)
    short = short_of_travel(joint, _thread(joint, design), design)
    wrong = (*_wrong_way(joint, toward=toward), *_awkward(joint, made, lead, design), *short)
    return Told(duty, wrong)


def _size(mm: float, design: Design, places: int = 3) -> str:
    return shown_length(exact(round(mm, places)), design.units)


def _dialled(made: Handwheel, travel: float, divisions: int | None) -> str:
    if not divisions:
        return f"{travel / made.turn_mm:.3g} turns"
    turns, rest = made.dialled(travel)
    return f"{turns} turns and {rest:.3g} divisions"


def _ends(joint: Joint, design: Design) -> Iterator[tuple[str, str]]:
    """Where the screw stands at either end of its travel."""
    for other in design.joints.values():
        found = screw_ends(other, design) if joint.ends[0].item in other.items else None
        if found is not None:
            low, high, left = (
                _size(one, design) for one in (found.shown_in, found.shown_out, found.filled)
            )
            yield f"Thread between {found.nut} and {found.before}", f"{low} wound in, {high} out"
            yield "Wound out the nut still holds", f"{left} of thread; nothing stops it there"


def _lead(joint: Joint, design: Design) -> float | None:
    """The lead in mm: as said, else the pitch of the thread that leads, by its starts."""
    said = getattr(joint.entry, "lead", None)
    if isinstance(said, Size):
        return said.mm
    thread = _thread(joint, design)
    starts = int(getattr(joint.entry, "starts", None) or 1)
    return thread.pitch * starts if thread is not None else None


def _thread(joint: Joint, design: Design) -> ThreadFact | None:
    """The outside thread of the screw that a joint of kind `leads` names."""
    item = joint.ends[0].item
    for other in design.joints.values():
        if other.kind == "leads" and item in other.items:
            for end in other.ends:
                thread = design.facts.about(ThreadFact, str(end))
                if thread is not None and thread.item == item:
                    return thread
    return None


def _goes_toward(joint: Joint, design: Design) -> bool:
    thread = _thread(joint, design)
    is_left = thread is not None and any(mark in thread.designation for mark in _LEFT)
    hand: Hand = "left" if is_left or getattr(joint.entry, "hand", None) == "left" else "right"
    return moves_toward_hand(
        hand, screw_travels=getattr(joint.entry, "what_travels", None) == "screw"
    )


def _wrong_way(joint: Joint, *, toward: bool) -> Iterator[Diagnostic]:
    wanted = getattr(joint.entry, "clockwise", None)
    if wanted is not None and (wanted == "toward") != toward:
        yield codes.HANDWHEEL_WRONG_WAY.at(
            joint.at,
            f"clockwise the slide of '{joint.name}' {'comes' if toward else 'goes away'}, and "
            f"'{wanted}' is wanted",
            help="cut the thread left-handed, or let the screw travel in a nut of the frame",
        )


def _awkward(joint: Joint, made: Handwheel, lead: float, design: Design) -> Iterator[Diagnostic]:
    """A division that nobody can count in."""
    if not getattr(joint.entry, "divisions", None):
        return
    sizes = [one * INCH for one in _ROUND_IN] if is_inch(design) else list(_ROUND_MM)
    if any(isclose(made.division_mm, one, rel_tol=1e-6) for one in sizes):
        return
    dials = [(best_dial(lead, one), one) for one in sizes]
    ways = [
        f"{count} divisions of {_size(one, design, 4)}"
        for (count, over), one in dials
        if abs(over) < 1e-6 and 5 <= count <= 250
    ]
    yield codes.DIAL_AWKWARD.at(
        joint.at,
        f"a division of '{joint.name}' is {_size(made.division_mm, design, 4)}",
        help=f"divide the dial into {' or '.join(ways[:2])}" if ways else
        "take another pitch: this one gives no round division",
    )  # fmt: skip
