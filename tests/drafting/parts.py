"""Parts for the tests: plain geometry, reckoned here and not by a kernel."""

from __future__ import annotations

from collections.abc import Sequence

from binder_drafting import (
    Across,
    Along,
    Around,
    AxisLine,
    Bow,
    CentreMark,
    Chain,
    Edge,
    Note,
    PitchCircle,
    Size,
    View,
    on_circle,
)


def rectangle(left: float, low: float, right: float, high: float, kind: str = "visible") -> Chain:
    return Chain(((left, low), (right, low), (right, high), (left, high), (left, low)), kind)


def shaft(steps: Sequence[tuple[float, float]]) -> View:
    """Steps of (diameter, length) along u from 0."""
    edges: list[Edge] = []
    here = 0.0
    for diameter, length in steps:
        edges.append(rectangle(here, -diameter / 2, here + length, diameter / 2))
        here += length
    return View("front", tuple(edges), side="front", marks=(AxisLine((0, 0), (here, 0)),))


def shaft_sizes(steps: Sequence[tuple[float, float]], suffix: str = "") -> tuple[Size, ...]:
    """All lengths from the left end, all diameters."""
    sizes: list[Size] = []
    here = 0.0
    for n, (diameter, length) in enumerate(steps):
        radius = diameter / 2
        middle = here + length / 2
        here += length
        sizes.append(
            Along(f"l{n}", "front", "u", (0, radius), (here, radius), f"{here:g}", datum="end")
        )
        text = f"⌀{diameter:g}{suffix}"
        limits = ("0", "−0.021") if n % 2 else ()
        sizes.append(
            Across(f"d{n}", "front", (middle, radius), (middle, -radius), text, limits, "fit")
        )
    return tuple(sizes)


def plate(width: float, height: float, holes: Sequence[tuple[float, float, float]]) -> View:
    """A plate from 0,0 with holes at u, v of a diameter."""
    round_edges = [Bow((u, v), diameter / 2) for u, v, diameter in holes]
    marks = tuple(CentreMark((u, v), diameter / 2) for u, v, diameter in holes)
    edges: tuple[Edge, ...] = (rectangle(0, 0, width, height), *round_edges)
    return View("front", edges, side="front", marks=marks)


def plate_sizes(
    width: float, height: float, holes: Sequence[tuple[float, float, float]], words: str = "THRO’"
) -> tuple[Size, ...]:
    """Overall sizes, both coordinates of each hole and a note on each."""
    sizes: list[Size] = [
        Along("width", "front", "u", (0, 0), (width, 0), f"{width:g}", datum="left"),
        Along("height", "front", "v", (0, 0), (0, height), f"{height:g}", datum="front"),
    ]
    for n, (u, v, diameter) in enumerate(holes):
        sizes += [
            Along(f"u{n}", "front", "u", (0, 0), (u, v), f"{u:g}", datum="left"),
            Along(f"v{n}", "front", "v", (0, 0), (u, v), f"{v:g}", datum="front"),
            Note(f"h{n}", "front", (u, v), (f"⌀{diameter:g} {words}",), radius=diameter / 2),
        ]
    return tuple(sizes)


def cover() -> tuple[View, tuple[Size, ...]]:
    """A round cover with four holes on a pitch circle."""
    holes = tuple(Bow(on_circle((0, 0), 15, 45 + 90 * n), 1.7) for n in range(4))
    marks = (CentreMark((0, 0), 25), PitchCircle((0, 0), 15, (45, 135, 225, 315), 1.7))
    view = View("front", (Bow((0, 0), 25), Bow((0, 0), 8), *holes), side="front", marks=marks)
    at = on_circle((0, 0), 15, 45)
    sizes = (
        Around("outside", "front", (0, 0), 50, "⌀50"),
        Around("bore", "front", (0, 0), 16, "⌀16 H7", ("+0.018", "0"), "fit"),
        Note("holes", "front", at, ("4 × ⌀3.4 THRO’", "ON 30 PCD"), radius=1.7),
    )
    return view, sizes
