"""The order that can be held: what must be there to grip is not cut away before.

All expectations: common practice, no source.
"""

from __future__ import annotations

import re

import pytest

from binder_plugins.operations.facts import Act, Route
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without

POINTED = (
    "{material: mild steel, stock: 4 mm drawn rod, turned: [{name: point, taper: 1 mm to 4 mm,"
    " length: 3 mm}, {name: shank, diameter: 4 mm, length: 15 mm}], features: {thread:"
    " {screwed: M4, on: shank, length: 15 mm}, slot: {slotted: 0.8 mm, on: right, depth: 1 mm}}}"
)


def place(route: Route, act: str, feature: str = "") -> int:
    """Where the first such act stands among all."""
    found = (n for n, one in enumerate(route.acts) if one.act == act)
    return next(n for n in found if not feature or route.acts[n].feature == feature)


def act_of(route: Route, act: str, feature: str) -> Act:
    return route.acts[place(route, act, feature)]


def test_a_pointed_screw_is_threaded_from_the_bar_before_its_point(route_of: RouteOf) -> None:
    """The thread over 18 mm and two turns of 0.7, then the point; the slot in a tapped ring."""
    route = route_of(POINTED)
    assert place(route, "die") < place(route, "taper") < place(route, "part-off")
    assert place(route, "part-off") < place(route, "slit")
    die = act_of(route, "die", "thread")
    assert "M4 × 19.4 mm from the end" in die.what
    assert "tailstock" not in route.setups[0].grip.support
    after = [
        one.grip.on for one in route.setups if any(a.act in {"slit", "face"} for a in one.acts)
    ]
    assert after[0] == "the bar"
    assert all("split tapped ring" in on for on in after[1:])
    assert len(after) == 3


@pytest.mark.parametrize(
    ("saws", "width", "tool"),
    [
        # A blade wider than the slot makes it as wide as itself: a hacksaw of 1 mm none of 0.8.
        (None, "0.8 mm", "piercing saw, opened to 0.8 mm"),
        (None, "1 mm", "hacksaw"),
        (None, "1.5 mm", "hacksaw, opened to 1.5 mm with a thin file"),
        (None, "2 mm", "hacksaw, two blades side by side"),
        ("{hacksaw: {kerf: 1 mm, cuts: [bars], by_hand: 'true'}}", "0.8 mm", "0.8 mm slotting"),
    ],
)
def test_a_slot_is_sawn_by_a_saw_that_goes_in_it(
    saws: str | None, width: str, tool: str, route_of: RouteOf
) -> None:
    shop = without(machines__saws=saws) if saws else ""
    route = route_of(POINTED.replace("slotted: 0.8 mm", f"slotted: {width}"), workshop=shop)
    assert act_of(route, "slit", "slot").tool.startswith(tool)


KNURLED = (
    "{material: mild steel, stock: 8 mm drawn rod, turned: [{name: head, diameter: 8 mm, length: "
    "5 mm}, {name: rod, diameter: 4 mm, length: 40 mm}], features: {grip: {knurled: 1 mm, on: head}"
    "}}"
)
LONG = (
    "{material: mild steel, stock: 8 mm drawn rod, turned: [{name: head, diameter: 8 mm, length: "
    "12 mm}, {name: rod, diameter: 4 mm, length: 30 mm}]}"
)


def test_a_knurl_at_the_jaws_stands_clear_of_them(route_of: RouteOf) -> None:
    """The knurl is 40 to 45 mm from the free end: the wheels must not meet the jaws."""
    route = route_of(KNURLED)
    (setup,) = (one for one in route.setups if any(act.act == "knurl" for act in one.acts))
    assert setup.grip.stand_out > 45


def test_a_knurled_screw_is_held_by_its_thread_for_its_head(route_of: RouteOf) -> None:
    """Jaws crush a fresh knurl, and 2 mm of it hold nothing true. Common practice, no source."""
    more = "thread: {screwed: M4, on: rod, length: 36 mm}, catch: {grooved: 1.6 mm, on: tip, depth:"
    spec = KNURLED.replace("grip: {knurled", f"{more} 0.65 mm}}, grip: {{knurled").replace(
        "length: 40 mm}", "length: 40 mm}, {name: tip, diameter: 3 mm, length: 5 mm}"
    )
    route = route_of(spec)
    (faced,) = (one.grip for one in route.setups[1:] if any(a.act == "face" for a in one.acts))
    assert faced.on == "the thread, in a split tapped ring"
    # Near the head of 5 mm: 36 mm of the rod's 40 are threaded, from its tip, so that the thread
    # begins 9 mm from the head's end, and 2 mm of its run-out stay clear: 11 mm.
    assert 9 < faced.jaws[0] <= 11
    assert faced.stand_out < 12
    assert not route.trouble


def test_the_bar_is_drawn_out_before_it_is_parted_off(route_of: RouteOf) -> None:
    """The back edge is 42 mm from the free end, and less than that is out of the jaws."""
    route = route_of(LONG)
    (setup,) = (one for one in route.setups if any(act.act == "part-off" for act in one.acts))
    assert setup.grip.stand_out < 42
    assert "draw the bar out" in act_of(route, "part-off", "").what


@pytest.mark.parametrize("end", ["left", "right"])
def test_the_slot_of_a_headless_screw_is_at_the_end_that_is_held_last(
    end: str, route_of: RouteOf
) -> None:
    route = route_of(
        "{material: mild steel, stock: 5 mm drawn rod, turned: [{name: rod, diameter: 5 mm, length:"
        " 12 mm}], features: {thread: {screwed: M5, on: rod, length: 12 mm},"
        f" slot: {{slotted: 0.8 mm, on: {end}, depth: 1 mm}}}}}}"
    )
    assert route.setups[0].grip.free == {"left": "right", "right": "left"}[end]
    assert not route.trouble


def test_straight_steps_come_before_a_taper(route_of: RouteOf) -> None:
    """The top-slide is set over once, and a taper behind a collar is come at through a neck."""
    route = route_of(
        "{material: brass, stock: 25 mm round bar, turned: [{name: foot, diameter: 25 mm, length:"
        " 5 mm}, {name: waist, taper: 22 mm to 16 mm, length: 20 mm}, {name: collar, diameter:"
        " 20 mm, length: 8 mm}]}"
    )
    assert place(route, "turn", "collar") < place(route, "taper")
    taper, neck = act_of(route, "taper", "waist"), act_of(route, "groove", "waist")
    # The built-in parting tool is 2 mm wide; the point of the tool wants 2.9 mm between walls of
    # 1.55 and 4.05 mm, and at the far side of those the cone is 16 + 6 × 2.9 / 20 mm.
    told = (
        "neck in behind the collar to ⌀16.9 mm, 2.9 mm wide, with the parting tool, 2 mm wide, "
        "in 2 plunges side by side, beginning 8 mm from the end"
    )
    assert told in neck.what
    assert neck.tool == "parting tool"
    assert place(route, "groove", "waist") < place(route, "taper")
    assert "relieved on both sides, which clears the collar; stop its point" in taper.what


def test_a_head_is_knurled_before_its_screw_is_turned_thin(route_of: RouteOf) -> None:
    route = route_of(
        "{material: mild steel, stock: 8 mm drawn rod, turned: [{name: head, diameter: 8 mm,"
        " length: 5 mm}, {name: rod, diameter: 4 mm, length: 40 mm}, {name: tip, diameter: 3 mm,"
        " length: 5 mm}], features: {grip: {knurled: 1 mm, on: head},"
        " thread: {screwed: M4, on: rod, length: 36 mm}}}"
    )
    assert place(route, "knurl") < place(route, "turn", "rod") < place(route, "turn", "thread")
    assert place(route, "turn", "rod") < place(route, "turn", "tip")
    # A centre in an end of 3 mm: six tenths of it at the most.
    assert "no wider than 1.8 mm" in act_of(route, "centre", "right end").what


def test_a_flat_is_told_from_the_end(route_of: RouteOf) -> None:
    """6 mm long in the middle of a seat of 20 mm: from 7 to 13 mm."""
    route = route_of(
        "{material: silver steel, stock: 6 mm drawn rod, turned: [{name: seat, diameter: 6 mm,"
        " length: 20 mm}, {name: rod, diameter: 6 mm, length: 60 mm}], features: {spot: {flatted:"
        " 5.5 mm, on: seat, length: 6 mm}}}"
    )
    assert act_of(route, "mill-flat", "spot").what.endswith(
        "from 7 mm to 13 mm off the left-hand end"
    )


def test_each_end_of_a_pin_gets_one_groove_at_its_set_up(route_of: RouteOf) -> None:
    route = route_of(
        "{material: silver steel, stock: 6 mm drawn rod, turned: [{name: rod, diameter: 6 mm,"
        " length: 40 mm}], features: {clips: {grooved: 0.8 mm, on: rod, depth: 0.3 mm, each_end:"
        " true}}}"
    )
    grooves = [one for one in route.acts if one.act == "groove"]
    assert len(grooves) == 2
    assert all("from this end" in one.what and "off" not in one.what for one in grooves)


def test_a_bar_that_may_come_larger_is_brought_to_size(route_of: RouteOf) -> None:
    """No stock is told, so a bar of at least 14 by 26: all six faces, each to its size."""
    route = route_of("{material: mild steel, block: {length: 20 mm, width: 14 mm, height: 26 mm}}")
    sizes = {
        found[1]
        for one in route.acts
        if (found := re.search(r"to (\d+) mm$", one.what)) is not None
    }
    assert sizes == {"14", "20", "26"}


def test_a_dome_leaves_enough_to_grip(plan: Plan) -> None:
    """Round to 6 mm of a cap 7 mm long, 1 mm is left to hold; to 3 mm there are 4."""

    def codes(radius: str) -> set[str]:
        text = (
            f"{HEAD}  cap: {{material: brass, stock: 12 mm round bar, turned: [{{name: body,"
            " diameter: 12 mm, length: 7 mm}], features: {seat: {drilled: 8 mm, on: left, depth:"
            f" 3 mm}}, dome: {{rounded: {radius}, on: right, dummy: true}}}}}}\n"
        )
        return {one.code.name for one in plan(text).findings}

    assert "nothing-to-grip" in codes("6 mm")
    assert "nothing-to-grip" not in codes("3 mm")


def test_a_far_second_end_is_carried(route_of: RouteOf) -> None:
    """35 mm of thread out of the jaws at 10 mm: more than three times as long as it is thick."""
    route = route_of(
        "{material: mild steel, stock: 10 mm drawn rod, turned: [{name: pin, diameter: 6 mm,"
        " length: 5 mm}, {name: head, diameter: 10 mm, length: 11 mm}, {name: shank, diameter:"
        " 10 mm, length: 35 mm}], features: {thread: {screwed: M10, on: shank, length: 35 mm}}}"
    )
    held = [one for one in route.setups if any(act.act == "die" for act in one.acts)]
    assert held[0].grip.support == "tailstock centre"
    assert act_of(route, "die", "thread").what.startswith("draw the centre back")


def test_no_vice_holds_a_long_bar_upright(route_of: RouteOf) -> None:
    """180 mm on its end does not go under the mill of 180 mm travel; 60 mm stands in the vice."""
    text = (
        "{{material: mild steel, stock: 20 mm x 10 mm flat bar, cut: {} mm, features:"
        " {{hole: {{drilled: 3 mm, on: left, depth: 6 mm}}}}}}"
    )
    held = {
        long: next(
            one for one in route_of(text.format(long)).setups if one.datum.startswith("left end")
        )
        for long in (60, 180)
    }
    assert "vice" in held[60].grip.holder
    assert held[60].place == "mill"
    assert "angle plate" in held[180].grip.holder
    assert held[180].place == "drill"
