"""`binder reckon` for O-rings and packing, against the housing table and hand reckonings."""

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


# Housing table: cord 1.8, moving: 1.45 deep, 2.4 wide.
def test_a_ring_in_a_bore() -> None:
    found = results("oring", "bore 12 mm moving ring 9 mm x 1.8 mm")
    assert found["groove_floor"] == pytest.approx(9.1)
    assert found["groove_width"] == 2.4
    assert found["lead_in"] == 2.5


def test_a_ring_on_a_rod_is_chosen() -> None:
    found = results("oring", "rod", "6 mm", "standing")
    assert found["inside"] == 6
    assert found["groove_floor"] == pytest.approx(6 + 2 * found["housing_depth"])


def test_a_ring_out_of_its_range_is_remarked_with_its_answer() -> None:
    code, out, err = reckon("oring", "bore 12 mm ring 8 mm x 1.8 mm")
    assert code == 1
    assert "floor of the groove" in out
    assert "seal-stretch-out" in err


# 6 mm rod, 2 mm packing: box 10 mm, ring π × 8 mm.
def test_a_stuffing_box() -> None:
    found = results("packing", "rod 6 mm packing 2 mm rings 4")
    assert (found["box"], found["depth"]) == (10, 10)
    assert found["ring"] == pytest.approx(25.1327, abs=1e-4)


REFUSED = (
    ("oring",),
    ("oring", "bore"),
    ("oring", "bore 12 mm rod 6 mm"),
    ("oring", "bore twelve"),
    ("oring", "bore 12 deg"),
    ("oring", "bore -12 mm"),
    ("oring", "bore 12 mm ring cheese"),
    ("oring", "bore 900 mm"),
    ("oring", "bore 12 mm moving fast"),
    ("packing",),
    ("packing", "rod 6 mm rings many"),
    ("packing", "rod 6 mm rings 1"),
    ("packing", "rod 0 mm"),
)


@pytest.mark.parametrize("words", REFUSED)
def test_what_has_no_answer_is_refused(words: tuple[str, ...]) -> None:
    code, _out, err = reckon(*words)
    assert code == 1
    assert "seal-question-unreadable" in err
    assert "help:" in err
