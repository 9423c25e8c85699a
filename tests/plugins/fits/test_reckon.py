"""Limits, fits and press fits asked at the bench."""

from __future__ import annotations

import json
from functools import cache

import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from binder.api import Answer, Diagnostic
from binder.cli.reckon import command
from binder.workshop import Workshop
from binder_plugins.fits import binder_reckonings


def asked(*words: str) -> tuple[int, dict[str, float]]:
    done = CliRunner().invoke(command, [*words, "--format", "json"])
    if done.exit_code:
        return done.exit_code, {}
    answer = json.loads(done.stdout)
    assert answer["working"]
    return done.exit_code, {one["name"]: one["value"] for one in answer["results"]}


@pytest.mark.parametrize(
    ("size", "fit", "hole", "shaft"),
    [  # ISO 286-2 as in ANSI B4.2 and JIS B 0401 tables: upper and lower deviations in µm
        ("12 mm", "H7/g6", (18, 0), (-6, -17)),
        ("25 mm", "H7/g6", (21, 0), (-7, -20)),
        ("12 mm", "H8/f7", (27, 0), (-16, -34)),
        ("40 mm", "H7/s6", (25, 0), (59, 43)),
        ("20 mm", "F8/h6", (53, 20), (0, -13)),
        ("3 mm", "H7/p6", (10, 0), (12, 6)),
        ("1/2 in", "H7/h6", (18, 0), (0, -11)),
    ],
)
def test_fits(size: str, fit: str, hole: tuple[int, int], shaft: tuple[int, int]) -> None:
    code, found = asked("fit", size, fit)
    assert code == 0
    assert found == {
        "hole_upper": hole[0],
        "hole_lower": hole[1],
        "shaft_upper": shaft[0],
        "shaft_lower": shaft[1],
        "clearance_max": hole[0] - shaft[1],
        "clearance_min": hole[1] - shaft[0],
    }


def test_a_fit_by_duty() -> None:
    assert asked("fit", "12 mm", "runs slow and oiled") == asked("fit", "12 mm", "H7/g6")
    assert asked("fit", "12 mm", "runs", "slow") == asked("fit", "12 mm", "H7/g6")


@pytest.mark.parametrize(
    ("size", "cls", "upper", "lower"),
    [("12 mm", "H7", 18, 0), ("6 mm", "h9", 0, -30), ("25 mm", "h10", 0, -84)],
)
def test_limits(size: str, cls: str, upper: float, lower: float) -> None:
    assert asked("limits", size, cls) == (0, {"upper": upper, "lower": lower})


def test_a_press_fit() -> None:
    # By hand, Lamé: one steel, solid shaft 20 in ring 40, H7/s6 at its tightest 48 µm:
    # p = E δ/(2 d) (1 − (d/D)²) = 207000 × 0.048/40 × 0.75 = 186.3 N/mm².
    code, found = asked("press", "20 mm", "H7/s6", "steel in steel, hub 40 mm, length 15 mm")
    assert code == 0
    assert found["pressure_max"] == pytest.approx(186.3, abs=0.05)
    assert found["hub_stress"] == pytest.approx(186.3 * 5 / 3, abs=0.1)
    # F = µ p π d L with the most friction of the table, 0.15.
    assert found["press_force"] == pytest.approx(0.15 * 186.3 * 3.14159 * 300, rel=1e-3)


@pytest.mark.parametrize(
    "words",
    [
        ("fit", "12 mm", "H7/q9"),
        ("fit", "12 mm", "wobbly"),
        ("fit", "12 mm"),
        ("fit", "twelve", "H7/g6"),
        ("fit", "12", "H7/g6"),
        ("fit", "12 kg", "H7/g6"),
        ("fit", "0 mm", "H7/g6"),
        ("fit", "-6 mm", "H7/g6"),
        ("fit", "900 mm", "H7/g6"),
        ("limits", "12 mm"),
        ("limits", "12 mm", "H19"),
        ("limits", "12 mm", "H7", "and more"),
        ("press", "12 mm", "H7/g6"),
        ("press", "12 mm", "H7/s6", "cheese in brass"),
        ("press", "12 mm", "H7/s6", "hub 10 mm"),
    ],
)
def test_what_cannot_be_answered_is_refused_with_a_finding(words: tuple[str, ...]) -> None:
    done = CliRunner().invoke(command, [*words, "--format", "json"])
    assert done.exit_code == 1
    assert done.exception is None or isinstance(done.exception, SystemExit)
    output = done.stdout + done.stderr
    assert "class-undefined" in output or "fit-question-unread" in output


def test_unreadable_questions_have_their_code() -> None:
    done = CliRunner().invoke(command, ["fit", "twelve", "H7/g6"])
    assert "fit-question-unread" in done.output + done.stderr


@settings(max_examples=60, deadline=None)
@given(st.text(max_size=30), st.text(max_size=20))
def test_any_words_get_an_answer_or_a_finding(first: str, second: str) -> None:
    workshop = default_workshop()
    for one in binder_reckonings():
        for words in ((first, second), ("6 mm", first), ("6 mm", "H7/s6", second)):
            answer = one.run(words, workshop)
            assert isinstance(answer, (Answer, Diagnostic))


@cache
def default_workshop() -> Workshop:
    from binder.host import Host
    from binder.parameters import Environment
    from binder.workshop import read_workshop

    host = Host.load()
    found, _ = read_workshop(None, Environment({}, host.series(), host.gauges(), None))
    assert found is not None
    return found
