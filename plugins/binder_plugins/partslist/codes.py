"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

COUNT_DISAGREES = Code(
    "count-disagrees",
    Severity.WARNING,
    "The number off that is written differs from what the assemblies need.",
    "One part short is found on the evening it should be fitted.",
    "parts:\n  knob: {quantity: 2, ...}\nassemblies:\n  jack: {of: [3 off knob]}",
    "Correct one of them, or leave `quantity:` out and let the assemblies count.",
)

CODES = (COUNT_DISAGREES,)
