"""A thread and a hole to the per cent of thread depth, printed with its basis, and back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, positive, within
from binder_trade.threads import Thread

ISO_DEPTH: Final = "5H/8"
CHART_DEPTH: Final = "3H/4"
FULL_DEPTH: Final = "full depth"
_SIXTY_DEG: Final = 60.0
# 3/4 of the sharp height of a 60° thread on both sides: the basis of US tap drill charts.
_CHART_K: Final = 1.299038106


@dataclass(frozen=True, slots=True)
class Basis:
    """What 100 per cent of thread means: both sides together, in pitches."""

    name: str
    pitches: float
    text: str


@dataclass(frozen=True, slots=True)
class Percent:
    """How much of its depth a thread gets in a hole.

    `of_form` counts on the depth that the standard gives the nut: 5H/8 of 60° threads, the
    full depth of Whitworth and BA. `three_quarters` counts as US charts do, None where the
    form has no second way. `basis` prints each with its basis: one figure alone says nothing.
    """

    of_form: float
    three_quarters: float | None
    basis: str

    @property
    def on_chart(self) -> float:
        """The figure to hold against shop tables: 3H/4 where the form is 60°, else the form's."""
        return self.of_form if self.three_quarters is None else self.three_quarters


def bases(thread: Thread) -> tuple[Basis, ...]:
    """The ways to count the depth of this thread; the last is the one of shop tables.

    Source: ISO 68-1 (5H/8, 1.0825 P), US tap drill charts (3H/4, 1.299 P), BS 84 (1.2807 P),
    BS 93 (1.2 P).
    """
    form = thread.form
    if form.angle_deg != _SIXTY_DEG:
        text = f"{form.internal_drop:.5g} P (full depth, {form.standard})"
        return (Basis(FULL_DEPTH, form.internal_drop, text),)
    return (
        Basis(ISO_DEPTH, form.internal_drop, f"{form.internal_drop:.5g} P (5/8 H, ISO 68-1)"),
        Basis(CHART_DEPTH, _CHART_K, f"{_CHART_K:.4g} P (3/4 H, US charts)"),
    )


def percent(thread: Thread, drill_mm: float) -> Percent:
    """The per cent of thread that a hole of this diameter in mm leaves, on every basis.

    (D − drill) / (k P) × 100. Raises `NotDefined` where the hole is as large as the thread.
    Source: as `bases`.
    """
    left = thread.major_mm - positive(drill_mm, "a hole")
    if left <= 0:
        raise NotDefined(
            f"a hole of {drill_mm:g} mm leaves nothing to tap {thread.designation} in",
            f"drill below {thread.major_mm:.3f} mm",
        )
    found = {basis: 100 * left / (basis.pitches * thread.pitch_mm) for basis in bases(thread)}
    figures = list(found.values())
    text = ", ".join(f"{figure:.0f} % of {basis.text}" for basis, figure in found.items())
    return Percent(figures[0], figures[1] if len(figures) > 1 else None, text)


def drill_for_percent(thread: Thread, wanted: float, basis: str = "") -> float:
    """The diameter in mm that leaves this per cent of thread: D − percent × k × P.

    `basis` is `5H/8`, `3H/4` or `full depth`; left out, it is the one of shop tables. Raises
    `NotDefined` for a basis that the form does not have, or a per cent outside 1 to 120.
    """
    within(wanted, 1, 120, "the per cent of thread")
    known = bases(thread)
    for one in known if basis else known[-1:]:
        if basis in ("", one.name):
            return thread.major_mm - wanted / 100 * one.pitches * thread.pitch_mm
    names = " or ".join(one.name for one in known)
    reason = f"{thread.designation} has no depth {basis!r}"
    raise NotDefined(reason, f"count it on {names}")
