"""Floats to the assembly whose test finds them, and to what is tried before it is shut for good.

All: common practice, no source. The parts are those of the wharf crane's spec.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.api import Design, JointFact
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.buildorder.floating import floats_in, for_now, tried_first
from binder_plugins.operations.facts import Route
from binder_solid.float_tried import end_floats

SPECS = Path(__file__).parents[3] / "specs"


def made(name: str, host: Host) -> Design:
    found = compiled(Job(SPECS / name / f"{name}.yaml", None, ()), host, Phase.CHECK).design
    assert found is not None
    return found


@pytest.fixture(scope="module")
def crane(host: Host) -> Design:
    return made("wharf-crane", host)


@pytest.mark.parametrize(
    ("assembly", "titles"),
    [
        ("jib_head", ["the head pin"]),
        ("block", ["'block sheave on pin'"]),
        ("winch", ["'handle on arm'", "the barrel axle", "the crank shaft"]),
        ("mast", []),
        ("crane", []),  # the cord hangs in it by then
    ],
)
def test_a_float_is_tested_where_the_last_that_stops_it_goes_on(
    assembly: str, titles: list[str], crane: Design
) -> None:
    found = list(floats_in(crane.assemblies[assembly], crane))
    assert [one.partition(" has ")[0] for one in found] == titles


@pytest.mark.parametrize("name", ["wharf-crane", "tilt-hammer", "screw-jack"])
def test_each_float_of_the_sheet_is_in_the_test_of_one_assembly(name: str, host: Host) -> None:
    design = made(name, host)
    told = [said for one in design.assemblies.values() for said in floats_in(one, design)]
    assert len(told) == len(list(end_floats(design)))


def test_a_shaft_in_housings_apart_waits_for_what_holds_them(host: Host) -> None:
    """The hangers of the line shaft are screwed to the base with it, the pedestals to the bed."""
    hammer = made("tilt-hammer", host)
    found = {one.name: list(floats_in(one, hammer)) for one in hammer.assemblies.values()}
    assert ["line shaft" in said for said in found["line"]] == [True]
    assert ["cam shaft" in said for said in found["tilt_hammer"]] == [True]
    assert not found["cam_line"]


@pytest.mark.parametrize("name", ["pin in arm", "block pin in cheeks"])
def test_a_float_is_tried_before_a_tail_is_spread(name: str, crane: Design) -> None:
    said = tried_first(crane.joints[name], crane)
    assert said.startswith("first put it together dry")
    assert "0.1 mm to 0.3 mm" in said
    assert "too little: shorten" in said


def test_what_is_tried_dry_is_oiled_after_the_trial(crane: Design) -> None:
    """Oil on parts that may go back into the chuck holds the swarf. Common practice, no source."""
    running = crane.joints["block sheave on pin"]
    fact = crane.facts.about(JointFact, running.name)
    assert fact is not None
    assert fact.step.startswith("oil the journal of the block pin and")
    now = for_now(running, fact.step, crane)
    assert "oil" not in now
    assert "over the journal of the block pin" in now
    assert now.endswith("dry for now")
    after = tried_first(crane.joints["block pin in cheeks"], crane)
    assert after.index("0.3 mm") < after.index("oil the journal of the block pin")
    kept = crane.joints["axle in cheeks"]
    assert for_now(kept, "oil it and slide it into that", crane).startswith("oil")


def test_nothing_is_tried_first_where_it_comes_apart_again(crane: Design) -> None:
    for name in ("handle on arm", "arm on crank shaft", "cheeks on block", "clips on head pin"):
        assert not tried_first(crane.joints[name], crane)


def test_what_is_riveted_later_stops_the_float_in_the_chuck(crane: Design) -> None:
    """The handle slides off over its tail, 2 mm in a hole of more, until the arm is on that; and
    a centre that carries the bar bars its way."""
    (pin,) = (one for one in crane.facts.all(Route) if one.subject == "handle_pin")
    (tried,) = (act.what for setup in pin.setups for act in setup.acts if "tried-on" in act.tags)
    assert tried.startswith("draw the tailstock centre back, and try the crank handle")
    assert "the crank arm dry on the tail, hard against its shoulder" in tried
