"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

GAUGE_NOT_LISTED = Code(
    "gauge-not-listed",
    Severity.ERROR,
    "A gauge that does not exist: a number outside its table, or a gauge of another name.",
    "Sheet is ordered by it, and a gauge one off is a tenth of a millimetre out.",
    'binder reckon gauge "60 swg"',
    "Write it as 12 swg (50 to 7/0) or 22 awg (40 to 0000), or give the thickness.",
)
CODES = (GAUGE_NOT_LISTED,)
