"""Parts of YAML that a spec does without."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

ANCHOR_OR_ALIAS = Code(
    "anchor-or-alias",
    Severity.ERROR,
    meaning="`&` and `*` at the start of a value mark and repeat a piece of text; not in a spec.",
    bench=(
        "A size that several parts share is named under `sizes:`, where the binder can show it and "
        "say why. Repeats of repeats could also make a short file endless."
    ),
    example="length: &long 40 mm",
    remedy="Name the size under `sizes:` and use the name. To begin a text with `*`, put quotes.",
)
TAG_REFUSED = Code(
    "tag-refused",
    Severity.ERROR,
    meaning="`!` at the start of a value asks YAML for a type of its own; a spec has none.",
    bench="What a value is follows from where it stands: a length is a length without a mark.",
    example="length: !!int 40",
    remedy="Leave the mark out. To begin a text with `!`, put quotes round it.",
)
MERGE_KEY = Code(
    "merge-key",
    Severity.ERROR,
    meaning="`<<` copies one table into another; a spec does not have it.",
    bench="On a drawing each part shows its own sizes, and each size one place that it came from.",
    example="<<: {material: brass}",
    remedy="Write the entries out, with shared sizes under `sizes:`.",
)
MORE_THAN_ONE_DOCUMENT = Code(
    "more-than-one-document",
    Severity.ERROR,
    meaning="A line `---` or `...` ends the spec, and more follows it.",
    bench="What stands after the line would not be made.",
    example="parts: {}\n---\njoints: {}",
    remedy="Delete the line, or keep the second half in a file of its own.",
)
YAML_DIRECTIVE = Code(
    "yaml-directive",
    Severity.ERROR,
    meaning="A line that begins with `%` gives orders to the reader of YAML; a spec has none.",
    bench="The version that counts is that of the spec language: `format: 1`.",
    example="%YAML 1.2",
    remedy="Delete the line and the `---` after it.",
)
ROOT_NOT_TABLE = Code(
    "root-not-table",
    Severity.ERROR,
    meaning="A spec is a table of sections, each with a name and a colon; this is something else.",
    bench="Without sections nothing says what is a part and what a joint.",
    example="- drum\n- axle",
    remedy="Begin with `format: 1`, then `parts:` with the parts below it.",
)
