"""What a leaf leaves to be filled in: a size that is read, or a tick for a gauge that enters."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Blank, Size, ThreadFact, TickBox

if TYPE_CHECKING:
    from binder.api import Design, Feature, Text

# What the jaws and the rod of a caliper enter, in mm: from memory.
_ENTERED_MM = 1.0


def thread_in(item: str, design: Design, *places: str) -> ThreadFact | None:
    """The inside thread at one of some places of an item; None where none is tapped there."""
    found = (design.facts.about(ThreadFact, f"{item}.{place}") for place in places)
    return next((one for one in found if one is not None and one.is_internal), None)


def is_read(feature: Feature) -> bool:
    """Whether anything enters a round groove to read it: in a narrow one no jaw or rod stands."""
    wide = getattr(feature.entry, feature.kind, None)
    is_groove = feature.kind in ("grooved", "undercut") and not feature.implied_by
    return not (is_groove and isinstance(wide, Size) and wide.mm < _ENTERED_MM)


def cut_by_tool(key: str) -> Text:
    """A tick in the place of a size that nothing reads: tool and dial give it."""
    return (TickBox(f"{key} cut"), "width by its tool, depth by the dial of the slide")


def measured(key: str, thread: ThreadFact | None, units: str) -> Text:
    """A blank for a size; of a tapped hole, where no size is read, a tick for what enters it."""
    if thread is None:
        return (Blank(key, units),)
    each = " each" if thread.count > 1 else ""
    return (TickBox(f"{key} gauge"), f"{thread.designation} screw or gauge enters{each}")
