"""Lengths to tiers of dimension lines beside a view, the smallest nearest to it (ISO 129-1).

Clauses are from memory: ISO 129-1:2018 on dimension lines, extension lines and the place of
figures (above their line, read from below or from the right).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.sides import Side
from binder_drafting.words import Words

# From the outline to the first line, and between lines: common practice is 10 and 7 to 10 mm.
FIRST = 10.0
_BETWEEN = 2.2
_ABOVE_LINE = 1.0
# ISO 129-1: extension lines go about 8 line widths past the dimension line.
_OVERSHOOT = 2.0
_GAP = 1.0
# Two heads of 2.5 mm and a piece of line.
_ROOM_FOR_HEADS = 6.5
_TAIL = 5.0
# How far words may slide along their line to get clear of an extension line.
_FARTHEST_TEXT = 25.0
_CLEAR = 1.2
# Beyond this a line through a figure is the lesser evil.
_FARTHEST_FOR_LINES = 20.0


@dataclass(frozen=True, slots=True)
class Span:
    """A length to be placed on a side: its two points on the paper and its words."""

    id: str
    start: Point
    end: Point
    words: Words
    rank: int = 0


@dataclass(frozen=True, slots=True)
class _Standing:
    """A span on its tier; `text` is where its words begin along the side."""

    span: Span
    tier: int
    low: float
    high: float
    text: float
    heads_inside: bool


def draw_tiers(
    spans: Sequence[Span], side: Side, paper: Paper, passing: Sequence[float] = ()
) -> float:
    """Draws every span on one side, no two on one another, and gives the last tier's distance.

    `passing` are places along the side where other lines will run outwards.
    """
    standing = _stacked(spans, side, passing)
    aways = _aways(standing)
    push = _push(standing, aways, side, paper)
    aways = [away + push for away in aways]
    _draw_extensions(standing, aways, side, paper)
    for one in standing:
        _draw_span(one, aways[one.tier], side, paper)
    return aways[-1]


def _push(standing: Sequence[_Standing], aways: Sequence[float], side: Side, paper: Paper) -> float:
    """How much farther away all tiers must go to keep clear of the words of other sides."""
    push = 0.0
    while True:
        boxes = [_box(one, aways[one.tier] + push, side).grown(0.5) for one in standing]
        if all(map(paper.taken.is_free, boxes)) and (
            push > _FARTHEST_FOR_LINES or not any(map(paper.taken.is_struck, boxes))
        ):
            return push
        push += 4.0


def _box(one: _Standing, away: float, side: Side) -> Rectangle:
    return one.span.words.box(_base(one, away, side), is_upright=side.is_upright)


def _base(one: _Standing, away: float, side: Side) -> Point:
    lift = one.span.words.drop + _ABOVE_LINE
    return side.paper(one.text, away - lift if side.is_inward else away + lift)


def _stacked(spans: Sequence[Span], side: Side, outwards: Sequence[float]) -> list[_Standing]:
    ends = {span.id: _ends(span, side) for span in spans}
    order = sorted(
        spans, key=lambda one: (round(ends[one.id][1] - ends[one.id][0], 3), one.rank, one.id)
    )
    later = Counter(outwards)
    later.update(end for pair in ends.values() for end in pair)
    posts: list[Counter[float]] = []
    tiers: list[list[tuple[float, float]]] = []
    found: list[_Standing] = []
    for span in order:
        later.subtract(ends[span.id])
        passing = [*(sorted(later + here) for here in posts), sorted(+later)]
        one = _settled(span, ends[span.id], passing, tiers)
        if one.tier == len(tiers):
            tiers.append([])
            posts.append(Counter())
        tiers[one.tier].append(_room(one))
        for lower in posts[: one.tier + 1]:
            lower.update(ends[span.id])
        found.append(one)
    return found


def _ends(span: Span, side: Side) -> tuple[float, float]:
    one, two = side.local(span.start)[0], side.local(span.end)[0]
    return (min(one, two), max(one, two))


def _settled(
    span: Span,
    ends: tuple[float, float],
    posts: Sequence[Sequence[float]],
    tiers: Sequence[Sequence[tuple[float, float]]],
) -> _Standing:
    """The nearest tier with a place that no extension line strikes, else the one least struck.

    `posts` are the extension lines that pass each tier, and the empty one beyond them.
    """
    found: list[tuple[int, int, int, _Standing]] = []
    for tier in range(len(tiers) + 1):
        for order, (text, heads_inside, strikes) in enumerate(_places(span, *ends, posts[tier])):
            one = _Standing(span, tier, *ends, text, heads_inside)
            if tier == len(tiers) or _fits(_room(one), tiers[tier]):
                found.append((strikes, tier, order, one))
                if not strikes:
                    return one
    return min(found, key=lambda one: one[:3])[3]


def _fits(room: tuple[float, float], taken: Sequence[tuple[float, float]]) -> bool:
    return all(room[1] <= low or high <= room[0] for low, high in taken)


def _room(one: _Standing) -> tuple[float, float]:
    """What a span takes up of its tier: lines may touch end to end, words and tails keep clear."""
    low, high = one.low, one.high
    if not one.heads_inside:
        low, high = low - _TAIL, high + _TAIL
    end = one.text + one.span.words.width
    low = min(low, one.text - _CLEAR if one.text < low else low)
    high = max(high, end + _CLEAR if end > high else high)
    return (low, high)


def _places(
    span: Span, low: float, high: float, posts: Sequence[float]
) -> Iterator[tuple[float, bool, int]]:
    """Where the words may begin and whether the heads are inside, with the lines struck."""
    width = span.words.width
    heads_inside = high - low >= _ROOM_FOR_HEADS
    starts: list[float] = []
    if high - low >= width + 2 * _GAP:
        starts.append((low + high - width) / 2)
        inner = [low, *(post for post in posts if low < post < high), high]
        starts += [
            (one + two - width) / 2 for one, two in pairwise(inner) if two - one >= width + 2 * _GAP
        ]
    past = _GAP if heads_inside else _TAIL - 1.0
    starts += [high + past, low - past - width]
    starts += [post + _GAP for post in posts if high + past - _GAP < post < high + _FARTHEST_TEXT]
    before = (post for post in reversed(posts) if low - _FARTHEST_TEXT < post < low - past + _GAP)
    starts += [post - _GAP - width for post in before]
    for text in starts:
        strikes = sum(text - _GAP / 2 < post < text + width + _GAP / 2 for post in posts)
        yield (text, heads_inside, strikes)


def _aways(standing: Sequence[_Standing]) -> list[float]:
    """How far each tier's line lies from the outline: far enough for the words that it carries."""
    count = 1 + max((one.tier for one in standing), default=-1)
    tall = [
        max(one.span.words.height for one in standing if one.tier == tier) for tier in range(count)
    ]
    found: list[float] = []
    for tier in range(count):
        before = found[-1] if found else 0.0
        step = max(tall[max(tier - 1, 0)], tall[tier]) + _ABOVE_LINE + _BETWEEN
        found.append(max(before + max(step, 7.0), FIRST if tier == 0 else 0.0))
    return found


def _draw_extensions(
    standing: Sequence[_Standing], aways: Sequence[float], side: Side, paper: Paper
) -> None:
    """One extension line for all sizes that share it, to the farthest of their tiers."""
    reach: dict[float, tuple[float, float]] = {}
    for one in standing:
        for point in (one.span.start, one.span.end):
            along, away = side.local(point)
            key = round(along, 3)
            near, far = reach.get(key, (away, aways[one.tier]))
            reach[key] = (max(near, away), max(far, aways[one.tier]))
    for along, (near, far) in sorted(reach.items()):
        paper.line(side.paper(along, near + _GAP), side.paper(along, far + _OVERSHOOT))


def _draw_span(one: _Standing, away: float, side: Side, paper: Paper) -> None:
    low, high = one.low, one.high
    text_end = one.text + one.span.words.width
    if one.heads_inside:
        middle = side.paper((low + high) / 2, away)
        paper.arrow(middle, side.paper(low, away))
        paper.arrow(middle, side.paper(high, away))
        if one.text > high or text_end < low:
            nearest, farthest = (high, text_end) if one.text > high else (low, one.text)
            paper.line(side.paper(nearest, away), side.paper(farthest, away))
    else:
        paper.arrow(side.paper(min(low - _TAIL, one.text), away), side.paper(low, away))
        paper.arrow(side.paper(max(high + _TAIL, text_end), away), side.paper(high, away))
        paper.line(side.paper(low, away), side.paper(high, away))
    base = _base(one, away, side)
    paper.write(one.span.words, base, one.span.id, is_upright=side.is_upright)
