"""What the tests of workshop files share: a small environment, and a file in a text read."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from pathlib import Path

import pytest

from binder.diagnostics import Diagnostic
from binder.parameters import Environment, Gauge, Series
from binder.units import INCH, LENGTH, Quantity
from binder.workshop import Workshop, read_workshop

Read = Callable[..., tuple[Workshop | None, tuple[Diagnostic, ...]]]
HEAD = "format: 1\nname: shed\nunits: mm\n"
WITH_SAW = f"{HEAD}machines: {{saws: {{hacksaw: {{kerf: 1 mm, cuts: [bars]}}}}}}\n"


def _inches(text: str) -> Quantity:
    return Quantity(Fraction(text) * INCH, LENGTH)


@pytest.fixture(scope="session")
def environment() -> Environment:
    """Three number drills, three letters and a series: too few to work with, enough to test."""
    numbers = {"1": _inches("0.228"), "2": _inches("0.221"), "3": _inches("0.213")}
    letters = {"A": _inches("0.234"), "B": _inches("0.238"), "C": _inches("0.242")}
    rods = tuple((f"{size} mm", Quantity(Fraction(size), LENGTH)) for size in (2, 3, 4))
    return Environment(
        {},
        {"drawn_rod": Series("drawn_rod", "Drawn rod", rods, "invented")},
        {
            "number_drill": Gauge("number_drill", "Number drills", numbers, "ASME B94.11M"),
            "letter_drill": Gauge("letter_drill", "Letter drills", letters, "ASME B94.11M"),
        },
        None,
    )


@pytest.fixture
def read(environment: Environment, tmp_path: Path) -> Read:
    """Reads a workshop file that holds a text."""

    def run(text: str) -> tuple[Workshop | None, tuple[Diagnostic, ...]]:
        file = tmp_path / "workshop.yaml"
        file.write_text(text, encoding="utf-8")
        return read_workshop(file, environment)

    return run


def covered(text: str, finding: Diagnostic) -> str:
    """The characters that a finding on one line underlines."""
    span = finding.span
    return text.splitlines()[span.line - 1][span.column - 1 : span.end_column - 1]
