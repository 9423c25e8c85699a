"""The distance tube of a bond, named as a tool with the sizes that it is made to."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.set_there import tube_for
from binder_solid.stands_at import shown_mm

if TYPE_CHECKING:
    from binder.api import Design


def distance_tube(joint: str, design: Design) -> str:
    """`distance tube ⌀4 mm × 4.07 mm`: its bore, then its length; '' where a shoulder stops."""
    found = tube_for(design.joints[joint], design) if joint in design.joints else None
    if found is None:
        return ""
    return f"distance tube ⌀{shown_mm(found.across, design)} × {shown_mm(found.long, design)}"
