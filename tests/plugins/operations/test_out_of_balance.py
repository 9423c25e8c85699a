"""What turns about a bore beside its middle turns slowly, and nothing loose hangs on it.

Common practice, no source: 500 r/min at the most in a small lathe, the work swung round by hand
first, no clamp on a spindle. The pull of a heavy side is m r ω² (mechanics of the school).
"""

from __future__ import annotations

import math

import pytest

from binder.compiler import Phase
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.bolt_sizes import through_hole
from binder_plugins.operations.facts import SetUp
from binder_plugins.operations.out_of_balance import most_rpm
from binder_plugins.operations.work import Work
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf

CHEEK = (
    "{material: brass, stock: 3 mm plate, quantity: 2, plate: {length: 68 mm, width: 30 mm,"
    " thickness: 3 mm}, features: {upper: {bored: 7 mm, depth: through, at: %s}}}"
)


def _turned(route_of: RouteOf, at: str) -> SetUp:
    return next(one for one in route_of(CHEEK % at).setups if one.place == "lathe")


def _fastest(setup: SetUp) -> float:
    return max(float(act.speed.split(" to ")[-1]) for act in setup.acts if act.speed)


def test_a_pair_held_off_its_middle_turns_slowly(route_of: RouteOf) -> None:
    setup = _turned(route_of, "10 mm from right")
    assert 0 < _fastest(setup) <= 500
    assert "swung round by hand" in setup.true
    clamp = next(act for act in setup.acts if act.act == "clamp-stack")
    assert "toolmaker" not in clamp.tool
    # No hole is there for a bolt: straps hold it, clear of the cut (common practice, no source).
    # The bore is 58 mm from the left, 7 mm across, and 5 mm beside it stay free: 49.5 mm; of the
    # width on either side 15 - 3.5 - 5 = 6.5 mm (geometry, by hand).
    # 12 plate + 5 packing + 6 for two cheeks + 6 strap + 2 washers of 1.6 + nut of 5.2 + a pitch of
    # 1 is 38.4 mm: M6 × 40 (ISO 7089, ISO 4032, ISO 4017; the first figures common practice).
    assert clamp.tool.startswith("straps, bolts with nuts M6 × 40 mm to the plate")
    assert "from 0 mm to 6 mm off its front edge" in clamp.what
    assert "nothing else hangs on the spindle" in clamp.what


def test_bolts_go_through_holes_that_are_there_by_then(route_of: RouteOf) -> None:
    ends = (
        "ends: {drilled: 3.4 mm, depth: through, at: 12 mm from left, pattern: 2 off 12 mm apart}"
    )
    part = (CHEEK % "10 mm from right").replace("features: {", f"features: {{{ends}, ")
    setup = next(one for one in route_of(part).setups if any(a.act == "bore" for a in one.acts))
    clamp = next(act for act in setup.acts if act.act == "clamp-stack")
    # 17 for plate and packing + 6 for two cheeks + 2 washers of 0.5 + nut of 2.4 + a pitch of 0.5:
    # 26.9 mm (the same lists).
    assert setup.grip.kind == "faceplate"
    assert "bolts with nuts M3 × 30 mm through the 2 ⌀3.4 mm holes" in clamp.tool


@pytest.mark.parametrize(
    ("across", "plates", "bolt"),
    [
        (3.4, 6.0, "M3 × 10 mm"),
        (3.1, 6.0, "M2.5 × 10 mm"),  # ISO 273 fine: M3 wants 3.2; 6 + 0.5 × 2 + 2 + 0.45 = 9.45.
        (4.3, 20.0, "M4 × 30 mm"),  # 20 + 2 × 0.8 + 3.2 + 0.7 = 25.5.
        (2.0, 6.0, ""),  # M2 wants 2.2.
        (3.4, 40.0, "M3 × 47 mm (studding, a nut at each end)"),  # 40 + 1 + 2 × 2.4 + 2 × 0.5.
    ],
)
def test_a_bolt_is_the_thickest_that_a_hole_clears(
    across: float, plates: float, bolt: str, plan: Plan
) -> None:
    """Nuts ISO 4032, washers ISO 7089, lengths ISO 4017; a thread stands past the nut."""
    design = plan(f"{HEAD}  part: {CHEEK % 'middle'}").design
    assert design is not None
    part = design.parts["part"]
    work = Work(design, part, None, None, None, {}, (), {})
    assert through_hole(work, across, plates) == bolt


def test_bolts_stand_on_the_list_by_their_size(plan: Plan) -> None:
    ends = (
        "ends: {drilled: 3.4 mm, depth: through, at: 12 mm from left, pattern: 2 off 12 mm apart}"
    )
    part = (CHEEK % "10 mm from right").replace("features: {", f"features: {{{ends}, ")
    design = plan(f"{HEAD}  part: {part}", upto=Phase.COMPOSE).design
    assert design is not None
    (tools,) = design.facts.all(ToolsFact)
    bolts = [one.name for one in tools.tools if "bolt" in one.name]
    assert bolts == ["bolts with nuts M3 × 30 mm"]


def test_one_piece_on_the_plate_says_what_holds_it(route_of: RouteOf) -> None:
    """Straps clear of the cut, where no hole is there for a bolt: common practice, no source."""
    part = (CHEEK % "10 mm from right").replace(", quantity: 2", "")
    setup = next(one for one in route_of(part).setups if one.place == "lathe")
    assert setup.grip.kind == "faceplate"
    assert "straps hold it to the plate, one on either side" in setup.grip.on
    assert "straps" in setup.acts[0].tool


def test_a_pair_bored_in_its_middle_needs_no_brake(route_of: RouteOf) -> None:
    setup = _turned(route_of, "middle")
    assert _fastest(setup) > 500
    assert "swung" not in setup.true


@pytest.mark.parametrize(("beside", "count"), [(2.0, 1), (24.0, 2), (60.0, 8)])
def test_the_pull_of_the_heavy_side_stays_below_five_newtons(beside: float, count: int) -> None:
    sizes = (68.0, 30.0, 3.0)
    omega = most_rpm(sizes, beside, count) * math.pi / 30
    kilograms = 8.8e-6 * math.prod(sizes) * count
    assert kilograms * beside / 1000 * omega**2 <= 5.0 + 1e-9
    assert most_rpm(sizes, beside, count) <= 500


def test_about_its_own_middle_it_is_free() -> None:
    assert most_rpm((40.0, 40.0, 10.0), 0.0) == math.inf


def test_a_crank_pin_is_turned_slowly(route_of: RouteOf) -> None:
    crank = (
        "{material: mild steel, stock: 40 mm round bar, turned: ["
        "{name: shaft, diameter: 12 mm, length: 40 mm},"
        "{name: disc, diameter: 38 mm, length: 12 mm},"
        "{name: pin, diameter: 6 mm, length: 12 mm, throw: 10 mm}]}"
    )
    setup = next(one for one in route_of(crank).setups if "set over" in one.grip.on)
    assert 0 < _fastest(setup) <= 500
    assert "swung round by hand" in setup.true
