"""Early and late times, floats and chances of printed networks."""

from __future__ import annotations

from itertools import pairwise

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.network import Activity, Guess, critical_path, outlook
from binder_trade.explained import NotDefined

# B.W. Taylor, Introduction to Management Science, chapter 8, solutions: arrows between events,
# as (from, to, duration), and the printed ES, EF, LS, LF, slack.
FIRST = {
    (1, 2, 7): (0, 7, 2, 9, 2),
    (1, 3, 10): (0, 10, 0, 10, 0),
    (2, 4, 6): (7, 13, 9, 15, 2),
    (3, 4, 5): (10, 15, 10, 15, 0),
    (3, 5, 4): (10, 14, 14, 18, 4),
    (4, 5, 3): (15, 18, 15, 18, 0),
    (5, 6, 2): (18, 20, 18, 20, 0),
}
WITH_DUMMY = {
    (1, 2, 8): (0, 8, 1, 9, 1),
    (1, 3, 10): (0, 10, 0, 10, 0),
    (1, 4, 9): (0, 9, 6, 15, 6),
    (2, 5, 6): (8, 14, 9, 15, 1),
    (2, 6, 4): (8, 12, 16, 20, 8),
    (3, 5, 5): (10, 15, 10, 15, 0),
    (4, 5, 0): (9, 9, 15, 15, 6),
    (4, 7, 7): (9, 16, 20, 27, 11),
    (5, 7, 12): (15, 27, 15, 27, 0),
    (5, 8, 15): (15, 30, 16, 31, 1),
    (6, 9, 18): (12, 30, 20, 38, 8),
    (7, 8, 4): (27, 31, 27, 31, 0),
    (8, 9, 7): (31, 38, 31, 38, 0),
}
Arrows = dict[tuple[int, int, int], tuple[int, int, int, int, int]]


def by_arrows(arrows: Arrows) -> list[Activity]:
    """Activities of arrows: each waits for those that end where it begins."""
    return [
        Activity(
            f"{start}-{end}",
            duration,
            tuple(f"{one}-{two}" for one, two, _ in arrows if two == start),
        )
        for start, end, duration in arrows
    ]


@pytest.mark.parametrize(("arrows", "length"), [(FIRST, 20), (WITH_DUMMY, 38)])
def test_printed_tables(arrows: Arrows, length: int) -> None:
    net = critical_path(by_arrows(arrows))
    assert net.length == length
    for (start, end, _), printed in arrows.items():
        one = net.times[f"{start}-{end}"]
        found = [one.early_start, one.early_finish, one.late_start, one.late_finish]
        assert [*found, one.total_float] == list(printed)


def test_the_printed_critical_path() -> None:
    assert critical_path(by_arrows(FIRST)).path == ("1-3", "3-4", "4-5", "5-6")


# A page on critical path analysis (read): seven tasks of weeks, with total and free float.
WEEKS = {"A": 1, "B": 3, "C": 2, "D": 3, "E": 3, "F": 2, "G": 2}
AFTER = {"B": "A", "C": "A", "D": "B", "E": "C", "F": "DE", "G": "F"}
FLOATS = {"A": (0, 0), "B": (0, 0), "C": (1, 0), "D": (0, 0), "E": (1, 1), "F": (0, 0), "G": (0, 0)}


def test_printed_total_and_free_floats() -> None:
    net = critical_path(named(WEEKS, AFTER))
    assert net.length == 11
    assert {n: (t.total_float, t.free_float) for n, t in net.times.items()} == FLOATS
    assert net.path == ("A", "B", "D", "F", "G")


def named(durations: dict[str, int], after: dict[str, str]) -> list[Activity]:
    return [Activity(one, time, tuple(after.get(one, ""))) for one, time in durations.items()]


@pytest.mark.parametrize(
    ("durations", "after", "length", "critical"),
    [
        # Exercise data of a manufacturing project; the result computed apart.
        (
            {"A": 5, "B": 5, "C": 11, "D": 9, "E": 4, "F": 10, "G": 4, "H": 3, "I": 4, "J": 3},
            {"C": "A", "D": "B", "E": "C", "F": "CD", "G": "E", "H": "G", "I": "G", "J": "FH"},
            30,
            "ACEGHJ",
        ),
        # Exercise data of nine activities; the result computed apart.
        (
            {"a": 4, "b": 6, "c": 4, "d": 2, "e": 4, "f": 5, "g": 3, "h": 4, "i": 2},
            {"b": "a", "c": "a", "d": "c", "e": "b", "f": "bd", "g": "c", "h": "fg", "i": "eh"},
            21,
            "abcdfhi",
        ),
        # A worksheet on network scheduling (read): path A B D E G, 16 hours.
        (
            {"A": 6, "B": 2, "C": 2, "D": 3, "E": 4, "F": 2, "G": 1},
            {"B": "A", "C": "A", "D": "B", "F": "C", "E": "DF", "G": "E"},
            16,
            "ABDEG",
        ),
    ],
)
def test_length_and_critical_activities(
    durations: dict[str, int], after: dict[str, str], length: int, critical: str
) -> None:
    net = critical_path(named(durations, after))
    assert net.length == length
    assert sorted(net.critical) == sorted(critical)


# Hillier and Lieberman, the construction project of the chapter on PERT (from memory).
GUESSES = {
    "A": (1, 2, 3), "B": (2, 3.5, 8), "C": (6, 9, 18), "D": (4, 5.5, 10), "E": (1, 4.5, 5),
    "F": (4, 4, 10), "G": (5, 6.5, 11), "H": (5, 8, 17), "I": (3, 7.5, 9), "J": (3, 9, 9),
    "K": (4, 4, 4), "L": (1, 5.5, 7), "M": (1, 2, 3), "N": (5, 5.5, 9),
}  # fmt: skip
WAITS = {
    "B": "A", "C": "B", "D": "C", "E": "C", "F": "E", "G": "D", "H": "EG", "I": "C", "J": "FI",
    "K": "J", "L": "J", "M": "H", "N": "KL",
}  # fmt: skip


def test_the_printed_outlook() -> None:
    found = outlook({name: Guess(*one) for name, one in GUESSES.items()}, WAITS)
    assert "".join(found.network.path) == "ABCEFJLN"
    assert found.mean == pytest.approx(44, abs=1e-6)
    assert found.variance == pytest.approx(9, abs=1e-6)
    assert found.chance_by(47) == pytest.approx(0.8413, abs=1e-3)


@st.composite
def projects(draw: st.DrawFn) -> list[Activity]:
    """Activities that wait for earlier ones only."""
    count = draw(st.integers(1, 12))
    return [
        Activity(
            f"a{number}",
            draw(st.integers(0, 9)),
            tuple(f"a{one}" for one in sorted(draw(st.sets(st.integers(0, number - 1)))))
            if number
            else (),
        )
        for number in range(count)
    ]


@given(projects())
def test_the_length_is_that_of_the_longest_way(project: list[Activity]) -> None:
    net = critical_path(project)
    web: nx.DiGraph[str] = nx.DiGraph()
    by_id = {one.id: one for one in project}
    web.add_nodes_from(["start", *by_id])
    for one in project:
        for earlier in one.after or ("start",):
            web.add_edge(earlier, one.id, weight=one.duration)
    assert net.length == nx.dag_longest_path_length(web)
    assert sum(by_id[name].duration for name in net.path) == net.length
    assert all(one in by_id[two].after for one, two in pairwise(net.path))
    for times in net.times.values():
        assert 0 <= times.free_float <= times.total_float


@given(projects(), st.data())
def test_floats_are_what_may_be_lost(project: list[Activity], data: st.DataObject) -> None:
    one = data.draw(st.sampled_from(project))
    net = critical_path(project)
    for lost, grows in ((net.times[one.id].total_float, 0), (net.times[one.id].total_float + 1, 1)):
        longer = [
            Activity(a.id, a.duration + (lost if a.id == one.id else 0), a.after) for a in project
        ]
        assert critical_path(longer).length == net.length + grows


@pytest.mark.parametrize(
    "wrong",
    [
        [Activity("a", 1), Activity("a", 2)],
        [Activity("a", -1)],
        [Activity("a", float("nan"))],
        [Activity("a", 1, ("b",))],
        [Activity("a", 1, ("b",)), Activity("b", 1, ("a",))],
    ],
)
def test_what_is_no_network(wrong: list[Activity]) -> None:
    with pytest.raises(NotDefined):
        critical_path(wrong)


def test_guesses_rise() -> None:
    with pytest.raises(NotDefined):
        outlook({"a": Guess(3, 2, 4)}, {})


def test_nothing_to_do_takes_no_time() -> None:
    assert critical_path([]).length == 0
