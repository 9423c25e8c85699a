"""What can go wrong between finished pages and files on the disk."""

from __future__ import annotations

from binder.diagnostics import Code, Severity

PDF_NOT_MADE = Code(
    "pdf-not-made",
    Severity.WARNING,
    "The PDF could not be made; the HTML was.",
    "The HTML holds the same pages and prints well from a browser.",
    "(a machine without the Pango library)",
    "Install what the message names and build again, or print the HTML.",
)
CANNOT_WRITE = Code(
    "cannot-write",
    Severity.ERROR,
    "The binder could not be written to the disk; the last good one is still there.",
    "A half-written binder on the bench would be worse than none.",
    "binder build crane.yaml --output /readonly",
    "Make room or choose another folder with --output.",
)
BUILD_RUNNING = Code(
    "build-running",
    Severity.ERROR,
    "Another build is writing into the same folder.",
    "Two builds at once could leave the HTML of one and the PDF of the other.",
    "(binder build twice at the same time)",
    "Wait until it has ended, or choose another folder with --output.",
)
NOTHING_TO_EXPORT = Code(
    "nothing-to-export",
    Severity.ERROR,
    "No file of that kind or for that item can be exported.",
    "A folder that stays empty would look as if all had gone well.",
    "binder export crane.yaml --only cheque",
    "Ask for one of the kinds and items that `binder export SPEC --list` names.",
)

CODES = (PDF_NOT_MADE, CANNOT_WRITE, BUILD_RUNNING, NOTHING_TO_EXPORT)
