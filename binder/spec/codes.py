"""What the validate phase can report."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

E = Severity.ERROR

UNKNOWN_KEY = Code(
    "unknown-key",
    E,
    "A key that the language does not know at this place.",
    "A misspelt key is a size or a note that would be left out of the binder in silence.",
    "parts:\n  crank: {materail: brass}",
    "Take the key that is offered, or see `binder schema` for all that may stand here.",
)
KEY_MISSING = Code(
    "key-missing",
    E,
    "A key that must be there is not.",
    "Without it the part cannot be listed, cut or made.",
    "parts:\n  crank: {stock: 6 mm drawn rod}",
    "Write the key; `binder explain` and the README show what belongs in it.",
)
WRONG_SHAPE = Code(
    "wrong-shape",
    E,
    "A list, a table or a plain value stands where another of the three belongs.",
    "The words may be right, but it cannot be told what they belong to.",
    "parts:\n  crank: brass",
    "Indent the keys below the name, or begin the lines of a list with a dash.",
)
KIND_UNKNOWN = Code(
    "kind-unknown",
    E,
    "None of the keys here says what kind of feature or joint this is.",
    "A hole that is neither drilled, reamed nor tapped cannot be made.",
    "features:\n  bore: {driled: 6 mm}",
    "Write one of the kinds that are offered, or see `binder plugins` for all.",
)
KIND_TWICE = Code(
    "kind-twice",
    E,
    "Two keys each say what kind of feature or joint this is.",
    "A hole that is both drilled 5 and tapped M6 is two features, in an order.",
    "features:\n  bore: {drilled: 5 mm, tapped: M6}",
    "Give each its own name and line.",
)
UNIT_MISSING = Code(
    "unit-missing",
    E,
    "A number stands where a length is wanted, and it has no unit.",
    "3 may be millimetres or inches; guessing wrong scraps the part.",
    "overall: 45",
    "Write the unit, or state `bare_numbers: mm` (or inch) under `model`.",
)
WRONG_DIMENSION = Code(
    "wrong-dimension",
    E,
    "A quantity of another kind than the one that is wanted here.",
    "An area or a bare number cannot be set on a dial as a length.",
    "overall: 45 deg",
    "Look at the unit, and at the sizes that the expression is made of.",
)
OUT_OF_RANGE = Code(
    "out-of-range",
    E,
    "A size that is too small or too large for what it measures.",
    "Mostly a slip of the unit: 25 in for 25 mm, or a minus that came out of a sum.",
    "overall: -3 mm",
    "Check the unit and the sum; `binder why` shows how it was reached.",
)
NOT_TRUE_OR_FALSE = Code(
    "not-true-or-false",
    E,
    "A switch that is neither true nor false.",
    "yes, on and y mean different things to different readers of YAML.",
    "dummy: yes",
    "Write true or false.",
)
NOT_ONE_OF = Code(
    "not-one-of",
    E,
    "A word that is not among those that are known here.",
    "The compiler works only from words whose meaning it knows.",
    "units: metric",
    "Take one of the words that are offered.",
)
BAD_COUNT = Code(
    "bad-count",
    E,
    "A number off that is no whole number from 1 to 999.",
    "Half a washer cannot be cut, and 4,000 rivets are a typing slip.",
    "quantity: 2.5",
    "Write a whole number.",
)
BAD_NAME = Code(
    "bad-name",
    E,
    "A text that cannot be the name of something.",
    "Names are used in references (crank.bore), so they hold no blanks or signs.",
    "joined: silver solder!",
    "Use letters, figures, _ and -, beginning with a letter.",
)
BAD_REFERENCE = Code(
    "bad-reference",
    E,
    "A text that does not name a part, or a part and one of its features.",
    "A joint must say which surfaces meet.",
    "joints:\n  pin in arm: {slides: [pin, arm bore]}",
    "Write the part, a full stop and the feature, as arm.bore.",
)
BAD_MEMBER = Code(
    "bad-member",
    E,
    "A line of an assembly that names no part.",
    "A part that is left out of the list is left out of the model.",
    "of: [2 knobs]",
    "Write the part's name, or `2 off` and its name.",
)
BAD_TAPER = Code(
    "bad-taper",
    E,
    "A taper is told by the diameters at its two ends.",
    "The topslide is set from the two diameters and the length.",
    "taper: 22 mm",
    "Write both, as `22 mm to 16 mm`.",
)
BAD_RANGE = Code(
    "bad-range",
    E,
    "A range is told by its least and its most.",
    "A float of one figure cannot be made; one from least to most can.",
    "end_float: 0.2 mm",
    "Write both, the lesser first, as `0.1 mm to 0.2 mm`.",
)
THREAD_UNKNOWN = Code(
    "thread-unknown",
    E,
    "A text that names no thread.",
    "Tap, die and drill are all chosen by it.",
    "features:\n  hole: {tapped: M3 x}",
    "Write it as on the tap: M3, M8 x 1, 2 BA, 1/4-20 UNC, 1/4 BSF, 1/4 x 40 ME.",
)
STOCK_UNKNOWN = Code(
    "stock-unknown",
    E,
    "A form of stock that is not known.",
    "The cut list is made by form: bars are cut to length, sheet to outline.",
    "stock: 20 mm rod",
    "Take one of the forms that are offered.",
)
STOCK_SIZES = Code(
    "stock-sizes",
    E,
    "The number of sizes does not fit the form of stock.",
    "A flat bar is told by width and thickness, a round one by its diameter.",
    "stock: 20 mm flat bar",
    "Write as many sizes as the form needs, with x between them.",
)
TEXT_TOO_LONG = Code(
    "text-too-long",
    E,
    "A text that is longer than a page of the binder holds.",
    "The bench reads short lines.",
    "note: (five thousand characters)",
    "Shorten it, or divide it over several notes.",
)
TEXT_EMPTY = Code(
    "text-empty",
    E,
    "A key with nothing after it.",
    "An empty heading on a page looks like something forgotten.",
    'note: ""',
    "Write the words, or drop the key.",
)
LIST_LENGTH = Code(
    "list-length",
    E,
    "A list or table that is too short, too long or empty.",
    "A joint needs the two halves that meet; an assembly needs its parts.",
    "joints:\n  pin in arm: {slides: [pin.rod]}",
    "Write as many entries as are asked for.",
)
TOO_MANY_FINDINGS = Code(
    "too-many-findings",
    Severity.ADVICE,
    "More faults than are worth printing at once.",
    "The first ones mostly cause the rest.",
    "(a hundred misspelt keys)",
    "Mend the first ones and run the check again.",
)

CODES = tuple(value for value in list(globals().values()) if isinstance(value, Code))
