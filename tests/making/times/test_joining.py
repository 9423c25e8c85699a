"""Times of putting together: the trade's own figures, and every kind of joint has one."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.host import Host
from binder_making.times import in_place, joining, joining_table, reading, trying
from binder_trade.explained import NotDefined

# What neither moves nor is made: its numbers are asked by the drive alone.
_NO_WORK = {"turns", "works", "steadies", "prototype", "feeds"}


@pytest.mark.parametrize(
    ("kind", "screws", "minutes", "alone"),
    [
        # The trade's table of minutes (common practice, no source).
        ("silver_soldered", 0, 15 + 10, 20),
        ("pressed", 0, 3 + 4, 0),
        ("retained", 0, 3 + 4, 0),
        ("riveted", 4, 5 + 2 + 4 * 1.5, 0),
    ],
)
def test_minutes_of_the_trade(kind: str, screws: int, minutes: float, alone: float) -> None:
    found = joining(kind, 1, screws)
    assert (found.minutes, found.alone_min) == (minutes, alone)


def test_what_is_bonded_cures_within_the_hours_of_the_trade() -> None:
    """1 to 24 h (common practice, no source): the whole of it where the model hangs on it."""
    assert 1 <= joining("retained").wait_h <= 24
    assert 1 <= joining("glued").wait_h <= 24
    assert joining("screwed", 1, 4).wait_h == 0


def test_every_kind_of_joint_and_drive_has_a_time(host: Host) -> None:
    kinds = {
        kind.key
        for plugin in host.plugins
        for kind in plugin.kinds
        if kind.slot.value in {"joint", "drive"} and kind.key not in _NO_WORK
    }
    assert kinds
    assert kinds <= set(joining_table()["kinds"])


@given(st.sampled_from(sorted(joining_table()["kinds"])), st.integers(1, 40), st.integers(0, 60))
def test_more_takes_longer_and_a_batch_less_than_one_by_one(
    kind: str, count: int, screws: int
) -> None:
    one, many = joining(kind, 1, screws), joining(kind, count, screws)
    assert one.minutes <= many.minutes <= count * one.minutes + 1e-9
    assert joining(kind, count, screws + 1).minutes >= many.minutes


def test_nothing_and_less_is_refused() -> None:
    with pytest.raises(NotDefined):
        joining("screwed", 0)
    with pytest.raises(NotDefined):
        joining("screwed", 1, -1)


def test_trying_reading_and_work_in_place() -> None:
    assert trying(0) < trying(3)
    assert reading(1) < reading(4)
    assert in_place("sizing") < in_place("in_line")
