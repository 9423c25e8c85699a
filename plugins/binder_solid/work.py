"""One job done with the kernel."""

from __future__ import annotations

from .faults import Unbuildable
from .forms import Form
from .jobs import Drawn, Job, Outcome, Refused
from .solids import measured, sectioned, views
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
