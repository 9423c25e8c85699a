"""The tree of an expression to what it comes to, exactly."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from operator import add, mul, sub, truediv

from binder.diagnostics import Code
from binder.parameters import codes
from binder.parameters.environment import Environment, Members
from binder.parameters.faults import ExpressionFault, quoted
from binder.parameters.functions import CHOICES, NEAREST, PICTURE, RECKONINGS, Pick
from binder.parameters.near import did_you_mean
from binder.parameters.nodes import (
    Bracketed,
    Choice,
    Combined,
    GaugeSize,
    Joined,
    Listed,
    Literal,
    Measure,
    Negated,
    Node,
    SeriesName,
    SizeName,
)
from binder.parameters.numbers import FEWER
from binder.parameters.picture import measured
from binder.units import (
    UNIT_WORDS,
    DimensionsDifferError,
    DimensionTooHighError,
    Quantity,
    QuantityError,
    TooManySourcesError,
)
from binder.units.quantity import bounded

_OPERATIONS: dict[str, Callable[[Quantity, Quantity], Quantity]] = {
    "+": add,
    "-": sub,
    "*": mul,
    "/": truediv,
}
_FAR = 2


@dataclass(frozen=True, slots=True)
class Work:
    """What an evaluation may look at, and the name under which its measures are told apart."""

    environment: Environment
    place: str = ""

    def value(self, node: Node) -> Quantity:
        """What a node comes to; ExpressionFault at the characters at fault."""
        match node:
            case Literal():
                found = node.quantity
            case SizeName():
                found = _size(node, self.environment)
            case Joined():
                found = self._joined(node)
            case Bracketed():
                found = self.value(node.inside)
            case Negated():
                found = -self.value(node.positive)
            case GaugeSize():
                found = _gauge_size(node, self.environment)
            case Combined():
                found = self._combined(node)
            case Choice():
                found = self.pick(node).taken
            case Measure():
                found = self._measured(node)
        return found

    def pick(self, node: Choice) -> Pick:
        """What a choice takes and from where; ExpressionFault."""
        wanted = self.value(node.wanted)
        members = self._members(node.among)
        found = None
        if wanted.dimension != members[0][1].dimension:
            titles = f"{wanted.dimension.title} and {members[0][1].dimension.title}"
            raise _fault(codes.KINDS_CLASH, f"{titles} cannot be compared", node.among)
        if not _is_far_off(node, wanted, members):
            found = CHOICES[node.function](wanted, members)
        if found is None:
            ends = f"from {members[0][0]} to {members[-1][0]}"
            message = f"nothing there for this size: it runs {ends}"
            raise _fault(codes.OUTSIDE_SERIES, message, node.wanted)
        return found

    def _joined(self, node: Joined) -> Quantity:
        left, right = self.value(node.left), self.value(node.right)
        try:
            return _OPERATIONS[node.sign](left, right)
        except (QuantityError, ZeroDivisionError) as error:
            raise _arithmetic(error, node.right) from None

    def _combined(self, node: Combined) -> Quantity:
        sizes = tuple(self.value(size) for size in node.sizes)
        try:
            return bounded(RECKONINGS[node.function].run(sizes))
        except (QuantityError, ZeroDivisionError) as error:
            raise _arithmetic(error, node.sizes[-1]) from None

    def _members(self, among: SeriesName | Listed) -> Members:
        if isinstance(among, SeriesName):
            return _series(among, self.environment)
        pairs = zip(among.labels, map(self.value, among.sizes), strict=True)
        members = sorted(pairs, key=lambda member: member[1].amount)
        if len({quantity.dimension for _, quantity in members}) > 1:
            raise _fault(codes.KINDS_CLASH, "the list has things of several kinds", among)
        return tuple({quantity.amount: (label, quantity) for label, quantity in members}.values())

    def _measured(self, node: Measure) -> Quantity:
        known = self.environment.picture
        if known is None:
            raise _no_picture(node, self.environment)
        try:
            return measured(node.pixels, known, f"{self.place} at {node.start}")
        except QuantityError as error:
            raise _arithmetic(error, node) from None


def _is_far_off(node: Choice, wanted: Quantity, members: Members) -> bool:
    """Whether the nearest of a series is no sensible answer: half or double is asked."""
    if node.function != NEAREST or isinstance(node.among, Listed):
        return False
    smallest, largest = members[0][1].amount, members[-1][1].amount
    return wanted.amount > _FAR * largest or wanted.amount < smallest / _FAR


def _size(node: SizeName, environment: Environment) -> Quantity:
    named = environment.values.get(node.name)
    if named is not None:
        return named.quantity
    if node.name in environment.faulty:
        raise _fault(codes.SIZE_AT_FAULT, f"{quoted(node.name)} is itself at fault", node)
    if node.name in UNIT_WORDS:
        help = f"write a number before it, as 1 {node.name}"
    elif node.name in environment.series:
        help = f"it is a series: write nearest(20 mm, {node.name})"
    else:
        help = did_you_mean(node.name, environment.values)
    raise _fault(codes.NAME_UNKNOWN, f"no size is called {quoted(node.name)}", node, help)


def _gauge_size(node: GaugeSize, environment: Environment) -> Quantity:
    gauge = environment.gauges.get(node.gauge.series)
    found = None if gauge is None else gauge.sizes.get(node.gauge.member)
    if found is None:
        message = f"the size of {quoted(node.gauge.text)} is not known"
        raise _fault(codes.GAUGE_UNKNOWN, message, node, "measure it, and write mm or in")
    return found


def _series(node: SeriesName, environment: Environment) -> Members:
    series = environment.series.get(node.name)
    if series is None:
        help = did_you_mean(node.name, environment.series) or _known(environment)
        raise _fault(codes.SERIES_UNKNOWN, f"no series is called {quoted(node.name)}", node, help)
    return series.members


def _known(environment: Environment) -> str:
    names = ", ".join(sorted(environment.series)) or "none"
    return f"known are {names}; or write a list, as [6 mm, 8 mm]"


def _no_picture(node: Measure, environment: Environment) -> ExpressionFault:
    if PICTURE in environment.faulty:
        return _fault(codes.SIZE_AT_FAULT, "the picture is itself at fault", node)
    help = "add `picture: {file: quay.png, known: {pixels: 260, is: 100 mm}}`"
    return _fault(codes.PICTURE_MISSING, "there is no picture to measure on", node, help)


def _arithmetic(error: QuantityError | ZeroDivisionError, node: Node) -> ExpressionFault:
    if isinstance(error, DimensionsDifferError):
        help = "give a bare number its unit, or multiply instead of adding"
        return _fault(codes.KINDS_CLASH, f"{error} do not go together", node, help)
    if isinstance(error, DimensionTooHighError):
        return _fault(codes.KIND_TOO_HIGH, f"this makes {error}", node)
    if isinstance(error, TooManySourcesError):
        return _fault(codes.TOO_MANY_MEASURES, "this hangs on too many measures", node)
    if isinstance(error, ZeroDivisionError):
        return _fault(codes.DIVIDED_BY_ZERO, "this comes to nothing", node)
    return _fault(codes.NUMBER_TOO_LARGE, "this makes a number of too many figures", node, FEWER)


def _fault(
    code: Code, message: str, node: Node | SeriesName | Listed, help: str = ""
) -> ExpressionFault:
    return ExpressionFault(code, message, node.start, node.end - node.start, help)
