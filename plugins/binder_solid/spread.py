"""Many forms made, measured and drawn: kept answers first, the rest over several processes."""

from __future__ import annotations

import multiprocessing
from collections.abc import Sequence

from .cache import Store
from .crew import NoCrew, may_split, worked_by_several
from .faults import NoKernel
from .jobs import Answer, Crowd, Drawn, Gathering, Job, Outcome, Refused, key_of
from .presence import is_kernel_there
from .work import worked, worked_together

__all__ = ["Drawn", "Job", "Outcome", "Refused", "Store", "answered", "drawn_all"]

WORTH_A_CREW = 40
"""Jobs below which loading the kernel anew in each process costs more than it saves."""
WORTH_A_SPLIT = 12
"""The same where the processes are split off with the kernel loaded."""


def drawn_all(
    jobs: Sequence[Job], store: Store | None = None, workers: int = 2, patience: float = 20.0
) -> tuple[Outcome, ...]:
    """Answers jobs in their order, each within so many seconds where processes are used.

    Where every answer is kept, the kernel is not opened; raises NoKernel where it is needed and
    missing.
    """
    keys = [key_of(job) for job in jobs]
    wanted = dict(zip(keys, jobs, strict=True))
    known = {key: kept for key in wanted if (kept := _kept(store, key)) is not None}
    missing = [key for key in wanted if key not in known]
    if missing:
        answers = _worked([wanted[key] for key in missing], workers, patience)
        known.update(zip(missing, answers, strict=True))
        _keep(store, missing, known)
    return tuple(known[key] for key in keys)


def answered(job: Gathering | Crowd, store: Store | None = None) -> Answer:
    """Answers for forms that stand together; raises NoKernel where it is needed and missing."""
    key = key_of(job)
    kept = store.get(key) if store else None
    if kept is not None:
        return kept
    if not is_kernel_there():
        raise NoKernel("solids need the extra: pip install 'build-binder[solid]'")
    answer = worked_together(job)
    if store:
        store.put(key, answer)
    return answer


def _kept(store: Store | None, key: str) -> Outcome | None:
    answer = store.get(key) if store else None
    return answer if isinstance(answer, (Drawn, Refused)) else None


def _keep(store: Store | None, keys: Sequence[str], known: dict[str, Outcome]) -> None:
    if store:
        for key in keys:
            store.put(key, known[key])
        store.trim()


def _worked(jobs: Sequence[Job], workers: int, patience: float) -> tuple[Outcome, ...]:
    if not is_kernel_there():
        raise NoKernel("solids need the extra: pip install 'build-binder[solid]'")
    is_child = multiprocessing.parent_process() is not None
    worth = WORTH_A_SPLIT if may_split() else WORTH_A_CREW
    if workers > 1 and len(jobs) >= worth and not is_child:
        try:
            return worked_by_several(jobs, workers, patience)
        except NoCrew:
            pass
    return tuple(worked(job) for job in jobs)
