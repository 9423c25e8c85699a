"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

RING_UNKNOWN = Code(
    "seal-ring-unknown",
    Severity.ERROR,
    "An O-ring that cannot be read, or that no groove is listed for.",
    "A groove is cut for a ring that no shop sells.",
    "joints:\n  piston in barrel: {sealed: [piston.body, barrel.bore], ring: 4.6 mm}",
    "Write `inside x cord`, an AS568 number or the cord alone; or leave it out.",
)
SIZE_MISSING = Code(
    "seal-size-missing",
    Severity.ERROR,
    "A seal round something whose diameter nothing tells.",
    "Groove, ring and packing all follow from that one diameter.",
    "joints:\n  rod in gland: {packed: [rod, gland.top]}",
    "Name the step or the bore that meets, or write `bore:`.",
)
SQUEEZE_OUT = Code(
    "seal-squeeze-out",
    Severity.WARNING,
    "An O-ring that its groove presses too little or too much.",
    "Too little leaks; too much grips like a brake, wears and splits.",
    "features:\n  groove: {grooved: 2.4 mm, depth: 1.2 mm, on: body}   # for a 1.8 mm ring",
    "Take the depth that the remark names.",
)
STRETCH_OUT = Code(
    "seal-stretch-out",
    Severity.WARNING,
    "An O-ring much too small or too large for its seat.",
    "Stretched it thins and cracks; too large it buckles and is cut on the way in.",
    "joints:\n  piston in barrel: {sealed: [piston.body, barrel.bore], ring: 8 mm x 1.8 mm}",
    "Take the ring that the remark names.",
)
FILL_OUT = Code(
    "seal-fill-out",
    Severity.WARNING,
    "An O-ring that leaves its groove half empty, or has no room to swell.",
    "In too wide a groove it rolls and twists; in too narrow a one it is crushed.",
    "features:\n  groove: {grooved: 4 mm, depth: 1.4 mm, on: body}   # for a 1.8 mm ring",
    "Cut the groove as wide as the remark says.",
)
GROOVE_WRONG = Code(
    "seal-groove-wrong",
    Severity.ERROR,
    "A groove that is written, and does not suit its O-ring.",
    "The ring drops in and does not touch, or the part does not go in over it.",
    "features:\n  groove: {grooved: 2.4 mm, depth: 2 mm, on: body}   # for a 1.8 mm ring",
    "Write the sizes that the remark names, or leave the groove `to suit`.",
)
LEAD_MISSING = Code(
    "seal-lead-missing",
    Severity.WARNING,
    "The edge over which an O-ring goes in is too steep or too short.",
    "It shaves the ring as it passes, and the cut is found when it leaks.",
    "features:\n  edge: {chamfered: 0.5 mm, on: barrel}",
    "Chamfer it at 15° as long as the remark says, or leave the chamfer to the joint.",
)
GASKET_MISSING = Code(
    "gasket-missing",
    Severity.WARNING,
    "A gasketed joint that names no gasket.",
    "Its thickness goes into the length of screws and studs, and nobody has bought it.",
    "joints:\n  cover on case: {gasketed: [cover.underside, case.top]}",
    "Write `gasket:` and, where it is not the usual one, `thickness:`.",
)
GASKET_UNKNOWN = Code(
    "gasket-unknown",
    Severity.ERROR,
    "A gasket of a sheet that is not known here, or is not made so thick.",
    "How far it is pulled down is unknown, and so is the gap.",
    "joints:\n  cover on case: {gasketed: [cover.underside, case.top], gasket: felt}",
    "Take one of the sheets and thicknesses that the remark names.",
)
GASKET_NOT_HELD = Code(
    "gasket-not-held",
    Severity.WARNING,
    "A gasket between two parts that no screw, bolt or stud pulls together.",
    "It weeps from the first day on.",
    "joints:\n  cover on case: {gasketed: [cover.underside, case.top], gasket: oiled paper}",
    "Add the joint that holds the two: its screws reckon with the gasket.",
)
BOX_WRONG = Code(
    "packing-box-wrong",
    Severity.ERROR,
    "A stuffing box that its packing does not fill, or that breaks through its part.",
    "Packing too thin never seals; too thick cannot be got in.",
    "features:\n  box: {bored: 12 mm, on: top, depth: 10 mm}   # round a 6 mm rod, 2 mm packing",
    "Bore it as the remark says, or leave it `to suit`.",
)
PACKING_WRONG = Code(
    "packing-wrong",
    Severity.WARNING,
    "Packing whose section does not suit its rod.",
    "Thin packing on a stout rod burns out; thick packing on a thin one grips it.",
    "joints:\n  rod in gland: {packed: [rod.body, gland.top], packing: 6 mm}",
    "Take about a third of the rod's diameter.",
)
RECKON_UNREADABLE = Code(
    "seal-question-unreadable",
    Severity.ERROR,
    "A question about a seal that cannot be read or has no answer.",
    "A sum from a misread word would be cut in metal.",
    "binder reckon oring bore",
    "Write each word with its size, as the usage shows.",
)

CODES = (
    RING_UNKNOWN,
    SIZE_MISSING,
    SQUEEZE_OUT,
    STRETCH_OUT,
    FILL_OUT,
    GROOVE_WRONG,
    LEAD_MISSING,
    GASKET_MISSING,
    GASKET_UNKNOWN,
    GASKET_NOT_HELD,
    BOX_WRONG,
    PACKING_WRONG,
    RECKON_UNREADABLE,
)
BY_NAME = {code.name: code for code in CODES}
