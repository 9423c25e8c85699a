"""Every size in a sum is measured before the sum is worked to, at the step that needs it.

Sums are by hand. DIN 471: the ring for 4 mm is 0.4 mm thick, its groove 0.5 mm wide. That a groove
keeps its distance from the end it is cut from, and that the outer walls are as far apart as the
tool goes and its own width, is geometry.
"""

from __future__ import annotations

import pytest

from binder.api import Design
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.facts import Act, Route, SetUp
from tests.plugins.operations.conftest import Plan, without

# A plate of 6 mm on a pin between two clips that lie on walls 6.95 mm apart.
CLIPPED = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  plate: {material: mild steel, plate: {length: 20 mm, width: 20 mm, thickness: 6 mm}, features: {hole: {reamed: to suit, depth: through}}}
  pin: {PIN}
joints:
  pin in plate: {slides: [pin.journal, plate.hole]}
CLIPS
shafts:
  pin: {along: [pin.NEAR, plate.hole, pin.FAR]}
"""  # noqa: E501
_ONE = "  clips: {clipped: [plate.hole, pin.clips], fastener: 4 mm external circlip}"
_TWO = (
    "  clip near: {clipped: [plate.hole, pin.near], fastener: 4 mm external circlip}\n"
    "  clip far: {clipped: [plate.hole, pin.far], fastener: 4 mm external circlip}"
)
_ROD = "material: silver steel, stock: drawn rod"
_BAR = "material: mild steel, stock: 8 mm round bar"
PLAIN = f"{_ROD}, turned: [{{name: journal, diameter: 4 mm, length: 8.45 mm}}]"
TAILED = (
    f"{_ROD}, turned: [{{name: journal, diameter: 4 mm, length: 8.45 mm}},"
    " {name: tail, diameter: 3 mm, length: 6 mm}]"
)
HEADED = (
    f"{_BAR}, turned: [{{name: head, diameter: 8 mm, length: 5 mm}},"
    " {name: journal, diameter: 4 mm, length: 8.45 mm}, {name: tail, diameter: 3 mm, length: 6 mm}]"
)
EACH_END = "features: {clips: {grooved: to suit, on: journal, each_end: true, at: 1 mm from left}}"


def features(near: float, far: float) -> str:
    """Two grooves for clips, their middles so far in mm from the left."""
    return (
        f"features: {{near: {{grooved: to suit, on: journal, at: {near} mm from left}},"
        f" far: {{grooved: to suit, on: journal, at: {far} mm from left}}}}"
    )


def pin_design(plan: Plan, pin: str, *, is_one: bool, shop: str = "") -> Design:
    """A pin between two clips, which are of one joint or of two."""
    text = CLIPPED.replace("PIN", pin).replace("CLIPS", _ONE if is_one else _TWO)
    near, far = ("clips", "clips") if is_one else ("near", "far")
    design = plan(text.replace("NEAR", near).replace("FAR", far), shop).design
    assert design is not None
    return design


def _setups(design: Design, item: str) -> tuple[SetUp, ...]:
    route = design.facts.about(Route, item)
    assert route is not None
    return route.setups


def _summed(setups: tuple[SetUp, ...]) -> tuple[SetUp, int, Act]:
    """The one act that is worked to a sum, with its set-up and its place there."""
    found = [
        (setup, n, act)
        for setup in setups
        for n, act in enumerate(setup.acts)
        if "= ______" in act.what
    ]
    assert len(found) == 1, [act.what for _, _, act in found]
    return found[0]


@pytest.mark.parametrize(
    ("pin", "is_one", "outside", "whole"),
    [
        (f"{PLAIN}, {EACH_END}", True, "1.5 mm", "8.45 mm"),
        (f"{TAILED}, {features(1, 7.45)}", False, "7.5 mm", "14.45 mm"),
    ],
)
def test_grooves_of_two_grips_are_set_apart_by_the_whole_length(
    plan: Plan, pin: str, outside: str, whole: str, *, is_one: bool
) -> None:
    """6 + 2 x 0.4 + 0.15 = 6.95; 0.75 stands out beyond each wall, the tail of 6 besides."""
    design = pin_design(plan, pin, is_one=is_one)
    setup, place, act = _summed(_setups(design, "pin"))
    assert act.act == "face"
    assert f"{outside} outside the grooves = ______, {whole} if they come as drawn" in act.what
    assert setup.acts[place - 1].act == "measure"
    # The groove of that grip comes after, from the face that was set.
    assert any(one.act == "groove" for one in setup.acts[place:])


@pytest.mark.parametrize(
    ("pin", "is_one", "drawn"),
    [
        (f"{HEADED}, {features(6, 12.45)}", False, "6.75 mm"),
        (f"{PLAIN.replace(_ROD, _BAR)}, {EACH_END}", True, "7.7 mm"),
    ],
)
def test_of_grooves_of_one_grip_the_second_is_placed_from_the_first(
    plan: Plan, pin: str, drawn: str, *, is_one: bool
) -> None:
    """The wall at 12.7 of 19.45 is 6.75 from the right-hand end; that at 0.75 of 8.45 is 7.7."""
    design = pin_design(plan, pin, is_one=is_one)
    setup, place, act = _summed(_setups(design, "pin"))
    assert act.act == "groove"
    assert "both clips as measured" in act.what
    assert "= ______ (6.95 mm if they come as drawn) from the outer wall of" in act.what
    assert "less its own width" in act.what
    assert f"{drawn} from this end as drawn" in act.what
    assert setup.acts[place - 1].act == "measure"
    faces = [one.what for one in design.facts.about(Route, "pin").acts if one.act == "face"]  # type: ignore[union-attr]
    assert not any("as measured" in said for said in faces)


def test_the_clips_lie_ready_with_what_reads_them(plan: Plan) -> None:
    """0.4 mm is read by the finest that is owned: a micrometer, else the caliper."""
    without_it = without("measuring/micrometer")
    for shop, tool in (("", "micrometer"), (without_it, "digital caliper")):
        design = pin_design(plan, f"{PLAIN}, {EACH_END}", is_one=True, shop=shop)
        setup, place, _ = _summed(_setups(design, "pin"))
        act = setup.acts[place - 1]
        assert "both" not in act.tool
        assert act.tool.startswith(tool)
        found = collect_tools(design).facts
        tools = next(one for one in found if isinstance(one, ToolsFact))
        ready = tools.by_piece[f"pin {setup.number}"]
        assert tool in ready
        assert "clips of the pin" in ready
        assert not any("clips" in one.name for one in tools.tools)


ROW = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle: {material: silver steel, stock: drawn rod, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  cheek: {material: brass, plate: {length: 30 mm, width: 20 mm, thickness: 3 mm}, features: {bore: {reamed: 4 mm, on: top, depth: through}}}
  drum: {material: brass, stock: 10 mm round bar, turned: [{name: barrel, diameter: 10 mm, length: 19.8 mm}], features: {bore: {reamed: 4 mm, on: barrel, depth: through}}}
  ring: {material: brass, stock: 8 mm round bar, turned: [{name: rim, diameter: 8 mm, length: 4 mm}], features: {bore: {drilled: 4.1 mm, on: rim, depth: through}}}
bought:
  spare: {what: "4 mm washer, brass", sizes: {bore: 4.2 mm, outside: 8 mm, thickness: 1.5 mm}MEASURED}
joints:
  axle in cheeks: {runs_in: [axle.journal, cheek.bore]}
  drum on axle: {retained: [drum.bore, axle.journal]}
shafts:
  axle: {along: [cheek.bore, drum, ring, spare, cheek.bore], apart: 25.45 mm, to_suit: ring}
"""  # noqa: E501


@pytest.mark.parametrize(
    ("measured", "is_here"), [("", True), (", measure_first: [thickness]", False)]
)
def test_what_stands_in_a_row_is_measured_once(plan: Plan, measured: str, *, is_here: bool) -> None:
    """The drum on its own leaf; the washer, which has none, at the sum, unless it has a task."""
    design = plan(ROW.replace("MEASURED", measured)).design
    assert design is not None
    setup, place, act = _summed(_setups(design, "ring"))
    assert act.act == "face"
    washer = [one for one in setup.acts[:place] if one.act == "measure"]
    assert bool(washer) == is_here
    assert all("4 mm washer, brass" in one.what and one.tool for one in washer)
    (drum,) = [
        one
        for each in _setups(design, "drum")
        for one in each.acts
        if "the ring is made to it" in one.what
    ]
    assert "19.8 mm as drawn" in drum.what
    assert drum.tool
