"""Which faces are laid flat, where their holes come to lie, and what they are told from."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder_solid.facts import FlatFact
from tests.plugins.templates.models import BED, BRACKET, COVER, FRAME

Designed = Callable[[str], Design]

BLOCK = """  block:
    material: mild steel
    block: {{length: 40 mm, width: 24 mm, height: 18 mm}}
    features:
      holes: {{drilled: 3 mm, on: {face}, depth: 8 mm, off: {off}, pattern: "{pattern}"}}
"""


def faces(design: Design, part: str) -> tuple[str, ...]:
    fact = design.facts.about(FlatFact, part)
    return tuple(flat.face for flat in fact.flats) if fact else ()


@pytest.mark.parametrize(
    ("face", "size"),
    [("front", (40.0, 18.0)), ("back", (40.0, 18.0)), ("left", (24.0, 18.0)),
     ("top", (40.0, 24.0)), ("underside", (40.0, 24.0))],
)  # fmt: skip
def test_a_face_with_a_pattern_is_laid_flat(
    designed: Designed, face: str, size: tuple[float, float]
) -> None:
    text = BLOCK.format(face=face, off=4, pattern="at the corners, 4 mm in")
    design = designed(text)
    assert faces(design, "block") == (face,)
    fact = design.facts.about(FlatFact, "block")
    assert fact is not None
    (flat,) = fact.flats
    assert flat.size == size
    corners = {(x, y) for x in (4.0, size[0] - 4.0) for y in (4.0, size[1] - 4.0)}
    assert {hole.at for hole in flat.holes} == corners
    assert not any(hole.is_through for hole in flat.holes)


def test_two_holes_in_a_block_are_marked_out_by_hand(designed: Designed) -> None:
    assert faces(designed(BLOCK.format(face="top", off=2, pattern="12 mm apart")), "block") == ()


def test_holes_of_a_bent_part_lie_where_its_legs_do(designed: Designed) -> None:
    fact = designed(BRACKET).facts.about(FlatFact, "bracket")
    assert fact is not None
    (flat,) = fact.flats
    holes = {hole.feature: hole.at for hole in flat.holes if hole.feature != "middle"}
    middle = [hole.at[0] for hole in flat.holes if hole.feature == "middle"]
    blank = flat.size[0]
    # 3 × 30 mm over the outsides, less 2 × (2 × (R + T) − allowance), where the allowance of a
    # right angle is 1.57 R + 0.64 T to three places (Machinery's Handbook, from memory).
    assert blank == pytest.approx(90 - 2 * (2 * 3.5 - (1.5708 * 2 + 0.64 * 1.5)), abs=1e-3)
    # What is told from the left end stays so far from it; a middle leg lies in the middle.
    assert holes["left"] == pytest.approx((10.0, 15.0))
    assert sum(middle) / 2 == pytest.approx(blank / 2)
    assert abs(middle[1] - middle[0]) == pytest.approx(15.0)
    # The last leg is straight from 3.5 mm behind its outer corner; its hole is in the middle.
    assert holes["foot"][0] == pytest.approx(blank - (30 - 3.5) / 2)


def test_bend_lines_stand_evenly_about_the_middle(designed: Designed) -> None:
    fact = designed(BRACKET).facts.about(FlatFact, "bracket")
    assert fact is not None
    (flat,) = fact.flats
    first, last = (bend.middle for bend in flat.bends)
    assert first == pytest.approx(flat.size[0] - last)
    # Straight to 30 − 3.5, and half of the allowance of 4.1016 mm further.
    assert first == pytest.approx(26.5 + (1.5708 * 2 + 0.64 * 1.5) / 2, abs=1e-3)


def test_the_bore_in_a_pitch_circle_is_the_datum(designed: Designed) -> None:
    for part, text in (("cover", COVER), ("frame", FRAME)):
        fact = designed(text).facts.about(FlatFact, part)
        assert fact is not None
        (flat,) = fact.flats
        assert flat.holes[0].at == flat.datum.at
        assert flat.datum.told(flat.holes[0].at) == (0.0, 0.0)


def test_a_thread_is_marked_by_its_drill(designed: Designed) -> None:
    fact = designed(COVER).facts.about(FlatFact, "cover")
    assert fact is not None
    studs = [hole for hole in fact.flats[0].holes if hole.feature == "studs"]
    # M4 × 0.7: drill 3.3 mm (ISO 2306)
    assert {hole.diameter for hole in studs} == {3.3}
    assert all("drill ⌀3.3 mm" in hole.words for hole in studs)


def test_a_head_from_below_is_told_with_its_hole(designed: Designed) -> None:
    fact = designed(BED).facts.about(FlatFact, "bed")
    assert fact is not None
    (flat,) = fact.flats
    assert len(flat.holes) == 4
    assert all(
        hole.words.endswith("counterbore ⌀7 mm, 1.5 mm deep from below") for hole in flat.holes
    )
    assert {hole.diameter for hole in flat.holes} == {4.0}


@pytest.mark.parametrize(
    ("at", "words", "told"),
    [
        ("10 mm from left, 5 mm from front", "lower left corner", (10.0, 5.0)),
        ("10 mm from right, 5 mm from front", "lower right corner", (10.0, 5.0)),
        ("10 mm from right, 5 mm from back", "upper right corner", (10.0, 5.0)),
    ],
)
def test_places_are_told_from_the_edges_that_the_spec_uses(
    designed: Designed, at: str, words: str, told: tuple[float, float]
) -> None:
    design = designed(
        "  plate:\n    material: brass\n    stock: 3 mm plate\n"
        "    plate: {length: 60 mm, width: 40 mm, thickness: 3 mm}\n"
        f'    features:\n      hole: {{drilled: 4 mm, depth: through, at: "{at}"}}\n'
    )
    fact = design.facts.about(FlatFact, "plate")
    assert fact is not None
    (flat,) = fact.flats
    assert flat.datum.words == words
    assert flat.datum.told(flat.holes[0].at) == pytest.approx(told)
