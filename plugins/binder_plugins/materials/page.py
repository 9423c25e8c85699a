"""The materials of a model to their table."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Column,
    Design,
    Diagnostic,
    MaterialFact,
    Paragraph,
    Place,
    Section,
    Table,
    Text,
)

_COLUMNS = (
    Column("Material", 4),
    Column("Density, g/cm³", 2.2, is_figure=True),
    Column("Modulus, GPa", 2.2, is_figure=True),
    Column("Expansion, 10⁻⁶/K", 2.8, is_figure=True),
    Column("At the bench", 4),
    Column("Figures from", 6),
)


def material_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """Each material once, with its figures, where they come from, and a word for the bench."""
    facts = {fact.id: fact for fact in design.facts.all(MaterialFact)}
    if facts:
        rows = tuple(_row(fact) for fact in facts.values())
        words = "Typical figures: enough for mass and fits, never for a part that people trust."
        yield Section(
            "materials",
            "Materials",
            Place.SOURCES,
            (Paragraph((words,)), Table(_COLUMNS, rows)),
            starts_page=False,
        )


def _row(fact: MaterialFact) -> tuple[Text, ...]:
    condition = f", {fact.condition}" if fact.condition else ""
    name = fact.designation or fact.id.replace("-", " ")
    return (
        (f"{fact.id.replace('-', ' ')}: {name}{condition}",),
        (_figure(fact.density),),
        (_figure(fact.modulus),),
        (_figure(fact.expansion),),
        (fact.advice,),
        ("; ".join(fact.sources),),
    )


def _figure(value: float | None) -> str:
    return "not given" if value is None else f"{value:g}"
