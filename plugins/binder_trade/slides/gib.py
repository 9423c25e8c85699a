"""Turns a dovetail and its length into the strip that takes up the play, and its screws."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within
from binder_trade.slides.dovetail import GEOMETRY, PRACTICE, Dovetail

_LEAST_STRIP: Final = 1.0
_SCREW_SPAN: Final = 10.0


@dataclass(frozen=True, slots=True)
class Gib:
    """A strip in mm: length, thickness at both ends, height, width along the flank.

    `blank_mm` is the least width of the square-edged strip that it is made from: both long edges
    are filed to the angle of the flank, so that they lie along the flats; left square, a strip
    stands higher than the tail, and the slide rides on it.
    `one_in` is the taper of the thickness, 0 for a straight strip; `advance_per_mm` what the
    strip must go in endways to take up 1 mm along the flats. `screws_mm` are the places of
    the adjusting screws of a straight strip from one end; a tapered one has a screw at each
    end and none along it.
    """

    length_mm: float
    thick_mm: float
    thin_mm: float
    height_mm: float
    flank_mm: float
    blank_mm: float
    one_in: float
    advance_per_mm: float
    screws_mm: tuple[float, ...]
    steps: tuple[Step, ...]


def straight_gib(slide: Dovetail, length_mm: float, screws: int | None = None) -> Gib:
    """A strip of one thickness with screws along it; mm. Raises NotDefined without a gib.

    Source: geometry; the number of screws (one to ten thicknesses, at least two) is common
    practice.
    """
    length = positive(length_mm, "the length of the gib")
    thickness = _thickness(slide)
    wanted = screws or max(2, math.ceil(length / (_SCREW_SPAN * thickness)))
    count = int(within(wanted, 1, 100, "the number of screws"))
    places = tuple(length * (i + 0.5) / count for i in range(count))
    step = Step("gib screws", "length · (i − ½) / n", f"{count} screws", PRACTICE)
    return _gib(slide, length, thickness, thickness, 0.0, places, (step,))


def taper_gib(slide: Dovetail, length_mm: float, one_in: float = 75.0) -> Gib:
    """A strip that tapers one in `one_in`, `gib_mm` thick at its middle; mm.

    Raises NotDefined where its thin end is under 1 mm. Source: geometry; a taper of 1:50 to
    1:100 is common practice. The female's flank leans by the same taper.
    """
    length = positive(length_mm, "the length of the gib")
    ratio = within(one_in, 20, 200, "the taper of a gib (one in)")
    thickness = _thickness(slide)
    half = length / (2 * ratio)
    if thickness - half < _LEAST_STRIP:
        raise NotDefined(
            f"the thin end of the gib is {thickness - half:.2f} mm",
            f"make the gib {_LEAST_STRIP + half:.1f} mm thick at its middle, or its taper finer",
        )
    step = Step("gib ends", "t ± length / (2 n)", mm(thickness + half), GEOMETRY)
    return _gib(slide, length, thickness + half, thickness - half, ratio, (), (step,))


def _thickness(slide: Dovetail) -> float:
    if slide.gib_mm > 0:
        return slide.gib_mm
    raise NotDefined("the slide has no gib", "give it a thickness, about a third of the depth")


def _gib(
    slide: Dovetail,
    length: float,
    thick: float,
    thin: float,
    one_in: float,
    screws: tuple[float, ...],
    steps: tuple[Step, ...],
) -> Gib:
    sine = math.sin(math.radians(slide.angle_deg))
    bevel = thick / math.tan(math.radians(slide.angle_deg))
    height = slide.male.depth_mm - slide.relief_mm
    if height <= 0:
        raise NotDefined(
            f"a relief of {slide.relief_mm:g} mm leaves no height for the gib",
            "make the relief smaller than half of the depth",
        )
    along = height / sine
    made = (
        Step("gib along the flank", "(h − relief) / sin θ", mm(along), PRACTICE),
        Step(
            "strip before its edges are bevelled", "flank + t / tan θ", mm(along + bevel), GEOMETRY
        ),
    )
    return Gib(
        length, thick, thin, height, along, along + bevel, one_in, one_in * sine, screws,
        (*steps, *made),
    )  # fmt: skip
