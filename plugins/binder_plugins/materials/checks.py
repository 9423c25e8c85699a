"""Parts to findings about their materials."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, MaterialFact, Part, did_you_mean
from binder_plugins.materials import codes
from binder_plugins.materials.records import records

# A drawn rod is a round bar to close limits, and strip a narrow sheet or flat bar.
_ALSO = {
    "drawn rod": ("round bar", "wire"),
    "strip": ("sheet", "flat bar"),
    "plate": ("sheet", "flat bar"),
    "casting": ("round bar",),
}


def check_materials(design: Design) -> Iterator[Diagnostic]:
    """Unknown materials, and forms in which they are not sold."""
    for part in design.parts.values():
        fact = design.facts.about(MaterialFact, part.name)
        if fact is None:
            yield codes.MATERIAL_UNKNOWN.at(
                part.material_at,
                f"'{part.material}' is not in the tables",
                help=did_you_mean(part.material.lower(), records().ids)
                or "write its designation, or `because:`",
            )
        elif part.stock is not None and not _is_sold(part, fact):
            yield codes.FORM_NOT_SOLD.at(
                part.stock.span,
                f"{part.material} is not commonly sold as {part.stock.form}",
                help=f"sold as: {', '.join(fact.forms)}",
            )


def _is_sold(part: Part, fact: MaterialFact) -> bool:
    form = part.stock.form if part.stock is not None else ""
    return any(one in fact.forms for one in (form, *_ALSO.get(form, ())))
