"""Threads, drills and wires asked for at the bench."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from click.testing import CliRunner

from binder.cli.main import cli

INCH = Path(__file__).parents[3] / "specs" / "workshops" / "inch.yaml"
Figures = dict[str, tuple[float, str, str]]


def asked(*words: str, code: int = 0) -> Figures:
    """The results by name: value, unit, designation."""
    done = CliRunner().invoke(cli, ["reckon", *words, "--format", "json"])
    assert done.exit_code == code, done.output
    content = json.loads(done.stdout)
    assert all({"name", "formula", "value", "source"} == set(row) for row in content["working"])
    return {
        one["name"]: (one["value"], one["unit"], one.get("designation", ""))
        for one in content["results"]
    }


@pytest.mark.parametrize(
    # ISO 2306 and ISO 273; the 75 % chart; BS 1157; published lists as in tests/trade/threading.
    ("thread", "drill", "clear"),
    [
        ("M2.5", 2.05, 2.9),
        ("M3", 2.5, 3.4),
        ("M12", 10.2, 13.5),
        ("4-40 UNC", 2.2606, 3.2639),
        ("1/4-20 UNC", 5.1054, 6.7564),
        ("1/4 BSW", 5.1, 6.6),
    ],
)
def test_the_drills_of_a_thread(thread: str, drill: float, clear: float) -> None:
    got = asked("thread", thread)
    assert got["tapping_drill"][0] == pytest.approx(drill)
    assert got["clearance_drill"][0] == pytest.approx(clear)


def test_the_sizes_of_a_thread() -> None:
    # ISO 68-1: d − 0.649519 P, d − 1.082532 P, h3 = 0.613434 P.
    got = asked("thread", "M6")
    assert got["major"] == (6.0, "mm", "")
    assert got["effective"][0] == pytest.approx(5.350481)
    assert got["minor_internal"][0] == pytest.approx(4.917468)
    assert got["minor_external"][0] == pytest.approx(4.773131)
    assert got["depth"][0] == pytest.approx(0.613434, abs=1e-6)
    assert got["pitch"] == (1.0, "mm", "")
    assert got["tapping_percent"][0] == pytest.approx(76.98, abs=0.01)
    assert got["tapping_percent"][1:] == ("%", "3/4 H, US charts")
    assert got["tapping_percent_iso"][0] == pytest.approx(92.38, abs=0.01)


def test_words_may_come_apart() -> None:
    got = asked("thread", "1/4", "x", "40", "ME", "into", "brass")
    # 6.35 − 0.70 × 1.280654 × 0.635 = 5.781 mm; the drill nearest to it is no. 1, 5.791 mm.
    assert got["tapping_drill"][2] == "no. 1 drill"


def test_a_named_workshop_decides_the_drill() -> None:
    got = asked("thread", "M3", "--workshop", str(INCH))
    assert got["tapping_drill"][2] == "no. 40 drill"


@pytest.mark.parametrize(
    ("written", "mm", "name"),
    # ASME B94.11M and exact fractions.
    [
        ("no. 34", 2.8194, "no. 34 drill"),
        ("F", 6.5278, "letter F drill"),
        ("7/64 in", 2.778125, "7/64 in"),
        ("3.3 mm", 3.3, "3.3 mm"),
    ],
)
def test_a_drill(written: str, mm: float, name: str) -> None:
    value, unit, designation = asked("drill", written)["diameter"]
    assert value == pytest.approx(mm)
    assert (unit, designation) == ("mm", name)


def test_the_size_over_wires() -> None:
    # 5.3505 + 3 × 0.58 − 0.866025 = 6.2245 mm.
    got = asked("wires", "M6", "over", "0.58", "mm")
    assert got["over_wires"][0] == pytest.approx(6.2245, abs=1e-4)
    assert got["best_wire"][0] == pytest.approx(0.57735, abs=1e-5)


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (("thread", "M6 x 3"), "thread-not-made"),
        (("thread", "nonsense"), "thread-not-made"),
        (("thread", ""), "thread-not-made"),
        (("thread", "M0"), "thread-not-made"),
        (("drill", "no. 81"), "drill-unknown"),
        (("drill", "-3 mm"), "drill-unknown"),
        (("drill", ""), "drill-unknown"),
        (("wires", "M6 over 3 mm"), "drill-unknown"),
        (("wires", "M6 over no. 0"), "drill-unknown"),
    ],
)
def test_what_there_is_not_is_refused(words: tuple[str, str], code: str) -> None:
    done = CliRunner().invoke(cli, ["reckon", words[0], "--", words[1]])
    assert done.exit_code == 1
    assert f"error[{code}]" in done.stderr
    assert "help: " in done.stderr
