"""One job done with the kernel."""

from __future__ import annotations

from .faults import Unbuildable
from .forms import Form
from .jobs import Answer, Crowd, Crowded, Drawn, Gathering, Job, Outcome, Pictured, Refused
from .solids import clashes, gathered, measured, sectioned, views
from .views import Cutting, View


def worked(job: Job) -> Outcome:
    """Measures and draws a form; raises NoKernel where there is none."""
    try:
        solid = measured(job.form)
        seen = views(job.form, job.projections)
    except Unbuildable as fault:
        return Refused(fault.reason, fault.where)
    return Drawn(solid, seen, tuple(_cut(job.form, cutting) for cutting in job.cuttings))


def _cut(form: Form, cutting: Cutting) -> View | Refused:
    try:
        return sectioned(form, cutting)
    except Unbuildable as fault:
        return Refused(fault.reason, fault.where)


def worked_together(job: Gathering | Crowd) -> Answer:
    """Draws forms that stand together, or finds those that collide; raises NoKernel."""
    try:
        if isinstance(job, Gathering):
            return Pictured(gathered(job.forms, job.projections))
        return Crowded(clashes(job.forms, job.allowed))
    except Unbuildable as fault:
        return Refused(fault.reason, fault.where)
