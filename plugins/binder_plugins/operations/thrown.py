"""Steps that are set off the axis of a turned part, as the pins of a crank."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations import words
from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.lengthwise import is_thrown
from binder_plugins.operations.out_of_balance import SWING, most_rpm

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Stretch


def thrown(turning: Turning) -> Iterator[SetUp]:
    """Steps that are set off the axis: the four-jaw, set over by the throw."""
    thrown = [one for one in turning.form.located if one.kind == "throw"]
    if not thrown:
        return
    work = turning.work
    chucks = work.design.workshop.entry.holding.chucks
    name = next((n for n, one in chucks.items() if one.independent), "")
    if not name:
        words_of = (
            f"'{work.name}' has a step off its axis, and no four-jaw chuck is owned to set it over"
        )
        turning.trouble.append(("cannot-set-over", words_of))
    steps = [one for one in turning.steps if is_thrown(one, work) and one.across > 0]
    with work.no_faster(most_rpm(turning.form.size, _throw(work))):
        acts = list(_pins(turning, steps))
    grip = Grip(
        name or "four-jaw chuck, not owned", "four-jaw", "the main axis, set over by the throw"
    )
    yield SetUp(
        1,
        "lathe",
        turning.lathe,
        grip,
        "the throw by a dial indicator over twice its size",
        tuple(acts),
        f"the pin to the throw{SWING}",
        minutes=words.holding_min("four-jaw"),
    )


def _pins(turning: Turning, steps: Sequence[Stretch]) -> Iterator[Act]:
    work = turning.work
    for number, one in enumerate(steps, 1):
        if _is_web(one, work):
            continue
        yield work.act(
            "turn",
            f"turn the pin ⌀{work.mm(one.across)} × {work.mm(one.end - one.start)}",
            machine=turning.lathe,
            feature=one.name or f"pin {number}",
            tool="narrow knife tool",
            size=one.across,
            start=work.stock_across,
            deep=one.end - one.start,
        )


def _throw(work: Work) -> float:
    """The largest throw in mm."""
    shape = getattr(work.item, "shape", None)
    steps = shape if isinstance(shape, list) else []
    return max((one.throw.mm for one in steps if one.throw is not None), default=0.0)


def _is_web(step: Stretch, work: Work) -> bool:
    shape = getattr(work.item, "shape", None)
    steps = work.form.stretches if work.form is not None else ()
    return isinstance(shape, list) and getattr(shape[steps.index(step)], "web", None) is not None
