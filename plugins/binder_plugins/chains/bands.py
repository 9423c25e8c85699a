"""A chain to its picture: what is wanted, the worst case and the likely band over one scale."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Anchor,
    ChainFact,
    Drawing,
    DrawnBox,
    DrawnLabel,
    DrawnShape,
    Line,
    Stroke,
)
from binder_making.chains import Chain
from binder_plugins.chains.reckoning import printed

_WIDTH, _HEIGHT = 170.0, 28.0
_LEFT, _RIGHT = 30.0, 160.0
_BAR = 4.0
_LETTER = 2.8


def bands(fact: ChainFact, chain: Chain, units: str) -> Drawing:
    """Three bars, with the line under which it binds."""
    rows = (
        ("wanted", fact.least, fact.most, 0.12),
        ("worst case", chain.least_mm, chain.most_mm, 0.0),
        ("likely", chain.likely_least_mm, chain.likely_most_mm, 0.3),
    )
    low = min(fact.jams, *(row[1] for row in rows))
    high = max(row[2] for row in rows)
    scale = (_RIGHT - _LEFT) / max(high - low, 1e-6)

    def at(value: float) -> float:
        return _LEFT + (value - low) * scale

    shapes = [
        shape
        for n, row in enumerate(rows)
        for shape in _bar(n, row[0], row[3], at(row[1]), at(row[2]))
    ]
    shapes += _limit(at(fact.jams), f"{fails_under(fact)} {printed(fact.jams, units)}")
    return Drawing(_WIDTH, _HEIGHT, tuple(shapes))


def fails_under(fact: ChainFact) -> str:
    """What it does under its least size."""
    return "misses under" if fact.kind == "lap" else "binds under"


def _bar(n: int, name: str, tint: float, start: float, end: float) -> Iterator[DrawnShape]:
    top = 2 + n * (_BAR + 3)
    yield DrawnLabel(0, top + _BAR - 1, name, _LETTER)
    yield DrawnBox(start, top, max(end - start, 0.3), _BAR, tint)


def _limit(x: float, words: str) -> list[DrawnShape]:
    foot = 2 + 3 * (_BAR + 3)
    return [
        Line(x, 0, x, foot, Stroke.CENTRE),
        DrawnLabel(x, foot + _LETTER, words, _LETTER, Anchor.START),
    ]
