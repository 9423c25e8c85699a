"""What the tests of expressions share: a bench with sizes, series, a gauge and a picture."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import pytest

from binder.diagnostics import NOWHERE, Diagnostic
from binder.parameters import (
    Environment,
    Gauge,
    KnownLength,
    Named,
    Resolved,
    Series,
    parse,
    resolve,
    series_of,
)
from binder.source import Written, read_text
from binder.units import LENGTH, Quantity

Resolve = Callable[..., tuple[Resolved, tuple[Diagnostic, ...]]]


def _length(mm: str) -> Quantity:
    return Quantity(Fraction(mm), LENGTH)


@pytest.fixture(scope="session")
def series() -> dict[str, Series]:
    """Rod as a shop might sell it, made up for the tests."""
    rod = series_of("rod", "drawn rod", ["10 mm", "6 mm", "8 mm", "1/2 in"], "a shop's list")
    return {"rod": rod}


@pytest.fixture(scope="session")
def gauges() -> dict[str, Gauge]:
    """Two members of each gauge: standard wire gauge 12 and 3/0 (BS 3737), and two drills."""
    swg = Gauge("swg", "wire", {"12": _length("2.6416"), "3/0": _length("9.4488")}, "BS 3737")
    number = Gauge("number_drill", "drills", {"34": _length("2.8194")}, "ASME B94.11M")
    letter = Gauge("letter_drill", "drills", {"F": _length("6.5278")}, "ASME B94.11M")
    return {gauge.name: gauge for gauge in (swg, number, letter)}


@pytest.fixture(scope="session")
def bench(series: dict[str, Series], gauges: dict[str, Gauge]) -> Environment:
    """A bar of 20 mm, an angle, and 1380 px that are 92 mm."""
    written = Written("92 mm", NOWHERE)
    known = KnownLength(Fraction(1380), _length("92"), written)
    values = {
        name: Named(name, parse(text).evaluate(Environment()), Written(text, NOWHERE))
        for name, text in (("bar", "20 mm"), ("rake", "10 deg"))
    }
    return Environment(values, series, gauges, known, frozenset({"spoilt"}))


@pytest.fixture(scope="session")
def resolved(series: dict[str, Series], gauges: dict[str, Gauge]) -> Resolve:
    """Resolves a spec in a text, with what is set on the command line."""

    def run(text: str, *overrides: str) -> tuple[Resolved, tuple[Diagnostic, ...]]:
        document, findings = read_text(text)
        assert document is not None, findings
        return resolve(document, series, gauges, overrides)

    return run
