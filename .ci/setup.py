"""A checkout to a `.venv` that runs binder (`run`) or also its tests and linters (`dev`).

A second run finds its stamp and does nothing. Only the standard library is at hand here.
"""

from __future__ import annotations

import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
import venv
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
PYTHON = VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
STAMP = VENV / "binder-setup.json"
# Debian keeps the wheel of pip here, also where `python3-venv` is missing.
WHEELS = Path("/usr/share/python-wheels")
NO_PIP = """\
This Python can make no virtual environment with pip in it. Any one of these helps:
  Debian, Ubuntu:  sudo apt install python3-venv
  any system:      install uv, or a Python from python.org, and run make again"""


def main(kind: str) -> int:
    """Installs what `kind` ("run" or "dev") needs; 0 where it is there."""
    if kind not in {"run", "dev"}:
        return _complain("usage: setup.py run|dev")
    digests = {name: _digest(name) for name in ("run", "dev")}
    if _works() and _stamped().get(kind) == digests[kind]:
        return 0
    if not _works() and not _created():
        return 1
    installer = _installer()
    if installer is None:
        return _complain(NO_PIP)
    if not _install(installer, kind):
        return _complain(f"Setting up {VENV} failed; what is said above names the reason.")
    _write_stamp(kind, digests)
    _look_for_pango()
    return 0


def _digest(kind: str) -> str:
    """What the installed state follows from; a moved checkout breaks the scripts' paths."""
    sources = (f".ci/locks/{kind}.txt", "pyproject.toml", "binder/__init__.py", ".ci/setup.py")
    parts = [str(ROOT).encode(), *((ROOT / source).read_bytes() for source in sources)]
    return hashlib.sha256(b"\0".join(parts)).hexdigest()


def _works() -> bool:
    """Whether the venv's Python runs, is new enough, and is of this very folder."""
    check = "import sys; print(sys.prefix if sys.version_info >= (3, 11) else '')"
    try:
        done = subprocess.run([PYTHON, "-c", check], capture_output=True, text=True, check=False)
    except OSError:
        return False
    prefix = done.stdout.strip()
    return done.returncode == 0 and bool(prefix) and Path(prefix).resolve() == VENV.resolve()


def _stamped() -> dict[str, str]:
    try:
        stamp = json.loads(STAMP.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return {str(key): str(value) for key, value in stamp.items()} if stamp else {}


def _write_stamp(kind: str, digests: dict[str, str]) -> None:
    """The dev lock holds all of the run lock."""
    done = digests if kind == "dev" else {**_stamped(), "run": digests["run"]}
    STAMP.write_text(json.dumps(done), encoding="utf-8")


def _created() -> bool:
    """Makes the venv afresh, and leaves alone a folder of that name that is none."""
    if VENV.exists() and not (VENV / "pyvenv.cfg").exists():
        _complain(f"{VENV} is in the way: it is no virtual environment. Move it away.")
        return False
    print(f"making {VENV} with Python {sys.version.split()[0]}", flush=True)
    shutil.rmtree(VENV, ignore_errors=True)
    has_pip = importlib.util.find_spec("ensurepip") is not None
    try:
        venv.create(VENV, with_pip=has_pip, symlinks=os.name != "nt")
    except (OSError, subprocess.CalledProcessError) as error:
        _complain(f"{error}\n{NO_PIP}")
        return False
    return True


def _installer() -> list[str] | None:
    """The first way to install into the venv that works here, as the head of a command."""
    uv = shutil.which("uv")
    ways = [
        [str(PYTHON), "-m", "pip"],
        [sys.executable, "-m", "pip", "--python", str(PYTHON)],
        *([str(PYTHON), f"{wheel}/pip"] for wheel in sorted(WHEELS.glob("pip-*.whl"))),
    ]
    for way in ways:
        tried = subprocess.run([*way, "--version"], capture_output=True, check=False)
        if tried.returncode == 0:
            return [*way, "install", "-qq"]
    return [uv, "pip", "install", "--quiet", "--python", str(PYTHON)] if uv else None


def _install(installer: list[str], kind: str) -> bool:
    """Hashed wheels alone, so that nothing downloaded is run; then this checkout itself."""
    lock = str(ROOT / f".ci/locks/{kind}.txt")
    steps = [
        ["--require-hashes", "--only-binary", ":all:", "-r", lock],
        ["--no-deps", "--no-build-isolation", "-e", str(ROOT)],
    ]
    print(f"installing {lock} and binder", flush=True)
    quiet = {**os.environ, "PIP_NO_INPUT": "1", "PIP_DISABLE_PIP_VERSION_CHECK": "1"}
    return all(
        subprocess.run([*installer, *step], env=quiet, cwd=ROOT, check=False).returncode == 0
        for step in steps
    )


def _look_for_pango() -> None:
    """PDF needs Pango from the system; without it the HTML is built all the same."""
    shell = shutil.which("sh")
    if shell:
        subprocess.run([shell, str(ROOT / ".ci/pango.sh"), str(PYTHON)], check=False)


def _complain(text: str) -> int:
    print(text, file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:2] or [""]))
