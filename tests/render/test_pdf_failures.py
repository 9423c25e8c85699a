"""A PDF that cannot be made is an outcome with a reason and a way out, never an exception."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

import binder.render.pdf as pdf_module
from binder.render.html import render_html
from binder.render.pdf import write_pdf
from binder.render.pdf_job import PdfJob
from tests.render.sample import sample


@pytest.mark.parametrize("epoch", ["soon", "-5", "1.5", "٣", "9" * 30])
def test_a_wrong_epoch_variable_is_an_outcome(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, epoch: str
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    outcome = write_pdf(sample(), tmp_path / "a.pdf")
    assert not outcome.ok
    assert "SOURCE_DATE_EPOCH" in outcome.reason


def test_too_little_memory_is_an_outcome_and_the_html_stands(tmp_path: Path) -> None:
    path = tmp_path / "a.pdf"
    path.write_bytes(b"old binder")
    outcome = write_pdf(sample(), path, memory=60_000_000)
    assert not outcome.ok
    assert "memory" in outcome.reason
    assert outcome.help
    assert path.read_bytes() == b"old binder"
    assert "Screw jack" in render_html(sample())


def test_too_little_time_is_an_outcome(tmp_path: Path) -> None:
    outcome = write_pdf(sample(), tmp_path / "a.pdf", timeout=0.05)
    assert outcome.reason == "the PDF was not ready after 0.05 s"
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(("sections", "seconds"), [(1, 120), (40, 120), (41, 121.5), (130, 255)])
def test_a_longer_binder_may_take_longer(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, sections: int, seconds: float
) -> None:
    """60 s and 1.5 s a section, 120 s at the least; the memory stays as it is."""
    asked = []

    def late(_job: PdfJob, timeout: float, memory: int) -> None:
        asked.append((timeout, memory))
        raise subprocess.TimeoutExpired("child", timeout)

    monkeypatch.setattr(pdf_module, "_run_child", late)
    one = replace(sample().sections[0], sections=())
    whole = replace(one, sections=(one,) * (sections - 1))  # leaves lie in sections
    outcome = write_pdf(replace(sample(), sections=(whole,)), tmp_path / "a.pdf")
    assert asked == [(seconds, pdf_module.MEMORY)]
    assert outcome.reason == f"the PDF was not ready after {seconds:g} s"


# What stands in for WeasyPrint here is a module of that name on the child's own path.
STANDING_IN = {
    "raise OSError(\"cannot load library 'libpango-1.0-0': not found\")": "Pango is not installed",
    "raise ModuleNotFoundError('x', name='weasyprint')": "WeasyPrint is not installed",
    "raise MemoryError": "more memory",
    "import os; os.kill(os.getpid(), 9)": "ended by signal 9",
    "raise ZeroDivisionError('its own fault')": "ZeroDivisionError: its own fault",
    "import os; os._exit(0)": "it said nothing",
    "import socket; socket.create_connection(('127.0.0.1', {port}))": "without a network",
}


@pytest.mark.parametrize("body", STANDING_IN)
def test_the_childs_death_is_an_outcome_with_its_reason(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, body: str
) -> None:
    path = tmp_path / "a.pdf"
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.settimeout(0.2)
        stand_in(tmp_path, monkeypatch, body.format(port=server.getsockname()[1]))
        outcome = write_pdf(sample(), path)
        with pytest.raises(TimeoutError):
            server.accept()
    assert not outcome.ok
    assert STANDING_IN[body] in outcome.reason
    assert outcome.help
    assert not path.exists()


def stand_in(folder: Path, monkeypatch: pytest.MonkeyPatch, body: str) -> None:
    (folder / "weasyprint.py").write_text(body, encoding="utf-8")
    real = pdf_module._environment()
    paths = os.pathsep.join((str(folder), real["PYTHONPATH"]))
    monkeypatch.setattr(pdf_module, "_environment", lambda: {**real, "PYTHONPATH": paths})


def test_what_a_library_prints_does_not_get_into_the_pdf(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    body = "print('chatter', flush=True)\nraise MemoryError"
    stand_in(tmp_path, monkeypatch, body)
    assert "chatter" in write_pdf(sample(), tmp_path / "a.pdf").log


def test_a_module_in_the_callers_folder_is_not_run(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "weasyprint.py").write_text("raise MemoryError", encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert write_pdf(sample(), tmp_path / "a.pdf").ok


def test_a_folder_that_is_not_there_is_an_outcome(tmp_path: Path) -> None:
    outcome = write_pdf(sample(), tmp_path / "nowhere" / "a.pdf")
    assert not outcome.ok
    assert "cannot be written" in outcome.reason


def test_a_job_comes_back_from_its_bytes() -> None:
    binder = sample()
    job = PdfJob("<p>⌀ ½</p>", binder.attachments, "2026-03-14T00:00:00Z")
    assert PdfJob.from_bytes(job.to_bytes()) == job
    assert job.to_bytes().isascii()


def test_importing_render_loads_no_pdf_maker() -> None:
    code = "import sys, binder.render; print('weasyprint' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"
