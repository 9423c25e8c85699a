"""Mistakes in a workshop file: the code, and exactly the characters that are meant."""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.parameters import Environment
from binder.source import read_text
from binder.spec.validate import typed
from binder.workshop import read_workshop
from binder.workshop.models import WorkshopEntry
from binder.workshop.runs import SetReading
from tests.workshop.conftest import HEAD, WITH_SAW, Read, covered

LATHE = "swing: 180 mm, between_centres: 300 mm, spindle_bore: 20 mm, speeds: 300 r/min"

REFUSED = {
    "unknown key": (
        HEAD + "machines: {saws: {hacksaw: {kerff: 1 mm, kerf: 1 mm, cuts: [bars]}}}",
        "unknown-key", "kerff",
    ),
    "unknown section": (HEAD + "drils: {metric: 3 mm}", "unknown-key", "drils"),
    "key missing": (
        HEAD + "machines: {saws: {hacksaw: {kerf: 1 mm}}}", "key-missing", "hacksaw",
    ),
    "bare number": (HEAD + "drills: {metric: [3 mm, 4]}", "unit-missing", "4"),
    "bare end of a run": (
        HEAD + "drills: {metric: 1 to 13 mm by 0.1 mm}", "unit-missing", "1",
    ),
    "negative kerf": (
        HEAD + "machines: {saws: {hacksaw: {kerf: -1 mm, cuts: [bars]}}}", "out-of-range", "-1 mm",
    ),
    "wrong dimension": (
        HEAD + f"machines: {{lathes: {{one: {{{LATHE.replace('r/min', 'mm')}}}}}}}",
        "wrong-dimension", "300 mm",
    ),
    "step misses": (
        HEAD + "drills: {metric: 1 mm to 13 mm by 0.7 mm}", "bad-run", "0.7 mm",
    ),
    "step left out": (
        HEAD + "drills: {metric: 1 mm to 13 mm}", "bad-run", "1 mm to 13 mm",
    ),
    "too many sizes": (
        HEAD + "drills: {metric: 1 mm to 13 mm by 0.01 mm}", "bad-run", "0.01 mm",
    ),
    "run backwards": (
        HEAD + "drills: {metric: 13 mm to 1 mm by 1 mm}", "range-backwards",
        "13 mm to 1 mm by 1 mm",
    ),
    "unit misspelt at the end of a run": (
        HEAD + "drills: {metric: 1 mm to 13 mn by 1 mm}", "unit-unknown", "mn",
    ),
    "the same in quotes": (
        HEAD + 'drills: {metric: "1 mm to 13 mn by 1 mm"}', "unit-unknown", "mn",
    ),
    "gauge misspelt": (
        HEAD + "drills: {numbers: numbr drills 1 to 3}", "bad-run", "numbr drills",
    ),
    "no such gauge number": (
        HEAD + "drills: {numbers: number drills 1 to 99}", "bad-run", "99",
    ),
    "gauge backwards": (
        HEAD + "drills: {letters: letter drills C to A}", "range-backwards",
        "letter drills C to A",
    ),
    "word in a list": (
        HEAD + "machines: {saws: {hacksaw: {kerf: 1 mm, cuts: [bars, metal]}}}",
        "not-one-of", "metal",
    ),
    "range of one end": (
        HEAD + "holding: {chucks: {three-jaw: {jaws: 3, grips: 80 mm}}}", "bad-range", "80 mm",
    ),
    "range backwards": (
        HEAD + "holding: {drill_chucks: {keyed chuck: 13 mm to 1 mm}}", "range-backwards",
        "13 mm to 1 mm",
    ),
    "range of no width": (
        HEAD + "holding: {drill_chucks: {keyed chuck: 13 mm to 13 mm}}", "range-backwards",
        "13 mm to 13 mm",
    ),
    "pitch without unit": (
        HEAD + f"machines: {{lathes: {{one: {{{LATHE}, leadscrew: 8}}}}}}", "bad-pitch", "8",
    ),
    "half a tooth": (
        HEAD + f"machines: {{lathes: {{one: {{{LATHE}, change_wheels: [20, 25.5]}}}}}}",
        "bad-number", "25.5",
    ),
    "price in words": (
        HEAD
        + "shelf: [{stock: 6 mm round bar, material: brass, length: 300 mm, price: about 5}]",
        "bad-price", "about 5",
    ),
    "form of stock": (
        HEAD + "shelf: [{stock: 6 mm round bra, material: brass, length: 300 mm}]",
        "stock-unknown", "6 mm round bra",
    ),
    "unit in a section": (
        HEAD + "shelf: [{stock: 6 mm x 6 mn flat bar, material: brass, length: 300 mm}]",
        "unit-unknown", "mn",
    ),
    "table for a list": (HEAD + "dies: {metric: M3}", "wrong-shape", "{metric: M3}"),
}  # fmt: skip

SEEN_TOGETHER = {
    "die twice": (WITH_SAW + "dies: [M3, M4, m 3]", "tool-twice", "m 3"),
    "tap in a set and alone": (WITH_SAW + "taps: {sets: [M3], plug: [M3]}", "tool-twice", "M3"),
    "drill twice in a drawer": (
        WITH_SAW + "drills: {odd: [1 mm to 3 mm by 1 mm, 2 mm]}", "tool-twice", "2 mm",
    ),
    "unread thread": (WITH_SAW + "dies: [1/4 coarse]", "bad-designation", "1/4 coarse"),
    "price without currency": (
        WITH_SAW + "shelf: [{stock: 6 mm round bar, material: brass, length: 300 mm, price: 5}]",
        "currency-missing", "5",
    ),
    "bar without size": (
        WITH_SAW + "shelf: [{stock: round bar, material: brass, length: 300 mm}]",
        "shelf-size-missing", "round bar",
    ),
    "sheet without width": (
        WITH_SAW + "buying: {prices: [{stock: 2 mm sheet, material: brass, length: 300 mm}]}",
        "shelf-size-missing", "2 mm sheet",
    ),
    "swings exchanged": (
        HEAD
        + "machines: {lathes: {one: {"
        + LATHE.replace("180 mm", "100 mm, swing_over_cross_slide: 180 mm")
        + "}}}",
        "sizes-contradict", "180 mm",
    ),
    "module and diametral pitch": (
        WITH_SAW + "cutters: {gear_cutters: [{module: 1 mm, diametral_pitch: 20, "
        "pressure_angle: 20 deg, numbers: 1}]}",
        "one-of-two", "diametral_pitch",
    ),
    "no pitch of a gear cutter": (
        WITH_SAW + "cutters: {gear_cutters: [{pressure_angle: 20 deg, numbers: 1}]}",
        "one-of-two", "numbers",
    ),
    "no machine": (HEAD + "machines: {}", "no-machine", "machines"),
}  # fmt: skip

CASES = REFUSED | SEEN_TOGETHER


@pytest.mark.parametrize("name", CASES)
def test_code_and_place(name: str, read: Read) -> None:
    text, code, place = CASES[name]
    _, findings = read(text)
    assert [(one.code.name, covered(text, one)) for one in findings] == [(code, place)]


@pytest.mark.parametrize("name", REFUSED)
def test_an_error_leaves_no_workshop(name: str, read: Read) -> None:
    workshop, findings = read(REFUSED[name][0])
    assert workshop is None
    assert all(finding.is_error for finding in findings)


def test_help_of_a_misspelt_key(read: Read) -> None:
    _, (finding,) = read(REFUSED["unknown section"][0])
    assert finding.help == "did you mean 'drills'?"


def test_help_of_a_bare_number_speaks_of_no_spec(read: Read) -> None:
    _, (finding,) = read(REFUSED["bare number"][0])
    assert finding.help == "write 4 mm or 4 in"


def test_a_misspelt_key_in_a_line_of_a_list_goes_by_the_list(read: Read) -> None:
    _, findings = read(HEAD + "shelf: [{stok: 6 mm round bar, material: brass, length: 9 mm}]")
    assert [one.message for one in findings] == [
        "'shelf' has no `stock`",
        "'stok' is not known in 'shelf'",
    ]


def test_a_warning_leaves_the_workshop(read: Read) -> None:
    workshop, (finding,) = read(SEEN_TOGETHER["die twice"][0])
    assert workshop is not None
    assert not finding.is_error


MANY_RUNS = f"{HEAD}drills:\n" + "".join(
    f"  drawer{index}: 0.1 mm to 50 mm by 0.1 mm\n" for index in range(200)
)


def test_a_short_file_stands_for_no_million_sizes(read: Read) -> None:
    workshop, findings = read(MANY_RUNS)
    assert workshop is None
    assert {finding.code.name for finding in findings} == {"bad-run", "too-many-findings"}
    assert findings[0].span.line == len(HEAD.splitlines()) + 1 + 11


def test_runs_past_the_bound_are_not_worked_out(environment: Environment) -> None:
    document, _ = read_text(MANY_RUNS)
    assert document is not None
    reading = SetReading(environment)
    typed(document, document.root, WorkshopEntry, reading)
    assert reading.totals == [500 * count for count in range(1, 12)]


def test_a_file_that_is_not_there(environment: Environment, tmp_path: Path) -> None:
    workshop, (finding,) = read_workshop(tmp_path / "none.yaml", environment)
    assert workshop is None
    assert finding.is_error
