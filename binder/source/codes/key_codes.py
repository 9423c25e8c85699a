"""Faults of the names before the colons."""

from __future__ import annotations

from binder.diagnostics import Code, Severity
from binder.source import bounds

KEY_NOT_PLAIN_WORDS = Code(
    "key-not-plain-words",
    Severity.ERROR,
    meaning=(
        "A name before a colon is made of words with one space between them, and a word of the "
        "letters a to z, digits, `-` and `_`, with a letter first."
    ),
    bench=(
        "Names are printed on drawings and typed at the bench. Accents and look-alike letters make "
        "two names that read the same and are not."
    ),
    example="parts: {2nd drum: {material: brass}}",
    remedy="Write `drum-2`. The name that is printed can be anything: `title: 2nd drum, Ø20`.",
)
KEY_TOO_LONG = Code(
    "key-too-long",
    Severity.ERROR,
    meaning=f"A name before a colon has more than {bounds.KEY_CHARACTERS} characters.",
    bench="It does not fit into a parts list; more often a sentence has slipped before a colon.",
    example="turn the long shoulder first and then the short one and after that: the groove",
    remedy="Shorten the name, or put quotes round the whole text.",
)
KEY_NOT_TEXT = Code(
    "key-not-text",
    Severity.ERROR,
    meaning="A list or a table stands where a name is expected, before a colon.",
    bench="Parts and sizes are called by their names; a list has none.",
    example="[drum, axle]: brass",
    remedy="Write one entry for each name.",
)
KEY_WRITTEN_TWICE = Code(
    "key-written-twice",
    Severity.ERROR,
    meaning="The same name stands twice in one table, or in one section of two included files.",
    bench="One of the two would be lost in silence, and nobody could say which size was cut.",
    example="drum:\n  length: 19 mm\n  length: 21 mm",
    remedy="Delete one, or give it another name.",
)
