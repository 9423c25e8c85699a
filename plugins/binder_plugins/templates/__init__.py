"""Plugin `templates`: full-size paper templates, X-Y tables, and flat parts as DXF."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Export, Page, hookimpl
from binder_plugins.templates.files import flat_files, sheet_files
from binder_plugins.templates.page import template_pages


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The sheets of templates, and tables of where the holes are."""
    return [Page("templates", template_pages)]


@hookimpl
def binder_exports() -> Sequence[Export]:
    """Flat parts as DXF, sheets of templates as SVG."""
    return [
        Export("flat parts as DXF", flat_files),
        Export("templates as SVG", sheet_files),
    ]
