"""Unit words against pint's definitions, and the definitions themselves."""

from __future__ import annotations

import subprocess
import sys
from fractions import Fraction
from typing import Any

import pytest

from binder.units import LENGTH, NUMBER, UNIT_WORDS, Quantity, Unit, from_pint, to_pint
from binder.units.registry import registry
from binder.units.words import UNITS


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: str(unit.words[0]))
def test_factor_and_dimension_are_those_of_pint(unit: Unit) -> None:
    theirs = from_pint(registry().Quantity(Fraction(1), unit.pint))
    assert (theirs.amount, theirs.dimension) == (unit.factor, unit.dimension)


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: str(unit.words[0]))
def test_to_pint_and_back(unit: Unit) -> None:
    quantity = Quantity(Fraction(22, 7) * unit.factor, unit.dimension)
    assert from_pint(to_pint(quantity)) == quantity


def test_no_word_stands_for_two_units() -> None:
    words = [word for unit in UNITS for word in unit.words]
    assert len(words) == len(set(words)) == len(UNIT_WORDS)


def test_published_definitions() -> None:
    # A7-001, A7-004: the international inch, 25.4 = 127/5 exactly (1959; ISO 80000-3).
    assert UNIT_WORDS["in"].factor == Fraction(127, 5)
    # The international pound, 0.453 592 37 kg exactly (1959), and standard gravity,
    # 9.806 65 m/s² (3rd CGPM, 1901): lbf = 4.448 221 615 260 5 N exactly.
    assert UNIT_WORDS["lb"].factor == Fraction("453.59237")
    assert UNIT_WORDS["lbf"].factor / UNIT_WORDS["N"].factor == Fraction("4.4482216152605")


def test_bar_is_the_bar_in_hand() -> None:
    assert "bar" not in UNIT_WORDS


def test_floats_of_pint_come_in_exactly() -> None:
    untyped: Any = registry()
    assert from_pint(untyped.Quantity(2.5, "mm")) == Quantity(Fraction(5, 2), LENGTH)


@pytest.mark.parametrize("unit", ["ampere", "millimeter ** 0.5"])
def test_pint_units_of_no_kind_here_are_refused(unit: str) -> None:
    with pytest.raises(ValueError, match="outside length"):
        from_pint(registry().Quantity(Fraction(1), unit))


def test_a_plain_number_to_pint_and_back() -> None:
    assert from_pint(to_pint(Quantity(Fraction(1, 3), NUMBER))).amount == Fraction(1, 3)


def test_units_and_parameters_load_without_pint() -> None:
    code = "import sys, binder.units, binder.parameters; sys.exit('pint' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
