"""Any number and any words get an answer or a refusal in words, never another exception."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.fits.bearings import clearance_by_speed, running_clearance, wear
from binder_trade.fits.bush import press_bush
from binder_trade.fits.cylinders import joint
from binder_trade.fits.drawn_rod import on_drawn_rod
from binder_trade.fits.duties import choose
from binder_trade.fits.finish import finish, lost_clearance_um, thread_grows_um
from binder_trade.fits.gaps import judge_gap
from binder_trade.fits.given import given_by, read_tool, ways
from binder_trade.fits.metals import metal
from binder_trade.fits.press import grip, hold
from binder_trade.fits.shrink import cool_shaft, heat_ring
from binder_trade.fits.thumb_rule import thumb_shaft
from binder_trade.fits.to_suit import target_mm
from binder_trade.fits.warmth import clearance_at

ANY = st.floats(allow_nan=True, allow_infinity=True) | st.sampled_from(
    [0.0, -0.0, -1.0, 1e-300, 1e300, 6.0, 12.0, 0.02]
)
STEEL, BRONZE = metal("steel"), metal("bronze")


def pressed(a: float, b: float, c: float, d: float) -> object:
    return grip(joint(a, STEEL, BRONZE, b, c), d), press_bush(joint(a, BRONZE, STEEL, b, c), d)


def held(a: float, b: float, c: float, d: float) -> object:
    return hold(joint(a, STEEL, STEEL, None), b, c, d)


def shrunk(a: float, b: float, c: float, d: float) -> object:
    return heat_ring(a, b, STEEL, c, d)


def cooled(a: float, b: float, c: float, d: float) -> object:
    return cool_shaft(a, b, STEEL, c, d)


def running(a: float, b: float, c: float, d: float) -> object:
    return wear(a, b, c, d, "brass")


def warmed(a: float, b: float, c: float, d: float) -> object:
    return clearance_at(a, b, STEEL, BRONZE, c, d)


def suited(a: float, b: float, c: float, d: float) -> object:
    return target_mm(a, "hole", b, c), target_mm(a, "shaft", b, d)


def judged(a: float, b: float, c: float, d: float) -> object:
    return judge_gap("retained", a, b), lost_clearance_um(c, d)


def ruled(a: float, b: float, c: float, d: float) -> object:
    return running_clearance(a), clearance_by_speed(b, c), thumb_shaft(d, "push")


def threads(a: float, b: float, c: float, d: float) -> object:
    return thread_grows_um(a, b), thread_grows_um(c, d)


def chosen(a: float, b: float, c: float, d: float) -> object:
    return choose("runs", a), on_drawn_rod("runs", b), choose("press", c), choose("push", d)


def handed(a: float, b: float, c: float, d: float) -> object:
    return [given_by(way, size, "f7") for way in ways() for size in (a, b, c, d)]


CALLS: tuple[Callable[[float, float, float, float], object], ...] = (
    pressed,
    held,
    shrunk,
    cooled,
    running,
    warmed,
    suited,
    judged,
    ruled,
    threads,
    chosen,
    handed,
)
WORDS: tuple[Callable[[str], object], ...] = (
    lambda text: choose(text, 6),
    read_tool,
    metal,
    finish,
    lambda text: thumb_shaft(6, text),
)


def refusal(ask: Callable[[], object]) -> NotDefined | None:
    """What was refused; nothing where there was an answer; any other exception is a fault."""
    try:
        ask()
    except NotDefined as refused:
        return refused
    return None


@pytest.mark.parametrize("call", CALLS)
@given(ANY, ANY, ANY, ANY)
def test_any_numbers(
    call: Callable[[float, float, float, float], object], a: float, b: float, c: float, d: float
) -> None:
    refused = refusal(lambda: call(a, b, c, d))
    if refused:
        assert not refused.reason[0].isupper()
        assert refused.way_out


@pytest.mark.parametrize("ask", WORDS)
@given(st.text(max_size=80))
def test_any_words(ask: Callable[[str], object], text: str) -> None:
    refused = refusal(lambda: ask(text))
    if refused:
        assert len(refused.reason) < 200
        assert refused.way_out
