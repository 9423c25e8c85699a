"""Plugin `threads`: every thread of the model, with its drill, depth and measure."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Kind, hookimpl
from binder_plugins.threads.kinds import kinds


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()
