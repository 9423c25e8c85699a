"""The data file: its shape, its order, and the rules that bind its tables to one another."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
import yaml

from binder_trade.limits import GRADES, tolerance_factor_um

DATA = Path(__file__).parents[3] / "plugins" / "binder_trade" / "limits" / "data"
CONTENT: dict[str, Any] = yaml.safe_load((DATA / "iso286.yaml").read_text(encoding="utf-8"))
PARTS = {name: part for name, part in CONTENT.items() if isinstance(part, dict)}
TOLERANCES: dict[str, list[float]] = PARTS["tolerances"]["by_grade"]
STEPS: dict[str, list[float | None]] = PARTS["shafts_on_steps"]["by_letter"]
BANDS: dict[str, list[float | None]] = PARTS["shafts_on_bands"]["by_letter"]

# IT6 to IT18 as multiples of the factor i: ISO 286-1:1988 annex A table 7.
MULTIPLES = (10, 16, 25, 40, 64, 100, 160, 250, 400, 640, 1000, 1600, 2500)


def filled(row: list[float | None]) -> list[float]:
    return [value for value in row if value is not None]


def test_every_table_has_its_source_and_status() -> None:
    for part in PARTS.values():
        assert part["source"]
        assert part["status"] in {"verified", "memory"}


def test_sizes_ascend_and_the_bands_are_among_the_steps() -> None:
    for ends in (CONTENT["bands"], CONTENT["steps"]):
        assert ends == sorted(set(ends))
        assert (ends[0], ends[-1]) == (3, 500)
    assert set(CONTENT["bands"]) < set(CONTENT["steps"])


def test_every_row_has_a_place_for_every_size() -> None:
    for name, part in PARTS.items():
        ends = CONTENT["steps" if name == "shafts_on_steps" else "bands"]
        for key, row in (part.get("by_grade") or part["by_letter"]).items():
            assert isinstance(key, str)
            assert len(row) == len(ends), (name, key)


def test_empty_places_lie_at_one_end_of_a_row() -> None:
    for row in (*BANDS.values(), *STEPS.values()):
        holes = [value is None for value in row]
        assert sum(one != two for one, two in pairwise(holes)) <= 1


def test_tolerances_grow_with_the_grade_and_with_the_size() -> None:
    assert list(TOLERANCES) == list(GRADES)
    for row in TOLERANCES.values():
        assert row == sorted(row)
    for column in zip(*TOLERANCES.values(), strict=True):
        assert all(finer < coarser for finer, coarser in pairwise(column))


# ISO 286-1:1988 annex A, note to table 7: five grades on, ten times as much.
def test_five_grades_on_the_tolerance_is_tenfold() -> None:
    odd = {}
    for grade in range(6, 14):
        for end, value, later in zip(
            CONTENT["bands"],
            TOLERANCES[str(grade)],
            TOLERANCES[str(grade + 5)],
            strict=True,
        ):
            if later != 10 * value:
                odd[grade, end] = (value, later)
    # The one place where the printed table leaves its own rule: 7.5 stands for 8 there.
    assert odd == {(6, 6): (8, 75)}


# The table outweighs its formula: up to 3 mm by as much as 15 %, elsewhere by less than 10 %.
def test_tolerances_lie_near_the_formula() -> None:
    for grade, multiple in enumerate(MULTIPLES, start=6):
        for end, value in zip(CONTENT["bands"], TOLERANCES[str(grade)], strict=True):
            near = 0.16 if end == 3 else 0.1
            assert value == pytest.approx(multiple * tolerance_factor_um(end), rel=near)


# ISO 286-1:1988 table 3: delta is the difference of one grade and the grade below it.
def test_delta_is_the_difference_of_two_tolerances() -> None:
    for grade, row in PARTS["delta"]["by_grade"].items():
        below = TOLERANCES[str(int(grade) - 1)]
        expected = [one - two for one, two in zip(TOLERANCES[grade], below, strict=True)]
        assert row[0] == 0  # no delta up to 3 mm
        assert row[1:] == pytest.approx(expected[1:])


def test_deviations_grow_with_the_size() -> None:
    for row in (*BANDS.values(), *STEPS.values()):
        assert filled(row) == sorted(filled(row))


def on_steps(letter: str) -> list[float | None]:
    if letter in STEPS:
        return STEPS[letter]
    by_end = dict(zip(CONTENT["bands"], BANDS[letter], strict=True))
    return [next(by_end[end] for end in by_end if step <= end) for step in CONTENT["steps"]]


@pytest.mark.parametrize(
    "letters",
    [
        ("h", "g", "fg", "f", "ef", "e", "d", "cd", "c", "b", "a"),
        ("k", "m", "n", "p", "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc"),
    ],
)
def test_each_letter_lies_farther_out_than_the_one_before(letters: tuple[str, ...]) -> None:
    for column in zip(*(on_steps(letter) for letter in letters), strict=True):
        values = filled(list(column))
        assert all(near < far for near, far in pairwise(values))


# ISO 286-1:1988 annex A table 8, for the letters whose formula reproduces the printed value.
def test_r_is_the_geometric_mean_of_p_and_s() -> None:
    for p, r, s in zip(on_steps("p"), on_steps("r"), on_steps("s"), strict=True):
        assert p is not None
        assert s is not None
        assert r == pytest.approx((p * s) ** 0.5, abs=1.6)


# j leans to the nominal size by less than its tolerance: a zone of j straddles the zero line.
def test_j_straddles_the_nominal_size() -> None:
    for part in ("j_shafts", "j_holes"):
        for grade, row in PARTS[part]["by_grade"].items():
            for value, tolerance in zip(row, TOLERANCES[grade], strict=True):
                assert value is None or 0 < value < tolerance
