"""What a row of the leaf says of an act: cuts, pecks, the motor, slow acts, taps by hand."""

from __future__ import annotations

import pytest

from binder.api import Design, Table
from binder.pages import text_of
from binder_plugins.operations.facts import Act, Route
from binder_plugins.operations.leaf import operation_pages
from tests.plugins.operations.conftest import BUILT_IN, HEAD, Plan, RouteOf

BODY = "turned: [{name: body, diameter: 10 mm, length: 30 mm}]"
BLOCK = "block: {length: 40 mm, width: 30 mm, height: 40 mm}"
LOW = BUILT_IN.replace("speeds: 100 r/min to 2000 r/min", "speeds: 40 r/min to 2000 r/min")
REVERSING = LOW.replace("largest_end_mill: 16 mm", "largest_end_mill: 16 mm\n      reverses: true")


def act_of(route: Route, act: str, feature: str = "") -> Act:
    """The last act of a kind, of a feature where one is named."""
    return [a for a in route.acts if a.act == act and feature in {"", a.feature}][-1]


def rows(design: Design) -> dict[str, tuple[str, ...]]:
    """The cells of the leaf of `part`, by what is done, in small letters."""
    (inset,) = (one for one in operation_pages(design, ()) if one.section == "part-part")
    cells = [
        tuple(text_of(cell) for cell in row)
        for block in inset.blocks
        if isinstance(block, Table)
        for row in block.rows
    ]
    return {row[1].lower(): row for row in cells}


def leaf(plan: Plan, part: str, workshop: str = "") -> dict[str, tuple[str, ...]]:
    """The leaf of one part."""
    design = plan(f"{HEAD}  part: {{{part}}}\n", workshop).design
    assert design is not None
    return rows(design)


def row_of(found: dict[str, tuple[str, ...]], start: str) -> tuple[str, ...]:
    """The row that starts so."""
    return next(row for said, row in found.items() if said.startswith(start))


def test_a_heavy_cut_is_taken_in_several(plan: Plan) -> None:
    found = leaf(plan, f"material: mild steel, stock: 16 mm round bar, {BODY}")
    # Half a millimetre deep in a lathe of this swing (common practice): 16 to 10 in six cuts.
    assert "in 6 cuts" in row_of(found, "turn")[1]


def test_a_weak_motor_makes_it_shallower(plan: Plan) -> None:
    weak = BUILT_IN.replace("power: 450 W", "power: 40 W")
    strong = row_of(leaf(plan, f"material: mild steel, stock: 16 mm round bar, {BODY}"), "turn")
    found = row_of(
        leaf(plan, f"material: mild steel, stock: 16 mm round bar, {BODY}", weak), "turn"
    )
    assert "no deeper: the motor" in found[1]
    assert "motor" not in strong[1]


def test_a_weak_motor_makes_the_drill_lighter(plan: Plan) -> None:
    part = (
        f"material: mild steel, {BLOCK}, features: {{it: {{drilled: 10 mm, on: top, depth: 9 mm}}}}"
    )
    weak = BUILT_IN.replace("power: 500 W", "power: 300 W")
    weak_row = row_of(leaf(plan, part, weak), "drill ⌀10")
    assert "as light as the motor asks" in weak_row[1]
    strong = row_of(leaf(plan, part), "drill ⌀10")
    assert float(weak_row[4]) < float(strong[4])


def test_a_deep_hole_is_pecked_slower_and_lighter(route_of: RouteOf) -> None:
    def drilled(deep: int) -> Act:
        hole = f"features: {{it: {{drilled: 5 mm, on: top, depth: {deep} mm}}}}"
        return act_of(route_of(f"{{material: mild steel, {BLOCK}, {hole}}}"), "drill")

    shallow, deep = drilled(8), drilled(35)
    assert "pecks" in deep.what
    assert "pecks" not in shallow.what
    # Published guide to drilling: at six diameters 37.5 % off the speed, 20 % off the feed.
    assert float(deep.speed) < float(shallow.speed)
    assert float(deep.feed) == pytest.approx(float(shallow.feed) * 0.8, rel=0.06)


def test_a_reamer_turns_at_half_to_two_thirds_of_the_drill(route_of: RouteOf) -> None:
    hole = "features: {it: {reamed: 6 mm, on: top, depth: through}}"
    route = route_of(
        f"{{material: mild steel, block: {{length: 30 mm, width: 20 mm, height: 8 mm}}, {hole}}}"
    )
    drill, ream = act_of(route, "drill"), act_of(route, "ream")
    # Reaming half to two thirds of drilling (read); the machine's next lower speed.
    assert float(ream.speed) <= float(drill.speed) * 2 / 3 + 1


def test_parting_is_slower_than_turning(route_of: RouteOf) -> None:
    route = route_of(f"{{material: mild steel, stock: 12 mm round bar, {BODY}}}")
    # Half of the turning speed (workshop rule, from memory).
    assert float(act_of(route, "part-off").speed) < float(act_of(route, "turn").speed)


@pytest.mark.parametrize(
    ("hole", "workshop", "by_hand"),
    [
        ("tapped: M6, on: top, depth: through", REVERSING, False),
        ("tapped: M6, on: top, depth: 10 mm", REVERSING, True),
        ("tapped: M2, on: top, depth: through", REVERSING, True),
        ("tapped: M6, on: top, depth: through", LOW, True),
        ("tapped: M6, on: top, depth: through", REVERSING.replace("40 r/min", "600 r/min"), True),
    ],
)  # fmt: skip
def test_a_tap_is_turned_by_hand_unless_all_speaks_for_power(
    hole: str, workshop: str, by_hand: bool, plan: Plan
) -> None:
    part = "material: mild steel, block: {length: 40 mm, width: 30 mm, height: 12 mm}"
    found = row_of(leaf(plan, f"{part}, features: {{it: {{{hole}}}}}", workshop), "tap m")
    if by_hand:
        assert found[3] == "by hand"
    else:
        assert 0 < float(found[3]) <= 100
        assert "reverse it out" in found[1]


def test_what_costs_the_part_is_told_with_it(plan: Plan) -> None:
    tapped = "features: {it: {tapped: M4, on: top, depth: 8 mm}}"
    block = "block: {length: 40 mm, width: 30 mm, height: 12 mm}"
    assert (
        "mind: a blind hole full of chips"
        in row_of(leaf(plan, f"material: mild steel, {block}, {tapped}"), "tap m4")[1]
    )
    large = "features: {it: {drilled: 8 mm, on: top, depth: through}}"
    assert (
        "mind: it snatches"
        in row_of(leaf(plan, f"material: brass, {block}, {large}"), "drill ⌀8")[1]
    )
    assert (
        "mind" not in row_of(leaf(plan, f"material: mild steel, {block}, {large}"), "drill ⌀8")[1]
    )


def test_heat_that_other_tables_tell_of_has_its_rows(plan: Plan) -> None:
    found = leaf(
        plan,
        "material: silver steel, stock: 6 mm drawn rod, cut: 20 mm,"
        " finish: hardened and tempered to dark straw",
    )
    assert any("harden" in said or "quench" in said for said in found)


def test_a_piece_made_to_suit_is_faced_to_the_measured_gap(plan: Plan) -> None:
    """A drum between cheeks 20 apart, 0.1 to 0.3 of float wanted: the gap less 0.2."""
    text = f"""{HEAD}
  axle: {{material: silver steel, stock: drawn rod, turned: [{{name: rod, diameter: 4 mm, length: 40 mm}}]}}
  cheek: {{material: brass, quantity: 2, plate: {{length: 30 mm, width: 20 mm, thickness: 3 mm}},
    features: {{bore: {{reamed: 4 mm, on: top, depth: through}}}}}}
  part: {{material: brass, turned: [{{name: body, diameter: 10 mm, length: 19.7 mm}}],
    features: {{bore: {{reamed: 4 mm, on: body, depth: through}}}}}}
joints:
  axle in cheeks: {{runs_in: [axle.rod, cheek.bore]}}
  drum on axle: {{retained: [part.bore, axle.rod]}}
shafts:
  axle: {{along: [cheek.bore, part, cheek.bore], apart: 20 mm, end_float: 0.1 mm to 0.3 mm, to_suit: part}}
"""  # noqa: E501
    design = plan(text).design
    assert design is not None
    row = row_of(rows(design), "face to the gap")
    assert row[1] == "Face to the gap as measured − 0.2 mm = ______, 19.8 mm as drawn"
