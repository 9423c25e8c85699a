"""`make binder` on a machine that lacks something says what, and hangs on nothing."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

import pytest

CI = Path(__file__).resolve().parent.parent / ".ci"
SHELL = shutil.which("sh")

pytestmark = pytest.mark.skipif(SHELL is None, reason="no POSIX shell on this machine")


def run(script: str, *arguments: str, **environment: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [str(SHELL), str(CI / script), *arguments],
        env=environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )


def program(folder: Path, name: str, lines: str) -> Path:
    path = folder / name
    path.write_text(f"#!{SHELL}\n{lines}\n", encoding="utf-8")
    path.chmod(0o755)
    return path


def test_an_older_python_is_named_with_the_way_out(tmp_path: Path) -> None:
    old = program(tmp_path, "python3", '[ "$1" = --version ] && echo Python 3.9.2 || exit 1')
    done = run("setup.sh", "run", PATH="/usr/bin:/bin", PYTHON=str(old))
    assert done.returncode == 1
    assert "needs Python 3.11 or newer; found here: Python 3.9.2." in done.stderr
    assert "make PYTHON=" in done.stderr


def test_a_python_that_is_not_there_is_named(tmp_path: Path) -> None:
    none = str(tmp_path / "none")
    done = run("setup.sh", "run", PATH="/usr/bin:/bin", PYTHON=none)
    assert done.returncode == 1
    assert f"found here: no {none}." in done.stderr


def test_setup_knows_two_kinds_alone() -> None:
    done = run("setup.sh", "all", PATH="/usr/bin:/bin", PYTHON=sys.executable)
    assert done.returncode == 1
    assert done.stderr == "usage: setup.py run|dev\n"


@pytest.fixture
def bare(tmp_path: Path) -> Path:
    """A PATH with the few programs that pango.sh uses, and no package manager."""
    for name in ("cat", "env", "timeout"):
        found = shutil.which(name)
        if found:
            (tmp_path / name).symlink_to(found)
    return tmp_path


def test_without_pango_and_package_manager_the_way_out_is_told(bare: Path) -> None:
    blind = program(bare, "blind", "exit 1")
    program(bare, "id", "echo 1000")
    done = run("pango.sh", str(blind), PATH=str(bare))
    assert done.returncode == 0
    assert "The HTML binder is complete without it." in done.stderr
    assert "libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0" in done.stderr


def test_a_refused_password_ends_the_try(bare: Path) -> None:
    blind = program(bare, "blind", "exit 1")
    program(bare, "id", "echo 1000")
    program(bare, "sudo", '[ "$1" = -n ] && exit 1; exec sleep 100')
    program(bare, "apt-get", f"echo called >{bare}/called")
    done = run("pango.sh", str(blind), PATH=str(bare))
    assert done.returncode == 0
    assert not (bare / "called").exists()
    assert "No PDF for now" in done.stderr


def test_with_passwordless_sudo_pango_is_installed(bare: Path) -> None:
    """The Python sees Pango once apt-get has been called for it."""
    waiting = program(bare, "waiting", f"[ -e {bare}/called ]")
    program(bare, "id", "echo 1000")
    program(bare, "sudo", '[ "$1" = -n ] && shift && exec "$@"')
    program(bare, "true", "exit 0")
    program(bare, "apt-get", f'echo "$@" >{bare}/called')
    done = run("pango.sh", str(waiting), PATH=str(bare))
    assert done.returncode == 0
    assert "install -y" in (bare / "called").read_text(encoding="utf-8")
    assert "libpango-1.0-0" in (bare / "called").read_text(encoding="utf-8")
    assert not done.stderr
