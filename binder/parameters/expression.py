"""An expression that has been read: a tree of terms, evaluated exactly."""

from __future__ import annotations

import operator
from collections.abc import Callable
from dataclasses import dataclass
from difflib import get_close_matches

from binder.parameters import codes
from binder.parameters.environment import Environment
from binder.parameters.faults import ExpressionFault
from binder.units import GaugeName, Quantity, QuantityError
from binder.units.faults import DimensionsDifferError, TooManyDigitsError

Operation = Callable[[Quantity, Quantity], Quantity]
OPERATIONS: dict[str, Operation] = {
    "+": operator.add,
    "-": operator.sub,
    "*": operator.mul,
    "/": operator.truediv,
}


@dataclass(frozen=True, slots=True)
class Literal:
    """An amount as written."""

    quantity: Quantity
    text: str

    def value(self, environment: Environment) -> Quantity:
        """The amount itself."""
        return self.quantity


@dataclass(frozen=True, slots=True)
class Measured:
    """A size by gauge or drill name."""

    gauge: GaugeName
    start: int
    length: int

    def value(self, environment: Environment) -> Quantity:
        """The size from the gauge's table."""
        gauge = environment.gauges.get(self.gauge.series)
        size = gauge.sizes.get(self.gauge.member) if gauge is not None else None
        if size is None:
            raise ExpressionFault(
                codes.GAUGE_UNKNOWN,
                f"there is no {self.gauge.series.replace('_', ' ')} {self.gauge.member}",
                "write the size itself",
                self.start,
                self.length,
            )
        return size


@dataclass(frozen=True, slots=True)
class NameOf:
    """A named size."""

    name: str
    start: int

    def value(self, environment: Environment) -> Quantity:
        """The value of that size."""
        named = environment.values.get(self.name)
        if named is not None:
            return named.quantity
        known = sorted(environment.values)
        near = get_close_matches(self.name, known, n=1, cutoff=0.6)
        hint = f"did you mean '{near[0]}'?" if near else _what_is_known(known)
        raise ExpressionFault(
            codes.SIZE_UNKNOWN,
            f"there is no size '{self.name}'",
            hint,
            self.start,
            len(self.name),
        )


def _what_is_known(known: list[str]) -> str:
    return f"known sizes: {', '.join(known[:8])}" if known else "name it under sizes"


@dataclass(frozen=True, slots=True)
class Negative:
    """A term with a minus before it."""

    term: Term

    def value(self, environment: Environment) -> Quantity:
        """The negative of the term."""
        return -self.term.value(environment)


@dataclass(frozen=True, slots=True)
class Pair:
    """Two terms and a sign between them."""

    sign: str
    left: Term
    right: Term
    start: int

    def value(self, environment: Environment) -> Quantity:
        """The sum, difference, product or quotient; faults point at the sign."""
        left, right = self.left.value(environment), self.right.value(environment)
        try:
            return OPERATIONS[self.sign](left, right)
        except ZeroDivisionError:
            raise self._fault(codes.DIVISION_BY_ZERO, "a division by nothing") from None
        except DimensionsDifferError:
            verb = "added to" if self.sign == "+" else "taken from"
            names = (left, right) if self.sign == "+" else (right, left)
            words = f"{names[1].dimension.title} cannot be {verb} {names[0].dimension.title}"
            if self.sign == "-":
                words = f"{right.dimension.title} cannot be taken from {left.dimension.title}"
            raise self._fault(
                codes.DIMENSIONS_DIFFER, words, "give both a unit, or neither"
            ) from None
        except QuantityError as fault:
            raise self._fault(*too_much(fault)) from None

    def _fault(self, code: codes.Code, message: str, help: str = "") -> ExpressionFault:
        return ExpressionFault(code, message, help, self.start, 1)


def too_much(fault: QuantityError) -> tuple[codes.Code, str, str]:
    """What to say of arithmetic that went out of bounds."""
    if isinstance(fault, TooManyDigitsError):
        return codes.NUMBER_TOO_LONG, "the sum needs too many digits", "round it on the way"
    return codes.DIMENSION_TOO_HIGH, f"nothing on the bench is measured so: {fault}", ""


@dataclass(frozen=True, slots=True)
class Call:
    """A function with its terms; `list_terms` are those of a written list."""

    name: str
    terms: tuple[Term, ...]
    list_terms: tuple[Term, ...]
    series: str
    start: int
    length: int

    def value(self, environment: Environment) -> Quantity:
        """What the function gives."""
        from binder.parameters.functions import FUNCTIONS

        return FUNCTIONS[self.name].run(self, environment)


Term = Literal | Measured | NameOf | Negative | Pair | Call


@dataclass(frozen=True, slots=True)
class Expression:
    """A whole expression; `names` are the sizes that it asks for, `series` the series."""

    text: str
    root: Term
    names: frozenset[str]
    series: frozenset[str]

    def evaluate(self, environment: Environment) -> Quantity:
        """Its exact value; raises ExpressionFault with the place in the text."""
        return self.root.value(environment)
