"""Which stock goes back through the spindle of the lathe that turns it."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.turning import Turning


def passes(turning: Turning, across: float) -> bool:
    """Whether stock so thick in mm goes through the spindle of the lathe."""
    lathes = turning.work.design.workshop.entry.machines.lathes
    found = lathes.get(turning.lathe)
    return found is None or across <= found.spindle_bore.mm
