"""The tables of gears have no gaps, rise where they should, and name their sources."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
import yaml

import binder_trade.gears
from binder_trade.gears import form_cutter, pitches, rack, racks, tabulated_factor
from binder_trade.gears.dividing import plates_sold
from binder_trade.gears.trains import reverted

DATA = Path(binder_trade.gears.__file__).parent / "data"


def table(name: str) -> Any:  # noqa: ANN401
    return yaml.safe_load((DATA / name).read_text(encoding="utf-8"))


def sources(content: object) -> list[str]:
    """The sources that a table names, at any depth."""
    if not isinstance(content, dict):
        return []
    own = [str(value) for key, value in content.items() if str(key).endswith("source")]
    return own + [each for value in content.values() for each in sources(value)]


@pytest.mark.parametrize("path", sorted(DATA.glob("*.yaml")), ids=lambda path: path.name)
def test_every_table_names_its_source(path: Path) -> None:
    assert sources(table(path.name))


def test_pitches_rise_and_are_told_once() -> None:
    sizes = [(each.module_mm, each.system) for each in pitches()]
    assert sizes == sorted(set(sizes))


def test_steps_of_modules_are_no_more_than_half_as_much_again() -> None:
    common = [each.module_mm for each in pitches() if each.system == "module" and each.is_common]
    assert all(later / first <= 4 / 3 + 1e-9 for first, later in pairwise(common))


@pytest.mark.parametrize("name", ["DP", "module"])
def test_the_set_of_eight_has_no_gap(name: str) -> None:
    rows = sorted(table("cutters.yaml")["sets"][name].values())
    assert len(rows) == 8
    assert rows[0][0] == 12
    assert rows[-1] == [135, 0]
    assert all(later[0] == first[1] + 1 for first, later in pairwise(rows))


def test_a_bevel_gear_between_two_counts_has_a_cutter() -> None:
    # Back-cone teeth are no whole numbers: 34.6 is still cut as 34.
    assert form_cutter(34.6, "DP").range_name == "26 to 34"


def test_form_factors_rise_to_that_of_a_rack() -> None:
    factors = [tabulated_factor(teeth) for teeth in range(12, 500)]
    assert factors == sorted(factors)
    # Shigley's last row, a rack: 0.485.
    assert factors[-1] < 0.485


def test_racks_are_known_by_their_key() -> None:
    assert all(rack(key).key == key for key in racks())
    # ISO 53: B and C differ from A in the fillet alone, D is deeper.
    depths = [rack(key).depth for key in "ABCD"]
    assert depths == [2.25, 2.25, 2.25, 2.4]
    assert rack("14.5 DP").depth == pytest.approx(2.157)


@pytest.mark.parametrize("name", ["set of three", "two-sided"])
def test_circles_of_a_plate_rise(name: str) -> None:
    for circles in plates_sold(name).values():
        assert list(circles) == sorted(set(circles))


def test_no_reverted_train_is_nearer() -> None:
    wanted = Fraction(1, 11)
    found = reverted(wanted, 36, (0.8, 1.0), keep=1)[0]
    tried = [
        abs(Fraction(one * two, (90 - one) * (72 - two)) / wanted - 1)
        for one in range(12, 79)
        for two in range(12, 61)
    ]
    assert abs(found.error) == min(tried)
