"""What a rule of proportion says of one size: what there is, what it needs, and the ways out."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import Step
from binder_trade.fastening.reach import NEAR_ENOUGH
from binder_trade.fastening.steps import mm


@dataclass(frozen=True, slots=True)
class Verdict:
    """`has_mm` against `needs_mm`; `is_most` where the need is the most and not the least."""

    is_good: bool
    has_mm: float
    needs_mm: float
    says: str
    ways_out: tuple[str, ...]
    steps: tuple[Step, ...]
    is_most: bool = False


def at_least(
    what: str, has_mm: float, needs_mm: float, step: Step, ways_out: tuple[str, ...]
) -> Verdict:
    """A size that must not be smaller than its need."""
    is_good = has_mm >= needs_mm - NEAR_ENOUGH
    says = f"{what} is {mm(has_mm)}; {mm(needs_mm)} is the least"
    return Verdict(is_good, has_mm, needs_mm, says, () if is_good else ways_out, (step,))


def at_most(
    what: str, has_mm: float, needs_mm: float, step: Step, ways_out: tuple[str, ...]
) -> Verdict:
    """A size that must not be larger than its need."""
    is_good = has_mm <= needs_mm + NEAR_ENOUGH
    says = f"{what} is {mm(has_mm)}; {mm(needs_mm)} is the most"
    return Verdict(
        is_good, has_mm, needs_mm, says, () if is_good else ways_out, (step,), is_most=True
    )
