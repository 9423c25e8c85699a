"""What is done on parts put together is planned, and left off the leaves of the parts.

A bush closes in when it is pressed, so that its bore is finished in its housing; bearings are in
line where one reamer goes through them; holes drilled together lie on one another; the second
bore of a pair of gears is put where the cut gears run: all common practice, no source.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.api import BuildSequence, Design, Link, Paragraph
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.leaf import operation_pages
from binder_plugins.operations.minutes import setup_minutes
from binder_plugins.operations.planning import whole
from binder_plugins.operations.together_pages import together_pages
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

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
    assert [act.feature for act in _acts(route, "ream")] == ["bore", "lower"]
    assert all("through 2 bores at one go" in act.what for act in _acts(route, "ream"))
    assert len(_acts(route, "measure")) == 2
    assert len(route.setups) == 1


def test_the_second_bore_is_put_where_the_gears_run(crane: Design) -> None:
    route = _route(crane, "set crank to barrel")
    assert [act.act for act in route.acts] == [
        "set-centre", "spot-through", "clamp-stack", "drill", "separate", "deburr",
    ]  # fmt: skip
    assert "cigarette paper, 0.025 mm thick" in route.acts[0].what
    cheek = _route(crane, "cheek")
    assert not [act for act in cheek.acts if act.feature == "lower"]  # not by coordinates
    sequence = crane.facts.about(BuildSequence, "")
    assert sequence is not None
    order = [step.task for step in sequence.steps]
    teeth = max(order.index(f"make {one}") for one in ("crank_pinion", "drum_wheel"))
    assert teeth < order.index("set crank to barrel") < order.index("line up axle in cheeks")


def test_what_is_drilled_together_is_drilled_once(crane: Design) -> None:
    route = _route(crane, "drill jib on post")
    assert [act.feature for act in _acts(route, "drill")] == ["foot"]
    for name in ("jib", "post"):
        own = _route(crane, name)
        assert not [act for act in own.acts if act.feature == "foot"]
        assert [one.title for one in own.left] == [crane.tasks["drill jib on post"].title]


def test_both_ends_are_spotted_through_the_mate_apart(crane: Design) -> None:
    block = _route(crane, "winch_block")
    spotted = [one for one in block.setups if any(act.act == "spot-through" for act in one.acts)]
    assert len(spotted) == 2
    assert all("clamp the winch cheek on" in one.acts[0].what for one in spotted)
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
    assert more == pytest.approx(1.5 * run)
    assert not route_of(part % 1).setups[0].is_stick


def test_a_rod_as_bought_is_eased_only_where_it_is_tight(plan: Plan) -> None:
    """A reamed 6 H7 hole (6.000 to 6.012) and silver steel h8 (5.982 to 6.000), ISO 286-2."""
    design = plan(f"{HEAD}{PRESSED.replace('BORE', 'reamed')}").design
    (polish,) = _acts(_route(design, "axle"), "polish")
    assert "only where it is tight" in polish.what


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


def test_the_leaf_says_where_a_soldered_part_stands(crane: Design) -> None:
    """The post is 24 + 78 = 102 mm and stands on the quay; the block of 18 mm is 62 mm above it:
    102 - 62 - 18 = 22 to 102 - 62 = 40 from the upper end. The cheeks on its ends stand as the
    sides of the jib do, so the pin of the jib's foot is square to the block's right face."""
    (section,) = together_pages(crane, ())
    leaf = next(one for one in section.sections if "solder-winch-block" in one.id)
    words = [text_of(block.text) for block in leaf.blocks if isinstance(block, Paragraph)]
    (place,) = (one for one in words if one.startswith("Place: "))
    assert "winch block from 22 mm to 40 mm off the right-hand end of the slewing post" in place
    assert "right face square to the foot hole" in place
