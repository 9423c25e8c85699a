"""Joints whose two holes come of one drill: told so, or pinned with one spotted through the other.

A pin is driven through both at once: spotted or drilled together, the second hole is drilled with
the first half in its place. Common practice, no source.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder.api import Joint

TOGETHER, _SPOTTED = "drilled together", "spotted through"


def is_drilled_as_one(joint: Joint) -> bool:
    """Whether one drill makes the holes of both halves, where these stand on one another."""
    return joint.made == TOGETHER or (joint.kind == "pinned" and joint.made == _SPOTTED)
