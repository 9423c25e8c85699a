"""Plugin `drawings`: a drawing on each part's leaf, with every size of the spec once."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Export, Page, hookimpl
from binder_plugins.drawings.page import drawing_files, drawing_pages


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The drawing at the head of each part's leaf."""
    return [Page("drawings", drawing_pages)]


@hookimpl
def binder_exports() -> Sequence[Export]:
    """Each drawing as SVG."""
    return [Export("drawings as SVG", drawing_files)]
