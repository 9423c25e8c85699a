"""The waste board under what is drilled right through: the drill comes out in it.

Wood splinters where nothing bears against the face that the drill leaves by, and work that is
clamped on the table has its T-slots under it. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import HOLES
from binder_plugins.operations.parallels import ON_PARALLELS, ON_WOOD

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.facts import Grip
    from binder_solid.facts import Located

ON_TABLE = "clamps on the table"
ON_WASTE = "on a waste board"
_WOOD = (
    "the waste board hard against it under every hole, or the far face splinters; ease the feed "
    "as the drill breaks through"
)
_METAL = "the waste board under every hole: the drill comes out in it, not in the table"


def on_waste(
    grip: Grip, clear: str, found: Sequence[Located], *, is_wood: bool
) -> tuple[Grip, str]:
    """The grip with the board under it where holes go through, and what is looked to then.

    `clear` is what parallels want, which bear wood no more.
    """
    if not any(one.kind in HOLES and one.depth is None for one in found):
        return grip, clear
    if grip.holder == ON_TABLE:
        holder = f"clamped {ON_WASTE} on the table"
        return replace(grip, holder=holder), _WOOD if is_wood else _METAL
    if not is_wood:
        return grip, clear
    holder = grip.holder.replace(ON_PARALLELS, ON_WASTE).replace(ON_WOOD, ON_WASTE)
    holder = holder.replace("on packing", ON_WASTE).replace(
        "clamped on wood", f"clamped {ON_WASTE}"
    )
    return replace(grip, holder=holder), _WOOD
