"""Styles: how freely a sheet uses its paper."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Style:
    """What gives way when a sheet is narrow.

    `at_ends` is how many diameters stand beside each end of a view, the others across their steps;
    `growth` and `on_part` are what words cost beyond the drawing and on the part, in mm of leader;
    `stack` is the most sizes from one datum that are stacked: more stand on one running line.
    """

    at_ends: int = 4
    growth: float = 0.8
    on_part: float = 40.0
    stack: int = 99


ROOMY = Style()
TIGHT = Style(at_ends=1, growth=2.5, on_part=0.0, stack=4)
STYLES = (ROOMY, TIGHT)
