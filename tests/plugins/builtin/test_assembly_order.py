"""The order of the hand inside an assembly: nothing that is put on bars what comes after.

Expectations are reasoned from the parts by hand; common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import (
    BuildSequence,
    Checklist,
    Design,
    DrawnBox,
    DrawnLabel,
    Paragraph,
    Section,
    TaskTime,
    text_width,
)
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.buildorder.closing import joints_closed_in
from binder_plugins.buildorder.cords_across import across
from binder_plugins.buildorder.picture import picture
from binder_plugins.buildorder.stripping import opened
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.facts import Route
from binder_plugins.operations.together_pages import together_pages

Compile = Callable[..., Outcome]
SPECS = Path(__file__).parents[3] / "specs"


@pytest.fixture(scope="module")
def models(host: Host) -> dict[str, Design]:
    """The two models with shafts, compiled once."""
    return {name: _design(name, host) for name in ("wharf-crane", "tilt-hammer")}


def _design(name: str, host: Host) -> Design:
    design = compiled(Job(SPECS / name / f"{name}.yaml"), host, Phase.CHECK).design
    assert design is not None
    return design


def _order(design: Design, assembly: str) -> list[str]:
    return [joint.name for joint in joints_closed_in(design.assemblies[assembly], design)]


def _steps(design: Design, assembly: str) -> dict[str, str]:
    (whole,) = assembly_pages(design, ())
    (sheet,) = (one for one in whole.sections if one.id == f"assembly-{assembly}")
    assert isinstance(sheet, Section)
    ticks, *_ = (block for block in sheet.blocks if isinstance(block, Checklist))
    return {tick.key.removeprefix(f"{assembly} "): text_of(tick.text) for tick in ticks.checks}


def _besides(design: Design, assembly: str) -> dict[str, str]:
    """What stands below each step."""
    (whole,) = assembly_pages(design, ())
    (sheet,) = (one for one in whole.sections if one.id == f"assembly-{assembly}")
    ticks, *_ = (block for block in sheet.blocks if isinstance(block, Checklist))
    return {
        tick.key.removeprefix(f"{assembly} "): " ".join(text_of(text) for text in tick.detail)
        for tick in ticks.checks
    }


def test_a_rope_is_reeved_at_its_step(models: dict[str, Design]) -> None:
    step = _steps(models["wharf-crane"], "crane")["rope"]
    assert "over the head sheave, round the block sheave" in step
    assert "make its other end fast to the jib cross bar" in step
    assert "the hook block hangs in it" in step
    assert "jib with its sheave hangs" not in step  # a pin holds the jib


def test_a_step_says_what_the_maker_notes_of_its_joint(models: dict[str, Design]) -> None:
    besides = _besides(models["tilt-hammer"], "tilt_hammer")
    assert "cones of the centre drill" in besides["pivots in collar"]


def test_a_thread_is_locked_when_the_whole_has_run(models: dict[str, Design]) -> None:
    """The arm goes on dry, and is locked behind the test of the crane, not of the winch: what is
    locked does not come apart for a change. Common practice, no source."""
    design = models["wharf-crane"]
    step = _steps(design, "winch")["arm on crank shaft"]
    assert "dry for now, nipped tight" in step
    assert "watch the line while it runs in" in step
    last = {name: _last(design, name) for name in ("winch", "crane")}
    assert [name for name, keys in last.items() if any("lock arm" in key for key in keys)] == [
        "crane"
    ]


def _last(design: Design, assembly: str) -> list[str]:
    """What is ticked on a sheet behind its test."""
    (whole,) = assembly_pages(design, ())
    (sheet,) = (one for one in whole.sections if one.id == f"assembly-{assembly}")
    _, *more = (block for block in sheet.blocks if isinstance(block, Checklist))
    return [tick.key for block in more for tick in block.checks]


def test_a_step_says_where_what_is_bonded_stands(models: dict[str, Design]) -> None:
    """The pinion between cheeks 24 apart: the place is told along the crank shaft."""
    assert "off the" in _besides(models["wharf-crane"], "winch")["pinion on crank"]


@pytest.mark.parametrize(
    ("model", "assembly", "earlier", "later"),
    [
        # The far cheek goes over the crank shaft's tail: the arm would bar it.
        ("wharf-crane", "winch", "crank in cheeks", "arm on crank shaft"),
        # The pinion sits between the cheeks, so it is on the shaft before they are.
        ("wharf-crane", "winch", "pinion on crank", "crank in cheeks"),
        ("wharf-crane", "winch", "wheel on barrel", "axle in cheeks"),
        ("wharf-crane", "winch", "bushes in cheeks", "axle in cheeks"),
        # Wheels mesh once both shafts stand, and a pawl falls once it hangs.
        ("wharf-crane", "winch", "axle in cheeks", "crank to barrel"),
        ("wharf-crane", "winch", "crank in cheeks", "crank to barrel"),
        ("wharf-crane", "winch", "pawl on cheek", "pawl"),
        # The inner head of the pawl's pin is reached only while the cheeks lie loose.
        ("wharf-crane", "winch", "pawl on cheek", "axle in cheeks"),
        ("wharf-crane", "winch", "pawl on cheek", "cheeks on block"),
        # Riveting shuts the handle between the pin's head and the arm, the sheave its cheeks.
        ("wharf-crane", "winch", "handle on arm", "pin in arm"),
        ("wharf-crane", "block", "block sheave on pin", "block pin in cheeks"),
        # The cord is led over the head of a jib that already hangs on the post.
        ("wharf-crane", "crane", "jib on post", "rope"),
        # Only the gear stays on for good: it is bonded clear of oil, and the shaft goes through
        # the hangers from its side.
        ("tilt-hammer", "line", "wheel on line shaft", "line shaft in hanger"),
        # The cam cannot come off, so the pedestals go over the ends and are screwed down then.
        ("tilt-hammer", "tilt_hammer", "cam shaft in bushes", "pedestals on bed"),
        ("tilt-hammer", "tilt_hammer", "bush in pedestal", "cam shaft in bushes"),
        # The helve hangs on the points of the screws.
        ("tilt-hammer", "tilt_hammer", "pivots in hurst", "pivots in collar"),
        # Heads in the underside of the bed: the base covers them.
        ("tilt-hammer", "tilt_hammer", "hurst on bed", "bed on base"),
        ("tilt-hammer", "tilt_hammer", "pedestals on bed", "bed on base"),
        ("tilt-hammer", "tilt_hammer", "bed on base", "pulleys"),
    ],
)
def test_nothing_bars_what_comes_after(
    models: dict[str, Design], model: str, assembly: str, earlier: str, later: str
) -> None:
    order = _order(models[model], assembly)
    assert order.index(earlier) < order.index(later)


BONDED = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle: {material: silver steel, stock: drawn rod, turned: [{name: rod, diameter: 6 mm, length: 60 mm}]}
  lug: {material: brass, quantity: 2, block: {length: 20 mm, width: 9 mm, height: 20 mm}, features: {bore: {reamed: 6 mm, on: front, depth: through}}}
  near: {material: brass, turned: [{diameter: 20 mm, length: 6 mm}], features: {bore: {reamed: 6 mm, on: left, depth: through}}}
  far: {material: brass, turned: [{diameter: 20 mm, length: 6 mm}], features: {bore: {reamed: 6 mm, on: left, depth: through}}}
  bed: {material: brass, plate: {length: 60 mm, width: 40 mm, thickness: 6 mm}}
joints:
  runs: {runs_in: [axle.rod, lug.bore], made: reamed in line}
  near on: {retained: [near.bore, axle.rod]}
  far on: {FAR}
  lugs on bed: {screwed: [lug.underside, bed.top], fastener: M3 socket cap screw}
shafts:
  axle: {along: [near.bore, lug.bore, lug.bore, far.bore], apart: 20 mm}
assemblies:
  all: {of: [axle, 2 off lug, near, far, bed], test: it spins}
"""  # noqa: E501


@pytest.mark.parametrize(
    ("far", "is_clear"),
    [
        ("clamped: [far.bore, axle.rod], fastener: M3 grub screw", True),
        ("retained: [far.bore, axle.rod]", False),
    ],
)
def test_compound_and_oil_are_kept_apart(compile_text: Compile, far: str, is_clear: bool) -> None:
    """Oil spoils the bond, and compound in a bearing locks it: common practice, no source."""
    design = compile_text(BONDED.replace("FAR", far)).design
    assert design is not None
    order = _order(design, "all")
    assert (order.index("near on") < order.index("runs")) == is_clear
    step = _steps(design, "all")["near on"]
    assert ("before the shaft goes into its bearings" in step) == is_clear
    assert ("retaining compound off the bearing" in step) != is_clear


def test_what_rides_on_a_shaft_goes_in_with_it(models: dict[str, Design]) -> None:
    step = _steps(models["wharf-crane"], "winch")["crank in cheeks"]
    assert "with the shaft: the crank pinion; the bearings go on from the two ends" in step
    assert "over the barrel axle too" in step


def test_a_step_says_at_which_angle_long_parts_are_pinned(models: dict[str, Design]) -> None:
    """The spec raises the jib by 50 degrees from the level, so 40 from the upright post."""
    besides = _besides(models["wharf-crane"], "crane")
    for name in ("jib on post", "heel on post"):
        assert "the jib at 40° to the slewing post" in besides[name]
        assert "50° from square" in besides[name]
    (whole,) = together_pages(models["wharf-crane"], ())
    (leaf,) = (one for one in whole.sections if one.title.startswith("Drill the jib and"))
    told = [text_of(block.text) for block in leaf.blocks if isinstance(block, Paragraph)]
    assert len([one for one in told if "40° to the slewing post" in one]) == 1


def test_several_pins_of_two_parts_are_drilled_at_one_go(models: dict[str, Design]) -> None:
    """Parted between two holes the parts would move: common practice, no source."""
    design = models["wharf-crane"]
    assert "drill heel on post" not in design.tasks
    route = design.facts.about(Route, "drill jib on post")
    assert route is not None
    clamped = [act.what for act in route.acts if act.act == "clamp-stack"]
    assert [what.startswith("a pin in the hole before") for what in clamped] == [False, True]
    assert [act.act for act in route.acts].count("separate") == 1


def test_a_pin_goes_through_plates_with_what_stands_between_them(
    models: dict[str, Design],
) -> None:
    """A wheel on the pin beforehand would not pass the plate: common practice, no source."""
    design = models["wharf-crane"]
    order = _order(design, "jib_head")
    assert order.index("head pin in jib") < order.index("head sheave on pin")
    steps = _steps(design, "jib_head")
    row = "on the pin in this order: the head spacer, the head sheave, the head spacer"
    assert row in steps["head pin in jib"]
    assert steps["head sheave on pin"].startswith("In the same move: ")
    # A pin with shoulders, riveted in its cheeks, has its sheave on before.
    assert not _steps(design, "block")["block sheave on pin"].startswith("In the same move")


def test_a_pin_without_a_row_goes_through_all_in_one_move_too(compile_text: Compile) -> None:
    text = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base: {material: brass, block: {length: 30 mm, width: 9 mm, height: 5 mm}}
  cheek: {material: brass, quantity: 2, plate: {length: 30 mm, width: 40 mm, thickness: 3 mm}, features: {hole: {reamed: to suit, depth: through}}}
  pin: {material: silver steel, turned: [{name: rod, diameter: 4 mm, length: 11 mm}]}
  wheel: {material: brass, turned: [{name: rim, diameter: 16 mm, length: 4 mm}], features: {bore: {reamed: to suit, on: rim, depth: through}}}
joints:
  wheel on pin: {runs_in: [wheel.bore, pin.rod]}
  pin in cheeks: {slides: [pin.rod, cheek.hole]}
stands: base
positions:
  cheek: {copies: [{at: 0 mm above base.top}, {at: 0 mm below base.underside}]}
  pin: {at: middle of base}
assemblies: {all: {of: [2 off cheek, pin, wheel]}}
"""  # noqa: E501
    design = compile_text(text).design
    assert design is not None
    assert _order(design, "all") == ["pin in cheeks", "wheel on pin"]
    assert "the wheel held between the plates" in _steps(design, "all")["pin in cheeks"]


def test_a_washer_goes_on_before_what_closes_over_it(models: dict[str, Design]) -> None:
    """The spec's row along the crank shaft: cheek, washer, arm."""
    step = _steps(models["wharf-crane"], "winch")["arm on crank shaft"]
    assert step.startswith("Slide the 4 mm washer over the crank shaft first; then screw")


@pytest.mark.parametrize(
    "told",
    [
        "shafts: {pin: {along: [arm.bore, ring]}}",
        "note: the ring goes on last",
        "steps: [put on the ring]",
    ],
)
def test_a_piece_without_a_step_is_found_unless_it_is_told(
    compile_text: Compile, told: str
) -> None:
    text = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  pin: {material: brass, turned: [{name: rod, diameter: 6 mm, length: 20 mm}]}
  arm: {material: brass, plate: {length: 20 mm, width: 20 mm, thickness: 6 mm}, features: {bore: {reamed: 6 mm, depth: through}}}
  ring: {material: brass, turned: [{name: outside, diameter: 9 mm, length: 2 mm}], features: {bore: {drilled: 6.1 mm, on: outside, depth: through}}}
joints:
  pin in arm: {runs_in: [pin.rod, arm.bore]}
assemblies: {all: {of: [pin, arm, ring]MORE}}
"""  # noqa: E501
    bare = text.replace("MORE", "")
    if told.startswith("shafts"):
        text = f"{bare}{told}\n"
    text = text.replace("MORE", f", {told}")

    def found(text: str) -> bool:
        names = [one.code.name for one in compile_text(text).findings]
        return "put-on-by-no-step" in names

    assert found(bare)
    assert not found(text)


def test_what_was_fixed_outside_the_bearings_comes_off_first(models: dict[str, Design]) -> None:
    step = _steps(models["tilt-hammer"], "tilt_hammer")["cam shaft in bushes"]
    assert "take the stepped pulley of the cam shaft and the flywheel off first" in step


def test_what_a_task_did_before_is_not_told_as_new(models: dict[str, Design]) -> None:
    steps = _steps(models["wharf-crane"], "mast")
    assert steps["bush in housing"].startswith("Done before (press in and size the post bush): ")
    assert not steps["post in bush"].startswith("Done before")


def test_every_joint_is_closed_once(models: dict[str, Design]) -> None:
    for design in models.values():
        done = [name for one in design.assemblies for name in _order(design, one)]
        assert sorted(done) == sorted(design.joints)


def test_the_crane_has_its_picture_and_no_word_runs_over_its_box(
    models: dict[str, Design],
) -> None:
    design = models["wharf-crane"]
    sequence = design.facts.about(BuildSequence, "")
    assert sequence is not None
    drawing = picture(sequence, design)
    assert drawing is not None
    boxes = [one for one in drawing.shapes if isinstance(one, DrawnBox)]
    labels = [one for one in drawing.shapes if isinstance(one, DrawnLabel)]
    assert labels
    widest = max(text_width(one.text, one.height) for one in labels)
    assert widest <= min(box.width for box in boxes)


def test_what_leads_a_drill_or_carries_a_line_of_bores_is_put_together_after_it(
    models: dict[str, Design],
) -> None:
    """The bed is the pedestals' jig and stands under the reamer: common practice, no source."""
    sequence = models["tilt-hammer"].facts.about(BuildSequence, "")
    assert sequence is not None
    (step,) = [one for one in sequence.steps if one.task == "assemble anvil_slide"]
    waits = dict(step.after)
    assert "spotted through it" in waits["make pedestal"]
    assert "put up for the reamer" in waits["line up cam shaft in bushes"]


def test_what_is_spotted_on_wood_has_its_place_at_the_step(models: dict[str, Design]) -> None:
    """The spec's own: the bed 20 from the left, (110 - 50) / 2 = 30 from the front.

    The hangers, 12 wide, have their middles at 40 and 92 from the front: edges at 34 and 86.
    """
    design = models["tilt-hammer"]
    # A drill does not stand between the pedestals: the bare bed is held there for its holes.
    bare = design.facts.about(Route, "pilot bed on base")
    assert bare is not None
    (spotted,) = [act.what for act in bare.acts if act.act == "spot-through"]
    assert spotted.startswith(
        "hold it in its place, its edges 20 mm off the left and 30 mm off the front of the base, "
        "spot in the middle of each slot"
    )
    sequence = design.facts.about(BuildSequence, "")
    assert sequence is not None
    done = [step.task for step in sequence.steps]
    early = done.index("pilot bed on base")
    assert early < min(done.index("assemble anvil_slide"), done.index("assemble line"))
    bed = _steps(design, "tilt_hammer")["bed on base"]
    assert bed.startswith("Back into its own holes, as marked: ")
    # The hangers' holes are made when the line of bores is put up for the reamer.
    route = design.facts.about(Route, "line up line shaft in hanger")
    assert route is not None
    hangers = " ".join(act.what for act in route.acts)
    assert "its edges 34 mm off the front" in hangers
    assert "another's 86 mm off the front" in hangers


def test_a_bracket_is_tightened_when_its_screw_sits_in_what_it_moves(
    models: dict[str, Design],
) -> None:
    """Screwed down first it stands where its holes put it, and the screw binds: common practice,
    no source."""
    closed = _order(models["tilt-hammer"], "anvil_slide")
    last = closed.index("bracket on bed")
    assert closed.index("screw in bracket") < last
    assert closed.index("tip in slide") < last
    assert closed.index("slide on bed") < last


def test_a_ratchet_wheel_is_put_on_by_the_way_its_teeth_look(models: dict[str, Design]) -> None:
    """The tail lies to the left of the cam and goes down: anticlockwise as the front sees it.

    The left-hand end of the shaft, with the pulley, is at the front: clockwise from the other.
    """
    place = _besides(models["tilt-hammer"], "cam_line")["cam on shaft"]
    assert "looking clockwise, seen from the right-hand end of the cam shaft" in place


@pytest.mark.parametrize(("lies", "end"), [("false", "right"), ("true", "left")])
def test_a_ratchet_wheel_under_a_screw_has_its_hand_too(
    compile_text: Compile, lies: str, end: str
) -> None:
    """It goes on either way round, however it is held: common practice, no source."""
    outcome = compile_text(f"""\
format: 1
model: {{title: Trial, issue: A, units: mm}}
parts:
  axle: {{material: silver steel, turned: [{{name: seat, diameter: 6 mm, length: 40 mm}}]}}
  wheel:
    material: mild steel
    ratchet: {{teeth: 12, outside: 28 mm, depth: 2 mm, width: 8 mm}}
    features: {{bore: {{reamed: to suit, depth: through}}}}
joints:
  wheel on axle: {{clamped: [wheel.bore, axle.seat], fastener: about 3 mm grub screw}}
stands: axle
positions:
  wheel: {{reversed: {lies}}}
assemblies:
  whole: {{of: [axle, wheel]}}
""")
    assert outcome.design is not None
    place = _besides(outcome.design, "whole")["wheel on axle"]
    assert f"looking clockwise, seen from the {end}-hand end of the axle" in place


def test_a_belt_across_what_comes_apart_is_off_first_and_on_last(models: dict[str, Design]) -> None:
    """It joins a pulley on the bed to one on the hangers; common practice, no source."""
    hammer = models["tilt-hammer"]
    whole = hammer.assemblies["tilt_hammer"]
    assert [one.name for one in opened(whole, hammer)][-1] == "pulleys"
    off, on = hammer.tasks["strip tilt_hammer"].detail, hammer.tasks["close tilt_hammer"].detail
    assert "first press the belt" in off
    assert "slip it off" in off
    assert on.startswith("last the belt")
    assert "pulleys set in line, and its tension tried" in on
    times = {one.subject: one for one in time_tasks(hammer).facts if isinstance(one, TaskTime)}
    lines = [times[f"{verb} tilt_hammer"].lines for verb in ("strip", "close")]
    assert (lines[0][0].what, lines[1][-1].what) == ("pulleys", "pulleys")


def test_a_belt_between_what_stays_together_stays_on(models: dict[str, Design]) -> None:
    hammer = models["tilt-hammer"]
    joints = hammer.joints
    whole = hammer.assemblies["tilt_hammer"]
    assert not across(whole, [joints["plate on base"]], hammer)
    # The hangers are still on the base, and the bed off it: the belt holds the two together.
    assert across(whole, [joints["bed on base"]], hammer) == [joints["pulleys"]]


def test_the_rope_comes_off_with_what_it_is_led_over(models: dict[str, Design]) -> None:
    crane = models["wharf-crane"]
    assert "let down what hangs on the rope" in crane.tasks["strip crane"].detail
    assert "rope of the barrel on again" in crane.tasks["close crane"].detail


def test_what_was_finished_in_line_goes_back_by_its_marks(models: dict[str, Design]) -> None:
    """Line reaming holds in the place and the way round in which it was done: common practice."""
    hammer, crane = models["tilt-hammer"], models["wharf-crane"]
    for design, whole, bearing, screws in (
        (hammer, "tilt_hammer", "cam shaft in bushes", "pedestals on bed"),
        (crane, "winch", "axle in cheeks", "cheeks on block"),
    ):
        steps = _steps(design, whole)
        assert "each on its own end and its own way round, as marked" in steps[bearing]
        assert steps[screws].startswith("Each in its own place and its own way round, as marked: ")
    assert steps["cheeks on block"].endswith(
        "while the barrel axle and the crank shaft turn freely"
    )
    slide = _steps(hammer, "anvil_slide")["slide under anvil"]
    assert slide.startswith("The same way round as they are marked: ")
    # Nothing was finished together here: no mark is there to go by.
    assert "marked" not in _steps(hammer, "tilt_hammer")["hurst on bed"]


def test_what_is_spotted_is_marked_before_it_comes_off(models: dict[str, Design]) -> None:
    """The step that puts it on goes by those marks; common practice, no source."""
    for design in models.values():
        acts = [act for route in design.facts.all(Route) for act in route.acts]
        spotted = [act for act in acts if "its holes with their own drill" in act.what]
        assert spotted
        for act in spotted:
            assert "mark how" in act.what.partition(", take ")[0]
            assert "punch for the marks" in act.tool


def test_stops_held_by_screws_are_set_when_the_row_is_closed(models: dict[str, Design]) -> None:
    """Between the hubs lie two bushes of 9 and 24 mm of bed; 0.15 is the middle of the float.

    On the line shaft two hangers of 12 and 40 mm lie between; sums by hand from the spec.
    """
    design = models["tilt-hammer"]
    steps = _steps(design, "tilt_hammer")
    names = list(steps)
    assert names.index("float of cam_shaft") > names.index("pedestals on bed")
    assert f"{9 + 24 + 9 + 0.15:.2f} mm from" in steps["float of cam_shaft"]
    assert "not tightened yet" in steps["cam shaft in bushes"]
    line = _steps(design, "line")
    assert list(line)[-1] == "float of line_shaft"
    assert f"{12 + 40 + 12 + 0.15:.2f} mm from" in line["float of line_shaft"]
    # Before its bearings are there nothing tells where a stop goes.
    assert "float of cam_shaft" not in _steps(design, "cam_line")
    # What clips or shoulders stop cannot be set.
    for whole in ("crane", "winch"):
        assert not [name for name in _steps(models["wharf-crane"], whole) if "float of" in name]
