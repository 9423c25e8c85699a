"""The same pages give the same bytes, whatever the hash seed, time zone, locale and folder."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PLACES = (
    {"PYTHONHASHSEED": "0", "TZ": "Pacific/Kiritimati", "LC_ALL": "C", "LANG": "C"},
    {"PYTHONHASHSEED": "4321", "TZ": "America/St_Johns", "LC_ALL": "C.UTF-8", "LANG": "de_DE"},
)
# Prints one hash for the HTML and one for the PDF.
CODE = """
import sys
from dataclasses import replace
from hashlib import sha256
from pathlib import Path
from binder.render import render_html, write_pdf
from tests.render.sample import sample
binder = replace(sample(), date=sys.argv[2])
path = Path(sys.argv[1])
assert write_pdf(binder, path).ok
print(sha256(render_html(binder).encode("utf-8")).hexdigest())
print(sha256(path.read_bytes()).hexdigest())
"""


@pytest.mark.parametrize("date", ["2026-03-14", ""])
def test_html_and_pdf_do_not_depend_on_where_and_when(tmp_path: Path, date: str) -> None:
    hashes = {_hashes(tmp_path / str(number), place, date) for number, place in enumerate(PLACES)}
    assert len(hashes) == 1
    assert len(hashes.pop().split()) == 2


def _hashes(folder: Path, place: dict[str, str], date: str) -> str:
    folder.mkdir()
    kept = {name: value for name, value in os.environ.items() if name != "SOURCE_DATE_EPOCH"}
    done = subprocess.run(
        [sys.executable, "-c", CODE, str(folder / "a.pdf"), date],
        env={**kept, **place, "PYTHONPATH": str(ROOT)},
        cwd=folder,
        capture_output=True,
        text=True,
        check=True,
    )
    return done.stdout
