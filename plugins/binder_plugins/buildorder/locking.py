"""What locks a thread for good goes on when all has been together dry, and has run."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Joint, Tick
from binder_plugins.buildorder.closing import inside_of
from binder_plugins.buildorder.stripping import outermost


def lock_of(joint: Joint) -> str:
    """What a joint is locked with; '' where nothing is."""
    return str(getattr(joint.entry, "locked_with", None) or "")


def dry(joint: Joint, one: Assembly, design: Design) -> str:
    """What is said behind a step that is done dry for now."""
    lock = lock_of(joint)
    if not lock:
        return ""
    whole = _whole(joint, design) or one
    return f"; dry for now: the {lock} goes on when the {whole.title} has passed its test"


def locked(one: Assembly, design: Design) -> Iterator[Tick]:
    """The steps that lock what stands in a whole, after its test."""
    for joint in design.joints.values():
        lock = lock_of(joint)
        if not lock or _whole(joint, design) is not one:
            continue
        words = (
            f"'{joint.name}': undo it, wash the oil off both threads, put on the {lock}, set it "
            "again as it was, and try the test once more before it sets"
        )
        yield Tick(f"{one.name} lock {joint.name}", (words,))


def when(one: Assembly, design: Design) -> str:
    """When they are done: after the test, or after a coat for which it comes apart again."""
    if f"close {one.name}" in design.tasks:
        return "Lock it when it is put together for good, after the coat."
    return "Lock it now that it has passed; what is locked does not come apart for a change."


def _whole(joint: Joint, design: Design) -> Assembly | None:
    """The outermost whole in which all halves of a joint stand."""
    whole = outermost(joint.items[0], design)
    if whole is None or not set(joint.items) <= inside_of(whole, design):
        return None
    return whole
