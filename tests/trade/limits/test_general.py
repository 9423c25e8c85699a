"""General tolerances against ISO 2768-1, table 1, class m and f (from memory)."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.limits import general_tolerance, stray_mm


@pytest.mark.parametrize(
    ("length", "f", "m"),
    [(1, 0.05, 0.1), (3, 0.05, 0.1), (6, 0.05, 0.1), (6.01, 0.1, 0.2), (30, 0.1, 0.2),
     (120, 0.15, 0.3), (121, 0.2, 0.5), (1000, 0.3, 0.8), (2000, 0.5, 1.2)],
)  # fmt: skip
def test_the_printed_table(length: float, f: float, m: float) -> None:
    assert general_tolerance(length, "f") == f
    assert general_tolerance(length) == m


def test_it_never_falls_as_the_length_grows() -> None:
    for grade in "mc":
        found = [general_tolerance(length, grade) for length in range(1, 4000)]
        assert found == sorted(found)


def test_a_thin_length_strays_by_half_of_itself() -> None:
    assert general_tolerance(0.1) == 0.05


@pytest.mark.parametrize(("length", "grade"), [(4001, "m"), (10, "x"), (2, "v"), (-1, "m")])
def test_what_the_table_does_not_tell_is_refused(length: float, grade: str) -> None:
    with pytest.raises(NotDefined):
        general_tolerance(length, grade)
    assert stray_mm(4001) == 0
