"""A size to the working that shows what it was given, by what formula it came, and why."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from binder.parameters.environment import Environment, Named
from binder.parameters.evaluate import Work
from binder.parameters.expression import Expression, parse
from binder.parameters.functions import NEAREST, NEXT_DOWN, NEXT_UP
from binder.parameters.nodes import Choice, GaugeSize, Measure, SeriesName, SizeName, walked
from binder.parameters.places import place_of
from binder.parameters.working import Given, Working
from binder.source.tree import Written
from binder.units import ANGLE, NUMBER, Quantity, shown

PICTURE_SOURCE = "JCGM 100:2008 (GUM), 5.1.2"
MOST_WORDS = 10
_MOST_NAMES = 3
_CHOSEN = {NEAREST: "nearest of", NEXT_UP: "next size up of", NEXT_DOWN: "next size down of"}


def working_of(
    size: Named | tuple[str, Written, Quantity], environment: Environment, unit: str = "mm"
) -> Working:
    """The working of a named size, or of a size with an id, that evaluates without fault.

    `unit` is mm or inch, as printed. A named size has the id `sizes.NAME`.
    """
    if isinstance(size, Named):
        name, title, text, quantity = f"sizes.{size.name}", size.name, size.text, size.quantity
    else:
        name, text, quantity = size
        title = name
    explained = _Explained(parse(text), text, environment, unit)
    because = explained.because()
    if isinstance(size, Named) and size.origin == "command line":
        because = "set on the command line"
    return Working(
        id=name,
        title=title,
        given=tuple(explained.given()),
        formula=explained.formula(),
        result=shown(quantity, unit),
        because=because,
        source="; ".join(dict.fromkeys(explained.sources())),
        span=text.span,
    )


@dataclass(frozen=True, slots=True)
class _Explained:
    """An expression with its text and what it looks up."""

    expression: Expression
    text: Written
    environment: Environment
    unit: str

    def given(self) -> Iterator[Given]:
        """The sizes, gauges, choices and the known length that the expression uses."""
        for name in self.names():
            yield _given_size(name, self.environment, self.unit)
        for node in walked(self.expression.root):
            if isinstance(node, GaugeSize):
                place = place_of(self.text, node.start, node.end - node.start)
                yield Given(node.gauge.text, shown(self.value(node), self.unit), place)
            elif isinstance(node, Choice):
                yield self.chosen(node)
        if any(True for _ in self.expression.measures()):
            yield from _given_picture(self.environment, self.unit)

    def names(self) -> tuple[str, ...]:
        """The sizes that are named, in the order of the text, each once."""
        nodes = walked(self.expression.root)
        return tuple(dict.fromkeys(node.name for node in nodes if isinstance(node, SizeName)))

    def value(self, node: GaugeSize | SizeName) -> Quantity:
        """What a part of the expression comes to."""
        return Work(self.environment).value(node)

    def chosen(self, node: Choice) -> Given:
        """What was taken, and what lies beside it."""
        pick = Work(self.environment, self.text).pick(node)
        beside = [
            *([f"below it {pick.below}"] if pick.below else []),
            *([f"above it {pick.above}"] if pick.above else []),
        ]
        wanted = f"{pick.label} for {shown(pick.wanted, self.unit)}"
        place = place_of(self.text, node.start, node.end - node.start)
        return Given(self.among(node), "; ".join([wanted, *beside]), place)

    def among(self, node: Choice) -> str:
        """The title of what is chosen from."""
        if isinstance(node.among, SeriesName):
            return self.environment.series[node.among.name].title
        return "the list"

    def formula(self) -> str:
        """The text with the values put in."""
        pieces: list[str] = []
        at = 0
        for node in walked(self.expression.root):
            if isinstance(node, SizeName | Measure):
                pieces += [self.text[at : node.start], self.put_in(node)]
                at = node.end
        return "".join([*pieces, self.text[at:]]).replace("*", "\u00d7")

    def put_in(self, node: SizeName | Measure) -> str:
        """What stands in the formula for a name or a measure."""
        if isinstance(node, SizeName):
            return _bracketed(self.value(node), self.unit)
        known = self.environment.picture
        if known is None:
            return str(self.text[node.start : node.end])
        length = _bracketed(known.length, self.unit)
        sum_of = f"{_plain(node.pixels)} px * {length} / {_plain(known.pixels)} px"
        return sum_of if self.expression.root is node else f"({sum_of})"

    def because(self) -> str:
        """At most ten words on where the size comes from."""
        root = self.expression.root
        if isinstance(root, Choice):
            reason = f"{_CHOSEN[root.function]} {self.among(root)}"
        elif any(True for _ in self.expression.measures()):
            reason = "measured off the picture"
        elif names := self.names():
            more = " and others" if len(names) > _MOST_NAMES else ""
            reason = f"follows from {', '.join(names[:_MOST_NAMES])}{more}"
        else:
            reason = "as written"
        return " ".join(reason.split()[:MOST_WORDS])

    def sources(self) -> Iterator[str]:
        """The lists and standards behind the expression."""
        for node in walked(self.expression.root):
            if isinstance(node, Choice) and isinstance(node.among, SeriesName):
                yield self.environment.series[node.among.name].source
            elif isinstance(node, GaugeSize):
                yield self.environment.gauges[node.gauge.series].source
            elif isinstance(node, Measure):
                yield PICTURE_SOURCE


def _given_size(name: str, environment: Environment, unit: str) -> Given:
    named = environment.values[name]
    return Given(name, shown(named.quantity, unit), named.text.span, f"sizes.{name}")


def _given_picture(environment: Environment, unit: str) -> Iterator[Given]:
    """The known length, what it follows from, and how well the picture can be read."""
    known = environment.picture
    if known is None:
        return
    span = known.text.span
    yield Given("known length", f"{shown(known.length, unit)} is {_plain(known.pixels)} px", span)
    for name in sorted(parse(known.text).names):
        yield _given_size(name, environment, unit)
    error = _plain(known.pixel_error)
    yield Given("each end is placed to", f"\u00b1 {error} px", span)
    if known.tilt:
        yield Given("tilt", shown(Quantity(known.tilt, ANGLE)), span)
    if known.depth:
        yield Given("depth over distance", _plain(known.depth), span)


def _bracketed(value: Quantity, unit: str) -> str:
    """A value inside a sum: in brackets where its sign or its error could be misread."""
    text = shown(value, unit)
    return f"({text})" if value.amount < 0 or value.spread else text


def _plain(number: Fraction) -> str:
    return shown(Quantity(number, NUMBER))
