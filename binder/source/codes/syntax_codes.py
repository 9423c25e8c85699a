"""Places where the text cannot be read as YAML."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

_STOPS = "What follows cannot be read, so that nothing can be made from it."

TAB_IN_INDENT = Code(
    "tab-in-indent",
    Severity.ERROR,
    meaning="A tab stands at the start of the line where only spaces may.",
    bench="Each editor has its own width of tab, and how far a line stands in says what it is for.",
    example="parts:\n\tdrum: {}",
    remedy="Put spaces, two for each step; most editors can do it for the whole file.",
)
COLON_IN_TEXT = Code(
    "colon-in-text",
    Severity.ERROR,
    meaning="A value holds a colon with a space after it, which reads as one more key.",
    bench=_STOPS,
    example="title: Crane: the big one",
    remedy='Put quotes round the value: `title: "Crane: the big one"`.',
)
COLON_MISSING = Code(
    "colon-missing",
    Severity.ERROR,
    meaning="A line in a table has no colon after its name.",
    bench="Name and value cannot be told apart, and a size would be lost.",
    example="drum:\n  length 19 mm\n  material: brass",
    remedy="Write the colon, and a space after it: `length: 19 mm`.",
)
QUOTE_NOT_CLOSED = Code(
    "quote-not-closed",
    Severity.ERROR,
    meaning="A text begins with a quote and the second quote is missing.",
    bench=_STOPS,
    example='title: "Wharf crane',
    remedy="Close the quote, or leave both out. Inches need no quotes: `1/4 in`.",
)
BRACKET_NOT_CLOSED = Code(
    "bracket-not-closed",
    Severity.ERROR,
    meaning="A `[` or `{` is not closed, or is closed by the other kind.",
    bench=_STOPS,
    example="drum: {length: 19 mm, material: brass",
    remedy="Close `[` with `]` and `{` with `}`. A text that begins with a bracket needs quotes.",
)
BRACKET_NOT_OPENED = Code(
    "bracket-not-opened",
    Severity.ERROR,
    meaning="A `]` or `}` stands where none was opened.",
    bench=_STOPS,
    example="holes: ]",
    remedy="Delete it, or write the opening bracket.",
)
TEXT_AFTER_CLOSE = Code(
    "text-after-close",
    Severity.ERROR,
    meaning="Text goes on after the closing quote or bracket of a value.",
    bench=_STOPS,
    example='bore: "1/4" in',
    remedy='Write `bore: 1/4 in` or `bore: 1/4"`, or put the quotes round all of it.',
)
BAD_INDENT = Code(
    "bad-indent",
    Severity.ERROR,
    meaning="A line begins further in or further out than the lines that it belongs to.",
    bench="How far a line stands in says which part a size is for; guess and scrap one.",
    example="drum:\n    material: brass\n  length: 19 mm",
    remedy="Begin all lines of one table in the same column.",
)
LIST_AMONG_KEYS = Code(
    "list-among-keys",
    Severity.ERROR,
    meaning="Lines with a dash and lines with a key are mixed at one depth.",
    bench="It is open whether the line belongs to the list or to the table around it.",
    example="holes:\n  - 3 mm\n  depth: 10 mm",
    remedy="Move the line in or out by two spaces, or make all of them list items.",
)
DASH_AFTER_KEY = Code(
    "dash-after-key",
    Severity.ERROR,
    meaning="A dash with a space begins a list, and a list begins on a line of its own.",
    bench=_STOPS,
    example="holes: - 3 mm",
    remedy="Begin the list on the next line, two spaces in, or write `holes: [3 mm]`.",
)
CHARACTER_STARTS_NOTHING = Code(
    "character-starts-nothing",
    Severity.ERROR,
    meaning="No value can begin with this character.",
    bench=_STOPS,
    example="spacing: @16 mm",
    remedy="Put quotes round the value, or leave the character out.",
)
ESCAPE_UNKNOWN = Code(
    "escape-unknown",
    Severity.ERROR,
    meaning="In double quotes a backslash begins a code for a character; this one does not exist.",
    bench=_STOPS,
    example=r'note: "see drawings\quay"',
    remedy="Use single quotes, in which a backslash is only itself, or none at all.",
)
COMMA_MISSING = Code(
    "comma-missing",
    Severity.ERROR,
    meaning="Two entries between brackets have no comma between them, or a value holds a colon.",
    bench="It is open where one size ends and the next begins.",
    example="drum: {length: 19 mm material: brass}",
    remedy="Write the comma, or put quotes round a value that holds a colon.",
)
COMMA_WITH_NOTHING = Code(
    "comma-with-nothing",
    Severity.ERROR,
    meaning="There is nothing before this comma.",
    bench="An item may have been lost.",
    example="holes: [3 mm,, 4 mm]",
    remedy="Delete the comma, or write what is missing.",
)
BLOCK_TEXT_MARK = Code(
    "block-text-mark",
    Severity.ERROR,
    meaning="`|` or `>` at the start of a value begins a text on the lines below it.",
    bench=_STOPS,
    example="bore: >6 mm",
    remedy="Begin the text on the next line, two spaces in, or put quotes round the value.",
)
NOT_YAML = Code(
    "not-yaml",
    Severity.ERROR,
    meaning="The text cannot be read from here on.",
    bench=_STOPS,
    example="length: *bar more",
    remedy="Compare the line with the ones around it; quotes round a value help most often.",
)
