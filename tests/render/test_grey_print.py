"""A binder printed in greys alone loses nothing: every ink stands off the paper by its lightness.

Sources: WCAG 2.1, relative luminance and contrast ratio; 1.4.3 (text, 4.5) and 1.4.11 (what else
has to be seen, 3). A grey print keeps the luminance of a colour and drops its hue.
"""

from __future__ import annotations

import re
from importlib.resources import files

import pytest

STYLE = files("binder.render").joinpath("style")
RULE = re.compile(r"([a-z-]+):\s*([^;{}]*#[0-9a-f]{3,6}[^;{}]*)")
HEX = re.compile(r"#([0-9a-f]{6}|[0-9a-f]{3})\b")
TEXT, SEEN = 4.5, 3.0
# Paper, and letters cut out of a dark ground.
WHITE = ("#fff",)


def luminance(ink: str) -> float:
    text = ink[1:] if len(ink) == 7 else "".join(2 * one for one in ink[1:])
    shares = (int(text[n : n + 2], 16) / 255 for n in (0, 2, 4))
    red, green, blue = (
        one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in shares
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def on_paper(ink: str) -> float:
    return 1.05 / (luminance(ink) + 0.05)


# WCAG 2.1 itself: black on white is 21 to 1; #767676 is the lightest grey that passes at 4.5.
def test_the_measure() -> None:
    assert on_paper("#000") == pytest.approx(21)
    assert on_paper("#767676") == pytest.approx(4.54, abs=0.01)


@pytest.mark.parametrize("name", ["pages.css", "paper.css"])
def test_every_ink_stands_off_the_paper(name: str) -> None:
    found = RULE.findall(STYLE.joinpath(name).read_text(encoding="utf-8"))
    assert found
    for what, value in found:
        for ink in (f"#{one}" for one in HEX.findall(value)):
            if ink not in WHITE:
                assert on_paper(ink) >= (TEXT if what == "color" else SEEN), (what, ink)


@pytest.mark.parametrize("name", ["pages.css", "paper.css"])
def test_letters_cut_out_of_a_ground_are_read_as_well(name: str) -> None:
    for block in re.findall(r"\{([^{}]*)\}", STYLE.joinpath(name).read_text(encoding="utf-8")):
        inks = dict(RULE.findall(block))
        if inks.get("color", "").strip() in WHITE:
            assert on_paper(f"#{HEX.findall(inks['background'])[0]}") >= TEXT
