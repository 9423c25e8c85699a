"""Plugin `fasteners`: screws, pins, keys and rivets, from the joint that they hold."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Kind, hookimpl
from binder_plugins.fasteners.kinds import kinds


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()
