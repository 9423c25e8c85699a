"""The gauge of wire and sheet, asked for at the bench."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

from binder.cli.main import cli


@pytest.mark.parametrize(
    ("gauge", "mm"),
    [
        # BS 3737, as read in two public tables.
        ("7/0 swg", 12.7),
        ("12 swg", 2.642),
        ("18 swg", 1.219),
        ("27 swg", 0.417),
        ("50 swg", 0.025),
        # ASTM B258, as read in two public tables.
        ("0000 awg", 11.684),
        ("16 awg", 1.291),
        ("22 awg", 0.644),
        ("36 awg", 0.127),
    ],
)
def test_a_gauge(gauge: str, mm: float) -> None:
    done = CliRunner().invoke(cli, ["reckon", "gauge", gauge, "--format", "json"])
    assert done.exit_code == 0, done.output
    results = json.loads(done.stdout)["results"]
    assert results[0]["name"] == "thickness"
    assert results[0]["unit"] == "mm"
    assert results[0]["value"] == pytest.approx(mm, abs=0.001)


@pytest.mark.parametrize("gauge", ["51 swg", "8/0 swg", "41 awg", "00000 awg", "12", "swg", ""])
def test_a_gauge_that_is_not_there_is_refused(gauge: str) -> None:
    done = CliRunner().invoke(cli, ["reckon", "gauge", gauge])
    assert done.exit_code == 1
    (line,) = [one for one in done.stderr.splitlines() if one.startswith("error")]
    assert line.partition("]")[0].removeprefix("error[") == "gauge-not-listed"
