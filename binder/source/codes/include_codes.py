"""Faults of a spec that is spread over several files."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

INCLUDE_NOT_A_NAME = Code(
    "include-not-a-name",
    Severity.ERROR,
    meaning="`include:` takes a file name, or a list of file names.",
    bench="The parts in the file that is meant would be missing from the binder.",
    example="include: {jib: jib.yaml}",
    remedy="Write `include: jib.yaml` or `include: [jib.yaml, post.yaml]`.",
)
INCLUDE_TWICE = Code(
    "include-twice",
    Severity.ERROR,
    meaning="The same file is named twice under `include:`, or the spec includes itself.",
    bench="Every part in it would be there twice.",
    example="include: [jib.yaml, post.yaml, jib.yaml]",
    remedy="Name each file once, and never the spec itself.",
)
INCLUDE_IN_INCLUDE = Code(
    "include-in-include",
    Severity.ERROR,
    meaning="A file that is included has an `include:` of its own.",
    bench="One list, in the main spec, shows at a glance all the files that make up the model.",
    example="include: winch.yaml       # written in jib.yaml, which crane.yaml includes",
    remedy="Name the file under `include:` of the main spec.",
)
INCLUDE_WITHOUT_FOLDER = Code(
    "include-without-folder",
    Severity.ERROR,
    meaning="The spec was handed over as text, not as a file, so that it has no folder.",
    bench="A file beside it cannot be found.",
    example="include: jib.yaml         # in a text that was piped in",
    remedy="Save the spec as a file and build that, or put all of it into one text.",
)
TOO_MANY_INCLUDES = Code(
    "too-many-includes",
    Severity.ERROR,
    meaning="The spec includes more files, or more text in them, than is read.",
    bench="A spec for one small machine stays far below; the bound keeps a stranger's spec short.",
    example="include: [a.yaml, b.yaml, ...]      # and so on, past twenty",
    remedy="Put several into one file.",
)
SECTION_IN_MAIN_ONLY = Code(
    "section-in-main-only",
    Severity.ERROR,
    meaning="This section holds for the whole model and can stand in the main spec only.",
    bench="Two titles or two issues of one model: nobody could say which the binder shows.",
    example="model: {title: Jib}       # written in jib.yaml, which crane.yaml includes",
    remedy="Take it out of the included file, or move it into the main spec.",
)
SECTION_KINDS_DIFFER = Code(
    "section-kinds-differ",
    Severity.ERROR,
    meaning="A section is a table of names in one file and a list in another.",
    bench="They cannot be put together without a guess at what is meant.",
    example="parts: [drum, axle]       # in jib.yaml; crane.yaml has `parts: {drum: ...}`",
    remedy="Write the section the same way in both files.",
)
