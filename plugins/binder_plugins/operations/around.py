"""What lies round turned work: which of it is a thread, and what breaks into a bore."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_solid.facts import FormFact, Located


def is_thread(one: Located) -> bool:
    """Whether a feature is a thread cut outside."""
    return one.kind == "screwed"


def breaking_in(bore: Located, form: FormFact) -> list[Located]:
    """Holes across the axis that break into a bore."""
    if bore.diameter is None:
        return []
    found = []
    for one in form.located:
        if one.face != "across" or one.kind not in {"drilled", "tapped", "reamed", "slotted"}:
            continue
        x = one.frame.origin[0]
        step = next((s for s in form.stretches if s.start <= x <= s.end), None)
        wall = (step.across - bore.diameter) / 2 if step is not None else 0.0
        is_there = bore.depth is None or abs(x - bore.frame.origin[0]) <= bore.depth
        if is_there and (one.depth is None or one.depth >= wall - 0.05):
            found.append(one)
    return found
