"""Whole tables of two handbooks (`handbooks.yaml`) against what limits and tolerances come to."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
import yaml

from binder_trade.limits import GRADES, NotDefined, limits, tolerance_um

Rows = dict[float, list[float | None]]
TABLES: dict[str, Rows] = yaml.safe_load(
    Path(__file__).with_name("handbooks.yaml").read_text(encoding="utf-8")
)


def places(table: str, letters: str) -> Iterator[tuple[float, str, float | None]]:
    """Each printed place as size, letter and value; a short row has the last letters."""
    names = letters.split()
    for size_mm, row in TABLES[table].items():
        yield from ((size_mm, *pair) for pair in zip(names[-len(row) :], row, strict=True))


def refuses(size_mm: float, cls: str) -> bool:
    try:
        limits(size_mm, cls)
    except NotDefined:
        return True
    return False


def test_tolerances_of_grades_01_to_16() -> None:
    for size_mm, row in TABLES["tolerances"].items():
        for grade, value in zip(GRADES, row, strict=False):
            assert tolerance_um(size_mm, grade) == value, (size_mm, grade)


def test_shafts_m_to_zc() -> None:
    for size_mm, letter, value in places("shafts_m_to_zc", "m n p r s t u v x y z za zb zc"):
        if value is None:
            assert refuses(size_mm, f"{letter}6"), (size_mm, letter)
        else:
            assert limits(size_mm, f"{letter}6").lower_um == value, (size_mm, letter)


def test_holes_r_to_zc_over_grade_7() -> None:
    for size_mm, letter, value in places("holes_r_to_zc", "R S T U V X Y Z ZA ZB ZC"):
        assert value is not None
        assert limits(size_mm, f"{letter}8").upper_um == -value, (size_mm, letter)


@pytest.mark.parametrize(
    ("table", "letters"),
    [("holes_a_to_g", "A B C CD D E EF F FG G"), ("holes_a_to_c", "A B C")],
)
def test_holes_a_to_g(table: str, letters: str) -> None:
    for size_mm, letter, value in places(table, letters):
        if value is None:
            assert refuses(size_mm, f"{letter}9"), (size_mm, letter)
        else:
            assert limits(size_mm, f"{letter}9").lower_um == value, (size_mm, letter)


def test_shafts_j() -> None:
    for size_mm, cls, value in places("shafts_j", "j5 j6 j7"):
        assert value is not None
        assert limits(size_mm, cls).lower_um == -value, (size_mm, cls)


def test_holes_j() -> None:
    for size_mm, cls, value in places("holes_j", "J6 J7 J8"):
        assert limits(size_mm, cls).upper_um == value, (size_mm, cls)
