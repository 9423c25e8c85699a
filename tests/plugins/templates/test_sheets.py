"""Sheets at true size: nothing leaves the paper, parts join, and the PDF measures up."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest
from PIL import Image

from binder.api import Design, Drawing, DrawnLabel, Line, Paragraph, Picture, Polyline, text_width
from binder.compiler import Outcome, Phase
from binder.pages import Binder, Section, text_of
from binder.render.html import render_html
from binder.render.pdf import write_pdf
from binder_drafting import Chain
from binder_plugins.templates.checking import INCH_LINE, MM_LINE
from binder_plugins.templates.folding import OVERLAP, Tile, tiles_of
from binder_plugins.templates.lettering import wrapped
from binder_plugins.templates.marking import OUTLINE
from binder_plugins.templates.piece import piece_of
from binder_plugins.templates.pieces_drawn import drawn_piece
from binder_plugins.templates.plain_ends import WORDS, worked_end
from binder_plugins.templates.sheets import HEIGHT, ROOM, WIDTH, sheets_of, slips_of
from binder_plugins.templates.wanted import Template, templates_of
from tests.plugins.templates.models import BED, BRACKET, COVER, FRAME, HEAD, LEVER

LONG_STRIP = """  strip:
    material: brass
    stock: 3 mm plate
    plate: {length: 180 mm, width: 6 mm, thickness: 3 mm}
    features:
      ends: {drilled: 1.6 mm, depth: through, at: 20 mm from left}
      rest: {drilled: 1.5 mm, depth: through, at: 160 mm from left}
      middle: {drilled: 1.4 mm, depth: through, at: 90 mm from left}
      more: {drilled: 1.3 mm, depth: through, at: 100 mm from left}
"""
ALL = BED + BRACKET + COVER + FRAME + LEVER
Designed = Callable[[str], Design]
Laid = Callable[[str], list[Template]]


def points(drawing: Drawing) -> list[tuple[float, float]]:
    found: list[tuple[float, float]] = []
    for shape in drawing.shapes:
        if isinstance(shape, Line):
            found += [(shape.x1, shape.y1), (shape.x2, shape.y2)]
        elif isinstance(shape, Polyline):
            found += shape.points
        elif isinstance(shape, DrawnLabel) and not shape.turn:
            right = shape.x + text_width(shape.text, shape.height)
            found += [(shape.x, shape.y - shape.height), (right, shape.y)]
    return found


def test_nothing_leaves_a_sheet(designed: Designed) -> None:
    design = designed(ALL)
    sheets = sheets_of(list(templates_of(design)), design)
    assert len(sheets) > 1
    for sheet in sheets:
        assert (sheet.width, sheet.height <= HEIGHT) == (WIDTH, True)
        assert all(-0.5 <= x <= WIDTH and 0 <= y <= sheet.height for x, y in points(sheet))


def test_every_sheet_has_its_lines(designed: Designed) -> None:
    design = designed(ALL)
    for sheet in sheets_of(list(templates_of(design)), design):
        across = {s.x2 - s.x1 for s in sheet.shapes if isinstance(s, Line) and s.y1 == s.y2}
        upright = {s.y2 - s.y1 for s in sheet.shapes if isinstance(s, Line) and s.x1 == s.x2}
        assert {MM_LINE, INCH_LINE} <= {round(long, 9) for long in across}
        assert MM_LINE in {round(long, 9) for long in upright}


BOTH_ENDS = '{drilled: 4 mm, depth: through, off: 2, pattern: "180 mm apart"}'
STRIP = (
    "  strip:\n    material: mild steel\n    stock: 3 mm plate\n"
    "    plate: {length: 220 mm, width: 30 mm, thickness: 3 mm}\n"
    "    features: {hole: %s}\n"
)


@pytest.mark.parametrize("size", [(431.0, 271.0), (169.0, 30.0), (20.0, 800.0), (1000.0, 1000.0)])
def test_tiles_cover_a_piece_and_overlap(size: tuple[float, float]) -> None:
    tiles = list(tiles_of(size, ROOM))
    assert all(t.window.width <= ROOM[0] and t.window.height <= ROOM[1] for t in tiles)
    first, last = tiles[0].window, tiles[-1].window
    assert (first.left, first.bottom) == pytest.approx((0.0, size[1]))
    assert (last.right, last.top) == pytest.approx((size[0], 0.0), abs=1e-9)
    for one, other in pairwise(tiles):
        if one.row == other.row:
            assert one.window.right - other.window.left == pytest.approx(OVERLAP)
    for one in tiles:
        below = next((t for t in tiles if (t.row, t.column) == (one.row + 1, one.column)), None)
        if below is not None:
            assert below.window.bottom - one.window.top == pytest.approx(OVERLAP)


def test_a_large_part_comes_in_the_order_of_its_parts(designed: Designed) -> None:
    design = designed(FRAME)
    (one,) = templates_of(design)
    slips = slips_of(one, design)
    assert len(slips) == 6
    words = [
        shape.text.split(":")[0]
        for sheet in sheets_of([one], design)
        for shape in sheet.shapes
        if isinstance(shape, DrawnLabel) and shape.text.startswith("part ")
    ]
    assert words == [f"part {n} of 6" for n in range(1, 7)]


@pytest.mark.parametrize(
    ("at", "count"), [("20 mm from left", 1), ("20 mm from right", 1), ("", 2)]
)
def test_a_plain_end_takes_no_paper(at: str, count: int, designed: Designed) -> None:
    """A strip longer than a sheet is one template if it is worked at one end alone."""
    hole = f"{{drilled: 4 mm, depth: through, at: {at}}}" if at else BOTH_ENDS
    design = designed(STRIP % hole)
    (one,) = templates_of(design)
    slips = slips_of(one, design)
    assert len(slips) == count
    assert (slips[0].lines[-1] == WORDS) == (count == 1)
    piece = slips[0].piece
    cut_off = Chain(((5.5, 10.0), (10.0, 5.5)), OUTLINE)
    assert worked_end(replace(piece, edges=(*piece.edges, cut_off)), ROOM) is None


def test_the_parts_hold_the_whole_length_of_the_lines(laid: Laid) -> None:
    """What is on two sheets is there twice, in the overlap: the rest once."""
    (one,) = laid(FRAME)
    piece = piece_of(one.flat, one.edges)
    tiles = list(tiles_of(piece.size, ROOM))
    long = sum(
        abs(b[0] - a[0])
        for tile in tiles
        if tile.row == tile.rows - 1
        for shape in drawn_piece(piece, (0.0, 0.0), tile.window)
        if isinstance(shape, Polyline) and len(shape.points) == 2
        for a, b in [shape.points]
        if abs(a[1] - b[1]) < 1e-9 and abs(b[0] - a[0]) > 60
    )
    # The lower edge of 420 mm, and each overlap once more.
    assert long == pytest.approx(420 + OVERLAP * (tiles[0].columns - 1))


def test_turned_on_its_side_a_piece_keeps_its_lengths(laid: Laid) -> None:
    (one,) = laid(LEVER)
    plain, turned = (piece_of(one.flat, one.edges, is_turned=way) for way in (False, True))
    assert plain.size == tuple(reversed(turned.size))
    assert len(plain.edges) == len(turned.edges)
    assert {letters.text for letters in plain.letters} == {
        letters.text for letters in turned.letters
    }


def test_words_are_wrapped_to_the_room() -> None:
    lines = list(wrapped("as drawn, and opposite hand: turn the paper over", 2.5, 40.0))
    assert len(lines) > 1
    assert all(text_width(line, 2.5) <= 40.0 for line in lines)
    assert " ".join(" ".join(lines).split()) == "as drawn, and opposite hand: turn the paper over"


def test_numbers_do_not_stand_on_one_another(laid: Laid) -> None:
    for one in laid(ALL):
        piece = piece_of(one.flat, one.edges)
        boxes = [
            (x, y, x + text_width(text, 2.5), y + 2.5)
            for (x, y), text in ((s.at, s.text) for s in piece.letters if s.text.isdigit())
        ]
        assert len(boxes) == len(one.flat.holes)
        for n, a in enumerate(boxes):
            for b in boxes[n + 1 :]:
                assert a[2] <= b[0] or b[2] <= a[0] or a[3] <= b[1] or b[3] <= a[1], one.part.name


@pytest.fixture
def built(compile_text: Callable[..., Outcome]) -> Binder:
    outcome = compile_text(HEAD + LEVER + BRACKET, Phase.COMPOSE)
    assert outcome.binder is not None, outcome.findings
    return outcome.binder


def test_the_html_keeps_a_template_at_its_size(built: Binder) -> None:
    html = render_html(built)
    assert 'class="true-size"' in html
    assert f'width="{WIDTH:g}mm"' in html
    assert "figure.true-size svg { max-width: none; }" in html
    assert "Print at 100 %" in html


def sheets_in(binder: Binder) -> list[Picture]:
    (section,) = (one for one in binder.sections if one.id == "templates")
    return [block for block in section.blocks if isinstance(block, Picture)]


@pytest.mark.skipif(shutil.which("pdftoppm") is None, reason="no pdftoppm")
def test_the_pdf_is_at_full_size(built: Binder, tmp_path: Path) -> None:
    """Rasterised at 254 dpi, 10 pixels are 1 mm: the ticks stand 1000 and 1016 pixels apart."""
    assert len(sheets_in(built)) == 1
    only = Binder(
        built.title, built.issue, built.date, built.digest, built.about, (),
        tuple(one for one in built.sections if one.id == "templates"),
    )  # fmt: skip
    paper = tmp_path / "trial.pdf"
    assert write_pdf(only, paper).ok
    command = ["pdftoppm", "-r", "254", "-gray", str(paper), str(tmp_path / "page")]
    subprocess.run(command, check=True)
    found: set[int] = set()
    for page in sorted(tmp_path.glob("page*.pgm")):
        with Image.open(page) as image:
            found |= spans_of_ticks(image.convert("L"))
            found |= {-span for span in spans_of_ticks(image.convert("L").transpose(_TURNED))}
    assert any(abs(span - 1000) <= 2 for span in found), found
    assert any(abs(span - 1016) <= 2 for span in found), found
    assert any(abs(-span - 1000) <= 2 for span in found), found


_TURNED = Image.Transpose.ROTATE_90


def spans_of_ticks(image: Image.Image) -> set[int]:
    """From tick to tick of each long line with nothing but a tick at either end, in pixels."""
    wide, high = image.size
    pixels = image.tobytes()
    spans: set[int] = set()
    for y in range(20, high - 20):
        row = pixels[y * wide : (y + 1) * wide]
        if longest(row) < 980:
            continue
        beside = pixels[(y - 10) * wide : (y - 9) * wide]
        middles = dark_middles(beside)
        spans |= {round(b - a) for a, b in pairwise(middles)}
    return spans


def longest(row: bytes) -> int:
    return max(
        (len(run) for run in bytes(255 if p < 128 else 0 for p in row).split(b"\0")), default=0
    )


def dark_middles(row: bytes) -> list[float]:
    """The middle of each run of dark pixels."""
    middles, start = [], -1
    for n, pixel in enumerate((*row, 255)):
        if pixel < 128 and start < 0:
            start = n
        elif pixel >= 128 and start >= 0:
            middles.append((start + n - 1) / 2)
            start = -1
    return middles


def test_what_takes_too_many_sheets_is_said_and_left_out(
    compile_text: Callable[..., Outcome],
) -> None:
    text = HEAD + FRAME.replace("420 mm", "2100 mm").replace("260 mm", "1300 mm")
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.binder is not None
    assert sheets_in(outcome.binder) == []
    (section,) = (one for one in outcome.binder.sections if one.id == "templates")
    said = [text_of(block.text) for block in section.blocks if isinstance(block, Paragraph)]
    assert said[-1].startswith("Too large for paper")
    assert "side frame" in said[-1]


def test_a_tile_knows_its_place() -> None:
    tiles: list[Tile] = list(tiles_of((300.0, 100.0), ROOM))
    assert [tile.words.split(":")[0] for tile in tiles] == ["part 1 of 2", "part 2 of 2"]


def test_there_is_no_section_without_flat_parts(compile_text: Callable[..., Outcome]) -> None:
    text = HEAD + (
        "  pin:\n    material: mild steel\n    stock: round bar\n"
        "    turned: [{name: shank, diameter: 8 mm, length: 30 mm}]\n"
    )
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.binder is not None
    sections: tuple[Section, ...] = outcome.binder.sections
    assert "templates" not in [one.id for one in sections]


def test_a_face_goes_on_one_sheet_before_it_is_cut(designed: Designed) -> None:
    """One as long as the sheet is turned, and its words are made to leave it room."""
    design = designed(LONG_STRIP)
    (one,) = templates_of(design)
    (slip,) = slips_of(one, design)
    assert slip.tile is None
    assert slip.size[0] <= ROOM[0]
    assert slip.size[1] <= ROOM[1]
    (sheet,) = sheets_of([one], design)
    left = max(
        x
        for shape in slip.drawn((0.0, 0.0))
        if isinstance(shape, Polyline)
        for x, _ in shape.points
    )
    words = [
        shape
        for shape in sheet.shapes
        if isinstance(shape, DrawnLabel) and "over all" in shape.text
    ]
    assert all(shape.x > left for shape in words)


@pytest.mark.parametrize("wide", [4, 6, 9, 30])
def test_the_ways_of_the_datum_keep_within_a_strip(wide: int, designed: Designed) -> None:
    (one,) = templates_of(designed(LONG_STRIP.replace("width: 6 mm", f"width: {wide} mm")))
    piece = piece_of(one.flat, one.edges)
    ways = [letters for letters in piece.letters if letters.text in ("X", "Y")]
    assert len(ways) == 2
    for letters in ways:
        x, y = letters.at
        assert x >= 0
        assert y >= 0
        assert x + text_width(letters.text, 2.5) <= piece.size[0]
        assert y + 2.5 <= piece.size[1]
