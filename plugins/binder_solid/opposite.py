"""The six faces of an envelope, each to the one on its other side."""

from __future__ import annotations

BEHIND = {
    "top": "underside",
    "underside": "top",
    "front": "back",
    "back": "front",
    "left": "right",
    "right": "left",
}
