"""A binder to a PDF file, made in a process of its own that may fail without harm."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime
from math import ceil
from pathlib import Path

import binder as package
from binder.pages import Binder, Section
from binder.render.html import render_paper
from binder.render.pdf_job import Ending, PdfJob
from binder.render.write import write_whole

MEMORY = 1_500_000_000
# Most sections are leaves of a page or two; on a machine with other work a page takes most of a
# second. What has hung is still ended within minutes.
LEAST_S, START_S, SECTION_S = 120.0, 60.0, 1.5
_KEPT_VARIABLES = (
    "PATH", "HOME", "TMPDIR", "TEMP", "TMP", "SYSTEMROOT", "APPDATA", "LOCALAPPDATA",
    "XDG_CACHE_HOME", "FONTCONFIG_PATH", "FONTCONFIG_FILE",
    "LD_LIBRARY_PATH", "DYLD_FALLBACK_LIBRARY_PATH", "WEASYPRINT_DLL_DIRECTORIES",
)  # fmt: skip
_SMALLER = "Print the HTML from a browser, or build a smaller model at a time."
_GET_PANGO = (
    "Debian, Ubuntu: apt-get install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0. "
    "macOS: install pango with your package manager. Windows: see the README. "
    "Until then print the HTML from a browser."
)
_REASONS = {
    Ending.NO_WEASYPRINT: (
        "WeasyPrint is not installed",
        "Install it into the Python that runs binder: python -m pip install weasyprint.",
    ),
    Ending.NO_PANGO: (
        "the text library Pango is not installed",
        _GET_PANGO,
    ),
    Ending.NO_MEMORY: ("the PDF needs more memory than it may take", _SMALLER),
    Ending.ASKED_FOR: (
        "the pages asked for something outside the binder, which they must never do",
        "This is a fault of binder or of a plugin: report it with the spec.",
    ),
}


@dataclass(frozen=True, slots=True)
class PdfOutcome:
    """Whether the PDF stands; if not, why not and what to do. `log` is the maker's own words."""

    ok: bool
    reason: str = ""
    help: str = ""
    log: str = ""


def write_pdf(
    binder: Binder, path: Path, *, timeout: float | None = None, memory: int = MEMORY
) -> PdfOutcome:
    """Writes the PDF whole or not at all, within seconds and bytes of address space.

    Without a `timeout` it may take as long as `time_for` says. Never raises for what the maker,
    the disk or the machine lacks: that is in the outcome.
    """
    try:
        made_on = moment_of(binder, os.environ)
    except ValueError:
        wrong = "SOURCE_DATE_EPOCH is not a whole number of seconds"
        return _failed(wrong, "Correct the variable or unset it.")
    job = PdfJob(render_paper(binder, made_on), binder.attachments, made_on)
    timeout = time_for(binder) if timeout is None else timeout
    try:
        run = _run_child(job, timeout, memory)
    except subprocess.TimeoutExpired:
        return _failed(f"the PDF was not ready after {timeout:g} s", _SMALLER)
    except OSError as fault:
        return _failed(f"the PDF process did not start: {fault}", _SMALLER)
    log = run.stderr.decode("utf-8", "replace").strip()
    if run.returncode or not run.stdout.startswith(b"%PDF-"):
        return _failure(run.returncode, log)
    return _written(path, run.stdout, log)


def time_for(binder: Binder) -> float:
    """How long the PDF of a binder may take, in s: more for each of its sections, at any depth."""
    return max(LEAST_S, START_S + SECTION_S * _count(binder.sections))


def _count(sections: tuple[Section, ...]) -> int:
    return sum(1 + _count(one.sections) for one in sections)


def moment_of(binder: Binder, environ: Mapping[str, str]) -> str:
    """When the document says it was made, W3C date and time in UTC, or '' for no date at all.

    SOURCE_DATE_EPOCH if it is set (seconds; ValueError if it is no such number), else the
    binder's own date at midnight.
    """
    epoch = environ.get("SOURCE_DATE_EPOCH", "")
    if epoch:
        return _written_out(_moment_of_seconds(epoch))
    if not binder.date:
        return ""
    return _written_out(datetime.fromisoformat(binder.date).replace(tzinfo=UTC))


def _moment_of_seconds(epoch: str) -> datetime:
    if not re.fullmatch(r"[0-9]{1,11}", epoch):
        raise ValueError(epoch)
    return datetime.fromtimestamp(int(epoch), UTC)


def _written_out(moment: datetime) -> str:
    return moment.isoformat(timespec="seconds").replace("+00:00", "Z")


def _run_child(job: PdfJob, timeout: float, memory: int) -> subprocess.CompletedProcess[bytes]:
    command = [sys.executable, "-P", "-m", "binder.render.pdf_child", str(memory)]
    with tempfile.TemporaryDirectory(prefix="binder-pdf-") as empty:
        return subprocess.run(
            [*command, str(ceil(timeout) + 1)],
            input=job.to_bytes(),
            capture_output=True,
            timeout=timeout,
            cwd=empty,
            env=_environment(),
            check=False,
        )


def _environment() -> dict[str, str]:
    """One language, clock and hash seed for every run; the caller's own only where needed."""
    kept = {name: os.environ[name] for name in _KEPT_VARIABLES if name in os.environ}
    root = Path(package.__file__).resolve().parent.parent
    fixed = {"LC_ALL": "C.UTF-8", "TZ": "UTC", "PYTHONHASHSEED": "0", "PYTHONUTF8": "1"}
    return {**kept, **fixed, "PYTHONPATH": str(root), "PYTHONDONTWRITEBYTECODE": "1"}


def _failure(code: int, log: str) -> PdfOutcome:
    if code in _REASONS:
        reason, advice = _REASONS[Ending(code)]
        return _failed(reason, advice, log)
    if code < 0:
        return _failed(
            f"the PDF process was ended by signal {-code}, as when memory runs out", _SMALLER, log
        )
    last = log.splitlines()[-1][:200] if log else "it said nothing"
    advice = "The HTML is whole: print it from a browser, and report the fault."
    return _failed(f"the PDF process failed: {last}", advice, log)


def _written(path: Path, content: bytes, log: str) -> PdfOutcome:
    try:
        write_whole(path, content)
    except OSError as fault:
        words = fault.strerror or str(fault)
        return _failed(f"{path.name} cannot be written: {words}", "Free the place.", log)
    return PdfOutcome(ok=True, log=log)


def _failed(reason: str, advice: str, log: str = "") -> PdfOutcome:
    return PdfOutcome(ok=False, reason=reason, help=advice, log=log)
