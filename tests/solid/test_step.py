"""STEP: read back it has the same volume, and the same parts give the same bytes."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys

import pytest

from binder_solid import bodies
from binder_solid.faults import Unbuildable
from binder_solid.forms import Box, Cylinder, Frame
from binder_solid.solid import NamedForm
from binder_solid.solids import measured, step_bytes, step_volume
from tests.solid.needs_kernel import NEEDS_KERNEL
from tests.solid.ten_parts import PARTS

pytestmark = NEEDS_KERNEL
MODEL = (
    NamedForm("plate", Box(10, 10, 2)),
    NamedForm("pin A", Cylinder(1, 8), Frame((5, 5, 2))),
    NamedForm("pin B", Cylinder(1, 8), Frame((5, 5, -8))),
)


@pytest.mark.parametrize("name", PARTS)
def test_a_part_read_back_has_the_same_volume(name: str) -> None:
    data = step_bytes([NamedForm(name, PARTS[name])])
    assert step_volume(data) == pytest.approx(measured(PARTS[name]).volume_mm3, rel=1e-9)


@pytest.mark.parametrize("schema", ["AP242", "AP214"])
def test_a_model_read_back_has_all_its_parts(schema: str) -> None:
    data = step_bytes(MODEL, "model", "AP242" if schema == "AP242" else "AP214")
    assert step_volume(data) == pytest.approx(200 + 2 * measured(Cylinder(1, 8)).volume_mm3)
    mark = {"AP242": b"AP242_MANAGED_MODEL", "AP214": b"AUTOMOTIVE_DESIGN"}[schema]
    assert mark in data


def test_the_same_parts_give_the_same_bytes() -> None:
    assert step_bytes(MODEL, "model") == step_bytes(MODEL, "model")


def test_the_same_bytes_in_another_process_place_and_time() -> None:
    code = (
        "import hashlib; from tests.solid.test_step import MODEL; "
        "from binder_solid.solids import step_bytes; "
        "print(hashlib.sha256(step_bytes(MODEL, 'model')).hexdigest())"
    )
    told = {
        subprocess.run(
            [sys.executable, "-c", code],
            env={**os.environ, "PYTHONHASHSEED": seed, "TZ": zone},
            check=True,
            capture_output=True,
            text=True,
        ).stdout.strip()
        for seed, zone in (("1", "Pacific/Auckland"), ("2", "America/Lima"))
    }
    assert told == {hashlib.sha256(step_bytes(MODEL, "model")).hexdigest()}


def test_the_head_names_no_person_machine_program_or_time() -> None:
    head = step_bytes(MODEL, "the model").decode("ascii").split("ENDSEC;", maxsplit=1)[0]
    assert "FILE_NAME('the model','',(''),(''),'','','');" in head
    stamped = step_bytes(MODEL, "m", stamp="2020-02-02T00:00:00").decode("ascii")
    assert "FILE_NAME('m','2020-02-02T00:00:00'," in stamped


def test_names_may_hold_any_sign() -> None:
    part = NamedForm("boss' Ø4 \\ Ω", bodies.round_bar(4, 9))
    data = step_bytes([part])
    assert b"'boss'' \\X4\\000000D8\\X0\\4 \\\\ \\X4\\000003A9\\X0\\'" in data
    assert step_volume(data) == pytest.approx(measured(part.form).volume_mm3)


def test_what_is_no_step_is_refused(capfd: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(Unbuildable, match="no STEP"):
        step_volume(b"rubbish")
    with pytest.raises(Unbuildable, match="no part"):
        step_bytes([])
    assert capfd.readouterr() == ("", "")
