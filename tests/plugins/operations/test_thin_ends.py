"""Thin ends are turned short out of the grip, before the centre that would keep the tool off."""

from __future__ import annotations

from math import radians, tan
from pathlib import Path

import pytest

from binder.api import Design
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.operations.facts import Route
from binder_plugins.operations.thin_ends import room_before

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
