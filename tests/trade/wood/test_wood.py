"""Movement of wood against the Wood Handbook and printed sums with its coefficients."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.wood import (
    HEATED_ROOM,
    OUTDOORS,
    WORKSHOP,
    NotDefined,
    Season,
    Wood,
    button,
    moisture_at,
    movement,
    slot,
    wood,
    wood_names,
)

INCH = 25.4
ANYTHING = st.floats(allow_nan=True) | st.floats(0, 100)


# Wood Handbook FPL-GTR-190, table 13-5 (C radial, C tangential), as read in a public copy.
@pytest.mark.parametrize(
    ("name", "radial", "tangential"),
    [
        ("oak", 0.00180, 0.00365),
        ("red oak", 0.00158, 0.00369),
        ("beech", 0.00190, 0.00431),
        ("walnut", 0.00190, 0.00274),
        ("maple", 0.00165, 0.00353),
        ("cherry", 0.00126, 0.00248),
        ("ash", 0.00169, 0.00274),
    ],
)
def test_coefficients_of_the_handbook(name: str, radial: float, tangential: float) -> None:
    kept = wood(name)
    assert (kept.coefficient("quarter-sawn"), kept.coefficient("flat-sawn")) == (radial, tangential)
    assert "memory" not in kept.source


# Tangential coefficients that flooring tables quote from the handbook, for rows kept from memory.
@pytest.mark.parametrize(
    ("name", "tangential"), [("douglas fir", 0.00267), ("mahogany", 0.00238), ("teak", 0.00186)]
)
def test_rows_from_memory_agree_with_quoted_ones(name: str, tangential: float) -> None:
    assert wood(name).tangential == tangential


# The handbook's own rule behind the table: C = S / 30 over the width at 10 % moisture, S the
# shrinkage from green to dry in table 4-3 (beech 5.5 and 11.9, Douglas-fir coast 4.8 and 7.6).
@pytest.mark.parametrize(
    ("name", "radial", "tangential"), [("beech", 5.5, 11.9), ("douglas fir", 4.8, 7.6)]
)
def test_coefficients_follow_from_the_shrinkage(
    name: str, radial: float, tangential: float
) -> None:
    def coefficient(shrinkage: float) -> float:
        each = shrinkage / 100 / 30
        return each / (1 - 20 * each)

    assert wood(name).radial == pytest.approx(coefficient(radial), abs=6e-6)
    assert wood(name).tangential == pytest.approx(coefficient(tangential), abs=6e-6)


# A magazine's worked sum: red alder, flat-sawn, 8 in, 6 %: 8 × 0.0026 × 6 = 0.1248 in.
def test_a_published_sum() -> None:
    alder = Wood("red alder", 0.0015, 0.0026, "alder, red", "printed sum")
    moved = movement(8 * INCH, alder, Season(6, 6, 12))
    assert moved.swells_mm / INCH == pytest.approx(0.1248)
    assert moved.shrinks_mm == 0


# A flooring table's worked sum: mesquite 0.00129, 5 in, from 6 to 9 %: 0.019 in.
def test_another_published_sum() -> None:
    mesquite = Wood("mesquite", 0.001, 0.00129, "mesquite", "printed sum")
    assert movement(5 * INCH, mesquite, Season(6, 6, 9)).swells_mm / INCH == pytest.approx(
        0.019, abs=5e-4
    )


# Wood Handbook, ch. 13, worked example (from memory): white fir, flat-sawn, C 0.00245, 232 mm at
# 8 %, to 11 %: 1.705 mm.
def test_the_handbooks_own_example() -> None:
    fir = Wood("white fir", 0.00112, 0.00245, "fir, white", "from memory")
    assert movement(232, fir, Season(8, 8, 11)).swells_mm == pytest.approx(1.705, abs=5e-4)


# Equilibrium moisture in a public copy of the handbook's table: humidity, °C, per cent.
@pytest.mark.parametrize(
    ("humidity", "temperature", "moisture"),
    [
        (10, 21.1, 2.5),
        (30, 21.1, 6.2),
        (50, 21.1, 9.2),
        (65, 21.1, 12.0),
        (80, 21.1, 16.0),
        (90, 21.1, 20.5),
        (50, 4.4, 9.5),
        (70, 15.6, 13.3),
        (40, 43.3, 7.2),
        (80, 32.2, 15.4),
    ],
)
def test_moisture_in_air(humidity: float, temperature: float, moisture: float) -> None:
    assert moisture_at(humidity, temperature) == pytest.approx(moisture, abs=0.2)


def test_a_slot_lets_the_board_go_both_ways() -> None:
    moved = movement(100, wood("oak"), Season(10, 8, 13))
    # 100 × 0.00365 for each per cent: 2 down, 3 up.
    assert (moved.shrinks_mm, moved.swells_mm) == pytest.approx((0.73, 1.095))
    made = slot(moved, 4.5)
    assert made.length_mm == pytest.approx(4.5 + 1.825)
    assert made.from_inner_end_mm == pytest.approx(2.25 + 1.095)


@given(width=st.floats(10, 500), hole=st.floats(2, 8), end=st.sampled_from(("dry", "damp")))
def test_the_screw_stays_in_its_slot(width: float, hole: float, end: str) -> None:
    moved = movement(width, wood("beech"), WORKSHOP)
    made = slot(moved, hole)
    # The board's slot moves outwards as it swells, so the screw goes towards the inner end.
    centre = made.from_inner_end_mm + (moved.shrinks_mm if end == "dry" else -moved.swells_mm)
    assert hole / 2 - 1e-9 <= centre <= made.length_mm - hole / 2 + 1e-9


def test_a_button_holds_when_dry_and_is_free_when_damp() -> None:
    moved = movement(200, wood("pine"), HEATED_ROOM)
    made = button(moved, 6)
    assert made.tongue_least_mm - moved.shrinks_mm == pytest.approx(6)
    assert made.gap_mm == pytest.approx(moved.swells_mm)


def test_quarter_sawn_moves_less_in_every_wood() -> None:
    for name in wood_names():
        kept = wood(name)
        assert kept.radial <= kept.tangential


def test_the_seasons_are_in_order() -> None:
    for season in (HEATED_ROOM, WORKSHOP, OUTDOORS):
        assert movement(100, wood("oak"), season).range_mm > 0


def test_what_is_not_known_is_refused() -> None:
    with pytest.raises(NotDefined) as caught:
        wood("balsawood")
    assert "oak" in caught.value.way_out
    with pytest.raises(NotDefined, match="not between"):
        movement(100, wood("oak"), Season(5, 8, 12))
    with pytest.raises(NotDefined, match="moisture"):
        movement(100, wood("oak"), Season(40, 8, 50))
    with pytest.raises(NotDefined, match="humidity"):
        moisture_at(120, 20)


@given(width=ANYTHING, now=ANYTHING, hole=ANYTHING)
def test_any_number_gives_a_movement_or_a_reason(width: float, now: float, hole: float) -> None:
    try:
        made = slot(movement(width, wood("oak"), Season(now, 8, 14)), hole)
    except NotDefined:
        return
    assert math.isfinite(made.length_mm)
