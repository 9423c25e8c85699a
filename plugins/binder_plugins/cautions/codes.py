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

NOT_AT_HOME = Code(
    "not-at-home",
    Severity.WARNING,
    "Work that a home workshop leaves to a trade: plating, two-pack spraying, beryllium, asbestos.",
    "Its bath, mist or dust harms for good, and what holds it back stands in no shed.",
    "bonnet: {finish: sprayed with two pack paint, ...}",
    "Take the other finish or metal that its caution names; or send it out, and say so under "
    "`because`.",
)

CODES = (PRESSURE_NEEDS_INSPECTOR, NOT_AT_HOME)
