"""Where a mate is laid to be spotted, what the chuck closes on, and what sets a bond to its place.

Sizes are those of the crane's spec, worked out by hand beside each check; the ways of setting are
common practice, no source.
"""

from __future__ import annotations

from pathlib import Path
from shutil import copytree

import pytest

from binder.api import (
    BuildSequence,
    ChainFact,
    Design,
    DrawnBox,
    DrawnLabel,
    Paragraph,
    Polyline,
    TogetherFact,
)
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.sketch import sketch
from binder_plugins.operations.sketch_together import sketch_together
from binder_plugins.operations.together_pages import together_pages
from binder_solid.facts import FormFact
from binder_solid.set_there import set_there
from binder_solid.way_round import entering
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

SPECS = Path(__file__).parents[3] / "specs"


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


def _place(design: Design, leaf: str) -> str:
    (section,) = together_pages(design, ())
    (found,) = (one for one in section.sections if leaf in one.id)
    words = [text_of(block.text) for block in found.blocks if isinstance(block, Paragraph)]
    return next((one for one in words if one.startswith("Place: ")), "")


def test_a_mate_that_is_spotted_is_told_its_edges(crane: Design) -> None:
    """The block of 14 mm stands in the middle of cheeks of 36 mm: (36 - 14) / 2 = 11 mm."""
    first, second = _acts(_route(crane, "winch_block"), "spot-through")
    assert "left end level with the back" in first.what
    assert "11 mm beyond the underside" in first.what
    assert "opposite hand" not in first.what
    assert "opposite hand" in second.what
    # The first is on by then, and rods through bores that are there line the two up.
    assert "rod" not in first.what
    assert "⌀7 mm rod through the upper" in second.what
    assert "lower" not in second.what  # not bored before the gears are set


def test_what_is_not_the_same_both_ways_is_told_which_end_goes_where(crane: Design) -> None:
    """The floor of the bush carries the post: it stands at the foot plate, whose spigot is there.

    The cheeks were spotted to the block as it lay; silver solder leaves no way back. A wheel
    alike on both sides goes on either way. Common practice, no source.
    """
    bush = _place(crane, "size-bush-in-housing")
    assert "(the spigot) towards the left-hand end" in bush
    assert "the closed end of its bore" in bush
    into = entering(crane.joints["bush in housing"], "post_bush", crane)
    assert into.startswith("from the right end (the body) of the housing of the post bush")
    assert into.endswith("the closed end of its bore first")
    block = set_there(crane.joints["winch block on post"], crane)
    assert "its top towards the right-hand end of the slewing post (the tenon)" in block
    (mark,) = _acts(_route(crane, "winch_block"), "mark")
    assert "the top" in mark.what
    assert "right-hand end of the slewing post" in mark.what
    assert "its " not in set_there(crane.joints["wheel on barrel"], crane).partition("barrel")[2]
    assert not _acts(_route(crane, "foot_plate"), "mark")


PEDESTALS = """\
  bed: {material: mild steel, block: {length: 100 mm, width: 50 mm, height: 6 mm}}
  post:
    material: mild steel
    quantity: 2
    block: {length: 20 mm, width: 8 mm, height: 30 mm}
    features: {hole: {drilled: 4 mm, on: front, depth: through, at: 20 mm from underside}}
joints:
  posts on bed:
    screwed: [bed.top, post.underside]
    fastener: M3 socket cap screw
    pattern: 2 off, 12 mm apart
    places: PLACES
    made: spotted through
stands: bed
"""


@pytest.mark.parametrize(
    ("places", "told"),
    [
        # Posts of 20 x 8 with their middles 40 and 10 in: 40 - 10 = 30 and 10 - 4 = 6 mm in from
        # the edges, and 50 - 2 x 6 - 2 x 8 = 22 mm between them.
        (
            '["40 mm from left, 10 mm from front", "40 mm from left, 10 mm from back"]',
            (
                "one with its left end 30 mm in from the left end and its front 6 mm in from the",
                "another with its left end 30 mm in from the left end and its back 6 mm in from",
                "so 22 mm between them",
            ),
        ),
        # In the other row: 70 - 30 - 20 = 20 mm.
        (
            '["30 mm from left, 10 mm from front", "70 mm from left, 10 mm from front"]',
            (
                "one with its left end 20 mm in from the left end and its front 6 mm",
                "another with its right end 20 mm in from the right end and its front 6 mm",
                "so 20 mm between them",
            ),
        ),
        # Askew to one another: no one room between them.
        (
            '["30 mm from left, 10 mm from front", "70 mm from left, 10 mm from back"]',
            (
                "one with its left end 20 mm in from the left end and its front 6 mm",
                "another with its right end 20 mm in from the right end and its back 6 mm",
            ),
        ),
    ],
)
def test_each_of_several_that_are_spotted_is_told_its_place(
    plan: Plan, places: str, told: tuple[str, ...]
) -> None:
    (spot,) = _acts(
        _route(plan(HEAD + PEDESTALS.replace("PLACES", places)).design, "post"), "spot-through"
    )
    assert "scribe the edges of each on the top of the bed" in spot.what
    assert all(one in spot.what for one in told), spot.what
    assert ("between them" in spot.what) == any("between" in one for one in told)


def test_plates_are_spotted_on_the_bench_where_no_vice_holds_them(crane: Design) -> None:
    """Plates of 68 × 36 under and over a block of 24 × 14: jaws have nothing to close on."""
    setups = _route(crane, "winch_block").setups
    spotting = [one for one in setups if any(act.act == "spot-through" for act in one.acts)]
    assert [(one.place, one.machine) for one in spotting] == [("bench", "")] * 2
    assert all("toolmaker's clamps" in one.acts[0].tool for one in spotting)
    drilling = [setups[setups.index(one) + 1] for one in spotting]
    for one in drilling:
        assert one.machine
        assert "the winch cheek off" in one.datum
        assert [act.act for act in one.acts] == ["drill", "countersink", "tap"]
    # Through 3 + 24 + 3 mm, and 5 mm out at either end.
    assert "lining rod ⌀7 mm × 40 mm" in spotting[1].acts[0].tool
    assert "lining rod ⌀2 mm × 40 mm" in spotting[1].acts[0].tool


def test_plates_are_lined_up_before_a_bush_narrows_their_bores(crane: Design) -> None:
    sequence = crane.facts.about(BuildSequence, "")
    assert sequence is not None
    (bond,) = [one for one in sequence.steps if one.task == "bond bushes in cheeks"]
    why = [reason for earlier, reason in bond.after if earlier == "make winch_block"]
    assert len(why) == 1
    assert "bare bores" in why[0]


BORED_TO = """\
  axle: {material: silver steel, stock: drawn rod, turned: [{name: rod, diameter: 6 mm, length: 40 mm}]}
  bush:
    material: bronze
    turned: [{name: outside, diameter: 10 mm, length: 20 mm}]
    features: {bore: {bored: to suit, on: outside, DEPTH}}
  housing:
    material: mild steel
    turned: [{name: spigot, diameter: 18 mm, length: 3 mm}, {name: body, diameter: 22 mm, length: 17 mm}]
    features: {bore: {bored: to suit, on: body, depth: through}}
  foot:
    material: mild steel
    stock: 3 mm plate
    plate: {length: 50 mm, width: 50 mm, thickness: 3 mm}
    features: {seat: {bored: to suit, on: top, depth: through}}
joints:
  housing on foot: {silver_soldered: [housing.spigot, foot.seat]}
  bush in housing: {pressed: [bush.outside, housing.bore]}
  axle in bush: {runs_in: [axle.rod, bush.bore], duty: runs}
stands: foot
"""  # noqa: E501
SOLDERED = "  housing on foot: {silver_soldered: [housing.spigot, foot.seat]}\n"


def test_the_chuck_closes_on_the_plate_that_is_fixed_on_the_housing(
    crane: Design, plan: Plan
) -> None:
    """Jaws that must reach over a plate of 60 mm do not close on ⌀30 behind it."""
    (lathe,) = [one for one in _route(crane, "size bush in housing").setups if one.place == "lathe"]
    assert "edges of the foot plate" in lathe.grip.on
    # Its underside looks at the chuck: no indicator comes there. Common practice, no source.
    assert lathe.datum.endswith("the face of the foot plate round the housing")
    assert "thickness measured at its corners first" in lathe.true
    text = f"{HEAD}{BORED_TO.replace('DEPTH', 'depth: through')}"
    bare = plan(text.replace(SOLDERED, "")).design
    (alone,) = [one for one in _route(bare, "size bush in housing").setups if one.place == "lathe"]
    assert alone.grip.on == "the housing"
    assert alone.datum.endswith("the face that the housing stands on")


def test_bores_are_tried_and_bushed_with_the_size_they_have(crane: Design) -> None:
    """⌀4 less what is left for the reamer, 0.2 mm, is ⌀3.8: no rod of 4 mm goes in."""
    route = _route(crane, "line up axle in cheeks")
    (up,) = _acts(route, "clamp-stack")
    assert "rod of ⌀3.8 mm" in up.what
    assert "stepped plug" in _acts(route, "ream")[0].what


def test_a_hole_is_scribed_to_the_block_that_is_on_already(crane: Design) -> None:
    """The cheeks on the block's ends stand as the jib's sides do: the pins are square to them."""
    route = _route(crane, "drill jib on post")
    first, second = _acts(route, "mark-out")
    assert "right face of the winch block looks to" in first.what
    # The block is 24 x 24 with the post through its middle: the axis is half of that up.
    assert "the height gauge at 12 mm over it the line is as high as the axis" in first.what
    assert first.tool.startswith("height gauge")
    assert "across that line" in second.what
    assert "right face of the winch block up, level" in route.setups[0].datum


@pytest.mark.parametrize(
    ("turned", "said"),
    [
        ("50 deg", "over the back of the winch block, away from the side on which the winch cheek"),
        ("130 deg", "over the front of the winch block, on the side on which the winch cheek"),
    ],
)
def test_a_slant_is_told_to_one_side_of_what_is_on_already(
    turned: str, said: str, host: Host, tmp_path: Path
) -> None:
    """The winch is behind the post, towards the left of the model; the jib leans to the right of
    it at 50 degrees to the level, and to the left at 130."""
    folder = copytree(SPECS / "wharf-crane", tmp_path / "crane")
    main = folder / "wharf-crane.yaml"
    text = main.read_text(encoding="utf-8")
    assert text.count(" post, turned: 50 deg") == 2
    main.write_text(text.replace(" post, turned: 50 deg", f" post, turned: {turned}"), "utf-8")
    made = compiled(Job(main, None, ()), host, Phase.CHECK).design
    assert made is not None
    place = _place(made, "drill-jib-on-post")
    assert said in place
    assert "towards the right-hand end" in place
    assert "the sketch shows it from above" in place
    _is_drawn_there(made)


def _is_drawn_there(design: Design) -> None:
    """The far end of the jib is on the side of the post where the name of that side stands."""
    (fact,) = (one for one in design.facts.all(TogetherFact) if one.subject == "drill jib on post")
    drawn = sketch_together(_route(design, fact.subject).setups[0], fact, design)
    assert drawn is not None
    rod = min(
        (one for one in drawn.shapes if isinstance(one, DrawnBox)), key=lambda one: one.height
    )
    axis = rod.y + rod.height / 2
    (strip,) = (one for one in drawn.shapes if isinstance(one, Polyline))
    (side,) = (one for one in drawn.shapes
               if isinstance(one, DrawnLabel) and one.text in ("back", "front"))  # fmt: skip
    assert (strip.points[0][1] > axis) is (side.y > axis)
    # The rest of the jib is broken off: a zigzag between its edges, no bare end (ISO 128-2).
    assert strip.points[0] == strip.points[-1]
    assert len(strip.points) == 4 + 4 + 1
    assert min(y for _, y in strip.points) > 0
    assert max(y for _, y in strip.points) < drawn.height


def test_heads_and_stops_are_told_where_a_bond_is_made(crane: Design) -> None:
    """22 mm between rims on cheeks 24 mm apart: both rims, of 1 mm, are on the inside. The axle of
    30 mm carries a barrel of 22.05 between bearings 3.9 mm deep, with 0.15 mm of float: it begins
    (30 - 22.05) / 2 = 3.975 mm from the end, on plain rod."""
    assert "the two rims face one another" in _place(crane, "bond-bushes-in-cheeks")
    axle = _place(crane, "bond-barrel-on-axle")
    assert "distance tube 3.97 mm long" in axle
    # The flange of the barrel stops the wheel.
    assert "distance tube" not in _place(crane, "bond-wheel-on-barrel")


def test_a_tube_that_sets_a_float_is_made_to_what_is_measured(crane: Design) -> None:
    """Tail 5 + cheek 3 + washer 1.5 + the middle of 0.1 to 0.2 mm is 9.65 mm. General tolerances
    let 5, 3, 1.5 and 9.65 mm stray by 0.1, 0.1, 0.1 and 0.2 mm (ISO 2768-1 m), so that 0.15 mm
    as drawn may bind."""
    place = set_there(crane.joints["pinion on crank"], crane)
    assert "tail of the crank shaft, from its shoulder to the end + winch cheek" in place
    assert "each as measured, + 0.15 mm = ______ long, 9.65 mm as drawn" in place
    (chain,) = [
        one for one in crane.facts.all(ChainFact) if one.subject == "crank_shaft: end float"
    ]
    assert sum(one.factor * one.nominal for one in chain.links) == pytest.approx(0.15)
    assert chain.closing == "distance tube of the crank pinion"


def test_a_micrometer_gets_into_a_neck_before_the_bar(crane: Design) -> None:
    """Anvils are 6.5 mm across (from memory): a spigot of 3.25 mm wants 3.75 mm of waste for 7."""
    route = _route(crane, "barrel")
    (rough,) = [one for one in _acts(route, "turn") if "behind the flange" in one.what]
    assert "× 7 mm" in rough.what
    assert "3.75 mm of it is waste" in rough.what
    lathe = route.setups[0].grip
    # The end of the neck: 22.05 long, 3.75 beyond, and the end that is faced off.
    assert lathe.stand_out > 22.05 + 3.75 + 1


def test_a_disc_is_drilled_before_it_is_sawn_out(route_of: RouteOf) -> None:
    """A round sawn edge spins in the vice."""
    route = route_of(
        "{material: brass, stock: 3 mm plate, disc: {diameter: 28 mm, thickness: 3 mm}, "
        "features: {bore: {reamed: 6 mm, on: top, depth: through}}}"
    )
    acts = [act.act for act in route.acts]
    assert acts.index("mark-out") < acts.index("ream") < acts.index("saw") < acts.index("turn")
    (drilled,) = [one for one in route.setups if any(act.act == "ream" for act in one.acts)]
    assert "flat" in drilled.grip.holder
    assert drilled.grip.on.startswith("the plate, 13 mm of it beyond the circle")


def test_plate_stands_up_in_the_sketch_while_its_edge_is_milled(plan: Plan) -> None:
    """8 mm thick and 36 mm high between the jaws; two together are two of them side by side."""
    part = (
        "  part: {material: brass, stock: 8 mm plate, quantity: %d, plate: {length: 68 mm, "
        "width: 36 mm, thickness: 8 mm}}\n"
    )
    found = []
    for count in (1, 2):
        design = plan(HEAD + part % count).design
        assert design is not None
        edges, *_ = [one for one in _route(design, "part").setups if one.place == "mill"]
        drawn = sketch(edges, design.facts.about(FormFact, "part"))
        assert drawn is not None
        bare = [one for one in drawn.shapes if isinstance(one, DrawnBox) and not one.tint]
        high = max(one.height for one in bare)  # the jaws are tinted
        work = [one for one in bare if one.height == high]
        found.append([one.height / one.width for one in work])
    assert found == [[pytest.approx(36 / 8)], [pytest.approx(36 / 8)] * 2]


def test_a_bore_with_a_gap_over_its_shaft_is_told_by_two_plugs(crane: Design) -> None:
    """The post runs 0.006 to 0.035 mm under the bore of its bush: a shaft that goes in says only
    that the gap is over nothing."""
    tools = [
        act.measure
        for route in crane.facts.all(Route)
        for act in route.acts
        if act.act == "bore" and "0.006 to 0.035 mm over the measured shaft" in act.what
    ]
    assert tools
    assert set(tools) == {"two plugs turned to the shaft: + 0.006 goes in, + 0.035 does not"}


def test_a_finished_fit_is_kept_from_alloy_and_measured_again_cold(crane: Design) -> None:
    """The tenon is turned to the cap before the block is soldered on beside it."""
    route = _route(crane, "solder winch block on post")
    (up,) = _acts(route, "clamp-stack")
    assert "blacken the journal of the slewing post and the tenon" in up.what
    assert "tenon of the slewing post with the shoulder beside it" in up.what
    # The housing's one shoulder lies on the plate that it is soldered to: the alloy goes in there.
    (housing,) = _acts(_route(crane, "solder housing on foot plate"), "clamp-stack")
    assert "blacken the bore of the housing" in housing.what
    assert "shoulder" not in housing.what
    again = [act.feature for act in _acts(route, "measure")]
    assert sorted(again) == ["journal", "tenon"]
