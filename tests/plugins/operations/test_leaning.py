"""Helical, bevel and worm gears: their blanks are turned, and their teeth told by how they lie.

Sources: helical teeth d = z m / cos β, lead π d / tan β, cutter for z / cos³ β (ISO 21771 and any
handbook of gears, from memory); straight bevels at a right angle tan δ = z₁ / z₂, outside
d + 2 m cos δ, cone distance d / (2 sin δ), dedendum angle atan (1.25 m / R), Tredgold z / cos δ;
worms lead π m z₁, tan λ = z₁ m / d₁, throat m (z₂ + 2). How each is cut: common practice, no
source.
"""

from __future__ import annotations

import math
import re

import pytest

from binder.compiler import Outcome
from binder_plugins.operations.aids.vocabulary import unread
from binder_plugins.operations.facts import Act, Route
from tests.plugins.operations.conftest import HEAD, Plan, marked, without

TURN = "  {name}: {{material: {metal}, stock: {bar} mm round bar, turned: [{steps}], {more}}}\n"
BORE = "features: {bore: {reamed: 6 mm, on: hub, depth: through}}"
HUB = "{name: hub, diameter: 14 mm, length: 8 mm}"
M, SMALL, LARGE = 1.0, 20, 40
DRIVEN = "  hand: {turns: [one], by: hand, speeds: [60 r/min]}\n"


def _bevel(count: int, mate: int) -> tuple[float, float, float, float, float]:
    """Outside at both ends, length of the cone along the axis, pitch and root cone, by hand."""
    pitch = math.atan(count / mate)
    cone = M * count / 2 / math.sin(pitch)
    face = min(cone / 3, 10 * M)
    up, down = math.atan(M / cone), math.atan(1.25 * M / cone)
    outside = M * count + 2 * M * math.cos(pitch)
    slant = face / math.cos(up)
    inner = outside - 2 * slant * math.sin(pitch + up)
    return (
        outside,
        inner,
        slant * math.cos(pitch + up),
        math.degrees(pitch),
        math.degrees(pitch - down),
    )


def _part(name: str, metal: str, bar: float, steps: str, more: str = BORE) -> str:
    return TURN.format(name=name, metal=metal, bar=bar, steps=steps, more=more)


def _bevel_part(name: str, count: int, mate: int, metal: str = "brass") -> str:
    outside, inner, long, *_ = _bevel(count, mate)
    crown = f"{{name: crown, taper: {outside:.2f} mm to {inner:.2f} mm, length: {long:.2f} mm}}"
    return _part(name, metal, 50, f"{HUB}, {crown}")


def _bevels(more: str = "") -> str:
    parts = _bevel_part("one", SMALL, LARGE) + _bevel_part("other", LARGE, SMALL)
    teeth = f"teeth: [{SMALL}, {LARGE}], module: {M} mm"
    return f"{HEAD}{parts}drive:\n{DRIVEN}  crown: {{bevels: [one, other], {teeth}{more}}}\n"


def _worms(starts: int = 1) -> str:
    screw = "{name: thread, diameter: 18 mm, length: 20 mm}"
    screw += ", {name: shank, diameter: 8 mm, length: 20 mm}"
    parts = _part("one", "mild steel", 20, screw, "note: a worm")
    parts += _part("other", "bronze", 50, "{name: hub, diameter: 42 mm, length: 8 mm}")
    sizes = f"teeth: 40, module: 1 mm, diameter: 16 mm, starts: {starts}, hand: left"
    return f"{HEAD}{parts}drive:\n{DRIVEN}  screw: {{worms: [one, other], {sizes}}}\n"


def _helical(outside: float, *, mark: bool = False) -> str:
    steps = f"{{name: hub, diameter: {outside:.2f} mm, length: 8 mm}}"
    parts = "".join(_part(name, "brass", 30, steps) for name in ("one", "other"))
    if mark:
        parts = parts.replace("  one:", "  ⟪one:⟫", 1)
    mesh = "{meshes: [one, other], teeth: [20, 20], module: 1 mm, helix: 20 deg}"
    return f"{HEAD}{parts}drive:\n{DRIVEN}  slant: {mesh}\n"


def _route(outcome: Outcome, name: str) -> Route:
    assert outcome.design is not None, [one.message for one in outcome.findings]
    route = outcome.design.facts.about(Route, name)
    assert route is not None
    return route


def _cut(outcome: Outcome, name: str, act: str = "cut-teeth") -> list[Act]:
    return [one for one in _route(outcome, name).acts if one.act == act]


def _codes(outcome: Outcome) -> set[str]:
    return {one.code.name for one in outcome.findings}


@pytest.mark.parametrize(
    ("name", "count", "mate"), [("one", SMALL, LARGE), ("other", LARGE, SMALL)]
)
def test_a_bevel_is_turned_to_its_cone_and_cut_at_its_root(
    plan: Plan, name: str, count: int, mate: int
) -> None:
    outcome = plan(_bevels())
    assert not _codes(outcome) & {"gear-blank-wrong", "gear-impossible", "no-machine-for-it"}
    *_, pitch, root = _bevel(count, mate)
    (act,) = _cut(outcome, name)
    assert f"at {root:.2f}°" in act.what
    assert f"turn the blank by {90 / count:.3g}°" in act.what
    assert act.deep == pytest.approx(2.25 * M)
    # The sets of eight: no. 4 cuts 21 to 25 teeth, no. 7 cuts 55 to 134 (any handbook of gears).
    seen = count / math.cos(math.radians(pitch))
    number = {22: 4, 89: 7}[int(seen)]
    assert f"no. {number} " in act.tool
    taper = next(one for one in _route(outcome, name).acts if one.act == "taper")
    # The face cone: pitch cone and addendum angle.
    face = pitch + math.degrees(math.atan(M / (M * count / 2 / math.sin(math.radians(pitch)))))
    assert f"{face:.1f}°" in taper.what


def test_the_flanks_of_a_bevel_are_trimmed_by_what_the_space_grows(plan: Plan) -> None:
    """A quarter of the pitch of the small end, whose module is m (R − b) / R; geometry."""
    cone = M * math.hypot(SMALL, LARGE) / 2
    inner = M * (cone - min(cone / 3, 10 * M)) / cone
    (act,) = _cut(plan(_bevels()), "one")
    assert f"shift it {math.pi * inner / 4:.2f} mm back" in act.what
    assert f"than {math.pi * inner / 2:.2f} mm" in act.what


def test_a_bevel_blank_without_its_cone_is_found(plan: Plan) -> None:
    text = re.sub(r"taper: 21.79 mm to [\d.]+ mm", "diameter: 21.79 mm", _bevels())
    outcome = plan(text)
    (found,) = [one for one in outcome.findings if one.code.name == "gear-blank-wrong"]
    outside, inner, long, *_ = _bevel(SMALL, LARGE)
    assert f"taper: {outside:.2f} mm to {inner:.2f} mm, length: {long:.2f} mm" in (found.help or "")


def test_a_face_that_no_bevel_has_is_refused_once(plan: Plan) -> None:
    outcome = plan(_bevels(", face: 9 mm"))
    assert [one.code.name for one in outcome.findings].count("gear-impossible") == 1


def test_bevels_want_a_mill(plan: Plan) -> None:
    outcome = plan(_bevels(), without("machines/mills"))
    assert "no-machine-for-it" in _codes(outcome)


@pytest.mark.parametrize("starts", [1, 2])
def test_a_worm_is_screwcut_to_its_lead(plan: Plan, starts: int) -> None:
    outcome = plan(_worms(starts))
    (act,) = _cut(outcome, "one", "screwcut")
    assert f"lead {math.pi * starts:.3f} mm" in act.what
    assert "left hand" in act.what
    assert ("between" in act.what) == (starts > 1)
    assert act.tool.startswith("threading tool ground to 40°")
    assert act.deep == pytest.approx(2.2)
    first, second = (int(n) / int(d) for n, d in re.findall(r"(\d+)/(\d+)", act.what))
    # Leadscrew of 1.5 mm in the built-in workshop; drivers over driven is lead over its pitch.
    assert 1.5 * first * second == pytest.approx(math.pi * starts, rel=1e-3)
    assert "gear-blank-wrong" not in _codes(outcome)


def test_a_worm_without_change_wheels_is_found(plan: Plan) -> None:
    shop = without("machines/lathes/bench lathe/change_wheels")
    assert any("change wheels" in one.message for one in plan(_worms(), shop).findings)


def test_a_worm_wheel_is_gashed_at_the_lead_angle_then_hobbed(plan: Plan) -> None:
    gash, hob = _cut(plan(_worms()), "other")
    assert f"{math.degrees(math.atan(1 / 16)):.2f}°" in gash.what
    assert "40 teeth" in gash.what
    assert hob.tool == "hob as the worm"


def test_helical_teeth_are_sent_out_and_said_so(plan: Plan) -> None:
    """z m / cos β + 2 m for the blank; 20 / cos³ 20° is 24.1 teeth to the cutter."""
    beta = math.radians(20)
    text, place = marked(_helical(20 / math.cos(beta) + 2, mark=True))
    outcome = plan(text)
    assert "gear-blank-wrong" not in _codes(outcome)
    found = next(one for one in outcome.findings if one.code.name == "helix-not-cut-here")
    span = found.span
    assert (span.line, span.column) == place[:2]
    (act,) = _cut(outcome, "one")
    assert f"lead {math.pi * 20 / math.cos(beta) / math.tan(beta):.3f} mm" in act.what
    assert f"{20 / math.cos(beta) ** 3:.1f} teeth" in act.what
    assert not any("mill" in one.place for one in _route(outcome, "one").setups)


def test_a_straight_gear_is_no_blank_for_a_helix(plan: Plan) -> None:
    shape = "gear: {module: 1 mm, teeth: 20, width: 8 mm}"
    gear = f"  one: {{material: brass, stock: 30 mm round bar, {shape}}}\n"
    text = _helical(20 / math.cos(math.radians(20)) + 2)
    text = re.sub(r"  one: .*\n", gear, text, count=1)
    found = [one for one in plan(text).findings if one.code.name == "gear-blank-wrong"]
    assert [("gear:" in (one.help or "")) for one in found] == [True]


def test_every_tool_of_leaning_teeth_is_understood(plan: Plan) -> None:
    for text in (_bevels(), _worms(), _helical(23.28)):
        outcome = plan(text)
        for name in ("one", "other"):
            assert not [act.tool for act in _route(outcome, name).acts if unread(act.tool)]
