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

JOINT_SAID_TWICE = Code(
    "joint-said-twice",
    Severity.ERROR,
    "Two joints of one kind join the same places of the same parts.",
    "The holes would be drilled twice, and the screws bought twice.",
    "joints:\n  lid on box: {screwed: [lid.underside, box.top], fastener: M3 cap screw}\n"
    "  lid again: {screwed: [lid.underside, box.top], fastener: M3 cap screw}",
    "Drop one; where there are more of them, say so by `pattern:`.",
)
PART_WITH_ITSELF = Code(
    "part-with-itself",
    Severity.ERROR,
    "A joint names one part alone, of which only one is made.",
    "A part cannot be screwed to itself; one of the names is a slip.",
    "joints:\n  lid on box: {screwed: [lid.underside, lid.top], fastener: M3 cap screw}",
    "Name the other part, or make two of this one.",
)
BORE_OF_TWO_SIZES = Code(
    "bore-of-two-sizes",
    Severity.ERROR,
    "Two joints make one bore fit shafts of different sizes.",
    "A bore has one size; whichever shaft comes second does not go in, or rattles.",
    "joints:\n  one: {runs_in: [axle.journal, arm.bore]}\n  two: {runs_in: [pin.rod, arm.bore]}",
    "Give each shaft a bore of its own, or step the bore.",
)
FIT_OF_TWO = Code(
    "fit-of-two",
    Severity.ERROR,
    "A fit names more than two halves.",
    "Each bore is made to its own shaft: a fit of three says neither size.",
    "joints:\n  axle: {runs_in: [axle.journal, left.bore, right.bore]}",
    "Say it in two joints, one for each bore.",
)

CODES = (
    BORE_OF_TWO_SIZES,
    JOINT_SAID_TWICE,
    PART_WITH_ITSELF,
    FIT_OF_TWO,
    SURFACE_CLAIMED,
    THREADED_BACKWARDS,
)
