"""Sizes of a view to the ways of showing them: beside it, across it, at an angle or on a leader."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field

from binder_drafting.angles import Opening
from binder_drafting.callouts import Callout, leans_within
from binder_drafting.crossings import Flanks, off_edge
from binder_drafting.flank import slid_to_face
from binder_drafting.lines import on_paper, outline_of
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.sides import ABOVE, BELOW, LEFT, RIGHT, Side
from binder_drafting.sizes import Across, Along, AngleOf, Around, Note, Radius, Size
from binder_drafting.tiers import Span
from binder_drafting.views import View
from binder_drafting.words import folded, lines_of_words, size_words

_WIDEST_NOTE = 62.0
# Extension lines get no longer than this.
_LONGEST_EXTENSION = 45.0


@dataclass
class Ways:
    """The sizes of one view, sorted by the way in which each is shown."""

    spans: defaultdict[str, list[Span]] = field(default_factory=lambda: defaultdict(list))
    running: defaultdict[str, list[list[Span]]] = field(default_factory=lambda: defaultdict(list))
    flanks: list[Flanks] = field(default_factory=list)
    openings: list[Opening] = field(default_factory=list)
    callouts: list[Callout] = field(default_factory=list)


@dataclass(frozen=True)
class _Desk:
    """What a size is laid against."""

    view: View
    scale: float
    outline: Rectangle
    paper: Paper


def ways_of(sizes: Sequence[Size], view: View, scale: float, paper: Paper) -> Ways:
    """Sorts the sizes of one view; `paper` has its lines already."""
    ways = Ways()
    outline = outline_of(view, scale)
    desk = _Desk(view, scale, outline, paper)
    groups: defaultdict[tuple[str, str, str], list[Along]] = defaultdict(list)
    for size in sizes:
        if isinstance(size, Along):
            groups[size.direction, size.datum, size.side].append(size)
        elif isinstance(size, Across):
            _across(size, desk, ways)
        elif isinstance(size, AngleOf):
            ways.openings.append(_opening(size, scale))
        else:
            ways.callouts.append(_callout(size, scale))
    for (direction, _, side), members in groups.items():
        home = side or _side(direction, members, scale, outline)
        spans = [_span(one, scale) for one in members]
        if len(spans) > paper.style.stack and _is_from_one_line(members):
            ways.running[home].append(spans)
        else:
            ways.spans[home] += spans
    return ways


def _span(size: Along | Across, scale: float) -> Span:
    words = size_words(size.text, size.limits, size.tier)
    rank = size.rank if isinstance(size, Along) else 0
    return Span(size.id, on_paper(size.start, scale), on_paper(size.end, scale), words, rank)


def _is_from_one_line(members: Sequence[Along]) -> bool:
    axis = 0 if members[0].direction == "u" else 1
    return len({round(size.start[axis], 6) for size in members}) == 1


def _side(direction: str, members: Sequence[Along], scale: float, outline: Rectangle) -> str:
    """The side to which the points of a whole stack lie nearer; below and left when in doubt."""
    first, second = (BELOW, ABOVE) if direction == "u" else (LEFT, RIGHT)
    points = [on_paper(point, scale) for size in members for point in (size.start, size.end)]
    depths = [
        sum(-Side(name, outline).local(point)[1] for point in points) for name in (first, second)
    ]
    return first if depths[0] <= depths[1] + 1.0 * len(points) else second


def _across(size: Across, desk: _Desk, ways: Ways) -> None:
    """Beside the nearer end to which extension lines run clear, else across the step itself."""
    span = _span(size, desk.scale)
    is_upright = abs(span.start[0] - span.end[0]) <= abs(span.start[1] - span.end[1])
    names = [size.side] if size.side else [RIGHT, LEFT] if is_upright else [BELOW, ABOVE]
    choices: list[tuple[float, str, Span]] = []
    for name in names:
        side = Side(name, desk.outline)
        near = _span(slid_to_face(size, desk.view, name), desk.scale)
        if size.side or _runs_clear(near, side, desk.paper):
            choices.append((_farthest(near, side), name, near))
    for far, name, near in sorted(choices, key=lambda one: one[0]):
        if size.side or (
            far <= _LONGEST_EXTENSION and len(ways.spans[name]) < desk.paper.style.at_ends
        ):
            ways.spans[name].append(near)
            return
    flanks = Flanks(span.id, span.start, span.end, span.words)
    ways.flanks.append(off_edge(flanks, on_paper(size.into, desk.scale)))


def _farthest(span: Span, side: Side) -> float:
    return max(-side.local(span.start)[1], -side.local(span.end)[1])


def _runs_clear(span: Span, side: Side, paper: Paper) -> bool:
    """Whether extension lines from both flanks cross no edge on their way out."""
    for point in (span.start, span.end):
        along, away = side.local(point)
        if paper.taken.lines_across(side.paper(along, away + 0.1), side.paper(along, 1.0)):
            return False
    return True


def _opening(size: AngleOf, scale: float) -> Opening:
    words = size_words(size.text, (), size.tier)
    apex = on_paper(size.apex, scale)
    return Opening(size.id, apex, size.first, size.last, size.reach * scale, words)


def _callout(size: Around | Radius | Note, scale: float) -> Callout:
    if isinstance(size, Around):
        words = size_words(size.text, size.limits, size.tier)
        radius = size.diameter / 2 * scale
        return Callout(size.id, words, on_paper(size.centre, scale), radius)
    if isinstance(size, Radius):
        words = size_words(size.text, (), size.tier)
        leans = leans_within(size.first, size.last)
        return Callout(size.id, words, _centre(size, scale), size.radius * scale, leans)
    words = lines_of_words(folded(size.lines, _WIDEST_NOTE), size.tier)
    at = on_paper(size.at, scale)
    others = tuple(on_paper(one, scale) for one in size.others)
    radius = size.radius * scale
    return Callout(size.id, words, at, radius, is_on_face=size.is_on_face, others=others)


def _centre(size: Radius, scale: float) -> Point:
    return on_paper(size.centre, scale)
