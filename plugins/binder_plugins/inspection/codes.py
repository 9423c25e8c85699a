"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

ALIGNMENT_CANNOT_BE_JUDGED = Code(
    "alignment-cannot-be-judged",
    Severity.ADVICE,
    "Two things that must be square or parallel, and no instrument owned that tells it.",
    "Every size is right, and the shaft binds as soon as the screws are tight.",
    "joints: {shaft: {runs_in: [shaft.journal, stand.bore]}}   # and no dial indicator is owned",
    "Put a dial indicator on the shopping list or borrow one, or give the fit more clearance.",
)

CODES = (ALIGNMENT_CANNOT_BE_JUDGED,)
