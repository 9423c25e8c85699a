"""Times of acts as the trade tells them, and estimates made of them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.cutting import passes, turn_min
from binder_making.times import (
    Maker,
    Work,
    act_time,
    acts,
    estimate,
    in_range,
    learned,
)
from binder_trade.explained import NotDefined


@pytest.mark.parametrize(
    ("act", "size", "ready", "run"),
    [
        # The trade's table of minutes (common practice, no source).
        ("saw", 12, 2, 2),
        ("saw", 25, 2, 6),
        ("saw", 50, 2, 20),
        ("saw-by-machine", 25, 2, 4),
        ("chuck-four-jaw", None, 12, 0),
        ("face-and-centre", None, 2, 3),
        ("finish-fit", None, 2, 8),
        ("bore", None, 5, 15),
        ("tap-blind", None, 2, 4),
        ("tap-through", None, 2, 2),
        ("part-off", 10, 2, 2),
        ("part-off", 25, 2, 6),
        ("mount-dividing-head", None, 25, 0),
        ("screwcut", None, 15, 15),
        ("square-block", None, 10, 35),
        ("mark-out", 4, 5, 10),
        ("lap", None, 10, 20),
    ],
)
def test_minutes_of_the_trade(act: str, size: float | None, ready: float, run: float) -> None:
    found = act_time(act, size)
    assert (found.set_min, found.run_min) == pytest.approx((ready, run))


def test_every_act_has_a_time() -> None:
    assert len(acts()) >= 35
    for act in acts():
        found = act_time(act, 10)
        assert found.set_min + found.run_min > 0
        assert found.says
        assert found.source == "common practice, no source"


@given(st.sampled_from(["saw", "saw-by-machine", "part-off", "die"]), st.floats(2, 100))
def test_a_thicker_bar_takes_longer(act: str, size: float) -> None:
    assert act_time(act, size).run_min < act_time(act, 1.1 * size).run_min


def test_a_run_stands_by_its_cut() -> None:
    # Common practice, no source: 20 to 12 over 40 is a cut of 8 minutes and a run of 10.
    cut = turn_min(40, 0.1, 400, passes(20, 12, 0.5))
    assert act_time("rough-turn", cutting_min=cut).run_min == pytest.approx(10)


def test_an_unknown_act_and_a_missing_size() -> None:
    with pytest.raises(NotDefined, match="no time"):
        act_time("whittle")
    with pytest.raises(NotDefined, match="bar diameter"):
        act_time("saw")
    with pytest.raises(NotDefined):
        act_time("saw", -1)


def test_a_sum_of_works() -> None:
    # Set-ups, runs, 10 per cent for measuring, 10 to 15 for remakes: 10 here (common practice).
    found = estimate([Work(act_time("bore")), Work(act_time("ream"))])
    assert found.likely_min == pytest.approx((20 + 4) * 1.2)
    assert found.least_min == pytest.approx(0.75 * found.likely_min)
    assert found.most_min == pytest.approx(1.6 * found.likely_min)


def test_further_ones_of_a_batch() -> None:
    # Half of the run, no set-up (common practice, no source).
    one, four = (estimate([Work(act_time("bore"), count=n)]).likely_min for n in (1, 4))
    assert one == pytest.approx(20 * 1.2)
    assert four == pytest.approx((5 + 15 + 3 * 7.5) * 1.2)


def test_who_works_and_what_is_new() -> None:
    work = [Work(act_time("bore"), "lathe"), Work(act_time("keyway"), "mill")]
    usual = estimate(work).likely_min
    assert estimate(work, is_first_of_kind=True).likely_min == pytest.approx(1.5 * usual)
    assert estimate(work, Maker(is_beginner=True)).likely_min == pytest.approx(2.5 * usual)
    slow = Maker(machines={"mill": 2})
    assert estimate(work, slow).likely_min == pytest.approx(usual + 23 * 1.2)


def test_a_cure_passes_alone() -> None:
    found = estimate([Work(act_time("bond"))])
    assert found.unattended_min == 60
    assert found.likely_min < 60


@pytest.mark.parametrize(
    ("minutes", "text"),
    [(100, "1½ to 3 h"), (10, "10 to 20 min"), (240, "3 to 6½ h"), (20, "½ to 1 h")],
)
def test_a_range_in_half_hours(minutes: float, text: str) -> None:
    assert in_range(minutes).text == text


def test_a_factor_is_learned_slowly() -> None:
    assert learned([]) == 1
    assert 1 < learned([(10, 20)]) < 1.3
    assert learned([(10, 20)] * 50) == pytest.approx(2, rel=0.05)
    assert learned([(10, 20), (20, 10)]) == pytest.approx(1)


@given(st.lists(st.tuples(st.floats(1, 500), st.floats(1, 500)), max_size=20))
def test_a_factor_lies_among_the_ratios(pairs: list[tuple[float, float]]) -> None:
    ratios = [real / guess for guess, real in pairs] + [1.0]
    assert min(ratios) - 1e-9 <= learned(pairs) <= max(ratios) + 1e-9


def test_no_pieces_take_no_time() -> None:
    with pytest.raises(NotDefined):
        estimate([Work(act_time("bore"), count=0)])
