"""Speeds, ways round and torques of whole trains, against worked examples of textbooks."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from binder.api import DrawnLabel, Picture, TrainFact, TurningFact
from binder.compiler import Outcome
from binder_plugins.drive.duties.duty import DutyFact
from binder_plugins.drive.pairs.facts import BeltFact, MeshFact, ToothFact
from binder_plugins.drive.pictures.diagram import diagram_of
from binder_plugins.drive.train.solving import Speeds
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
FIXED = "  b on c: {glued: [b, c]}\n"


def turning(outcome: Outcome, name: str) -> TurningFact:
    assert outcome.design is not None
    found = [one for one in outcome.design.facts.all(TurningFact) if name in one.items]
    assert len(found) == 1, [one.message for one in outcome.findings]
    return found[0]


@pytest.mark.parametrize(("slip", "speed", "near"), [("0", 1500, 0.5), ("0.02", 1440, 1)])
def test_a_compound_belt_drive(compile_text: Compile, slip: str, speed: int, near: float) -> None:
    """Khurmi and Gupta, Theory of Machines, example 11.1: 150 r/min, 750/450 and 900/150 mm."""
    outcome = compile_text(
        spec(
            "a b c d",
            "engine: {turns: [a], by: engine, speeds: [150 r/min]}",
            f"first: {{belted: [a, b], diameters: [750 mm, 450 mm], slip: {slip}}}",
            f"second: {{belted: [c, d], diameters: [900 mm, 150 mm], slip: {slip}}}",
            joints=FIXED,
        )
    )
    assert turning(outcome, "d").speeds[0] == pytest.approx(speed, abs=near)


def test_a_compound_train_of_gears(compile_text: Compile) -> None:
    """Wentzell, Machine Design, example 11.1: 3600 r/min, 60/20 twice, gives 400 r/min."""
    outcome = compile_text(
        spec(
            "a b c d",
            "motor: {turns: [a], by: motor, speeds: [3600 r/min]}",
            "first: {meshes: [a, b], teeth: [20, 60], module: 1 mm}",
            "second: {meshes: [c, d], teeth: [20, 60], module: 1 mm}",
            joints=FIXED,
        )
    )
    assert turning(outcome, "d").speeds == (400,)
    assert turning(outcome, "b").speeds == (-1200,)


@pytest.mark.parametrize(
    ("teeth", "held", "turned", "speed"),
    [
        # Khurmi and Gupta, example 13.9: sun 14, ring 56 held: the arm turns at a fifth.
        ([14, 21, 56], "ring", "arm", 12),
        # Willis: arm held, the ring turns the other way at z sun / z ring (same train).
        ([14, 21, 56], "arm", "ring", -15),
    ],
)
def test_a_planetary_train(
    compile_text: Compile, teeth: list[int], held: str, turned: str, speed: int
) -> None:
    outcome = compile_text(
        spec(
            "a planet ring arm",
            HAND,
            f"reducer: {{orbits: [a, planet, ring, arm], teeth: {teeth}, held: {held}}}",
        )
    )
    assert turning(outcome, turned).speeds == (speed,)


@pytest.mark.parametrize(
    ("line", "speed"),
    [
        ("x: {meshes: [a, b], teeth: [20, 40], module: 1 mm}", -30),
        ("x: {meshes: [a, b], teeth: [20, 80], module: 1 mm, internal: true}", 15),
        ("x: {meshes: [a, c, b], teeth: [20, 33, 40], module: 1 mm}", 30),
        ("x: {belted: [a, b], diameters: [20 mm, 40 mm]}", 30),
        ("x: {belted: [a, b], diameters: [20 mm, 40 mm], crossed: true}", -30),
        ("x: {belted: [a, b], belt: toothed, teeth: [10, 40], section: 2.032 mm}", 15),
        ("x: {chained: [a, b], teeth: [10, 30], pitch: 6 mm}", 20),
        ("x: {rubs: [a, b], diameters: [10 mm, 30 mm]}", -20),
        ("x: {worms: [a, b], starts: 2, teeth: 40, module: 1 mm}", 3),
        ("x: {indexes: [a, b], slots: 4}", -15),
        ("x: {bevels: [a, b], teeth: [20, 30], module: 1 mm}", 40),
    ],
)
def test_each_drive_turns_the_next_shaft(compile_text: Compile, line: str, speed: int) -> None:
    """The ratio of teeth or diameters; outside teeth and crossed belts turn the other way."""
    outcome = compile_text(spec("a b c", HAND, line))
    assert turning(outcome, "b").speeds[0] == pytest.approx(speed)


def test_every_setting_is_told(compile_text: Compile) -> None:
    """Two speeds of the motor by three steps: six settings, by the quotients of the diameters."""
    outcome = compile_text(
        spec(
            "a b",
            "motor: {turns: [a], by: motor, speeds: [60 r/min, 120 r/min]}",
            "x: {belted: [a, b], steps: [[20 mm, 40 mm], [30 mm, 30 mm], [40 mm, 20 mm]]}",
        )
    )
    assert turning(outcome, "b").speeds == (30, 60, 120, 60, 120, 240)
    assert outcome.design is not None
    train = outcome.design.facts.about(TrainFact, "")
    assert train is not None
    assert train.settings[0] == "60 r/min; step 1"


def test_the_crane_as_reckoned_by_hand(compile_text: Compile) -> None:
    """1 kg on a drum of 20 mm with a rope of 2: 9.80665 x 11 = 107.873 N mm; through 18:54 that
    is 35.958 at the crank, over 0.96 for the teeth and 0.96 for the bearings of each of the two
    shafts 40.642."""
    outcome = compile_text(
        spec(
            "a b",
            HAND,
            "x: {meshes: [a, b], teeth: [18, 54], module: 0.5 mm}",
            "rope: {winds: [b, cord], diameter: 20 mm, rope: 2 mm, load: 1 kg}",
            more="bought:\n  cord: {what: braided cord}\n",
        )
    )
    assert turning(outcome, "b").torques[0] == pytest.approx(107.873, abs=0.001)
    assert turning(outcome, "a").torques[0] == pytest.approx(40.642, abs=0.001)


# On a loaded machine the first draw alone may take a second.
@settings(suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(st.lists(st.tuples(st.integers(1, 60), st.integers(1, 60)), min_size=1, max_size=12))
def test_a_chain_of_ratios_is_their_product(pairs: list[tuple[int, int]]) -> None:
    """The product rule of trains, exactly; what closes the ring at that ratio agrees."""
    solved = Speeds()
    solved.add((("s0", Fraction(1)),), Fraction(60))
    product = Fraction(60)
    for number, (driver, driven) in enumerate(pairs):
        solved.add(((f"s{number}", Fraction(driver)), (f"s{number + 1}", Fraction(driven))))
        product *= Fraction(-driver, driven)
    last = f"s{len(pairs)}"
    assert solved.known()[last] == product
    ring = ((last, Fraction(60)), ("s0", -product))
    assert solved.add(ring) == "known"
    assert solved.add(((last, Fraction(60)), ("s0", -product - 1))) == "against"


def test_stepped_pulleys_from_their_ratios(compile_text: Compile) -> None:
    """Khurmi and Gupta, example 11.3, solved exactly for an open belt (no series): 160 r/min to
    60, 80, 100; smallest radius 40, 720 mm apart: radii 49.1876, 98.3753, 56.9678, 91.1485."""
    outcome = compile_text(
        spec(
            "a b",
            "engine: {turns: [a], by: engine, speeds: [160 r/min]}",
            "x: {belted: [a, b], ratios: [0.375, 0.5, 0.625], smallest: 80 mm, centres: 720 mm}",
        )
    )
    assert outcome.design is not None
    belt = outcome.design.facts.about(BeltFact, "x")
    assert belt is not None
    found = [size / 2 for run in belt.runs for size in (run.first_mm, run.second_mm)]
    wanted = [40, 106.6667, 49.1876, 98.3753, 56.9678, 91.1485]
    assert found == pytest.approx(wanted, abs=1e-3)
    assert belt.apart < 0.01
    assert turning(outcome, "b").speeds == pytest.approx((60, 80, 100), abs=0.01)


def test_wheels_made_twice_do_not_join_their_shafts(compile_text: Compile) -> None:
    """Two shafts that each have one of two equal wheels are two bodies; spokes join rim and hub."""
    on_both = compile_text(
        spec(
            "a b",
            HAND,
            "x: {meshes: [a, shaft_1], teeth: [20, 40], module: 1 mm}",
            "y: {meshes: [shaft_1, shaft_2], teeth: [40, 20], module: 1 mm}",
            parts="".join(
                f"  {name}: {{material: brass{more}, disc: {{diameter: 30 mm, thickness: 4 mm}}}}\n"
                for name, more in (("w", ", quantity: 2"), ("shaft_1", ""), ("shaft_2", ""))
            ),
            joints="  j1: {glued: [w, shaft_1]}\n  j2: {glued: [w, shaft_2]}\n",
        )
    )
    assert turning(on_both, "shaft_1").speeds == (-30,)
    assert turning(on_both, "shaft_2").speeds == (60,)


def test_spokes_join_a_rim_to_its_hub(compile_text: Compile) -> None:
    outcome = compile_text(
        spec(
            "a rim hub",
            HAND,
            "x: {rubs: [a, rim], diameters: [20 mm, 40 mm]}",
            parts="  spoke: {material: brass, quantity: 6, "
            "disc: {diameter: 3 mm, thickness: 40 mm}}\n",
            joints="  j1: {glued: [spoke.top, rim.top]}\n  j2: {glued: [spoke.underside, hub]}\n",
        )
    )
    assert turning(outcome, "hub").speeds == (-30,)


@pytest.mark.parametrize(
    ("outside", "teeth", "module"),
    # (z + 2) m and (z + 2) 25.4 / DP, full depth: 52 and 24 is module 2; 26 / 24 in is 24 DP.
    [("52 mm", 24, 2), ("27.517 mm", 24, 25.4 / 24)],
)
def test_what_meshes_with_a_salvaged_gear_follows(
    compile_text: Compile, outside: str, teeth: int, module: float
) -> None:
    outcome = compile_text(
        spec(
            "a",
            HAND,
            f"x: {{meshes: [a, found], teeth: [20, {teeth}]}}",
            more=f"scrap_box:\n  found: {{what: wheel, sizes: {{outside: {outside}}}}}\n",
        )
    )
    assert outcome.design is not None
    tooth = outcome.design.facts.about(ToothFact, "a")
    mesh = outcome.design.facts.about(MeshFact, "x: 1")
    assert tooth is not None
    assert mesh is not None
    assert tooth.gear.module_mm == pytest.approx(module, abs=1e-4)
    assert mesh.mesh is not None
    assert mesh.mesh.reference_mm == pytest.approx(module * (20 + teeth) / 2, abs=1e-3)


FEED = """
  screw:
    material: mild steel
    turned: [{name: rod, diameter: 4 mm, length: 40 mm}]
    features: {thread: {screwed: M4, on: rod, length: 36 mm}}
  slide:
    material: brass
    block: {length: 34 mm, width: 24 mm, height: 8 mm}
    features: {nut: {tapped: M4, on: left, depth: 12 mm}}
"""


def test_a_feed_screw_and_its_dial(compile_text: Compile) -> None:
    """M4 has a pitch of 0.7 mm (ISO 261): 14 divisions of 0.05 mm; 16 mm are 22 turns and 12."""
    outcome = compile_text(
        spec(
            "",
            "x: {feeds: [screw], divisions: 14, travel: 16 mm, clockwise: toward}",
            parts=FEED.lstrip("\n"),
            joints="  leads: {leads: [screw.thread, slide.nut]}\n",
        )
    )
    assert outcome.design is not None
    duty = outcome.design.facts.about(DutyFact, "x")
    assert duty is not None, [one.message for one in outcome.findings]
    assert duty.rows == (
        ("Travel for a turn", "0.7 mm"),
        ("For a division", "0.05 mm, of 14"),
        ("From end to end", "22 turns and 12 divisions"),
        ("Turned clockwise", "it comes to the hand"),
    )


def test_a_chain_of_whole_links(compile_text: Compile) -> None:
    """Bhandari, Design of Machine Elements, example 14.3: 21 and 63 teeth, 12.7 mm, about 500 mm:
    121.875 links, 122 taken, at 500.805 mm."""
    outcome = compile_text(
        spec(
            "a b",
            HAND,
            "x: {chained: [a, b], teeth: [21, 63], pitch: 12.7 mm, centres: 500 mm}",
        )
    )
    assert outcome.design is not None
    duty = outcome.design.facts.about(DutyFact, "x")
    assert duty is not None
    rows = dict(duty.rows)
    assert rows["Links"].startswith("122; 121.8")
    assert rows["Centres for them"] == "500.8 mm"


def test_the_speed_of_a_chain_and_its_corners(compile_text: Callable[..., Outcome]) -> None:
    """12 teeth of 8 mm at 60 r/min run 12 × 8 × 60 / 60 000 = 0.096 m/s; 1 − cos(180° / 12) = 3.4 %
    and 1 − cos(180° / 30) = 0.5 % (polygon effect, any handbook of chains)."""
    outcome = compile_text(spec("a b", HAND, "y: {chained: [a, b], teeth: [12, 30], pitch: 8 mm}"))
    assert outcome.design is not None
    duty = outcome.design.facts.about(DutyFact, "y")
    assert duty is not None
    rows = dict(duty.rows)
    assert rows["Chain runs"] == "0.096 m/s"
    assert "3.4% over the corners of 12 teeth, by 0.5% over those of 30" in rows["Rises and falls"]


def test_the_diagram_tells_the_ratio_of_every_step(compile_text: Callable[..., Outcome]) -> None:
    line = "y: {belted: [a, b], ratios: [0.5, 1, 2], smallest: 20 mm, centres: 200 mm}"
    design = compile_text(spec("a b", HAND, line)).design
    assert design is not None
    train = design.facts.about(TrainFact, "")
    assert train is not None
    (picture,) = diagram_of(train, design)
    assert isinstance(picture, Picture)
    words = [one.text for one in picture.drawing.shapes if isinstance(one, DrawnLabel)]
    assert [one for one in words if one.startswith("step")] == [
        "step 1   1 : 2", "step 2   1 : 1", "step 3   2 : 1",
    ]  # fmt: skip
