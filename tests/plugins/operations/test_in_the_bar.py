"""Work that is still on its bar, or between two shoulders, or carried by a centre, as it is told.

All: common practice, no source.
"""

from __future__ import annotations

import pytest

from binder_plugins.operations.facts import Route
from binder_plugins.operations.wet import said
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

BUSH = (
    "{{material: brass, stock: 20 mm round bar, turned: [{{name: boss, diameter: 16 mm, length: 6"
    " mm}}, {{name: rim, diameter: 20 mm, length: 5 mm}}], features: {{hole: {{{kind}, on: boss,"
    " depth: through}}}}}}"
)


@pytest.mark.parametrize(
    ("kind", "deep"),
    # 11 long and 1 for facing; 2 for the lead of a machine reamer and 1 for its chips; for the
    # lead of a tap the 5 of its drill, and 1; nothing more for a plain hole.
    [("reamed: 6 mm", 15), ("tapped: M6", 18), ("drilled: 6 mm", 12)],
)
def test_a_hole_right_through_goes_past_the_line_of_parting(
    kind: str, deep: float, route_of: RouteOf
) -> None:
    acts = route_of(BUSH.format(kind=kind)).acts
    drill = [act for act in acts if act.act == "drill"][-1]
    assert drill.deep == pytest.approx(deep)
    assert f"{deep} mm deep" in drill.what
    assert "past the line of parting off" in drill.what


def test_a_hole_in_a_piece_that_is_off_its_bar_is_just_through(route_of: RouteOf) -> None:
    """A plate is open below."""
    part = (
        "{material: brass, block: {length: 30 mm, width: 20 mm, height: 8 mm},"
        " features: {hole: {reamed: 6 mm, on: top, depth: through}}}"
    )
    drill = [act for act in route_of(part).acts if act.act == "drill"][-1]
    assert "through" in drill.what
    assert "parting" not in drill.what


@pytest.mark.parametrize(("long", "is_short"), [(30, False), (60, True)])
def test_a_far_end_is_faced_and_centred_before_it_is_drawn_out(
    long: int, *, is_short: bool, route_of: RouteOf
) -> None:
    """30 mm of ⌀12 stands by itself at three times its thickness; 60 wants a centre."""
    part = (
        f"{{material: mild steel, stock: drawn rod, turned: [{{name: pin, diameter: 10 mm, length:"
        f" {long} mm}}, {{name: head, diameter: 12 mm, length: 40 mm}}]}}"
    )
    setup = next(one for one in route_of(part).setups if one.place == "lathe")
    centre = [act for act in setup.acts if act.act == "centre"]
    assert any("draw it out" in act.what for act in centre) == is_short
    assert ("out of the jaws" in setup.acts[0].what) == is_short


SCREW = (
    "{{material: mild steel, stock: drawn rod, turned: [{{name: head, diameter: 8 mm, length: 5"
    " mm}}, {{name: rod, diameter: 4 mm, length: 40 mm}}, {{name: tip, diameter: 3 mm, length:"
    " {tip} mm}}], features: {{thread: {{screwed: M4, on: rod, length: {long} mm{at}}},"
    " catch: {{grooved: 1.6 mm, on: {on}, depth: 0.8 mm{where}}}}}}}"
)


def _screw(tip: str = "5", at: str = "") -> str:
    return SCREW.format(tip=tip, long="36", at="", on="tip", where=at)


def test_a_groove_before_a_thread_is_cut_while_the_centre_carries_it(route_of: RouteOf) -> None:
    """⌀3 less 2 × 0.8 leaves 1.4 mm, too thin to turn the rod on; it stands 42 mm out, and
    without the centre a plunging tool bends it. The die's torque never passes it: it is nearer
    to the free end than the thread."""
    first = next(one for one in route_of(_screw()).setups if one.place == "lathe")
    names = [act.act for act in first.acts]
    assert max(n for n, one in enumerate(names) if one == "turn") < names.index("groove")
    assert names.index("groove") < names.index("die")


def test_a_thin_neck_behind_a_thread_waits_for_the_die(route_of: RouteOf) -> None:
    """The torque of the die passes a neck between the thread and the jaws; after it the centre
    must come up again."""
    neck = SCREW.format(
        tip="5", long="20", at=", at: 33 mm from left", on="rod", where=", at: 12 mm from left"
    ).replace("grooved: 1.6 mm", "grooved: 1.2 mm")
    first = next(one for one in route_of(neck).setups if one.place == "lathe")
    groove = next(act for act in first.acts if act.act == "groove")
    assert first.acts.index(groove) > [act.act for act in first.acts].index("die")
    assert groove.what.startswith("bring the centre up again")


@pytest.mark.parametrize(
    ("tip", "at", "tool"),
    [
        # From 1.7 mm in, 1.4 mm thick: a pilot of 1, 1.9 long at most and its cone, would run
        # under it; one of 0.5 is 1.0 long and (1.06 - 0.5) / 2 / tan 30 = 0.5 more.
        ("5", "", "0.5 mm centre drill, form A"),
        # From 6.2 mm in the usual hole ends before it.
        ("14", ", at: 52 mm from left", "centre drill"),
    ],
)
def test_a_centre_hole_ends_before_a_groove(
    tip: str, at: str, tool: str, route_of: RouteOf
) -> None:
    """ISO 866 and ISO 6411, form A; from memory."""
    first = next(one for one in route_of(_screw(tip, at)).setups if one.place == "lathe")
    centre = next(act for act in first.acts if act.act == "centre")
    assert centre.tool == tool
    assert ("no deeper" in centre.what) == (tool != "centre drill")


def test_where_a_groove_leaves_no_room_for_a_centre_it_is_a_finding(plan: Plan) -> None:
    """A groove from 0.2 mm in: no centre drill is so short, and 45 mm of ⌀4 stand by themselves."""
    text = HEAD + "  screw:\n    " + _screw(at=", at: 49 mm from left")
    found = [one for one in plan(text).findings if one.code.name == "stands-out-too-far"]
    assert any("no room for a centre" in one.message for one in found)


SADDLE = """{HEAD}  screw:
    material: mild steel
    stock: drawn rod
    turned:
      - {{name: pin, diameter: 6 mm, length: 6.1 mm}}
      - {{name: shank, diameter: 10 mm, length: 40 mm}}
  saddle:
    material: brass
    stock: 20 mm round bar
    turned: [{{name: boss, diameter: 20 mm, length: {long} mm}}]
    features: {{socket: {{reamed: to suit, on: boss, depth: through}}}}
joints:
  it: {{swivels: [saddle.socket, screw.pin], duty: turns by hand, master: saddle.socket}}
"""


@pytest.mark.parametrize(("long", "is_told"), [("6", True), ("5", False)])
def test_a_float_between_shoulders_is_made_on_the_leaf(
    long: str, *, is_told: bool, plan: Plan
) -> None:
    """The hub is measured; the pin is that and 0.2, the middle of 0.1 to 0.3 mm. With more than
    1 mm of room the shoulders do not hold it."""
    from binder_plugins.operations.facts import Route

    design = plan(SADDLE.format(HEAD=HEAD, long=long)).design
    assert design is not None
    routes = {name: design.facts.about(Route, name) for name in ("saddle", "screw")}
    pin = " ".join(act.what for act in routes["screw"].acts) if routes["screw"] else ""
    hub = " ".join(act.what for act in routes["saddle"].acts) if routes["saddle"] else ""
    assert ("length of the saddle as measured + 0.2 mm = ______ from the end" in pin) == is_told
    assert ("length of the saddle: ______, 6 mm as drawn" in hub) == is_told


def test_a_cross_hole_finds_the_axis_of_its_round(route_of: RouteOf) -> None:
    """By a rule that lies level under the point."""
    part = (
        "{material: mild steel, stock: drawn rod, turned: [{name: rod, diameter: 10 mm, length: 50"
        " mm}], features: {eye: {drilled: 3 mm, across: rod, at: 12 mm from left, depth: through}}}"
    )
    setup = next(one for one in route_of(part).setups if one.grip.kind == "vee")
    assert "rule" in setup.true


HANDLE = """{HEAD}  pin:
    material: silver steel
    stock: drawn rod
    turned: [{{name: journal, diameter: 2.5 mm, length: 20 mm}}]
  handle:
    material: brass
    stock: 10 mm round bar
    turned: [{{name: grip, diameter: 8 mm, length: 18 mm}}]
    features: {{bore: {{drilled: {size}, on: grip, depth: through}}}}
joints:
  it: {{swivels: [handle.bore, pin.journal], duty: turns by hand, master: handle.bore}}
"""


@pytest.mark.parametrize("size", ["2.6 mm", "to suit"])
def test_a_drilled_hole_with_limits_goes_past_the_line_as_any_other(size: str, plan: Plan) -> None:
    """18 long and what is left to face behind; drilled to 18 it would be closed when it is off."""
    outcome = plan(HANDLE.format(HEAD=HEAD, size=size))
    assert outcome.design is not None, [one.message for one in outcome.findings]
    route = outcome.design.facts.about(Route, "handle")
    assert route is not None
    drill = [act for act in route.acts if act.act == "drill"][-1]
    assert " to " in drill.what.partition(" deep")[0]
    assert drill.deep > 18
    assert "past the line of parting off, in " in drill.what


def test_a_bar_that_is_sawn_off_is_told_no_parting_tool(route_of: RouteOf) -> None:
    """⌀50 is beyond a parting tool of 16 mm reach; what is cut dry or wet is then the reamer."""
    part = (
        "{material: aluminium, stock: 50 mm round bar, turned: [{name: rim, diameter: 48 mm,"
        " length: 20 mm}], features: {bore: {reamed: 8 mm, on: rim, depth: through}}}"
    )
    setup = next(
        one for one in route_of(part).setups if any(act.act == "part-off" for act in one.acts)
    )
    assert "hacksaw" in [act.tool for act in setup.acts]
    assert "parting" not in said(setup)
    assert "reamer" in said(setup)
    assert setup.until == "it is sawn off"


STUD = (
    "{{material: mild steel, stock: {bar} round bar, turned: [{{name: body, diameter: 4 mm,"
    " length: {long} mm}}{more}], features: {{thread: {{screwed: M4, on: body{of}}}}}}}"
)


def test_a_die_goes_on_past_the_line_of_parting_by_its_lead(route_of: RouteOf) -> None:
    """M4 has a pitch of 0.7 mm (ISO 261), and a die leaves two turns half cut: 12 + 3 + 1.4."""
    point = ", {name: point, taper: 4 mm to 1 mm, length: 3 mm}"
    first, second, *_ = route_of(STUD.format(bar="5 mm", long=12, more=point, of="")).setups
    long = [one.what for one in first.acts if one.feature == "thread" and one.act != "chamfer"]
    assert len(long) == 2
    assert all("× 16.4 mm from the end, past the line of parting off" in what for what in long)
    assert first.grip.stand_out > 16.4 + 1
    # A nut goes on from the end that was parted off as well.
    assert [act.act for act in second.acts] == ["face", "chamfer"]


def test_a_thread_over_a_bored_piece_runs_past_the_line_too(route_of: RouteOf) -> None:
    """M12 has a pitch of 1.75 mm (ISO 261): 10 + 3.5."""
    part = (
        "{material: brass, stock: 14 mm round bar, turned: [{name: body, diameter: 12 mm, length:"
        " 10 mm}], features: {thread: {screwed: M12, on: body}, bore: {reamed: 6 mm, on: body,"
        " depth: through}}}"
    )
    (die,) = [act for act in route_of(part).acts if act.act == "die"]
    assert "on to 13.5 mm from the end, past the line of parting off" in die.what


def test_a_die_that_ends_short_of_the_parted_end_stops_there(route_of: RouteOf) -> None:
    route = route_of(STUD.format(bar="5 mm", long=20, more="", of=", length: 8 mm"))
    assert not [act for act in route.acts if "past the line of parting" in act.what]
