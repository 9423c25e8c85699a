"""Same, alike, mating, and taken for one another."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder_trade.threads import Thread, is_alike, is_same, lookalikes, mates

Named = Callable[[str], Thread]


def test_one_thread_by_two_names_is_the_same(named: Named) -> None:
    assert is_same(named("M3"), named("M3 x 0.5"))
    assert not is_same(named("M3"), named("M3 x 0.35"))
    assert not is_same(named("M8"), named("M8 LH"))


@pytest.mark.parametrize(
    ("one", "other"),
    [("1/4 x 26", "1/4 BSF"), ("1/8 x 40", "1/8 BSW"), ("3/16 x 32", "3/16 BSF")],
)
def test_two_series_may_have_one_shape(one: str, other: str, named: Named) -> None:
    assert is_alike(named(one), named(other))
    assert not is_same(named(one), named(other))
    assert mates(named(one), named(other)).is_mating


@pytest.mark.parametrize(
    ("screw", "nut", "word"),
    [
        ("M3", "5-40 UNC", "pitch"),
        ("M3", "M3 LH", "left hand"),
        ("1/8 x 40", "5-40 UNC", "flanks"),
        ("1/4 x 40", "5/16 x 40", "across"),
        ("M6", "0 BA", "flanks"),
    ],
)
def test_what_does_not_go_together_says_why(screw: str, nut: str, word: str, named: Named) -> None:
    found = mates(named(screw), named(nut))
    assert not found.is_mating
    assert word in found.reason


@pytest.mark.parametrize(
    ("text", "others"),
    [
        # Common practice: the muddles of a British or American scrap box.
        ("M3", {"5 BA", "5-40 UNC", "1/8 x 40 ME"}),
        ("M5", {"2 BA", "10-32 UNF", "3/16 BSF"}),
        ("M6", {"0 BA", "1/4-28 UNF", "1/4 BSF"}),
        ("1/4-20 UNC", {"1/4 BSW"}),
    ],
)
def test_look_alikes(text: str, others: set[str], named: Named) -> None:
    one = named(text)
    found = lookalikes(one)
    assert others <= {other.designation for other in found}
    assert not any(mates(one, other).is_mating for other in found)
