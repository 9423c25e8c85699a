"""The time of `binder check` as a ratio to the bare floor, and its growth.

Both are measured in turns in the same run, in processor seconds, and the least of several is
taken: the machines are noisy. `python -m tests.bench checking` keeps byte code, as a maker's
machine does.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path

from tests.bench.generate import spec_of

# Parts of a spec, and how often it is checked: a long run is less at the mercy of the machine.
ROUNDS = {20: 7, 200: 7, 1600: 3}
SIZES = tuple(ROUNDS)
HERE = Path(__file__).parent
_LIST_MODULES = """
import runpy, sys
sys.argv = ["binder", "check", {spec!r}]
try:
    runpy.run_module("binder", run_name="__main__", alter_sys=True)
except SystemExit:
    pass
names = [name for name in sys.modules if sys.modules[name] is not None]
names = [name for name in names if name not in ("__main__", "__mp_main__", "binder.__main__")]
keep = [name for name in names if getattr(sys.modules[name], "__spec__", None)]
open({out!r}, "w", encoding="utf-8").write("\\n".join(keep))
"""


def main() -> None:
    """Measures and prints the table."""
    with tempfile.TemporaryDirectory() as folder:
        times = {size: _measured(size, Path(folder)) for size in SIZES}
        small, large = _growth([_spec(size, Path(folder)) for size in SIZES[1:]])
    print(f"{'parts':>6} {'check':>9} {'floor':>9} {'ratio':>6}")
    for size, (check, floor) in times.items():
        print(f"{size:>6} {check * 1000:>7.0f}ms {floor * 1000:>7.0f}ms {check / floor:>6.2f}")
    ratio = times[200][0] / times[200][1]
    print(f"\n200 parts: {ratio:.2f} times the floor (target: at most 2.0)")
    print(
        f"start-up taken off: {small * 1000:.0f} ms for 200 parts, {large * 1000:.0f} ms for 1,600"
    )
    print(f"1,600 parts: {large / small:.1f} times the 200 (target: at most 8.8)")


def _spec(size: int, folder: Path) -> Path:
    return folder / f"bench-{size}.yaml"


def _growth(specs: list[Path]) -> list[float]:
    """Seconds for each spec, all in one process that is warm."""
    done = _run(["-P", str(HERE / "growth.py"), *map(str, specs)])
    return [float(figure) for figure in done.stdout.split()]


def _measured(size: int, folder: Path) -> tuple[float, float]:
    spec = _spec(size, folder)
    spec.write_text(spec_of(size), encoding="utf-8")
    modules = folder / "modules.txt"
    _run(["-c", _LIST_MODULES.format(spec=str(spec), out=str(modules))])
    check: list[float] = []
    floor: list[float] = []
    for _ in range(ROUNDS[size]):
        check.append(_seconds(["-P", "-m", "binder", "check", str(spec)]))
        floor.append(_seconds(["-P", str(HERE / "floor.py"), str(spec), str(modules)]))
    return min(check), min(floor)


def _seconds(arguments: list[str]) -> float:
    """The processor time of one run of the interpreter, and of what it starts."""
    before = os.times()
    _run(arguments)
    after = os.times()
    user = after.children_user - before.children_user
    return user + after.children_system - before.children_system


def _run(arguments: list[str]) -> subprocess.CompletedProcess[bytes]:
    """Runs the interpreter; advice about the spec is no fault, an error in it is."""
    done = subprocess.run([sys.executable, *arguments], capture_output=True, check=False)
    if done.returncode > 1 or (done.returncode and b"advice[" not in done.stderr):
        sys.exit(done.stderr.decode(errors="replace"))
    if b"error[" in done.stderr:
        sys.exit(done.stderr.decode(errors="replace"))
    return done


if __name__ == "__main__":
    main()
