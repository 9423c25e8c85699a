"""Two grooved pulleys to the O-rings that are sold and stretch as a belt should."""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder_trade.belts.round_belt import stretch_range
from binder_trade.belts.run import Layout, run
from binder_trade.explained import NotDefined, Step
from binder_trade.seals.rings import Ring, rings


@dataclass(frozen=True, slots=True)
class RingBelt:
    """An O-ring as a belt, and how far its inside is stretched, as a part of one."""

    ring: Ring
    stretch: float
    steps: tuple[Step, ...]


def ring_belts(
    first_bottom_mm: float,
    second_bottom_mm: float,
    centres_mm: float,
    layout: Layout = "open",
    cord_mm: float | None = None,
) -> tuple[RingBelt, ...]:
    """O-rings sold that serve as a belt on these groove bottoms, best stretch first; mm.

    With a cord, only rings of that cord. Raises NotDefined where none serves, and tells the
    inside diameter wanted. Source: see `stretch_range("o-ring")`.
    """
    least, usual, most, source = stretch_range("o-ring")
    around = run(first_bottom_mm, second_bottom_mm, centres_mm, layout).length_mm
    found = [
        RingBelt(each, part, (_step(each, part, source),))
        for each in rings()
        if cord_mm is None or math.isclose(each.cord_mm, cord_mm, abs_tol=0.05)
        if least <= (part := around / (math.pi * each.inside_mm) - 1) <= most
        if min(first_bottom_mm, second_bottom_mm) >= 4 * each.cord_mm
    ]
    if not found:
        inside = around / math.pi
        raise NotDefined(
            f"no O-ring kept here suits a run of {around:.1f} mm",
            f"look for an inside diameter of {inside / (1 + most):.1f} to"
            f" {inside / (1 + least):.1f} mm, shift the centres, or weld a cord",
        )
    return tuple(sorted(found, key=lambda each: (abs(each.stretch - usual), each.ring.name)))


def _step(ring: Ring, part: float, source: str) -> Step:
    return Step(f"stretch of {ring.name}", "run / (π × inside) − 1", f"{part * 100:.1f} %", source)
