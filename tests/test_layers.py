"""The layer contracts of pyproject.toml hold, and each one fails when it is broken."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tomllib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parent.parent
PYPROJECT = ROOT / "pyproject.toml"
LAYERS = "A layer imports lower layers only"
CORE = "The core names no plugin"
API_ALONE = "A plugin imports binder.api alone"
NOT_WHOLE = "A plugin does not import binder whole"
INDEPENDENT = "No plugin imports another"
SHARED = "What plugins share knows no plugin"
KERNEL = "Only the kernel's own package opens the kernel"


def contracts() -> dict[str, dict[str, Any]]:
    tool = tomllib.loads(PYPROJECT.read_text(encoding="utf-8"))["tool"]
    return {contract["name"]: contract for contract in tool["importlinter"]["contracts"]}


def lint(folder: Path) -> subprocess.CompletedProcess[str]:
    """Runs the linter on the packages of a folder, ahead of those that are installed."""
    path = os.pathsep.join((str(folder), str(folder / "plugins")))
    script = "import sys; from importlinter.cli import lint_imports_command as run; run()"
    return subprocess.run(
        [sys.executable, "-c", script, "--no-cache", "--no-logo"],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": path, "COLUMNS": "200"},
        capture_output=True,
        text=True,
        check=False,
    )


def lint_with(folder: Path, module: str, line: str) -> subprocess.CompletedProcess[str]:
    """Lints a checkout with one more module, which is gone afterwards."""
    planted = folder / module
    planted.write_text(line + "\n", encoding="utf-8")
    try:
        return lint(folder)
    finally:
        planted.unlink()


@pytest.fixture(scope="module")
def checkout(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of all Python of the packages, for planting faults in."""
    folder = tmp_path_factory.mktemp("checkout")
    shutil.copy(PYPROJECT, folder)
    for source in (*ROOT.glob("binder/**/*.py"), *ROOT.glob("plugins/**/*.py")):
        target = folder / source.relative_to(ROOT)
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(source, target)
    return folder


def test_every_contract_is_kept(checkout: Path) -> None:
    done = lint(checkout)
    assert done.returncode == 0, done.stdout + done.stderr
    assert f"Contracts: {len(contracts())} kept, 0 broken." in done.stdout


@dataclass(frozen=True)
class Planted:
    """An import that must not be, the module it is planted in, the contract that says so."""

    module: str
    line: str
    contract: str


PLANTED = [
    Planted("binder/units/planted.py", "import binder.render", LAYERS),
    Planted("binder/units/planted.py", "from binder import compiler", LAYERS),
    Planted("binder/render/planted.py", "import binder.compose", LAYERS),
    Planted("binder/design/planted.py", "def late(): import binder.api", LAYERS),
    Planted("binder/host/planted.py", "import binder_plugins.stock", CORE),
    Planted("plugins/binder_plugins/stock/planted.py", "import binder.design", API_ALONE),
    Planted("plugins/binder_plugins/stock/planted.py", "from binder import units", API_ALONE),
    Planted("plugins/binder_plugins/stock/planted.py", "import binder", NOT_WHOLE),
    Planted("plugins/binder_plugins/stock/planted.py", "import binder_plugins.joints", INDEPENDENT),
    Planted("plugins/binder_trade/planted.py", "import binder_plugins.joints", SHARED),
    Planted("plugins/binder_trade/planted.py", "import binder.design", API_ALONE),
    Planted("plugins/binder_drafting/planted.py", "import OCP", KERNEL),
]


@pytest.mark.parametrize("planted", PLANTED, ids=lambda planted: f"{planted.module}:{planted.line}")
def test_a_planted_import_breaks_its_contract_alone(checkout: Path, planted: Planted) -> None:
    done = lint_with(checkout, planted.module, planted.line)
    assert done.returncode != 0
    broken = {name for name in contracts() if f"{name} BROKEN" in done.stdout}
    assert broken == {planted.contract}, done.stdout + done.stderr


def test_a_package_that_is_in_no_layer_is_refused(checkout: Path) -> None:
    done = lint_with(checkout, "binder/newcomer.py", "")
    assert done.returncode != 0
    assert "newcomer" in done.stdout


def test_a_plugin_may_import_the_api(checkout: Path) -> None:
    module = "plugins/binder_plugins/stock/planted.py"
    done = lint_with(checkout, module, "import binder.api; from binder.api import Design")
    assert done.returncode == 0, done.stdout + done.stderr


def test_every_layer_but_the_api_is_closed_to_plugins() -> None:
    written = contracts()[LAYERS]["layers"]
    layers = {f"binder.{name.strip()}" for line in written for name in line.split("|")}
    assert set(contracts()[API_ALONE]["forbidden_modules"]) == layers - {"binder.api"}
