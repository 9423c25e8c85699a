"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

PRESSURE_NEEDS_INSPECTOR = Code(
    "pressure-needs-inspector",
    Severity.CAUTION,
    "A thing that, by its name, holds steam, gas or air under pressure.",
    "A vessel that bursts kills. Its plates, joints and tests are not reckoned here, and the "
    "binder says so; no reason in the spec takes this away.",
    "parts:\n  boiler: {...}",
    "Build it from a published, proved drawing and have a boiler inspector witness its tests; "
    "where it is only for looks, say `dummy: true`.",
)

CODES = (PRESSURE_NEEDS_INSPECTOR,)
