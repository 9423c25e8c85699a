"""What a part waits for, to the set-up of it that first uses that: what is before need not wait."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design, Task
    from binder_making.operation import Operation
    from binder_plugins.operations.facts import SetUp
    from binder_plugins.operations.jobs import Piece

_MAKE = "make "


def first_use(
    own: Sequence[tuple[Piece, list[Operation]]], task: Task, earlier: str, design: Design
) -> str:
    """The id of the first act of a task that waits for the task `earlier`.

    A part that is made to another one waits in the set-up that first works at a joint of both, or
    names the other. Stock is sawn off long, whatever its part is made to. Where no set-up tells
    what it wants the other for, the first waits.
    """
    after_sawing = own[1:] if _is_sawn(own) else own
    used = [
        acts[0].id
        for piece, acts in after_sawing
        if piece.setup is not None and any(_uses(piece.setup, task, earlier, design))
    ]
    return used[0] if used else after_sawing[0][1][0].id


def _is_sawn(own: Sequence[tuple[Piece, list[Operation]]]) -> bool:
    return len(own) > 1 and {one.act for one in own[0][1]} == {"saw"}


def _uses(setup: SetUp, task: Task, earlier: str, design: Design) -> Iterator[bool]:
    """Whether a set-up of a part works at a joint with the other part, or speaks of that."""
    if not (task.id.startswith(_MAKE) and earlier.startswith(_MAKE)):
        return
    other = design.tasks[earlier].item
    both = {
        joint.name
        for joint in (*design.joints_at(task.item), *design.joints_at(other))
        if {task.item, other} <= {*joint.items, joint.held_by}
    }
    mate = design.item(other)
    title = mate.title if mate is not None else other
    grip = setup.grip
    yield any(title in one for one in (grip.holder, grip.on, grip.support, setup.datum, setup.true))
    for act in setup.acts:
        yield not both.isdisjoint(act.joints)
        yield title in f"{act.what} {act.tool} {act.measure}"
