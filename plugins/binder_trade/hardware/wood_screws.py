"""Turns the gauge number of a wood screw into its shank, head, holes and lengths."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.listing import MM_PER_INCH, Listed, table
from binder_trade.hardware.steps_sold import steps_within, texts_within

_FIRST_IN = 0.060
_EACH_IN = 0.013
_ANGLE_DEG = 82.0


@dataclass(frozen=True, slots=True, kw_only=True)
class WoodScrew(Listed):
    """A countersunk wood screw, mm: shank, head, clearance hole, pilots for soft and hard wood.

    The holes have a source of their own; a brass screw wants a steel one put in first.
    """

    number: int
    shank_mm: float
    head_mm: float
    angle_deg: float
    clearance_mm: float
    pilot_soft_mm: float
    pilot_hard_mm: float
    lengths_mm: tuple[float, ...]
    length_texts: tuple[str, ...]
    holes_source: str


def wood_screw(number: int) -> WoodScrew:
    """A wood screw by gauge, 0 to 12, mm (ASME B18.6.1; shank 0.060 + 0.013 N in).

    Raises NotListed.
    """
    of = table("wood_screws.yaml", "countersunk")
    key = str(number)
    row = of.row(key, f"wood screw no. {key[:20]}")
    return WoodScrew(
        number=number,
        shank_mm=round((_FIRST_IN + _EACH_IN * number) * MM_PER_INCH, 4),
        head_mm=row["head"],
        angle_deg=_ANGLE_DEG,
        clearance_mm=row["clearance"],
        pilot_soft_mm=row["soft"],
        pilot_hard_mm=row["hard"],
        lengths_mm=steps_within(of.words["list"], row),
        length_texts=texts_within(of.words["list"], row),
        holes_source=of.words["holes"],
        standard=of.standard,
        status=of.status_of(key),
    )
