"""Plugin `templates`: full-size paper templates, X-Y tables, and flat parts as DXF."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Export, Page, hookimpl, late

_HERE = "binder_plugins.templates"


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The sheets of templates, and tables of where the holes are."""
    return [Page("templates", late(f"{_HERE}.page", "template_pages"))]


@hookimpl
def binder_exports() -> Sequence[Export]:
    """Flat parts as DXF, sheets of templates as SVG."""
    return [
        Export("flat parts as DXF", late(f"{_HERE}.files", "flat_files")),
        Export("templates as SVG", late(f"{_HERE}.files", "sheet_files")),
    ]
