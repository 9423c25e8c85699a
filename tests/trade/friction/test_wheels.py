"""Friction wheels."""

import math

import pytest

from binder_trade.explained import NotDefined
from binder_trade.friction.wheels import friction_drive, pairs


# Coulomb: 600 N mm on a wheel of 60 mm is 20 N at the rim; leather at 0.2 wants 100 N, half more.
def test_the_push_between_wheels() -> None:
    made = friction_drive(60, 120, 600, "leather on cast iron", face_mm=10)
    assert made.ratio == 0.5
    assert made.pull_n == pytest.approx(20)
    assert made.press_n == pytest.approx(150)
    assert made.per_mm_use == pytest.approx(1.0)
    assert made.steps


def test_grooved_wheels_want_less_push() -> None:
    flat = friction_drive(60, 60, 600, "steel on steel, dry")
    grooved = friction_drive(60, 60, 600, "steel on steel, dry", groove_deg=60)
    assert grooved.press_n == pytest.approx(flat.press_n * math.sin(math.radians(30)))
    assert flat.per_mm_use is None


def test_pairs_of_materials() -> None:
    made = {pair: friction_drive(50, 50, 500, pair).press_n for pair in pairs()}
    assert made["rubber on metal"] == min(made.values())
    with pytest.raises(NotDefined, match="no friction known"):
        friction_drive(50, 50, 500, "butter")
    with pytest.raises(NotDefined, match="the torque"):
        friction_drive(50, 50, -1, "rubber on metal")
