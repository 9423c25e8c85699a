"""Thin ends: turned before the centre that would keep the tool off, or on a half centre.

Where the tool is stopped is plane geometry, worked again here; that a centre ground away on one
side lets it by is common practice, no source.
"""

from __future__ import annotations

from math import radians, tan
from pathlib import Path

import pytest

from binder.api import Design
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.operations.facts import Route
from binder_plugins.operations.thin_ends import room_before
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf, without

SPECS = Path(__file__).parents[3] / "specs"


@pytest.fixture(scope="module")
def crane(host: Host) -> Design:
    found = compiled(Job(SPECS / "wharf-crane/wharf-crane.yaml"), host, Phase.CHECK).design
    assert found is not None
    return found


@pytest.mark.parametrize(("across", "mouth"), [(2.0, 1.2), (8.0, 3.0), (12.0, 3.0)])
def test_the_cone_meets_the_tool_where_both_are_as_far_off_the_axis(
    across: float, mouth: float
) -> None:
    """By plain geometry: a 60° centre, and a trailing edge that falls away by 12°."""
    room = room_before(across, mouth)
    assert mouth / 2 + room * tan(radians(30)) == pytest.approx(
        across / 2 + room * tan(radians(12))
    )


def test_a_thin_tail_is_turned_before_its_end_is_centred(crane: Design) -> None:
    """The 2 mm tail of the pin, 4 mm long; common practice, no source."""
    route = crane.facts.about(Route, "handle_pin")
    assert route is not None
    acts = route.setups[0].acts
    names = [(act.act, act.feature) for act in acts]
    tail, centre = names.index(("turn", "tail")), names.index(("centre", "right end"))
    assert tail < centre < names.index(("turn", "journal"))
    assert acts[0].what.startswith("with 7 mm out of the jaws")
    assert "draw it out" in acts[centre].what


def test_what_is_turned_short_stands_clear_of_the_jaws(crane: Design) -> None:
    """Three mm are kept clear of them; common practice, no source."""
    for route in crane.facts.all(Route):
        for setup in route.setups:
            short = [act for act in setup.acts if "short-out" in act.tags]
            for act in short:
                assert act.deep <= setup.grip.across + 3.0


def knurled(tip: float) -> str:
    """A screw with a knurled head, whose tip is turned behind the knurl."""
    return (
        "{material: mild steel, stock: 12 mm round bar, turned: [{name: head, diameter: 12 mm,"
        f" length: 6 mm}}, {{name: rod, diameter: 10 mm, length: 36 mm}}, {{name: tip, diameter:"
        f" {tip:g} mm, length: 5 mm}}], features: {{grip: {{knurled: 1 mm, on: head}}}}}}"
    )


@pytest.mark.parametrize(("tip", "short"), [(3.0, 4.4), (5.0, 3.3), (7.0, 0.5)])
def test_an_end_that_waits_is_turned_on_a_half_centre(
    route_of: RouteOf, tip: float, short: float
) -> None:
    """The mouth is 0.6 of the end, 3 at the most; from it the cone gains on the trailing edge by
    tan 30° − tan 12° = 0.3648 a mm. ⌀3: (3 − 1.8) / 2 / 0.3648 = 1.64, so that a tool of 6 is
    stopped 4.4 before the end; ⌀5: 1 / 0.3648 = 2.74, 3.3; ⌀7: 2 / 0.3648 = 5.48, 0.5."""
    setup = route_of(knurled(tip)).setups[0]
    assert setup.grip.support.startswith("half centre in the tailstock, oiled, its flat towards")
    assert f"stops a knife tool 6 mm wide {short:g} mm before the end" in setup.grip.support
    # It was faced and centred before: no tool goes to the axis of an end that is carried.
    assert [act.act for act in setup.acts[:2]] == ["face", "centre"]


def test_a_thick_end_has_a_whole_centre(route_of: RouteOf) -> None:
    """⌀8 with a mouth of 3: (8 − 3) / 2 / 0.3648 = 6.9 mm, more than the tool is wide."""
    assert route_of(knurled(8.0)).setups[0].grip.support == "tailstock centre"


def test_a_half_centre_is_to_be_had_where_none_is_owned(plan: Plan) -> None:
    for owned in (without(holding__fixtures="[half centre, parallels]"), ""):
        design = plan(f"{HEAD}  part: {knurled(3)}\n", owned).design
        assert design is not None
        tools = next(one for one in collect_tools(design).facts if isinstance(one, ToolsFact))
        half = next(one for one in tools.tools if one.name == "half centre")
        assert (half.whose is Whose.OWNED) == bool(owned)
