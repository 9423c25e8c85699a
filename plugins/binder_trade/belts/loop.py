"""Several pulleys in a plane to the one belt that goes round them all."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative, within
from binder_trade.roots import root_between

TANGENTS: Final = "geometry of common tangents and arcs"
_MOST_WRAP: Final = 1.5 * math.pi


@dataclass(frozen=True, slots=True)
class Pulley:
    """A pulley's centre and diameter at the belt's neutral line, mm.

    `turns` is +1 where the belt turns it anticlockwise, −1 clockwise, as the belt runs from
    each pulley of the list to the next.
    """

    x_mm: float
    y_mm: float
    diameter_mm: float
    turns: int = 1


@dataclass(frozen=True, slots=True)
class Loop:
    """The belt's length and each free span in mm, the wrap on each pulley in rad."""

    length_mm: float
    spans_mm: tuple[float, ...]
    wraps_rad: tuple[float, ...]
    steps: tuple[Step, ...]


def loop(pulleys: Sequence[Pulley]) -> Loop:
    """The belt round two pulleys or more, in the order in which it meets them; mm, rad.

    Raises NotDefined where pulleys overlap or the belt misses one. Source: `TANGENTS`.
    """
    if len(pulleys) < 2:
        raise NotDefined("a belt wants two pulleys or more", "give another pulley")
    for each in pulleys:
        not_negative(each.diameter_mm, "a pulley's diameter")
        for place in (each.x_mm, each.y_mm):
            within(place, -1e6, 1e6, "a pulley's place in mm")
    onward = [*pulleys[1:], pulleys[0]]
    spans = [_span(one, two) for one, two in zip(pulleys, onward, strict=True)]
    headings = [heading for heading, _ in spans]
    wraps = tuple(
        _wrap(pulley, before, after)
        for pulley, before, after in zip(
            pulleys, [headings[-1], *headings[:-1]], headings, strict=True
        )
    )
    _met(pulleys, wraps)
    free = tuple(span for _, span in spans)
    arcs = sum(p.diameter_mm / 2 * wrap for p, wrap in zip(pulleys, wraps, strict=True))
    length = sum(free) + arcs
    steps = (
        Step("free spans", "√(c² − (R ± r)²), all", mm(sum(free)), TANGENTS),
        Step("on the pulleys", "Σ r × wrap", mm(arcs), TANGENTS),
        Step("length of the belt", "spans + arcs", mm(length), TANGENTS),
    )
    return Loop(length, free, wraps, steps)


def moved_to_take_up(
    pulleys: Sequence[Pulley], index: int, toward_rad: float, most_mm: float, length_mm: float
) -> float:
    """How far pulley `index` moves along a direction, mm, until the belt has this length.

    The direction is in rad from the x axis. Raises NotDefined where no travel up to `most_mm`
    serves.
    """

    def off(travel: float) -> float:
        return loop(_moved(pulleys, index, toward_rad, travel)).length_mm - length_mm

    try:
        return root_between(off, 0.0, most_mm)
    except NotDefined:
        raise
    except ValueError:
        raise NotDefined(
            f"no travel up to {most_mm:g} mm takes up a belt of {length_mm:g} mm",
            "give it more travel, or another belt",
        ) from None


def _moved(
    pulleys: Sequence[Pulley], index: int, toward: float, travel: float
) -> tuple[Pulley, ...]:
    old = pulleys[index]
    new = Pulley(
        old.x_mm + travel * math.cos(toward),
        old.y_mm + travel * math.sin(toward),
        old.diameter_mm,
        old.turns,
    )
    return (*pulleys[:index], new, *pulleys[index + 1 :])


def _span(one: Pulley, two: Pulley) -> tuple[float, float]:
    """Heading of the belt in rad and the length of the free span in mm."""
    centres = math.hypot(two.x_mm - one.x_mm, two.y_mm - one.y_mm)
    rise = (two.turns * two.diameter_mm - one.turns * one.diameter_mm) / 2
    if centres <= max(abs(rise), 1e-9):
        raise NotDefined("two neighbouring pulleys lie in one another", "set them further apart")
    along = math.atan2(two.y_mm - one.y_mm, two.x_mm - one.x_mm)
    return along - math.asin(rise / centres), math.sqrt(centres**2 - rise**2)


def _wrap(pulley: Pulley, before: float, after: float) -> float:
    turned = (pulley.turns * (after - before)) % (2 * math.pi)
    return 0.0 if 2 * math.pi - turned < 1e-9 else turned


def _met(pulleys: Sequence[Pulley], wraps: Sequence[float]) -> None:
    for number, wrap in enumerate(wraps, 1):
        if len(pulleys) > 2 and wrap > _MOST_WRAP:
            raise NotDefined(
                f"the belt passes pulley {number} by", "move it into the belt, or turn its sense"
            )
