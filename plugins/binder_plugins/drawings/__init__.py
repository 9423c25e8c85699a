"""Plugin `drawings`: a drawing on each part's leaf, with every size of the spec once."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Export, Page, hookimpl, late

_PAGE = "binder_plugins.drawings.page"


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The drawing at the head of each part's leaf."""
    return [Page("drawings", late(_PAGE, "drawing_pages"))]


@hookimpl
def binder_exports() -> Sequence[Export]:
    """Each drawing as SVG."""
    return [Export("drawings as SVG", late(_PAGE, "drawing_files"))]
