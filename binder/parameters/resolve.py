"""A document to its sizes, worked out in the order in which they follow from one another."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from binder.diagnostics import Diagnostic
from binder.parameters import codes
from binder.parameters.circles import circle_finding
from binder.parameters.environment import Environment, Gauge, Named, Series
from binder.parameters.expression import Expression, parse
from binder.parameters.faults import ExpressionFault
from binder.parameters.functions import PICTURE
from binder.parameters.known import WrittenPicture, known_length, read_picture
from binder.parameters.order import ordered
from binder.parameters.places import finding_of
from binder.parameters.remarks import remarks_on
from binder.parameters.written import SIZES, WrittenSize, names_taken, written_sizes
from binder.source.tree import Document, Written

MOST_FINDINGS = 100


@dataclass(frozen=True, slots=True)
class Resolved:
    """A document, its sizes by name, and what expressions in it may look up."""

    document: Document
    sizes: Mapping[str, Named]
    environment: Environment


def resolve(
    document: Document,
    series: Mapping[str, Series],
    gauges: Mapping[str, Gauge],
    overrides: Sequence[str] = (),
) -> tuple[Resolved, tuple[Diagnostic, ...]]:
    """The sizes and the picture of a spec, worked out, and what is wrong with them.

    `overrides` are the texts of `--set`. What follows from a size at fault is left out
    without a finding of its own.
    """
    written = written_sizes(document, names_taken(series, gauges), overrides)
    work = _Resolution(
        Environment({}, series, gauges), written.texts, written.faulty, written.findings
    )
    work.read_picture(document)
    work.parse()
    work.work_out()
    return work.resolved(document), work.shown_findings(document)


@dataclass(slots=True)
class _Resolution:
    """What is known so far; it lives for one call of resolve."""

    environment: Environment
    texts: Mapping[str, WrittenSize]
    faulty: set[str]
    findings: list[Diagnostic]
    parsed: dict[str, Expression] = field(default_factory=dict)
    values: dict[str, Named] = field(default_factory=dict)
    picture: WrittenPicture | None = None

    def read_picture(self, document: Document) -> None:
        """Parses the picture, where there is one."""
        if PICTURE in document.root:
            key = document.span((PICTURE,), of_key=True)
            self.picture = read_picture(document.root[PICTURE], key)
            self.findings.extend(self.picture.findings)

    def parse(self) -> None:
        """Parses the sizes, until there are too many faults to go on."""
        for name, size in self.texts.items():
            if len(self.findings) > MOST_FINDINGS:
                self.faulty.add(name)
                continue
            try:
                self.parsed[name] = parse(size.text)
            except ExpressionFault as fault:
                self.refuse(name, [finding_of(fault, size.text)])

    def refuse(self, name: str, findings: Iterable[Diagnostic] = ()) -> None:
        """Marks a size, or the picture, as at fault."""
        self.faulty.add(name)
        self.findings.extend(findings)

    def work_out(self) -> None:
        """Evaluates what can be, each after what it follows from; circles are findings."""
        self.environment = replace(self.environment, values=self.values)
        follows = {name: self.links(one.follows()) for name, one in self.parsed.items()}
        if self.picture is not None:
            follows[PICTURE] = self.links(self.picture.names())
        order, circles = ordered(follows)
        self.findings.extend(circle_finding(circle, self.behind) for circle in circles)
        for name in order:
            if name == PICTURE:
                self.place_picture()
            elif len(self.findings) > MOST_FINDINGS:
                self.refuse(name)
            else:
                self.evaluate(name)
        self.faulty.update(follows.keys() - set(order))

    def links(self, names: Iterable[str]) -> tuple[str, ...]:
        """Those of the names that are still to be worked out, each once."""
        return tuple(
            name
            for name in dict.fromkeys(names)
            if name in self.parsed or (name == PICTURE and self.picture is not None)
        )

    def behind(self, name: str) -> tuple[tuple[Written, Expression], ...]:
        """The written expressions behind a name: one for a size, several for the picture."""
        if name == PICTURE and self.picture is not None:
            return tuple(self.picture.sizes.values())
        return ((self.texts[name].text, self.parsed[name]),)

    def place_picture(self) -> None:
        """Works out the known length."""
        picture = self.picture
        if picture is None or not self.faulty.isdisjoint(picture.names()):
            self.refuse(PICTURE)
            return
        known, findings = known_length(picture, self.environment)
        if known is None:
            self.refuse(PICTURE, findings)
        self.environment = replace(self.environment, picture=known)

    def evaluate(self, name: str) -> None:
        """Works out one size, unless what it follows from is at fault."""
        expression, size = self.parsed[name], self.texts[name]
        if not self.faulty.isdisjoint(expression.follows()):
            self.refuse(name)
            return
        try:
            quantity = expression.evaluate(self.environment, name)
        except ExpressionFault as fault:
            self.refuse(name, [finding_of(fault, size.text)])
            return
        self.values[name] = Named(name, quantity, size.text, size.origin)
        self.findings.extend(remarks_on(expression, size.text, self.environment, name))

    def resolved(self, document: Document) -> Resolved:
        """The sizes in the order in which they are written."""
        sizes = {name: self.values[name] for name in self.texts if name in self.values}
        frozen = MappingProxyType(sizes)
        environment = replace(self.environment, values=frozen, faulty=frozenset(self.faulty))
        return Resolved(document, frozen, environment)

    def shown_findings(self, document: Document) -> tuple[Diagnostic, ...]:
        """The findings, or so many of them and that there are more."""
        if len(self.findings) <= MOST_FINDINGS:
            return tuple(self.findings)
        span = document.span((SIZES,), of_key=True)
        message = f"over {MOST_FINDINGS} faults; the sizes after them were not looked at"
        return (*self.findings[:MOST_FINDINGS], codes.SIZES_TOO_FAULTY.at(span, message))
