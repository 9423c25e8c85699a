"""How a die is stopped, a neck goes with its cone, a round lies in its V, and what it is cut with.

Common practice, no source, unless a sum or another source stands beside a case.
"""

from __future__ import annotations

import pytest

from binder.api import SmallWork, SupplyFact
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.facts import Route, SetUp
from binder_plugins.operations.sketch import sketch
from binder_plugins.operations.wet import said
from binder_solid.facts import FormFact
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

BAR = (
    "{material: mild steel, stock: drawn rod, turned: [{name: head, diameter: 10 mm, length: 20"
    " mm}, {name: shank, diameter: 10 mm, length: 30 mm}], features: {thread: {screwed: M10, on:"
    " shank, length: 30 mm}, eye: {drilled: 3 mm, across: head, at: middle, depth: through}}}"
)
LEAD = (
    "{material: mild steel, stock: drawn rod, turned: [{name: head, diameter: 8 mm, length: 5 mm},"
    " {name: rod, diameter: 4 mm, length: 40 mm}, {name: tip, diameter: 3 mm, length: 5 mm}],"
    " features: {thread: {screwed: M4, on: rod, length: 36 mm}}}"
)
KNOB = (
    "  rod: {material: mild steel, stock: drawn rod, turned: [{name: rod, diameter: 3 mm, length:"
    " 60 mm}], features: {ends: {screwed: M3, on: rod, length: 4.5 mm, each_end: true}}}\n"
    "  knob: {material: brass, stock: 7 mm round bar, quantity: 2, turned: [{name: ball, diameter:"
    " 7 mm, length: 9 mm}], features: {thread: {tapped: to suit, on: ball, depth: %s mm}, round:"
    " {rounded: 1.5 mm, on: ball}}}\n"
    "joints: {knobs: {threaded: [rod.ends, knob.thread], fixed: true}}\n"
)


def die_of(route: Route) -> str:
    """The words of its die."""
    return next(act.what for act in route.acts if act.act == "die")


def planned(plan: Plan, text: str, name: str) -> Route:
    """The route of one of several parts."""
    design = plan(HEAD + text).design
    assert design is not None
    route = design.facts.about(Route, name)
    assert route is not None
    return route


def test_bar_of_the_threads_own_size_stops_no_die(route_of: RouteOf) -> None:
    """30 mm at 1.5 mm a turn are 20 turns (pitch of M10: ISO 261)."""
    words = die_of(route_of(BAR))
    assert "no shoulder stops the die" in words
    assert "30 mm from the tip" in words
    assert "about 20 turns" in words
    assert "up to the shoulder" not in words


def test_a_thread_begins_where_its_mate_comes_on(route_of: RouteOf) -> None:
    """Behind a tip of 5 mm a thread of 36 mm ends 41 mm off: its die, and its nut, cannot begin
    on the plain rod."""
    route = route_of(LEAD)
    turned = next(act.what for act in route.acts if "for-thread" in act.tags)
    assert "36 mm, from 5 mm to 41 mm off the tip, for the thread" in turned
    assert "scribe the thread's end first, 41 mm from the tip" in die_of(route)


@pytest.mark.parametrize(("deep", "is_round"), [(5.5, True), (3.0, False)])
def test_a_die_is_turned_round_where_its_mate_comes_home(
    deep: float, is_round: bool, plan: Plan
) -> None:
    """4.5 mm, the last two turns of 0.5 mm half cut: a mate 3 mm deep ends short of them."""
    words = die_of(planned(plan, KNOB % deep, "rod"))
    assert ("turn the die round" in words) == is_round
    assert "open the die for the first cut" in words


@pytest.mark.parametrize(
    ("ends", "neck", "small", "swung"),
    [
        # The neck is 2.9 mm wide, as its tool wants it, of 32 mm along a cone from 16 to 22:
        # 16 + 6 × 2.9 / 32 = 16.544, up to a tenth.
        ("22 mm to 16 mm", "to ⌀16.6 mm", "the tailstock", "away from you"),
    ],
)
def test_a_neck_is_no_deeper_than_its_cone(
    ends: str, neck: str, small: str, swung: str, route_of: RouteOf
) -> None:
    part = (
        "{material: mild steel, stock: 25 mm round bar, turned: [{name: foot, diameter: 25 mm,"
        f" length: 5 mm}}, {{name: waist, taper: {ends}, length: 32 mm}}, {{name: collar, diameter:"
        " 20 mm, length: 8 mm}]}"
    )
    acts = route_of(part).acts
    words = next(act.what for act in acts if act.act == "taper")
    assert neck in next(act.what for act in acts if act.act == "groove")
    assert f"small end towards {small}" in words
    assert f"swung {swung}" in words


def test_a_cone_that_grows_to_the_tailstock_swings_the_other_way(route_of: RouteOf) -> None:
    """Geometry: the tool comes in towards the axis on its way to the chuck."""
    part = (
        "{material: mild steel, stock: 20 mm round bar, turned: [{name: stem, diameter: 12 mm,"
        " length: 20 mm}, {name: cup, taper: 12 mm to 20 mm, length: 20 mm}]}"
    )
    acts = [act.what for act in route_of(part).acts if act.act == "taper"]
    near, _, far = acts[0].removeprefix("turn the taper ⌀").partition(" mm to ⌀")
    grows = float(near) < float(far.partition(" ")[0])
    assert ("swung away from you" in acts[0]) == grows
    assert ("small end towards the tailstock" in acts[0]) == grows


def vee_of(route: Route) -> SetUp:
    """Its set-up in a V-block."""
    return next(one for one in route.setups if one.grip.kind == "vee")


def test_a_round_is_clamped_in_its_vee_clear_of_the_place(plan: Plan) -> None:
    """The hole is 10 mm from the left of 50 mm: the longer side is the right one, a thread."""
    design = plan(f"{HEAD}  trial: {BAR}\n").design
    assert design is not None
    route, form = design.facts.about(Route, "trial"), design.facts.about(FormFact, "trial")
    assert route is not None
    assert form is not None
    setup = vee_of(route)
    assert "toolmaker's clamp over the round" in setup.grip.holder
    assert "right-hand end lies in the V" in setup.true
    assert "on the thread" in setup.true
    assert "head and shank" in setup.grip.on
    low, high = setup.grip.land
    assert 11.5 < low < high <= 50.0
    assert sketch(setup, form) is not None
    tools = next(one for one in collect_tools(design).facts if isinstance(one, ToolsFact))
    assert "toolmaker's clamps" in {one.name for one in tools.tools}


@pytest.mark.parametrize(
    ("material", "words"),
    [
        ("mild steel", "Cutting oil on the tap and the parting tool"),
        ("brass", "The tap and the parting tool cut dry"),
        ("cast iron", "The tap and the parting tool cut dry"),
    ],
)
def test_what_a_metal_is_cut_with_is_said_once_a_setup(
    material: str, words: str, plan: Plan
) -> None:
    """Steel is tapped and parted with cutting oil, brass and cast iron dry."""
    text = (
        f"  trial: {{material: {material}, stock: 12 mm round bar, turned: [{{name: body, diameter:"
        " 10 mm, length: 12 mm}], features: {hole: {tapped: M4, on: body, depth: through}}}\n"
    )
    design = plan(HEAD + text).design
    assert design is not None
    route = design.facts.about(Route, "trial")
    assert route is not None
    assert words in {said(one) for one in route.setups}
    facts = collect_tools(design).facts
    tools = next(one for one in facts if isinstance(one, ToolsFact))
    names = {one.name for one in tools.tools}
    used_up = {one.what for one in facts if isinstance(one, SupplyFact)}
    assert ("cutting oil" in used_up) == (material == "mild steel")
    tap = next(act.what for act in route.acts if act.act == "tap")
    assert "on the tailstock centre" in tap
    assert {"tap wrench", "tailstock centre"} <= names


def test_a_screwed_stub_has_its_sizes(plan: Plan) -> None:
    """M3 is turned to 2.95 mm for a die (from memory); it goes a turn of 0.5 mm short of the
    thread's 5.5 mm in, and the die runs out in a neck below the core, 2.387 mm (ISO 724)."""
    design = plan(HEAD + KNOB % 5.5).design
    assert design is not None
    stub = next(
        one
        for one in collect_tools(design).facts
        if isinstance(one, SmallWork) and "screwed stub" in one.subject
    )
    words = " ".join(stub.steps)
    assert "⌀2.95 mm × 5 mm" in words
    neck = float(words.partition("at the shoulder to ⌀")[2].partition(" ")[0])
    assert 2.0 <= neck < 2.387
    route, form = design.facts.about(Route, "knob"), design.facts.about(FormFact, "knob")
    assert route is not None
    held = next(one for one in route.setups if "screwed stub" in one.grip.on)
    drawn = sketch(held, form)
    plain = sketch(route.setups[0], form)
    assert drawn is not None
    assert plain is not None
    assert len(drawn.shapes) > len(plain.shapes) - 1
