"""Plugin `inspection`: what is measured at each joint, with what, and what to do if it is out."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Page, hookimpl
from binder_plugins.inspection.page import inspection_pages


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The list of sizes that are measured, with a box for each."""
    return [Page("inspection", inspection_pages)]
