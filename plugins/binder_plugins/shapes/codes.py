"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

SIZE_MISSING = Code(
    "size-missing",
    Severity.ERROR,
    "A part whose shape is not closed: a length or section is not told.",
    "The maker would have to scale it off the paper.",
    "parts:\n  pin: {material: brass, stock: round bar}",
    "Give the part a shape (turned, block, plate ...), or the size that is named.",
)
SIZES_DO_NOT_ADD = Code(
    "sizes-do-not-add",
    Severity.ERROR,
    "The lengths of the steps do not come to the overall length.",
    "One of them is wrong, and the part made by it is scrap.",
    "turned:\n  - {diameter: 6 mm, length: 10 mm}\noverall: 12 mm",
    "Correct one, or write `length: rest` for the step that takes what is left.",
)
REST_TWICE = Code(
    "rest-twice",
    Severity.ERROR,
    "More than one step takes the rest of the length.",
    "It cannot be told how the rest is shared.",
    "turned:\n  - {diameter: 6 mm, length: rest}\n  - {diameter: 4 mm, length: rest}",
    "Give all but one of them a length.",
)
SECTION_UNCLEAR = Code(
    "section-unclear",
    Severity.ERROR,
    "A step has no section, or more than one.",
    "It is turned to a diameter, tapered, or left square or hexagon: one of them.",
    "turned:\n  - {length: 10 mm}",
    "Write one of diameter, taper, hexagon or square.",
)
STOCK_TOO_SMALL = Code(
    "stock-too-small",
    Severity.ERROR,
    "The part is larger than the stock it is cut from.",
    "It is found out with the bar in the chuck.",
    "stock: 10 mm round bar\nturned:\n  - {diameter: 12 mm, length: 5 mm}",
    "Take larger stock, or make the part smaller.",
)
STOCK_WRONG_FORM = Code(
    "stock-wrong-form",
    Severity.ERROR,
    "The form of stock cannot give this shape.",
    "A sheet cannot be turned between centres.",
    "stock: 2 mm sheet\nturned: [...]",
    "Take a form that fits the shape.",
)
STILL_TO_SUIT = Code(
    "still-to-suit",
    Severity.ERROR,
    "A feature or step is left to suit, and no joint says what it has to suit.",
    "It cannot be drilled: nobody knows how large.",
    "features:\n  bore: {reamed: to suit, on: boss, depth: through}   # and no joint names it",
    "Write its size, or the joint in which it meets another part.",
)
PLACE_ON_NOTHING = Code(
    "place-on-nothing",
    Severity.ERROR,
    "A feature lies on a step or feature that the part does not have.",
    "It cannot be marked out.",
    "features:\n  hole: {drilled: 3 mm, on: shnak}",
    "Take the name that is offered, or name the step.",
)
DEEPER_THAN_PART = Code(
    "deeper-than-part",
    Severity.ERROR,
    "A hole is told deeper than the part is long.",
    "The drill comes out on the other side, into the chuck.",
    "overall: 10 mm\nfeatures:\n  hole: {drilled: 3 mm, depth: 12 mm}",
    "Write `depth: through`, or a depth inside the part.",
)
HOLE_OUT_OF_STEP = Code(
    "hole-out-of-step",
    Severity.ERROR,
    "A hole on the axis is as large as the step that it is cut in, or larger.",
    "Nothing would be left of the step.",
    "turned: [{name: neck, diameter: 6 mm, length: 8 mm}]\n"
    "features: {bore: {reamed: 6 mm, on: neck}}",
    "A smaller hole, or a larger step.",
)

SECTION_NOT_SOLD = Code(
    "section-not-sold",
    Severity.ADVICE,
    "A section that is not in the series of what is sold in this form.",
    "The bar cannot be ordered; the next larger one has to be turned down or filed.",
    "stock: 13.37 mm round bar",
    "Take the nearest that is sold, which is named, or say `because:` where it lies in the drawer.",
)

CODES = (
    SIZE_MISSING,
    SIZES_DO_NOT_ADD,
    REST_TWICE,
    SECTION_UNCLEAR,
    STOCK_TOO_SMALL,
    STOCK_WRONG_FORM,
    PLACE_ON_NOTHING,
    STILL_TO_SUIT,
    DEEPER_THAN_PART,
    HOLE_OUT_OF_STEP,
    SECTION_NOT_SOLD,
)
