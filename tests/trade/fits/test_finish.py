"""Finishes on clearances and threads."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.finish import coated, finish, lost_clearance_um, thread_grows_um


def test_two_coats_eat_four_thicknesses() -> None:
    # Arithmetic: 5 µm on hole and shaft take 20 µm of diametral clearance.
    assert lost_clearance_um(5, 5) == 20
    assert lost_clearance_um(0, 5) == 10


@pytest.mark.parametrize(
    ("coat", "deviation"),
    [(3, 12), (5, 20), (8, 32), (10, 40), (12, 48), (15, 60), (20, 80), (25, 100), (30, 120)],
)
def test_threads_of_sixty_degrees(coat: float, deviation: float) -> None:
    # ISO 4042, table of least fundamental deviations for thick coats, local thickness.
    assert thread_grows_um(coat) == pytest.approx(deviation)


def test_both_halves_of_a_thread() -> None:
    # 5 µm on both: 40 µm at the pitch diameter.
    assert 2 * thread_grows_um(5) == pytest.approx(40)


def test_flatter_threads_grow_more() -> None:
    # Thread-gauge maker's page: 29° Acme changes by eight thicknesses.
    assert thread_grows_um(1, 29) == pytest.approx(8, abs=0.02)
    assert thread_grows_um(1, 55) == pytest.approx(4.33, abs=0.005)


def test_anodise_grows_by_half() -> None:
    # Platers' pages: 10 µm of anodise add 5; 2 thou of hard anodise add 1.
    assert finish("anodised").build == 0.5
    assert finish("hard anodised").grows_um[1] == pytest.approx(25)


def test_a_painted_journal_is_too_tight() -> None:
    # Common practice: paint 25 to 75 µm. H8/f7 at 6 mm has 10 to 40 µm.
    after = coated((10, 40), None, finish("paint")).after_um
    assert after == (10 - 150, 40 - 50)


def test_blacking_takes_next_to_nothing() -> None:
    lost = coated((10, 40), finish("blacked"), finish("blacked")).lost_um
    assert lost == (0, 2)


def test_no_coat_takes_nothing() -> None:
    assert coated((10, 40), None, None).after_um == (10, 40)


def test_others_are_refused() -> None:
    with pytest.raises(NotDefined, match="did you mean paint"):
        finish("painte")
    with pytest.raises(NotDefined, match="coat of the hole"):
        lost_clearance_um(-1, 0)
    with pytest.raises(NotDefined, match="no thread"):
        thread_grows_um(5, 180)
