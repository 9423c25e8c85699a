"""What the writing of a binder reports: each fault by its code, and the HTML stands alone."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from binder.pages import Binder
from binder.render import output, write_binder
from binder.render.lock import NAME
from binder.render.pdf import PdfOutcome

EMPTY = Binder("Trial", "A", "", "0" * 64, "", (), ())


def test_a_pdf_that_cannot_be_made_leaves_the_html(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    failed = PdfOutcome(ok=False, reason="no Pango", help="install it")
    monkeypatch.setattr(output, "write_pdf", lambda *_: failed)
    written, findings = write_binder(EMPTY, tmp_path, "trial")
    assert [path.name for path in written] == ["trial.html"]
    assert [one.code.name for one in findings] == ["pdf-not-made"]
    assert "no Pango" in findings[0].message
    assert findings[0].help == "install it"


def test_a_folder_that_is_a_file_cannot_be_written_to(tmp_path: Path) -> None:
    taken = tmp_path / "taken"
    taken.write_text("a file", encoding="utf-8")
    written, findings = write_binder(EMPTY, taken, "trial", with_pdf=False)
    assert written == ()
    assert [one.code.name for one in findings] == ["cannot-write"]
    assert taken.read_text(encoding="utf-8") == "a file"


def test_a_second_build_into_the_folder_is_refused(tmp_path: Path) -> None:
    (tmp_path / NAME).write_text(f"{os.getppid()}\n", encoding="utf-8")
    written, findings = write_binder(EMPTY, tmp_path, "trial", with_pdf=False)
    assert written == ()
    assert [one.code.name for one in findings] == ["build-running"]
