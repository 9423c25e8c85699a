"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

MATERIAL_UNKNOWN = Code(
    "material-unknown",
    Severity.WARNING,
    "A material that the tables do not hold.",
    "No mass, speed, heat or caution can be worked out for it.",
    "material: unobtainium",
    "Take the name that is offered, the trade's designation (CW614N), or say `because:`.",
)
FORM_NOT_SOLD = Code(
    "form-not-sold",
    Severity.WARNING,
    "The material is not commonly sold in the form that is asked for.",
    "A week is lost before the supplier says so.",
    "material: silver steel\nstock: 2 mm sheet",
    "Take another form or material, or say `because:` where it lies in the drawer.",
)

CODES = (MATERIAL_UNKNOWN, FORM_NOT_SOLD)
