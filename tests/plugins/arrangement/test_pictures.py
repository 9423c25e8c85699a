"""Pictures of the example models: balloons that part, and point at what they name."""

from __future__ import annotations

from itertools import combinations, product
from pathlib import Path

import pytest

from binder.api import Design, ItemNumber
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_drafting import Along, Balloon, Sheet
from binder_plugins.arrangement.exploding import Unit, explode, units_of
from binder_plugins.arrangement.gathering import PictureFact, pictured
from binder_plugins.arrangement.general import SIDES, picture_sheet, sizes_of, undrawn, views_sheet
from binder_plugins.arrangement.page import exploded_sheet
from binder_plugins.arrangement.sheets import balloons_of
from binder_solid.placed import PlacedFact
from binder_solid.set_there import goes_on
from binder_solid.space import placed
from binder_solid.views import flat
from binder_solid.way_round import entering
from tests.solid.needs_kernel import NEEDS_KERNEL

pytestmark = NEEDS_KERNEL
SPECS = Path(__file__).parents[3] / "specs"
NAMES = ("screw-jack", "tilt-hammer", "wharf-crane")
# Length, width and height over all, by hand from the sizes of the spec.
OVER_ALL = {
    # Tommy bar 60, a knob of 9 on each end over a thread of 4.5: 60 + 2 × 4.5. Body ⌀25.
    # Body 45, head of the screw 11 and the saddle 11; the shank in: 20 and its run-out, 2, above.
    # Wound in the screw stands 20 lower, its run-out of 2 above the body: 45 + 2 + 11 + 11.
    "screw-jack": ("69", "25", "89 up, 69 down"),
}


@pytest.fixture(scope="module")
def designs(host: Host) -> dict[str, Design]:
    """The three models, checked."""
    found: dict[str, Design] = {}
    for name in NAMES:
        design = compiled(Job(SPECS / name / f"{name}.yaml"), host, Phase.CHECK).design
        assert design is not None
        found[name] = design
    return found


@pytest.fixture(scope="module")
def wholes(designs: dict[str, Design]) -> dict[str, PictureFact]:
    """The three models drawn whole."""
    found: dict[str, PictureFact] = {}
    for name, design in designs.items():
        copies = [(one, (0.0, 0.0, 0.0)) for one in design.facts.all(PlacedFact)]
        fact = pictured("arrangement", copies, SIDES)
        assert fact is not None
        found[name] = fact
    return found


def assert_apart(sheet: Sheet, balloons: tuple[Balloon, ...]) -> None:
    """Every balloon is on the sheet once, and none lies on another or leaves the sheet."""
    ids = [one.id for one in balloons]
    boxes = [label.box for label in sheet.placed if label.id in ids]
    assert sorted(label.id for label in sheet.placed if label.id in ids) == sorted(ids)
    assert not [pair for pair in combinations(boxes, 2) if pair[0].meets(pair[1])]
    assert all(
        box.left >= 0
        and box.top >= 0
        and box.right <= sheet.drawing.width
        and box.bottom <= sheet.drawing.height
        for box in boxes
    )


def assert_points_at(balloon: Balloon, fact: PictureFact, items: list[str]) -> None:
    """The leader ends within the outline of the box of a part that the number stands for."""
    name = balloon.id.removeprefix(f"{fact.subject} ")
    for one, item in zip(fact.shown, items, strict=True):
        (a, b, c), (d, e, f) = one.copy.corners
        corners = [
            flat(placed(at, one.frame), balloon.view)  # type: ignore[arg-type]
            for at in product((a, d), (b, e), (c, f))
        ]
        us, vs = [c[0] for c in corners], [c[1] for c in corners]
        u, v = balloon.at
        is_in = min(us) - 1e-3 <= u <= max(us) + 1e-3 and min(vs) - 1e-3 <= v <= max(vs) + 1e-3
        if item == name and is_in:
            return
    raise AssertionError(f"{balloon.id} points at nothing of it")


@pytest.mark.parametrize("name", NAMES)
def test_the_arrangement_numbers_every_item_once(
    designs: dict[str, Design], wholes: dict[str, PictureFact], name: str
) -> None:
    design, fact = designs[name], wholes[name]
    balloons = balloons_of(fact, design, (0, 1, 2))
    items = [one.copy.item for one in fact.shown]
    assert {one.id for one in balloons} <= {f"arrangement {item}" for item in items}
    for one in balloons:
        number = design.facts.about(ItemNumber, one.id.removeprefix("arrangement "))
        assert number is not None
        assert one.number == str(number.number)
        assert_points_at(one, fact, items)
    for sheet, is_picture in (
        (picture_sheet(fact, design), True),
        (views_sheet(fact, design), False),
    ):
        assert_apart(
            sheet, tuple(one for one in balloons if (one.view == "isometric") == is_picture)
        )
        assert not sheet.problems


@pytest.mark.parametrize("name", NAMES)
def test_assemblies_come_apart(designs: dict[str, Design], name: str) -> None:
    design = designs[name]
    copies = design.facts.all(PlacedFact)
    for one in design.assemblies.values():
        units = units_of(one, design, copies)
        drawn = {member.item for member in one.members} - design.bought.keys()
        if len(drawn) == 1:
            assert len(units) == 1  # What is bought is not drawn: nothing comes apart.
            continue
        assert len(units) > 1
        lines = explode(units, design)
        assert len(lines) == len(units) - 1
        moved = [(copy, unit.moved) for unit in units for copy in unit.copies]
        boxes = [(unit, _boxed(Unit(unit.name, [copy], unit.moved)))
                 for unit in units for copy in unit.copies]  # fmt: skip
        for (whole, here), (other, there) in combinations(boxes, 2):
            assert whole is other or not all(
                here[0][n] < there[1][n] - 1e-6 and there[0][n] < here[1][n] - 1e-6
                for n in range(3)
            )
        fact = pictured(f"exploded {one.name}", moved, ("isometric",), lines)
        assert fact is not None
        names = {item.subject: unit.name for unit in units for item in unit.copies}
        owners = [names[shown.copy.subject] for shown in fact.shown]
        balloons = balloons_of(fact, design, (0,), owners)
        sheet = exploded_sheet(fact, design)
        assert_apart(sheet, balloons)
        for balloon in balloons:
            assert_points_at(balloon, fact, owners)


def _boxed(unit: object) -> tuple[tuple[float, ...], tuple[float, ...]]:
    box, moved = unit.box, unit.moved  # type: ignore[attr-defined]
    return (
        tuple(a + b for a, b in zip(box[0], moved, strict=True)),
        tuple(a + b for a, b in zip(box[1], moved, strict=True)),
    )


def lengths_of(fact: PictureFact, design: Design) -> list[Along]:
    """The sizes of the arrangement, which are lengths all."""
    return [one for one in sizes_of(fact, design) if isinstance(one, Along)]


def test_the_sizes_over_all(designs: dict[str, Design], wholes: dict[str, PictureFact]) -> None:
    for name, (long, wide, high) in OVER_ALL.items():
        sizes = {one.id: one for one in lengths_of(wholes[name], designs[name])}
        assert sizes["arrangement.over all long"].text == long
        assert sizes["arrangement.over all wide"].text == wide
        assert sizes["arrangement.over all high"].text == high


def test_a_level_shaft_has_its_height(
    designs: dict[str, Design], wholes: dict[str, PictureFact]
) -> None:
    """Base 30, bed 6, the axis 38 above it; the line shaft 24 above the base."""
    sizes = {one.id: one for one in lengths_of(wholes["tilt-hammer"], designs["tilt-hammer"])}
    assert sizes["arrangement.height of cam_shaft"].text == "74"
    assert sizes["arrangement.height of line_shaft"].text == "54"


def test_the_same_model_gives_the_same_drawing(
    designs: dict[str, Design], wholes: dict[str, PictureFact]
) -> None:
    design, fact = designs["screw-jack"], wholes["screw-jack"]
    assert picture_sheet(fact, design) == picture_sheet(fact, design)
    copies = [(one, (0.0, 0.0, 0.0)) for one in design.facts.all(PlacedFact)]
    assert pictured("arrangement", copies, SIDES) == fact


def test_what_stands_between_plates_comes_out_between_them(designs: dict[str, Design]) -> None:
    """Row by row as the shafts of the spec list them, seen from the crank's side."""
    design = designs["wharf-crane"]
    for rows, name in (
        ((
            ("cheek 2", "cheek_bush 2", "drum_wheel", "barrel", "ratchet", "cheek_bush 1",
             "cheek 1"),
            ("crank_arm", "crank_washer", "cheek 2", "crank_pinion", "cheek 1"),
            ("handle_pin", "crank_handle", "crank_arm"),
        ), "winch"),
        ((("block_cheek 1", "block_sheave", "block_cheek 2"),), "block"),
        ((("head_spacer 1", "head_sheave", "head_spacer 2", "jib_side 1"),), "jib_head"),
    ):  # fmt: skip
        units = units_of(design.assemblies[name], design, design.facts.all(PlacedFact))
        explode(units, design)
        at = {
            copy.subject: sum(end[1] for end in _boxed(Unit(unit.name, [copy], unit.moved)))
            for unit in units
            for copy in unit.copies
        }
        for row in rows:
            places = [at[one] for one in row]
            assert places == sorted(places), (name, row)
        assert len({unit.moved[1] for unit in units}) > 2


def test_a_bush_is_drawn_on_the_side_from_which_it_is_pressed(designs: dict[str, Design]) -> None:
    """As the step at the bench says: from the body, on top; from the back of each pedestal."""
    for name, assembly, outer, bush, axis, said in (
        ("wharf-crane", "mast", "bush_housing", "post_bush", 2, "from the right end (the body)"),
        ("tilt-hammer", "tilt_hammer", "pedestal 1", "bush 1", 1, "from the back of"),
        ("tilt-hammer", "tilt_hammer", "pedestal 2", "bush 2", 1, "from the back of"),
    ):
        design = designs[name]
        units = units_of(design.assemblies[assembly], design, design.facts.all(PlacedFact))
        explode(units, design)
        boxes = {
            copy.subject: _boxed(Unit(unit.name, [copy], unit.moved))
            for unit in units
            for copy in unit.copies
        }
        assert boxes[bush][0][axis] > boxes[outer][1][axis]
        item = bush.partition(" ")[0]
        (joint,) = [one for one in design.joints_at(item) if one.kind == "pressed"]
        assert entering(joint, item, design).startswith(said)


def test_a_mate_is_drawn_at_the_end_of_the_rod_from_which_it_goes_on(
    designs: dict[str, Design],
) -> None:
    """As the assembly step says: the cam from the left-hand end, past the seat of the pulley."""
    for name, assembly, rod, mate, end in (
        ("tilt-hammer", "cam_line", "cam_shaft", "cam", "left"),
        ("wharf-crane", "winch", "barrel_axle", "barrel", "left"),
        ("wharf-crane", "winch", "crank_shaft", "crank_pinion", "right"),
        ("wharf-crane", "jib_head", "head_pin", "head_sheave", "left"),
    ):
        design = designs[name]
        units = units_of(design.assemblies[assembly], design, design.facts.all(PlacedFact))
        explode(units, design)
        there = {unit.name: (unit.copies[0], _boxed(unit)) for unit in units}
        (copy, box), (_, other) = there[rod], there[mate]
        along = sum(
            (sum(other[e][n] - box[e][n] for e in (0, 1))) * copy.frame.x[n] for n in range(3)
        )
        assert (along > 0) == (end == "right"), mate
        joints = [one for one in design.joints_at(mate) if rod in one.items]
        assert f"from the {end}-hand end" in goes_on(joints[0], design)


def test_what_has_no_size_yet_is_said_to_be_left_out(designs: dict[str, Design]) -> None:
    """The clock wheel lay in the scrap box, and no size of it is written: the spec's own."""
    hammer = designs["tilt-hammer"]
    number = hammer.facts.about(ItemNumber, "gear")
    assert number is not None
    assert undrawn(hammer, set(hammer.bought)) == (
        (number.number, "brass clock wheel on the line shaft"),
    )
    assert undrawn(hammer, {"cord"}) == ()
    for name in ("screw-jack", "wharf-crane"):
        salvaged = {one.name for one in designs[name].bought.values() if one.is_salvaged}
        drawn = {one.item for one in designs[name].facts.all(PlacedFact)}
        told = {number for number, _ in undrawn(designs[name], set(designs[name].bought))}
        numbers = {designs[name].facts.about(ItemNumber, one) for one in salvaged - drawn}
        assert told == {one.number for one in numbers if one is not None}
