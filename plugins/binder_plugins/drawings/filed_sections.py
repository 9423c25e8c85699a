"""What is filed round to a hole of its mate as sections under the drawing, with their centres."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Anchor,
    Design,
    Drawing,
    DrawnArc,
    DrawnLabel,
    DrawnShape,
    Line,
    Picture,
    Stroke,
    exact,
    shown_length,
    text_width,
)
from binder_solid.facts import FormFact
from binder_solid.rounded import RoundedFact

# Enlarged so many times, the largest of which the widest stays in so many mm of paper.
_SCALES, _ROOM = (5, 2, 1), 40.0
_EDGE, _OVER, _APART, _LETTERS, _SAME = 2.0, 2.0, 8.0, 2.5, 1e-6
_LEADING = 1.5


def filed_sections(fact: FormFact, design: Design) -> Iterator[Picture]:
    """One picture of all that is filed round on a part."""
    part = design.parts.get(fact.subject)
    told = [
        (one.name.replace("_", " "), section)
        for one in (part.features if part is not None else ())
        if (section := design.facts.about(RoundedFact, f"{fact.subject}.{one.name}")) is not None
    ]
    if part is None or not told:
        return
    most = max(section.across for _, section in told)
    scale = next((one for one in _SCALES if most * one <= _ROOM), 1)
    high = max(2 * section.radius for _, section in told) * scale + 2 * _OVER
    shapes: list[DrawnShape] = []
    left, lines = _EDGE, 0
    for name, section in told:
        words = _words(name, section, design)
        wide = max(
            section.across * scale + 2 * _OVER, *(text_width(one, _LETTERS) for one in words)
        )
        middle = (left + wide / 2, _EDGE + high / 2)
        shapes += _drawn(section, scale, middle)
        for number, one in enumerate(words, 1):
            y = _EDGE + high + number * _LETTERS * _LEADING
            shapes.append(DrawnLabel(middle[0], y, one, _LETTERS, Anchor.MIDDLE))
        left, lines = left + wide + _APART, max(lines, len(words))
    size = (left - _APART + _EDGE, high + 2 * _EDGE + lines * _LETTERS * _LEADING)
    said = f"sections of the {part.title} where it is filed, {scale} : 1"
    caption = f"Where it is filed round, {scale} : 1; each edge about the crossing of its lines"
    yield Picture(Drawing(*size, tuple(shapes)), said, caption)


def _words(name: str, section: RoundedFact, design: Design) -> tuple[str, ...]:
    over = " × ".join(
        shown_length(exact(round(mm, 3)), design.units)
        for mm in (section.across, 2 * section.radius)
    )
    told = (one for one in section.told(design) if one)
    return (f"{name}: {over}" if section.apart else name, *told)


def _drawn(section: RoundedFact, scale: int, middle: tuple[float, float]) -> Iterator[DrawnShape]:
    """The outline, the middle line of its thickness, and a line across at each centre."""
    x, y = middle
    radius, half = section.radius * scale, section.apart / 2 * scale
    yield DrawnArc(x - half, y, radius, 90.0, 270.0)
    yield DrawnArc(x + half, y, radius, -90.0, 90.0)
    for side in (-radius, radius) if half > _SAME else ():
        yield Line(x - half, y + side, x + half, y + side)
    yield Line(x - half - radius - _OVER, y, x + half + radius + _OVER, y, Stroke.CENTRE)
    for at in sorted({x - half, x + half}):
        yield Line(at, y - radius - _OVER, at, y + radius + _OVER, Stroke.CENTRE)
