"""What a question about the drive may lack."""

from __future__ import annotations

from binder.api import Code, Severity

QUESTION_UNREADABLE = Code(
    "drive-question-unreadable",
    Severity.ERROR,
    "A question about a belt, gear or train that cannot be read, or has no answer.",
    "A guess would be turned into metal.",
    "binder reckon gear 54 teeth",
    "Write it as the finding shows, as `binder reckon gear 54 module 0.5 mm`.",
)

CODES = (QUESTION_UNREADABLE,)
