"""One attempt: a request at one scale in one room, with some of its sizes in a table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from binder_drafting.arrange import Arranged, arranged
from binder_drafting.attempts import outlines_at
from binder_drafting.block import Block, Content, draw_block
from binder_drafting.data_table import data_block
from binder_drafting.details import detail_view, enlarged, smallest, with_details
from binder_drafting.paper import Paper
from binder_drafting.plane import Rectangle
from binder_drafting.request import Request, Room
from binder_drafting.scales import PREFERRED, written
from binder_drafting.sheet import PlacedView
from binder_drafting.sizes import Size
from binder_drafting.style import Style
from binder_drafting.table import draw_table, index_letter, sign_of
from binder_drafting.views import Detail, View

_APART = 6.0
_WIDEST_PICTURE = 75.0
_LEAST_PICTURE = 22.0


@dataclass(frozen=True)
class Layout:
    """Views, sizes and table together on one paper, and where the views lie on it."""

    paper: Paper
    views: tuple[PlacedView, ...]
    scale: float
    flaws: int = 0

    @property
    def extent(self) -> Rectangle:
        """All that is drawn."""
        return self.paper.extent or Rectangle(0, 0, 0, 0)


@dataclass(frozen=True)
class Drawn:
    """The views of a request with their sizes, each by itself; they fit no room yet."""

    blocks: tuple[Block, ...]
    tabled: tuple[Size, ...]
    scale: float


def drawn(request: Request, tabled: Sequence[Size], scale: float, style: Style) -> Drawn:
    """Draws all views but the pictures; what is `tabled` stands on them as a letter."""
    homes = {view.name for view in request.views} | {one.name for one in request.details}
    signs = [sign_of(size, index_letter(n)) for n, size in enumerate(tabled) if size.view in homes]
    out = {size.id for size in tabled}
    kept = [size for size in request.sizes if size.id not in out]
    details, sizes = with_details(request.views, [*kept, *signs], request.details, scale)
    return Drawn(tuple(_blocks(request, details, sizes, scale, style)), tuple(tabled), scale)


def laid_out(request: Request, views: Drawn, room: Room) -> Layout:
    """Places views, pictures and table; the title block is not among them."""
    blocks = [*views.blocks, *([data_block(request.data)] if request.data else ())]
    found = arranged(blocks, first_angle=request.first_angle, room=room)
    for view in request.views:
        if view.is_picture:
            found, block = _with_picture(request, view, blocks, views.scale, room)
            blocks.append(block)
    return _gathered(found, draw_table(views.tabled, room[0]), views.scale)


def _blocks(
    request: Request,
    details: Sequence[Detail],
    sizes: Sequence[Size],
    scale: float,
    style: Style,
) -> Iterator[Block]:
    for view in request.views:
        if not view.is_picture:
            content = _content(request, view, details, sizes)
            yield draw_block(view, content, scale, view.title, style)
    by_name = {view.name: view for view in request.views}
    for detail in details:
        source = by_name[detail.view]
        own = tuple(size for size in sizes if size.view == detail.name)
        large = enlarged(detail, scale, smallest(own, detail.radius))
        title = f"{detail.name} ({written(large)})"
        yield draw_block(detail_view(detail, source), Content(own), large, title)


def _content(
    request: Request, view: View, details: Sequence[Detail], sizes: Sequence[Size]
) -> Content:
    return Content(
        tuple(size for size in sizes if size.view == view.name),
        tuple(detail for detail in details if detail.view == view.name),
        tuple(one for one in request.balloons if one.view == view.name),
    )


def _with_picture(
    request: Request, view: View, blocks: Sequence[Block], scale: float, room: Room
) -> tuple[Arranged, Block]:
    """The largest picture, no larger than the views, that keeps within the room."""
    scales = [one for one in PREFERRED if one <= scale]
    wide = outlines_at([view], 1.0)[0].width
    fits = [one for one in scales if _LEAST_PICTURE <= wide * one <= _WIDEST_PICTURE]
    here = arranged(blocks, first_angle=request.first_angle, room=room).extent
    if here.width > room[0] or here.height > room[1]:
        # Nothing will fit: one picture is as good as another.
        fits = fits[-1:]
    choices = fits or [one for one in scales if wide * one <= _WIDEST_PICTURE][:1] or scales[-1:]
    for n, one in enumerate(choices):
        title = f"({written(one)})" if one != scale and blocks else ""
        block = draw_block(view, _content(request, view, (), ()), one, view.title or title)
        found = arranged([*blocks, block], first_angle=request.first_angle, room=room)
        if n == len(choices) - 1 or (
            found.extent.width <= room[0] and found.extent.height <= room[1]
        ):
            break
    return (found, block)


def _gathered(blocks_at: Arranged, table: Paper, scale: float) -> Layout:
    paper = Paper()
    views: list[PlacedView] = []
    for block, (across, down) in blocks_at.blocks:
        paper.lay(block.paper, across, down)
        box = block.outline.moved(across, down)
        if block.view.edges:
            views.append(PlacedView(block.view.name, box, block.scale))
    if table.extent is not None:
        here = paper.extent or Rectangle(0, 0, 0, 0)
        paper.lay(table, here.left - table.extent.left, here.bottom + _APART)
    flaws = sum(block.flaws for block, _ in blocks_at.blocks)
    return Layout(paper, tuple(views), scale, flaws)
