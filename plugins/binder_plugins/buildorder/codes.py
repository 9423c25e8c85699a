"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

ORDER_LOOPS = Code(
    "order-loops",
    Severity.ERROR,
    "Tasks wait for one another in a ring.",
    "There is nowhere to start.",
    "joints:\n  one: {slides: [a.x, b.y], master: a.x}\n  two: {slides: [b.z, a.w], master: b.z}",
    "Change the master of one of the joints that are named, or mark one `because:`.",
)
WAITS_FOR_UNMEASURED = Code(
    "waits-on-unmeasured",
    Severity.WARNING,
    "A part is made to fit a bought or salvaged item of which no size is measured first.",
    "Catalogue sizes are nominal, and scrap has none: the part is made to a guess.",
    "scrap_box:\n  gear: {what: clock gear}\njoints:\n  gear on axle: {pressed: [gear, axle.seat]}",
    "Name the size under `measure_first:`, so that the build order waits for it.",
)
TESTED_TOO_SOON = Code(
    "tested-too-soon",
    Severity.WARNING,
    "An assembly is tested before what carries its motion is held.",
    "Two loose bearings have no line, and a screw moves nothing whose way is not there: the test "
    "passes or fails by how the hands hold it.",
    "assemblies:\n  line: {of: [shaft, 2 off hanger], test: it spins}   # hangers held by the base",
    "Put the item that holds it in the assembly, or leave the test to the next assembly.",
)
PUT_ON_BY_NO_STEP = Code(
    "put-on-by-no-step",
    Severity.ADVICE,
    "A piece goes into an assembly, and no step puts it on.",
    "It lies on the bench when all is closed, or is looked for when it should go on.",
    "assemblies:\n  winch: {of: [shaft, cheek, washer]}   # in no joint, in no row",
    "Put it in a joint, in the row along its shaft, or say in `steps:` of the assembly where it "
    "goes.",
)
HEAD_OUT_OF_REACH = Code(
    "head-out-of-reach",
    Severity.WARNING,
    "Something stands over the head of a screw, or over a nut, by the time that it is driven.",
    "No blade or spanner gets to it: it stays slack, or all has to come apart again.",
    "assemblies:\n  mast: {of: [foot, post, deck]}   # the deck over the screws of the foot\n"
    "  whole: {of: [mast, base]}",
    "Put the two that it holds together in an assembly before the other goes on, or give that one "
    "a hole for the tool.",
)

CODES = (
    ORDER_LOOPS,
    WAITS_FOR_UNMEASURED,
    TESTED_TOO_SOON,
    PUT_ON_BY_NO_STEP,
    HEAD_OUT_OF_REACH,
)
