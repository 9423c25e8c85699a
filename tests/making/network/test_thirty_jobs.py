"""A project of a public library: its printed length, with any number of hands and with few."""

from __future__ import annotations

from collections.abc import Mapping

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.network import Activity, critical_path, scheduled
from binder_trade.explained import NotDefined

# PSPLIB, set j30, instance j301_1 (read): jobs 1 to 32, duration and successors; MPM-Time 38.
JOBS = """
0: 2 3 4 | 8: 6 11 15 | 4: 7 8 13 | 6: 5 9 10 | 3: 20 | 8: 30 | 5: 27 | 9: 12 19 27
2: 14 | 7: 16 25 | 9: 20 26 | 2: 14 | 6: 17 18 | 3: 17 | 9: 25 | 10: 21 22
6: 22 | 5: 20 22 | 3: 24 29 | 7: 23 25 | 2: 28 | 7: 23 | 2: 24 | 3: 30
3: 30 | 7: 31 | 8: 28 | 3: 31 | 7: 32 | 2: 32 | 2: 32 | 0:
"""

# The same file: what each job takes of which of the four resources, and how much of each there is.
NEEDS = """
- | 4 R1 | 10 R1 | 3 R4 | 3 R1 | 8 R4 | 4 R1 | 1 R2 | 6 R1 | 1 R4 | 5 R2 | 7 R2 | 4 R1 | 8 R2 | 3 R1
5 R4 | 8 R4 | 7 R4 | 1 R2 | 10 R2 | 6 R4 | 2 R1 | 3 R1 | 9 R2 | 4 R1 | 4 R3 | 7 R4 | 8 R2 | 7 R2
7 R2 | 2 R3 | -
"""
THERE_IS = {"R1": 12.0, "R2": 13.0, "R3": 4.0, "R4": 12.0}


def needs() -> dict[str, dict[str, float]]:
    """What each job takes."""
    rows = [one.split() for line in NEEDS.strip().splitlines() for one in line.split("|")]
    return {
        str(number): {row[1]: float(row[0])} if len(row) == 2 else {}
        for number, row in enumerate(rows, 1)
    }


def project() -> list[Activity]:
    """The jobs with what each waits for."""
    rows = [row.partition(":") for line in JOBS.strip().splitlines() for row in line.split("|")]
    follow = [later.split() for _, _, later in rows]
    return [
        Activity(
            str(number),
            float(duration),
            tuple(str(n) for n, later in enumerate(follow, 1) if str(number) in later),
        )
        for number, (duration, _, _) in enumerate(rows, 1)
    ]


def test_the_printed_length() -> None:
    jobs = project()
    assert len(jobs) == 32
    net = critical_path(jobs)
    assert net.length == 38
    assert net.path[0] == "1"
    assert net.path[-1] == "32"
    assert sum(one.duration for one in jobs if one.id in net.path) == 38


# PSPLIB, table of the shortest lengths of set j30: 43 for j301_1. Least slack need not find it, and
# here it does: what it gives is a schedule, so no shorter one than the table's can come out.
def test_the_shortest_length_of_the_table_with_four_resources() -> None:
    jobs, takes = project(), needs()
    assert len(takes) == 32
    made = scheduled(jobs, takes, THERE_IS)
    assert made.length == 43
    _is_kept(jobs, takes, THERE_IS, made.times)


# By definition: none before what it waits for, and never more taken than there is.
def _is_kept(
    jobs: list[Activity],
    takes: dict[str, dict[str, float]],
    there_is: dict[str, float],
    times: Mapping[str, tuple[float, float]],
) -> None:
    for one in jobs:
        start, end = times[one.id]
        assert end - start == pytest.approx(one.duration)
        assert all(times[name][1] <= start + 1e-9 for name in one.after)
    for at, _ in times.values():
        for what, much in there_is.items():
            busy = (name for name, (start, end) in times.items() if start <= at < end)
            assert sum(takes[name].get(what, 0.0) for name in busy) <= much + 1e-9


JOBS_AT_RANDOM = st.lists(
    st.tuples(st.integers(0, 9), st.integers(0, 2), st.sets(st.integers(0, 19), max_size=3)),
    max_size=20,
)


@given(rows=JOBS_AT_RANDOM)
def test_every_schedule_keeps_to_what_there_is(rows: list[tuple[int, int, set[int]]]) -> None:
    jobs = [
        Activity(str(n), float(long), tuple(str(one) for one in sorted(after) if one < n))
        for n, (long, _, after) in enumerate(rows)
    ]
    takes = {str(n): {"hands": float(much)} for n, (_, much, _) in enumerate(rows)}
    made = scheduled(jobs, takes, {"hands": 2.0})
    _is_kept(jobs, takes, {"hands": 2.0}, made.times)
    assert made.length >= critical_path(jobs).length


# One pair of hands does one thing after the other, whatever the order; a cure needs none.
def test_one_pair_of_hands() -> None:
    jobs = [Activity("glue", 1), Activity("cure", 9, ("glue",)), Activity("turn", 4)]
    jobs += [Activity("fit", 2, ("cure", "turn"))]
    hands = {name: {"hands": 1.0} for name in ("glue", "turn", "fit")}
    made = scheduled(jobs, hands, {"hands": 1.0})
    assert made.length == 1 + 9 + 2
    assert made.times["turn"] == (1, 5)


def test_more_than_there_is_is_refused() -> None:
    for asked in (3.0, -1.0, float("nan")):
        with pytest.raises(NotDefined):
            scheduled([Activity("a", 1)], {"a": {"hands": asked}}, {"hands": 2.0})
