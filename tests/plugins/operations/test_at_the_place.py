"""Where a rod is eased, what stands in for a short grip, and how small holes are begun.

All common practice, no source, where nothing else is said.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.api import Design
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.operations.early_corners import slips
from binder_plugins.operations.facts import Act, Grip, Route
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
    """The axle of 24 + 6 = 30 mm ends flush with the bushes of 3 + 1 = 4 mm at its ends; the
    barrel is between them."""
    bushes, barrel = _acts(crane, "barrel_axle", "polish")
    assert "from 0 mm to 4 mm and 26 mm to 30 mm off its left-hand end" in bushes.what
    # It comes on over one of the two bushes' places, and never meets the other.
    assert "it slides over 0 mm to 4 mm, which the bore of the cheek bush is for" in barrel.what
    assert barrel.what.endswith("not 26 mm to 30 mm, which the bore of the cheek bush is for")


def test_a_rod_is_eased_from_the_end_that_goes_in(crane: Design) -> None:
    """A shaft of 24 + 10 = 34 mm in cheeks of 3 mm, its pinion 4 mm wide beside the right one: each
    mate must slide from the end to the far edge of its land. Common practice, no source."""
    cheeks, pinion = _acts(crane, "crank_shaft", "polish")
    assert "from 0 mm to 5.5 mm and 29.5 mm to 34 mm off" in cheeks.what
    assert "from 25.35 mm to 29.5 mm off" in pinion.what
    assert "it slides over 29.5 mm to 34 mm, which the lower of the winch cheek is" in pinion.what
    # A pin of 16.8 mm through plates of 18 gauge (1.219 mm) 12 mm apart goes through both of them.
    _, jib = _acts(crane, "head_pin", "polish")
    assert "from 0 mm to 15.62 mm off" in jib.what


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
