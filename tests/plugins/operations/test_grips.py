"""What is gripped must go into the holder; common practice, no source."""

from __future__ import annotations

import pytest

from tests.plugins.operations.conftest import RouteOf

DRUM = (
    "{material: brass, stock: 22 mm round bar, turned: [{name: rim, diameter: 20 mm, length: 4 mm},"
    " {name: barrel, diameter: 12 mm, length: 20 mm},"
    " {name: flange, diameter: 20 mm, length: 4 mm}],"
    " features: {bore: {reamed: 6 mm, on: flange, depth: through},"
    " pin: {drilled: 2 mm, across: flange, at: 2 mm from right, depth: 7 mm}}}"
)
GROOVED = (
    "{material: brass, stock: 16 mm round bar, turned: [{name: cord, diameter: 14 mm,"
    " length: 12 mm}, {name: land, diameter: 14 mm, length: 5 mm}],"
    " features: {groove: {grooved: 2 mm, on: cord, depth: 1 mm, at: 4 mm from left},"
    " seat: {bored: 8 mm, on: left, depth: 3 mm}}}"
)


def test_the_barrel_between_flanges_is_never_held(route_of: RouteOf) -> None:
    """A collet or jaws cannot pass the ⌀20 flange to close on ⌀12: a flange is held."""
    lathe = [one for one in route_of(DRUM).setups if one.place == "lathe"]
    assert all("12 mm" not in one.grip.on for one in lathe)
    assert lathe[-1].grip.kind == "mandrel"
    undrilled = DRUM.replace("bore: {reamed: 6 mm, on: flange, depth: through},", "")
    held = [one for one in route_of(undrilled).setups if one.place == "lathe"][-1]
    assert "20 mm" in held.grip.on


def test_a_plain_step_is_held_before_a_grooved_one(route_of: RouteOf) -> None:
    lathe = [one for one in route_of(GROOVED).setups if one.place == "lathe"]
    assert "(land)" in lathe[-1].grip.on


def test_the_centre_is_drawn_back_for_the_die(route_of: RouteOf) -> None:
    """Die holder and centre sit in one tailstock: never both; after the die nothing is carried."""
    part = (
        "{material: mild steel, stock: 8 mm round bar, turned: [{name: head, diameter: 8 mm,"
        " length: 5 mm}, {name: shank, diameter: 4 mm, length: 40 mm}],"
        " features: {thread: {screwed: M4, on: shank, length: 36 mm}}}"
    )
    setup = next(one for one in route_of(part).setups if any(a.act == "die" for a in one.acts))
    # The cone in an end of ⌀4 keeps the tool off it: a half one carries it (`test_thin_ends`).
    assert setup.grip.support.startswith("half centre in the tailstock")
    acts = [act.act for act in setup.acts]
    assert setup.acts[acts.index("die")].what.startswith("draw the centre back, ")
    assert not {"turn", "knurl", "groove"} & set(acts[acts.index("die") :])


def test_a_thread_is_cut_first_while_the_bar_behind_it_can_be_gripped(route_of: RouteOf) -> None:
    """M10 in mild steel: 5.6 N m. A head of 11 mm, with room for the die, leaves too little for
    the jaws; with the pin not yet turned the bar behind the head is gripped as well. Common
    practice, no source."""
    part = (
        "{material: mild steel, stock: 10 mm drawn rod, turned: [{name: pin, diameter: 6 mm,"
        " length: 6 mm}, {name: head, diameter: 10 mm, length: 11 mm}, {name: shank,"
        " diameter: 10 mm, length: 35 mm}], features: {thread: {screwed: M10, on: shank,"
        " length: 35 mm}}}"
    )
    setups = [one for one in route_of(part).setups if one.place == "lathe"]
    threaded = next(one for one in setups if any(act.act == "die" for act in one.acts))
    assert threaded is setups[0]
    assert threaded.grip.long >= 10.0


PRESSED = (
    "{{material: bronze, stock: 20 mm round bar, turned: [{{name: outside, diameter: {0} mm,"
    " length: 21 mm}}], features: {{bore: {{bored: 8 mm, on: right, depth: 12 mm}}}}}}"
)
HOUSING = """\
  housing: {{material: mild steel, stock: 30 mm round bar, turned: [{{name: body, diameter: 28 mm,
    length: 21 mm}}], features: {{seat: {{bored: {0} mm, on: body, depth: through}}}}}}
joints:
  bush in housing: {{pressed: [part.outside, housing.seat]}}
"""


@pytest.mark.parametrize(("across", "holder"), [(15, "collet"), (16, "chuck")])
def test_no_work_is_forced_into_the_largest_collet(
    across: int, holder: str, route_of: RouteOf
) -> None:
    """The built-in collets open to 16 mm and close by 1: a pressed ⌀16 is never under 16."""
    route = route_of(PRESSED.format(across), HOUSING.format(across))
    grip = [one for one in route.setups if one.place == "lathe"][-1].grip
    assert f"⌀{across} mm (outside)" in grip.on
    assert grip.kind == holder
    assert grip.on.endswith("card or copper") == (holder == "chuck")
