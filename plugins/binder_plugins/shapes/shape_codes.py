"""What the plugin can report of the wider vocabulary of shapes."""

from __future__ import annotations

from binder.api import Code, Severity

OUTLINE_OPEN = Code(
    "outline-does-not-close",
    Severity.ERROR,
    "The points of an outline or profile do not make one: two lie in one place, an arc does not"
    " reach from one to the next, a corner has no room.",
    "It cannot be marked out; somebody would guess the point that is wrong.",
    "sheet:\n  points: [{x: 0 mm, y: 0 mm}, {x: 20 mm, y: 0 mm}, {x: 20 mm, y: 10 mm, arc: 2 mm}]",
    "Look at the point that is named: its place, its radius, or the points beside it.",
)
BEND_NO_ROOM = Code(
    "bend-has-no-room",
    Severity.ERROR,
    "A bend in sheet or wire that takes more of its legs than they have.",
    "The bends run into each other, and the flange comes out short.",
    "sheet: {length: 20 mm, bends: [{at: 3 mm, angle: 90 deg, inside: 4 mm}]}",
    "A smaller radius, or longer legs beside the bend.",
)
TEETH_CANNOT_BE = Code(
    "teeth-cannot-be-cut",
    Severity.ERROR,
    "Teeth that cannot be: pointed below their tips, run together, or deeper than the wheel.",
    "The blank is spoilt by the second tooth.",
    "gear: {module: 1 mm, teeth: 3, width: 4 mm}",
    "More teeth, a smaller module or pitch, or shallower teeth.",
)
SIZES_OUT_OF_ORDER = Code(
    "sizes-out-of-order",
    Severity.ERROR,
    "Sizes that must grow one over the other do not: a bore as wide as its tube, a hub that"
    " reaches the rim, a groove down to the axis, a spring wound tighter than its wire.",
    "There is no such part.",
    "tube: {outside: 10 mm, bore: 10 mm, length: 20 mm}",
    "One of the sizes that are named belongs to another part, or is a radius for a diameter.",
)

SHAPE_CODES = (OUTLINE_OPEN, BEND_NO_ROOM, TEETH_CANNOT_BE, SIZES_OUT_OF_ORDER)
