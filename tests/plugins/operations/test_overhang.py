"""How far work stands out of the jaws, and what bears it. All: common practice, no source."""

from __future__ import annotations

from math import pi

import pytest

from binder_plugins.operations.facts import Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without


def lathe(route: Route, number: int) -> SetUp:
    """The first or second set-up in the lathe."""
    return [one for one in route.setups if one.place == "lathe"][number - 1]


@pytest.mark.parametrize(
    ("thread", "long", "out"),
    # The thread, 1 mm to face, and 3 mm for the die, or its three pitches where these are more.
    [("M3", 4.5, 8.5), ("M10", 20, 25.5)],
)
def test_both_ends_stand_out_alike_for_the_die(
    thread: str, long: float, out: float, route_of: RouteOf
) -> None:
    across = thread.removeprefix("M")
    route = route_of(
        f"{{material: silver steel, stock: {across} mm drawn rod, turned: [{{name: rod, diameter:"
        f" {across} mm, length: 90 mm}}], features: {{ends: {{screwed: {thread}, on: rod, length:"
        f" {long} mm, each_end: true}}}}}}"
    )
    assert [lathe(route, n).grip.stand_out for n in (1, 2)] == pytest.approx([out, out])
    assert lathe(route, 2).grip.jaws == pytest.approx((out - 1, 90))


def test_a_short_grip_leaves_what_room_it_can(route_of: RouteOf) -> None:
    """2.5 mm turned at each end of 4.2 mm: a collet has no jaws to strike, so 0.5 mm is left for
    the tool and 3.7 stay gripped; 0.5 mm is left to face; common practice, no source."""
    route = route_of(
        "{material: silver steel, stock: drawn rod, turned: [{name: near, diameter: 2 mm, length:"
        " 2.5 mm}, {name: journal, diameter: 3 mm, length: 4.2 mm}, {name: tail, diameter: 2 mm,"
        " length: 2.5 mm}]}"
    )
    grip = lathe(route, 2).grip
    assert grip.long == pytest.approx(3.7)
    assert grip.stand_out == pytest.approx(2.5 + 0.5 + 0.5)


GROOVED = (
    "{{material: aluminium, stock: 40 mm round bar, turned: [{{name: boss, diameter: 15 mm,"
    " length: {boss} mm}}, {{name: rim, diameter: 38 mm, length: {rim} mm}}], features: {{belt:"
    " {{grooved: 3 mm, on: rim, depth: 1 mm}}, {bore}}}}}"
)
CONED = (
    "{{material: mild steel, stock: 25 mm round bar, turned: [{{name: foot, diameter: 25 mm,"
    " length: 4 mm}}, {{name: waist, taper: 22 mm to 16 mm, length: {waist} mm}}, {{name: collar,"
    " diameter: 20 mm, length: 8 mm}}]}}"
)


def test_a_larger_step_does_not_go_into_the_jaws(route_of: RouteOf) -> None:
    """On a boss of 12 the whole rim of 15 stands out, and 1 mm to face."""
    grip = lathe(route_of(GROOVED.format(boss=12, rim=15, bore="")), 2).grip
    assert "boss" in grip.on
    assert grip.stand_out == pytest.approx(15 + 1)


@pytest.mark.parametrize(("waist", "support"), [(16, ""), (17, "fixed steady")])
def test_beyond_two_and_a_half_grips_the_steady_carries_it(
    waist: int, support: str, plan: Plan, route_of: RouteOf
) -> None:
    """On a collar of 8 no more than 20: the foot of 4 and a waist of 16."""
    part = CONED.format(waist=waist)
    grip = lathe(route_of(part), 2).grip
    assert "collar" in grip.on
    assert grip.support.startswith(support)
    assert bool(grip.support) == bool(support)
    if support:
        assert "on the foot, ⌀25 mm, 4 mm long, at the left-hand end" in grip.support
    text = f"{HEAD}  part: {part}\n"
    bare = {one.code.name for one in plan(text, without("holding/steadies")).findings}
    assert ("stands-out-too-far" in bare) == bool(support)


DRILLED = CONED.replace(
    "]}}", "], features: {{hole: {{drilled: %s mm, on: foot, depth: 15 mm}}}}}}"
)


@pytest.mark.parametrize("across", ["2.5", "4", "10.5"])
def test_in_a_steady_nothing_turns_faster_than_its_fingers_may_rub(
    across: str, route_of: RouteOf
) -> None:
    """0.5 m/s on solid bronze, greased: a bearing maker's data sheet; by hand 30000 / 25 pi = 382.

    The drill would have the spindle faster: 25 m/min at 4 mm is 2000 r/min.
    """
    setup = lathe(route_of((DRILLED % across).format(waist=17)), 2)
    assert "no faster than 380 r/min" in setup.true
    turns = [float(one.speed.split(" to ")[-1]) for one in setup.acts if one.speed]
    assert len(turns) >= 3
    assert max(turns) <= 1000 * 30 / (pi * 25)


def test_what_no_steady_carries_turns_as_fast_as_its_drill_wants(route_of: RouteOf) -> None:
    setup = lathe(route_of((DRILLED % "4").format(waist=16)), 2)
    assert "steady" not in setup.true
    assert max(float(one.speed) for one in setup.acts if one.speed) > 400


def test_a_steady_has_a_round_land_to_run_on_or_there_is_none(plan: Plan) -> None:
    """Fingers of some 4 mm run on no edge of 2 mm: common practice, no source."""
    text = f"{HEAD}  part: {CONED.format(waist=19).replace('length: 4 mm', 'length: 2 mm')}\n"
    assert "stands-out-too-far" in {one.code.name for one in plan(text).findings}


def test_a_mandrel_in_a_finished_bore_is_better_than_a_short_boss(route_of: RouteOf) -> None:
    bore = "bore: {reamed: 6 mm, on: boss, depth: through}"
    part = GROOVED.format(boss=6, rim=18, bore=bore)
    assert lathe(route_of(part), 2).grip.kind == "mandrel"


def test_a_mandrel_holds_along_the_axis_and_leaves_the_end_free(route_of: RouteOf) -> None:
    """A plain stub lets the work creep off; a nut covers the face: common practice, no source."""
    bore = "bore: {reamed: 6 mm, on: boss, depth: through}"
    holder = lathe(route_of(GROOVED.format(boss=6, rim=18, bore=bore)), 2).grip.holder
    assert "shoulder" in holder
    assert "spread" in holder
    small = bore.replace("6 mm", "3 mm")
    wrung = lathe(route_of(GROOVED.format(boss=6, rim=18, bore=small)), 2)
    assert "half centre" in wrung.grip.support
    # No tool passes a centre to the bore that it stands in.
    assert "draw it back" in wrung.acts[0].what


STEPPED = (
    "{material: aluminium, stock: 40 mm round bar, turned: [{name: small, diameter: 24 mm,"
    " length: 6 mm}, {name: middle, diameter: 32 mm, length: %s mm}, {name: large, diameter: 40 mm,"
    " length: 6 mm}, {name: boss, diameter: 15 mm, length: 6 mm}], features: {belt: {grooved:"
    " 3 mm, on: middle, depth: 1.5 mm}, bore: {reamed: 6 mm, on: boss, depth: through}}}"
)


def test_a_grooved_land_is_no_grip(route_of: RouteOf) -> None:
    """A groove of 3 leaves two lands of 1.5 of a step of 6, and waits; of one of 10 two of 3.5."""
    route = route_of(STEPPED % 6)
    (groove,) = [one for one in route.setups if any(act.act == "groove" for act in one.acts)]
    assert "middle" in lathe(route, 2).grip.on
    assert groove is lathe(route, 3)
    assert "nut" in groove.grip.holder
    early = route_of(STEPPED % 10)
    assert any(act.act == "groove" for act in lathe(early, 1).acts)


def test_no_mandrel_follows_a_drilled_bore(route_of: RouteOf) -> None:
    bore = "bore: {drilled: 6 mm, on: boss, depth: through}"
    part = GROOVED.format(boss=6, rim=18, bore=bore)
    assert lathe(route_of(part), 2).grip.kind != "mandrel"


def test_what_fits_as_it_is_bought_is_not_held_in_bare_jaws(plan: Plan) -> None:
    """A running journal of drawn rod: in a collet, or where none is owned in card or copper."""
    text = (
        f"{HEAD}  post: {{material: mild steel, stock: drawn rod, turned: [{{name: journal,"
        " diameter: 12 mm, length: 80 mm}, {name: tenon, diameter: 8 mm, length: 3 mm}]}\n"
        "  block: {material: bronze, block: {length: 24 mm, width: 24 mm, height: 18 mm},"
        " features: {bore: {reamed: to suit, on: top, depth: through}}}\n"
        "joints:\n  turns: {runs_in: [post.journal, block.bore], duty: slow and oiled}\n"
    )

    def held(workshop: str) -> tuple[str, str]:
        design = plan(text, workshop).design
        assert design is not None
        route = design.facts.about(Route, "post")
        assert route is not None
        return lathe(route, 2).grip.kind, lathe(route, 2).grip.on

    assert held("")[0] == "collet"
    kind, on = held(without("holding/collets"))
    assert kind != "collet"
    assert on.endswith("in card or copper")


def test_a_thin_cup_is_not_held_for_threading(route_of: RouteOf) -> None:
    """A wall of 1 mm at 6 mm: the thread first, from the bar; the bowl is bored on the thread."""
    route = route_of(
        "{material: brass, stock: 8 mm hexagon bar, turned: [{name: spigot, diameter: 4 mm,"
        " length: 5.5 mm}, {name: nut, hexagon: 8 mm, length: 2 mm}, {name: cup, diameter: 6 mm,"
        " length: 5 mm}], features: {thread: {screwed: M4, on: spigot, length: 4 mm},"
        " bowl: {drilled: 4 mm, on: cup, depth: 4 mm}}}"
    )
    acts = {act.feature: setup for setup in route.setups for act in setup.acts}
    assert acts["thread"].grip.on == "the bar"
    assert "the thread" in acts["bowl"].grip.on
