"""Threads, gauges and drills as makers write them."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.units import INCH, GaugeName, Misread, ThreadName, read_gauge, read_thread

THREADS = {
    "M3": ("metric", "3", "", None, None),
    "m3": ("metric", "3", "", None, None),
    "M3 \u00d7 0.5": ("metric", "3", "", "0.5", None),
    "M3x0.5": ("metric", "3", "", "0.5", None),
    "M2.5 x 0.45 mm": ("metric", "2.5", "", "0.45", None),
    "2 BA": ("BA", None, "2", None, None),
    "10BA": ("BA", None, "10", None, None),
    "1/4 \u00d7 40": ("ME", "6.35", "", "0.635", 40),
    "1/4 x 40 ME": ("ME", "6.35", "", "0.635", 40),
    "5/16 x 32": ("ME", "7.9375", "", "0.79375", 32),
    "1/4 x 26 brass": ("brass", "6.35", "", "127/130", 26),
    "1/4-20 UNC": ("UNC", "6.35", "", "1.27", 20),
    "1 1/4-7 UNC": ("UNC", "31.75", "", "127/35", 7),
    "1-8 UNC": ("UNC", "25.4", "", "3.175", 8),
    "no. 4-40 UNC": ("UNC", None, "4", "0.635", 40),
    "5-40 UNC": ("UNC", None, "5", "0.635", 40),
    "#10-32 UNF": ("UNF", None, "10", "0.79375", 32),
    "1/4 BSF": ("BSF", "6.35", "", None, None),
    "3/8 BSW": ("BSW", "9.525", "", None, None),
    "3/8 x 16 BSW": ("BSW", "9.525", "", "1.5875", 16),
    "1/8 BSP": ("BSP", None, "1/8", None, None),
    "G 1/8": ("BSP", None, "1/8", None, None),
    "G1/2": ("BSP", None, "1/2", None, None),
}


@pytest.mark.parametrize("text", THREADS)
def test_threads(text: str) -> None:
    family, major, number, pitch, tpi = THREADS[text]
    assert read_thread(text) == ThreadName(
        family,
        None if major is None else Fraction(major),
        number,
        None if pitch is None else Fraction(pitch),
        tpi,
        text,
    )


@pytest.mark.parametrize("text", ["1/4 x 40 ME LH", "M6 left hand", "2 BA LH"])
def test_left_hand(text: str) -> None:
    found = read_thread(text)
    assert isinstance(found, ThreadName)
    assert found.is_left_hand


@pytest.mark.parametrize(
    "text",
    [
        "",
        "M0",
        "M",
        "M3 x",
        "M3 x 0",
        "M3 x 8",
        "1/0-20 UNC",
        "0/4 BSF",
        "1/4 x 0",
        "1/4 x 3 ME",
        "1/4 x 20",
        "10-32",
        "13-24 UNC",
        "no. 4-0 UNC",
        "26 BA",
        "1/8 BSX",
        "M\u0663",
        "M3 x 0.5 and more",
        "M" + "3" * 100,
    ],
)
def test_no_threads(text: str) -> None:
    found = read_thread(text)
    assert isinstance(found, Misread)
    assert found.reason


@given(st.integers(1, 64), st.sampled_from([4, 8, 16, 32, 64]), st.integers(10, 80))
def test_inch_threads_are_exact(over: int, under: int, tpi: int) -> None:
    found = read_thread(f"{over}/{under} x {tpi} ME")
    if isinstance(found, ThreadName):
        assert found.major_mm == Fraction(over, under) * INCH
        assert found.pitch_mm == INCH / tpi
    else:
        assert Fraction(1, tpi) >= Fraction(over, under)


@pytest.mark.parametrize(
    ("text", "series", "member"),
    [
        ("12 swg", "swg", "12"),
        ("12swg", "swg", "12"),
        ("0 SWG", "swg", "0"),
        ("3/0 swg", "swg", "3/0"),
        ("20 awg", "awg", "20"),
        ("no. 34 drill", "number_drill", "34"),
        ("no. 1 drill", "number_drill", "1"),
        ("no. 80 drill", "number_drill", "80"),
        ("no 34 drill", "number_drill", "34"),
        ("No. 34 drill", "number_drill", "34"),
        ("#34 drill", "number_drill", "34"),
        ("letter F drill", "letter_drill", "F"),
        ("letter f drill", "letter_drill", "F"),
    ],
)
def test_gauges(text: str, series: str, member: str) -> None:
    assert read_gauge(text) == GaugeName(series, member, text)


@pytest.mark.parametrize(
    "text", ["", "swg", "112 swg", "8/0 swg", "no. 0 drill", "no. 81 drill", "34 drill", "F drill"]
)
def test_no_gauges(text: str) -> None:
    assert isinstance(read_gauge(text), Misread)
