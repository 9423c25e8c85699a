"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

SURFACE_CLAIMED = Code(
    "surface-claimed",
    Severity.WARNING,
    "Two joints claim the same bore of a part.",
    "One bore cannot be made to fit two shafts; one of the names is mostly a slip.",
    "joints:\n  one: {slides: [pin.rod, arm.bore]}\n  two: {runs_in: [axle.journal, arm.bore]}",
    "Give each its own feature, or say `because:` where both really share it.",
)

THREADED_BACKWARDS = Code(
    "threaded-backwards",
    Severity.WARNING,
    "In a threaded joint the tapped half is named first, as if it screwed into the other.",
    "The half that is made first, and so the order of the work, would be the wrong one.",
    "joints:\n  knob on bar: {threaded: [knob.thread, bar.end]}   # the bar screws into the knob",
    "Name the half with the outside thread first.",
)

CODES = (SURFACE_CLAIMED, THREADED_BACKWARDS)
