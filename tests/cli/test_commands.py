"""Commands, exit codes, formats, and what a stranger's folder may not do."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from binder.cli.main import cli

ROOT = Path(__file__).parent.parent.parent
JACK = ROOT / "specs" / "screw-jack" / "screw-jack.yaml"
BROKEN = "format: 1\nmodel: {title: X, issue: A, units: mm}\nparts: {pin: {materail: brass}}\n"


def binder(
    *arguments: str | Path, cwd: Path | None = None, **environment: str
) -> subprocess.CompletedProcess[bytes]:
    """One run of the command in a process of its own."""
    return subprocess.run(
        [sys.executable, "-P", "-m", "binder", *map(str, arguments)],
        capture_output=True,
        cwd=cwd,
        env={**os.environ, **environment},
        check=False,
    )


def said(*arguments: str | Path) -> Result:
    """One run in this process, which spares the start: for what does not hang on a process."""
    return CliRunner().invoke(cli, [*map(str, arguments)], catch_exceptions=False)


@pytest.fixture
def broken(tmp_path: Path) -> Path:
    """A spec with a misspelt key."""
    path = tmp_path / "broken.yaml"
    path.write_text(BROKEN, encoding="utf-8")
    return path


def test_clean_is_0_findings_are_1_usage_is_2(broken: Path) -> None:
    assert binder("check", JACK).returncode == 0
    assert binder("check", broken).returncode == 1
    assert binder("check").returncode == 2
    assert binder("chekc", JACK).returncode == 2


def test_our_own_fault_is_3_and_shows_no_traceback(tmp_path: Path) -> None:
    program = (
        "import binder.cli.check as c, sys\n"
        "def fail(*a): raise RuntimeError('ours')\n"
        "c.compiled = fail\n"
        f"sys.argv = ['binder', 'check', {str(JACK)!r}]\n"
        "from binder.cli import main\nmain()\n"
    )
    done = subprocess.run(
        [sys.executable, "-P", "-c", program], capture_output=True, cwd=tmp_path, check=False
    )
    assert done.returncode == 3
    assert b"Traceback" not in done.stderr
    assert b"binder itself failed" in done.stderr


def test_findings_go_to_stderr_and_data_to_stdout(broken: Path) -> None:
    done = binder("check", broken)
    assert done.stdout == b""
    assert b"unknown-key" in done.stderr


@pytest.mark.parametrize("style", ["json", "sarif", "github"])
def test_other_programs_can_read_the_findings(style: str, broken: Path) -> None:
    done = said("check", broken, "--format", style)
    text = done.stderr
    if style == "json":
        assert {"unknown-key", "key-missing"} == {one["code"] for one in json.loads(text)}
    elif style == "sarif":
        log = json.loads(text)
        assert log["version"] == "2.1.0"
        assert len(log["runs"][0]["results"]) == 2
    else:
        assert "::error file=" in text
        assert "line=3,col=15" in text


def test_a_cp1252_terminal_gets_every_message(broken: Path) -> None:
    broken.write_text(BROKEN.replace("materail: brass", "ма: brass"), encoding="utf-8")
    done = binder("check", broken, PYTHONIOENCODING="cp1252", PYTHONUTF8="0")
    assert done.returncode == 1
    assert b"Traceback" not in done.stderr
    shown = binder("show", "expand", JACK, PYTHONIOENCODING="cp1252", PYTHONUTF8="0")
    assert shown.returncode == 0


def test_why_prints_the_chain_to_the_spec_lines() -> None:
    text = said("why", JACK, "tommy").stdout
    assert "tommy = 3 mm" in text
    assert "nearest(0.3 × 10 mm, drawn_rod)" in text
    assert "rod = 10 mm" in text
    assert "bar = 25 mm" in text
    assert f"{JACK}:19:" in text
    cut = said("why", JACK, "body.cut").stdout
    assert "45 mm + 2 × 1 mm to face" in cut
    assert "bar = 25 mm" in cut  # the chain goes on through the sums of the spec
    place = said("why", JACK, "parts.screw.overall").stdout
    assert "54.2 mm" in place
    wrong = said("why", JACK, "tomy")
    assert wrong.exit_code == 1
    assert "did you mean 'tommy'" in wrong.stderr


@pytest.mark.parametrize("phase", ["read", "resolve", "validate", "expand", "check", "compose"])
def test_every_phase_can_be_shown(phase: str) -> None:
    done = said("show", phase, JACK)
    assert done.exit_code == 0, done.stderr
    assert json.loads(done.stdout) or phase == "check"


def test_explain_has_four_headings_and_a_hint() -> None:
    text = said("explain", "rest-twice").stdout
    for heading in ("Meaning", "Why it matters at the bench", "Example", "Remedy"):
        assert heading in text
    wrong = said("explain", "rest-twise")
    assert wrong.exit_code == 2
    assert "did you mean 'rest-twice'" in wrong.stderr


def test_a_new_spec_compiles_and_its_schema_stands_beside_it(tmp_path: Path) -> None:
    assert binder("new", "tilt-hammer", cwd=tmp_path).returncode == 0
    spec = tmp_path / "tilt-hammer" / "tilt-hammer.yaml"
    assert binder("check", spec).returncode == 0
    assert "$schema=binder.schema.json" in spec.read_text(encoding="utf-8")
    schema = json.loads((tmp_path / "tilt-hammer" / "binder.schema.json").read_text("utf-8"))
    assert "parts" in schema["properties"]
    again = binder("new", "tilt-hammer", cwd=tmp_path)
    assert again.returncode == 2
    assert b"Traceback" not in again.stderr
    assert binder("new", "../evil", cwd=tmp_path).returncode == 2


def test_set_tries_another_size(tmp_path: Path) -> None:
    done = said("show", "resolve", JACK, "--set", "bar=1 in")
    assert json.loads(done.stdout)["bar"]["quantity"] == "25.4 mm"
    wrong = said("check", JACK, "--set", "bra=1 in")
    assert wrong.exit_code == 1
    assert "did you mean 'bar'" in wrong.stderr


@pytest.mark.parametrize(
    "content", [b"", b"\xff\xfe\x00", b"\x00" * 50, b"- a\n- b\n", b"[" * 3000, b"a: &a [*a]\n"]
)
def test_anything_gets_a_finding_and_never_a_traceback(content: bytes, tmp_path: Path) -> None:
    path = tmp_path / "odd.yaml"
    path.write_bytes(content)
    done = said("build", path, "--output", tmp_path / "out", "--no-pdf")
    assert done.exit_code == 1
    assert "Traceback" not in done.stderr
    assert "error[" in done.stderr
    assert not (tmp_path / "out").exists()


def test_a_missing_file_and_a_folder_are_findings(tmp_path: Path) -> None:
    for path in (tmp_path / "none.yaml", tmp_path):
        done = said("check", path)
        assert done.exit_code == 1
        assert "Traceback" not in done.stderr


@pytest.mark.parametrize("name", ["yaml.py", "pint.py", "sitecustomize.py", "conftest.py"])
def test_a_strangers_folder_runs_no_code(name: str, tmp_path: Path) -> None:
    (tmp_path / name).write_text("open('ran', 'w').close()\nraise SystemExit(7)\n", "utf-8")
    info = tmp_path / "evil-1.0.dist-info"
    info.mkdir()
    (info / "METADATA").write_text("Metadata-Version: 2.1\nName: evil\nVersion: 1.0\n", "utf-8")
    (info / "entry_points.txt").write_text("[binder.plugins]\nevil = yaml\n", "utf-8")
    (tmp_path / "jack.yaml").write_text(JACK.read_text(encoding="utf-8"), encoding="utf-8")
    # Without -P, as a maker would type it: the module must defend itself.
    done = subprocess.run(
        [sys.executable, "-m", "binder", "check", "jack.yaml"],
        capture_output=True,
        cwd=tmp_path,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert not (tmp_path / "ran").exists()


def test_a_failed_build_leaves_the_last_good_binder(broken: Path, tmp_path: Path) -> None:
    good = tmp_path / "out" / "broken.html"
    good.parent.mkdir()
    good.write_text("the last good one", encoding="utf-8")
    assert binder("build", broken, "--output", good.parent).returncode == 1
    assert good.read_text(encoding="utf-8") == "the last good one"
    assert [path.name for path in good.parent.iterdir()] == ["broken.html"]
