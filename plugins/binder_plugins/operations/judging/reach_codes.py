"""What can be reported of tools that do not get there, and of work that does not go in."""

from __future__ import annotations

from binder.api import Code, Severity

W, A = Severity.WARNING, Severity.ADVICE

DRILL_TOO_SHORT = Code(
    "drill-too-short",
    W,
    "A hole deeper than the flutes of a drill of the usual (jobber) length, ISO 235.",
    "Once the flutes are in the hole the chips have no way out: it packs, seizes and breaks.",
    "features:\n  oil: {drilled: 2 mm, on: end, depth: 30 mm}   # flutes of 24 mm",
    "Write a long-series drill on the list, drill from both ends, or step it from a larger hole.",
)
QUILL_TOO_SHORT = Code(
    "quill-too-short",
    W,
    "A hole deeper than the travel of the drilling machine that makes it.",
    "The table is raised half-way, and the drill goes on beside its own hole.",
    "features:\n  bore: {drilled: 8 mm, on: end, depth: 70 mm}   # the quill travels 50 mm",
    "Drill it in the lathe, or from both ends, or in a mill with more travel.",
)
BEYOND_THROAT = Code(
    "beyond-throat",
    W,
    "A hole farther from every edge than the spindle of the drilling machine from its column.",
    "The column stands where the plate should be.",
    "plate: {length: 300 mm, width: 260 mm, ...}   # a hole in its middle, throat 105 mm",
    "A hand drill with a guide, a mill with more room, or the hole before the plate is cut out.",
)
BORE_TOO_DEEP = Code(
    "bore-too-deep",
    W,
    "A bore deeper than any boring bar here reaches that enters it, or, where none enters, "
    "deeper than four times its diameter (common practice).",
    "The bar bends away: the bore is tapered and bell-mouthed, and no finishing cut mends it.",
    "features:\n  bore: {bored: 9 mm, on: body, depth: through}   # 50 mm deep, bar of 30 mm reach",
    "Ream it, a D-bit, or bore it from both ends with a relief in the middle.",
)
TAPER_BORE_TOO_SMALL = Code(
    "taper-bore-too-small",
    W,
    "A taper bore whose small end, as it is drilled, no boring bar of this workshop enters.",
    "The bar goes in at the mouth and rubs where it narrows: it is found out at the machine.",
    "features:\n  bore: {bored: 7 mm, narrows_to: 6 mm, on: hub, depth: through}   # bar from 8 mm",
    "Grind a small boring tool and list it under `others:`; a taper reamer; or a larger taper.",
)
VICE_TOO_SMALL = Code(
    "vice-too-small",
    W,
    "Work that is gripped across more than its vice opens.",
    "It is found out at the machine, with the cutter in.",
    "block: {length: 90 mm, width: 80 mm, height: 70 mm}   # a vice that opens 65 mm",
    "Clamp it to the table against a stop, or to an angle plate.",
)
NECK_TOO_NARROW = Code(
    "neck-too-narrow",
    W,
    "A turned step between two thicker ones, shorter than the parting tool here is wide.",
    "No owned tool goes in between, and one ground thin for it bends and digs in.",
    "turned: [{diameter: 12 mm, ...}, {diameter: 8 mm, length: 1.5 mm}, {diameter: 12 mm, ...}]",
    "Make the gap as wide as the tool, grind a narrow one for it, or fit one flange separately.",
)
STARTS_ON_SLOPE = Code(
    "starts-on-slope",
    W,
    "A hole drilled into a surface that slopes more than 10° to the drill (common practice): a "
    "cone, a ball, or a hole that leans.",
    "The point slides downhill before it cuts, and the drill bends, wanders or snaps.",
    "features:\n  hole: {drilled: 2 mm, across: cone, depth: through}   # a cone of 1 in 2",
    "Mill a flat first with a slot drill of its size, or use a guide bush that touches the slope.",
)
DRILL_BRUSHES_STEP = Code(
    "drill-brushes-step",
    W,
    "A hole in a face beside a higher turned step, closer to it than a free size may be out: "
    "0.1 mm (half of ISO 2768-1 medium, to 6 mm).",
    "The drill rubs on the step on its way down, runs off its start, and marks the step.",
    "features:\n  tie: {drilled: 1 mm, on: flange, pattern: 1 off on 9.4 mm PCD}   # neck ⌀8.3 mm",
    "Turn the step thinner, set the hole farther out, or drill it before the step is put on.",
)
TAPPED_DEEPER_THAN_NEEDED = Code(
    "tapped-deeper-than-needed",
    A,
    "A thread tapped for more than three diameters (common practice).",
    "The screw breaks before two diameters of thread let go; the rest only breaks taps.",
    "features:\n  hole: {tapped: M3, on: top, depth: through}   # in a block 20 mm thick",
    "Open the far part out with a clearance drill, or give the thread a depth of two diameters.",
)

REACH_CODES = (
    DRILL_TOO_SHORT,
    QUILL_TOO_SHORT,
    BEYOND_THROAT,
    BORE_TOO_DEEP,
    TAPER_BORE_TOO_SMALL,
    VICE_TOO_SMALL,
    NECK_TOO_NARROW,
    STARTS_ON_SLOPE,
    DRILL_BRUSHES_STEP,
    TAPPED_DEEPER_THAN_NEEDED,
)
