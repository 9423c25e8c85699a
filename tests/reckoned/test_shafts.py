"""What the shafts of two example specs carry, against the hand reckoning in drives.md.

Every expected figure is worked out there, line by line, with its source.
"""

from __future__ import annotations

import pytest

from binder.api import TrainFact
from binder_plugins.drive.carrying.facts import Bearing, CarriedFact, InertiaFact, Sag
from binder_plugins.drive.carrying.opposite import opposite
from tests.reckoned.test_drives import design


def carried(name: str, shaft: str) -> CarriedFact:
    found = design(name).facts.about(CarriedFact, shaft)
    assert found is not None
    assert found.is_placed
    return found


def bearings(name: str, shaft: str) -> tuple[Bearing, Bearing]:
    one, two = carried(name, shaft).bearings
    return one, two


def sag(name: str, shaft: str, item: str) -> Sag:
    return next(one for one in carried(name, shaft).sags if one.item == item)


def inertia(name: str) -> InertiaFact:
    found = design(name).facts.about(InertiaFact, "")
    assert found is not None
    return found


# 3. Tilt hammer


def test_the_cord_loads_the_bearings_of_both_shafts() -> None:
    near, far = bearings("tilt-hammer", "line_shaft")
    assert (near.load, far.load) == pytest.approx((12.706, 4.390), abs=2e-3)
    near, far = bearings("tilt-hammer", "cam_shaft")
    # A head of 33 g, 69.8 beyond a tail of 43.2, taken up at once: 2 × 0.033 × 9.81 × 69.8 / 43.2 =
    # 1.046 N midway between the two.
    assert (near.load, far.load) == pytest.approx((15.341 + 0.523, 6.398 + 0.523), abs=2e-3)


def test_pressure_and_speed_of_hangers_and_bushes() -> None:
    hanger = bearings("tilt-hammer", "line_shaft")[0].wear
    assert hanger is not None
    assert hanger.material.material == "brass"
    assert hanger.pressure_mpa == pytest.approx(0.1765, abs=1e-4)
    assert hanger.speed_ms == pytest.approx(0.01571, abs=1e-5)
    assert hanger.pv == pytest.approx(0.00277, abs=1e-5)
    bush = bearings("tilt-hammer", "cam_shaft")[0].wear
    assert bush is not None
    assert bush.pressure_mpa == pytest.approx((15.341 + 0.523) / (6 * 9), abs=1e-4)
    assert bush.speed_ms == pytest.approx(0.00942, abs=1e-5)


def test_the_line_shaft_gives_way_and_whirls() -> None:
    found = sag("tilt-hammer", "line_shaft", "line_pulley")
    assert found.sag == pytest.approx(0.01217, abs=2e-5)
    assert found.allowed == pytest.approx(0.02256, abs=2e-5)
    whirl = carried("tilt-hammer", "line_shaft").whirl
    assert whirl is not None
    assert 55_440 <= whirl.first_rpm <= 61_600


def test_what_is_not_reckoned_is_said() -> None:
    assert "the weight of 'gear'" in carried("tilt-hammer", "line_shaft").missing
    assert "the speed of the pick-up of 'helve'" in carried("tilt-hammer", "cam_shaft").missing


def test_what_the_motor_sets_turning() -> None:
    found = inertia("tilt-hammer")
    assert [one.own for one in found.bodies] == pytest.approx([6.527, 19.74], abs=5e-3)
    assert found.bodies[1].felt == pytest.approx((7.106, 19.74, 54.83), abs=0.02)
    assert found.total == pytest.approx((13.63, 26.26, 61.35), abs=0.02)
    assert found.run_up == pytest.approx((0.00071, 0.00138, 0.00321), abs=6e-6)


def test_the_pulleys_stand_in_line_on_every_step() -> None:
    train = design("tilt-hammer").facts.about(TrainFact, "")
    assert train is not None
    for step in range(3):
        pair = opposite(train.passed[0], step, design("tilt-hammer"))
        assert pair is not None
        assert pair.offset == pytest.approx(0, abs=1e-9)


# 4. Wharf crane


def test_teeth_rope_and_hand_load_the_cheeks() -> None:
    far, near = bearings("wharf-crane", "crank_shaft")
    assert (near.load, far.load) == pytest.approx((3.154, 0.660), abs=1e-3)
    assert near.wear is not None
    assert near.wear.pressure_mpa == pytest.approx(0.2629, abs=2e-4)
    assert near.wear.speed_ms == pytest.approx(0.00838, abs=1e-5)
    other, wheel = bearings("wharf-crane", "barrel_axle")
    assert (wheel.load, other.load) == pytest.approx((6.584, 4.253), abs=1e-3)


def test_what_the_hand_sets_turning() -> None:
    found = inertia("wharf-crane")
    assert [one.own for one in found.bodies] == pytest.approx([1.330, 1.440], abs=1e-3)
    assert found.bodies[1].felt == pytest.approx((0.160,), abs=1e-3)
    assert found.loads[0][1] == pytest.approx((0.667,), abs=1e-3)
    assert found.total == pytest.approx((2.157,), abs=2e-3)
    assert found.run_up == (None,)  # nobody runs a hand up to speed


def test_the_pinion_stands_opposite_its_wheel() -> None:
    train = design("wharf-crane").facts.about(TrainFact, "")
    assert train is not None
    pair = opposite(train.passed[0], 0, design("wharf-crane"))
    assert pair is not None
    assert pair.offset == pytest.approx(0.575)
    assert pair.sticks_out == pytest.approx(0.075)
    assert pair.play == pytest.approx(0.35)
