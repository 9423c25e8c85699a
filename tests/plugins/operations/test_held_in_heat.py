"""Parts joined in a flame or by rivets: what holds them, what keeps their place, how long it takes.

All common practice, no source, where nothing else is said.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.api import Design, HalfFact
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.fits_in_flame import wanted
from tests.plugins.operations.conftest import HEAD, Plan

SPECS = Path(__file__).parents[3] / "specs"
SIDE = (
    "  side: {material: mild steel, quantity: 2, plate: {length: 40 mm, width: 12 mm, "
    "thickness: 1.2 mm}}\n"
    "  bar: {material: mild steel, block: {length: 40 mm, width: 12 mm, height: 6 mm}}\n"
    "bought: {rivet: {what: '%s'}}\n"
)
GIRDER = (
    "fabrications:\n  girder:\n    pieces: [2 off side, bar, %s off rivet]\n    joined: riveted\n"
    "    stack: [{piece: side}, {piece: bar}, {piece: side}]\n"
    "    features: {eye: {drilled: 4 mm, depth: through, at: 5 mm from left}}\n"
)
ROUND, SUNK = "2 mm round head rivet, 14 mm long", "2 mm countersunk head rivet, 14 mm long"


@pytest.fixture(scope="module")
def crane(host: Host) -> Design:
    found = compiled(Job(SPECS / "wharf-crane" / "wharf-crane.yaml"), host, Phase.CHECK).design
    assert found is not None
    return found


def _route(design: Design | None, name: str) -> Route:
    found = design.facts.about(Route, name) if design is not None else None
    assert found is not None, name
    return found


def _acts(route: Route, kind: str) -> list[Act]:
    return [act for act in route.acts if act.act == kind]


@pytest.mark.parametrize(
    "task",
    ["solder winch block on post", "solder housing on foot plate", "solder ratchet on barrel"],
)
def test_a_flame_is_lit_on_no_vice(crane: Design, task: str) -> None:
    """A vice draws the heat off, so that the alloy does not run."""
    first = _route(crane, task).setups[0]
    assert "vice" not in first.grip.holder
    assert "brick" in first.grip.on
    # A bore with its mate in it is not cleaned any more; common practice, no source.
    assert [act.act for act in first.acts][:2] == ["flux", "clamp-stack"]
    assert "clean" in first.acts[0].what
    assert "clean" not in first.acts[2].what
    assert "solder" in first.acts[2].act


def test_a_stop_keeps_the_place_in_the_flame(crane: Design) -> None:
    """The post of 24 + 55 = 79 mm begins 1 mm above the quay, the block of 14 mm 63 mm above it:
    79 - 62 - 14 = 3 mm are left over it. The foot plate is as thick as the spigot is long."""
    (block,) = _acts(_route(crane, "solder winch block on post"), "clamp-stack")
    assert "post on its right-hand end" in block.what
    assert "distance pieces of 3 mm" in block.what
    assert "foot hole is drilled to it later" in block.what  # that hole is not there yet
    (plate,) = _acts(_route(crane, "solder housing on foot plate"), "clamp-stack")
    assert "on the same flat" in plate.what
    assert "oil hole" in plate.what


def test_a_bore_for_solder_is_told_by_two_plugs(crane: Design) -> None:
    """Silver solder wants 0.04 to 0.08 mm on diameter (makers' sheets, from memory)."""
    (bore,) = _acts(_route(crane, "winch_block"), "bore")
    assert "+ 0.040 goes in, + 0.080 does not" in bore.measure


def test_what_suits_its_mate_is_held_against_it_when_cold(crane: Design) -> None:
    """The tenon of the post was turned to the seat of its cap as that measured: no limits are."""
    (_, tenon) = _acts(_route(crane, "solder winch block on post"), "measure")
    (half,) = (
        one
        for one in crane.facts.all(HalfFact)
        if (one.item, one.joint) == ("post", "cap over post")
    )
    assert half.suits is not None
    most = -min(half.suits)
    assert tenon.what.endswith(
        f"still 0.000 to {most:.3f} mm under the seat of the post cap as you measured it"
    )


@pytest.mark.parametrize(
    ("suits", "units", "said"),
    [
        ((-0.034, -0.010), "mm", "still 0.010 to 0.034 mm under the bore"),
        ((0.040, 0.080), "mm", "still 0.040 to 0.080 mm over the bore"),
        ((-0.005, 0.020), "mm", "still 0.005 mm under to 0.020 mm over the bore"),
        # An inch is 25.4 mm (ISO 80000-3): 0.0254 and 0.0508 mm are one and two thou.
        ((-0.0508, -0.0254), "inch", "still 0.0010 to 0.0020 in under the bore"),
    ],
)
def test_a_cold_size_is_told_in_the_units_of_the_sheet(
    suits: tuple[float, float], units: str, said: str
) -> None:
    half = HalfFact("it", "it", "part", "step", "turn", "bore", "to suit", suits=suits)
    assert wanted(half, units) == f"{said} as you measured it"


def test_a_cold_size_with_limits_has_them_in_the_units_of_the_sheet() -> None:
    """25.4 mm is 1 in (ISO 80000-3)."""
    half = HalfFact("it", "it", "part", "step", "turn", "bore", "", lower=25.3746, upper=25.4)
    assert wanted(half, "inch").startswith("0.9990 to 1.0000 in, or")


@pytest.mark.parametrize("count", [2, 8])
def test_each_rivet_takes_its_minutes(plan: Plan, count: int) -> None:
    route = _route(plan(f"{HEAD}{SIDE % ROUND}{GIRDER % count}").design, "girder")
    (rivet,) = _acts(route, "rivet")
    assert 2 * count <= rivet.run <= 5 * count
    assert "dolly hollowed" in rivet.tool


def test_a_sunk_head_lies_on_a_flat_dolly(plan: Plan) -> None:
    (rivet,) = _acts(_route(plan(f"{HEAD}{SIDE % SUNK}{GIRDER % 4}").design, "girder"), "rivet")
    assert "flat dolly" in rivet.tool
    assert "snap" not in rivet.tool


def test_a_riveted_frame_is_packed_where_it_is_drilled(plan: Plan) -> None:
    """Two sheets with nothing between them cave in under the drill."""
    route = _route(plan(f"{HEAD}{SIDE % ROUND}{GIRDER % 4}").design, "girder")
    (setup,) = [one for one in route.setups if any(act.act == "drill" for act in one.acts)]
    assert "packed apart" in setup.grip.on
    assert "clear of the hole and of the rivet heads" in setup.grip.on


def test_joined_work_is_not_gripped_by_the_faces_that_a_hole_goes_through(
    plan: Plan, crane: Design
) -> None:
    """Jaws on those faces leave the drill no way: common practice, no source."""
    route = _route(plan(f"{HEAD}{SIDE % ROUND}{GIRDER % 4}").design, "girder")
    (setup,) = [one for one in route.setups if any(act.act == "drill" for act in one.acts)]
    assert setup.grip.on.startswith("its long edges, top up")
    assert setup.grip.across == 12  # the width of the plates
    # The sides of the jib bring a hole of 3.8 mm for the pin of 4 mm: its own mark.
    (reamed,) = [one for one in _route(crane, "jib").setups if one.place == "drill"]
    assert reamed.grip.on.startswith("its long edges")
    assert "⌀3.8 mm hole there already" in reamed.datum


@pytest.mark.parametrize(
    ("rivet", "count", "cutter"),
    [
        (ROUND, 4, "wire cutters"),
        (ROUND, 1, "wire cutters"),
        ("4 mm round head rivet, 20 mm long", 4, "hacksaw"),
    ],
)
def test_a_tail_has_what_cuts_it_and_pegs_need_a_second_hole(
    plan: Plan, rivet: str, count: int, cutter: str
) -> None:
    """Cutters spring a thick tail; one hole leaves none for a peg. Common practice, no source."""
    route = _route(plan(HEAD + SIDE % rivet + GIRDER % count).design, "girder")
    (act,) = _acts(route, "rivet")
    assert f"{cutter}, files" in act.tool
    assert ("pegged" in route.setups[0].grip.on) is (count > 1)
