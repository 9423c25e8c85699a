"""A binder to its files in a folder: HTML first, then the PDF, each whole or not at all."""

from __future__ import annotations

from pathlib import Path

from binder.diagnostics import Diagnostic, Span
from binder.pages import Binder
from binder.pages.codes import BUILD_RUNNING, CANNOT_WRITE, PDF_NOT_MADE
from binder.render.html import render_html
from binder.render.lock import FolderBusyError, folder_lock
from binder.render.pdf import write_pdf
from binder.render.write import write_whole


def write_binder(
    binder: Binder, folder: Path, name: str, *, with_pdf: bool = True
) -> tuple[tuple[Path, ...], tuple[Diagnostic, ...]]:
    """The files that were written, and findings about those that were not.

    Without the HTML there is no PDF either; without the PDF the HTML stands.
    """
    page = folder / f"{name}.html"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        with folder_lock(folder):
            write_whole(page, render_html(binder).encode())
            return _with_pdf(binder, page, with_pdf=with_pdf)
    except FolderBusyError as fault:
        help = "wait until it has ended, or choose another folder with --output"
        return (), (BUILD_RUNNING.at(_place(folder), str(fault), help=help),)
    except OSError as fault:
        words = fault.strerror or str(fault)
        help = "make room or choose another folder with --output"
        return (), (CANNOT_WRITE.at(_place(page), f"cannot write: {words}", help=help),)


def _with_pdf(
    binder: Binder, page: Path, *, with_pdf: bool
) -> tuple[tuple[Path, ...], tuple[Diagnostic, ...]]:
    if not with_pdf:
        return (page,), ()
    paper = page.with_suffix(".pdf")
    outcome = write_pdf(binder, paper)
    if outcome.ok:
        return (page, paper), ()
    message = f"the HTML is written, the PDF is not: {outcome.reason}"
    return (page,), (PDF_NOT_MADE.at(_place(paper), message, help=outcome.help),)


def _place(path: Path) -> Span:
    return Span(str(path), 0, 0, 0, 0)
