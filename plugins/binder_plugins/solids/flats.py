"""Faces laid flat to all that is cut through them, by the kernel."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Contribution, Design
from binder_solid.cache import own_store
from binder_solid.facts import FlatFact, FlatViewsFact
from binder_solid.flats import Flat
from binder_solid.lines import whole_circle
from binder_solid.presence import is_kernel_there
from binder_solid.spread import Drawn, Job, Outcome, Refused, drawn_all
from binder_solid.views import View


def cut_flats(design: Design) -> Contribution:
    """A `FlatViewsFact` for each part with faces that are marked out; none without the kernel."""
    facts = design.facts.all(FlatFact)
    if not facts or not is_kernel_there():
        return Contribution()
    jobs = [_job(flat) for fact in facts for flat in fact.flats]
    answers = iter(drawn_all(jobs, own_store()))
    return Contribution(facts=[_fact(fact, [next(answers) for _ in fact.flats]) for fact in facts])


def _job(flat: Flat) -> Job:
    """What stands round an axis is not looked at: its edges are circles that are told already."""
    is_round = whole_circle(flat.outline) is not None
    return Job(flat.form, () if is_round else (flat.cutting.seen,), (flat.cutting,))


def _fact(fact: FlatFact, answers: Sequence[Outcome]) -> FlatViewsFact:
    return FlatViewsFact(
        fact.subject,
        tuple(_first(one.sections) if isinstance(one, Drawn) else None for one in answers),
        tuple(_first(one.views) if isinstance(one, Drawn) else None for one in answers),
    )


def _first(views: Sequence[View | Refused]) -> View | None:
    """The view; a part that cannot be built has its finding elsewhere."""
    view = next(iter(views), None)
    return view if isinstance(view, View) else None
