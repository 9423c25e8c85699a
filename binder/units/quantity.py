"""An exact amount with its dimension and its first-order errors."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from binder.units.dimension import Dimension
from binder.units.faults import DimensionsDifferError, TooManyDigitsError, TooManySourcesError

MOST_BITS = 512
MOST_SOURCES = 100
Errors = tuple[tuple[str, float], ...]


@dataclass(frozen=True, slots=True)
class Quantity:
    """An amount in base units (mm, g, s, degrees, K), exact.

    `errors` holds, for each independent source of error, the standard deviation that it
    contributes, signed and in base units, sorted by source: errors from one source add
    before they are squared, so what is common to two sizes cancels in their difference
    (JCGM 100:2008, 5.1.2 and 5.2.2, first order). Operations raise faults of
    `binder.units.faults`, and ZeroDivisionError.
    """

    amount: Fraction
    dimension: Dimension
    errors: Errors = ()

    @property
    def spread(self) -> float:
        """The combined standard uncertainty: the root of the sum of squares, base units."""
        return math.hypot(*(share for _, share in self.errors))

    def __add__(self, other: Quantity) -> Quantity:
        self._must_match(other)
        errors = _combined(self.errors, 1.0, other.errors, 1.0)
        return bounded(Quantity(self.amount + other.amount, self.dimension, errors))

    def __sub__(self, other: Quantity) -> Quantity:
        self._must_match(other)
        errors = _combined(self.errors, 1.0, other.errors, -1.0)
        return bounded(Quantity(self.amount - other.amount, self.dimension, errors))

    def __neg__(self) -> Quantity:
        errors = _combined(self.errors, -1.0, (), 0.0)
        return Quantity(-self.amount, self.dimension, errors)

    def __mul__(self, other: Quantity) -> Quantity:
        dimension = self.dimension.times(other.dimension)
        errors = self._errors_of(other, 1)
        return bounded(Quantity(self.amount * other.amount, dimension, errors))

    def __truediv__(self, other: Quantity) -> Quantity:
        dimension = self.dimension.over(other.dimension)
        ratio = self.amount / other.amount
        errors = self._errors_of(other, -1)
        return bounded(Quantity(ratio, dimension, errors))

    def with_error(self, source: str, share: float) -> Quantity:
        """The same amount with one more error, of a standard deviation in base units."""
        errors = _combined(self.errors, 1.0, ((source, share),), 1.0)
        return Quantity(self.amount, self.dimension, errors)

    def _must_match(self, other: Quantity) -> None:
        if self.dimension != other.dimension:
            raise DimensionsDifferError(f"{self.dimension.title} and {other.dimension.title}")

    def _errors_of(self, other: Quantity, power: int) -> Errors:
        """First-order errors of self times other to the power 1 or -1."""
        if not self.errors and not other.errors:
            return ()
        mine, theirs = float(self.amount), float(other.amount)
        if power == 1:
            return _combined(self.errors, theirs, other.errors, mine)
        return _combined(self.errors, 1 / theirs, other.errors, -mine / theirs / theirs)


def bounded(quantity: Quantity) -> Quantity:
    """The same quantity; TooManyDigitsError where its amount takes more than 512 bits."""
    amount = quantity.amount
    if amount.numerator.bit_length() + amount.denominator.bit_length() > MOST_BITS:
        raise TooManyDigitsError
    return quantity


def _combined(first: Errors, by: float, second: Errors, and_by: float) -> Errors:
    """The errors of by * first + and_by * second, source by source."""
    if not first and not second:
        return ()
    shares = {source: share * by for source, share in first}
    for source, share in second:
        shares[source] = shares.get(source, 0.0) + share * and_by
    if len(shares) > MOST_SOURCES:
        raise TooManySourcesError
    if not all(map(math.isfinite, shares.values())):
        raise TooManyDigitsError
    return tuple(sorted((source, share) for source, share in shares.items() if share))
