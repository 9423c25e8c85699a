"""Which hand saw cuts a slot of a width: none with a kerf wider than the slot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.hole_tools import NOT_OWNED

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.work import Work

# How much wider than its set a saw may run, and a slot still be that wide, in mm; common
# practice, no source.
_SAME = 0.05


def slit_tool(work: Work, width: float) -> str:
    """The saw with the widest kerf that goes in a slot so wide in mm, and what opens it after.

    Two blades of a hacksaw side by side where both go in. Where every saw is too wide, a
    slotting file that is not owned.
    """
    able = [one for one in _by_kerf(work) if one[0] <= width + _SAME]
    if not able:
        return f"{work.mm(width)} slotting file, {NOT_OWNED}"
    kerf, name, is_framed = max(able)
    blades = 2 if is_framed and 2 * kerf <= width + _SAME else 1
    tool = f"{name}, two blades side by side" if blades > 1 else name
    is_done = abs(blades * kerf - width) <= _SAME
    return tool if is_done else f"{tool}, opened to {work.mm(width)} with a thin file"


def _by_kerf(work: Work) -> Iterator[tuple[float, str, bool]]:
    """The hand saws for metal, by what they cut away in mm; whether two blades go in the frame."""
    for name, saw in work.design.workshop.entry.machines.saws.items():
        if saw.by_hand and {"bars", "sheet"} & set(saw.cuts):
            yield saw.kerf.mm, name, "bars" in saw.cuts
