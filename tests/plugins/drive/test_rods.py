"""Connecting rods and couplers through one turn: geometry of their pins, and what they knock."""

from __future__ import annotations

import math
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.drive.motion.linkages import Stood, bars_at
from binder_plugins.drive.motion.planes import Plane, plane_across
from binder_plugins.drive.motion.told import TurnFact
from binder_plugins.drive.standing import Axis
from binder_solid.forms import Box, Frame
from binder_solid.placed import PlacedFact
from binder_solid.presence import is_kernel_there
from binder_solid.space import placed
from tests.plugins.drive.marks import marked
from tests.plugins.drive.train import HAND, spec

Compile = Callable[..., Outcome]
RIGHT = "throw: 10 mm, rod: 40 mm"
OTHERWISE = "linkage-stands-otherwise"
UP = Axis((3.0, 4.0, 0.0), (0.0, 0.0, 1.0))


def block(frame: Frame) -> PlacedFact:
    form = Box(40, 8, 4)
    return PlacedFact("r", "r", 1, frame, form, form, ((0.0, 0.0, 0.0), (40, 8, 4)), (0, 0, 1))


def plane() -> Plane:
    made = plane_across(UP, (1.0, 0.0, 5.0))
    assert made is not None
    return made


def test_the_plane_is_square_to_its_shaft() -> None:
    assert plane().along == pytest.approx((1, 0, 0))
    assert plane().aside == pytest.approx((0, 1, 0))
    assert plane().spot((13.0, 4.0, 9.0)) == pytest.approx((10, 0))
    assert plane_across(UP, (0.0, 0.0, 2.0)) is None


@given(to=st.tuples(st.floats(-50, 50), st.floats(-50, 50)), radians=st.floats(-7, 7))
def test_a_carried_rod_keeps_its_pin_and_turns_about_it(
    to: tuple[float, float], radians: float
) -> None:
    """What lay on the start lies on the end, and what was 40 mm along it lies at the angle."""
    copy = block(Frame((13.0, 4.0, 0.0)))
    frame = plane().carried(copy, (10.0, 0.0), to, radians)
    assert plane().spot(placed((0.0, 0.0, 0.0), frame)) == pytest.approx(to, abs=1e-9)
    far = plane().spot(placed((40.0, 0.0, 0.0), frame))
    wanted = (to[0] + 40 * math.cos(radians), to[1] + 40 * math.sin(radians))
    assert far == pytest.approx(wanted, abs=1e-9)


@pytest.mark.parametrize(("far", "sign"), [((30.0, 28.0), 1), ((30.0, -28.0), -1)])
def test_the_coupler_of_four_bars_ends_on_the_rocker(
    far: tuple[float, float], sign: int, compile_text: Compile
) -> None:
    """Its end is 40 mm from the crank's pin and 30 from the pivot, on the side where it is drawn,
    and stands where the rocker has turned to (frame 50, crank 12: it goes right round)."""
    line = "x: {rocks: [a, b], crank: 12 mm, rod: 40 mm, rocker: 30 mm, frame: 50 mm}"
    design = compile_text(spec("a b", HAND, line)).design
    assert design is not None
    linkage = bars_at(design.joints["x"], Stood(plane(), None, (12.0, 0.0), far))
    assert linkage.pose is not None
    start = None
    for number in range(24):
        turned = math.radians(15 * number)
        pin, lies = linkage.pose(turned)
        assert math.dist(pin, (0, 0)) == pytest.approx(12)
        end = (pin[0] + 40 * math.cos(lies), pin[1] + 40 * math.sin(lies))
        assert math.dist(end, (50, 0)) == pytest.approx(30)
        assert end[1] * sign > 0
        swung = math.atan2(end[1], end[0] - 50)
        start = swung if start is None else start
        assert math.remainder(swung - start - linkage.travel(turned), 2 * math.pi) == (
            pytest.approx(0, abs=1e-9)
        )


ENGINE = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base:
    material: mild steel
    block: {length: 160 mm, width: 60 mm, height: 10 mm}
    features:
      bore: {reamed: to suit, on: top, depth: through, at: "30 mm from left, 30 mm from front"}
  guide:
    material: brass
    block: {length: 20 mm, width: 20 mm, height: 40 mm}
    features: {way: {reamed: to suit, on: left, depth: through, at: 16 mm from underside}}
  disc:
    material: mild steel
    turned:
      - {name: journal, diameter: 6 mm, length: 20 mm}
      - {name: rim, diameter: 30 mm, length: 4 mm}
      - {name: pin, diameter: 4 mm, length: 6 mm, throw: 10 mm}
  link:
    material: brass
    block: {length: 50 mm, width: 8 mm, height: 4 mm}
    features:
      big:   {reamed: to suit, on: top, depth: through, at: 5 mm from left}
      small: {reamed: to suit, on: top, depth: through, at: 45 mm from left}
  ram:
    material: silver steel
    turned: [{name: stem, diameter: 6 mm, length: 60 mm}]
    features: {cross: {reamed: to suit, across: stem, depth: through, at: 4 mm from left}}
  wrist: {material: silver steel, turned: [{name: stem, diameter: 3 mm, length: 12 mm}]}
  stop: {material: mild steel, block: {length: 6 mm, width: 6 mm, height: 30 mm}}
joints:
  disc in base:  {runs_in: [disc.journal, base.bore], duty: slow and oiled}
  ram in guide:  {slides: [ram.stem, guide.way]}
  link on pin:   {runs_in: [disc.pin, link.big], duty: slow and oiled}
  wrist in ram:  {retained: [wrist.stem, ram.cross]}
  link on wrist: {runs_in: [wrist.stem, link.small], duty: slow and oiled}
drive:
  hand: {turns: [disc], by: hand, speeds: [40 r/min]}
  ram:  {cranks: [%s], throw: 10 mm, rod: 40 mm}
stands: base
positions:
  disc:  {at: 0 mm above base.underside, turned: 180 deg}
  guide: {at: "0 mm above base.top, 110 mm from base.left, middle of base"}
  stop:  {at: "10 mm above base.top, 60 mm from base.left, %s from base.front"}
"""


@pytest.fixture
def turned(host: Host, tmp_path: Path) -> Callable[..., Outcome]:
    """The engine with a stop so far from the front, turned once."""
    if not is_kernel_there():
        pytest.skip("without the kernel nothing is turned")

    def run(stop: str, ends: str = "disc, ram") -> Outcome:
        path = tmp_path / "trial.yaml"
        path.write_text(ENGINE % (ends, stop), encoding="utf-8")
        return compiled(Job(path, None), host, Phase.COMPOSE)

    return run


def knocks(outcome: Outcome) -> list[str]:
    return [
        one.message
        for one in outcome.findings
        if one.code.name == "motion-clash" and "stop" in one.message
    ]


@pytest.mark.parametrize("ends", ["disc, ram", "disc, link, ram"])
def test_the_rod_knocks_a_stop_beside_it(ends: str, turned: Callable[..., Outcome]) -> None:
    """The pin stands 10 mm out, the wrist 40 from it on the line of the slide, 30 mm from the
    front. At 255° the pin is at (27.4, 20.3) and the wrist at (66.2, 30): where the stop begins,
    60 mm from the left, the middle of the rod lies 20.34 + 9.66 × 32.6 / 38.8 = 28.45 mm from the
    front and its edge 4 × 40 / 38.8 = 4.12 nearer, 24.33. A stop from 19 to 25 is struck there;
    at 240° the edge is at 25.0 and passes."""
    found = knocks(turned("19 mm", ends))
    assert len(found) == 1
    assert "'link' knocks 'stop'" in found[0]
    assert "255°" in found[0]


def test_the_rod_passes_a_stop_further_off(turned: Callable[..., Outcome]) -> None:
    """It comes no nearer to the front than 22.7 mm there (at 300°); the stop ends at 21."""
    outcome = turned("15 mm")
    assert knocks(outcome) == []
    assert outcome.design is not None
    fact = outcome.design.facts.about(TurnFact, "")
    assert fact is not None
    assert "link" in fact.bodies


@pytest.mark.parametrize(
    "line",
    [
        "throw: ⟪12 mm⟫, rod: 40 mm",
        "throw: 10 mm, rod: ⟪41 mm⟫",
        "throw: 10 mm, rod: 40 mm, drawn_at: ⟪90 deg⟫",
    ],
)
def test_what_is_written_otherwise_than_it_stands(line: str, compile_text: Compile) -> None:
    told = ENGINE % ("disc, ram", "15 mm")
    text, at = marked(told.replace(RIGHT, line))
    found = [one for one in compile_text(text).findings if one.code.name == OTHERWISE]
    assert len(found) == 1
    assert (found[0].span.line, found[0].span.column, found[0].span.end_column) == at
    for mended in (RIGHT, f"{RIGHT}, drawn_at: 0 deg"):
        fine = compile_text(told.replace(RIGHT, mended))
        assert OTHERWISE not in [one.code.name for one in fine.findings]
