"""The size of the mate from the measured master."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.fits.to_suit import target_mm, wanted_um
from binder_trade.limits import fit


def test_bore_measured_less_two_hundredths() -> None:
    # Workshop sum: bore measured 5.97 − 0.02 = turn to 5.95.
    found = target_mm(5.97, "hole", 10, 30)
    assert found.makes == "shaft"
    assert [found.least_mm, found.target_mm, found.most_mm] == pytest.approx([5.94, 5.95, 5.96])
    assert found.says == "bore measured ____ − 0.020 = turn to ____ mm"


def test_shaft_measured_and_a_hole_to_bore() -> None:
    found = target_mm(6.01, "shaft", 10, 30)
    assert found.makes == "hole"
    assert found.target_mm == pytest.approx(6.03)
    assert found.says == "shaft measured ____ + 0.020 = bore to ____ mm"


def test_a_press_fit_adds() -> None:
    found = target_mm(6.0, "hole", -27, -7)
    assert found.target_mm == pytest.approx(6.017)
    assert found.says == "bore measured ____ + 0.017 = turn to ____ mm"


def test_the_middle_of_a_standard_fit() -> None:
    # ISO 286-2: H7/g6 at 25 mm is 7 to 41 µm.
    pair = fit(25, "H7", "g6")
    assert wanted_um(pair.clearance_min_um, pair.clearance_max_um) == 24


@given(
    st.floats(1, 300), st.sampled_from(["hole", "shaft"]), st.floats(-200, 200), st.floats(0, 200)
)
def test_there_and_back(measured: float, master: str, least: float, spread: float) -> None:
    first = target_mm(measured, master, least, least + spread)
    back = target_mm(first.target_mm, first.makes, least, least + spread)
    assert back.target_mm == pytest.approx(measured, abs=1e-9)
    assert first.least_mm <= first.target_mm <= first.most_mm


def test_another_half_is_refused() -> None:
    with pytest.raises(NotDefined, match="hole or the shaft"):
        target_mm(6, "lid", 10, 20)
    with pytest.raises(NotDefined, match="no mate"):
        target_mm(0.01, "hole", 10, 20)
