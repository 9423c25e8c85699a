"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

BAR_TOO_SHORT = Code(
    "bar-too-short",
    Severity.ERROR,
    "A part is longer than any bar that is owned or sold, grip and facing counted.",
    "It cannot be held while it is cut off.",
    "stock: 6 mm drawn rod\noverall: 1200 mm",
    "Join it from two, buy a longer bar by special order, or list one on the shelf.",
)
CODES = (BAR_TOO_SHORT,)
