"""Plugin `drawings`: a drawing on each part's leaf, with every size of the spec once."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Page, hookimpl
from binder_plugins.drawings.page import drawing_pages


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The drawing at the head of each part's leaf."""
    return [Page("drawings", drawing_pages)]
