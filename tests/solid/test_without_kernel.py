"""Where the extra is missing, all up to the solid itself still works."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import binder_solid

_ROOT = Path(binder_solid.__file__).parent
_HIDE = """
import sys
class Hidden:
    def find_spec(self, name, path=None, target=None):
        if name == "OCP" or name.startswith("OCP."):
            raise ModuleNotFoundError(name)
sys.meta_path.insert(0, Hidden())
import importlib.util
real = importlib.util.find_spec
importlib.util.find_spec = lambda name, package=None: None if name == "OCP" else real(name, package)
"""


def _run(code: str) -> str:
    return subprocess.run(
        [sys.executable, "-c", _HIDE + code], check=True, capture_output=True, text=True
    ).stdout


def test_every_module_outside_the_kernel_imports_without_it() -> None:
    names = sorted(path.stem for path in _ROOT.glob("*.py") if path.stem != "__init__")
    done = _run(
        "import importlib\n"
        f"for name in {names!r}: importlib.import_module('binder_solid.' + name)\n"
        "print([name for name in sys.modules if name.startswith(('OCP', 'binder_solid.kernel'))])"
    )
    assert done == "[]\n"


def test_what_needs_the_kernel_says_so() -> None:
    done = _run(
        "from binder_solid import solids, presence\n"
        "from binder_solid.faults import NoKernel\n"
        "from binder_solid.forms import Box\n"
        "from binder_solid.spread import Job, drawn_all\n"
        "print(presence.is_kernel_there())\n"
        "cube = Box(1, 1, 1)\n"
        "for call in (lambda: solids.measured(cube), lambda: drawn_all([Job(cube)])):\n"
        "    try: call()\n"
        "    except NoKernel as fault: print(fault)\n"
    )
    assert done.splitlines()[0] == "False"
    assert len(done.splitlines()) == 3
    assert all("binder[solid]" in line for line in done.splitlines()[1:])


def test_only_the_kernel_package_names_the_kernel() -> None:
    outside = [
        path.name
        for path in _ROOT.glob("*.py")
        if "from OCP" in path.read_text(encoding="utf-8")
        or "import OCP" in path.read_text(encoding="utf-8")
    ]
    assert outside == []
