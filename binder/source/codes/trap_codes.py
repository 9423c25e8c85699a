"""Text that YAML reads without a word as something other than what was meant."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

VALUE_READ_AS_COMMENT = Code(
    "value-read-as-comment",
    Severity.ERROR,
    meaning="A `#` after a space begins a comment, and here it looks like part of a value.",
    bench="A drill or screw number would be lost in silence: no. 30 would become no number at all.",
    example="thread: #4-40",
    remedy='Put quotes round the value: `thread: "#4-40"`; or write `no. 4-40`.',
)
COMMA_IN_NUMBER = Code(
    "comma-in-number",
    Severity.ERROR,
    meaning="Between brackets a comma ends a value, and here it stands inside a number.",
    bench="1,5 mm would be cut as 1.",
    example="drum: {length: 1,5 mm}",
    remedy="Write a decimal point: `1.5 mm`. For two items put a space after the comma.",
)
COLON_WITHOUT_SPACE = Code(
    "colon-without-space",
    Severity.ERROR,
    meaning="A colon after a name needs a space; without it both are one word.",
    bench="The size would be lost, and the part would have a name with a colon in it.",
    example="drum: {length:19 mm}",
    remedy="Write `length: 19 mm`. Where the colon belongs to the text, put quotes round it.",
)
DASH_WITHOUT_SPACE = Code(
    "dash-without-space",
    Severity.ERROR,
    meaning="A dash at the start of a line needs a space to begin a list item.",
    bench="The item would be glued to the line above and would not be made.",
    example="holes:\n  - bore\n  -slot",
    remedy="Write `- slot`. Where the dash belongs to the text, put quotes round it.",
)
LINES_RUN_TOGETHER = Code(
    "lines-run-together",
    Severity.WARNING,
    meaning="A value goes on over several lines, and one of them looks like an entry of its own.",
    bench="A size could disappear into the text above it.",
    example="material: brass\n  length 19 mm",
    remedy="Write the missing colon. Long text is clearest as a block: `note: |`, lines below.",
)
