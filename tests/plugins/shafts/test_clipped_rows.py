"""Rows that clips, collars and bearings hold: their chains, and what mends their float.

Sums are by hand; DIN 471 gives the ring for 4 mm as 0.4 mm thick, its groove 0.5 mm wide.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import ChainFact, Design, ShaftFact
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.shafts.clip_chaining import clip_chain
from binder_solid.float_tried import EndFloat, end_floats

Compile = Callable[..., Outcome]
SPECS = Path(__file__).parents[3] / "specs"

# A plate of 6 mm on a pin between two clips, LOOSE beside it.
ONE_PLATE = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  plate: {material: mild steel, plate: {length: 20 mm, width: 20 mm, thickness: 6 mm}, features: {hole: {reamed: to suit, depth: through}}}
  ring: {material: brass, turned: [{name: rim, diameter: 7 mm, length: 2 mm}], features: {bore: {drilled: 4.1 mm, on: rim, depth: through}}}
  pin: {material: silver steel, stock: drawn rod, turned: [{name: journal, diameter: 4 mm, length: LONG}], features: {clips: {grooved: to suit, on: journal, each_end: true, at: 1 mm from left}}}
joints:
  pin in plate: {slides: [pin.journal, plate.hole]}
  clips on pin: {clipped: [plate.hole, pin.clips], fastener: 4 mm external circlip}
shafts:
  pin: {along: [pin.clips, plate.hole, LOOSEpin.clips]}
"""  # noqa: E501


def _trial(compile_text: Compile, loose: str, long: str) -> Design:
    design = compile_text(ONE_PLATE.replace("LOOSE", loose).replace("LONG", long)).design
    assert design is not None
    return design


def _model(name: str, host: Host) -> Design:
    design = compiled(Job(SPECS / name / f"{name}.yaml"), host, Phase.CHECK).design
    assert design is not None
    return design


def _floats(design: Design) -> dict[str, EndFloat]:
    return {one.subject.partition(":")[0]: one for one in end_floats(design)}


def _chain(design: Design, subject: str) -> ChainFact:
    (found,) = [one for one in design.facts.all(ChainFact) if one.subject == subject]
    return found


@pytest.mark.parametrize(
    ("loose", "long", "closing"), [("", "8.45 mm", 6.0), ("ring, ", "10.45 mm", 8.0)]
)
def test_the_chain_goes_from_groove_to_groove(
    compile_text: Compile, loose: str, long: str, closing: float
) -> None:
    """Walls 0.75 mm from either end: 6.95 mm less two rings and the plate leaves 0.15 mm."""
    design = _trial(compile_text, loose, long)
    chain = _chain(design, "pin: end float")
    assert sum(one.nominal * one.factor for one in chain.links) == pytest.approx(0.15)
    assert [one.nominal for one in chain.links if one.why == "measured first"] == [0.4, 0.4]
    assert sum(
        one.nominal for one in chain.links if one.factor < 0 and one.why != "measured first"
    ) == pytest.approx(closing)
    assert chain.closing.startswith("outer walls of the grooves")


def test_a_gap_that_clips_grip_closes_the_float(host: Host) -> None:
    """15.4 - 2 x 0.4 - 12 - 2 x 1.219 = 0.162 mm: what stands in the gap has no part in it."""
    chain = _chain(_model("wharf-crane", host), "head_pin: end float")
    assert sum(one.nominal * one.factor for one in chain.links) == pytest.approx(0.162, abs=1e-3)
    assert not any("spacer" in one.name or "sheave" in one.name for one in chain.links)


def test_no_chain_where_no_clips_hold_it(host: Host) -> None:
    design = _model("wharf-crane", host)
    found = [one.subject for one in design.facts.all(ChainFact)]
    assert found.count("barrel_axle: end float") == 1
    axle = next(one for one in design.facts.all(ShaftFact) if one.subject == "barrel_axle")
    assert clip_chain(axle, design) is None


def test_what_mends_a_float_is_what_the_stops_leave_to_do(host: Host) -> None:
    """A clip in its groove is not moved out, and a hub in the gap frees no pin that clips hold.

    Common practice, no source.
    """
    crane = _floats(_model("wharf-crane", host))
    assert "groove" in crane["head_pin"].little
    assert crane["head_pin"].much.endswith("under a clip")
    assert crane["crank_shaft"].little == "face the 4 mm washer"
    # The barrel is bonded on its axle, a wheel at either end of it, before the float is tried.
    assert crane["barrel_axle"].little.startswith("face the inner side of a cheek bush")
    for one in crane.values():
        assert "stop out" not in one.little
    hammer = _floats(_model("tilt-hammer", host))
    assert hammer["cam_shaft"].little == "move a stop out"  # grub screws hold it


@pytest.mark.parametrize(("loose", "told"), [("", "groove"), ("ring, ", "face the ring")])
def test_a_loose_ring_is_faced_before_a_groove_is_cut(
    compile_text: Compile, loose: str, told: str
) -> None:
    design = _trial(compile_text, loose, "10.45 mm")
    assert told in _floats(design)["pin"].little


def test_a_shim_is_as_thick_as_the_float_less_its_middle(compile_text: Compile) -> None:
    """0.1 mm to 0.2 mm is wanted: the middle is 0.15 mm."""
    design = _trial(compile_text, "", "8.45 mm")
    assert "as thick as the float found less 0.15 mm" in _floats(design)["pin"].much
