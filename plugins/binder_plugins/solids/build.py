"""Forms to solids and views, by the kernel where it is there, out of a cache where it was."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder.api import Contribution, Design, Diagnostic, Fact, MaterialFact
from binder_plugins.solids import codes
from binder_plugins.solids.wanted import cuttings_of, projections_of
from binder_solid.cache import own_store
from binder_solid.conventional import drawn_form
from binder_solid.facts import FormFact, JoinedFact, SolidFact, ViewsFact
from binder_solid.forms import Vector
from binder_solid.presence import is_kernel_there
from binder_solid.spread import Drawn, Job, Refused, drawn_all

_PER_CUBIC_CENTIMETRE = 1000.0


def build_solids(design: Design) -> Contribution:
    """A `SolidFact` and a `ViewsFact` for each form that the kernel can build.

    A fabrication gets its views alone: its parts have been weighed.
    """
    forms = (*design.facts.all(FormFact), *design.facts.all(JoinedFact))
    if not forms:
        return Contribution()
    if not is_kernel_there():
        finding = codes.KERNEL_MISSING.at(
            forms[0].at,
            "no drawings and no STEP: the kernel is not installed",
            help="pip install build-binder[solid]",
        )
        return Contribution(findings=[finding])
    drawn = _drawn(forms)
    facts: list[Fact] = []
    findings: list[Diagnostic] = []
    for form, answer in zip(forms, drawn, strict=True):
        if isinstance(answer, Refused):
            findings.append(_refused(form, answer))
        else:
            facts += _facts(form, answer, design)
    return Contribution(facts=facts, findings=findings)


def _drawn(forms: tuple[FormFact, ...]) -> list[Drawn | Refused]:
    """Each form measured and drawn; what is drawn by convention is measured apart."""
    usual = {one.subject: drawn_form(one) for one in forms}
    seen = [
        Job(usual[one.subject] or one.form, projections_of(one), cuttings_of(one)) for one in forms
    ]
    measured = [Job(one.form) for one in forms if usual[one.subject] is not None]
    answers = list(drawn_all([*seen, *measured], own_store()))
    views, solids = answers[: len(forms)], iter(answers[len(forms) :])
    return [
        view if usual[one.subject] is None else _together(view, next(solids))
        for one, view in zip(forms, views, strict=True)
    ]


def _together(view: Drawn | Refused, solid: Drawn | Refused) -> Drawn | Refused:
    if isinstance(view, Refused) or isinstance(solid, Refused):
        return solid if isinstance(solid, Refused) else view
    return replace(view, solid=solid.solid)


def _facts(form: FormFact, drawn: Drawn, design: Design) -> Iterator[Fact]:
    sections = tuple(one for one in drawn.sections if not isinstance(one, Refused))
    yield ViewsFact(form.subject, drawn.views, sections)
    if isinstance(form, JoinedFact):
        return
    solid = drawn.solid
    material = design.facts.about(MaterialFact, form.subject)
    density = material.density if material is not None else None
    grams = density / _PER_CUBIC_CENTIMETRE if density is not None else None
    yield SolidFact(
        form.subject,
        solid.volume_mm3,
        solid.volume_mm3 * grams if grams is not None else None,
        solid.centre,
        _times(solid.inertia, grams) if grams is not None else None,
        solid.envelope[0],
        solid.envelope[1],
        solid.pieces,
    )


def _times(rows: tuple[Vector, Vector, Vector], factor: float) -> tuple[Vector, Vector, Vector]:
    a, b, c = ((x * factor, y * factor, z * factor) for x, y, z in rows)
    return (a, b, c)


def _refused(form: FormFact, answer: Refused) -> Diagnostic:
    feature = _feature_at(form, answer.where)
    return codes.SOLID_UNBUILDABLE.at(
        form.at,
        f"'{form.subject}' cannot be built: {answer.reason}",
        help=f"look at '{feature}'" if feature else "look at the sizes of its shape",
    )


def _feature_at(form: FormFact, where: str) -> str:
    """The feature whose tool is named in a place such as `tools[3].radius`."""
    if not where.startswith("tools["):
        return ""
    number = int(where[6 : where.index("]")])
    for one in form.located:
        if number < len(one.tools):
            return one.name
        number -= len(one.tools)
    return ""
