"""Preferred scales (ISO 5455) and how a scale is written."""

from __future__ import annotations

LARGER = (2.0, 5.0, 10.0, 20.0, 50.0)
SMALLER = (0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001)
PREFERRED = (*reversed(LARGER), 1.0, *SMALLER)


def written(scale: float) -> str:
    """A scale as it is written on a sheet: 2 : 1, 1 : 1, 1 : 2 (ISO 5455)."""
    return f"{scale:g} : 1" if scale >= 1 else f"1 : {1 / scale:g}"
