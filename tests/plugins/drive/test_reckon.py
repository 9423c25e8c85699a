"""`binder reckon belt|gear|train|ratio|screw-travel|divide` against published worked examples."""

from __future__ import annotations

import json
from functools import cache
from math import degrees, radians
from typing import Any

import pytest
from click.testing import CliRunner

from binder.api.answers import Answer
from binder.cli.reckon import command
from binder.diagnostics import Diagnostic
from binder.host import Host
from binder.parameters import Environment
from binder.workshop import Workshop, read_workshop


@cache
def _loaded() -> tuple[Host, Workshop]:
    host = Host.load()
    workshop, _ = read_workshop(None, Environment({}, host.series(), host.gauges(), None))
    assert workshop is not None
    return host, workshop


def run(*words: str) -> Answer | Diagnostic:
    """The question as the command asks it, without starting it anew."""
    host, workshop = _loaded()
    return host.reckonings()[words[0]].run(words[1:], workshop)


def answer(*words: str) -> Answer:
    found = run(*words)
    assert isinstance(found, Answer), found
    return found


def results(*words: str) -> dict[str, float]:
    return {one.name: one.value for one in answer(*words).results}


def told(*words: str) -> dict[str, str]:
    return {one.name: one.designation for one in answer(*words).results}


def typed(*words: str) -> tuple[int, str, str]:
    """Exit code and output of the command itself."""
    done = CliRunner().invoke(command, list(words))
    return done.exit_code, done.stdout, done.stderr


# Belts


def test_a_crossed_belt() -> None:
    """Khurmi and Gupta, Theory of Machines, example 11.6: 450 and 200 mm at 1.95 m.

    Printed: 4.975 m (by the series) and 3.477 rad on both pulleys.
    """
    found = results("belt", "450 mm to 200 mm centres 1950 mm laid crossed")
    assert found["length"] == pytest.approx(4975, abs=1)
    assert found["wrap_first"] == pytest.approx(degrees(3.477), abs=0.1)
    assert found["wrap_second"] == pytest.approx(degrees(3.477), abs=0.1)


def test_an_open_belt() -> None:
    """Khurmi and Gupta, example 11.15: 600 and 240 mm at 3 m, 7.33 m."""
    found = results("belt", "600", "mm", "to", "240", "mm", "centres", "3000", "mm")
    assert found["length"] == pytest.approx(7330, abs=5)


def test_an_open_belt_in_inches() -> None:
    """A published belt example: 8 and 4 in at 18 in: 55.06 in; 167.2° on the small pulley."""
    found = results("belt", "8 in to 4 in centres 18 in")
    assert found["length"] == pytest.approx(55.06 * 25.4, abs=0.02 * 25.4)
    assert min(found["wrap_first"], found["wrap_second"]) == pytest.approx(167.2, abs=0.1)
    assert found["ratio"] == 2


def test_short_centres_are_reckoned_without_the_series() -> None:
    """30 and 90 mm at 100 mm, solved exactly by hand: 397.56496; the series gives 397.49556."""
    found = results("belt", "30 mm to 90 mm centres 100 mm")
    assert found["length"] == pytest.approx(397.56496, abs=1e-4)


@pytest.mark.parametrize("laid", ["open", "crossed"])
def test_a_length_gives_the_centres_back(laid: str) -> None:
    there = results("belt", f"24 mm to 40 mm centres 180 mm laid {laid}")
    back = results("belt", f"24 mm to 40 mm length {there['length']:.6f} mm laid {laid}")
    assert back["centres"] == pytest.approx(180, abs=1e-4)


def test_a_short_wrap_is_said() -> None:
    notes = answer("belt", "10 mm to 90 mm centres 55 mm").notes
    assert any("120°" in note for note in notes)


# Gears


def test_a_gear_by_diametral_pitch() -> None:
    """Wentzell, Machine Design, example 11.3: 16 and 32 teeth of 8 DP: 2 in, and 3 in apart."""
    found = results("gear", "16 dp 8 mate 32")
    assert found["pitch_diameter"] == pytest.approx(2 * 25.4)
    assert found["centres"] == pytest.approx(3 * 25.4)


@pytest.mark.parametrize(
    ("teeth", "across", "span"), [(12, 2, 4.5963), (20, 3, 7.6604), (30, 4, 10.7526)]
)
def test_a_span(teeth: int, across: int, span: float) -> None:
    """Cos α (π (k − ½) + z inv α) at module 1, 20°: closed formula of handbooks."""
    found = answer("gear", f"{teeth} module 1 mm").results
    one = next(one for one in found if one.name == "span")
    assert one.value == pytest.approx(span, abs=1e-4)
    assert one.title == f"over {across} teeth"


def test_the_blank_and_the_depth() -> None:
    """ISO 53 profile A: tips m (z + 2), depth 2.25 m."""
    found = results("gear", "54 teeth module 0.5 mm")
    assert (found["blank"], found["depth"]) == pytest.approx((28, 1.125))
    assert found["cutter"] == 6  # 35 to 54 teeth, the involute set of eight


@pytest.mark.parametrize(("outside", "teeth"), [(52, 24), (44, 20)])
def test_a_found_gear(outside: int, teeth: int) -> None:
    """(z + 2) m: module 2 for both; 12.7 DP is none that is sold."""
    words = ("gear", f"{teeth} outside {outside} mm")
    assert results(*words)["candidate_1"] == 2
    assert told(*words)["candidate_1"].startswith("module 2")
    assert any("Measure" in note for note in answer(*words).notes)


def test_undercut_is_said_with_its_limit() -> None:
    """2 / sin² 20° = 17.1 teeth: Bevan, Theory of Machines, chapter 10, example 4."""
    assert any("17.1" in note for note in answer("gear", "12 module 1 mm").notes)
    assert not any("undercut" in note for note in answer("gear", "18 module 1 mm").notes)


# Trains


def test_a_compound_train() -> None:
    """Wentzell, example 11.1: 3600 r/min through 20/60 twice gives 400."""
    found = results("train", "20/60 20/60 speed 3600")
    assert found["speed"] == pytest.approx(400)
    assert found["ratio"] == pytest.approx(1 / 9)


def test_each_pair_turns_the_next_the_other_way() -> None:
    assert results("train", "18/54")["ratio"] == pytest.approx(-1 / 3)


def test_change_wheels_for_an_inch_thread() -> None:
    """Bevan, chapter 11, example 1a: 26 tpi by a leadscrew of 4: 25 × 30 / (65 × 75)."""
    words = ("ratio", "pitch 26 tpi leadscrew 4 tpi wheels 25 30 65 75 40 50")
    assert results(*words)["train_1"] == pytest.approx(25.4 / 26)
    wheels = sorted(told(*words)["train_1"].replace("/", " ").replace("×", " ").split())
    assert wheels == ["25", "30", "65", "75"]


def test_a_metric_thread_by_127_teeth() -> None:
    """120/127 on a leadscrew of 8 tpi cuts 3 mm exactly: 25.4 / 8 × 120 / 127."""
    words = ("ratio", "pitch 3 mm leadscrew 8 tpi wheels 20 40 60 120 127")
    assert results(*words)["train_1"] == pytest.approx(3, abs=1e-12)
    assert told(*words)["train_1"] == "120/127"


def test_the_usual_stand_in_for_127() -> None:
    """80/63 for 1.27 is 125 parts in a million short: published table of transposing wheels."""
    words = ("ratio", "127:100 wheels 80 63 sizes 2")
    found = answer(*words).results[0]
    assert found.designation == "80/63"
    assert "-125.0 ppm" in found.title


# Dials and dividing


def test_travel_by_a_dial() -> None:
    """2 mm lead and 100 divisions: 0.02 mm each; 12.34 mm is 6 turns and 17 divisions."""
    found = results("screw-travel", "lead 2 mm divisions 100 travel 12.34 mm")
    assert (found["turn"], found["division"]) == pytest.approx((2, 0.02))
    assert (found["turns"], found["divisions"]) == pytest.approx((6, 17))


def test_the_dial_of_an_inch_screw() -> None:
    """A tenth of an inch for a turn and 100 divisions: a thousandth each (common practice)."""
    found = results("screw-travel", "lead 0.1 in divisions 100")
    assert found["division"] == pytest.approx(0.0254)


@pytest.mark.parametrize(
    ("asked", "turns", "move"),
    [
        # US Army course OD1644: 40/6 is 6 turns and 12 of 18 or 26 of 39.
        ("6 ratio 40 holes 18 39", 6, {(12, 18), (26, 39)}),
        # The same: 40/42 is 20 of 21 or 40 of 42.
        ("42 ratio 40 holes 21 42", 0, {(20, 21), (40, 42)}),
        # By enumeration: 40/33 is 1 turn and 7 of 33; 90/14 is 6 and 9 of 21 or 21 of 49.
        ("33 ratio 40 holes 21 23 27 29 31 33", 1, {(7, 33)}),
        ("14 ratio 90 holes 21 49", 6, {(9, 21), (21, 49)}),
    ],
)
def test_simple_indexing(asked: str, turns: int, move: set[tuple[int, int]]) -> None:
    found = results("divide", asked)
    assert found["turns"] == turns
    assert (found["holes"], found["circle"]) in move


# 360° / 7 = 51.4286°. On 1 : 90 a turn is 4°, and a mark of 5′ is the 48th of it: 51.4286° are 12
# turns and 3.4286°, 41.14 marks, so 41: 0.14 × 5′ = 0.71′ too near; 3 × that is the worst, 2.14′.
def test_a_rotary_table_divides_by_its_dial() -> None:
    found = answer("divide", "7 ratio 90 mark 5 min")
    sizes = {one.name: one.value for one in found.results}
    assert sizes["turn"] == 4
    assert sizes["worst"] == pytest.approx(15 / 7)
    # 15 / 7 minutes on a radius of 50 mm: geometry.
    assert sizes["worst_on_100_mm"] == pytest.approx(50 * radians(15 / 7 / 60))
    assert "2: 51°25.7′, 12 turns and 41 marks, 0.71′ too near" in found.notes
    assert len([one for one in found.notes if one[0].isdigit()]) == 7


@pytest.mark.parametrize(
    ("asked", "turn", "first"),
    [
        ("11 ratio 72 mark 0.1 deg", 5, "2: 32°43.6′, 6 turns and 27 marks, 1.6′ too near"),
        ("11 ratio 60 mark 1 min", 6, "2: 32°43.6′, 5 turns and 164 marks, 0.36′ too far"),
        ("11 ratio 40 mark 2 min", 9, "2: 32°43.6′, 3 turns and 172 marks, 0.36′ too far"),
    ],
)
def test_tables_of_other_worms(asked: str, turn: float, first: str) -> None:
    """360° / 11 = 32°43.636′ (division): by a mark of 6′ 32°42′, of 1′ 32°44′, of 2′ 32°44′."""
    found = answer("divide", asked)
    assert {one.name: one.value for one in found.results}["turn"] == turn
    assert first in found.notes


def test_the_table_of_the_workshop_is_taken_where_it_has_no_head() -> None:
    """The built-in one: 1 : 72. 72 / 18 = 4 turns; 54 is not whole, and goes by the dial."""
    assert results("divide", "18")["turns"] == 4
    assert results("divide", "54")["worst"] == pytest.approx(2)


# The shape of the answer

ASKED = (
    ("belt", "24 mm to 40 mm centres 180 mm cord 3 mm"),
    ("gear", "54 module 0.5 mm mate 18"),
    ("gear", "54 outside 28 mm bore 4 mm"),
    ("train", "18/54 20/60 speed 60"),
    ("ratio", "1:3.75 wheels 20 25 30 40 50 60 75"),
    ("ratio", "pitch 1.5 mm leadscrew 8 tpi wheels 20 25 30 40 50 60 127"),
    ("screw-travel", "lead 2 mm divisions 100 travel 12.34 mm"),
    ("divide", "54 ratio 40 holes 27 33 39"),
    ("divide", "7 ratio 90 mark 5 min"),
)


@pytest.mark.parametrize("words", ASKED)
def test_every_result_has_a_name_of_its_own_and_a_source(words: tuple[str, str]) -> None:
    found = answer(*words)
    names = [one.name for one in found.results]
    assert len(names) == len(set(names))
    assert all(one.title for one in found.results)
    assert found.working
    assert all(step.source for step in found.working)


@pytest.mark.parametrize("words", [ASKED[0], ASKED[2]])
def test_the_shape_of_the_json(words: tuple[str, str]) -> None:
    code, out, err = typed(*words, "--format", "json")
    assert code == 0, err
    found: dict[str, Any] = json.loads(out)
    assert {"results", "working"} <= set(found)
    for one in found["results"]:
        assert {"name", "value", "unit"} <= set(one)
        assert isinstance(one["value"], (int, float))


# Refusals

REFUSED = (
    ("belt",),
    ("belt", "24 mm"),
    ("belt", "24 mm to 40 mm"),
    ("belt", "24 mm to 40 mm centres 20 mm"),
    ("belt", "24 mm to 40 mm centres 180 mm length 460 mm"),
    ("belt", "24 mm to 40 mm length 90 mm"),
    ("belt", "24 mm to 40 mm centres 180 mm laid sideways"),
    ("belt", "-24 mm to 40 mm centres 180 mm"),
    ("belt", "0 mm to 0 mm centres 180 mm"),
    ("gear",),
    ("gear", "54"),
    ("gear", "54 module 0 mm"),
    ("gear", "54 module 0.5 mm dp 48"),
    ("gear", "54 dp 0"),
    ("gear", "0 module 1 mm"),
    ("gear", "2 module 1 mm"),
    ("gear", "-5 module 1 mm"),
    ("gear", "5.5 module 1 mm"),
    ("gear", "99999 module 1 mm"),
    ("gear", "54 module 1 mm angle 90 deg"),
    ("gear", "54 module 1 mm shift 40"),
    ("gear", "54 outside 0 mm"),
    ("gear", "54 module 1 mm mate 0"),
    ("train",),
    ("train", "0/54"),
    ("train", "18/0"),
    ("train", "18/54 nonsense"),
    ("train", " ".join(["18/54"] * 14)),
    ("ratio",),
    ("ratio", "1:0 wheels 20 30"),
    ("ratio", "-2 wheels 20 30"),
    ("ratio", "1:3 wheels 20"),
    ("ratio", "1:3 wheels 20 thirty"),
    ("ratio", "1:3 wheels " + "9 " * 41),
    ("ratio", "pitch 0 mm leadscrew 8 tpi wheels 20 30 40"),
    ("ratio", "pitch 1 mm leadscrew 0 tpi wheels 20 30 40"),
    ("ratio", "1:3 wheels 20 30 sizes 99"),
    ("screw-travel",),
    ("screw-travel", "lead 2 mm"),
    ("screw-travel", "divisions 100"),
    ("screw-travel", "lead 0 mm divisions 100"),
    ("screw-travel", "lead 2 mm divisions 0"),
    ("divide",),
    ("divide", "0 ratio 40 holes 27"),
    ("divide", "54 ratio 0 holes 27"),
    ("divide", "54 ratio 40 holes 0"),
    ("divide", "nan ratio 40 holes 27"),
    ("divide", "54 ratio 90 mark 5 mm"),
    ("divide", "54 ratio 90 mark 0 min"),
    ("divide", "54 ratio 90 mark 7 min"),  # a turn of 4° is no whole number of them
    # No circle of the Brown and Sharpe plates divides by 127: published article on indexing.
    ("divide", "127 ratio 40 holes 15 16 17 18 19 20 21 23 27 29 31 33 37 39 41 43 47 49"),
)


@pytest.mark.parametrize("words", REFUSED, ids=" ".join)
def test_what_cannot_be_answered_is_refused(words: tuple[str, ...]) -> None:
    found = run(*words)
    assert isinstance(found, Diagnostic)
    assert found.code.name == "drive-question-unreadable"
    assert found.message
    assert found.help


def test_every_question_has_a_refusal_and_an_answer() -> None:
    asked = {"belt", "gear", "train", "ratio", "screw-travel", "divide"}
    assert {words[0] for words in REFUSED} == {words[0] for words in ASKED} == asked


@pytest.mark.parametrize("words", [("belt", "24 mm"), ("divide", "54 ratio 0 holes 27")])
def test_a_refusal_ends_with_one(words: tuple[str, ...]) -> None:
    code, out, err = typed(*words)
    assert code == 1
    assert "drive-question-unreadable" in out + err
    assert "help" in out + err
