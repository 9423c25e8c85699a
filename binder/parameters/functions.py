"""The functions that an expression may call: choosing among sizes, and rounding."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from binder.parameters.environment import Members
from binder.units import DimensionsDifferError, Quantity

NEAREST = "nearest"
NEXT_UP = "next_up"
NEXT_DOWN = "next_down"
PICTURE = "picture"
LEAST_SIZES = 2


@dataclass(frozen=True, slots=True)
class Pick:
    """A size looked for among others, and what was taken; the neighbours are '' at an end."""

    wanted: Quantity
    label: str
    taken: Quantity
    below: str
    above: str
    rivals: tuple[str, ...] = ()


def nearest(wanted: Quantity, members: Members) -> Pick | None:
    """The member that differs least, the smaller on a tie."""
    at = _place(wanted, members)
    around = [place for place in (at - 1, at) if 0 <= place < len(members)]
    return _pick(wanted, members, min(around, key=lambda place: _off(wanted, members, place)))


def next_up(wanted: Quantity, members: Members) -> Pick | None:
    """The smallest member that is not smaller; None where all are."""
    at = _place(wanted, members)
    return _pick(wanted, members, at) if at < len(members) else None


def next_down(wanted: Quantity, members: Members) -> Pick | None:
    """The largest member that is not larger; None where all are."""
    at = _place(wanted, members)
    if at < len(members) and members[at][1].amount == wanted.amount:
        return _pick(wanted, members, at)
    return _pick(wanted, members, at - 1) if at else None


CHOICES: dict[str, Callable[[Quantity, Members], Pick | None]] = {
    NEAREST: nearest,
    NEXT_UP: next_up,
    NEXT_DOWN: next_down,
}


def least(sizes: tuple[Quantity, ...]) -> Quantity:
    """The smallest of sizes of one kind, with its errors; DimensionsDifferError else."""
    _alike(sizes)
    return min(sizes, key=_amount)


def most(sizes: tuple[Quantity, ...]) -> Quantity:
    """The largest of sizes of one kind, with its errors; DimensionsDifferError else."""
    _alike(sizes)
    return max(sizes, key=_amount)


def rounded(sizes: tuple[Quantity, ...]) -> Quantity:
    """The first size to the nearest multiple of the second, half a step away from nought.

    What is rounded has been decided, so no error stays with it. ZeroDivisionError for a
    step of nothing.
    """
    _alike(sizes)
    size, step = sizes
    steps = abs(size.amount / step.amount) + Fraction(1, 2)
    whole = steps.numerator // steps.denominator
    amount = whole * abs(step.amount)
    return Quantity(-amount if size.amount < 0 else amount, size.dimension)


@dataclass(frozen=True, slots=True)
class Reckoning:
    """A function of two sizes or more that gives a size; `most_sizes` None is no bound."""

    run: Callable[[tuple[Quantity, ...]], Quantity]
    most_sizes: int | None


RECKONINGS = {
    "min": Reckoning(least, None),
    "max": Reckoning(most, None),
    "round": Reckoning(rounded, LEAST_SIZES),
}

USES = {
    NEAREST: "nearest(0.3 * bar, drawn_rod)",
    NEXT_UP: "next_up(0.3 * bar, drawn_rod)",
    NEXT_DOWN: "next_down(0.3 * bar, [6 mm, 8 mm])",
    "min": "min(bar, 20 mm)",
    "max": "max(bar, 20 mm)",
    "round": "round(0.3 * bar, 0.5 mm)",
    PICTURE: "picture(412 px)",
}


def _place(wanted: Quantity, members: Members) -> int:
    """Where the wanted size would stand among the members, before an equal one."""
    return bisect_left(members, wanted.amount, key=lambda member: member[1].amount)


def _off(wanted: Quantity, members: Members, place: int) -> Fraction:
    return abs(members[place][1].amount - wanted.amount)


def _pick(wanted: Quantity, members: Members, at: int) -> Pick:
    label, taken = members[at]
    below = members[at - 1][0] if at else ""
    above = members[at + 1][0] if at + 1 < len(members) else ""
    return Pick(wanted, label, taken, below, above, _rivals(wanted, members, at))


def _rivals(wanted: Quantity, members: Members, at: int) -> tuple[str, ...]:
    """The neighbours that lie within two standard deviations of what was wanted."""
    reach = 2 * wanted.spread
    beside = [place for place in (at - 1, at + 1) if 0 <= place < len(members)]
    return tuple(members[place][0] for place in beside if _off(wanted, members, place) <= reach)


def _amount(size: Quantity) -> Fraction:
    return size.amount


def _alike(sizes: tuple[Quantity, ...]) -> None:
    first = sizes[0].dimension
    for size in sizes[1:]:
        if size.dimension != first:
            raise DimensionsDifferError(f"{first.title} and {size.dimension.title}")
