"""What a leaf leaves to be filled in: a size that is read, or a tick for a gauge that enters."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Blank, ThreadFact, TickBox

if TYPE_CHECKING:
    from binder.api import Design, Text


def thread_in(item: str, design: Design, *places: str) -> ThreadFact | None:
    """The inside thread at one of some places of an item; None where none is tapped there."""
    found = (design.facts.about(ThreadFact, f"{item}.{place}") for place in places)
    return next((one for one in found if one is not None and one.is_internal), None)


def measured(key: str, thread: ThreadFact | None, units: str) -> Text:
    """A blank for a size; of a tapped hole, where no size is read, a tick for what enters it."""
    if thread is None:
        return (Blank(key, units),)
    each = " each" if thread.count > 1 else ""
    return (TickBox(f"{key} gauge"), f"{thread.designation} screw or gauge enters{each}")
