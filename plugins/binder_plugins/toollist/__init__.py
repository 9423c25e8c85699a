"""Plugin `toollist`: the workshop that a binder was worked out for, printed back."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Page, hookimpl
from binder_plugins.toollist.page import workshop_pages


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The tool list."""
    return [Page("the workshop", workshop_pages)]
