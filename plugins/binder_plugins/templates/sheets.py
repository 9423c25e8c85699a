"""Templates to sheets of paper at full size: several small ones together, large ones over several.

A sheet is as wide as the printed part of an A4 page, and fits a Letter page too. Each has a
line of 100 mm across and one upright, and one of 4 in, to be held against a rule.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from binder.api import Design, Drawing, DrawnLabel, DrawnShape, text_width
from binder_drafting import Rectangle
from binder_plugins.templates.checking import check_lines
from binder_plugins.templates.folding import Tile, join_marks, tiles_of
from binder_plugins.templates.lettering import LARGE, SMALL, title_of, words_of, wrapped
from binder_plugins.templates.piece import Piece, piece_of
from binder_plugins.templates.pieces_drawn import drawn_piece
from binder_plugins.templates.plain_ends import WORDS, worked_end
from binder_plugins.templates.wanted import Template
from binder_solid.forms import Point

WIDTH = 178.0
HEIGHT = 236.0
LEAST_HEIGHT = 126.0
MOST_PARTS = 12
ROOM = (168.0, 212.0)
LEAST_TILE = 60.0
_HEAD = 7.0
_FOOT = HEIGHT - _HEAD - ROOM[1]
_LINE = 4.2
_GAP = 5.0
_NARROWEST = 80.0


@dataclass(frozen=True, slots=True)
class Slip:
    """A piece with its words above or right of it, or the part of it that is on one sheet."""

    piece: Piece
    title: str
    lines: tuple[str, ...]
    tile: Tile | None = None
    is_beside: bool = False

    @property
    def head(self) -> float:
        """How high the words are."""
        return LARGE + 2.0 + len(self.lines) * _LINE

    @property
    def window(self) -> Rectangle | None:
        """What is seen of the piece."""
        return self.tile.window if self.tile else None

    @property
    def size(self) -> Point:
        """With its words."""
        wide, high = (self.window.width, self.window.height) if self.window else self.piece.size
        lines = [text_width(line, SMALL) for line in self.lines]
        words = max(text_width(self.title, LARGE), *lines, 0.0)
        if self.is_beside:
            return (wide + _GAP + words, max(high, self.head))
        return (max(wide, words), high + self.head)

    def drawn(self, at: Point) -> Iterator[DrawnShape]:
        """The shapes, the upper left corner at a point of the paper."""
        x, y = at
        left = x + self.piece.size[0] + _GAP if self.is_beside else x
        yield DrawnLabel(left, y + LARGE, self.title, LARGE)
        for n, line in enumerate(self.lines, 1):
            yield DrawnLabel(left, y + LARGE + n * _LINE, line, SMALL)
        corner = at if self.is_beside else (x, y + self.head)
        yield from drawn_piece(self.piece, corner, self.window)
        if self.tile:
            yield from join_marks(self.tile, corner)


def slips_of(one: Template, design: Design) -> tuple[Slip, ...]:
    """A template as one slip, or as several where it is larger than a sheet.

    None where it would take more sheets than anyone joins without losing the size.
    """
    ways = [tuple(_slips(one, design, is_turned=is_turned)) for is_turned in (False, True)]
    best = min(ways, key=len)
    return best if len(best) <= MOST_PARTS else ()


def _slips(one: Template, design: Design, *, is_turned: bool) -> Iterator[Slip]:
    title = title_of(one, design)
    piece = piece_of(one.flat, one.edges, is_turned=is_turned)
    narrow = min(max(_NARROWEST, piece.size[0]), ROOM[0])
    beside = ROOM[0] - piece.size[0] - _GAP
    # One sheet is truer than two that are joined: words give way before the face is cut.
    for room, is_beside in ((narrow, False), (ROOM[0], False), (beside, True)):
        if room < min(_NARROWEST, ROOM[0]):
            continue
        slip = Slip(piece, title, tuple(_lines(one, design, room)), is_beside=is_beside)
        if slip.size[0] <= ROOM[0] and slip.size[1] <= ROOM[1]:
            yield slip
            return
    lines = tuple(_lines(one, design, ROOM[0]))
    head = Slip(piece, title, (*lines, "")).head
    window = worked_end(piece, (ROOM[0], ROOM[1] - head))
    if window is not None:
        yield Slip(piece, title, (*lines, WORDS), Tile(window, 0, 0, 1, 1))
        return
    for tile in tiles_of(piece.size, (ROOM[0], max(ROOM[1] - head, LEAST_TILE))):
        yield Slip(piece, title, (*lines, tile.words), tile)


def _lines(one: Template, design: Design, room: float) -> Iterator[str]:
    for words in words_of(one, design):
        yield from wrapped(words, SMALL, room)


def sheets_of(templates: Sequence[Template], design: Design) -> tuple[Drawing, ...]:
    """All templates on as few sheets as they fall on when laid in rows."""
    slips = [slip for one in templates for slip in slips_of(one, design)]
    sheets = list(_laid(slips))
    return tuple(_sheet(laid, number, len(sheets)) for number, laid in enumerate(sheets, 1))


Laid = list[tuple[Slip, Point]]


def _laid(slips: Sequence[Slip]) -> Iterator[Laid]:
    """Rows of slips, tall ones first, so that those in a row are of like height.

    Parts of one face are of one height, and so stay in their order.
    """
    rows: list[list[Slip]] = []
    for slip in sorted(slips, key=lambda one: -round(one.size[1], 3)):
        row = next((row for row in rows if _width([*row, slip]) <= ROOM[0]), None)
        rows.append([slip]) if row is None or slip.tile else row.append(slip)
    sheet: Laid = []
    y = 0.0
    for row in rows:
        high = max(slip.size[1] for slip in row)
        if sheet and y + high > ROOM[1]:
            yield sheet
            sheet, y = [], 0.0
        x = 0.0
        for slip in row:
            sheet.append((slip, (x, y + _HEAD)))
            x += slip.size[0] + _GAP
        y += high + _GAP
    if sheet:
        yield sheet


def _width(row: Sequence[Slip]) -> float:
    return sum(slip.size[0] + _GAP for slip in row) - _GAP


def _sheet(laid: Laid, number: int, count: int) -> Drawing:
    low = max(at[1] + slip.size[1] for slip, at in laid)
    high = max(LEAST_HEIGHT, low + _FOOT)
    words = f"Sheet {number} of {count}. Print at 100 %: hold the lines below against a rule first."
    shapes: list[DrawnShape] = [DrawnLabel(0.0, SMALL + 0.8, words, SMALL)]
    for slip, at in laid:
        shapes += slip.drawn(at)
    shapes += check_lines(WIDTH, high)
    return Drawing(WIDTH, high, tuple(shapes))
