"""The search for trains against trial of every train there is; clearance; refusals."""

from __future__ import annotations

import itertools
import random
from fractions import Fraction
from math import prod

import pytest

from binder_trade.gears.trains import Clearance, NotDefined, Train, clears, search

# A set of twelve wheels as small lathes have it, one of them twice.
WHEELS = (20, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 80)


def every_train(wheels: tuple[int, ...], size: int) -> set[tuple[Fraction, tuple[int, ...]]]:
    """Ratio and wheels of every train of so many wheels, by trial of all orders."""
    half = size // 2
    found = set()
    for places in itertools.permutations(range(len(wheels)), size):
        teeth = [wheels[each] for each in places]
        drivers, driven = sorted(teeth[:half]), sorted(teeth[half:])
        found.add((Fraction(prod(drivers), prod(driven)), (*drivers, *driven)))
    return found


SMALL = every_train(WHEELS, 2) | every_train(WHEELS, 4)


def targets() -> list[Fraction]:
    """Thirty ratios: threads, clocks, and odd ones by seeded chance."""
    chance = random.Random(12)
    threads = [Fraction(8, tpi) for tpi in (9, 11, 13, 19, 26, 28, 32, 40, 60)]
    metric = [Fraction(5 * 8 * mm, 127 * 10) for mm in (5, 7, 8, 10, 125)]
    clocks = [Fraction(1, 12), Fraction(1, 60), Fraction(7, 720), Fraction(29, 59)]
    odd = [Fraction(chance.randint(1, 4000), 1000) for _ in range(12)]
    return [*threads, *metric, *clocks, *odd]


@pytest.mark.parametrize("wanted", targets(), ids=str)
def test_no_train_of_the_set_is_nearer(wanted: Fraction) -> None:
    found = search(wanted, WHEELS, keep=10).trains
    errors = sorted(abs(ratio / wanted - 1) for ratio, _ in SMALL)
    assert [abs(each.error) for each in found] == errors[:10]
    for each in found:
        assert each.ratio == Fraction(prod(each.drivers), prod(each.driven))
        assert each.error == each.ratio / wanted - 1


def test_there_are_thirty_targets() -> None:
    assert len(targets()) == 30


@pytest.mark.parametrize("wanted", [Fraction(355, 1130), Fraction(7, 720), Fraction(29, 59)])
def test_no_train_of_six_is_nearer(wanted: Fraction) -> None:
    wheels = (20, 20, 25, 35, 45, 55, 65)
    every = every_train(wheels, 6)
    found = search(wanted, wheels, sizes=(6,), keep=5).trains
    errors = sorted(abs(ratio / wanted - 1) for ratio, _ in every)
    assert [abs(each.error) for each in found] == errors[:5]


def used(train: Train) -> list[int]:
    return sorted(train.drivers + train.driven)


def test_each_wheel_is_used_as_often_as_it_is_owned() -> None:
    for wanted in targets():
        for train in search(wanted, WHEELS, sizes=(2, 4, 6), keep=20).trains:
            assert all(used(train).count(teeth) <= WHEELS.count(teeth) for teeth in used(train))


def test_of_equal_trains_the_one_of_fewer_wheels_comes_first() -> None:
    best = search(Fraction(1, 2), WHEELS, keep=10).trains
    assert best[0].wheels == 2
    assert {each.error for each in best} == {0}


def test_of_a_big_set_few_trains_need_be_looked_at() -> None:
    wheels = (*WHEELS, 38, 63, 66, 70, 73, 75, 85, 90, 100, 127)
    found = search(Fraction(127, 400), wheels, sizes=(2, 4, 6))
    assert found.looked_at < 20_000
    assert found.trains[0].error == 0


@pytest.mark.parametrize("wanted", targets()[::5], ids=str)
def test_trains_with_clearance_are_the_best_that_clear(wanted: Fraction) -> None:
    room = Clearance(margin=15)
    found = search(wanted, WHEELS, sizes=(4,), keep=3, clearance=room).trains
    errors = sorted(
        abs(ratio / wanted - 1)
        for ratio, teeth in every_train(WHEELS, 4)
        if any(
            clears(front, back, room)
            for front in itertools.permutations(teeth[:2])
            for back in itertools.permutations(teeth[2:])
        )
    )
    assert [abs(each.error) for each in found] == errors[:3]
    assert all(clears(each.drivers, each.driven, room) for each in found)


# Of 20/40 × 60/30: 60 teeth reach past the centres of 20 and 40, 30 teeth apart each.
def test_a_wheel_that_would_strike_a_shaft_does_not_clear() -> None:
    assert not clears((20, 60), (40, 30), Clearance(margin=0))
    assert clears((40, 20), (50, 60), Clearance(margin=0))
    assert not clears((40, 20), (50, 60), Clearance(margin=0, first=30))
    assert not clears((40, 20), (50, 60), Clearance(margin=0, last=55))


@pytest.mark.parametrize(
    ("wanted", "wheels", "sizes"),
    [
        (Fraction(0), WHEELS, (2,)),
        (Fraction(-1, 2), WHEELS, (2,)),
        (Fraction(1, 2), (20,), (2,)),
        (Fraction(1, 2), (0, 20), (2,)),
        (Fraction(1, 2), tuple(range(20, 90)), (2,)),
        (Fraction(1, 2), WHEELS, (3,)),
    ],
)
def test_refusals(wanted: Fraction, wheels: tuple[int, ...], sizes: tuple[int, ...]) -> None:
    with pytest.raises(NotDefined):
        search(wanted, wheels, sizes=sizes)


def test_a_set_too_great_to_place_is_refused() -> None:
    with pytest.raises(NotDefined, match="too many"):
        search(Fraction(1, 3), range(20, 60), sizes=(6,), clearance=Clearance())
