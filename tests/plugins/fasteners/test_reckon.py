"""Questions at the bench: `binder reckon screw|key|circlip|pattern`."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner, Result

from binder.cli.reckon import command

# question: some figures of its answer, in mm
ANSWERS: dict[tuple[str, ...], dict[str, float]] = {
    # ISO 273, ISO 2306, ISO 4762, DIN 974-1; 1.5 d in brass; 5 + 4.5 = 9.5 up to 10.
    ("screw", "M3 cap screw", "grip", "5 mm", "into", "brass", "10 mm deep"): {
        "clearance_hole": 3.4,
        "tapping_drill": 2.5,
        "head_diameter": 5.5,
        "head_height": 3.0,
        "counterbore_diameter": 6.5,
        "counterbore_depth": 3.4,
        "engagement_least": 4.5,
        "length": 10.0,
        "engagement": 5.0,
    },
    # The head let in: grip 8 - 5.4 = 2.6 + 5 = 7.6, so 8; 5.4 hold.
    ("screw", "M5 cap screw grip 8 mm counterbored into mild steel"): {
        "length": 8.0,
        "engagement": 5.4,
    },
    # ISO 773 / BS 4235-1.
    ("key", "12 mm"): {"key_width": 4, "key_height": 4, "shaft_depth": 2.5, "hub_depth": 1.8},
    # DIN 471, DIN 472.
    ("circlip", "12 mm"): {"groove_diameter": 11.5, "groove_width": 1.1, "thickness": 1.0},
    ("circlip", "bore 20 mm"): {"groove_diameter": 21.0},
    # Plane geometry.
    ("pattern", "4 off on 30 mm PCD"): {"x1": 15.0, "y2": 15.0, "chord": 21.2132},
    ("pattern", "at the corners 6 mm in face 60 mm x 40 mm"): {"x1": -24.0, "least_edge": 6.0},
}
REFUSED: tuple[tuple[str, ...], ...] = (
    ("screw",),
    ("screw", "M3 sokcet cap screw"),
    ("screw", "M11 cap screw"),
    ("screw", "M3 cap screw grip 0 mm"),
    ("screw", "M3 cap screw grip 500 mm into mild steel"),
    ("screw", "M3 cap screw into oak"),
    ("screw", "2 mm rivet"),
    ("screw", "M3 cap screw " * 100),
    ("key", "abc"),
    ("key", "0 mm"),
    ("key", "-3 mm"),
    ("key", "9999 mm"),
    ("key", "12"),
    ("circlip", "8.5 mm"),
    ("circlip", "nan mm"),
    ("pattern", "in two rows"),
    ("pattern", ""),
    ("pattern", "anyhow"),
)


def asked(words: tuple[str, ...], *options: str) -> Result:
    return CliRunner().invoke(command, [*words, *options])


@pytest.mark.parametrize(("words", "wanted"), ANSWERS.items())
def test_answers(words: tuple[str, ...], wanted: dict[str, float]) -> None:
    result = asked(words, "--format", "json")
    assert result.exit_code == 0, result.output
    answer = json.loads(result.stdout)
    found = {one["name"]: one["value"] for one in answer["results"]}
    for name, value in wanted.items():
        assert found[name] == pytest.approx(value, abs=1e-3), name
    assert answer["working"]


@pytest.mark.parametrize("words", REFUSED)
def test_refusals_are_findings(words: tuple[str, ...]) -> None:
    result = asked(words)
    assert result.exit_code == 1, result.output
    wanted = "question-too-long" if max(map(len, words)) > 120 else "hardware-words-unreadable"
    assert wanted in result.output
    assert "Traceback" not in result.output
