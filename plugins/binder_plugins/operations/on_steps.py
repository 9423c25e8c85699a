"""The steps of turned work that something is cut on, or lies between."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_solid.facts import FormFact, Located

_SAME_MM = 1e-6


def beside(form: FormFact, one: Located) -> Iterator[str]:
    """The steps on either side of an edge, or the one that a feature lies on."""
    x = one.frame.origin[0]
    for n, step in enumerate(form.stretches):
        if step.start - _SAME_MM <= x <= step.end + _SAME_MM:
            yield step.name or f"step {n + 1}"


def step_of(form: FormFact, one: Located) -> str:
    """The first step that it is cut on; that at the left where none is told."""
    return next(beside(form, one), form.stretches[0].name or "step 1")
