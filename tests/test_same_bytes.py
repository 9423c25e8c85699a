"""Same spec, same bytes, whatever the hash seed, time zone and locale; of the PDF in render/."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from pathlib import Path

HAMMER = Path(__file__).parent.parent / "specs" / "tilt-hammer" / "tilt-hammer.yaml"
SETTINGS = (
    {"PYTHONHASHSEED": "0", "TZ": "UTC", "LC_ALL": "C"},
    {"PYTHONHASHSEED": "12345", "TZ": "Pacific/Auckland", "LC_ALL": "C.UTF-8"},
)


def test_two_builds_give_the_same_bytes(tmp_path: Path) -> None:
    hashes = [_built(tmp_path / str(n), one) for n, one in enumerate(SETTINGS)]
    assert hashes[0] == hashes[1]
    assert "tilt-hammer.html" in hashes[0]


def _built(folder: Path, settings: dict[str, str]) -> dict[str, str]:
    done = subprocess.run(
        [
            sys.executable,
            "-P",
            "-m",
            "binder",
            "build",
            "--no-pdf",
            str(HAMMER),
            "--output",
            str(folder),
        ],
        capture_output=True,
        env={**os.environ, **settings},
        check=False,
    )
    assert b"wrote" in done.stdout, done.stderr
    return {
        path.name: hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.iterdir())
    }
