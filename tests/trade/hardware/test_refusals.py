"""What no table lists is refused with the nearest that is, never with another exception."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from math import inf, nan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade import hardware
from binder_trade.hardware import NotListed

BY_SIZE: dict[str, Callable[[float], hardware.Listed]] = {
    "dowel": hardware.dowel,
    "hardened dowel": lambda size: hardware.dowel(size, hardened=True),
    "taper pin": hardware.taper_pin,
    "spring pin": hardware.spring_pin,
    "split pin": hardware.split_pin,
    "split pin for": hardware.split_pin_for,
    "circlip shaft": hardware.circlip_shaft,
    "circlip bore": hardware.circlip_bore,
    "e clip": hardware.e_clip,
    "parallel key": hardware.parallel_key,
    "woodruff for": hardware.woodruff_for,
    "woodruff": lambda size: hardware.woodruff(size, size),
    "keyway": lambda size: hardware.keyway_width(size, "close"),
    "spanner": hardware.spanner,
    "hexagon key": hardware.hexagon_key,
}
BY_THREAD: dict[str, Callable[[str], object]] = {
    "head": lambda thread: hardware.head("cap", thread),
    "nut": lambda thread: hardware.nut("full", thread),
    "washer": lambda thread: hardware.washer("plain", thread),
    "grub": lambda thread: hardware.grub("cup", thread),
    "stud": lambda thread: hardware.stud(thread, "1 d"),
    "counterbore": lambda thread: hardware.counterbore("cap", thread),
    "countersink": lambda thread: hardware.countersink("countersunk", thread),
    "spotface": hardware.spotface,
    "lengths": lambda thread: hardware.lengths("cap", thread),
    "threaded": lambda thread: hardware.threaded_length("cap", thread, 20),
    "nominal": hardware.nominal_mm,
}
ODD = (nan, inf, -inf, 0.0, -1.0, 1e300)


def asked(look_up: Callable[[], object]) -> tuple[str, ...]:
    """The words of a refusal, or none where the look-up has an answer."""
    try:
        look_up()
    except NotListed as refused:
        return refused.reason, refused.way_out
    return ()


@pytest.mark.parametrize("size", ODD)
@pytest.mark.parametrize("name", BY_SIZE)
def test_sizes_that_are_none(name: str, size: float) -> None:
    with pytest.raises(NotListed) as caught:
        BY_SIZE[name](size)
    assert caught.value.reason
    assert caught.value.way_out


@given(size=st.floats())
@pytest.mark.parametrize("name", BY_SIZE)
def test_any_number_is_listed_or_refused(name: str, size: float) -> None:
    words = asked(partial(BY_SIZE[name], size))
    assert all(words)


@given(thread=st.text(max_size=30))
@pytest.mark.parametrize("name", BY_THREAD)
def test_any_text_is_a_thread_or_refused(name: str, thread: str) -> None:
    with pytest.raises(NotListed):
        BY_THREAD[name](f"?{thread}")


@given(
    size=st.sampled_from(["0", "1", "4", "9", "13", "1/4", "5/16", "3/7", "1/0", "99", "2.5"]),
    tail=st.sampled_from(["-40 UNC", "-0 UNC", "-28 UNF", " BSW", " BSF", " BA"]),
)
@pytest.mark.parametrize("name", BY_THREAD)
def test_names_that_look_like_threads(name: str, size: str, tail: str) -> None:
    for thread in (f"{size}{tail}", f"M{size}"):
        assert all(asked(partial(BY_THREAD[name], thread)))


@pytest.mark.parametrize(
    ("ask", "reason", "way_out"),
    [
        (
            lambda: hardware.head("cap", "M11"),
            "ISO 4762 does not list M11",
            "nearest listed: M10, M12",
        ),
        (
            lambda: hardware.head("cap", "2 BA"),
            "'cap' is no kind of head that is listed for BA threads",
            "listed: round, cheese, countersunk, hexagon",
        ),
        (
            lambda: hardware.circlip_shaft(23),
            "DIN 471 does not list a shaft of 23 mm",
            "nearest listed: 22, 24 mm",
        ),
        (
            lambda: hardware.parallel_key(6),
            "ISO/R 773 does not list a shaft of 6 mm",
            "listed: over 6 up to 58 mm",
        ),
        (
            lambda: hardware.nominal_mm("4-44 UNC"),
            "ASME B1.1 does not list 4-44 UNC",
            "listed: 4-40 UNC",
        ),
        (
            lambda: hardware.dowel(7),
            "ISO 2338 does not list a pin of 7 mm",
            "nearest listed: 6, 8 mm",
        ),
        (
            lambda: hardware.counterbore("countersunk", "M3"),
            "a countersunk head sits in a countersink",
            "ask for its countersink",
        ),
        (
            lambda: hardware.countersink("cap", "M3"),
            "a cap head has no countersink",
            "ask for its counterbore",
        ),
        (
            lambda: hardware.dowel(3, hardened=True, tolerance="h8"),
            "ISO 8734 lists no pin to h8",
            "take m6, or a soft pin to h8",
        ),
    ],
)
def test_the_words_of_a_refusal(ask: Callable[[], object], reason: str, way_out: str) -> None:
    with pytest.raises(NotListed) as caught:
        ask()
    assert (caught.value.reason, caught.value.way_out) == (reason, way_out)


@pytest.mark.parametrize(
    "ask",
    [
        lambda: hardware.nut("wing", "M3"),
        lambda: hardware.washer("large", "2 BA"),
        lambda: hardware.grub("round", "M3"),
        lambda: hardware.grub("cup", "M3", "cross recess"),
        lambda: hardware.stud("M6", "3 d"),
        lambda: hardware.rivet("2 mm", "pan"),
        lambda: hardware.rivet("2", "snap"),
        lambda: hardware.keyway_width(5, "loose"),
        lambda: hardware.dowel_limits_um(5, "h7"),
        lambda: hardware.spotface("M6", "garden"),
        lambda: hardware.wood_screw(13),
        lambda: hardware.inch_taper_pin("11"),
        lambda: hardware.woodruff_number("999"),
        lambda: hardware.equivalent("DIN 99999"),
        lambda: hardware.threaded_length("cap", "M3", nan),
        lambda: hardware.taper_pin(3).large_end_mm(-1),
        lambda: hardware.lengths("round", "M3"),
    ],
)
def test_other_words_that_are_not_listed(ask: Callable[[], object]) -> None:
    with pytest.raises(NotListed):
        ask()
