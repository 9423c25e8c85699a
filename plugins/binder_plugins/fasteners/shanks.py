"""Screws with a plain shank: does the thread begin before the metal that is clamped ends."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Design, Diagnostic, HardwareFact, shown_length
from binder.api import exact as exactly
from binder_plugins.fasteners import codes

_METRIC = re.compile(r"M([0-9]+(?:\.[0-9]+)?) ")
# Length of thread beyond 2 d, up to 125 mm long: ISO 4014 and ISO 4762 (ISO 888), from memory.
_BEYOND = {"hexagon bolt": 6.0, "cap screw": 12.0}
_LONGEST_MM = 125.0
_NEAR_MM = 0.05


def plain_shank(what: str, length_mm: float) -> float:
    """The plain shank in mm under the head of a metric screw; nothing where it is all thread.

    Source: ISO 4014 (b = 2 d + 6) and ISO 4762 (b = 2 d + 12) up to 125 mm, from memory.
    """
    found = _METRIC.match(what)
    beyond = next((more for name, more in _BEYOND.items() if name in what), None)
    if found is None or beyond is None or length_mm > _LONGEST_MM:
        return 0.0
    return max(0.0, length_mm - 2 * float(found[1]) - beyond)


def check_shanks(design: Design) -> Iterator[Diagnostic]:
    """A finding for each screw whose shank is longer than what it clamps."""
    for fact in design.facts.all(HardwareFact):
        joint = design.joints.get(fact.joint)
        if joint is None or fact.length is None or fact.grip is None:
            continue
        shank = plain_shank(fact.what, fact.length)
        if shank > fact.grip + _NEAR_MM:
            bare = shown_length(exactly(shank), design.units)
            metal = shown_length(exactly(fact.grip), design.units)
            said = getattr(joint.entry, "fastener", None)
            yield codes.SHANK_TOO_LONG.at(
                said.span if said is not None else joint.at,
                f"'{fact.what}' has {bare} of plain shank, and only {metal} to clamp",
                help="take a shorter one, one threaded to the head, or washers to make up",
            )
