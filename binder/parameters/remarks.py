"""Sizes that were worked out to remarks about how far they can be trusted."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from binder.diagnostics import Diagnostic, Span
from binder.parameters import codes
from binder.parameters.environment import Environment, Named
from binder.parameters.expression import Call, Literal, Negative, Pair, Term
from binder.parameters.functions import members_of
from binder.parameters.parser import parse
from binder.parameters.picture import LEAST_PIXELS
from binder.units import shown

SURE = 2


def remarks_on(
    sizes: Iterable[Named], environment: Environment, picture: Span
) -> Iterator[Diagnostic]:
    """Known lengths that are too short, and choices that the picture leaves open."""
    known = environment.picture
    if known is not None and known.pixels < LEAST_PIXELS:
        yield codes.PICTURE_KNOWN_TOO_SHORT.at(
            picture,
            f"the known length is {known.pixels} px, under {LEAST_PIXELS}",
            help="take a longer known length, near the middle of the picture",
        )
    for named in sizes:
        for call in _calls(parse(str(named.text)).root):
            if call.name == "picture" and known is not None:
                yield from _too_short(named, call, known.pixels)
            elif call.name == "nearest":
                yield from _open_choice(named, call, environment)


def _calls(term: Term) -> Iterator[Call]:
    if isinstance(term, Pair):
        yield from _calls(term.left)
        yield from _calls(term.right)
    elif isinstance(term, Negative):
        yield from _calls(term.term)
    elif isinstance(term, Call):
        yield term
        for inner in term.terms:
            yield from _calls(inner)


def _too_short(named: Named, call: Call, known: Fraction) -> Iterator[Diagnostic]:
    term = call.terms[0]
    if isinstance(term, Literal) and known * 4 < term.quantity.amount:
        yield codes.PICTURE_KNOWN_TOO_SHORT.at(
            named.text.span,
            f"'{named.name}' is over four times the known length",
            help="take a longer known length, or measure it in pieces",
        )


def _open_choice(named: Named, call: Call, environment: Environment) -> Iterator[Diagnostic]:
    wanted = call.terms[0].value(environment)
    if not wanted.errors:
        return
    reach = Fraction(SURE * wanted.spread)
    within = [
        size
        for _, size in members_of(call, environment)
        if abs(size.amount - wanted.amount) <= reach
    ]
    if len(within) > 1:
        yield codes.CHOICE_OPEN.at(
            named.text.span,
            f"the picture does not settle '{named.name}': {shown(wanted)} could be "
            f"{' or '.join(shown(size) for size in within[:4])}",
            help="measure it better, or write the size you choose",
        )
