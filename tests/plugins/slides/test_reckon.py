"""`binder reckon` for dovetails, tapers, leadscrews and wood, against hand reckonings."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

from binder.cli.reckon import command


def reckon(*words: str) -> tuple[int, str, str]:
    done = CliRunner().invoke(command, list(words))
    return done.exit_code, done.stdout, done.stderr


def results(*words: str) -> dict[str, float]:
    code, out, err = reckon(*words, "--format", "json")
    assert code == 0, err
    return {one["name"]: one["value"] for one in json.loads(out)["results"]}


# Published sheet of dovetail formulas, figures worked from them: 30 wide, 10 deep, 6 mm pins.
# Here the tail is 0.5 mm lower, so only its own size over pins is that of the sheet.
def test_a_dovetail() -> None:
    found = results("dovetail", "root", "30 mm", "depth", "10 mm", "pins", "6 mm")
    assert found["over_pins_male"] == pytest.approx(46.3923, abs=2e-4)
    assert found["between_pins_female"] == pytest.approx(25.1547, abs=2e-4)
    assert found["width_top"] == pytest.approx(30 + 19 / 1.7320508, abs=1e-5)
    assert found["pin"] == 6


def test_the_words_may_come_in_one_piece_or_in_many() -> None:
    apart = results("dovetail", "root", "1", "in", "depth", "1/4", "in")
    assert apart == results("dovetail", "root 1 in depth 1/4 in")
    assert apart["width_root"] == 25.4


# Geometry: 1 in 20 over 40 mm takes 2 mm; half angle atan(1/40).
def test_a_taper() -> None:
    found = results("taper", "1:20", "large", "20 mm", "length", "40 mm", "between", "100 mm")
    assert found["small"] == pytest.approx(18)
    assert found["half_angle"] == pytest.approx(1.43210, abs=1e-5)
    assert found["set_over"] == pytest.approx(2.5)


# The same taper opens 2 atan(1/40); 100 mm of sine bar stand on 4.997 mm.
def test_a_taper_on_a_sine_bar() -> None:
    found = results("taper", "1:20", "large", "20 mm", "length", "40 mm", "sine_bar", "100 mm")
    assert found["sine_packing"] == pytest.approx(4.99688, abs=1e-4)


# ISO 296: Morse 2, 17.780 mm at the gauge line; 0.59941 in in a foot.
def test_a_morse_taper() -> None:
    found = results("taper", "Morse", "2")
    assert found["large"] == pytest.approx(17.78)
    assert found["per_foot"] == pytest.approx(0.59941, abs=1e-4)


# ISO 2904: Tr 10 x 2 has d2 9, d3 7.5, D1 8.
def test_a_leadscrew() -> None:
    found = results("leadscrew", "Tr 10 x 2", "starts", "2", "load", "200 N")
    assert (found["pitch_diameter"], found["minor"], found["nut_minor"]) == (9, 7.5, 8)
    assert found["lead"] == 4
    assert 0 < found["efficiency"] < 100


def test_a_leadscrew_without_a_load_has_no_torque() -> None:
    assert "torque_raise" not in results("leadscrew", "square 12 x 3")


# Wood Handbook: oak, flat-sawn, 0.00365 for each per cent.
def test_wood() -> None:
    found = results("wood", "oak width 100 mm now 10 driest 8 dampest 13 hole 4.5 mm")
    assert found["shrinks"] == pytest.approx(0.73)
    assert found["slot"] == pytest.approx(6.325)


REFUSED = (
    ("dovetail",),
    ("dovetail", "rot 24 mm depth 5 mm"),
    ("dovetail", "root 24 mm"),
    ("dovetail", "root 24 mm depth"),
    ("dovetail", "root 24 mm root 25 mm depth 5 mm"),
    ("dovetail", "root nan depth 5 mm"),
    ("dovetail", "root 24 deg depth 5 mm"),
    ("dovetail", "root -24 mm depth 5 mm"),
    ("dovetail", "root 24 mm depth 5 mm pins 50 mm"),
    ("taper", "steep"),
    ("taper", "Morse 9"),
    ("taper", "1:0 large 20 mm length 40 mm"),
    ("leadscrew", "Tr 10"),
    ("leadscrew", "Tr 10 x 2 starts 1.5"),
    ("leadscrew", "Tr 10 x 2 load 0 N"),
    ("leadscrew", "Tr 10 x 2 friction 9"),
    ("wood", "cheese width 9 mm"),
    ("wood", "oak width 9 mm cut diagonal"),
    ("wood", "oak"),
)


@pytest.mark.parametrize("words", REFUSED)
def test_what_has_no_answer_is_refused(words: tuple[str, ...]) -> None:
    code, _out, err = reckon(*words)
    assert code == 1
    assert "slide-question-unreadable" in err
    assert "help:" in err
