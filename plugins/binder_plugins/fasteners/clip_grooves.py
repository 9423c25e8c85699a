"""Circlips and E-clips alike: the size that is bought, its groove, and what it is for."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.fastening import FastenerName
from binder_trade.hardware import (
    Circlip,
    EClip,
    NotListed,
    circlip_bore,
    circlip_shaft,
    e_clip,
    e_clip_named,
)
from binder_trade.limits import limits

_SAME_MM = 0.02


@dataclass(frozen=True, slots=True)
class Ring:
    """A clip and its groove in mm: `size_mm` names it, for shafts or bores `over` to `to`.

    The groove is `wide_mm` to `wide_to_mm` wide and `low_mm` to `high_mm` across; `land_mm` is
    the least metal between it and the end.
    """

    size_mm: float
    over_mm: float
    to_mm: float
    thick_mm: float
    groove_mm: float
    low_mm: float
    high_mm: float
    wide_mm: float
    wide_to_mm: float
    land_mm: float
    is_inside: bool
    standard: str
    source: str

    def suits(self, nominal_mm: float) -> bool:
        """Whether it is for a shaft or bore of this diameter in mm."""
        return self.over_mm - _SAME_MM <= nominal_mm <= self.to_mm + _SAME_MM

    @property
    def range_words(self) -> str:
        """`a shaft of 6 mm`, `shafts of 5 to 7 mm`."""
        what = "bore" if self.is_inside else "shaft"
        if self.over_mm == self.to_mm:
            return f"a {what} of {self.to_mm:g} mm"
        return f"{what}s of {self.over_mm:g} to {self.to_mm:g} mm"


def listed_ring(name: FastenerName, size_mm: float | None, nominal_mm: float | None) -> Ring:
    """The clip that is named, else the one for the shaft or bore; raises NotListed."""
    if size_mm is None and nominal_mm is None:
        raise NotListed(
            f"nothing tells the size of the {name.kind}",
            "name the step or bore that it sits in, or write its size",
        )
    if name.kind == "e-clip":
        return _e_clip(e_clip_named(size_mm) if size_mm is not None else e_clip(nominal_mm or 0.0))
    size = size_mm if size_mm is not None else nominal_mm or 0.0
    is_inside = name.kind == "internal circlip"
    return _circlip((circlip_bore if is_inside else circlip_shaft)(size), is_inside=is_inside)


def _circlip(clip: Circlip, *, is_inside: bool) -> Ring:
    width = limits(clip.width_mm, "H13")
    return Ring(
        size_mm=clip.d_mm,
        over_mm=clip.d_mm,
        to_mm=clip.d_mm,
        thick_mm=clip.thickness_mm,
        groove_mm=clip.groove_mm,
        low_mm=clip.groove_mm + clip.groove_lower_um / 1000,
        high_mm=clip.groove_mm + clip.groove_upper_um / 1000,
        wide_mm=clip.width_mm,
        wide_to_mm=clip.width_mm + width.upper_um / 1000,
        land_mm=clip.land_mm,
        is_inside=is_inside,
        standard=clip.standard,
        source=clip.source,
    )


def _e_clip(clip: EClip) -> Ring:
    bottom = limits(clip.groove_mm, "h11")
    return Ring(
        size_mm=clip.groove_mm,
        over_mm=clip.shaft_over_mm,
        to_mm=clip.shaft_to_mm,
        thick_mm=clip.thickness_mm,
        groove_mm=clip.groove_mm,
        low_mm=clip.groove_mm + bottom.lower_um / 1000,
        high_mm=clip.groove_mm,
        wide_mm=clip.width_mm,
        wide_to_mm=clip.width_mm + clip.width_upper_um / 1000,
        land_mm=clip.land_mm,
        is_inside=False,
        standard=clip.standard,
        source=clip.source,
    )
