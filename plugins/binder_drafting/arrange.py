"""Blocks to their places on the sheet: each view where the method of projection puts it.

First angle: the view from above lies under the front view, that from the left to its right; third
angle the other way round (ISO 5456-2). Views without a side go where there is room.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from binder_drafting.block import Block
from binder_drafting.plane import Point, Rectangle, union
from binder_drafting.views import View

_APART = 7.0
_THIRD = {
    "front": (0, 0),
    "top": (0, -1),
    "underside": (0, 1),
    "left": (-1, 0),
    "right": (1, 0),
    "back": (2, 0),
}


@dataclass(frozen=True, slots=True)
class Arranged:
    """Blocks with the place of each one's origin, and the rectangle of all."""

    blocks: tuple[tuple[Block, Point], ...]
    extent: Rectangle


def arranged(blocks: Sequence[Block], *, first_angle: bool, room: Point) -> Arranged:
    """Places all blocks; the room only decides where free ones go, it is not kept by force."""
    placed: list[tuple[Block, Point]] = []
    cells: dict[tuple[int, int], list[Block]] = {}
    free: list[Block] = []
    for block in blocks:
        cell = _cell(block.view.side, first_angle=first_angle)
        if cell is None or cell in cells:
            free.append(block)
        else:
            cells[cell] = [block]
    columns = _offsets({cell: members[0] for cell, members in cells.items()}, 0)
    rows = _offsets({cell: members[0] for cell, members in cells.items()}, 1)
    for cell, members in cells.items():
        placed.append((members[0], (columns[cell[0]], rows[cell[1]])))
    for block in free:
        placed.append((block, _free_place(block, placed, room)))
    everything = [block.extent.moved(*at) for block, at in placed]
    return Arranged(tuple(placed), union(everything) if everything else Rectangle(0, 0, 0, 0))


def least_size(views: Sequence[View], outlines: Sequence[Rectangle], *, first_angle: bool) -> Point:
    """The width and height below which the bare outlines cannot be put side by side."""
    wide: dict[int, float] = {}
    tall: dict[int, float] = {}
    for view, outline in zip(views, outlines, strict=True):
        cell = _cell(view.side, first_angle=first_angle) or (0, 0)
        wide[cell[0]] = max(wide.get(cell[0], 0.0), outline.width)
        tall[cell[1]] = max(tall.get(cell[1], 0.0), outline.height)
    return (sum(wide.values()), sum(tall.values()))


def _cell(side: str, *, first_angle: bool) -> tuple[int, int] | None:
    cell = _THIRD.get(side)
    if cell is None or not first_angle or side == "back":
        return cell
    return (-cell[0], -cell[1])


def _offsets(cells: dict[tuple[int, int], Block], axis: int) -> dict[int, float]:
    """Where the origins of each column (axis 0) or row (axis 1) lie, side by side."""
    found: dict[int, float] = {}
    edge = 0.0
    for line in sorted({cell[axis] for cell in cells}):
        members = [block.extent for cell, block in cells.items() if cell[axis] == line]
        before = min(box[axis] for box in members)
        after = max(box[axis + 2] for box in members)
        found[line] = edge - before
        edge += after - before + _APART
    return found


def _free_place(block: Block, placed: Sequence[tuple[Block, Point]], room: Point) -> Point:
    """The free corner beside what is there that makes the sheet grow least."""
    boxes = [other.extent.moved(*at).grown(_APART - 0.01) for other, at in placed]
    here = block.extent
    if not boxes:
        return (-here.left, -here.top)
    whole = union(other.extent.moved(*at) for other, at in placed)
    lefts = sorted({whole.left, *(box.right for box in boxes)})
    tops = sorted({whole.top, *(box.bottom for box in boxes)})
    best: tuple[tuple[float, float, float], Point] | None = None
    for top in tops:
        for left in lefts:
            at = (left - here.left, top - here.top)
            box = here.moved(*at)
            if any(box.meets(other) for other in boxes):
                continue
            cost = _waste(union((whole, box)), room)
            if best is None or (*cost, top) < best[0]:
                best = ((*cost, top), at)
    return best[1] if best else (-here.left, whole.bottom + _APART - here.top)


def _waste(extent: Rectangle, room: Point) -> tuple[float, float]:
    """How far a sheet goes over its room, then how tall it is, for its width is given."""
    over = max(0.0, extent.width - room[0]) + max(0.0, extent.height - room[1])
    return (round(over, 3), round(extent.height, 3))
