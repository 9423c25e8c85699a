"""Parts to the facts about their materials."""

from __future__ import annotations

from binder.api import Contribution, Design, MaterialFact, Part, Working
from binder_plugins.materials.records import Record, records


def state_materials(design: Design) -> Contribution:
    """A fact for each part whose material is known, and where its figures come from."""
    facts: list[MaterialFact] = []
    workings: list[Working] = []
    for part in design.parts.values():
        record = record_of(part)
        if record is not None:
            facts.append(_fact(part.name, record))
            workings.append(_working(part, record))
    return Contribution(facts=facts, workings=workings)


def record_of(part: Part) -> Record | None:
    """The record of a part's material in the form it is cut from."""
    form = part.stock.form if part.stock is not None else ""
    return records().find(part.material, form)


def _fact(part: str, record: Record) -> MaterialFact:
    return MaterialFact(
        subject=part,
        id=record.id,
        designation=record.designation,
        group=record.group,
        condition=record.condition,
        density=record.density,
        modulus=record.modulus,
        expansion=record.expansion,
        forms=record.forms,
        hazards=record.hazards,
        advice=record.advice,
        sources=record.sources,
    )


def _working(part: Part, record: Record) -> Working:
    return Working(
        id=f"{part.name}.material",
        title=f"material of the {part.title}",
        given=(),
        formula=f"'{part.material}' in the table of materials",
        result=f"{record.designation} ({record.condition})"
        if record.condition
        else record.designation,
        because=record.advice,
        source="; ".join(record.sources),
        span=part.material_at,
    )
