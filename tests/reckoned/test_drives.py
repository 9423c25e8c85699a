"""The drives of two example specs against the hand reckoning in drives.md.

Every expected figure is worked out there, line by line, with its source.
"""

from __future__ import annotations

import re
from functools import cache
from math import degrees
from pathlib import Path

import pytest

from binder.api import TraceFact, TrainFact, TurningFact
from binder.compiler import Job, Outcome, Phase, compiled
from binder.design import Design
from binder.host import Host
from binder_plugins.drive.duties.duty import DutyFact
from binder_plugins.drive.pairs.facts import BeltFact, MeshFact, ToothFact
from binder_plugins.drive.tracing import trace_drive

ROOT = Path(__file__).parents[2]
_FIGURE = re.compile(r"-?[0-9]+(?:\.[0-9]+)?")


@cache
def design(name: str) -> Design:
    outcome: Outcome = compiled(
        Job(ROOT / "specs" / name / f"{name}.yaml"), Host.load(), Phase.CHECK
    )
    assert outcome.design is not None
    return outcome.design


def turning(name: str, item: str) -> TurningFact:
    return next(one for one in design(name).facts.all(TurningFact) if item in one.items)


def figures(name: str, duty: str, row: str) -> list[float]:
    """All figures of a printed row, in order."""
    fact = design(name).facts.about(DutyFact, duty)
    assert fact is not None
    return [float(one) for one in _FIGURE.findall(dict(fact.rows)[row])]


def belt() -> BeltFact:
    found = design("tilt-hammer").facts.about(BeltFact, "pulleys")
    assert found is not None
    return found


# 1. Tilt hammer


def test_every_speed_of_line_shaft_and_cam_shaft() -> None:
    assert turning("tilt-hammer", "line_pulley").speeds == (50, 50, 50)
    speeds = turning("tilt-hammer", "cam").speeds
    assert speeds == pytest.approx((30, 50, 83.333), abs=1e-3)


def test_the_belt_is_of_one_length_on_every_step() -> None:
    lengths = [run.length_mm for run in belt().runs]
    assert lengths == pytest.approx([205.7642, 205.7562, 205.7642], abs=2e-4)
    assert max(lengths) - min(lengths) < 0.01
    assert belt().apart == pytest.approx(0.0080, abs=2e-4)


def test_the_pulleys_run_at_their_rims() -> None:
    pairs = [(run.first_mm, run.second_mm) for run in belt().runs]
    assert pairs == [(24, 40), (32.39, 32.39), (40, 24)]


def test_the_middle_step_is_the_one_that_suits() -> None:
    assert belt().suited == pytest.approx((40, 32.395, 24), abs=1e-3)


def test_the_wrap_and_the_cord() -> None:
    assert min(degrees(run.least_wrap_rad) for run in belt().runs) == pytest.approx(162.3, abs=0.1)
    assert belt().free == pytest.approx(187.05, abs=0.02)


def test_the_blows_and_the_fall() -> None:
    assert figures("tilt-hammer", "helve", "Blows a minute") == pytest.approx([120, 200, 333])
    assert figures("tilt-hammer", "helve", "Lift of the head") == pytest.approx([9.694], abs=0.05)
    fall, next_lift, _ = figures("tilt-hammer", "helve", "Time to fall")
    assert fall == pytest.approx(0.0445, abs=6e-4)
    assert next_lift == pytest.approx(0.1306, abs=6e-4)
    assert figures("tilt-hammer", "helve", "Fastest")[0] == pytest.approx(204.0, abs=0.6)
    assert figures("tilt-hammer", "helve", "Lift at the wheel")[1] == pytest.approx(24.68, abs=0.05)


def test_the_flywheel_is_weighed_with_its_dish_and_bore() -> None:
    assert figures("tilt-hammer", "flywheel", "Mass") == pytest.approx([63.55], abs=0.3)
    assert figures("tilt-hammer", "flywheel", "Inertia")[0] == pytest.approx(11.79, abs=0.06)
    energy = figures("tilt-hammer", "flywheel", "Energy")
    assert energy[-2] == pytest.approx(0.449, abs=0.002)
    assert figures("tilt-hammer", "flywheel", "Rim")[0] == pytest.approx(0.166, abs=0.006)


# 2. Wharf crane


def test_the_barrel_turns_at_a_third_the_other_way() -> None:
    assert turning("wharf-crane", "crank_arm").speeds == (40,)
    assert turning("wharf-crane", "barrel").speeds == pytest.approx((-40 / 3,))


def test_the_load_and_the_pull_in_the_rope() -> None:
    assert figures("wharf-crane", "rope", "Load") == pytest.approx([14.710], abs=0.05)
    assert figures("wharf-crane", "rope", "Pull in the rope")[0] == pytest.approx(8.066, abs=0.01)
    assert turning("wharf-crane", "barrel").torques[0] == pytest.approx(32.27, abs=0.01)


def test_the_force_on_the_crank() -> None:
    assert turning("wharf-crane", "crank_arm").torques[0] == pytest.approx(12.156, abs=0.005)
    force = figures("wharf-crane", "rope", "Force on the handle")[0]
    assert force == pytest.approx(0.553, abs=0.001)
    assert 0.536 <= force <= 0.570
    # What is hung from the handle: 0.553 / 9.80665 = 0.0564 kg (standard fall, ISO 80000-4).
    traced = trace_drive(design("wharf-crane")).facts
    (told,) = [one for one in traced if isinstance(one, TraceFact) and one.unit == "g"]
    assert told.should.startswith("0.553 N: 56.4 g in a small bag, hung from the handle")
    assert figures("wharf-crane", "rope", "To hold it still")[0] == pytest.approx(0.446, abs=0.001)


def test_the_hand_is_strong_enough() -> None:
    train = design("wharf-crane").facts.about(TrainFact, "")
    assert train is not None
    assert list(train.strength) == [10 * 22]
    needed = turning("wharf-crane", "crank_arm").torques[0]
    assert needed is not None
    assert 220 / needed == pytest.approx(18, abs=0.2)


def test_turns_of_the_crank_for_a_metre() -> None:
    turns = figures("wharf-crane", "rope", "Turns of the handle")[0]
    assert turns == pytest.approx(238.7, abs=0.6)
    assert turns / 2 == pytest.approx(119.4, abs=0.3)  # two lines: a metre of rope
    assert figures("wharf-crane", "rope", "Load rises")[0] == pytest.approx(167.6, abs=0.5)


def test_the_rope_goes_on_in_one_layer() -> None:
    length, turns = figures("wharf-crane", "rope", "Rope on the drum")[:2]
    assert (length, turns) == pytest.approx((320, 14.73), abs=0.05)
    fact = design("wharf-crane").facts.about(DutyFact, "rope")
    assert fact is not None
    assert dict(fact.rows)["Rope on the drum"].endswith("in one layer")


def test_blanks_depth_and_centres_of_the_gears() -> None:
    teeth = {one.subject: one for one in design("wharf-crane").facts.all(ToothFact)}
    for item, blank, cutter in (("crank_pinion", 10, 3), ("drum_wheel", 28, 6)):
        one = teeth[item]
        assert one.blank is not None
        assert one.cutter is not None
        assert one.blank.blank_mm == pytest.approx(blank)
        assert one.blank.depth_mm == pytest.approx(1.125)
        assert (one.cutter.number, one.cutter.other_number) == (cutter, 9 - cutter)
    mesh = next(iter(design("wharf-crane").facts.all(MeshFact)))
    assert mesh.frame == pytest.approx(18.07)
    assert mesh.wanted == pytest.approx(18.0731, abs=5e-4)
    assert mesh.mesh is not None
    assert mesh.mesh.reference_mm == pytest.approx(18)
    assert mesh.mesh.backlash_mm == pytest.approx(0.0541, abs=5e-4)


def test_the_ratchet_is_sound() -> None:
    """It holds: on the barrel's own body, its tooth far below what mild steel bears."""
    assert figures("wharf-crane", "pawl", "Click") == [30]
    drop = figures("wharf-crane", "pawl", "Load drops back")
    assert drop == pytest.approx([1.047], abs=0.005)
    push, pressure = figures("wharf-crane", "pawl", "A tooth bears")[:2]
    assert push == pytest.approx(4.60, abs=0.005)
    assert pressure == pytest.approx(1.9, abs=0.05)
    assert "ratchet" in turning("wharf-crane", "barrel").items
