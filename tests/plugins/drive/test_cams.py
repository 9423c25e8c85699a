"""Cams in a spec: by arcs, by radii, by a law; their part, their table, and what is refused."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder.compiler import Outcome
from binder_plugins.drive.cams.made import made_cam
from binder_plugins.drive.cams.table import table_of
from binder_plugins.drive.duties.duty import DutyFact
from binder_solid.facts import ContourFact, FlatFact, FormFact
from binder_solid.lines import least_and_most
from tests.plugins.drive.marks import marked
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
TURNED = HAND.replace("[a]", "[eccentric]")
PART = "  eccentric: {material: mild steel, cam: {width: 8 mm, hub: 12 mm, hub_length: 6 mm}}\n"
ARCS = "x: {cams: [eccentric, b], lift: 6 mm, base: 40 mm, nose: 6 mm, follower: %s}"
# A pointed follower on radii that rise by 4 mm over 90° and fall again, at rest elsewhere.
LIFTS = {0: 0.0, 30: 1.0, 60: 3.0, 90: 4.0, 120: 3.0, 150: 1.0, 180: 0.0, 240: 0.0, 300: 0.0}
RADII = ", ".join(f"{{at: {at} deg, radius: {20 + up} mm}}" for at, up in LIFTS.items())
DRAWN = f"x: {{cams: [eccentric, b], follower: pointed, radii: [{RADII}]}}"


def made(line: str, compile_text: Compile) -> Outcome:
    return compile_text(spec("b", TURNED, line, parts=PART))


def form_of(outcome: Outcome) -> FormFact:
    assert outcome.design is not None
    fact = outcome.design.facts.about(FormFact, "eccentric")
    assert fact is not None, [(one.code.name, one.message) for one in outcome.findings]
    return fact


def test_the_contour_of_arcs_and_flats_is_in_the_part(compile_text: Compile) -> None:
    """Base circle 40 and 6 mm of lift: 20 mm one way, 26 the other, 20 across; hub 6 behind 8."""
    outcome = made(ARCS % "pointed", compile_text)
    form = form_of(outcome)
    assert form.size[0] == 14
    assert outcome.design is not None
    contour = outcome.design.facts.about(ContourFact, "eccentric")
    assert contour is not None
    (low, aside), (high, beside) = least_and_most(contour.outline)
    assert (low, high) == pytest.approx((-26, 20), abs=1e-6)
    assert (aside, beside) == pytest.approx((-20, 20), abs=1e-6)
    assert contour.reach_mm == pytest.approx(26)
    # Two arcs of the base circle, two flats, a nose.
    assert len(contour.outline.segments) == 5


def test_the_template_is_the_cam_as_its_plain_face_is_seen(compile_text: Compile) -> None:
    """The nose stands opposite to the rest, which is up; 46 mm high and 40 wide."""
    outcome = made(ARCS % "pointed", compile_text)
    assert outcome.design is not None
    flats = outcome.design.facts.about(FlatFact, "eccentric")
    assert flats is not None
    (left, foot), (right, top) = least_and_most(flats.flats[0].outline)
    assert (right - left, top - foot) == pytest.approx((40, 46), abs=1e-6)
    assert (foot, top) == pytest.approx((0, 46), abs=1e-4)


def test_the_table_by_hand(compile_text: Compile) -> None:
    """At its rest 20, 20 + 5; at the nose 26, 26 + 5. On the flank, 10° past its foot under a
    roller of 10 (25 of arm): 25 (sec 10° − 1) = 0.386 of lift (tangent cam, Khurmi, from memory).
    The foot stands at 180° − acos((20 − 6) / 20) = 134.427°."""
    outcome = made((ARCS % "roller").replace("}", ", roller: 10 mm}"), compile_text)
    assert outcome.design is not None
    cam = made_cam(outcome.design.joints["x"])
    places = {one.angle_deg: one for one in table_of(cam)}
    assert (places[0].radius_mm, places[0].setting_mm) == pytest.approx((20, 25))
    assert (places[180].radius_mm, places[180].setting_mm) == pytest.approx((26, 31))
    turn = 140 - (180 - math.degrees(math.acos(0.7)))
    arm = 25 / math.cos(math.radians(turn))
    assert places[140].setting_mm == pytest.approx(arm, abs=1e-3)
    # The flat itself is 20 from the middle at its foot, and further as the secant.
    flat = 20 / math.cos(math.radians(turn))
    assert places[140].radius_mm == pytest.approx(flat, abs=1e-3)


def test_a_cam_by_its_radii(compile_text: Compile) -> None:
    outcome = made(DRAWN, compile_text)
    assert outcome.design is not None
    assert form_of(outcome).size[0] == 14
    cam = made_cam(outcome.design.joints["x"])
    assert cam.base_mm == pytest.approx(20)
    assert cam.motion.lift_mm == pytest.approx(4, abs=1e-6)
    found = {one.angle_deg: one.lift_mm for one in table_of(cam)}
    assert {at: found[at] for at in LIFTS} == pytest.approx(LIFTS, abs=1e-6)


def test_a_cam_by_a_law_is_cut_too(compile_text: Compile) -> None:
    """A flat follower at rest stands on the base circle; at the top 6 mm further out."""
    outcome = made("x: {cams: [eccentric, b], lift: 6 mm, base: 40 mm, dwell: 20 deg, law: "
                   "cycloidal}", compile_text)  # fmt: skip
    assert outcome.design is not None
    contour = outcome.design.facts.about(ContourFact, "eccentric")
    assert contour is not None
    assert contour.reach_mm == pytest.approx(26, abs=1e-3)
    (low, _), (high, _) = least_and_most(contour.outline)
    assert high - low == pytest.approx(
        20 + max(
            radius * -math.cos(math.radians(one.angle_deg))
            for one in table_of(made_cam(outcome.design.joints["x"]), 1)
            if (radius := one.radius_mm)
        ), abs=0.01,
    )  # fmt: skip


def test_the_page_tells_speed_and_push_at_the_shaft(compile_text: Compile) -> None:
    """60 r/min is 2 π rad/s: mm/rad times that, mm/rad² times its square."""
    outcome = made(ARCS % "roller", compile_text)
    assert outcome.design is not None
    duty = outcome.design.facts.about(DutyFact, "x")
    assert duty is not None
    rows, motion = dict(duty.rows), made_cam(outcome.design.joints["x"]).motion
    speed = float(rows["Follower's most speed"].split()[0])
    push = float(rows["Most acceleration"].split()[0])
    assert speed == pytest.approx(motion.most_speed * 2 * math.pi, rel=5e-3)
    assert push == pytest.approx(motion.most_acceleration * (2 * math.pi) ** 2 / 1000, rel=5e-3)
    assert [one.unit for one in duty.curves] == ["mm", "mm/rad", "mm/rad²"]


@pytest.mark.parametrize(
    ("code", "line"),
    [
        ("cam-impossible", (ARCS % "flat").replace("nose: 6 mm", "nose: 24 mm")),
        ("cam-impossible", (ARCS % "flat").replace("nose: 6 mm", "nose: 6 mm, law: harmonic")),
        ("cam-impossible", (ARCS % "flat").replace("nose: 6 mm", "nose: 6 mm, flank: 21 mm")),
        ("cam-impossible", (ARCS % "flat").replace("lift: 6 mm, ", "")),
        ("cam-impossible", "x: {cams: [eccentric, b], lift: 6 mm, base: 40 mm, rise: 300 deg}"),
        ("cam-impossible", "x: {cams: [eccentric, b], lift: 9 mm, base: 10 mm, rise: 30 deg}"),
        ("cam-impossible", DRAWN.replace("radii", "lift: 3 mm, radii")),
        ("cam-impossible", DRAWN.replace("at: 60 deg", "at: 20 deg")),
        ("cam-impossible", DRAWN.replace(", {at: 30 deg, radius: 21.0 mm}", "", 1).replace(
            "{at: 0 deg, radius: 20.0 mm}, ", "").replace("{at: 60 deg, radius: 23.0 mm}, ", "")
            .replace("{at: 90 deg, radius: 24.0 mm}, ", "")),
    ],
)  # fmt: skip
def test_nonsense_is_told_at_the_drive(code: str, line: str, compile_text: Compile) -> None:
    text, at = marked(spec("b", TURNED, line.replace("x: {", "⟪x⟫: {", 1), parts=PART))
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    assert (found[0].span.line, found[0].span.column, found[0].span.end_column) == at
    assert "plugin-failed" not in [one.code.name for one in outcome.findings]


def test_a_cam_that_nothing_turns_has_no_contour(compile_text: Compile) -> None:
    text, at = marked(spec("a b", HAND, parts=PART.replace("eccentric", "⟪eccentric⟫")))
    found = [one for one in compile_text(text).findings if one.code.name == "still-to-suit"]
    assert len(found) == 1
    assert (found[0].span.line, found[0].span.column, found[0].span.end_column) == at
