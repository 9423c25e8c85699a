"""What the reading of a workshop file can report."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

E = Severity.ERROR
W = Severity.WARNING

BAD_RUN = Code(
    "bad-run",
    E,
    "A run of sizes that cannot be counted out: no step, a step that misses the end, or too "
    "many members.",
    "A drill that stands in the list and not in the box spoils the plan for the evening.",
    "drills:\n  metric: 1 mm to 13 mm by 0.7 mm",
    "Write first, last and step, as `1 mm to 13 mm by 0.5 mm`, or list the sizes.",
)
RANGE_BACKWARDS = Code(
    "range-backwards",
    E,
    "A range whose first end is not below its second.",
    "What a machine can do is looked up between the two ends; here there is nothing.",
    "speeds: 2000 r/min to 125 r/min",
    "Write the smaller end first.",
)
BAD_RANGE = Code(
    "bad-range",
    E,
    "A range is told by its two ends.",
    "With one end it cannot be known what still goes in the jaws.",
    "grips: 80 mm",
    "Write both ends, as `2 mm to 80 mm`.",
)
BAD_PITCH = Code(
    "bad-pitch",
    E,
    "A text that is no pitch of a screw.",
    "Turns of the handwheel and change wheels are worked out from it.",
    "leadscrew: 8",
    "Write it as `1.5 mm` or as `8 tpi`.",
)
BAD_DESIGNATION = Code(
    "bad-designation",
    W,
    "A tap or die whose thread cannot be read from its designation.",
    "It is printed in the tool list, and never offered for a thread of a spec.",
    "dies: [1/4 coarse]",
    "Write it as on the shank, as `M3`, `M3 x 0.35`, `2 BA` or `1/4-20 UNC`.",
)
BAD_PRICE = Code(
    "bad-price",
    E,
    "A price that is no plain amount of money.",
    "The shopping list adds prices up; a sign or a word in it cannot be added.",
    "price: about 5",
    "Write the amount alone, as 12.50; the currency is said once, under `buying`.",
)
BAD_NUMBER = Code(
    "bad-number",
    E,
    "A number that is not whole, or too small or too large for what it counts.",
    "Change wheels and hole circles have whole numbers of teeth and holes.",
    "change_wheels: [20, 25.5, 30]",
    "Write a whole number.",
)
CURRENCY_MISSING = Code(
    "currency-missing",
    W,
    "Prices are given, and no currency.",
    "A sum at the foot of the shopping list that nobody can pay in.",
    "buying:\n  prices: [{stock: 6 mm round bar, material: brass, length: 300 mm, price: 4}]",
    "Add `currency:` under `buying`.",
)
TOOL_TWICE = Code(
    "tool-twice",
    W,
    "The same tool stands twice in one list.",
    "Mostly one of the two was meant to be another size, which is then missing.",
    "dies: [M3, M4, M3]",
    "Drop one of them, or mend its size.",
)
SIZES_CONTRADICT = Code(
    "sizes-contradict",
    E,
    "Two sizes of a machine or tool that cannot both be so.",
    "Whether work fits in the machine is decided by them.",
    "lathes:\n  small lathe: {swing: 100 mm, swing_over_cross_slide: 180 mm}",
    "Measure again; mostly the two were exchanged.",
)
SHELF_SIZE_MISSING = Code(
    "shelf-size-missing",
    E,
    "Stock on the shelf, or with a price, whose section or width is not told.",
    "The cut list can lay a part on a bar only when it knows which bar it is.",
    "shelf:\n  - {stock: round bar, material: brass, length: 300 mm}",
    "Write the sizes before the form, as `20 mm round bar`, and the width of sheet.",
)
ONE_OF_TWO = Code(
    "one-of-two",
    E,
    "Two ways to say one thing, of which one must be used and not both.",
    "A gear cutter is of a module or of a diametral pitch; the two are never mixed.",
    "gear_cutters: [{numbers: [1, 2]}]",
    "Write one of the two keys.",
)
NO_MACHINE = Code(
    "no-machine",
    Severity.ADVICE,
    "A workshop without any machine.",
    "Every turned, milled or drilled part is then beyond it.",
    "format: 1\nname: kitchen table\nunits: mm",
    "List the machines that may be used, your own or a friend's.",
)

CODES = tuple(value for value in list(globals().values()) if isinstance(value, Code))
