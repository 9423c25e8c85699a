"""Solids to STEP files: each part where it lies by itself, and parts that stand together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from binder.api import Design, Diagnostic, ExportFile, Span
from binder_plugins.solids.codes import SOLID_UNBUILDABLE
from binder_solid.facts import FormFact, SolidFact
from binder_solid.faults import Unbuildable
from binder_solid.placed import PlacedFact
from binder_solid.solid import NamedForm
from binder_solid.solids import step_bytes


def solid_files(design: Design) -> Iterator[ExportFile]:
    """A file for each part that could be built, under the title that the binder gives it."""
    for fact in design.facts.all(FormFact):
        if design.facts.about(SolidFact, fact.subject) is None:
            continue
        title = design.parts[fact.subject].title
        yield file_of((NamedForm(title, fact.form),), title, fact.subject, fact.at)
    yield from _model(design)


def _model(design: Design) -> Iterator[ExportFile]:
    """Every copy that has a place, where all of their solids could be built."""
    placed = design.facts.all(PlacedFact)
    if placed and all(design.facts.about(SolidFact, one.item) is not None for one in placed):
        forms = tuple(NamedForm(one.subject, one.form, one.frame) for one in placed)
        at = design.parts[placed[0].item].at
        yield file_of(forms, " ".join(design.spec.written.model.title.split()), "", at)


def file_of(placed: Sequence[NamedForm], title: str, item: str, at: Span) -> ExportFile:
    """Parts where they stand as one file; `item` is '' for the whole model."""
    return ExportFile("solid", item, "step", partial(_step, tuple(placed), title, at))


def _step(placed: Sequence[NamedForm], title: str, at: Span) -> bytes | Diagnostic:
    try:
        return step_bytes(placed, title)
    except Unbuildable as fault:
        return SOLID_UNBUILDABLE.at(at, f"'{title}' cannot be written: {fault.reason}")
