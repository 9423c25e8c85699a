"""Turns the size of a screw that moves a load, trapezoidal, square or Acme, into its thread."""

from __future__ import annotations

from math import pi
from typing import TYPE_CHECKING, Final

from binder_trade.explained import NotDefined
from binder_trade.threads.form import Form
from binder_trade.threads.inches import spoken
from binder_trade.threads.thread import NotMade, Thread

if TYPE_CHECKING:
    from binder_trade.slides.leadscrew import Leadscrew

_INCH: Final = 25.4
_LEAST_CORE: Final = 0.5
_MOST_STARTS: Final = 12
# The height of the sharp profile in pitches: ½ cot 15°, ½ cot 14.5°; a square has none.
_TRIANGLE: Final = {"Tr": 1.8660254, "Acme": 1.9333564, "square": 0.0}
_CALLED: Final = {"Tr": "trapezoidal 30°", "Acme": "Acme 29°", "square": "square"}


def moving(family: str, major_mm: float | None, pitch_mm: float | None, starts: int = 1) -> Thread:
    """The right-hand thread of a screw that moves, sizes in mm.

    Raises NotMade where size or pitch is missing, or the core would be below half the
    diameter. Sources: ISO 2901 (Tr), ASME B1.5 (Acme), textbook proportions (square).
    """
    if major_mm is None or pitch_mm is None:
        raise NotMade(f"a {_CALLED[family]} thread has no usual pitch", "write both, as Tr 10 x 2")
    if not 1 <= starts <= _MOST_STARTS:
        raise NotMade(f"a screw of {starts} starts is not cut", f"take 1 to {_MOST_STARTS}")
    try:
        screw = _screw(family, major_mm, pitch_mm)
    except NotDefined as refused:
        raise NotMade(refused.reason, refused.way_out) from refused
    if screw.minor_mm < _LEAST_CORE * screw.major_mm:
        raise NotMade(
            f"a pitch of {pitch_mm:g} mm leaves {screw.minor_mm:.2f} mm of core in {major_mm:g} mm",
            f"take a pitch of {major_mm / 5:.2g} mm or so",
        )
    return _thread(family, screw, starts)


def _screw(family: str, major_mm: float, pitch_mm: float) -> Leadscrew:
    # Few models have one, and the sums of slides are many.
    from binder_trade.slides.leadscrew import acme, square, trapezoidal

    if family == "Acme":
        return acme(major_mm / _INCH, _INCH / pitch_mm)
    return trapezoidal(major_mm, pitch_mm) if family == "Tr" else square(major_mm, pitch_mm)


def _thread(family: str, screw: Leadscrew, starts: int) -> Thread:
    depth = (screw.major_mm - screw.minor_mm) / 2
    across = (screw.pitch_diameter_mm + screw.minor_mm) / 2
    return Thread(
        designation=_designation(family, screw, starts),
        family=family,
        form=_form(family, screw, depth),
        major_mm=screw.major_mm,
        pitch_mm=screw.pitch_mm,
        tpi=round(_INCH / screw.pitch_mm) if family == "Acme" else None,
        effective_mm=screw.pitch_diameter_mm,
        minor_internal_mm=screw.nut_minor_mm,
        minor_external_mm=screw.minor_mm,
        depth_mm=depth,
        stress_area_mm2=pi / 4 * across**2,
        is_left_hand=False,
        is_coarse=False,
        standard=screw.source,
        starts=starts,
    )


def _form(family: str, screw: Leadscrew, depth: float) -> Form:
    """The form of one pitch: its depth has a clearance that is no multiple of the pitch."""
    return Form(
        name=_CALLED[family],
        angle_deg=2 * screw.flank_deg,
        triangle=_TRIANGLE[family],
        effective_drop=0.5,
        internal_drop=1.0,
        depth=depth / screw.pitch_mm,
        radius=0.0,
        standard=screw.source,
    )


def _designation(family: str, screw: Leadscrew, starts: int) -> str:
    """`Tr 10 x 2`, `Tr 10 x 4 P2` with two starts (ISO 2903), `1/2-10 Acme`."""
    if family == "Acme":
        size = spoken(screw.major_mm) or f"{screw.major_mm / _INCH:.4g}"
        return f"{size}-{round(_INCH / screw.pitch_mm)} Acme"
    several = f" P{screw.pitch_mm:g}" if starts > 1 else ""
    return f"{family} {screw.major_mm:g} x {screw.pitch_mm * starts:g}{several}"
