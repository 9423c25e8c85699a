"""The space between two teeth against ISO 53 and ISO 21771-1."""

from __future__ import annotations

import math

import pytest

from binder_solid.gears import Gear
from binder_solid.tooth_space import space_of


@pytest.mark.parametrize("teeth", [18, 54, 120])
def test_the_space_is_half_a_pitch_wide_and_as_deep_as_profile_a(teeth: int) -> None:
    """ISO 53 profile A: half of π m at the pitch line, 2.25 m deep, fillet 0.38 m at the most."""
    found = space_of(Gear(0.5, teeth))
    across = 0.5 * teeth
    assert math.isclose(found.at_pitch, across * math.sin(math.pi / 2 / teeth), rel_tol=1e-9)
    assert math.isclose(found.depth, 1.125)
    assert math.isclose(found.fillet, 0.19)
    assert found.at_root < found.at_pitch < found.at_tip


@pytest.mark.parametrize("teeth", [54, 120])
def test_the_flank_is_about_as_round_as_the_involute_at_the_pitch_point(teeth: int) -> None:
    """There the involute's radius of curvature is d sin α / 2 (ISO 21771-1)."""
    curved = 0.5 * teeth * math.sin(math.radians(20.0)) / 2
    assert math.isclose(space_of(Gear(0.5, teeth)).radius, curved, rel_tol=0.1)


def test_backlash_makes_the_space_wider() -> None:
    plain, slack = space_of(Gear(1.0, 30)), space_of(Gear(1.0, 30, backlash=0.1))
    assert math.isclose(slack.at_pitch - plain.at_pitch, 0.1, rel_tol=0.01)
