"""A size to the working behind it."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.parameters.environment import Environment, Named, Series
from binder.parameters.parser import parse
from binder.parameters.working import Given, Working
from binder.source import Written
from binder.units import Quantity, shown

_WORD = re.compile(r"[A-Za-z][A-Za-z0-9_]*")
Asked = tuple[str, Written, Quantity]


def working_of(asked: Named | Asked, environment: Environment) -> Working:
    """The working of a named size, or of (id, text, value) at any other place."""
    if isinstance(asked, Named):
        identity, title = f"sizes.{asked.name}", asked.name
        text, quantity, origin = asked.text, asked.quantity, asked.origin
    else:
        identity, text, quantity = asked
        title, origin = identity, "spec"
    expression = parse(str(text))
    series = [environment.series[name] for name in sorted(expression.series)]
    return Working(
        id=identity,
        title=title,
        given=tuple(_given(expression.names, environment)),
        formula=_filled(str(text), expression.names, environment),
        result=shown(quantity),
        because=_because(series, quantity, origin),
        source="; ".join(one.source for one in series),
        span=text.span,
    )


def _given(names: frozenset[str], environment: Environment) -> Iterator[Given]:
    for name in sorted(names):
        named = environment.values.get(name)
        if named is not None:
            place = named.text.span
            yield Given(name, shown(named.quantity), place, f"sizes.{name}")


def _filled(text: str, names: frozenset[str], environment: Environment) -> str:
    """The text with the values of the names put in."""

    def put(found: re.Match[str]) -> str:
        named = environment.values.get(found[0]) if found[0] in names else None
        return shown(named.quantity) if named is not None else found[0]

    return _WORD.sub(put, text)


def _because(series: list[Series], quantity: Quantity, origin: str) -> str:
    if series:
        return f"as sold: {series[0].title}"
    if origin != "spec":
        return f"set on the {origin}"
    return "measured off the picture" if quantity.errors else ""
