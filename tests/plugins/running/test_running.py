"""Care, the first run and faults: each code at its exact place, and what the pages say."""

from __future__ import annotations

import math
import re
from collections.abc import Callable

import pytest

from binder.compiler import Outcome, Phase
from binder.pages import Binder, Checklist, Section, Subheading, Table, text_of
from binder_plugins.running import codes
from binder_plugins.running.moving import Moving, moving
from binder_plugins.running.oiling import oil_for
from binder_plugins.running.tracing import faults, figures, numbered, remarked
from binder_plugins.running.ways import ways_round
from binder_solid.tripped import trip_words
from tests.plugins.drive.marks import marked

Compile = Callable[..., Outcome]
OWN = {code.name for code in codes.CODES}


def spec(
    *,
    wheel: str = "bronze",
    duty: str = "slow and oiled",
    rpm: int = 60,
    test: str = "",
    mark: str = "run",
) -> str:
    tried = f", test: {test}" if test else ""
    return f"""\
format: 1
model: {{title: Trial, issue: A, units: mm, driven_by: a small motor}}
parts:
  shaft:
    material: silver steel
    stock: round bar
    turned: [{{name: journal, diameter: 6 mm, length: 60 mm}}]
  frame:
    material: {wheel}
    block: {{length: 40 mm, width: 30 mm, height: 9 mm}}
    features:
      bore: {{reamed: to suit, on: top, depth: through}}
      oil: {{drilled: 1.5 mm, on: front, depth: 12 mm}}
  pulley:
    material: aluminium
    turned: [{{name: rim, diameter: 20 mm, length: 8 mm}}]
    features: {{bore: {{reamed: to suit, on: rim, depth: through}}}}
joints:
  {mark}: {{runs_in: [shaft.journal, frame.bore], duty: {duty}}}
  pulley on shaft: {{retained: [pulley.bore, shaft.journal]}}
drive:
  motor: {{turns: [shaft], by: motor, speeds: [{rpm} r/min]}}
assemblies:
  line: {{of: [shaft, frame, pulley]{tried}}}
"""


def belted(mark: str, note: str) -> str:
    """The line with a belt to a second pulley on a shaft of its own."""
    belt = (
        f"  {mark}: {{belted: [pulley, other], belt: round, section: 3 mm, centres: 60 mm, "
        f"diameters: [20 mm, 20 mm], note: {note!r}}}\nassemblies:"
    )
    other = (
        "  other:\n    material: aluminium\n"
        "    turned: [{name: rim, diameter: 20 mm, length: 8 mm}]\njoints:"
    )
    text = spec(test="it spins").replace("joints:", other).replace("assemblies:", belt)
    return text.replace("frame, pulley]", "frame, pulley, other]")


TRIP = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base:
    material: brass
    block: {length: 160 mm, width: 10 mm, height: 60 mm}
    features:
      one: {reamed: to suit, on: front, depth: through, at: "43.3 mm from left, middle"}
  axle:  {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  wheel:
    material: mild steel
    ratchet: {teeth: 4, outside: 28 mm, depth: 6 mm, width: 8 mm}
    features: {bore: {reamed: to suit, depth: through}}
  lever: {material: brass, block: {length: 120 mm, width: 8 mm, height: 9 mm}}
joints:
  axle in base:  {runs_in: [axle.journal, base.one], duty: slow and oiled}
  wheel on axle: {retained: [wheel.bore, axle.journal]}
drive:
  hand:  {turns: [axle], by: hand, speeds: [60 r/min]}
  helve: {trips: [wheel, lever], lifts: 4, lift: 6 mm, reach: 80 mm}
stands: base
positions:
  wheel: LIES
  lever: {at: "2 mm left of wheel, middle of wheel"}
"""


CASES = {
    "oil-swells-wood": (
        spec(wheel="oak", mark="⟪run⟫", test="it spins"),
        spec(wheel="oak", duty="runs dry", test="it spins"),
    ),
    # π × 6 mm × 1200 / 60 s = 0.38 m/s
    "dry-and-fast": (
        spec(wheel="mild steel", duty="runs dry", rpm=1200, mark="⟪run⟫", test="it spins"),
        spec(wheel="sintered bronze", duty="runs dry", rpm=1200, test="it spins"),
    ),
    "grease-on-sintered": (
        spec(wheel="sintered bronze", duty="slow and greased", mark="⟪run⟫", test="it spins"),
        spec(wheel="bronze", duty="slow and greased", test="it spins"),
    ),
    "oil-on-friction": (
        belted("⟪belt⟫", "a drop of oil on the belt"),
        belted("belt", "soiled belts slip: wipe it with spirit"),
    ),
    "trip-wheel-wrong-way": (
        TRIP.replace("LIES", "{reversed: true}").replace("  helve:", "  ⟪helve⟫:"),
        TRIP.replace("LIES", "{}"),
    ),
    "test-missing": (spec().replace("  line:", "  ⟪line⟫:"), spec(test="it spins")),
}


@pytest.mark.parametrize("code", sorted(CASES))
def test_found_at_its_place_and_not_once_mended(code: str, compile_text: Compile) -> None:
    text, place = marked(CASES[code][0])
    found = [one for one in compile_text(text).findings if one.code.name == code]
    assert [(one.span.line, one.span.column, one.span.end_column) for one in found] == [place]
    mended = {one.code.name for one in compile_text(CASES[code][1]).findings}
    assert not mended & OWN


def test_every_code_has_a_case() -> None:
    # An upright shaft wants a model that is put together: its case is in test_crane_run.
    assert set(CASES) == OWN - {"weight-on-bare-end"}


def joint_in(outcome: Outcome) -> Moving:
    assert outcome.design is not None
    (found,) = moving(outcome.design)
    return found


def test_rubbing_is_the_way_of_the_journal_in_a_second(compile_text: Compile) -> None:
    found = joint_in(compile_text(spec(rpm=600)))
    assert found.rpm == pytest.approx(600)
    assert found.rubbing == pytest.approx(math.pi * 0.006 * 10)
    assert found.way_in == "oil hole of the frame"


@pytest.mark.parametrize(
    ("wheel", "duty", "rpm", "what"),
    [
        ("bronze", "slow and oiled", 60, "VG 68 to 100"),  # 0.02 m/s
        ("bronze", "runs", 600, "VG 32 to 46"),  # 0.19 m/s
        ("bronze", "runs", 3000, "VG 10 to 22"),  # 0.94 m/s
        ("sintered bronze", "runs", 3000, "soaked"),
        ("oak", "runs", 60, "wax"),
        ("bronze", "runs dry", 60, "graphite"),
    ],
)
def test_oil_by_kind_speed_and_material(
    compile_text: Compile, wheel: str, duty: str, rpm: int, what: str
) -> None:
    oil = oil_for(joint_in(compile_text(spec(wheel=wheel, duty=duty, rpm=rpm))))
    assert oil is not None
    assert what in oil.what


def test_a_fault_leads_to_the_joints_that_can_have_it(compile_text: Compile) -> None:
    design = compile_text(spec()).design
    assert design is not None
    joints = numbered(design)
    assert [one.name for one in joints] == ["run", "pulley on shaft"]
    found = {one.sign: one.causes for one in faults(joints, design)}
    (knock, loose) = found["It knocks or rattles"]
    assert (knock.numbers, loose.numbers) == ((1,), (2,))
    assert not any("tooth" in cause.look for causes in found.values() for cause in causes)


def section(outcome: Outcome, name: str) -> Section:
    assert isinstance(outcome.binder, Binder)
    (found,) = [one for one in outcome.binder.sections if one.id == name]
    return found


def lines_of(text: str, compile_text: Compile) -> list[str]:
    """The lines to tick of the first run."""
    page = section(compile_text(text, Phase.COMPOSE), "first-run")
    found = [one for one in page.blocks if isinstance(one, Checklist)]
    return [text_of(tick.text) for one in found for tick in one.checks]


def test_a_model_worked_by_hand_is_asked_for_no_speed_and_no_hardware(
    compile_text: Compile,
) -> None:
    """Common practice, no source: a third of no speed, and a table of none, are not there."""
    text = spec(test="it spins").replace("a small motor", "hand")
    still = text.replace("drive:\n  motor: {turns: [shaft], by: motor, speeds: [60 r/min]}\n", "")
    lines = " ".join(lines_of(still, compile_text))
    for word in ("third of the speed", "table below", "grub", "nut", "clip", "tooth"):
        assert word not in lines
    powered = " ".join(lines_of(spec(test="it spins"), compile_text))
    assert "third of the speed" in powered
    assert "table below" in powered


def test_the_first_run_holds_the_tests_and_only_what_applies(compile_text: Compile) -> None:
    page = section(compile_text(spec(test="it spins on"), Phase.COMPOSE), "first-run")
    lines = [
        text_of(tick.text)
        for block in page.blocks
        if isinstance(block, Checklist)
        for tick in block.checks
    ]
    assert "Line: it spins on." in lines
    assert any("switch" in line for line in lines)  # it has a motor
    assert not any("steam" in line or "pawl" in line for line in lines)


def test_limits_stand_beside_the_boxes(compile_text: Compile) -> None:
    page = section(compile_text(spec(duty="runs"), Phase.COMPOSE), "first-run")
    (tracing,) = page.sections
    table = next(one for one in tracing.blocks if isinstance(one, Table))
    # H8/f7 at 6 mm, the shaft made to the bore: 10 to 34 µm (ISO 286-2), 22 in the middle.
    assert text_of(table.rows[0][2]) == "0.010 to 0.034 mm, by making"
    assert text_of(table.rows[0][3]) == "____ mm"


def test_what_does_not_move_has_no_page(compile_text: Compile) -> None:
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
        "parts:\n  pin: {material: brass, stock: 6 mm drawn rod, cut: 40 mm}\n"
    )
    outcome = compile_text(text, Phase.COMPOSE)
    assert isinstance(outcome.binder, Binder)
    assert not {"care", "first-run"} & {one.id for one in outcome.binder.sections}


def test_the_whole_is_tried_at_its_work_last(compile_text: Compile) -> None:
    """By hand, slowly, empty, then with load: common practice, no source."""
    whole = "  whole: {of: [line], test: it lifts its load}\n"
    page = section(compile_text(spec(test="it spins on") + whole, Phase.COMPOSE), "first-run")
    titles = [text_of(one.text) for one in page.blocks if isinstance(one, Subheading)]
    assert titles == [
        "Before anything turns",
        "Each by itself",
        "By hand, then slowly",
        "Running in, then load",
        "At its work",
        "How fast, and which way round",
    ]


@pytest.mark.parametrize(
    ("kind", "way"),
    [
        (
            "drilled: 1.5 mm, across: outside, at: 4 mm from left, depth: 3 mm",
            "oil hole of the frame",
        ),
        ("grooved: 1 mm, on: outside, depth: 0.5 mm", "at the ends"),
    ],
)
def test_an_oil_hole_that_ends_at_the_bush_is_no_way_in(
    compile_text: Compile, kind: str, way: str
) -> None:
    """Both walls are drilled, or no oil comes to the shaft: common practice, no source."""
    bush = (
        "  bush:\n    material: bronze\n"
        "    turned: [{name: outside, diameter: 9 mm, length: 9 mm}]\n    features:\n"
        "      bore: {reamed: to suit, on: outside, depth: through}\n"
        f"      oil: {{{kind}}}\n  pulley:\n"
    )
    text = spec().replace("  pulley:\n", bush, 1)
    text = text.replace("frame.bore]", "bush.bore]").replace(
        "drive:\n", "  bush in frame: {pressed: [bush.outside, frame.bore]}\ndrive:\n"
    )
    assert joint_in(compile_text(text)).way_in == way


def figures_of(text: str, compile_text: Compile) -> tuple[Outcome, dict[str, str]]:
    """What the drive should measure, by joint and name."""
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.design is not None
    found = figures(numbered(outcome.design), outcome.design)
    return outcome, {one.fact.what: one.fact.should for one in found}


def test_a_belt_is_traced_by_its_length_and_wrap(compile_text: Compile) -> None:
    """Two pulleys of 20 mm, 60 mm apart: 2 × 60 + 20 π = 182.8 mm, and half round each."""
    outcome, found = figures_of(belted("belt", "dry"), compile_text)
    assert found["length of the belt"] == "182.8 mm"
    assert found["wrap on the small pulley"].startswith("180°")
    page = section(outcome, "first-run")
    (tracing,) = page.sections
    (slips,) = (
        row
        for block in tracing.blocks
        if isinstance(block, Table)
        for row in block.rows
        if "creeps" in text_of(row[1])
    )
    # The mark of the figure stands beside the joint that it belongs to.
    joint = text_of(slips[0]).split(";")[0]
    assert f"measure {joint}a" in text_of(slips[0])


GEARS = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  frame: {material: brass, block: {length: 60 mm, width: 20 mm, height: 9 mm}}
  pinion: {material: brass, gear: {module: 1 mm, teeth: 20, width: 6 mm}}
  wheel: {material: brass, gear: {module: 1 mm, teeth: 40, width: 6 mm}}
drive:
  hand: {turns: [pinion], by: hand, speeds: [40 r/min]}
  mesh: {meshes: [pinion, wheel], teeth: [20, 40], module: 1 mm}
"""


def test_growling_gears_are_traced_by_their_centres(compile_text: Compile) -> None:
    """1 × (20 + 40) / 2 = 30 mm (ISO 21771), and no play where none is told."""
    outcome, found = figures_of(GEARS, compile_text)
    assert outcome.design is not None
    centre = next(value for name, value in found.items() if name.startswith("centre distance"))
    play = next(value for name, value in found.items() if name.startswith("play of the teeth"))
    # The centres are wider than 30 by what gives the play: play = 2 × tan 20° × the widening.
    wider = float(centre.split(" ")[0]) - 30
    assert float(play.split(" ")[0]) == pytest.approx(
        2 * math.tan(math.radians(20)) * wider, abs=2e-3
    )
    signs = {one.sign for one in faults(numbered(outcome.design), outcome.design)}
    assert "The gears growl or whine" in signs
    assert "The hammer strikes weakly, or misses a blow" not in signs


def test_what_has_been_remarked_of_a_joint_is_looked_at_first(compile_text: Compile) -> None:
    text = belted("belt", "a drop of oil on the belt")
    outcome = compile_text(text)
    assert outcome.design is not None
    found = remarked(numbered(outcome.design), outcome.findings)
    assert "oil-on-friction" in {one.code.name for _, one in found}


@pytest.mark.parametrize(
    ("drive", "back"),
    [
        ("helve: {trips: [pulley, lever], lifts: 4, lift: 3 mm}", "only the way it runs"),
        ("pawl: {ratchets: [pulley, lever], teeth: 12}", "back only with the pawl lifted"),
        ("", "forwards and back"),
    ],
)
def test_a_trip_or_ratchet_is_never_turned_back_in_gear(
    compile_text: Compile, drive: str, back: str
) -> None:
    """A tooth that comes at the lever or pawl from behind locks: common practice, no source."""
    lever = "  lever: {material: brass, block: {length: 40 mm, width: 8 mm, height: 6 mm}}\n"
    text = spec().replace("joints:\n", f"{lever}joints:\n")
    text = text.replace("assemblies:\n", f"  {drive}\nassemblies:\n")
    page = section(compile_text(text, Phase.COMPOSE), "first-run")
    lines = [text_of(tick.text) for one in page.blocks if isinstance(one, Checklist)
             for tick in one.checks]  # fmt: skip
    (turned,) = [line for line in lines if line.startswith("Turn it over")]
    assert back in turned


@pytest.mark.parametrize("at", ["left", "right"])
def test_the_way_round_is_that_of_the_trip_wheel_as_it_stands(
    compile_text: Compile, at: str
) -> None:
    """The wheel beside the tail takes it down: on its right clockwise, on its left the other way.

    Geometry: seen from the front, what moves down at the right of an axis goes clockwise. The
    stopping faces of a wheel that lies along its shaft look clockwise from its own right, and
    with the wheel put on reversed from its left.
    """
    lies = {"left": "{}", "right": "{reversed: true}"}[at]
    outcome = compile_text(TRIP.replace("LIES", lies))
    assert outcome.design is not None
    way = {"left": "anticlockwise, from the front", "right": "clockwise, from the front"}[at]
    assert list(ways_round(outcome.design).values()) == [way]


@pytest.mark.parametrize(("lies", "down"), [("{}", False), ("{reversed: true}", True)])
def test_a_tripped_lever_is_told_which_way_it_goes(
    compile_text: Compile, lies: str, *, down: bool
) -> None:
    """Geometry: at the right of an axis, from the front, what turns clockwise goes down.

    The lever begins 2 mm left of the wheel and lies 120 mm to the right: its far end is there.
    """
    text = TRIP.replace("LIES", lies).replace("2 mm left of wheel", "12 mm right of wheel")
    design = compile_text(text).design
    assert design is not None
    words = trip_words(design.joints["helve"], design)
    turns = "clockwise" if down else "anticlockwise"
    how = "presses the lever down" if down else "lifts the lever"
    assert words == (
        f"; the wheel turns {turns}, from the front, and {how} where it takes it, "
        "on the right of the wheel"
    )


@pytest.mark.parametrize("at", ["left", "right"])
def test_a_pawl_tells_the_way_round_as_well(compile_text: Compile, at: str) -> None:
    """Geometry: teeth slip under a pawl the way that their stopping faces do not look.

    It is the other way round than that of the same wheel where it trips a lever.
    """
    lies = {"left": "{}", "right": "{reversed: true}"}[at]
    held = re.sub(r"\{trips: \[wheel, (\w+)\].*\}", r"{ratchets: [wheel, \1]}", TRIP)
    assert "ratchets" in held
    outcome = compile_text(held.replace("LIES", lies))
    assert outcome.design is not None
    way = {"left": "clockwise, from the front", "right": "anticlockwise, from the front"}[at]
    assert list(ways_round(outcome.design).values()) == [way]


def test_where_nothing_tells_the_way_the_driver_is_not_told_by_itself(
    compile_text: Compile,
) -> None:
    """The hand may turn it either way: what goes by the driver is every other shaft."""
    page = section(compile_text(spec(), Phase.COMPOSE), "first-run")
    (table,) = [one for one in page.blocks if isinstance(one, Table)]
    ways = [text_of(row[2]) for row in table.rows]
    assert "it drives; the others go by it" in ways
    assert "as the driver" not in ways[:1]


@pytest.mark.parametrize("is_clipped", [True, False])
def test_a_pin_that_clips_keep_is_no_slide(compile_text: Compile, *, is_clipped: bool) -> None:
    """It is pushed in and stays: no end of travel, no slideway oil. Common practice, no source."""
    clips = "  clips: {clipped: [jib.head, pin.grooves], fastener: 4 mm external circlip}\n"
    text = (
        "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
        "  jib: {material: mild steel, plate: {length: 20 mm, width: 16 mm, thickness: 6 mm},"
        " features: {head: {reamed: to suit, depth: through, at: middle}}}\n"
        "  pin:\n    material: silver steel\n    stock: drawn rod\n"
        "    turned: [{name: journal, diameter: 4 mm, length: 10 mm}]\n"
        "joints:\n  pin in jib: {slides: [pin.journal, jib.head]}\n"
        f"{clips if is_clipped else ''}"
        "assemblies:\n  head: {of: [jib, pin], test: it goes in}\n"
    )
    outcome = compile_text(text)
    assert outcome.design is not None
    told = [one.joint.name for one in moving(outcome.design)]
    assert told == ([] if is_clipped else ["pin in jib"])


def test_a_trip_hammer_without_a_stop_is_told_of_none(compile_text: Compile) -> None:
    outcome = compile_text(TRIP.replace("LIES", "{}"))
    assert outcome.design is not None
    joints = numbered(outcome.design)
    said = [
        cause.cure
        for each in faults(joints, outcome.design)
        if each.sign == "It knocks or rattles"
        for cause in each.causes
        if "helve" in {joints[n - 1].name for n in cause.numbers}
    ]
    assert len(said) == 1
    assert "run slower" in said[0]
    assert "stop" not in said[0]
