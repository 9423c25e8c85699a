"""What the crane's steps and lists say of cord, pawl and what is used up: common practice."""

from __future__ import annotations

from pathlib import Path
from shutil import copytree

import pytest

from binder.api import BarPlan, Design, SmallWork
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.buildorder.led import led
from binder_plugins.buildorder.pawl_tried import pawl_tried
from binder_plugins.buildorder.tied import tied_first
from binder_plugins.cutlist.bars import plan_bars
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.facts import Route
from binder_plugins.partslist.adhesives import adhesives
from binder_plugins.partslist.used_up import for_tools, used_up
from binder_plugins.running.over_the_edge import stood_for
from tests.plugins.running.test_crane_run import CRANE


@pytest.fixture(scope="module")
def design(host: Host) -> Design:
    made = compiled(Job(CRANE / "wharf-crane.yaml", None, ()), host, Phase.CHECK).design
    assert made is not None
    return made


def test_the_cord_is_knotted_before_the_bearings_close_it_in(design: Design) -> None:
    joints = design.joints
    first = tied_first(joints["axle in cheeks"], design.assemblies["winch"], design)
    assert "790 mm" in first
    assert "tie hole of the barrel" in first
    assert "the end for the tie hole rolled hard" in first
    assert "the other end whipped" in first
    assert not tied_first(joints["crank in cheeks"], design.assemblies["winch"], design)
    later = led(joints["rope"], design.assemblies["crane"], design)
    assert "knotted in the tie hole of the barrel already" in later
    assert "jib cross bar that is nearest to" in later


def test_both_ends_are_whipped_where_the_hole_lets_a_whipping_through(
    host: Host, tmp_path: Path
) -> None:
    """A hole of 1.5 mm for a cord of 0.8 mm: common practice, no source."""
    copytree(CRANE, tmp_path / "crane")
    winch = tmp_path / "crane" / "winch.yaml"
    text = winch.read_text(encoding="utf-8")
    assert text.count("drilled: rope + 0.2 mm") == 1
    winch.write_text(text.replace("rope + 0.2 mm", "rope + 0.7 mm"), encoding="utf-8")
    wide = compiled(
        Job(tmp_path / "crane" / "wharf-crane.yaml", None, ()), host, Phase.CHECK
    ).design
    assert wide is not None
    first = tied_first(wide.joints["axle in cheeks"], wide.assemblies["winch"], wide)
    assert "its ends whipped" in first


def test_a_load_that_goes_below_the_bench_hangs_past_its_edge(design: Design) -> None:
    """By hand: the cord is made fast to the third bar, whose underside stands at 106.9 mm; what
    hangs is 6 + 38.5 mm high, from the rim of its sheave to the hook: 62.4 mm are left of the 160.
    At the head pin, 150.3 mm up, the rims would touch at 8 + 6 mm between the pins: 97.8 mm.

    The jib reaches 122.5 sin 40° - 2.25 cos 40° = 77.0 mm out from a post that stands 50 mm inside
    the edge: the load hangs 27.0 mm past it, and with 5 mm clear may be 44 mm wide. Slewed over the
    quay of 22 mm it has 62.4 - 22 mm."""
    said = stood_for(design)
    assert "160 mm" in said
    assert "leaves it 62 mm" in said
    assert "right-hand edge of the piece of quay at the edge of the bench" in said
    assert "no wider than 44 mm across that edge" in said
    assert "before it is slewed" in said
    assert "no taller than 40 mm with its sling" in said


@pytest.mark.parametrize(("neck", "is_found"), [("2.5 mm", False), ("1.75 mm", True)])
def test_a_knot_wants_three_cords_behind_its_flange(
    neck: str, host: Host, tmp_path: Path, *, is_found: bool
) -> None:
    """3 x 0.8 mm = 2.4 mm for a figure of eight drawn tight; common practice, no source."""
    copytree(CRANE, tmp_path / "crane")
    winch = tmp_path / "crane" / "winch.yaml"
    text = winch.read_text(encoding="utf-8")
    assert "diameter: 8 mm, length: 2.5 mm}" in text
    text = text.replace("diameter: 8 mm, length: 2.5 mm}", f"diameter: 8 mm, length: {neck}}}")
    winch.write_text(text, encoding="utf-8")
    job = Job(tmp_path / "crane" / "wharf-crane.yaml", None, ())
    found = {one.code.name for one in compiled(job, host, Phase.CHECK).findings}
    assert ("knot-has-no-room" in found) == is_found


def test_a_pawl_is_tried_before_its_pin_is_closed(design: Design) -> None:
    said = pawl_tried(design.joints["pawl on cheek"], design)
    assert "first on the loose pin" in said
    assert "next to the ratchet wheel" in said
    assert not pawl_tried(design.joints["hook in block"], design)


def test_the_nose_of_a_pawl_is_told_by_its_angle(design: Design) -> None:
    """Pin 18.386 from the axis, corner 15.297 from the pin and 5.8 from the axis: 113.4° there by
    the law of cosines, 12.1° more than a square end wants: 6 tan 12.1° = 1.3 off its far side.
    The side clears the back, at atan(3.5 / 0.262) = 85.7°, by 85.7 − 77.9 = 7.8°."""
    (route,) = (one for one in design.facts.all(Route) if one.subject == "pawl")
    said = [act.what for act in route.acts]
    nose = next(what for what in said if what.startswith("nose"))
    assert "right-hand end" in nose
    assert "12° out of square, the corner at the front left and the one at the back 1.3 mm" in nose
    assert "the front stays as it is, 8° clear" in nose
    # What stays on is sawn with it: 24 finished, 1 to face at each end, 0.3 for the trial.
    assert any(what.startswith("the other end to 24.3 mm") for what in said)
    assert any("saw off 26.3 mm" in what for what in said)
    plans = plan_bars(design).facts
    pieces = [piece for plan in plans if isinstance(plan, BarPlan) for piece in plan.pieces]
    assert next(float(one.length) for one in pieces if one.item == "pawl") == pytest.approx(26.3)


@pytest.mark.parametrize(
    "what",
    ["pickle", "primer", "paint, stone grey", "paint, black",
     "no. 6 × 3/4 in steel"],
)  # fmt: skip
def test_what_the_work_uses_up_is_bought(what: str, design: Design) -> None:
    assert any(one.startswith(what) for one in used_up(design))


def test_blanks_of_tools_are_bought_one_for_each(design: Design) -> None:
    found = for_tools(one for one in collect_tools(design).facts if isinstance(one, SmallWork))
    count, tools = found["blank of high-speed steel 6 mm square"]
    assert count == len(set(tools)) > 1
    assert next(count for what, (count, _) in found.items() if "one serves all" in what) == 1


def _names(design: Design) -> list[str]:
    fact = next(one for one in collect_tools(design).facts if isinstance(one, ToolsFact))
    return [one.name for one in fact.tools]


def test_what_a_beginner_missed_is_listed(design: Design) -> None:
    """Written down from the leaves, by a reader who looked for each in the list."""
    for word in ("rivet snap", "dolly", "half centre", "three-square scraper", "protractor",
                 "distance pieces of 3 mm", "pair of plugs"):  # fmt: skip
        assert any(word in name for name in _names(design)), word


def test_no_fragment_of_a_sentence_is_a_tool(design: Design) -> None:
    wrong = [name for name in _names(design) if name.startswith(("+", "a ")) or "does not" in name]
    assert not wrong


def test_what_locks_a_thread_is_bought_with_the_adhesives(design: Design) -> None:
    assert adhesives(design)["thread-locking compound"] == ["arm on crank shaft"]
