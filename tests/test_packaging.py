"""pyproject, folders, locks and installed metadata say the same."""

from __future__ import annotations

import re
import subprocess
import sys
import tomllib
import zipfile
from importlib.metadata import distribution, entry_points, version
from pathlib import Path
from typing import Any

import pytest
from packaging.requirements import Requirement
from packaging.version import Version

import binder

ROOT = Path(__file__).resolve().parent.parent
PLUGINS = ROOT / "plugins" / "binder_plugins"
LOCKS = ROOT / ".ci" / "locks"
PACKAGES = {
    "binder": ROOT / "binder",
    "binder_plugins": PLUGINS,
    "binder_drafting": PLUGINS.parent / "binder_drafting",
    "binder_making": PLUGINS.parent / "binder_making",
    "binder_solid": PLUGINS.parent / "binder_solid",
    "binder_trade": PLUGINS.parent / "binder_trade",
}
STALE = "stale: run `make test`, which installs anew"

# The least release of each library that is trusted with a stranger's file or picture.
FLOORS = {
    "pillow": "12.3",
    "pint": "0.25",
    "pydantic": "2.14",
    "PyYAML": "6.0.4",
    "weasyprint": "70",
}


def pyproject() -> dict[str, Any]:
    return tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))


def locked(kind: str) -> dict[str, Version]:
    """The pinned release of each distribution of a lock."""
    text = (LOCKS / f"{kind}.txt").read_text(encoding="utf-8")
    pins = re.findall(r"^([A-Za-z0-9._-]+)==([^ ;\\]+)", text, re.MULTILINE)
    return {name.lower(): Version(release) for name, release in pins}


def required() -> dict[str, Requirement]:
    written = map(Requirement, pyproject()["project"]["dependencies"])
    return {requirement.name: requirement for requirement in written}


@pytest.mark.parametrize("name", sorted(FLOORS))
def test_the_floor_of_a_library_is_declared_and_installed(name: str) -> None:
    assert str(required()[name].specifier) == f">={FLOORS[name]}"
    assert Version(version(name)) >= Version(FLOORS[name])


@pytest.mark.parametrize("name", sorted(required()))
def test_what_is_required_is_installed_and_locked(name: str) -> None:
    specifier = required()[name].specifier
    assert specifier.contains(version(name))
    assert specifier.contains(locked("run")[name.lower()])


def test_the_dev_lock_holds_the_run_lock() -> None:
    assert locked("run").items() <= locked("dev").items()


@pytest.mark.parametrize("kind", ["run", "dev"])
def test_a_lock_hashes_all_and_names_no_server(kind: str) -> None:
    text = (LOCKS / f"{kind}.txt").read_text(encoding="utf-8")
    pins = re.findall(r"^[a-z].*(?:\n    .*)+", text, re.MULTILINE)
    assert len(pins) == len(locked(kind)) > 0
    assert all("--hash=sha256:" in pin for pin in pins)
    assert "://" not in text
    assert not re.search(r"^\s*-(?!-hash=sha256:[0-9a-f]{64})", text, re.MULTILINE)


def test_plugins_are_the_same_in_pyproject_folders_and_metadata() -> None:
    named = pyproject()["project"]["entry-points"]["binder.plugins"]
    folders = {path.name for path in PLUGINS.iterdir() if (path / "__init__.py").exists()}
    installed = {
        entry.name: entry.value
        for entry in distribution("build-binder").entry_points
        if entry.group == "binder.plugins"
    }
    assert named == {name: f"binder_plugins.{name}" for name in folders}
    assert installed == named, STALE


def test_each_plugin_loads_from_its_entry_point() -> None:
    for entry in entry_points(group="binder.plugins"):
        assert entry.load() is not None


def test_the_version_and_the_command_are_installed() -> None:
    assert version("build-binder") == binder.__version__, STALE
    scripts = entry_points(group="console_scripts", name="binder")
    assert [script.value for script in scripts] == ["binder.cli:main"], STALE


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> set[str]:
    """The names of all files in the wheel."""
    folder = tmp_path_factory.mktemp("wheel")
    build = "from hatchling.build import build_wheel; import sys; build_wheel(sys.argv[1])"
    subprocess.run([sys.executable, "-c", build, str(folder)], cwd=ROOT, check=True)
    (path,) = folder.glob("build_binder-*.whl")
    with zipfile.ZipFile(path) as archive:
        return set(archive.namelist())


def files_of(folder: Path) -> set[str]:
    """What stands below a package, less what Python and the linters leave there."""
    made = {"__pycache__", ".mypy_cache", ".ruff_cache"}
    paths = (path for path in folder.rglob("*") if path.is_file())
    return {
        path.relative_to(folder).as_posix() for path in paths if not made.intersection(path.parts)
    }


@pytest.mark.parametrize("package", sorted(PACKAGES))
def test_the_wheel_carries_code_and_data(wheel: set[str], package: str) -> None:
    carried = {name.removeprefix(f"{package}/") for name in wheel if name.startswith(f"{package}/")}
    assert carried == files_of(PACKAGES[package])
    assert "py.typed" in carried


def test_the_wheel_carries_nothing_else(wheel: set[str]) -> None:
    tops = {name.split("/", maxsplit=1)[0] for name in wheel}
    assert tops == {*PACKAGES, f"build_binder-{binder.__version__}.dist-info"}
