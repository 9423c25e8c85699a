"""Plugin `templates`: full-size paper templates, X-Y tables, and flat parts as DXF."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Export, hookimpl
from binder_plugins.templates.files import flat_files


@hookimpl
def binder_exports() -> Sequence[Export]:
    """Flat parts as DXF, sheets of templates as SVG."""
    return [Export("flat parts as DXF", flat_files)]
