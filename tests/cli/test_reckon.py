"""`binder reckon`: the questions of the bench, and the names under which a script finds answers.

Values: ISO 286-2 (12 H7/g6), BS 93 (2 BA), ISO 724 (M6), ASME B94.11M (no. 34), BS 3737 (12 swg),
the model engineers' 40 tpi series (Whitworth form, BS 84).
"""

from __future__ import annotations

import json
from typing import Any

import pytest
from click.testing import CliRunner, Result

from binder.cli.reckon import command


def ask(*words: str) -> Result:
    """The command as typed."""
    return CliRunner().invoke(command, words)


def results(*words: str) -> dict[str, dict[str, Any]]:
    """The results by name, as a script reads them."""
    answer = ask(*words, "--format", "json")
    assert answer.exit_code == 0, answer.output
    content = json.loads(answer.stdout)
    assert content["working"]
    return {one["name"]: one for one in content["results"]}


@pytest.mark.parametrize(
    ("words", "unit", "expected"),
    [
        (
            ("fit", "12 mm", "H7/g6"),
            "um",
            {
                "hole_upper": 18,
                "hole_lower": 0,
                "shaft_upper": -6,
                "shaft_lower": -17,
                "clearance_max": 35,
                "clearance_min": 6,
            },
        ),
        (("limits", "12 mm", "H7"), "um", {"upper": 18, "lower": 0}),
        (("limits", "1/2 in", "h6"), "um", {"upper": 0, "lower": -11}),
        (("drill", "no. 34"), "mm", {"diameter": 2.8194}),
        (("gauge", "12 swg"), "mm", {"thickness": 2.6416}),
        (("thread", "M6"), "mm", {"major": 6, "pitch": 1, "effective": 5.350}),
        (("thread", "M6"), "mm", {"minor_internal": 4.917, "minor_external": 4.773}),
        (("thread", "2 BA"), "mm", {"major": 4.7, "pitch": 0.81, "depth": 0.485}),
        (("thread", "1/4 x 40 ME"), "mm", {"effective": 5.9434, "depth": 0.4066}),
    ],
)
def test_a_figure_has_its_name_and_unit(
    words: tuple[str, ...], unit: str, expected: dict[str, float]
) -> None:
    found = results(*words)
    for name, value in expected.items():
        assert found[name]["value"] == pytest.approx(value, abs=0.0006)
        assert found[name]["unit"] == unit


def test_a_drill_stands_beside_its_diameter() -> None:
    found = results("thread", "M6")
    assert found["tapping_drill"]["value"] == 5
    assert found["tapping_drill"]["designation"] == "5 mm"
    # Both bases in use, each named: of 1.299 P (US charts) and of 1.0825 P (ISO 68-1).
    assert found["tapping_percent"]["value"] == pytest.approx(77.0, abs=0.1)
    assert found["tapping_percent"]["designation"].endswith("US charts")
    assert found["tapping_percent_iso"]["value"] == pytest.approx(92.4, abs=0.1)
    assert found["clearance_drill"]["value"] == 6.6


@pytest.mark.parametrize(
    "words",
    [
        ("fit", "12 mm", "H7/q9"),
        ("fit", "12 mm"),
        ("fit",),
        ("limits", "600 mm", "H7"),
        ("limits", "0 mm", "H7"),
        ("limits", "-3 mm", "H7"),
        ("limits", "12", "H7"),
        ("thread", "M6 x 3"),
        ("thread", "M7.3"),
        ("drill", "no. 99"),
        ("gauge", "99 swg"),
        ("screw", "braided", "cord"),
        ("dovetail", "root", "24", "mm"),
    ],
)
def test_what_is_not_defined_is_a_finding_with_a_way_out(words: tuple[str, ...]) -> None:
    answer = ask(*words)
    assert answer.exit_code == 1
    assert "error[" in answer.stderr or "warning[" in answer.stderr
    assert "help:" in answer.stderr
    assert not answer.stdout


def test_a_flood_of_letters_is_refused() -> None:
    answer = ask("thread", "x" * 10_000)
    assert answer.exit_code == 1
    assert "question-too-long" in answer.stderr
    assert len(answer.stderr) < 600


def test_a_question_that_nobody_knows_is_wrong_usage() -> None:
    answer = ask("limit", "12 mm", "H7")
    assert answer.exit_code == 2
    assert "limits" in answer.stderr


def test_alone_it_lists_what_can_be_asked() -> None:
    answer = ask()
    assert answer.exit_code == 0
    for name in ("fit", "limits", "thread", "drill", "gauge", "screw", "dovetail"):
        assert f"binder reckon {name} " in answer.stdout
