"""A reamer at half of what the drill before it really turns, where the machine's top hides that."""

from __future__ import annotations

import pytest

from binder_making.cutting import Machine, Speeds, advise, group

LATHE = Machine(Speeds((130, 210, 340, 560, 900, 1450, 2300)))


@pytest.mark.parametrize("metal", ["brass", "aluminium", "mild steel"])
@pytest.mark.parametrize("size", [3.0, 6.0, 10.0])
def test_at_most_half_of_the_drill(metal: str, size: float) -> None:
    drill = advise(group(metal), "drill", size, LATHE).turning.rpm
    ream = advise(group(metal), "ream", size, LATHE).turning.rpm
    # Half to two thirds of drilling (read): the next lower step of the lathe under half.
    assert 0 < ream <= drill / 2


def test_brass_at_the_top_speed() -> None:
    # 70 m/min × 0.8 at 6 mm wants 2971 r/min and gets 2300: half is 1150, the step below 900.
    assert advise(group("brass"), "ream", 6.0, LATHE).turning.rpm == 900
