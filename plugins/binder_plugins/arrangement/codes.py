"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

PARTS_DO_NOT_MEET = Code(
    "parts-do-not-meet",
    Severity.WARNING,
    "Two joints, or a joint and a position, put one part in two places.",
    "Holes that miss each other by a millimetre are found with the screw in the hand.",
    "joints:\n  a: {screwed: [cheek.top, block.left]}\npositions:\n"
    "  cheek: {at: 3 mm left of block.left}   # 3 mm off the face that it is screwed to",
    "Correct the size that is wrong; leave a position out where a joint says it already.",
)
PART_NOT_PLACED = Code(
    "part-not-placed",
    Severity.ADVICE,
    "No joint and no position says where a part stands.",
    "It is missing from the general arrangement, and nobody looks whether it has room.",
    "joints:\n  rope: {tied: [cord, hook]}   # a knot says nothing of the place",
    "Write the joint that holds it, or where it stands: "
    "`positions: hook: {at: 20 mm below block}`.",
)
PLACE_LEFT_OPEN = Code(
    "place-left-open",
    Severity.ADVICE,
    "A part lies on a face, and nothing says where on it.",
    "The drawing shows it in the middle; the screw holes may want it elsewhere.",
    "joints:\n  bed on base: {glued: [bed.underside, base.top]}",
    "Write `positions: bed: {on: base.top, at: 20 mm from left}`, or `middle of base`.",
)
POSITION_UNKNOWN = Code(
    "position-unknown",
    Severity.ERROR,
    "A position names a part or a place that is not there.",
    "What is measured from nothing cannot be set up.",
    "positions:\n  lamp: {at: 20 mm above base.topp}",
    "Name a part, and a face, step or feature of it.",
)
POSITION_NOT_READ = Code(
    "position-not-read",
    Severity.ERROR,
    "The words of a position cannot be read.",
    "The part would be drawn where chance puts it.",
    "positions:\n  lamp: {at: somewhere on the base}",
    "Write a distance and what it is from (`35 mm above base.top`, `10 mm left of post`, "
    "`6 mm from left` of the face that it is `on`), or `middle of base`.",
)
SLIDE_OFF_WAY = Code(
    "slide-off-its-way",
    Severity.WARNING,
    "A slide stands with less than half of it on the way that carries it.",
    "It tips, or falls off before it has gone anywhere.",
    "joints:\n  slide on bed: {dovetailed: [slide.tail, bed.way]}   # off its end",
    "Say where the slide stands, or turn the screw round that moves it.",
)
SEAT_MISSED = Code(
    "seat-missed",
    Severity.WARNING,
    "A piece stands beside the step of its shaft, or the filed seat, that is made for it.",
    "The step that is finished to size carries nothing, and the piece sits on another.",
    "shafts:\n  axle: {along: [wheel, cheek.bore, hub, cheek.bore], apart: 24 mm}\n"
    "joints:\n  hub on axle: {retained: [hub.bore, axle.end]}   # the row puts it in the middle",
    "Give the steps of the shaft the lengths of what stands along it.",
)
FLAT_MISSED = Code(
    "flat-missed",
    Severity.WARNING,
    "A grub screw comes down beside the flat that is made for it.",
    "It bites the round of the shaft, raises a burr, and the hub will not come off again.",
    "features:\n  flat: {flatted: 5.5 mm, on: seat, length: 6 mm}   # in the middle of the seat",
    "Write where the flat lies (`at: 5 mm from left`), under the screw of the hub.",
)
PARTS_COLLIDE = Code(
    "parts-collide",
    Severity.WARNING,
    "Two parts stand in one another.",
    "One of them will not go in, and which one has to be filed is found at the end.",
    "positions:\n  pulley: {at: 0 mm above base.top}   # on a shaft 10 mm above it",
    "Move one of them, or make room; what is meant to share its room needs a joint.",
)
PART_CAGED = Code(
    "part-is-caged",
    Severity.WARNING,
    "One part holds another so that it comes out in none of six directions, nor along its joint.",
    "What cannot be taken out by a straight pull could not be put in by one.",
    "positions:\n  ball: {at: middle of box}   # a box closed all round",
    "Split one of the parts round it, or leave one side open.",
)
WHEEL_WANDERS = Code(
    "wheel-wanders",
    Severity.WARNING,
    "A wheel that runs loose on a pin has room to wander between what stands on both sides.",
    "It runs askew, rubs on one plate, and the rope or the tooth beside it goes with it.",
    "joints:\n  sheave on pin: {runs_in: [sheave.bore, pin.rod]}   # 4 mm wide, plates 12 mm apart",
    "Put a spacer on either side of it, give it a boss, or the pin shoulders.",
)

CODES = (
    WHEEL_WANDERS,
    PARTS_DO_NOT_MEET,
    PART_NOT_PLACED,
    PLACE_LEFT_OPEN,
    POSITION_UNKNOWN,
    POSITION_NOT_READ,
    SLIDE_OFF_WAY,
    SEAT_MISSED,
    FLAT_MISSED,
    PARTS_COLLIDE,
    PART_CAGED,
)
