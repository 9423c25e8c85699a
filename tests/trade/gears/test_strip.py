"""A strip of paper between the teeth, reckoned by hand.

Both flanks stand off by the thickness t along their normals, so that centres move by t ÷ sin α
(plain geometry of the involute, ISO 21771): 0.025 ÷ sin 20° = 0.0731 mm. The play along the
pitch circles is then about 2 × 0.0731 × tan 20° = 0.0532 mm.
"""

from __future__ import annotations

import math

import pytest

from binder_trade.explained import NotDefined
from binder_trade.gears.gear import Gear
from binder_trade.gears.pair import mesh
from binder_trade.gears.strip import held_by, strip_for


def test_the_strip_holds_the_centres_by_its_thickness_over_the_sine() -> None:
    pair = mesh(Gear(18, 0.5), Gear(54, 0.5))
    strip = held_by(pair, 0.025)
    assert strip.apart_mm == pytest.approx(0.025 / math.sin(math.radians(20)), abs=1e-9)
    assert strip.apart_mm == pytest.approx(0.0731, abs=5e-5)
    assert strip.play_mm == pytest.approx(0.0532, rel=0.02)


def test_thicker_paper_is_taken_for_more_play() -> None:
    pair = mesh(Gear(18, 1.0), Gear(54, 1.0))
    thin, thick = strip_for(pair, pair.tight_mm + 0.03), strip_for(pair, pair.tight_mm + 0.15)
    assert thin.thick_mm < thick.thick_mm
    # What is asked is reached: 0.15 × sin 20° = 0.051 mm wants paper of 0.051 mm or more.
    assert thick.apart_mm >= 0.15


def test_a_strip_without_thickness_is_refused() -> None:
    with pytest.raises(NotDefined):
        held_by(mesh(Gear(18, 0.5), Gear(54, 0.5)), 0.0)
