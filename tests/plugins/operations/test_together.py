"""What is done on parts put together is planned, and left off the leaves of the parts.

A bush closes in when it is pressed, so that its bore is finished in its housing; bearings are in
line where one reamer goes through them; holes drilled together lie on one another; the second
bore of a pair of gears is put where the cut gears run: all common practice, no source.
"""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from binder.api import BuildSequence, Checklist, Design, Link, Paragraph, SmallWork
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.leaf import operation_pages
from binder_plugins.operations.line_reamers import flutes_mm
from binder_plugins.operations.minutes import setup_minutes
from binder_plugins.operations.planning import whole
from binder_plugins.operations.together_pages import together_pages
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without

SPECS = Path(__file__).parents[3] / "specs"
PRESSED = """\
  axle: {material: silver steel, stock: drawn rod, turned: [{name: rod, diameter: 6 mm, length: 40 mm}]}
  bush:
    material: bronze
    turned: [{name: outside, diameter: 10 mm, length: 9 mm}]
    features: {bore: {BORE: to suit, on: outside, depth: through}, lead: {chamfered: 0.3 mm, on: outside}}
  arm:
    material: mild steel
    block: {length: 30 mm, width: 20 mm, height: 9 mm}
    features: {seat: {reamed: to suit, on: top, depth: through}}
joints:
  bush in arm: {pressed: [bush.outside, arm.seat]}
  axle in bush: {runs_in: [axle.rod, bush.bore], duty: runs}
"""  # noqa: E501


@pytest.fixture(scope="module")
def crane(host: Host) -> Design:
    found = compiled(Job(SPECS / "wharf-crane" / "wharf-crane.yaml"), host, Phase.CHECK).design
    assert found is not None
    return found


def _route(design: Design | None, name: str) -> Route:
    found = design.facts.about(Route, name) if design is not None else None
    assert found is not None, name
    return found


def _acts(route: Route, *kinds: str) -> list[Act]:
    return [act for act in route.acts if act.act in kinds]


@pytest.mark.parametrize(("bore", "place"), [("reamed", "bench"), ("bored", "lathe")])
def test_a_pressed_bush_gets_its_bore_in_its_housing(plan: Plan, bore: str, place: str) -> None:
    design = plan(f"{HEAD}{PRESSED.replace('BORE', bore)}").design
    own, task = _route(design, "bush"), _route(design, "size bush in arm")
    assert not [act for act in own.acts if "finish" in act.tags and act.feature == "bore"]
    assert not [act for act in own.acts if act.act == "measure" and act.feature == "bore"]
    assert any("left: sized in place later" in act.what for act in own.acts)
    assert [one.title for one in own.left] == ["press in and size the bush"]
    verb = "ream" if bore == "reamed" else "bore"
    assert [act.act for act in task.acts][:2] == ["press", verb]
    (setup,) = [one for one in task.setups if any(act.act == verb for act in one.acts)]
    assert setup.place == place


def test_one_putting_up_serves_both_rows_of_bores(crane: Design) -> None:
    lined = [one for one in crane.tasks if one.startswith("line up")]
    assert lined == ["line up axle in cheeks"]
    route = _route(crane, lined[0])
    assert {act.feature for act in _acts(route, "ream")} == {"bore", "lower"}
    *rows, gap = _acts(route, "measure")
    assert len(rows) == 2
    assert len([one for one in route.setups if any(act.act == "ream" for act in one.acts)]) == 1
    # The cheeks stand 24 mm apart, each bush has a rim of 0.9 mm: 22.2 mm between them.
    assert "22.2 mm as drawn" in gap.what
    assert "barrel is made to it" in gap.what
    acts = [act.id for act in route.acts]
    (apart,) = _acts(route, "separate")
    assert acts.index(gap.id) < acts.index(apart.id)


def test_the_stub_that_tells_a_gap_is_made_and_faced_while_all_stands(crane: Design) -> None:
    # A blank that goes in tells a gap where no jaws reach: common practice, no source.
    route = _route(crane, "line up axle in cheeks")
    lathe = next(one for one in route.setups if one.place == "lathe")
    ids = [act.id for act in route.acts]
    (face,), gap, (apart,) = lathe.acts, _acts(route, "measure")[-1], _acts(route, "separate")
    assert ids.index(face.id) < ids.index(gap.id) < ids.index(apart.id)
    made = [one for one in collect_tools(crane).facts if isinstance(one, SmallWork)]
    (stub,) = [one for one in made if "gauge stub" in one.subject]
    # 22 mm between the rims, and wider than the bores of 4 mm between which it stands.
    assert stub.length > 22
    assert stub.section is not None
    assert stub.section[0] > 4


def test_the_second_bore_is_put_where_the_gears_run(crane: Design) -> None:
    route = _route(crane, "set crank to barrel")
    assert [act.act for act in route.acts] == [
        "mark-out", "set-centre", "spot-through", "clamp-stack", "centre", "drill", "bore",
        "separate", "deburr",
    ]  # fmt: skip
    # A drill wanders off a mark by more than the play that the paper sets: common practice.
    (clocked,) = [one for one in route.setups if any(act.act == "bore" for act in one.acts)]
    assert clocked.place == "lathe"
    assert "pop mark, clocked true" in clocked.datum
    (bore,) = _acts(route, "bore")
    assert math.isclose(bore.size, 4.0 - 0.2)  # left for the reamer in line
    # The cheek is 36 mm wide, both bores on its middle line: spec, by hand.
    assert "18 mm off the front edge, towards the right-hand edge" in route.acts[0].what
    assert "cigarette paper, 0.025 mm thick" in route.acts[1].what
    # A clamped gear does not turn, and one peg is a hinge: common practice, no source.
    assert "clamp the foot" in route.acts[1].what
    (stacked,) = _acts(route, "clamp-stack")
    assert "the ⌀3.4 mm hole" in stacked.what
    cheek = _route(crane, "cheek")
    assert not [act for act in cheek.acts if act.feature == "lower"]  # not by coordinates
    sequence = crane.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    teeth = max(order.index(f"make {one}") for one in ("crank_pinion", "drum_wheel"))
    assert teeth < order.index("set crank to barrel") < order.index("line up axle in cheeks")


def test_what_is_drilled_together_is_drilled_once(crane: Design) -> None:
    route = _route(crane, "drill jib on post")
    drilled = _acts(route, "drill")
    assert [act.feature for act in drilled] == ["foot", "foot", "heel", "heel"]
    led = drilled[0]
    # The sides bring a hole of 2.5 mm: it leads, no centre drill goes beside it.
    assert "⌀2.5 mm through both, led by the hole that is in the jib" in led.what
    assert not _acts(route, "spot")
    mark = _acts(route, "mark-out")[0]
    assert "32 mm from its left-hand end" in mark.what  # journal of 24, and 8 beyond it
    for name in ("jib", "post"):
        own = _route(crane, name)
        assert not [act for act in own.acts if act.feature in ("foot", "heel")]
        assert [one.title for one in own.left] == 2 * [crane.tasks["drill jib on post"].title]


def test_both_ends_are_spotted_through_the_mate_apart(crane: Design) -> None:
    block = _route(crane, "winch_block")
    spotted = [one for one in block.setups if any(act.act == "spot-through" for act in one.acts)]
    assert len(spotted) == 2
    first, second = (one.acts[0].what for one in spotted)
    assert first.startswith("clamp the winch cheek on where")
    assert second.startswith("screw the first winch cheek on again and clamp the second on where")
    assert [one.acts[0].act for one in spotted] == ["spot-through"] * 2


def test_work_done_together_stands_in_the_evenings(crane: Design) -> None:
    pieces = whole(crane).pieces
    for task in ("line up axle in cheeks", "set crank to barrel", "drill jib on post"):
        assert any(name.startswith(task) and one.setup for name, one in pieces.items()), task


def test_sheet_pieces_are_drilled_in_a_stack(route_of: RouteOf) -> None:
    part = (
        "{material: brass, stock: 3 mm plate, quantity: %s, plate: {length: 40 mm, width: 20 mm,"
        " thickness: 3 mm}, features: {it: {drilled: 4 mm, depth: through, off: 2,"
        " pattern: 20 mm apart}}}"
    )
    (pair,) = [one for one in route_of(part % 2).setups if any(a.act == "drill" for a in one.acts)]
    assert (pair.acts[0].act, pair.acts[-1].act, pair.at_once) == ("clamp-stack", "separate", 2)
    assert "a peg in the first hole" in pair.acts[0].what
    drills = [act for act in pair.acts if act.act == "drill"]
    assert all(act.deep == pytest.approx(6.0) for act in drills)
    assert setup_minutes(pair, 2) == setup_minutes(pair, 1)
    alone = route_of(part % 1)
    assert not _acts(alone, "clamp-stack", "separate")
    deep = route_of(part % 12)  # 36 mm of stack under a 4 mm drill wanders
    assert not _acts(deep, "clamp-stack")


def test_two_blocks_for_one_shaft_are_bored_as_a_pair(route_of: RouteOf) -> None:
    """Bearing blocks are bored together, at one height: common practice, no source."""
    part = (
        "{material: mild steel, quantity: %s, block: {length: 24 mm, width: 9 mm, height: 49 mm},"
        " features: {seat: {bored: 10 mm, on: front, depth: through, at: 38 mm from underside}}}"
    )
    (pair,) = [one for one in route_of(part % 2).setups if any(a.act == "bore" for a in one.acts)]
    assert (pair.acts[0].act, pair.acts[-1].act, pair.at_once) == ("clamp-stack", "separate", 2)
    assert "flush" in pair.acts[0].what
    assert "packing" not in pair.true
    # Alike blocks turned about would bring a bore beside the middle to the other side.
    assert "the same way round" in pair.acts[0].what
    assert "base and edges flush" in pair.acts[0].what
    # No hole runs along the bore, so there is none to put a bolt through.
    assert "bolts" not in pair.acts[0].tool
    three = route_of(part % 3).setups
    assert not [act for one in three for act in one.acts if act.act == "clamp-stack"]
    assert any("the same packing" in one.true for one in three)


def test_turned_pieces_are_made_in_a_stick(route_of: RouteOf) -> None:
    part = (
        "{material: brass, stock: 10 mm round bar, quantity: %s,"
        " turned: [{name: rod, diameter: 8 mm, length: 6 mm}]}"
    )
    first = route_of(part % 4).setups[0]
    assert first.is_stick
    # The bar is put in once, and each further piece takes half the run: common practice.
    run = sum(act.run for act in first.acts)
    more = setup_minutes(first, 4) - setup_minutes(first, 1)
    # Both are whole minutes.
    assert more == pytest.approx(1.5 * run, abs=1)
    assert not route_of(part % 1).setups[0].is_stick


def test_a_rod_as_bought_is_eased_only_where_it_is_tight(plan: Plan) -> None:
    """A reamed 6 H7 hole (6.000 to 6.012) and silver steel h8 (5.982 to 6.000), ISO 286-2."""
    design = plan(f"{HEAD}{PRESSED.replace('BORE', 'reamed')}").design
    (polish,) = _acts(_route(design, "axle"), "polish")
    # What h8 may come short of the 0.010 that H7/f7 wants at the least (f7 at 6 mm: −10 to −22).
    assert polish.what.endswith(
        "if it is less than 0.010 under the measured bore, until it is 0.010 to 0.034 mm under"
    )


def test_the_seat_of_a_bought_wheel_is_brought_to_its_measured_bore(plan: Plan) -> None:
    """Retaining compound wants 0.02 to 0.05 mm on diameter: makers' sheets, from memory."""
    rod = "turned: [{name: seat, diameter: 6 mm, length: 15 mm}]"
    text = (
        f"{HEAD}  axle: {{material: silver steel, stock: drawn rod, {rod}}}\n"
        "scrap_box: {gear: {what: brass clock wheel, measure_first: [bore]}}\n"
        "joints: {wheel: {retained: [gear, axle.seat], master: gear}}\n"
    )
    (polish,) = _acts(_route(plan(text).design, "axle"), "polish")
    # Inside jaws read a small bore too little: steps no wider than the gap's width tell it.
    assert "try the bore of the brass clock wheel" in polish.what
    assert "stepped plug whose steps grow by 0.02 mm" in polish.what
    assert "0.02 mm to 0.05 mm under it" in polish.what
    assert "bushed" in polish.what


def test_each_joint_of_a_rod_is_tried_though_they_share_a_step(plan: Plan) -> None:
    """Two reamed arms on one step of silver steel: common practice, no source."""
    arm = "{material: brass, block: {length: 30 mm, width: 20 mm, height: 9 mm}, features: "
    bore = "{bore: {reamed: 6 mm, on: top, depth: through}}}"
    rod = "turned: [{name: rod, diameter: 6 mm, length: 40 mm}]}"
    text = (
        f"{HEAD}  axle: {{material: silver steel, stock: drawn rod, {rod}\n  one: {arm}{bore}\n"
        f"  other: {arm}{bore}\njoints:\n  a: {{runs_in: [axle.rod, one.bore]}}\n"
        "  b: {slides: [axle.rod, other.bore]}\n"
    )
    tried = [act.what for act in _acts(_route(plan(text).design, "axle"), "polish")]
    assert len(tried) == 2
    assert "bore of the one" in tried[0]
    assert "bore of the other" in tried[1]


def test_each_leaf_points_at_the_work_that_it_leaves(crane: Design) -> None:
    (section,) = together_pages(crane, ())
    leaves = {one.id for one in section.sections}
    left = {one.leaf for route in crane.facts.all(Route) for one in route.left}
    assert left
    assert left <= leaves
    links = {
        run.target
        for inset in operation_pages(crane, ())
        for block in inset.blocks
        if isinstance(block, Paragraph)
        for run in block.text
        if isinstance(run, Link)
    }
    assert links == left


def test_gears_are_set_in_bare_bores_before_a_bush_goes_in_one(crane: Design) -> None:
    """A plug fits the bored seat, and no more when the bush is in: common practice, no source."""
    sequence = crane.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    assert order.index("set crank to barrel") < order.index("bond bushes in cheeks")


def test_a_bush_is_sized_with_the_face_that_it_stands_on_square(crane: Design) -> None:
    """Common practice, no source."""
    (lathe,) = [one for one in _route(crane, "size bush in housing").setups if one.place == "lathe"]
    assert "face" in lathe.datum
    assert "square" in lathe.true


LINED = """\
  axle: {material: silver steel, stock: drawn rod, turned: [{name: rod, diameter: 6 mm, length: 90 mm}]}
  bed: {material: brass, plate: {length: 120 mm, width: 30 mm, thickness: 8 mm}}
  stand:
    material: brass
    quantity: 2
    block: {length: 24 mm, width: 8 mm, height: 20 mm}
    features: {bore: {reamed: to suit, on: front, depth: through}}
joints:
  axle in stands: {runs_in: [axle.rod, stand.bore], duty: runs, made: reamed in line}
  stands on bed: {screwed: [bed.underside, stand.underside], fastener: M3 socket cap screw}
shafts:
  axle: {along: [stand.bore, stand.bore], apart: APART}
"""  # noqa: E501


@pytest.mark.parametrize(("apart", "is_bridged"), [("17 mm", True), ("40 mm", False)])
def test_a_reamer_whose_flutes_are_short_does_not_line_up_a_row(
    plan: Plan, apart: str, is_bridged: bool
) -> None:
    """Flutes of a 6 mm machine reamer: 26 mm (DIN 212, from memory); 17 + 8 and 40 + 8 to bridge.

    A D-bit is guided by the bore behind it: common practice, no source.
    """
    design = plan(f"{HEAD}{LINED.replace('APART', apart)}").design
    route = _route(design, "line up axle in stands")
    reams = _acts(route, "ream")
    assert any("at one go" in act.what for act in reams) == is_bridged
    assert any("D-bit" in act.tool for act in reams) != is_bridged
    if not is_bridged:
        assert [("first bore alone" in act.what) for act in reams] == [True, False]


@pytest.fixture(scope="module")
def hammer(host: Host) -> Design:
    found = compiled(Job(SPECS / "tilt-hammer" / "tilt-hammer.yaml"), host, Phase.CHECK).design
    assert found is not None
    return found


def test_one_bit_does_every_line_up(hammer: Design) -> None:
    """52 mm to the end of the longest row, and 25 to turn it by: common practice, no source."""
    found = [one for one in collect_tools(hammer).facts if isinstance(one, SmallWork)]
    (bit,) = [one for one in found if one.subject.startswith("D-bit")]
    assert bit.subject == "D-bit ⌀6 mm"
    assert [float(one) for one in (*bit.section, bit.length)] == [6, 77]
    assert bit.of.count("in line") == 2


def test_a_machine_reamer_is_not_started_by_hand_without_a_guide(plan: Plan) -> None:
    """It has no lead as a hand reamer has: common practice, no source."""
    spec = f"{HEAD}{LINED.replace('APART', '17 mm')}"
    by_hand = without(reamers="{hand: {sizes: [6 mm], by_hand: true}}")
    for shop, tool in (("", "6 mm reamer in a tap wrench, pilot bush"),
                       (by_hand, "6 mm reamer in a tap wrench")):  # fmt: skip
        design = plan(spec, shop).design
        (ream,) = _acts(_route(design, "line up axle in stands"), "ream")
        assert ream.tool == tool
        assert ("no lead" in ream.what) == (not shop)


def test_what_stands_for_the_reamer_lies_on_the_bench(hammer: Design) -> None:
    """The shaft is made to the reamed bores afterwards: common practice, no source."""
    (section,) = together_pages(hammer, ())
    heads = {
        leaf.id: text_of(block.text)
        for leaf in section.sections
        if isinstance(block := leaf.blocks[0], Paragraph)
    }
    (line,) = (words for name, words in heads.items() if name.endswith("line-shaft-in-hanger"))
    (cam,) = (words for name, words in heads.items() if name.endswith("cam-shaft-in-bushes"))
    assert line.endswith("On the bench: line shaft hanger, base.")
    assert "cam shaft" not in cam
    assert {"bush", "pedestal", "bed"} <= set(cam.rstrip(".").partition("bench: ")[2].split(", "))


def test_wood_screws_that_hold_for_the_reamer_get_their_holes_then(hammer: Design) -> None:
    """No screw goes into hardwood without its hole, and one is not drilled twice: common practice,
    no source."""
    acts = list(_route(hammer, "line up line shaft in hanger").acts)
    (hole,) = [act for act in acts if act.act == "drill"]
    assert hole.what.startswith("the line shaft hanger and the base: with one straight rod ")
    assert "spot through the holes of the line shaft hanger" in hole.what
    assert "2 mm drill, 13 mm deep" in hole.what  # 1 in less the foot of 12 mm
    assert hole.tool.startswith("3.6 mm drill, 2 mm drill")
    assert acts.index(hole) < [act.act for act in acts].index("clamp-stack")
    (sheets,) = assembly_pages(hammer, ())
    (sheet,) = (one for one in sheets.sections if one.id == "assembly-line")
    (ticks,) = (block for block in sheet.blocks if isinstance(block, Checklist))
    (step,) = (text_of(one.text) for one in ticks.checks if "hangers on base" in one.key)
    assert step.startswith("Back into its own holes, as marked: screw the feet")
    assert "drill" not in step


def test_wood_is_spotted_with_the_drill_that_fills_the_hole_and_drilled_alone(
    hammer: Design,
) -> None:
    """A 2 mm drill wanders 0.8 mm in a hole of 3.6: common practice, no source."""
    spotted, drilled = (
        act
        for act in _route(hammer, "pilot bed on base").acts
        if act.act in ("spot-through", "drill")
    )
    assert "point of a 3.6 mm drill" in spotted.what
    assert (spotted.tool, drilled.tool) == ("3.6 mm drill, in a hand drill",
                                            "2 mm drill, in a hand drill")  # fmt: skip
    assert drilled.what.startswith("drill the base on the spots with a 2 mm drill")
    acts = [act.act for act in _route(hammer, "pilot bed on base").acts]
    assert acts.index("spot-through") < acts.index("separate") < acts.index("drill")


@pytest.mark.parametrize(("size", "machine", "hand"), [(4, 19, 38), (6, 26, 47), (10, 38, 66)])
def test_flutes_of_reamers(size: float, machine: float, hand: float) -> None:
    """DIN 212 and DIN 206, cutting lengths, from memory."""
    assert flutes_mm(size, is_hand=False) == machine
    assert flutes_mm(size, is_hand=True) == hand


def test_a_size_that_a_flame_moves_is_measured_cold_before_its_mate_is_fitted(
    crane: Design,
) -> None:
    """Common practice, no source."""
    sequence = crane.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    assert order.index("solder housing on foot plate") < order.index("make post_bush")
    assert order.index("solder winch block on post") < order.index("size bush in housing")
    again, _ = _acts(_route(crane, "solder winch block on post"), "measure")
    assert "journal" in again.what
    assert "again" in again.what


def test_one_drill_goes_down_the_oil_way_before_the_bore_is_sized(crane: Design) -> None:
    """Common practice, no source."""
    route = _route(crane, "size bush in housing")
    assert [act.act for act in route.acts] == ["press", "drill", "bore"]
    assert "burr in the bore" in route.acts[1].what
    own = _route(crane, "post_bush")
    assert not [act for act in own.acts if act.feature == "oil"]
    assert any(one.said.startswith("oil: drilled through both") for one in own.left)


def test_deep_rivet_holes_are_drilled_through_the_plates(crane: Design) -> None:
    """12 mm under a 1 mm drill is more than 6 of its diameters: common practice, no source."""
    own, task = _route(crane, "cross_bar"), _route(crane, "drill pieces of jib")
    assert not _acts(own, "drill")
    (drill,) = _acts(task, "drill")
    assert drill.what.startswith("8 × ")
    assert "from one side, then from the other" in drill.what
    sequence = crane.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    assert order.index("make jib_side") < order.index("drill pieces of jib")
    assert order.index("drill pieces of jib") < order.index("join jib")


RIVETED = """\
  side: {material: mild steel, quantity: 2, plate: {length: 40 mm, width: 12 mm, thickness: 1.2 mm},
    features: {holes: {drilled: 1.6 mm, depth: through, off: 2, pattern: 20 mm apart}}}
  bar: {material: mild steel, block: {length: 40 mm, width: 12 mm, height: THICK},
    features: {holes: {drilled: 1.6 mm, on: top, depth: through, off: 2, pattern: 20 mm apart}}}
fabrications:
  girder: {pieces: [2 off side, bar], joined: riveted}
"""


@pytest.mark.parametrize(("thick", "is_led"), [("9 mm", False), ("10 mm", True)])
def test_only_a_deep_hole_is_left_for_the_plates_to_lead(
    plan: Plan, thick: str, is_led: bool
) -> None:
    design = plan(f"{HEAD}{RIVETED.replace('THICK', thick)}").design
    assert design is not None
    assert ("drill pieces of girder" in design.tasks) == is_led
    assert bool(_acts(_route(design, "bar"), "drill")) != is_led


def test_the_leaf_says_where_a_soldered_part_stands(crane: Design) -> None:
    """The post is 24 + 55 = 79 mm, 1 mm above the quay; the block of 14 mm is 63 mm above that:
    79 - 62 - 14 = 3 to 79 - 62 = 17 from the upper end. The cheeks on its ends stand as the
    sides of the jib do, so the pin of the jib's foot is square to the block's right face."""
    (section,) = together_pages(crane, ())
    leaf = next(one for one in section.sections if "solder-winch-block" in one.id)
    words = [text_of(block.text) for block in leaf.blocks if isinstance(block, Paragraph)]
    (place,) = (one for one in words if one.startswith("Place: "))
    assert "winch block from 3 mm to 17 mm off the right-hand end of the slewing post" in place
    # That hole is drilled through post and jib later: it is square to the block, not the other
    # way round.
    assert "foot hole is drilled to it later" in place


def test_the_groove_of_a_round_cord_is_round(hammer: Design) -> None:
    """A cord of 3 mm beds in a nose of half its thickness, 1.5 mm: common practice, no source."""
    route = _route(hammer, "cam_pulley")
    grooves = [act for act in route.acts if act.act == "groove"]
    assert len(grooves) == 3
    assert all("R 1.5 mm" in act.what and "round" in act.tool for act in grooves)


def test_after_the_flame_the_same_gauge_measures_again(crane: Design) -> None:
    """Two gauges disagree by more than the limits are wide; common practice, no source."""
    tasks = [one for one in crane.facts.all(Route) if one.subject.startswith("solder ")]
    found = 0
    for task in tasks:
        for again in _acts(task, "measure"):
            owner = again.id.rpartition(" ")[0]
            made = [act for act in _route(crane, owner).acts if act.feature == again.feature]
            first = {act.tool for act in made if act.act == "measure"}
            # What no other part is made to is judged in the step that finishes it.
            first = first or {act.measure for act in made if act.measure}
            assert again.tool in first, again.what
            found += 1
    assert found >= 3


def test_pieces_between_plates_are_set_to_scribed_lines(crane: Design) -> None:
    """Bars of 6 × 14 mm in sides of 14.5 mm, at the holes 28.6, 53.2, 77.8 and 102.4 mm along.

    Their near edges lie 3 mm before these, and (14.5 - 14) / 2 = 0.25 mm is left at either edge.
    """
    marking, drilling, _ = _route(crane, "drill pieces of jib").setups
    (mark,) = marking.acts
    assert marking.place == "bench"
    assert "25.6 mm, 50.2 mm, 74.8 mm and 99.4 mm from its left end" in mark.what
    assert "0.25 mm in from both edges" in drilling.acts[0].what
    assert "its front on the top of a jib side" in drilling.acts[0].what


def test_a_reamer_through_both_is_oiled_as_their_metal_wants(host: Host) -> None:
    """Steel is reamed with cutting oil, whoever holds it: common practice, no source."""
    design = compiled(Job(SPECS / "wharf-crane/wharf-crane.yaml"), host, Phase.CHECK).design
    assert design is not None
    found = [one for one in design.facts.all(Route) if "slewing post together" in one.title]
    reamed = [
        setup for one in found for setup in one.setups if any(a.act == "ream" for a in setup.acts)
    ]
    assert reamed
    assert all("cutting oil" in setup.fluid for setup in reamed)


def test_a_board_says_where_its_pilot_holes_are_drilled(host: Host) -> None:
    design = compiled(Job(SPECS / "wharf-crane/wharf-crane.yaml"), host, Phase.CHECK).design
    assert design is not None
    route = design.facts.about(Route, "quay")
    assert route is not None
    assert [one.said for one in route.left] == ["top: pilot holes drilled"]
