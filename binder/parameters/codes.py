"""What expressions, sizes and the picture can report."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

E = Severity.ERROR

EXPRESSION_EMPTY = Code(
    "expression-empty",
    E,
    "A size is wanted and nothing is written.",
    "A part without a size cannot be cut.",
    "sizes:\n  bar: ''",
    "Write the size, as 20 mm or 0.8 * bar.",
)
EXPRESSION_TOO_LONG = Code(
    "expression-too-long",
    E,
    "An expression of more than 300 characters, or of more than 60 numbers, names and signs.",
    "Nobody can check such a sum at the bench.",
    "sizes:\n  height: 1 mm + 1 mm + 1 mm + ...   # and so on, sixty times",
    "Give parts of it names under `sizes`, and use the names.",
)
BRACKETS_TOO_DEEP = Code(
    "brackets-too-deep",
    E,
    "More than 20 brackets stand inside one another.",
    "Nobody can check such a sum at the bench.",
    "height: ((((((((((((((((((((( bar )))))))))))))))))))))",
    "Take away the brackets that do nothing, or name parts of the sum under `sizes`.",
)
BRACKET_UNMATCHED = Code(
    "bracket-unmatched",
    E,
    "A bracket is opened and not closed, or closed and not opened.",
    "It cannot be told which part of the sum belongs together.",
    "height: 2 * (bar + 3 mm",
    "Close it where the part that belongs together ends, or take it away.",
)
EXPRESSION_GARBLED = Code(
    "expression-garbled",
    E,
    "A sign, a name or the end of the text stands where it has no meaning.",
    "A sum that can be read in two ways is a part that can be made in two sizes.",
    "height: bar * / 2",
    "Write sums with + - * / and brackets, as 0.5 * (bar + 3 mm).",
)
SIGN_UNKNOWN = Code(
    "sign-unknown",
    E,
    "A character that no expression may hold, or figures that are not 0 to 9.",
    "Copied text often carries signs that look right and are not.",
    "height: 80 % of bar",
    "Type it anew with 0 to 9, letters, + - * / and brackets; for 80 % write 0.8 * bar.",
)
NO_POWERS = Code(
    "no-powers",
    E,
    "A power, written with ** or ^.",
    "Sizes of parts follow by sums and ratios; a power is mostly a slip of the finger.",
    "area: bar ^ 2",
    "Multiply it out, as bar * bar.",
)
SIGN_MISSING = Code(
    "sign-missing",
    E,
    "Two values stand side by side with no sign between them.",
    "It may be a product, a sum, or a fraction that lost its stroke.",
    "height: bar 20 mm",
    "Put + - * or / between them; a mixed number is written 7 1/2 in.",
)
NUMBER_MALFORMED = Code(
    "number-malformed",
    E,
    "Figures that are no number.",
    "A slip in a number is a scrapped part.",
    "height: 1.2.3 mm",
    "Write 12.5, 7 1/2, 1/4 or 1e-3.",
)
NUMBER_TOO_LARGE = Code(
    "number-too-large",
    E,
    "A number with an exponent of more than two figures, or one that takes over 512 bits.",
    "No model has such a size; the sum has most likely run away.",
    "height: 1e100 mm",
    "Look for a factor that is multiplied again and again, or a unit that is too much.",
)
DECIMAL_COMMA = Code(
    "decimal-comma",
    E,
    "A comma inside a number.",
    "1,5 may be meant as 1.5; 1,000 as one or as a thousand.",
    "bore: 1,5 mm",
    "Write decimals with a point, and thousands without a sign.",
)
DASHED_FRACTION = Code(
    "dashed-fraction",
    E,
    "A whole number and a fraction joined with a dash, which here is a minus.",
    "7-1/2 in would be 7 less half an inch, and no length at all.",
    "length: 7-1/2 in",
    "Put a space between the two: 7 1/2 in.",
)
SPACED_FRACTION = Code(
    "spaced-fraction",
    E,
    "A fraction of a unit with spaces about its stroke.",
    "1 / 4 in may be a quarter of an inch, or one divided by four inches.",
    "length: 1 / 4 in",
    "Write 1/4 in for the fraction, and 1 / (4 in) for the division.",
)
UNIT_UNKNOWN = Code(
    "unit-unknown",
    E,
    "A word after a number that is no unit known here.",
    "A size in a wrong unit is off by ten or by twenty-five.",
    "height: 20 milimetres",
    "Take the unit that is offered; to multiply by a size of that name, write * between.",
)
NAME_UNKNOWN = Code(
    "name-unknown",
    E,
    "A name that stands for no size.",
    "A misspelt name would leave the part without its size.",
    "sizes:\n  bar: 20 mm\n  drum: 0.8 * bra",
    "Take the name that is offered, or add the size under `sizes`.",
)
FUNCTION_UNKNOWN = Code(
    "function-unknown",
    E,
    "A word before a bracket that is none of the functions.",
    "Only few functions may stand in a spec, so that a stranger's spec can do no harm.",
    "height: sqrt(bar)",
    "Use nearest, next_up, next_down, min, max, round or picture; to multiply, write *.",
)
FUNCTION_MISUSED = Code(
    "function-misused",
    E,
    "A function with too few things in its brackets, too many, or the wrong ones.",
    "It cannot be told what it should choose from.",
    "rod: nearest(0.4 * bar)",
    "Write it as in the line of help.",
)
SERIES_UNKNOWN = Code(
    "series-unknown",
    E,
    "A name that stands for no series of sizes as sold.",
    "Without the series it cannot be told what can be bought.",
    "rod: nearest(0.4 * bar, drawn_rods)",
    "Take the name that is offered, or write the sizes out: [6 mm, 8 mm, 10 mm].",
)
OUTSIDE_SERIES = Code(
    "outside-series",
    E,
    "A size for which the series or list has no member.",
    "What is not sold in that size cannot be bought, and the end of a list is no good guess.",
    "rod: next_up(400 mm, drawn_rod)",
    "Choose another series or a list of your own, or write the size.",
)
SIZE_AT_FAULT = Code(
    "size-at-fault",
    E,
    "A size that follows from another one, or from the picture, which is itself at fault.",
    "It will come right with the other.",
    "sizes:\n  bar: 20 mmm\nparts:\n  post: {overall: 2 * bar}",
    "Mend the other; its own finding says how.",
)
PICK_IN_DOUBT = Code(
    "pick-in-doubt",
    Severity.ADVICE,
    "A size was chosen from a series, but the measure that it was chosen by is so uncertain "
    "that another member lies within two standard deviations.",
    "The next size up or down may look as right as this one.",
    "post: nearest(picture(412 px), drawn_rod)   # 160 mm, give or take 6 mm",
    "Measure better, on a longer known length, or write the size that you want.",
)
GAUGE_UNKNOWN = Code(
    "gauge-unknown",
    E,
    "A gauge or drill number for which no size is known here.",
    "A number off a gauge is worth nothing without its table.",
    "wire: 60 swg",
    "Measure it, and write the size in mm or in.",
)
KINDS_CLASH = Code(
    "kinds-clash",
    E,
    "A sum, a choice or a rounding of unlike things, such as a length and a plain number.",
    "3 mm + 2 has no size until it is said two of what.",
    "height: bar + 2",
    "Give the bare number a unit, or multiply instead of adding.",
)
KIND_TOO_HIGH = Code(
    "kind-too-high",
    E,
    "A product past the third power of a length, mass, time or angle.",
    "No size of a part measures that; a factor is most likely written once too often.",
    "odd: bar * bar * bar * bar",
    "Take out the factor that is too much.",
)
DIVIDED_BY_ZERO = Code(
    "divided-by-zero",
    E,
    "Something is divided by nothing, or rounded to steps of nothing.",
    "There is no such size.",
    "height: bar / (20 mm - 20 mm)",
    "Look at the sizes under the stroke.",
)
TOO_MANY_MEASURES = Code(
    "too-many-measures",
    E,
    "A size that hangs on more than 100 separate measures off the picture.",
    "The error of such a sum cannot be followed, and would be large.",
    "length: picture(3 px) + picture(4 px)   # and so on, a hundred times",
    "Measure the whole at once.",
)
PIXELS_MISPLACED = Code(
    "pixels-misplaced",
    E,
    "Pixels outside picture().",
    "A pixel has no size until it is compared with the known length.",
    "jib: 412 px",
    "Write picture(412 px).",
)
PICTURE_MISSING = Code(
    "picture-missing",
    E,
    "A size is measured off the picture, and no picture with a known length is given.",
    "Pixels can only be turned into lengths by something on the picture that is known.",
    "sizes:\n  jib: picture(412 px)",
    "Add `picture: {file: quay.png, known: {pixels: 260, is: 100 mm}}`.",
)
PICTURE_MALFORMED = Code(
    "picture-malformed",
    E,
    "A key of the picture that is missing, unknown, or not of its kind.",
    "A wrong known length makes every measured size wrong by the same factor.",
    "picture: {file: quay.png, known: {pixels: many, is: 100 mm}}",
    "Write it as `picture: {file: quay.png, known: {pixels: 260, is: 100 mm}}`; pixel_error, "
    "tilt and depth may be added.",
)
PICTURE_KNOWN_TOO_SHORT = Code(
    "picture-known-too-short",
    Severity.WARNING,
    "The known length is under 200 pixels on the picture, or under a quarter of what is "
    "measured by it.",
    "An error of a pixel at each end then makes the measured sizes wrong by a percent or more.",
    "picture: {file: quay.png, known: {pixels: 60, is: 10 mm}}",
    "Find something longer that is known, or measure on a larger picture.",
)
SIZES_MALFORMED = Code(
    "sizes-malformed",
    E,
    "`sizes` is no table of names, or a size is not plain text.",
    "Without it the names that the parts use stand for nothing.",
    "sizes:\n  - 20 mm",
    "Write one size to a line, as `bar: 20 mm`.",
)
SIZE_NAME_UNUSABLE = Code(
    "size-name-unusable",
    E,
    "A name that a size cannot have: with a dash, or already a unit, function or series.",
    "jib-long would be read as jib less long, and 5 m as five metres or five of m.",
    "sizes:\n  jib-long: 120 mm",
    "Use letters, figures and _ and begin with a letter, as jib_long.",
)
SIZES_IN_A_CIRCLE = Code(
    "sizes-in-a-circle",
    E,
    "Sizes that follow from one another in a circle.",
    "There is no first size to start from.",
    "sizes:\n  bar: 2 * rod\n  rod: bar / 2",
    "Give one of them a size of its own.",
)
SIZES_TOO_FAULTY = Code(
    "sizes-too-faulty",
    E,
    "More than 100 sizes are at fault; the rest were not looked at.",
    "One slip often makes many faults.",
    "sizes: ...   # a hundred misspelt names",
    "Mend the first ones and compile again.",
)
SET_MALFORMED = Code(
    "set-malformed",
    E,
    "A `--set` that is not name=value, or that sets one name a second time.",
    "The binder would be made for sizes that nobody asked for.",
    "binder build SPEC --set bar",
    "Write --set bar='25 mm', once for each name.",
)
SET_NAME_UNKNOWN = Code(
    "set-name-unknown",
    E,
    "A `--set` of a size that the spec does not have.",
    "A misspelt name would leave the size in silence as it was.",
    "binder build SPEC --set bra='25 mm'",
    "Take the name that is offered; `sizes` in the spec has all of them.",
)

CODES = tuple(value for value in list(globals().values()) if isinstance(value, Code))
