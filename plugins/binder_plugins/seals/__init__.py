"""Plugin `seals`: O-rings, gaskets and packings."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Kind, hookimpl
from binder_plugins.seals.kinds import kinds


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()
