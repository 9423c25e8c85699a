"""A name to the chain of workings behind it, from the number back to the spec's lines."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from binder.compiler import Outcome
from binder.diagnostics import Span
from binder.parameters import ExpressionFault, Given, Working, parse, working_of
from binder.source import Path, Row, Table, Written
from binder.units import shown

_DEEPEST = 12


def chain(name: str, outcome: Outcome) -> list[str]:
    """The lines to print, the asked-for number first; empty where nothing is known of it."""
    workings = known_workings(outcome)
    first = workings.get(name) or workings.get(f"sizes.{name}") or _at_place(name, outcome)
    if first is None:
        return []
    return list(_lines(first, _Behind(workings, outcome), 0, set()))


def known_workings(outcome: Outcome) -> Mapping[str, Working]:
    """Every working by its id: those of sizes, and those that plugins made."""
    found: dict[str, Working] = {}
    if outcome.resolved is not None:
        environment = outcome.resolved.environment
        for named in outcome.resolved.sizes.values():
            working = working_of(named, environment)
            found[working.id] = working
    if outcome.design is not None:
        found.update(outcome.design.workings)
    return found


def known_names(outcome: Outcome) -> list[str]:
    """What may be asked for: names of sizes and ids of workings."""
    return [name.removeprefix("sizes.") for name in known_workings(outcome)]


def _at_place(name: str, outcome: Outcome) -> Working | None:
    """The working of an expression at a dotted place of the spec."""
    if outcome.document is None or outcome.resolved is None:
        return None
    text = _scalar(outcome.document.root, tuple(name.split(".")))
    if text is None:
        return None
    environment = outcome.resolved.environment
    try:
        quantity = parse(str(text)).evaluate(environment)
    except ExpressionFault:
        return None
    return working_of((name, text, quantity), environment)


def _scalar(root: Table, path: Path) -> Written | None:
    here: object = root
    for step in path:
        if isinstance(here, Table):
            here = here.get(str(step))
        elif isinstance(here, Row) and str(step).isdecimal() and int(step) < len(here):
            here = here[int(step)]
        else:
            return None
    return here if isinstance(here, Written) else None


class _Behind:
    """What stands behind a given: a working by its id, or the sum at its place in the spec."""

    def __init__(self, workings: Mapping[str, Working], outcome: Outcome) -> None:
        self.workings = workings
        self.outcome = outcome
        document = outcome.document
        self.texts = dict(_places(document.root)) if document is not None else {}

    def working(self, given: Given) -> Working | None:
        """The working, None for what was simply written."""
        found = self.workings.get(given.working)
        text = self.texts.get(given.span)
        if found is not None or text is None or self.outcome.resolved is None:
            return found
        environment = self.outcome.resolved.environment
        try:
            expression = parse(str(text))
            if not expression.names:
                return None
            quantity = expression.evaluate(environment)
        except ExpressionFault:
            return None
        if given.value not in (shown(quantity), shown(quantity, "inch")):
            return None  # Another figure that was written in the same place.
        return working_of((given.name, text, quantity), environment)


def _places(node: object) -> Iterator[tuple[Span, Written]]:
    if isinstance(node, Written):
        yield node.span, node
    elif isinstance(node, (Table, Row)):
        for inner in node.values() if isinstance(node, Table) else node:
            yield from _places(inner)


def _lines(working: Working, behind: _Behind, depth: int, seen: set[str]) -> Iterator[str]:
    indent = "  " * depth
    yield f"{indent}{working.title} = {working.result}"
    yield f"{indent}  from: {working.formula}"
    if working.span.line:
        yield f"{indent}  written at {working.span}"
    if working.because:
        yield f"{indent}  because: {working.because}"
    if working.source:
        yield f"{indent}  source: {working.source}"
    seen.add(working.id)
    for given in working.given:
        inner = behind.working(given)
        if inner is None or depth >= _DEEPEST:
            place = f", {given.span}" if given.span.line else ""
            yield f"{indent}  given: {given.name} = {given.value}{place}"
        elif inner.id in seen:
            yield f"{indent}  given: {given.name} = {given.value}, as above"
        else:
            yield from _lines(inner, behind, depth + 1, seen)
