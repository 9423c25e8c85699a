"""A document to its named sizes, worked out in the order in which they need one another."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from difflib import get_close_matches
from graphlib import CycleError, TopologicalSorter

from binder.diagnostics import Diagnostic, Labelled, Span
from binder.parameters import codes
from binder.parameters.environment import Environment, Gauge, Named, Series
from binder.parameters.expression import Expression
from binder.parameters.faults import ExpressionFault
from binder.parameters.functions import FUNCTIONS
from binder.parameters.parser import parse
from binder.parameters.picture import KnownLength
from binder.parameters.picture_entry import PICTURE, read_picture
from binder.parameters.remarks import remarks_on
from binder.source import Document, Table, Written
from binder.units import UNIT_WORDS

COMMAND_LINE = "<command line>"
_NAME = re.compile(r"[A-Za-z][A-Za-z0-9_]*")
MOST_NAMED = 6


@dataclass(frozen=True, slots=True)
class Resolved:
    """The document, its named sizes that could be worked out, and what expressions may use."""

    document: Document
    sizes: Mapping[str, Named]
    environment: Environment


@dataclass(slots=True)
class _Work:
    """What is known so far: texts and expressions by name, values, the picture, findings."""

    texts: dict[str, Written]
    origins: dict[str, str]
    values: dict[str, Named]
    findings: list[Diagnostic]
    picture: KnownLength | None = None


def resolve(
    document: Document,
    series: Mapping[str, Series],
    gauges: Mapping[str, Gauge],
    overrides: Sequence[str] = (),
) -> tuple[Resolved, tuple[Diagnostic, ...]]:
    """The sizes, and findings about those that cannot be worked out; the rest still are."""
    work = _Work({}, {}, {}, [])
    _gather(document, work)
    _override(overrides, work)
    expressions = _parsed(work)
    pictured = read_picture(document, work.findings)
    known = frozenset(work.texts)
    for name in _order(expressions, pictured.names, work):
        environment = Environment(work.values, series, gauges, work.picture)
        if name == PICTURE:
            work.picture = pictured.evaluated(environment, known, work.findings)
        else:
            _evaluate(name, expressions[name], environment, known, work)
    environment = Environment(work.values, series, gauges, work.picture)
    work.findings.extend(remarks_on(work.values.values(), environment, pictured.span))
    return Resolved(document, work.values, environment), tuple(work.findings)


def _gather(document: Document, work: _Work) -> None:
    sizes = document.root.get("sizes")
    if sizes is None:
        return
    if not isinstance(sizes, Table):
        work.findings.append(
            codes.SIZES_NO_TABLE.at(document.span(("sizes",)), "`sizes` must be a table of names")
        )
        return
    for name, text in sizes.items():
        span = sizes.key_spans[name]
        if not isinstance(text, Written):
            message = f"the size '{name}' is no plain value"
            work.findings.append(codes.SIZES_NO_TABLE.at(span, message))
        elif _taken(name):
            work.findings.append(
                codes.NAME_TAKEN.at(
                    span,
                    f"'{name}' cannot name a size: it is {_taken(name)}",
                    help="choose another name",
                )
            )
        else:
            work.texts[name] = text
            work.origins[name] = "spec"


def _taken(name: str) -> str:
    if not _NAME.fullmatch(name):
        return "more than letters, figures and _"
    if name in UNIT_WORDS or name == "px":
        return "a unit"
    return "a function" if name in FUNCTIONS else ""


def _override(overrides: Iterable[str], work: _Work) -> None:
    for text in overrides:
        name, sign, value = text.partition("=")
        name, value = name.strip(), value.strip()
        place = Span(COMMAND_LINE, 0, 0, 0, 0)
        if not sign or not value:
            message = f"--set {text}: write it as --set name=value"
            work.findings.append(codes.OVERRIDE_UNKNOWN.at(place, message))
        elif name not in work.texts:
            near = get_close_matches(name, work.texts, n=1, cutoff=0.6)
            hint = f"did you mean '{near[0]}'?" if near else "only sizes of the spec can be set"
            message = f"--set: there is no size '{name}'"
            work.findings.append(codes.OVERRIDE_UNKNOWN.at(place, message, help=hint))
        else:
            work.texts[name] = Written(value, place)
            work.origins[name] = "command line"


def _parsed(work: _Work) -> dict[str, Expression]:
    expressions: dict[str, Expression] = {}
    for name, text in work.texts.items():
        try:
            expressions[name] = parse(str(text))
        except ExpressionFault as fault:
            work.findings.append(finding_of(fault, text))
    return expressions


def _order(
    expressions: Mapping[str, Expression], picture_needs: frozenset[str], work: _Work
) -> list[str]:
    """All names, each after those that it needs; those in a ring are left out."""
    needs = {name: set(one.names & expressions.keys()) for name, one in expressions.items()}
    for name, one in expressions.items():
        if "picture(" in one.text.replace(" ", ""):
            needs[name].add(PICTURE)
    needs[PICTURE] = set(picture_needs & expressions.keys())
    while True:
        try:
            return list(TopologicalSorter(needs).static_order())
        except CycleError as error:
            ring: list[str] = error.args[1]
            work.findings.append(_ring_finding(ring[:-1], work))
            for name in ring:
                needs.pop(name, None)
            needs = {name: some - set(ring) for name, some in needs.items()}


def _ring_finding(ring: list[str], work: _Work) -> Diagnostic:
    # graphlib gives each name before the one that needs it; a maker reads it the other way.
    backwards = ring[::-1]
    order = list(work.texts)
    start = min(range(len(backwards)), key=lambda place: _rank(backwards[place], order))
    names = [*backwards[start:], *backwards[:start]]
    shown = [name if name != PICTURE else "the picture" for name in names]
    words = " needs ".join([*shown[:MOST_NAMED], shown[0] if len(shown) <= MOST_NAMED else "..."])
    written = [(name, work.texts[name]) for name in names if name in work.texts]
    related = [Labelled(text.span, f"'{name}'") for name, text in written[1:MOST_NAMED]]
    span = written[0][1].span
    return codes.SIZES_IN_A_RING.at(
        span, f"sizes need one another: {words}", related=related, help="give one of them a size"
    )


def _rank(name: str, order: list[str]) -> int:
    return order.index(name) if name in order else len(order)


def _evaluate(
    name: str,
    expression: Expression,
    environment: Environment,
    known: frozenset[str],
    work: _Work,
) -> None:
    text = work.texts[name]
    if any(one in known and one not in work.values for one in expression.names):
        return  # What it needs has failed and is reported there.
    try:
        quantity = expression.evaluate(environment)
    except ExpressionFault as fault:
        work.findings.append(finding_of(fault, text))
    else:
        work.values[name] = Named(name, quantity, text, work.origins[name])


def finding_of(fault: ExpressionFault, text: Written) -> Diagnostic:
    """The finding of a fault inside a text whose place is known."""
    span = text.span
    if fault.length and span.line and span.line == span.end_line:
        span = span.within(fault.start + text.is_quoted, fault.length)
    return fault.code.at(span, fault.message, help=fault.help)
