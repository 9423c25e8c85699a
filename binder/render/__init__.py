"""A binder's pages to one HTML file, and to a PDF made in a process of its own."""

from binder.render.html import render_html
from binder.render.lock import FolderBusyError, folder_lock
from binder.render.output import write_binder
from binder.render.pdf import PdfOutcome, write_pdf
from binder.render.write import write_whole

__all__ = [
    "FolderBusyError",
    "PdfOutcome",
    "folder_lock",
    "render_html",
    "write_binder",
    "write_pdf",
    "write_whole",
]
