"""One turn of the drive: rings by hand, and a handle that knocks a post or passes it."""

from __future__ import annotations

import math
from collections.abc import Callable
from pathlib import Path

import pytest

from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.drive.motion.axes import at_angle
from binder_plugins.drive.motion.reach import ring_of
from binder_plugins.drive.motion.told import TurnFact
from binder_plugins.drive.pairs.facts import BeltFact
from binder_plugins.drive.standing import Axis
from binder_solid.forms import Box, Frame
from binder_solid.placed import PlacedFact
from binder_solid.presence import is_kernel_there

UP = Axis((0.0, 0.0, 0.0), (0.0, 0.0, 1.0))


def block(frame: Frame, size: tuple[float, float, float]) -> PlacedFact:
    form = Box(*size)
    return PlacedFact("a", "a", 1, frame, form, form, ((0.0, 0.0, 0.0), size), (0.0, 0.0, 1.0))


def test_the_ring_of_a_block_beside_the_axis() -> None:
    """10 to 30 right, 5 to 15 back: nearest hypot(10, 5), farthest hypot(30, 15); 2 to 7 up."""
    ring = ring_of(block(Frame((10.0, 5.0, 2.0)), (20.0, 10.0, 5.0)), UP)
    assert ring.inside == pytest.approx(math.hypot(10, 5))
    assert ring.outside == pytest.approx(math.hypot(30, 15))
    assert (ring.low, ring.high) == (2, 7)


def test_the_ring_of_a_block_round_the_axis_begins_at_it() -> None:
    ring = ring_of(block(Frame((-5.0, -5.0, 0.0)), (20.0, 10.0, 5.0)), UP)
    assert ring.inside == 0
    assert ring.outside == pytest.approx(math.hypot(15, 5))


def test_a_quarter_turn() -> None:
    """(20, 0) goes to (0, 20) anticlockwise, seen from the tip of the axis."""
    frame = at_angle(UP, block(Frame((20.0, 0.0, 3.0)), (1.0, 1.0, 1.0)), math.pi / 2)
    assert frame.origin == pytest.approx((0.0, 20.0, 3.0))
    assert frame.x == pytest.approx((0.0, 1.0, 0.0))


SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base:
    material: mild steel
    block: {length: 120 mm, width: 60 mm, height: 10 mm}
    features:
      bore: {reamed: to suit, on: top, depth: through, at: "60 mm from left, 30 mm from front"}
  shaft:
    material: silver steel
    stock: 6 mm drawn rod
    turned: [{name: journal, diameter: 6 mm, length: 30 mm}]
  arm:
    material: mild steel
    block: {length: %s, width: 8 mm, height: 4 mm}
    features: {hub: {reamed: to suit, on: top, depth: through, at: 5 mm from left}}
  post:
    material: mild steel
    block: {length: 8 mm, width: 8 mm, height: 30 mm}
joints:
  shaft in base: {runs_in: [shaft.journal, base.bore], duty: slow and oiled}
  arm on shaft:  {retained: [arm.hub, shaft.journal]}
drive:
  hand: {turns: [arm], by: hand, speeds: [40 r/min]}
stands: base
positions:
  shaft: {at: 0 mm above base.underside}
  arm:   {at: 2 mm above base.top}
  post:  {at: "0 mm above base.top, 10 mm from base.left, middle of base"}
"""


@pytest.fixture
def turned(host: Host, tmp_path: Path) -> Callable[[str], Outcome]:
    """The trial with an arm so long, turned once."""
    if not is_kernel_there():
        pytest.skip("without the kernel nothing is turned")

    def run(arm: str) -> Outcome:
        path = tmp_path / "trial.yaml"
        path.write_text(SPEC % arm, encoding="utf-8")
        return compiled(Job(path, None), host, Phase.COMPOSE)

    return run


def test_an_arm_that_reaches_the_post_knocks_it(turned: Callable[[str], Outcome]) -> None:
    """The post stands 42 to 50 mm left of the axis: an arm of 55 - 5 = 50 mm reaches it at half a
    turn, wherever it is drawn."""
    outcome = turned("55 mm")
    found = [one for one in outcome.findings if one.code.name == "motion-clash"]
    assert len(found) == 1, [(one.code.name, one.message) for one in outcome.findings]
    assert "'arm' knocks 'post'" in found[0].message


def test_an_arm_that_is_too_short_for_the_post_is_free(turned: Callable[[str], Outcome]) -> None:
    """30 - 5 = 25 mm, with half its width hypot(25, 4) = 25.3 mm: the post is never reached."""
    outcome = turned("30 mm")
    assert "motion-clash" not in [one.code.name for one in outcome.findings]
    assert outcome.design is not None
    fact = outcome.design.facts.about(TurnFact, "")
    assert fact is not None
    assert not [pair for pair in fact.pairs if "post" in pair]


STANDING = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base:
    material: mild steel
    block: {length: 120 mm, width: 60 mm, height: 10 mm}
    features:
      left:  {reamed: to suit, on: top, depth: through, at: "30 mm from left, 30 mm from front"}
      right: {reamed: to suit, on: top, depth: through, at: "90 mm from left, 30 mm from front"}
  one:   {material: silver steel, turned: [{name: journal, diameter: 6 mm, length: 30 mm}]}
  other: {material: silver steel, turned: [{name: journal, diameter: 6 mm, length: 30 mm}]}
joints:
  one in base:   {runs_in: [one.journal, base.left], duty: slow and oiled}
  other in base: {runs_in: [other.journal, base.right], duty: slow and oiled}
drive:
  hand: {turns: [one], by: hand, speeds: [40 r/min]}
  belt: {belted: [one, other], belt: flat, section: 1 mm, diameters: [20 mm, 20 mm]%s}
"""


@pytest.mark.parametrize(
    ("said", "found"), [(", centres: 70 mm", True), (", centres: 60 mm", False)]
)
def test_written_centres_are_those_at_which_the_shafts_stand(
    said: str, found: bool, compile_text: Callable[..., Outcome]
) -> None:
    """90 - 30 = 60 mm between the bores: `shafts-stand-otherwise` for any other."""
    names = [one.code.name for one in compile_text(STANDING % said).findings]
    assert ("shafts-stand-otherwise" in names) == found


def test_centres_that_are_not_written_are_taken_from_the_frame(
    compile_text: Callable[..., Outcome],
) -> None:
    """2 x 60 + pi x 20 = 182.832 mm."""
    design = compile_text(STANDING % "").design
    assert design is not None
    belt = design.facts.about(BeltFact, "belt")
    assert belt is not None
    assert belt.runs[0].length_mm == pytest.approx(120 + 20 * math.pi)


TO_AND_FRO = """\
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
    block: {length: 20 mm, width: 20 mm, height: 20 mm}
    features: {way: {reamed: to suit, on: left, depth: through}}
  disc:
    material: mild steel
    turned:
      - {name: journal, diameter: 6 mm, length: 20 mm}
      - {name: rim, diameter: 30 mm, length: 4 mm}
  ram:
    material: silver steel
    turned: [{name: rod, diameter: 6 mm, length: 40 mm}]
  stop: {material: mild steel, block: {length: 6 mm, width: 20 mm, height: 30 mm}}
joints:
  disc in base: {runs_in: [disc.journal, base.bore], duty: slow and oiled}
  ram in guide: {slides: [ram.rod, guide.way]}
drive:
  hand: {turns: [disc], by: hand, speeds: [40 r/min]}
  ram:  {cranks: [disc, ram], throw: 10 mm, rod: 40 mm, drawn_at: 180 deg}
stands: base
positions:
  disc:  {at: 0 mm above base.underside}
  guide: {at: "0 mm above base.top, 80 mm from base.left, middle of base"}
  ram:   {at: "75 mm from base.left"}
  stop:  {at: "0 mm above base.top, %s from base.left, middle of base"}
"""


@pytest.mark.parametrize(("stop", "found"), [("128 mm", True), ("138 mm", False)])
def test_a_ram_knocks_a_stop_within_its_stroke(
    stop: str, found: bool, host: Host, tmp_path: Path
) -> None:
    """Drawn at its inner end it reaches 75 + 40 = 115 mm; a throw of 10 sends it 20 further, to
    135: a stop at 128 is knocked, one at 138 is not."""
    if not is_kernel_there():
        pytest.skip("without the kernel nothing is turned")
    path = tmp_path / "trial.yaml"
    path.write_text(TO_AND_FRO % stop, encoding="utf-8")
    outcome = compiled(Job(path, None), host, Phase.COMPOSE)
    names = [one.code.name for one in outcome.findings]
    assert ("motion-clash" in names) == found, [one.message for one in outcome.findings]
