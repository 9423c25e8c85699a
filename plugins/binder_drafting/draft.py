"""A request to a sheet: the largest preferred scale at which every size is easily read."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import islice
from math import log2

from binder.api import Drawing
from binder_drafting.attempts import attempts
from binder_drafting.layout import Drawn, Layout, drawn, laid_out
from binder_drafting.paper import Paper
from binder_drafting.request import Request, Room
from binder_drafting.scales import PREFERRED, written
from binder_drafting.sheet import Sheet
from binder_drafting.sizes import Size
from binder_drafting.style import STYLES, TIGHT, Style
from binder_drafting.title_block import title_block

_MARGIN = 1.0
_APART = 4.5
# So many layouts that fit are looked at for one without a flaw; then the best of them is taken.
_TRIED = 8
# Half a wide line: the frame of the title block is not cut off at the edge.
_EDGE = 0.25
# Which sizes go into the table first when the views cannot hold all: those that matter least.
_TABLE_ORDER = {"free": 0, "tool": 1, "fit": 2}


def draft(request: Request) -> Sheet:
    """Draws a sheet; every size is on it once, on a view or in a table; ids are unique.

    Raises ValueError if two sizes have one id, or a detail has no view.
    """
    _refuse_nonsense(request)
    if all(view.is_picture for view in request.views):
        views = tuple(replace(view, is_picture=False) for view in request.views)
        request = replace(request, views=views)
    lost = _homeless(request)
    found: list[tuple[float, int, Layout, Room]] = []
    for layout, room in islice(_fitting(request, lost), _TRIED):
        # Half the scale is as bad as one line through a word.
        smaller = log2(found[0][2].scale / layout.scale) if found else 0.0
        found.append((layout.flaws + max(0.0, smaller), len(found), layout, room))
        if not layout.flaws:
            break
    if not found:
        return _crowded(request, lost)
    # Of two that are as good, the one through whose words no line runs.
    _, _, layout, room = min(found, key=lambda one: (one[0], one[2].flaws, one[1]))
    return _finished(request, layout, room, _of_lost(lost))


def _fitting(request: Request, lost: Sequence[Size]) -> Iterator[tuple[Layout, Room]]:
    """Every layout that keeps within its room, the one to be wished for first."""
    at_scale: dict[tuple[float, Style], Drawn] = {}
    for room, scale in attempts(request):
        free = _free(request, room, scale)
        for style in STYLES:
            if (scale, style) not in at_scale:
                at_scale[scale, style] = drawn(request, lost, scale, style)
            layout = laid_out(request, at_scale[scale, style], free)
            if _fits(layout, free):
                yield (layout, room)


def _refuse_nonsense(request: Request) -> None:
    ids = [size.id for size in request.sizes]
    doubles = sorted({one for one in ids if ids.count(one) > 1})
    if doubles:
        raise ValueError(f"sizes are asked for twice: {', '.join(doubles)}")
    names = {view.name for view in request.views}
    for detail in request.details:
        if detail.view not in names:
            raise ValueError(f"the detail {detail.name} is of no view")


def _homeless(request: Request) -> list[Size]:
    """Sizes of views that are not there, or that show no sizes: they go into the table."""
    homes = {view.name for view in request.views if not view.is_picture}
    homes |= {detail.name for detail in request.details}
    return [size for size in request.sizes if size.view not in homes]


def _of_lost(lost: Sequence[Size]) -> tuple[str, ...]:
    return tuple(f"there is no view {size.view} for the size {size.id}" for size in lost)


def _free(request: Request, room: Room, scale: float) -> Room:
    """What the title block leaves of a room."""
    if request.fields is None:
        return (room[0] - 2 * _MARGIN, room[1] - 2 * _MARGIN)
    block = _title(request, scale, room[0] - 2 * _EDGE)
    tall = block.extent.height if block.extent else 0.0
    return (room[0] - 2 * _MARGIN, room[1] - tall - _APART - 2 * _MARGIN)


def _fits(layout: Layout, free: Room) -> bool:
    here = layout.extent
    return here.width <= free[0] and here.height <= free[1]


def _crowded(request: Request, lost: list[Size]) -> Sheet:
    """More and more sizes in a table, at last on a sheet as large as it needs."""
    room = request.rooms[-1]
    others = sorted(
        (size for size in request.sizes if size not in lost),
        key=lambda size: (_TABLE_ORDER.get(size.tier, 1), size.id),
    )
    scales = [scale for at, scale in attempts(request) if at == room]
    if not scales:
        scales = [min(request.scales or PREFERRED)]
    best: tuple[float, Layout] | None = None
    for part in (0.35, 0.7, 1.0):
        tabled = [*lost, *others[: round(part * len(others))]]
        for scale in scales[:4]:
            free = _free(request, room, scale)
            layout = laid_out(request, drawn(request, tabled, scale, TIGHT), free)
            if _fits(layout, free):
                return _finished(request, layout, room, _of_lost(lost))
            over = _over(layout, free)
            if best is None or over < best[0]:
                best = (over, layout)
    if best is None:
        raise ValueError("a request without a scale cannot be drawn")
    return _finished(request, best[1], room, (*_of_lost(lost), "the sheet is larger than its room"))


def _over(layout: Layout, free: Room) -> float:
    here = layout.extent
    return max(0.0, here.width - free[0]) + max(0.0, here.height - free[1])


def _finished(request: Request, layout: Layout, room: Room, problems: tuple[str, ...]) -> Sheet:
    here = layout.extent
    width = max(room[0], here.width + 2 * _MARGIN)
    across, down = (width - here.width) / 2 - here.left, _MARGIN - here.top
    paper = Paper()
    paper.lay(layout.paper, across, down)
    height = here.height + 2 * _MARGIN
    if request.fields is not None:
        block = _title(request, layout.scale, width - 2 * _EDGE)
        top = here.height + _MARGIN + _APART
        paper.lay(block, _EDGE, top)
        height = top + (block.extent.height if block.extent else 0.0) + _MARGIN
    views = tuple(replace(view, box=view.box.moved(across, down)) for view in layout.views)
    drawing = Drawing(round(width, 3), round(height, 3), tuple(paper.shapes))
    return Sheet(drawing, tuple(paper.words), written(layout.scale), views, problems)


def _title(request: Request, scale: float, width: float) -> Paper:
    if request.fields is None:
        raise ValueError("a title block needs its fields")
    return title_block(request.fields, written(scale), width, first_angle=request.first_angle)
