"""Plugin `finishing`: what is done to a part when its sizes are right: coats, polish, heat."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    Check,
    Code,
    Contribution,
    Design,
    Diagnostic,
    MaterialFact,
    Page,
    PlanStep,
    Section,
    TreatmentFact,
    hookimpl,
)
from binder_plugins.finishing import coat_codes, codes, heat_codes


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A finish on the wrong metal, and heat that spoils or does nothing."""
    return [*codes.CODES, *heat_codes.CODES, *coat_codes.CODES]


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """What heat and finish are done to each item, for its route and the evenings."""
    return [PlanStep("tell the treatments", _treat, after=(MaterialFact,), gives=(TreatmentFact,))]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does the metal take the finish and the heat that are asked for."""
    return [Check("each metal takes its finish", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """How each finish is done, what is masked, and the heat for each material."""
    return [Page("finishing", _pages)]


def _treat(design: Design) -> Contribution:
    parts, wholes = design.parts.values(), design.fabrications.values()
    if not any(one.finish for one in parts) and not any(one.finish for one in wholes):
        return Contribution()
    from binder_plugins.finishing.treatments import treatments

    return treatments(design)


def _check(design: Design) -> Iterator[Diagnostic]:
    from binder_plugins.finishing.checks import check_finishes

    yield from check_finishes(design)


def _pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    from binder_plugins.finishing.page import finishing_pages

    yield from finishing_pages(design)
