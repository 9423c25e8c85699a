"""Faces laid flat to all that is cut through them, by the kernel."""

from __future__ import annotations

from binder.api import Contribution, Design
from binder_plugins.solids.build import store
from binder_solid.facts import FlatFact, FlatViewsFact
from binder_solid.flats import Flat
from binder_solid.presence import is_kernel_there
from binder_solid.spread import Drawn, Job, Outcome, drawn_all
from binder_solid.views import View


def cut_flats(design: Design) -> Contribution:
    """A `FlatViewsFact` for each part with faces that are marked out; none without the kernel."""
    facts = design.facts.all(FlatFact)
    if not facts or not is_kernel_there():
        return Contribution()
    jobs = [_job(flat) for fact in facts for flat in fact.flats]
    answers = iter(drawn_all(jobs, store()))
    return Contribution(
        facts=[
            FlatViewsFact(fact.subject, tuple(_view(next(answers)) for _ in fact.flats))
            for fact in facts
        ]
    )


def _job(flat: Flat) -> Job:
    return Job(flat.form, (), (flat.cutting,))


def _view(answer: Outcome) -> View | None:
    """The section; a part that cannot be built has its finding elsewhere."""
    section = answer.sections[0] if isinstance(answer, Drawn) else None
    return section if isinstance(section, View) else None
