"""A disc of plate: sawn out, bored, then turned true on a mandrel in its own bore."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bench import drill_for, flat_holder, place_of, vice_for
from binder_plugins.operations.edges import edge_acts
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.holes import HOLES, SINKS, Where, hole_acts, through
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located

# What sawing by a scribed circle leaves to turn, of the diameter in mm. Common practice, no source.
_TO_TURN = 1.5


def disc_setups(turning: Turning) -> list[SetUp]:
    """Saw out, bore, outside on a mandrel; without a bore it is pressed against a pad."""
    work, form = turning.work, turning.form
    across = max(form.size[1:])
    setups: list[SetUp] = []
    stock = f" of {work.cut.section_text}" if work.cut is not None else ""
    words = f"saw out ⌀{work.mm(across + _TO_TURN)}{stock}"
    work.takes(across + _TO_TURN, verb="saw out")
    saw = work.act("saw", words, tool="piercing saw or hacksaw", amount=across)
    mark = work.act(
        "mark-out",
        "find and pop the centre, scribe the circle",
        feature="centre",
        amount=1.0,
        tags=("on-the-plate",),
    )
    _add(setups, "bench", "", Grip("bench vice", "bench", "the plate"), "", [mark, saw])
    bores = [a for a in turning.axial if a.kind in HOLES | SINKS.keys()]
    # A mandrel follows a finished bore.
    done = [a for a in bores if a.depth is None and a.kind in HOLES and work.waits(a.name) is None]
    through_bore = next(iter(done), None)
    if bores:
        _bore(turning, setups, bores)
    turn = [a for i in range(len(turning.steps)) for a in _outside(turning, i)]
    turn += list(edge_acts(work, form, turning.around, turning.lathe, "right"))
    if through_bore is not None:
        grip = Grip(
            "stub mandrel turned to the bore, with a nut",
            "mandrel",
            "its bore",
            through_bore.diameter or 0.0,
            form.size[0],
            form.size[0],
            "",
            (0.0, 0.0),
            "right",
        )
        true = f"outside true to the {through_bore.name.replace('_', ' ')}"
    else:
        grip = Grip(
            "against a pad, by the tailstock centre",
            "centres",
            "its faces",
            across,
            0.0,
            form.size[0],
            "tailstock centre",
            (0.0, 0.0),
            "right",
        )
        true = ""
    _add(setups, "lathe", turning.lathe, grip, "the faces as bought", turn, true)
    return setups


def _bore(turning: Turning, setups: list[SetUp], bores: Sequence[Located]) -> None:
    """By drill and reamer on the drilling machine; a bored one in the four-jaw."""
    work = turning.work
    largest = max(one.diameter or 0.0 for one in bores)
    holder, kind = flat_holder(work.design.workshop, max(turning.form.size[1:]))
    in_lathe = any(one.kind == "bored" for one in bores) and bool(holder)
    machine = turning.lathe if in_lathe else drill_for(work.design.workshop, min(largest, 13.0))
    acts: list[Act] = []
    for one in sorted(bores, key=lambda one: (one.kind in SINKS, one.diameter or 0.0)):
        deep = through(one, turning.form.size)
        acts += hole_acts(work, one, Where(machine, deep, is_lathe=in_lathe, is_started=bool(acts)))
    vice = vice_for(work.design.workshop)
    grip = (
        Grip(holder, kind, "its sawn edge")
        if in_lathe
        else Grip(f"{vice}, on parallels" if vice else "clamps on wood", "vice", "its sawn edge")
    )
    _add(setups, place_of(work.design.workshop, machine), machine, grip, "the centre pop", acts)


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
            start=step.across + _TO_TURN,
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
