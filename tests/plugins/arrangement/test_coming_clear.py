"""What straddles a post or hangs under a sheave is drawn away from it: plane geometry, by hand."""

from __future__ import annotations

import pytest

from binder_plugins.arrangement.coming_clear import way_clear

POST = ((-6.0, -6.0, 0.0), (6.0, 6.0, 80.0))
BEFORE = ((-10.0, -8.0, 20.0), (90.0, -6.0, 110.0))
BEHIND = ((-10.0, 6.0, 20.0), (90.0, 8.0, 110.0))
ALONG_PIN = (0.0, -1.0, 0.0)


@pytest.mark.parametrize(
    ("bar", "way"),
    [
        (((7.0, -6.0, 40.0), (20.0, 6.0, 54.0)), (1.0, 0.0, 0.0)),
        (((-20.0, -6.0, 40.0), (-7.0, 6.0, 54.0)), (-1.0, 0.0, 0.0)),
        (((-3.0, -6.0, 81.0), (3.0, 6.0, 90.0)), (0.0, 0.0, 1.0)),
    ],
)
def test_two_sides_come_off_a_post_on_the_side_of_what_joins_them(
    bar: tuple[tuple[float, float, float], tuple[float, float, float]],
    way: tuple[float, float, float],
) -> None:
    """Along the pin the bar would go through the post, and on the open side it would meet it."""
    assert way_clear(ALONG_PIN, (BEFORE, BEHIND, bar), POST) == way


def test_one_side_alone_comes_off_along_its_pin() -> None:
    assert way_clear(ALONG_PIN, (BEFORE,), POST) == ALONG_PIN


def test_what_is_closed_all_round_keeps_its_way() -> None:
    """A bar through the post itself: no way is free of it, and the joint's own stays."""
    bar = ((-3.0, -20.0, 40.0), (3.0, 20.0, 44.0))
    assert way_clear(ALONG_PIN, (BEFORE, BEHIND, bar), POST) == ALONG_PIN


def test_what_hangs_clear_below_comes_off_downwards_and_what_stands_on_it_upwards() -> None:
    up, low = (0.0, 0.0, 1.0), ((-4.0, -4.0, -60.0), (4.0, 4.0, -20.0))
    assert way_clear(up, (low,), POST) == (0.0, 0.0, -1.0)
    stands = ((-4.0, -4.0, 80.0), (4.0, 4.0, 90.0))
    assert way_clear(up, (stands,), POST) == up
