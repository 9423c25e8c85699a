"""Says what is wrong with a ring that is pressed, stretched or housed out of its range."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

SOURCE: Final = "seal makers' practice, as read in public tables; the ranges differ by maker"
# Per cent, least and most.
SQUEEZE: Final = {"standing": (12.0, 30.0), "moving": (8.0, 20.0), "face": (15.0, 35.0)}
STRETCH: Final = {"piston": (0.0, 6.0), "rod": (-3.0, 5.0), "face": (-3.0, 3.0)}
FILL: Final = (60.0, 90.0)
_HAIR: Final = 1e-6  # so that a figure at the limit is within it


@dataclass(frozen=True, slots=True)
class Remark:
    """What a check has to say: its code, what is wrong, why it matters, what would serve."""

    code: str
    reason: str
    why: str
    way_out: str


def remarks(
    place: str, duty: str, squeeze: float, stretch: float, fill: float
) -> tuple[Remark, ...]:
    """What is out of range; squeeze, stretch and fill in per cent. Source: `SOURCE`."""
    return (*_squeezed(duty, squeeze), *_stretched(place, stretch), *_filled(fill))


def _squeezed(duty: str, squeeze: float) -> Iterator[Remark]:
    low, high = SQUEEZE[duty]
    if squeeze < low - _HAIR:
        yield Remark(
            "seal-squeeze-out",
            f"the ring is pressed by {squeeze:.0f} %, less than {low:g} %",
            "it leaks",
            "a shallower groove, a thicker cord or less stretch",
        )
    if squeeze > high + _HAIR:
        yield Remark(
            "seal-squeeze-out",
            f"the ring is pressed by {squeeze:.0f} %, more than {high:g} %",
            "it grips like a brake and wears" if duty == "moving" else "it splits or sets",
            "a deeper groove or a thinner cord",
        )


def _stretched(place: str, stretch: float) -> Iterator[Remark]:
    low, high = STRETCH[place]
    if stretch > high + _HAIR:
        yield Remark(
            "seal-stretch-out",
            f"the ring is stretched by {stretch:.1f} %, more than {high:g} %",
            "it thins, ages and leaks",
            "the next larger ring",
        )
    if stretch < low - _HAIR:
        yield Remark(
            "seal-stretch-out",
            f"the ring is {-stretch:.1f} % too large for its seat",
            "it buckles in the groove and is cut when it goes in",
            "the next smaller ring",
        )


def _filled(fill: float) -> Iterator[Remark]:
    low, high = FILL
    if not low <= fill <= high:
        yield Remark(
            "seal-fill-out",
            f"the ring fills {fill:.0f} % of its groove, not {low:g} to {high:g} %",
            "it rolls" if fill < low else "it has no room to swell",
            "the width of the housing table",
        )


def passes_port(travel_from_mm: float, travel_to_mm: float, port_mm: float, wide_mm: float) -> bool:
    """Whether a ring crosses a port as wide as this between its two places; mm on one axis.

    The port's edge cuts the ring unless it is rounded. Source: common practice, no source.
    """
    low, high = sorted((travel_from_mm, travel_to_mm))
    return low < port_mm + wide_mm / 2 and high > port_mm - wide_mm / 2
