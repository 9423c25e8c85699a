"""How far a shaft may give way, against the printed table."""

import pytest

from binder_trade.explained import NotDefined
from binder_trade.shafting.allowed import at_gear, elsewhere


# Shigley's Mechanical Engineering Design, Table 7-2: spur gears of P < 10, 11 < P < 19 and
# 20 < P < 50 teeth to the inch 0.010, 0.005 and 0.003 in; slope of an uncrowned one 0.0005 rad.
@pytest.mark.parametrize(("pitch", "inches"), [(8, 0.010), (12, 0.005), (18, 0.005), (24, 0.003)])
def test_the_table_for_gears(pitch: float, inches: float) -> None:
    made = at_gear(25.4 / pitch)
    assert made.sag_mm == pytest.approx(inches * 25.4)
    assert made.slope_rad == 0.0005
    assert "from memory" not in made.source


# Common practice, no source: beyond the table the same part of a tooth, so that it joins on.
def test_teeth_finer_than_the_table() -> None:
    assert at_gear(25.4 / 50).sag_mm == pytest.approx(0.003 * 25.4)
    assert at_gear(25.4 / 100).sag_mm == pytest.approx(0.0015 * 25.4)
    with pytest.raises(NotDefined, match="module"):
        at_gear(0)


# From memory: transmission shafting, 0.010 in to the foot.
def test_shafting_by_its_length() -> None:
    made = elsewhere(12 * 25.4)
    assert made.sag_mm == pytest.approx(0.010 * 25.4, rel=1e-3)
    assert made.slope_rad is None
    assert "from memory" in made.source
