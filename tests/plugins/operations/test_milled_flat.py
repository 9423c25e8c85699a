"""Long bar that springs, deep slots, and holes tapped through a wall: by general rules."""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

LONG = (
    "{{material: mild steel, stock: 50 mm x 6 mm flat bar, block: {{length: {long} mm,"
    " width: 50 mm, height: 6 mm}}, features:"
    " {{way: {{slotted: 12 mm, on: top, depth: {deep} mm}}}}}}"
)
EYE = (
    "{{material: mild steel, block: {{length: 16 mm, width: {wide} mm, height: 15 mm}}, features:"
    " {{eye: {{slotted: 8 mm, on: front, length: 12 mm, depth: through,"
    " note: filed to the helve}}}}}}"
)
SLIDE = """\
  part:
    material: mild steel
    stock: 50 mm x 6 mm flat bar
    block: {length: 120 mm, width: 50 mm, height: 6 mm}
    features: {way: {dovetailed: to suit, on: top, inside: true}}
  slide:
    material: brass
    block: {length: 34 mm, width: 24 mm, height: 8 mm}
    features: {tail: {dovetailed: to suit, on: underside}}
joints:
  slide on bed: {dovetailed: [slide.tail, part.way], width: 14 mm, depth: 3 mm, gib: 1.5 mm}
"""


@pytest.mark.parametrize(("long", "holder"), [(180, "on the table"), (80, "machine vice")])
def test_long_thin_bar_is_clamped_to_the_table(long: int, holder: str, route_of: RouteOf) -> None:
    """180 mm stand out of jaws of 80 mm by 50 mm at each end, and 6 mm bow between them.
    Common practice, no source."""
    milled = route_of(LONG.format(long=long, deep=3)).setups[2]
    assert holder in milled.grip.holder


@pytest.mark.parametrize(("deep", "count"), [(3, 2), (1, 1)])
def test_a_bright_bar_milled_half_through_is_let_go_before_its_last_cut(
    deep: int, count: int, route_of: RouteOf
) -> None:
    """Drawn bar holds stress in its skin, and bends when one side of it goes. Common practice,
    no source."""
    acts = [one for one in route_of(LONG.format(long=180, deep=deep)).acts if one.feature == "way"]
    assert len(acts) == count
    assert ("let the bar spring" in acts[-1].what) == (count == 2)


@pytest.mark.parametrize(("wide", "is_turned"), [(20, True), (14, False)])
def test_a_slot_deeper_than_its_cutter_reaches_is_cut_from_both_faces(
    wide: int, is_turned: bool, route_of: RouteOf
) -> None:
    """The flutes of a long 8 mm slot drill are 19 mm; from memory of DIN 327."""
    mill = next(one for one in route_of(EYE.format(wide=wide)).acts if one.feature == "eye")
    assert ("half way from each face" in mill.what) == is_turned


def test_a_note_that_orders_filing_is_an_operation_at_the_bench(route_of: RouteOf) -> None:
    """A cutter leaves round ends. Common practice, no source."""
    setup = next(
        one
        for one in route_of(EYE.format(wide=14)).setups
        if any(act.act == "file" and act.feature == "eye" for act in one.acts)
    )
    assert setup.place == "bench"
    assert setup.acts[0].what == "file the eye to the helve"


def test_a_small_tap_is_spared_a_thick_wall(plan: Plan) -> None:
    """50 mm less the slot of 19.4 mm at its floor leaves walls of 15.3 mm there, and half way up
    the flank 1.5 / tan 60° = 0.87 more; the drill's far side breaks out 0.8 / tan 60° = 0.46
    deeper (geometry). The slot is cut 1.932 / 2 = 0.97 towards the gib, and the wall is as much
    thinner there: 15.66. M2 is tapped 2½ diameters of it, 5 mm from the outside, since its shank of
    2.5 to 2.8 mm (DIN 352, from memory) stops at the mouth; the screw's end passes the rest.
    Common practice, no source."""
    outcome = plan(HEAD + SLIDE)
    assert outcome.design is not None
    route = outcome.design.facts.about(Route, "part")
    assert route is not None
    drills = [one for one in route.acts if one.feature == "gib_screws" and one.act == "drill"]
    tap = next(one for one in route.acts if one.feature == "gib_screws" and one.act == "tap")
    assert [round(one.deep, 1) for one in drills] == [15.7]
    assert all("through the 15.2 mm wall" in one.what and "pecks" in one.what for one in drills)
    assert all(one.speed for one in drills)
    assert tap.what.startswith(
        "3 × tap M2, the outer 5 mm of it; the rest stays ⌀1.6 mm for the screw's end;"
    )
    assert any("1.5 mm below the face" in one.what for one in route.acts)
    # 20 mm of M2 are not sold (ISO 4026 to 10 mm, from memory); 15.20 + 0.2 − 5 pass.
    screw = outcome.design.bought["gib_screw"].what
    assert screw == (
        "M2 × 20 gib screw, made from 2 mm rod, slotted, its end turned to 1.5 mm over "
        "11 mm, for the gib"
    )
