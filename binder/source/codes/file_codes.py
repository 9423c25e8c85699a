"""Faults of a file as such: its name, its size, its bytes."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

FILE_NOT_FOUND = Code(
    "file-not-found",
    Severity.ERROR,
    meaning="There is no file of this name where it was looked for.",
    bench="Parts or pictures that the binder needs would be missing from it.",
    example="include: jibb.yaml        # the file is called jib.yaml",
    remedy=(
        "Check the spelling, capitals too. A name in a spec is looked for in the spec's own folder."
    ),
)
FILE_NOT_READABLE = Code(
    "file-not-readable",
    Severity.ERROR,
    meaning="The file is there, but the system does not let it be read.",
    bench="A binder made without it would lack parts.",
    example="include: jib.yaml         # saved by another user, closed to you",
    remedy="Give yourself the right to read the file, or copy it.",
)
NOT_A_FILE = Code(
    "not-a-file",
    Severity.ERROR,
    meaning="The name leads to a folder, a link, a pipe or a device, not to an ordinary file.",
    bench=(
        "A spec may come from a stranger. A link in his folder could carry a private file of yours "
        "into the binder, and a pipe could hold up the build for ever."
    ),
    example="include: parts            # parts is a folder",
    remedy="Put the file itself into the spec's folder.",
)
FILE_TOO_LARGE = Code(
    "file-too-large",
    Severity.ERROR,
    meaning="The file is larger than a spec, or a picture in one, may be.",
    bench="A spec of a thousand parts stays well below the bound; a file past it is no spec.",
    example="binder build holiday-film.mp4",
    remedy="Check that it is the right file. A long spec can be divided with `include:`.",
)
FILE_OUTSIDE_FOLDER = Code(
    "file-outside-folder",
    Severity.ERROR,
    meaning=(
        "A spec may name files in its own folder and below only, by plain names that mean the same "
        "on every system."
    ),
    bench=(
        "A spec can be passed on with its folder and must build at the other end; and a stranger's "
        "spec must not reach the rest of your disk."
    ),
    example="include: ../tools/secret.yaml",
    remedy="Copy the file into the spec's folder and write its name: `include: jib.yaml`.",
)
EMPTY_FILE = Code(
    "empty-file",
    Severity.ERROR,
    meaning="The file holds nothing, or nothing but comments.",
    bench="There is no part to make in it.",
    example="# crane, to be written",
    remedy="Begin with `format: 1` and a `parts:` section, or take the name out of `include:`.",
)
NOT_UTF_8 = Code(
    "not-utf-8",
    Severity.ERROR,
    meaning="The file was saved in an older encoding, in which `½`, `°` or `Ø` are other bytes.",
    bench="A `½` or a `°` guessed wrongly is a wrong size.",
    example='width: 1½"                # saved as Latin-1 or Windows-1252',
    remedy="Save the file as UTF-8; every editor has this in its save-as menu.",
)
UTF_16 = Code(
    "utf-16",
    Severity.ERROR,
    meaning="The file was saved with two bytes to each character (UTF-16, also called Unicode).",
    bench="A spec is passed on between systems, and all of them agree on UTF-8 alone.",
    example="(a file saved by an older editor as `Unicode`)",
    remedy="Save the file as UTF-8; every editor has this in its save-as menu.",
)
HIDDEN_CHARACTER = Code(
    "hidden-character",
    Severity.ERROR,
    meaning=(
        "A character stands here that shows nothing, steers the direction of writing, or has no "
        "meaning."
    ),
    bench=(
        "What you read on paper and what the compiler reads would differ: a size can look like "
        "another, or a name like its neighbour."
    ),
    example=r'name: "drum\u202E"',
    remedy="Delete the place and type it afresh.",
)
