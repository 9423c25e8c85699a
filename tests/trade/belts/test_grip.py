"""What a belt pulls before it slips, against textbooks."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.belts.grip import (
    best_speed_ms,
    friction_range,
    grip_by_limit,
    grip_by_pretension,
    held_by,
    pretension_for,
    tension_ratio,
)
from binder_trade.explained import NotDefined

HORSEPOWER = 550.0  # ft lbf/s


# Bevan, The Theory of Machines, Ex 1, p. 228: μ 0.3, 165°, 500 lb at rest, 3600 ft/min.
def test_horsepower_by_pretension() -> None:
    made = grip_by_pretension(500, tension_ratio(0.3, math.radians(165)))
    assert made.pull_n * 3600 / 60 / HORSEPOWER == pytest.approx(44.4, abs=0.05)


# Khurmi & Gupta, Theory of Machines, Ex 11.12: 2000 N at rest, μ 0.3, 150°, 0.4 m, 500 r/min.
def test_power_by_pretension() -> None:
    speed = math.pi * 0.4 * 500 / 60
    made = grip_by_pretension(2000, tension_ratio(0.3, math.radians(150)), speed)
    assert made.power_w / 1000 == pytest.approx(15.7, abs=0.1)
    assert made.tight_n + made.slack_n == pytest.approx(4000)
    assert made.torque_nmm(400) == pytest.approx(made.pull_n * 200)
    assert pretension_for(made.pull_n, made.tension_ratio) == pytest.approx(2000)


# Khurmi & Gupta, Theory of Machines, Ex 11.5: 9 kN, 2½ turns, μ 0.25, 0.3 m drum, 20 r/min.
def test_a_capstan() -> None:
    held = held_by(9000, 0.25, 2.5)
    assert held == pytest.approx(177.33, abs=0.1)
    assert (9000 - held) * math.pi * 0.3 * 20 / 60 / 1000 == pytest.approx(2.772, abs=0.002)


# Khurmi & Gupta, Theory of Machines, Ex 11.21: 15 ropes, 960 N, 1.5 kg/m, 3.6 m, groove 45°.
def test_ropes_at_their_best_speed() -> None:
    speed = best_speed_ms(960, 1.5)
    ratio = tension_ratio(0.28, math.radians(170), 45)
    made = grip_by_limit(960, ratio, speed, 1.5)
    assert speed * 60 / (math.pi * 3.6) == pytest.approx(77.5, abs=0.1)
    assert 15 * made.power_w / 1000 == pytest.approx(124.22, abs=0.1)
    for other in (0.9, 1.1):
        assert grip_by_limit(960, ratio, speed * other, 1.5).power_w < made.power_w


# Khurmi & Gupta, Theory of Machines, Ex 11.17: two V belts, groove 30°, 750 mm², 1200 kg/m³.
def test_a_pair_of_vee_belts() -> None:
    mass, tight = 1200 * 0.00075, 7e6 * 0.00075
    speed = math.pi * 0.3 * 1500 / 60
    made = grip_by_limit(tight, tension_ratio(0.12, math.pi, 30), speed, mass)
    assert 2 * made.power_w / 1000 == pytest.approx(171.69, abs=0.1)
    assert best_speed_ms(tight, mass) * 60 / (math.pi * 0.3) == pytest.approx(2807, abs=1)


@given(friction=st.floats(0.05, 0.8), wrap=st.floats(1, 4), angle=st.floats(20, 170))
def test_a_groove_wedges(friction: float, wrap: float, angle: float) -> None:
    assert tension_ratio(friction, wrap, angle) > tension_ratio(friction, wrap) > 1


# Textbook order (from memory): rubber grips better than leather, leather than cord.
def test_every_friction_has_a_range() -> None:
    found = [friction_range(name) for name in ("rubber", "leather", "cotton cord", "spring wire")]
    assert all(0 < least < most < 1 and "from memory" in source for least, most, source in found)
    assert found == sorted(found, reverse=True)
    with pytest.raises(NotDefined) as caught:
        friction_range("butter")
    assert "polyurethane" in caught.value.way_out


def test_belts_without_grip() -> None:
    with pytest.raises(NotDefined, match="pulls nothing"):
        grip_by_pretension(10, 1.0)
    with pytest.raises(NotDefined, match="pulls nothing"):
        grip_by_limit(10, 3.0, 40, 1.0)
    with pytest.raises(NotDefined, match="without friction"):
        pretension_for(10, 1.0)
    with pytest.raises(NotDefined, match="holds anything"):
        tension_ratio(1, 80)
    with pytest.raises(NotDefined, match="the friction"):
        tension_ratio(math.nan, 1)
