"""`binder reckon` asked anything: an answer in finite figures, or a finding with a way out."""

from __future__ import annotations

import math
import random
import zlib

import pytest

from binder.api.answers import Answer
from binder.diagnostics import Diagnostic
from binder.host import Host
from binder.parameters import Environment
from binder.workshop import Workshop, read_workshop

ASKED = {
    "belt": ("24 mm", "to", "40 mm", "centres", "180 mm", "cord", "3 mm"),
    "circlip": ("8 mm",),
    "divide": ("54", "ratio", "40", "holes", "27 33 39"),
    "dovetail": ("root", "24 mm", "depth", "6 mm", "gib", "2 mm"),
    "drill": ("no. 34",),
    "fit": ("12 mm", "H7/g6"),
    "gauge": ("12 swg",),
    "gear": ("54", "module", "0.5 mm", "mate", "18"),
    "key": ("12 mm",),
    "leadscrew": ("Tr", "10", "x", "2", "load", "200 N"),
    "limits": ("12 mm", "H7"),
    "oring": ("bore", "12 mm", "moving"),
    "packing": ("rod", "6 mm"),
    "pattern": ("4 off on 30 mm PCD",),
    "press": ("12 mm", "H7/s6", "steel", "in", "brass,", "hub", "24 mm,", "length", "10 mm"),
    "ratio": ("1:3.75", "wheels", "20 25 30 40 50 60 75"),
    "screw-travel": ("lead", "2 mm", "divisions", "100", "travel", "12.34 mm"),
    "screw": ("M3 cap screw", "grip", "5 mm", "into", "brass", "10 mm", "deep"),
    "taper": ("large", "20 mm", "small", "18 mm", "length", "40 mm"),
    "thread": ("1/4 x 40 ME",),
    "train": ("18/54", "20/60", "speed", "60"),
    "wires": ("M6", "over", "0.58 mm"),
    "wood": ("oak", "width", "100 mm"),
}
HOSTILE = (
    *("", " ", "0", "-1", "0 mm", "-5 mm", "1e308 mm", "1e99", "nan", "inf", "nan mm", "½ in"),
    *("H7/q9", "ZC18/zc18", "M0", "M99999", "Tr 0 x 0", "Tr 10 x 100", "1:0", "0:1", "Morse 99"),
    *("0.0000001 mm", "500.1 mm", "90 deg", "180 deg", "6 s", "'", "{0}", "%s", "../../passwd"),
    *("9" * 5000, "x" * 10000, "1/0 in", "100000 off on 3 mm PCD", "12,5 mm", "1 1/2 in"),
    *(
        "\u202e",
        "\x00",
        "\u041c3",
        "\uff10 mm",
        "0 off on 3 mm PCD",
        "through",
        "counterbored",
        "steel",
    ),
)
ROUNDS = 120


@pytest.fixture(scope="module")
def owned(host: Host) -> Workshop:
    workshop, _ = read_workshop(None, Environment({}, host.series(), host.gauges(), None))
    assert workshop is not None
    return workshop


def _spoilt(words: tuple[str, ...], dice: random.Random) -> tuple[str, ...]:
    """A word or two become another, put in or left out."""
    spoilt = list(words)
    for _ in range(dice.randint(1, 2)):
        at = dice.randrange(len(spoilt) + 1)
        end = at + dice.randint(0, 1)
        spoilt[at:end] = dice.choice(([], [dice.choice(HOSTILE)], [dice.choice(HOSTILE)]))
    return tuple(spoilt)


@pytest.mark.parametrize("question", ASKED)
def test_any_words_get_an_answer_or_a_finding(question: str, host: Host, owned: Workshop) -> None:
    run = host.reckonings()[question].run
    plain = run(ASKED[question], owned)
    assert isinstance(plain, Answer)
    dice = random.Random(zlib.crc32(question.encode()))
    for _ in range(ROUNDS):
        words = _spoilt(ASKED[question], dice)
        answer = run(words, owned)
        if isinstance(answer, Answer):
            assert all(math.isfinite(one.value) for one in answer.results), words
        else:
            assert isinstance(answer, Diagnostic)
            assert answer.message
            assert answer.help, words


def test_a_question_of_ten_thousand_letters_is_not_said_back(host: Host, owned: Workshop) -> None:
    for question, reckoning in host.reckonings().items():
        answer = reckoning.run(("x" * 10000,), owned)
        assert isinstance(answer, Diagnostic), question
        assert len(answer.message) < 500, question


def test_a_place_on_the_axis_is_nought(host: Host, owned: Workshop) -> None:
    answer = host.reckonings()["pattern"].run(("4 off on 30 mm PCD",), owned)
    assert isinstance(answer, Answer)
    values = {one.name: one.value for one in answer.results}
    assert (values["x2"], values["y3"], values["x4"]) == (0, 0, 0)
