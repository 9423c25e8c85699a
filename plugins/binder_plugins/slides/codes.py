"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

SIZE_MISSING = Code(
    "dovetail-size-missing",
    Severity.ERROR,
    "A dovetail slide whose width nothing tells.",
    "Both halves follow from one width across the root of the tail; without it there is none.",
    "joints:\n  table on bed: {dovetailed: [table.underside, bed.top]}",
    "Write `width:`, about half of the narrower part.",
)
HALVES_DIFFER = Code(
    "dovetail-halves-differ",
    Severity.ERROR,
    "The two halves of a dovetail are written, and they do not go together.",
    "The slot rides on an edge, or the tail does not enter: seen when both are cut.",
    "joints:\n  table on bed: {dovetailed: [table.slot, bed.tail]}   # 55 deg and 60 deg",
    "Write one half and leave the other `to suit`.",
)
TOO_DEEP = Code(
    "dovetail-too-deep",
    Severity.ERROR,
    "A dovetail that leaves too little metal under it, or is wider than its part.",
    "The slot breaks through, or its lips spring open when the gib is tightened.",
    "joints:\n  table on bed: {dovetailed: [table.underside, bed.top], width: 20 mm, depth: 8 mm}",
    "Make it shallower or narrower, or the part thicker.",
)
CANNOT_BE_CUT = Code(
    "dovetail-cannot-be-cut",
    Severity.ERROR,
    "Sizes of a dovetail that no tail and slot can have.",
    "The flanks meet before the depth is reached, or nothing is left of the gib.",
    "joints:\n  table on bed: {dovetailed: [table.slot, bed.tail], width: 20 mm, angle: 10 deg}",
    "Follow the way out that the remark names.",
)
PINS_WRONG = Code(
    "dovetail-pins-wrong",
    Severity.ERROR,
    "Pins to measure a dovetail that do not rest on its flanks.",
    "They ride on the broken edge or sit in the saw-cut, and the size read means nothing.",
    "joints:\n  table on bed: {dovetailed: [table.underside, bed.top], width: 20 mm, pins: 12 mm}",
    "Take two equal pins of the range named; drill shanks serve.",
)
CUTTER_NOT_OWNED = Code(
    "dovetail-cutter-not-owned",
    Severity.WARNING,
    "No dovetail cutter in the workshop cuts this angle and depth.",
    "The set-up is made, and the cutter turns out too shallow or of the other angle.",
    "joints:\n  table on bed: {dovetailed: [table.slot, bed.tail], width: 20 mm, angle: 45 deg}",
    "Take the angle and depth of the cutter that is owned, or put one on the shopping list.",
)
NOT_ADJUSTABLE = Code(
    "slide-not-adjustable",
    Severity.ADVICE,
    "A dovetail slide without a gib.",
    "It shakes from the first day on, or binds, and nothing can be done but to make it again.",
    "joints:\n  table on bed: {dovetailed: [table.underside, bed.top], width: 20 mm}",
    "Give it a gib, or say `because:` where the two are fixed together.",
)
GIB_NOT_SET = Code(
    "gib-screws-have-no-room",
    Severity.WARNING,
    "A gib beside a slot so shallow that no owned tap makes a hole for its screws.",
    "The screws break out of the face, or bear above the gib and tip it.",
    "joints:\n  table on bed: {dovetailed: [table.slot, bed.tail], depth: 2 mm, gib: 1 mm}",
    "Cut the dovetail deeper, or buy a smaller tap.",
)
GIB_SIDE_WRONG = Code(
    "gib-on-no-flank",
    Severity.ERROR,
    "A gib on a side of its part where the slot has no flank.",
    "Its screws would be drilled through the floor of the slot, or along it.",
    "joints:\n  table on bed: {dovetailed: [table.tail, bed.way], gib: 2 mm, gib_side: top}",
    "Say one of the two sides beside the slot, or leave `gib_side:` out.",
)
FEED_NOT_HELD = Code(
    "feed-screw-not-held",
    Severity.WARNING,
    "A screw that is to move a slide by its nut, and that no other joint holds.",
    "Turned, it screws itself into the nut, and the slide stays where it is.",
    "joints:\n  slide on bed: {dovetailed: [slide.tail, bed.way], width: 14 mm}\n"
    "  feed: {leads: [feed_screw.thread, slide.nut]}",
    "Let it run in a bracket with a collar on both sides, or give the nut to what stands still.",
)
RECKON_UNREADABLE = Code(
    "slide-question-unreadable",
    Severity.ERROR,
    "A question about a slide, taper, screw or board that cannot be read or has no answer.",
    "A sum from a misread word would be cut in metal.",
    "binder reckon dovetail root 24 mm depth",
    "Write each word with its size, as the usage shows.",
)

CODES = (
    SIZE_MISSING,
    HALVES_DIFFER,
    TOO_DEEP,
    CANNOT_BE_CUT,
    PINS_WRONG,
    CUTTER_NOT_OWNED,
    NOT_ADJUSTABLE,
    GIB_NOT_SET,
    GIB_SIDE_WRONG,
    FEED_NOT_HELD,
    RECKON_UNREADABLE,
)
