"""`binder export`: what it writes, what it says, and that it writes the same twice."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from binder_solid.solids import step_volume
from tests.solid.needs_kernel import NEEDS_KERNEL

SPEC = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  post:
    material: mild steel
    stock: round bar
    turned:
      - {name: shank, diameter: 8 mm, length: 30 mm}
      - {name: head, diameter: 12 mm, length: 5 mm}
  plate:
    material: brass
    stock: 3 mm plate
    plate: {length: 40 mm, width: 30 mm, thickness: 3 mm}
    features:
      hole: {drilled: 4 mm, depth: through, at: "10 mm from left, 10 mm from front"}
"""


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    path = tmp_path / "trial.yaml"
    path.write_text(SPEC, encoding="utf-8")
    return path


def export(
    spec: Path, *arguments: str | Path, **environment: str
) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-P", "-m", "binder", "export", str(spec), *map(str, arguments)],
        capture_output=True,
        text=True,
        encoding="utf-8",
        env={**os.environ, **environment},
        check=False,
    )


@NEEDS_KERNEL
def test_a_solid_read_back_has_the_volume_of_its_shape(spec: Path, tmp_path: Path) -> None:
    done = export(spec, "--output", tmp_path / "out", "--only", "solid")
    assert done.returncode == 0, done.stderr
    assert done.stdout.splitlines()[-1] == "no findings"
    post = step_volume((tmp_path / "out" / "post-solid.step").read_bytes())
    # π/4 (8² × 30 + 12² × 5), and a plate less its hole
    assert post == pytest.approx(3.141592653589793 / 4 * (8**2 * 30 + 12**2 * 5))
    plate = step_volume((tmp_path / "out" / "plate-solid.step").read_bytes())
    assert plate == pytest.approx(40 * 30 * 3 - 3.141592653589793 * 2**2 * 3)


@NEEDS_KERNEL
def test_the_same_spec_gives_the_same_bytes(spec: Path, tmp_path: Path) -> None:
    for name, seed, zone in (("one", "1", "Pacific/Auckland"), ("two", "2", "America/Lima")):
        done = export(spec, "--output", tmp_path / name, PYTHONHASHSEED=seed, TZ=zone)
        assert done.returncode == 0, done.stderr
    one, two = ({p.name: p.read_bytes() for p in (tmp_path / n).iterdir()} for n in ("one", "two"))
    assert one == two
    assert "plate-drawing.svg" in one


@NEEDS_KERNEL
def test_a_list_writes_nothing(spec: Path, tmp_path: Path) -> None:
    done = export(spec, "--list", "--only", "post", "--output", tmp_path / "out")
    assert done.returncode == 0
    assert {"post-solid.step", "post-drawing.svg"} <= set(done.stdout.splitlines())
    assert not (tmp_path / "out").exists()


def test_an_error_writes_nothing(spec: Path, tmp_path: Path) -> None:
    spec.write_text(SPEC.replace("diameter: 8 mm", "diametre: 8 mm"), encoding="utf-8")
    done = export(spec, "--output", tmp_path / "out")
    assert done.returncode == 1
    assert "unknown-key" in done.stderr
    assert not (tmp_path / "out").exists()


def test_what_is_not_there_is_said(spec: Path, tmp_path: Path) -> None:
    done = export(spec, "--only", "plait", "--output", tmp_path / "out")
    assert done.returncode == 1
    assert "error[nothing-to-export]: no file is 'plait'" in done.stderr
    assert not (tmp_path / "out").exists()


def test_without_the_kernel_the_rest_is_written(spec: Path, tmp_path: Path) -> None:
    program = (
        "import sys, binder_solid.presence as p\n"
        "p.is_kernel_there = lambda: False\n"
        f"sys.argv = ['binder', 'export', {str(spec)!r}, '--output', {str(tmp_path / 'out')!r}]\n"
        "from binder.cli import main\nmain()\n"
    )
    done = subprocess.run(
        [sys.executable, "-P", "-c", program],
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 1
    assert "kernel-missing" in done.stderr
    assert "Traceback" not in done.stderr
    names = {path.name for path in (tmp_path / "out").iterdir()}
    assert names == {"plate-flat.dxf", "trial-template.svg"}
