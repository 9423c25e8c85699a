"""A disc of plate: drilled, sawn out, then turned true on a mandrel in its own bore.

What is drilled is drilled while it is still one with the plate: a round sawn edge spins in a vice
when the drill breaks through. A piece no larger than its disc leaves nothing to clamp there, nor
to hold while the round is sawn. Common practice, no source.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import drill_for, flat_holder, place_of
from binder_plugins.operations.clamps import BESIDE_MM
from binder_plugins.operations.edges import edge_acts
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import HOLES, SINKS, Where, narrows_to, through
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located

# What is left on the diameter to turn it true: common practice, no source.
_OVER_MM = 1.5
_PLATE = "the plate"
# What marks a circle about a centre pop: common practice, no source.
CIRCLES = "scriber, square, dividers and centre punch"


def disc_setups(turning: Turning) -> list[SetUp]:
    """Drill in the plate, saw out, outside on a mandrel; without a bore against a pad."""
    work, form = turning.work, turning.form
    across = max(form.size[1:])
    setups: list[SetUp] = []
    stock = f" of {work.cut.section_text}" if work.cut is not None else ""
    bores = [a for a in turning.axial if a.kind in HOLES | SINKS.keys()]
    is_bored = _is_bored(turning, bores)
    room = _room(across + _OVER_MM, [] if is_bored else bores)
    work.takes_plate(across + _OVER_MM, across + _OVER_MM, over=2 * room, is_round=True)
    plate = f"the plate, {work.mm(room)} of it beyond the circle at either end" if room else _PLATE
    words = f"saw out ⌀{work.mm(across + _OVER_MM)}{stock}"
    saw = work.act("saw", words, tool="piercing saw or hacksaw", amount=across)
    mark = work.act(
        "mark-out",
        f"find and pop the centre{_in_the_middle(turning, across, room)}, scribe the circle",
        feature="centre",
        tool=CIRCLES,
        amount=1.0,
        tags=("on-the-plate",),
    )
    # A mandrel follows a finished bore.
    done = [a for a in bores if a.depth is None and a.kind in HOLES and work.waits(a.name) is None]
    through_bore = next(iter(done), None)
    on_bench = Grip("bench vice", "bench", plate)
    if not bores or is_bored:
        _add(setups, "bench", "", on_bench, "", [mark, saw])
        if bores:
            _bored(turning, setups, bores)
    else:
        _add(setups, "bench", "", Grip("", "bench", "the plate, flat"), "", [mark])
        _drilled(turning, setups, bores, plate)
        _add(setups, "bench", "", on_bench, "", [saw])
    turn = [a for i in range(len(turning.steps)) for a in _outside(turning, i)]
    turn += list(edge_acts(work, form, turning.around, turning.lathe, "right"))
    grip, true = _held(turning, through_bore)
    _add(setups, "lathe", turning.lathe, grip, "the faces as bought", turn, true)
    return setups


def _room(sawn: float, drilled: Sequence[Located]) -> float:
    """What of the plate is left beyond a circle `sawn` mm across at either end, to hold it by.

    None where clamps have room on the disc itself, beside all that is drilled in it.
    """
    reach = max((_reach(one) for one in drilled), default=0.0)
    return BESIDE_MM if sawn / 2 - reach < BESIDE_MM else 0.0


def _reach(one: Located) -> float:
    """How far from the axis a hole of a disc reaches, in mm."""
    off = max((math.hypot(*spot[1:]) for spot in one.spots), default=0.0)
    return off + (one.diameter or 0.0) / 2


def _in_the_middle(turning: Turning, across: float, room: float) -> str:
    """How large the piece of plate must be, where it is held beyond the circle."""
    if not room:
        return ""
    mm, sawn = turning.work.mm, across + _OVER_MM
    return f" of a piece at least {mm(sawn + 2 * room)} × {mm(sawn)}"


def _held(turning: Turning, through_bore: Located | None) -> tuple[Grip, str]:
    """On a mandrel in its bore, or pressed against a pad; and what is true to what."""
    long, across = turning.form.size[0], max(turning.form.size[1:])
    if through_bore is None:
        pad, centre = "against a pad, by the tailstock centre", "tailstock centre"
        return Grip(pad, "centres", "its faces", across, 0.0, long, centre, free="right"), ""
    mandrel, size = "stub mandrel turned to the bore, with a nut", through_bore.diameter or 0.0
    grip = Grip(mandrel, "mandrel", "its bore", size, long, long, free="right")
    return grip, f"outside true to the {through_bore.name.replace('_', ' ')}"


def _is_bored(turning: Turning, bores: Sequence[Located]) -> bool:
    """Whether the lathe bores it, which grips the sawn edge."""
    holder, _ = flat_holder(turning.work.design.workshop, max(turning.form.size[1:]))
    return bool(holder) and any(
        one.kind == "bored" or narrows_to(turning.work, one) for one in bores
    )


def _bored(turning: Turning, setups: list[SetUp], bores: Sequence[Located]) -> None:
    """In the four-jaw, about the centre pop."""
    holder, kind = flat_holder(turning.work.design.workshop, max(turning.form.size[1:]))
    acts = _holes(turning, bores, turning.lathe, is_lathe=True)
    grip = Grip(holder, kind, "its sawn edge")
    _add(setups, "lathe", turning.lathe, grip, "the centre pop", acts)


def _drilled(turning: Turning, setups: list[SetUp], bores: Sequence[Located], plate: str) -> None:
    """By drill and reamer on the drilling machine, while the plate holds it."""
    workshop = turning.work.design.workshop
    largest = max(one.diameter or 0.0 for one in bores)
    machine = drill_for(workshop, min(largest, 13.0))
    acts = _holes(turning, bores, machine, is_lathe=False)
    grip = Grip("clamped flat on wood on the table", "plate", plate)
    _add(setups, place_of(workshop, machine), machine, grip, "the centre pop", acts)


def _holes(
    turning: Turning, bores: Sequence[Located], machine: str, *, is_lathe: bool
) -> list[Act]:
    acts: list[Act] = []
    for one in sorted(bores, key=lambda one: (one.kind in SINKS, one.diameter or 0.0)):
        where = Where(
            machine,
            through(one, turning.form.size),
            tags=() if is_lathe else ("on-the-plate",),
            is_lathe=is_lathe,
            is_started=bool(acts),
        )
        acts += hole_acts(turning.work, one, where)
    return acts


def _outside(turning: Turning, place: int) -> list[Act]:
    step, work = turning.steps[place], turning.work
    if step.corners:
        return []
    half = work.half(step.name)
    words = (
        half.what
        if half is not None and half.what.startswith("turn")
        else f"turn ⌀{work.mm(step.across)}"
    )
    return [
        work.act(
            "turn",
            words,
            machine=turning.lathe,
            feature=step.name or f"step {place + 1}",
            size=step.across,
            start=step.across + _OVER_MM,
            deep=step.end - step.start,
            half=half,
            tags=("on-mandrel", "outside", "blank", "finish"),
        )
    ]


def _add(
    setups: list[SetUp],
    place: str,
    machine: str,
    grip: Grip,
    datum: str,
    acts: Sequence[Act],
    true: str = "",
) -> None:
    number = len(setups) + 1
    setups.append(
        SetUp(number, place, machine, grip, datum, tuple(acts), true, "", holding_min(grip.kind))
    )
