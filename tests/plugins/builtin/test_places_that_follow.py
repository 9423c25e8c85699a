"""Places that follow from other sizes of the tilt hammer, reckoned by hand beside each case."""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.compiler import Job, Phase, compiled
from binder.design import Design
from binder.host import Host
from binder_plugins.buildorder.filed_seats import seated_at
from binder_plugins.buildorder.stops import stop_at
from binder_plugins.operations.facts import Route
from binder_plugins.partslist.room import most_outside
from binder_solid.glued_in import fills

SPEC = Path(__file__).parents[3] / "specs" / "tilt-hammer" / "tilt-hammer.yaml"


@pytest.fixture(scope="module")
def hammer(host: Host) -> Design:
    design = compiled(Job(SPEC), host, Phase.CHECK).design
    assert design is not None
    return design


def test_a_bonded_stop_is_placed_by_the_flat_of_the_other(hammer: Design) -> None:
    # The flat's middle is 25 from the left; the screw stands in the middle of the 6 mm boss, so
    # the boss ends 3 beyond it; 40 between the bearings, two of 12, half of 0.1 + 0.2 of float:
    # 25 + 3 + 64.15. The flat is 4 long, the screw's cup 0.6 × 2.5 wide (from memory of ISO 4029:
    # 1.4 at the most for M3): (4 − 1.5) / 2 = 1.25 either way; but the seat begins at 28 + 64, so
    # that no more than 0.15 is left there, told a little short.
    said = stop_at(hammer.joints["wheel on line shaft"], hammer)
    assert "92.15 mm from the left end" in said
    assert "0.1 mm more or less" in said
    assert "stays on its seat" in said
    assert "64.15 mm from its inner face" in said


def test_a_part_on_a_filed_seat_is_placed_by_its_middle(hammer: Design) -> None:
    # 0.36 × 120 = 43.2, and 1.5 left on the tail.
    said = seated_at(hammer.joints["collar on helve"], hammer)
    assert (
        said == "the middle of the helve collar 44.7 mm from left of the helve, between its lines"
    )
    assert seated_at(hammer.joints["head on helve"], hammer) == ""


def test_what_can_be_moved_by_its_screw_is_not_placed(hammer: Design) -> None:
    assert stop_at(hammer.joints["pulley on line shaft"], hammer) == ""


def test_a_bought_wheel_is_told_how_large_it_may_be(hammer: Design) -> None:
    # The bore of the hanger stands 5 + 57 − 8 = 54 over the underside of the base, 24 over its
    # top, and 6 (half of the 12 mm bar) beside it: √(24² + 6²) = 24.74, less half a millimetre
    # to clear it, twice.
    assert most_outside("gear", hammer) == 48


def test_what_fills_a_part_is_glued_in_before_the_part_is_drilled(hammer: Design) -> None:
    wholes = hammer.assemblies
    assert fills(wholes["base_board"], hammer) == "base"
    assert [name for name, one in wholes.items() if fills(one, hammer)] == ["base_board"]
    pairs = {(one.earlier, one.later) for one in hammer.befores}
    reamed = [later for earlier, later in pairs if earlier == "assemble base_board"]
    assert any("line" in name for name in reamed)
    assert "pilot bed on base" in reamed


def test_a_place_told_in_words_is_a_line_on_the_leaf(hammer: Design) -> None:
    """As reckoned above; last of all, since what eases the seats would rub it away."""
    route = hammer.facts.about(Route, "line_shaft")
    assert route is not None
    last = route.acts[-1]
    assert last.act == "mark-out"
    assert "92.15 mm from the left-hand end" in last.what
    assert "on the line 92.15 mm" in stop_at(hammer.joints["wheel on line shaft"], hammer)


def test_what_its_screw_holds_gets_no_line(hammer: Design) -> None:
    """The flywheel and the pulley of the cam shaft are set by the float, and marked nowhere."""
    route = hammer.facts.about(Route, "cam_shaft")
    assert route is not None
    assert not any(act.act == "mark-out" for act in route.acts)
