"""How far out of line two pulleys may stand."""

import pytest

from binder_trade.belts.alignment import offset_allowed_mm
from binder_trade.explained import NotDefined


# A belt aligner maker's page: 0.5° is the usual limit for vee belts, 0.87 mm in 100 mm; 0.25° for
# synchronous belts (a second maker: 1/4°, 1/16 in to the foot, which is 0.52 mm in 100 mm).
@pytest.mark.parametrize(
    ("belt", "offset", "near"), [("vee", 0.87, 0.005), ("toothed", 0.44, 0.09)]
)
def test_printed_limits(belt: str, offset: float, near: float) -> None:
    allowed, source = offset_allowed_mm(belt, 100)
    assert allowed == pytest.approx(offset, abs=near)
    assert "from memory" not in source


# From memory; a round cord steers itself and may lean most.
def test_a_cord_may_lean_most() -> None:
    cord, source = offset_allowed_mm("round", 100)
    assert all(cord > offset_allowed_mm(one, 100)[0] for one in ("vee", "flat", "toothed", "chain"))
    assert "from memory" in source
    with pytest.raises(NotDefined, match="no limit known"):
        offset_allowed_mm("paper", 100)
