"""`make bench`: one measure after another, each in a process of its own, with byte code kept.

No figure here fails a build; the targets are printed beside what was found. Where the
environment forbids byte code, start-up would be twice as long as any maker sees it.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile

MEASURES = ("checking", "planning", "making", "trains", "solids")


def main() -> int:
    """Runs all of them, or those that are named; 1 where one of them failed."""
    failed = []
    with tempfile.TemporaryDirectory() as folder:
        environment = {**os.environ, "PYTHONPYCACHEPREFIX": folder}
        environment.pop("PYTHONDONTWRITEBYTECODE", None)
        for name in sys.argv[1:] or MEASURES:
            print(f"\n{name}", flush=True)
            command = [sys.executable, "-m", f"tests.bench.{name}"]
            if subprocess.run(command, env=environment, check=False).returncode:
                failed.append(name)
    if failed:
        print(f"\nfailed: {', '.join(failed)}", file=sys.stderr)
    return bool(failed)


if __name__ == "__main__":
    sys.exit(main())
