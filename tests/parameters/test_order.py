"""The order in which sizes are worked out, and the circles that have none."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from binder.parameters.order import ordered

graphs = st.integers(1, 12).flatmap(
    lambda size: st.lists(
        st.lists(st.integers(0, size - 1), max_size=3, unique=True), min_size=size, max_size=size
    )
)


@given(graphs)
def test_all_but_circles_and_what_hangs_on_them(graph: list[list[int]]) -> None:
    follows = {str(at): tuple(map(str, links)) for at, links in enumerate(graph)}
    order, circles = ordered(follows)
    seen: set[str] = set()
    for name in order:
        assert set(follows[name]) <= seen
        seen.add(name)
    for circle in circles:
        assert not seen & set(circle)
        for name, after in zip(circle, (*circle[1:], circle[0]), strict=True):
            assert after in follows[name]
    left = set(follows) - seen
    assert bool(left) == bool(circles)
    assert left == _reaching({name for circle in circles for name in circle}, follows)


def _reaching(goal: set[str], follows: dict[str, tuple[str, ...]]) -> set[str]:
    """All names that follow from one of the goal, by however many steps."""
    found = set(goal)
    while more := {name for name in follows if set(follows[name]) & found} - found:
        found |= more
    return found


def test_a_circle_begins_with_its_first_line() -> None:
    follows = {"z": ("c",), "a": ("b",), "b": ("c",), "c": ("a",)}
    assert ordered(follows) == ((), (("a", "b", "c"),))


def test_circles_that_hang_together_are_each_found() -> None:
    follows = {"a": ("b",), "b": ("a",), "c": ("a", "d"), "d": ("c",), "e": ("d",), "f": ("f",)}
    assert ordered(follows) == ((), (("a", "b"), ("c", "d"), ("f",)))


def test_a_ring_of_a_hundred_thousand_is_found_without_recursion() -> None:
    many = 100_000
    follows = {str(at): (str((at + 1) % many),) for at in range(many)}
    _, circles = ordered(follows)
    assert [len(circle) for circle in circles] == [many]
