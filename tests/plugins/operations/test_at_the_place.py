"""Where a rod is eased, what stands in for a short grip, and how small holes are begun.

All common practice, no source, where nothing else is said.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from binder.api import Design
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.operations.early_corners import slips
from binder_plugins.operations.facts import Act, Grip, Route
from binder_solid.facts import FormFact
from binder_solid.set_there import put_on, set_there
from tests.plugins.operations.conftest import RouteOf

SPECS = Path(__file__).parents[3] / "specs"
CAP = (
    "{material: brass, stock: round bar, turned: [{name: ball, diameter: 12 mm, length: %s mm}],"
    " features: {seat: {reamed: 8 mm, on: left, depth: 3.2 mm},"
    " dome: {rounded: 3 mm, on: right, dummy: true}}}"
)
SHEET = (
    "{material: mild steel, plate: {length: 60 mm, width: 20 mm, thickness: %s mm},"
    " features: {it: {drilled: %s mm, depth: through, at: 20 mm from left}}}"
)


@pytest.fixture(scope="module")
def crane(host: Host) -> Design:
    found = compiled(Job(SPECS / "wharf-crane" / "wharf-crane.yaml"), host, Phase.CHECK).design
    assert found is not None
    return found


def _acts(design: Design, name: str, kind: str) -> list[Act]:
    found = design.facts.about(Route, name)
    assert found is not None
    return [act for act in found.acts if act.act == kind]


def test_the_stretch_that_may_be_polished_is_told(crane: Design) -> None:
    """The axle of 24 + 6 = 30 mm ends flush with the bushes of 3 + 0.9 = 3.9 mm at its ends; the
    barrel is between them, so that each half of 15 mm is polished while the other is held."""
    bush, barrel, other_bush, rest = _acts(crane, "barrel_axle", "polish")
    assert "from 0 mm to 3.9 mm off its left-hand end" in bush.what
    assert "from 0 mm to 3.9 mm off its right-hand end" in other_bush.what
    # It comes on over one of the two bushes' places, and never meets the other.
    assert "it slides over 0 mm to 3.9 mm, which the bore of the cheek bush is for" in barrel.what
    assert "to 15 mm off its right-hand end" in rest.what
    assert rest.what.endswith("not 0 mm to 3.9 mm, which the bore of the cheek bush is for")


def test_a_rod_is_eased_from_the_end_that_goes_in(crane: Design) -> None:
    """A shaft of 24 + 10 = 34 mm and a tail of 5 mm in cheeks of 3 mm, its pinion 4 mm wide beside
    the right one: each mate must slide from the end to the far edge of its land. Common practice,
    no source."""
    left, right, pinion = _acts(crane, "crank_shaft", "polish")
    assert "from 0 mm to 5.5 mm off its left-hand end" in left.what
    assert "from 5 mm to 9.5 mm off its right-hand end" in right.what
    assert "from 9.5 mm to 13.65 mm off its right-hand end" in pinion.what
    assert "it slides over 5 mm to 9.5 mm, which the lower of the winch cheek is" in pinion.what


def test_a_pin_eased_nearly_to_its_end_is_turned_round(crane: Design) -> None:
    """A pin of 16.8 mm through plates of 18 gauge (1.219 mm) 12 mm apart goes through both of them:
    15.62 mm of it are eased, and 1.18 mm is no grip."""
    found = crane.facts.about(Route, "head_pin")
    assert found is not None
    first, second = (one for one in found.setups if one.acts[0].act == "polish")
    assert "from 0 mm to 8.4 mm off its left-hand end" in first.acts[-1].what
    assert "from 1.18 mm to 8.4 mm off its right-hand end" in second.acts[-1].what
    assert "turned round" in second.grip.on
    # The groove at 0.95 mm, 0.5 mm wide, is no grip either.
    assert second.grip.jaws == pytest.approx((1.2, 8.4))


def test_a_mate_is_tried_and_goes_on_from_the_end_that_is_eased_for_it(host: Host) -> None:
    """A cam of 8 mm, 43 to 51 mm off the left-hand end, on a journal from 26 to 68 mm: nobody eases
    51 to 59, so it comes from the left, and the jaws begin beyond it. Common practice, no source.
    """
    design = compiled(Job(SPECS / "tilt-hammer" / "tilt-hammer.yaml"), host, Phase.CHECK).design
    assert design is not None
    route = design.facts.about(Route, "cam_shaft")
    assert route is not None
    (setup,) = [
        one for one in route.setups if any("bore of the cam;" in act.what for act in one.acts)
    ]
    (act,) = [one for one in setup.acts if "bore of the cam;" in one.what]
    assert "polish it from 35 mm to 51 mm off its left-hand end" in act.what
    # The first 26 mm are 6 mm too, as bought: 6.000 in a bore of 6.000 goes on size for size.
    assert act.what.lower().startswith("try the bore of the cam dry over the pulley seat first")
    assert setup.grip.jaws[0] == pytest.approx(51)
    # A limit of hundredths is no matter for a caliper: common practice, no source.
    assert act.measure.startswith("micrometer")
    (joint,) = [one for one in design.joints.values() if set(one.items) == {"cam_shaft", "cam"}]
    assert "the cam goes on from the left-hand end of the cam shaft" in set_there(joint, design)
    # Flywheel and pulley have seats of their own at the ends, eased all along.
    others = [one for one in design.joints.values() if "cam_shaft" in one.items and one != joint]
    assert others
    assert not any(put_on(one, design) for one in others)
    # The clock wheel is bonded on its right end: the line shaft goes in from the left, and 40 to
    # 80 mm, which no bearing sits on, has to pass the farther hanger.
    left, right = [
        one.what for one in _acts(design, "line_shaft", "polish") if "hanger" in one.what
    ]
    assert left.endswith("up to 80 mm: polish 40 mm to 80 mm only till it goes")
    assert "drawn farther out" not in right
    # Bearings that are put on from both ends of a shaft with a cam between them pass nothing.
    assert not any("farther out" in one.what for one in _acts(design, "cam_shaft", "polish"))


@pytest.mark.parametrize("spec", ["wharf-crane", "tilt-hammer"])
def test_what_is_eased_lies_clear_of_a_grip_of_a_diameter(host: Host, spec: str) -> None:
    """Or it is polished in the bar. Common practice, no source."""
    design = compiled(Job(SPECS / spec / f"{spec}.yaml"), host, Phase.CHECK).design
    assert design is not None
    judged = 0
    for route in design.facts.all(Route):
        form = design.facts.about(FormFact, route.subject)
        for setup in route.setups:
            told = [
                (float(low), float(high), side)
                for act in setup.acts
                if act.act == "polish" and " off its " in act.what
                for part in [act.what.partition(" off its ")]
                for low, high in re.findall(r"([\d.]+) mm to ([\d.]+) mm", part[0])
                for side in [part[2].partition("-")[0]]
            ]
            if not told or form is None:
                continue
            judged += 1
            assert setup.grip.long >= setup.grip.across > 0
            for low, high, side in told:
                long = form.size[0]
                start, end = (low, high) if side == "left" else (long - high, long - low)
                assert end <= setup.grip.jaws[0] + 0.01 or start >= setup.grip.jaws[1] - 0.01
    assert judged


def test_a_journal_without_a_land_beside_it_is_eased_in_the_bar(crane: Design) -> None:
    """The sheave of 4 mm runs on all of 4.2 mm; the tails beside it are thinner."""
    route = crane.facts.about(Route, "block_pin")
    assert route is not None
    assert [act.act for act in route.setups[0].acts] == ["polish"]
    assert route.setups[0].grip.on == "the bar"
    axle = crane.facts.about(Route, "barrel_axle")
    assert axle is not None
    assert axle.setups[-1].acts[0].act == "polish"


@pytest.mark.parametrize(("long", "is_early"), [(7, True), (20, False)])
def test_a_corner_is_formed_on_the_bar_where_the_grip_would_be_short(
    route_of: RouteOf, *, long: int, is_early: bool
) -> None:
    """7 mm less a corner of 3 mm leave less than 4 mm to grip under a form tool."""
    route = route_of(CAP % long)
    acts = [act.act for act in route.acts]
    assert (acts.index("form") < acts.index("part-off")) == is_early
    form = next(act for act in route.acts if act.act == "form")
    assert ("back corner" in form.what) == is_early
    assert not route.trouble


@pytest.mark.parametrize(
    ("across", "long", "is_found"), [(12.0, 3.5, True), (12.0, 4.0, False), (4.0, 2.0, False)]
)
def test_a_drill_wants_a_grip(*, across: float, long: float, is_found: bool) -> None:
    """Half the thickness or 4 mm, what is less."""
    act = Act("one", "drill", "drill ⌀3 mm")
    found = list(slips(Grip("three-jaw", "chuck", "the rim", across, long), [act], "part"))
    assert bool(found) == is_found


@pytest.mark.parametrize(("across", "is_itself"), [(1.0, True), (2.0, False)])
def test_a_centre_drill_spots_no_hole_that_it_would_spoil(
    route_of: RouteOf, *, across: float, is_itself: bool
) -> None:
    """The smallest usual centre drill has a point of 1 mm: ISO 866, from memory."""
    (spot,) = [act for act in route_of(SHEET % (3, across)).acts if act.act == "spot"]
    assert spot.tool.startswith("the drill itself") == is_itself


@pytest.mark.parametrize(("thick", "is_torn"), [(1.2, True), (5, False)])
def test_sheet_is_drilled_between_wood(route_of: RouteOf, *, thick: float, is_torn: bool) -> None:
    """Wood laid over the pop would hide it: the pilot's hole in wood leads the wide drill."""
    drills = [act for act in route_of(SHEET % (thick, 8)).acts if act.act == "drill"]
    assert ("bare sheet tears" in drills[-1].what) == is_torn
    assert ("into the flat piece of wood under it" in drills[0].what) == is_torn
    assert ("whose holes lead it" in drills[-1].what) == is_torn


def test_the_other_holes_are_drilled_before_the_sheet_is_turned_over(crane: Design) -> None:
    """Turned over with its wood on top, the spots of the rest are out of sight. Common practice,
    no source."""
    drills = [(act.feature, "turned over" in act.what) for act in _acts(crane, "jib_side", "drill")]
    turned = [n for n, (_, is_over) in enumerate(drills) if is_over]
    assert turned
    assert max(n for n, (_, is_over) in enumerate(drills) if not is_over) < min(turned)


def test_no_pilot_crawls_at_the_speed_of_heavy_work(crane: Design) -> None:
    """⌀1.8 in brass wants over 5000 r/min at 30 m/min; the cheek beside its middle bears 500."""
    pilots = [act for act in _acts(crane, "cheek", "drill") if act.size < 2.0]
    assert not pilots
    wheel = [act.size for act in _acts(crane, "drum_wheel", "drill")]
    assert len(wheel) == 2  # where it may turn fast enough the pilot stays


def test_an_eye_is_marked_and_a_tip_filed_before_the_bend(crane: Design) -> None:
    route = crane.facts.about(Route, "hook")
    assert route is not None
    acts = [act.act for act in route.acts]
    tip = next(n for n, act in enumerate(route.acts) if act.feature == "tip")
    assert acts.index("mark-out") < acts.index("drill") < tip < acts.index("bend")
    assert "3 mm from left" in next(act.what for act in route.acts if act.act == "mark-out")
