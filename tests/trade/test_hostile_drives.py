"""No number, however wild, brings more than a refusal: no crash, no nan in an answer."""

import dataclasses
import math
from collections.abc import Callable, Iterator

import pytest

from binder_trade.belts.centres import centres_for
from binder_trade.belts.cone import cone_from_driver, cone_from_first, cone_from_ratios
from binder_trade.belts.flat import flat_pulley, least_flat_pulley
from binder_trade.belts.grip import best_speed_ms, grip_by_limit, grip_by_pretension, held_by
from binder_trade.belts.loop import Pulley, loop
from binder_trade.belts.o_rings import ring_belts
from binder_trade.belts.round_belt import cord, cut_length, round_groove, vee_groove
from binder_trade.belts.run import run
from binder_trade.belts.speeds import belt_speed_ms, driven, driven_diameter
from binder_trade.belts.toothed import near_centres, toothed_drive, toothed_pulley
from binder_trade.belts.vee import vee_belt_groove
from binder_trade.chains.bead import bead_loop, bead_wheel
from binder_trade.chains.roller import chain_drive, chain_speed, exact_length, teeth_for
from binder_trade.explained import NotDefined, Step
from binder_trade.friction.wheels import friction_drive
from binder_trade.losses.movers import engine_power_w, motor, motor_from_plate, synchronous_rpm
from binder_trade.losses.stages import worm_loss
from binder_trade.mechanisms.cam_laws import Segment, cam_motion
from binder_trade.mechanisms.cam_profile import cam_profile
from binder_trade.mechanisms.crank_slider import crank_slider
from binder_trade.mechanisms.drum import drum, hoist
from binder_trade.mechanisms.flywheel import (
    coefficient_of,
    disc_wheel,
    fluctuation,
    rim,
    run_up_s,
    spoked_wheel,
)
from binder_trade.mechanisms.four_bar import four_bar
from binder_trade.mechanisms.similarity import scale_speed, scaled
from binder_trade.mechanisms.step_motion import geneva, pawl_load, ratchet_feed, toggle_force
from binder_trade.mechanisms.tappets import blows, gravity_share_of, trip
from binder_trade.mechanisms.yoke import eccentric, scotch_yoke
from binder_trade.screws.handwheel import differential_screw, handwheel, screw_force
from binder_trade.shafting.beam import Load, bend, spread
from binder_trade.shafting.critical import Mass, critical_speeds, single_disc
from binder_trade.shafting.line import round_piece
from binder_trade.shafting.twist import belt_load, least_diameter, shaft_stress, torque_nmm, twist

WILD = (math.nan, math.inf, -math.inf, -1.0, 0.0, 1e-300, 1e300, 1e6)


def _bent(
    length: float, thick: float, left: float, right: float, at: float, force: float
) -> object:
    return bend([round_piece(length, thick)], (left, right), [Load(at, force)])


def _whirl(length: float, thick: float, at: float, mass: float) -> object:
    return critical_speeds([round_piece(length, thick)], (0, length), [Mass(at, mass)])


def _cam(angle: float, lift: float, base: float, roller: float, offset: float) -> object:
    motion = cam_motion([Segment(angle, lift), Segment(360 - angle, -lift)])
    return cam_profile(motion, base, "roller", roller, offset, 36)


CALLS: tuple[tuple[Callable[..., object], tuple[float, ...]], ...] = (
    (run, (60, 40, 100)),
    (lambda a, b, c: run(a, b, c, "crossed"), (60, 40, 100)),
    (lambda a, b, c: run(a, b, c, "quarter-turn"), (60, 40, 100)),
    (centres_for, (60, 40, 400)),
    (lambda a, b, c, d: cone_from_ratios((a, b), c, d), (0.5, 2, 400, 100)),
    (lambda a, b, c: cone_from_first(a, (b, 1), c), (40, 0.5, 100)),
    (lambda a, b, c: cone_from_driver((a,), b, c), (40, 400, 100)),
    (flat_pulley, (50, 10)),
    (lambda a: least_flat_pulley(a, "leather"), (1,)),
    (grip_by_pretension, (10, 2.5, 3, 0.01)),
    (grip_by_limit, (10, 2.5, 3, 0.01)),
    (best_speed_ms, (10, 0.1)),
    (held_by, (10, 0.2, 2)),
    (lambda x, y, d: loop([Pulley(0, 0, 20), Pulley(x, y, d)]), (50, 5, 10)),
    (ring_belts, (10, 12, 24)),
    (cord, (3,)),
    (cut_length, (400, 3, 0.1)),
    (round_groove, (30, 3)),
    (vee_groove, (30, 3, 60)),
    (belt_speed_ms, (30, 100)),
    (lambda n, a, b, t, s: driven(n, [(a, b)], t, s), (100, 40, 60, 1, 0.02)),
    (driven_diameter, (40, 2, 1, 0.02)),
    (lambda a: toothed_pulley("XL", a), (20,)),
    (lambda a, b, c: toothed_drive("XL", a, b, c), (20, 30, 80)),
    (lambda a: near_centres("XL", 20, 30, a), (100,)),
    (lambda a, b: vee_belt_groove("Z", a, b), (60, 1)),
    (bead_wheel, (4.5, 3.2, 12)),
    (bead_loop, (4.5, 12, 12, 100)),
    (chain_drive, (6, 12, 30, 150)),
    (chain_speed, (6, 100, 12, 30)),
    (exact_length, (6, 12, 30, 150)),
    (teeth_for, (6, 50)),
    (
        lambda a, b, t, f, g: friction_drive(a, b, t, "rubber on metal", f, g),
        (50, 60, 100, 10, 180),
    ),
    (engine_power_w, (20, 20, 0.2, 200, 2)),
    (lambda n, t, x: motor(n, t).speed_at(x), (3000, 10, 4)),
    (motor_from_plate, (3000, 2500, 5)),
    (synchronous_rpm, (50, 2)),
    (worm_loss, (5, 0.08, 20)),
    (_cam, (180, 5, 20, 3, 1)),
    (crank_slider, (10, 40, 3)),
    (drum, (20, 30, 1, 2000)),
    (lambda a, b, c, g, t: hoist(a, b, c, gear=g, train=t), (10, 20, 40, 3, 0.9)),
    (coefficient_of, (100, 100, 200)),
    (disc_wheel, (100, 10, 7800, 8)),
    (lambda a, b, n, c: fluctuation([(0, 1), (1, a), (2, b)], n, c), (5, 1, 100, 0.1)),
    (lambda a, b, c: rim(a, b, c, "steel"), (100, 100, 7800)),
    (run_up_s, (100, 10, 100)),
    (
        lambda a, b, c, d, e, f, n, s, r: spoked_wheel(a, b, c, (d, e, f), (n, s), r),
        (100, 84, 10, 20, 8, 14, 6, 20, 7200),
    ),
    (four_bar, (100, 40, 120, 80)),
    (scale_speed, (10, 16)),
    (scaled, (16,)),
    (geneva, (4,)),
    (ratchet_feed, (60, 15, 1.5)),
    (pawl_load, (100, 20, 3, 1)),
    (toggle_force, (10, 5)),
    (blows, (60, 4, 20, 0.7)),
    (gravity_share_of, (0.2, 100, 0.1, 10, 160)),
    (trip, (78, 20, 60, 120, 5)),
    (eccentric, (3, 6, 60, 1.5)),
    (scotch_yoke, (15, 5)),
    (differential_screw, (1, 0.75)),
    (handwheel, (1.5, 60, 2)),
    (screw_force, (100, 2, 0.5)),
    (_bent, (100, 6, 0, 100, 50, 10)),
    (spread, (10, 0, 100)),
    (_whirl, (100, 6, 50, 0.1)),
    (single_disc, (0.1, 64, 100, 50)),
    (belt_load, (30, 10, 3)),
    (least_diameter, (100, 50, 40)),
    (shaft_stress, (100, 6, 50, 2)),
    (torque_nmm, (10, 100)),
    (lambda t, a, b: twist(t, ((a, b),)), (100, 100, 6)),
)
# Answers that say infinite on purpose, and what is told of a straight or jumping place.
ENDLESS = {"most_acceleration", "speed_ratio", "curvature_mm"}


def _numbers(value: object, name: str = "") -> Iterator[tuple[str, float]]:
    if isinstance(value, float):
        yield name, value
    elif (
        dataclasses.is_dataclass(value)
        and not isinstance(value, type)
        and not isinstance(value, Step)
    ):
        for each in dataclasses.fields(value):
            yield from _numbers(getattr(value, each.name), each.name)
    elif isinstance(value, (tuple, list)):
        for each in value:
            yield from _numbers(each, name)


@pytest.mark.parametrize("number", range(len(CALLS)))
def test_good_numbers_answer(number: int) -> None:
    call, given = CALLS[number]
    assert all(math.isfinite(each) for _, each in _numbers(call(*given)))


@pytest.mark.parametrize("number", range(len(CALLS)))
def test_wild_numbers_are_refused_or_answered(number: int) -> None:
    call, given = CALLS[number]
    for place in range(len(given)):
        for wild in WILD:
            try:
                answer = call(*given[:place], wild, *given[place + 1 :])
            except NotDefined:
                continue
            for name, each in _numbers(answer):
                assert not math.isnan(each), (place, wild, name)
                assert math.isfinite(each) or name in ENDLESS, (place, wild, name)
