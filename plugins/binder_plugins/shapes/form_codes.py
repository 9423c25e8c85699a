"""What the plugin can report of features on their part: places, walls, reach."""

from __future__ import annotations

from binder.api import Code, Severity

PLACE_NOT_READ = Code(
    "place-not-read",
    Severity.WARNING,
    "Words after `at:` that place nothing on this part.",
    "The drawing would show it in the middle, and so it would be made.",
    "features:\n  hole: {drilled: 3 mm, on: top, at: near the left}",
    "Measure it from a face, step or feature: `6 mm from left`; or write `at: middle`.",
)
PATTERN_NOT_LAID_OUT = Code(
    "pattern-not-laid-out",
    Severity.WARNING,
    "Several of a feature, and nothing that tells where each stands.",
    "They are marked out by guess, and the mate's holes by another guess.",
    "features:\n  holes: {drilled: 3 mm, on: top, off: 5}",
    "Add a `pattern:`, as `on 16 mm PCD`, `in a row at 8 mm` or `at the corners, 6 mm in`.",
)
STACK_OF_OTHERS = Code(
    "stack-of-others",
    Severity.ERROR,
    "A stack has a piece that the fabrication is not made of, or more of one than it has.",
    "The drawing would show another thing than the pieces that lie on the bench.",
    "pieces: [2 off side]\nstack: [{piece: side}, {piece: bar}, {piece: side}]",
    "Put the piece under `pieces:`, with as many as the stack has.",
)
STACK_NOT_LAID_OUT = Code(
    "stack-not-laid-out",
    Severity.WARNING,
    "A layer of a stack whose places cannot be told.",
    "The joined thing cannot be drawn, nor what is cut in it afterwards.",
    "stack: [{piece: side}, {piece: bar, off: 4}]",
    "Say how several lie: `pattern: in a row, 30 mm apart`; and give each piece a shape.",
)
RIVET_STOPPED = Code(
    "rivet-stopped",
    Severity.WARNING,
    "A piece of a riveted stack lies over the rivet holes of the piece below it, and its own holes"
    " are elsewhere, or run across.",
    "It is found out with the parts drilled, and drilled again beside the first holes.",
    "joined: riveted\nstack:\n  - {piece: side}\n  - {piece: bar, stands: on end}"
    "   # its holes run across now",
    "Turn it with `stands:`, or give the layer the `pattern:` of the holes.",
)
HAND_OF_ROUND_WORK = Code(
    "hand-of-round-work",
    Severity.ERROR,
    "A part is the opposite hand of one that has no left and right by its shape.",
    "Round work, wire and gears are told from their first face: left and right in their words are"
    " its ends, and would be exchanged into another part.",
    "parts:\n  nip: {like: pin, mirrored: true}   # the pin is turned",
    "Leave out `mirrored:`, and write what differs under `features:`.",
)
HANDS_ALIKE = Code(
    "hands-alike",
    Severity.ADVICE,
    "A part is marked as a pair of hands, and each is the mirror of itself.",
    "The second is marked out the other way round with care, and nobody can tell them apart after.",
    "parts:\n  post:\n    handed: true\n    block: {length: 40 mm, width: 12 mm, height: 8 mm}\n"
    "    features: {seat: {tapped: M4, on: front, depth: through, at: 30 mm from left}}",
    "Leave out `handed:`, and make both alike.",
)

HOLE_OUT_OF_METAL = Code(
    "hole-out-of-metal",
    Severity.ERROR,
    "A hole whose middle or rim lies outside the face that it is cut in, or that leaves nothing"
    " of a step that it passes.",
    "The drill runs off at the edge, and the part is a horseshoe.",
    "block: {length: 20 mm, width: 6 mm, height: 6 mm}\n"
    "features:\n  hole: {drilled: 6 mm, on: front, depth: through}",
    "Move it in, make it smaller, or the part larger.",
)
WALL_TOO_THIN = Code(
    "wall-too-thin",
    Severity.WARNING,
    "Less metal between a hole or slot and an edge, its neighbour or another cut, from whatever"
    " face it comes, than 0.8 mm, or than half the hole (2 mm is always enough), or than 0.5 mm"
    " between the point of the drill and a slot or hole before it; common practice.",
    "It bulges when the hole is reamed, and breaks out at the first knock.",
    "features:\n  hole: {drilled: 4 mm, on: top, depth: through, at: 3 mm from left}",
    "Move the hole, or make it smaller.",
)
FEATURES_OVERLAP = Code(
    "features-overlap",
    Severity.WARNING,
    "Two holes that run into each other, one that breaks into the side of a slot or dovetail,"
    " screws of two joints in one place, or a feature of which another leaves nothing.",
    "The drill runs off into the first hole; or work is done that nobody will see.",
    "features:\n  pilot: {drilled: 4 mm, on: top, depth: 5 mm}\n"
    "  bore: {bored: 12 mm, on: top, depth: 8 mm}",
    "Set them apart, on one axis, or leave out the smaller.",
)
POCKET_CORNER_TOO_SHARP = Code(
    "pocket-corner-too-sharp",
    Severity.WARNING,
    "The upright corners of a pocket are sharper than the smallest end mill of this workshop.",
    "A milled corner is as round as its cutter; the rest is hours with a file.",
    "features:\n  pocket: {pocketed: 20 mm, width: 12 mm, depth: 4 mm, corner: 0.5 mm}",
    "Take the radius of a cutter that is owned, or drill the corners out first.",
)
CUTTER_CANNOT_REACH = Code(
    "cutter-cannot-reach",
    Severity.WARNING,
    "A cut that is deeper than its cutter reaches (three times its diameter; common practice),"
    " that no boring bar goes into, or into which its cutter finds no way.",
    "It chatters, cuts taper and snaps; or it never gets in.",
    "features:\n  slot: {slotted: 3 mm, on: top, depth: 14 mm}",
    "Shallower, wider, or from the other side; let a T-slot or dovetail run out at one end.",
)
TOO_BIG_FOR_MACHINE = Code(
    "too-big-for-machine",
    Severity.ERROR,
    "A turned part that no lathe of this workshop swings, or takes between its centres.",
    "It is found out with the blank in the chuck.",
    "flywheel: {outside: 240 mm, ...}   # in a lathe that swings 190 mm",
    "Another scale, two pieces, the rotary table, or a friend with a larger lathe.",
)
EDGE_TOO_LARGE = Code(
    "edge-too-large",
    Severity.WARNING,
    "A chamfer or round that takes more than the metal beside its edge.",
    "The two sides meet in a knife edge, or the part comes out shorter.",
    "plate: {length: 20 mm, width: 10 mm, thickness: 2 mm}\n"
    "features:\n  corners: {rounded: 6 mm, on: corners}",
    "Make it smaller; half the width gives a round end.",
)

ANGLE_NOT_CUT = Code(
    "angle-not-cut",
    Severity.ERROR,
    "An angle that no cutter has and no set-up gives: a flat countersink, a chamfer along its"
    " own face, a hole that leans more than 60 degrees.",
    "Mostly the angle is told from the other side.",
    "features:\n  sink: {countersunk: 6 mm, on: top, angle: 0 deg}",
    "Tell a countersink by its whole angle, an edge by the angle to its face.",
)

STEP_NAMED_LIKE_FACE = Code(
    "step-named-like-face",
    Severity.WARNING,
    "A step of turned work has the name of a face that every part has.",
    "A joint that names it gets the end of the bar, and the fit goes on the wrong diameter.",
    "turned:\n  - {name: top, diameter: 8 mm, length: 20 mm}",
    "Name it for what it does: stud, journal, tenon.",
)

BESIDE_ITS_STEP = Code(
    "beside-its-step",
    Severity.ERROR,
    "A groove, undercut, knurl or thread that its place sets on another step than the one it is"
    " told to be on.",
    "It is cut at the wrong end of the bar, and where it is wanted there is none.",
    "turned:\n  - {name: body, diameter: 8 mm, length: 20 mm}\n"
    "  - {name: tail, diameter: 5 mm, length: 6 mm}\n"
    "features:\n  relief: {undercut: 1 mm, on: tail, at: 0.5 mm from left, depth: 0.4 mm}",
    "Place it from the shoulder, as `0.5 mm from body`; `from left` is the end of the whole part.",
)

FORM_CODES = (
    BESIDE_ITS_STEP,
    STEP_NAMED_LIKE_FACE,
    STACK_OF_OTHERS,
    STACK_NOT_LAID_OUT,
    HAND_OF_ROUND_WORK,
    HANDS_ALIKE,
    PLACE_NOT_READ,
    PATTERN_NOT_LAID_OUT,
    HOLE_OUT_OF_METAL,
    WALL_TOO_THIN,
    FEATURES_OVERLAP,
    POCKET_CORNER_TOO_SHARP,
    CUTTER_CANNOT_REACH,
    TOO_BIG_FOR_MACHINE,
    EDGE_TOO_LARGE,
    ANGLE_NOT_CUT,
    RIVET_STOPPED,
)
