"""How thick a step may come out: a collet opens to its size, and no farther."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Stretch


def thickest(work: Work, *steps: Stretch) -> float:
    """The largest that any of the steps may measure by its limits, in mm; as drawn without any.

    One without limits is turned to go in.
    """
    return max(max(one.across, _upper(work, one)) for one in steps)


def _upper(work: Work, step: Stretch) -> float:
    halves = work.halves.get(step.name, ())
    return max((one.largest for one in halves if one.largest is not None), default=0.0)
