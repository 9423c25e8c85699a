"""What is filed to another part waits for it, and its leaf tells the size; pairs of hands.

All of it common practice, no source: a thing can be tried only in what is there.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome, Phase
from binder.pages import Binder, Table, text_of
from binder_plugins.shapes.fitted import Fitted, fitted

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
NOSE = "to the ratchet's tooth"


def text_with(words: str) -> str:
    """A pawl that is filed so, a wheel with teeth, and a head with an eye."""
    return (
        f"{HEAD}  pawl: {{material: mild steel, stock: 6 mm x 3 mm flat bar, cut: 16 mm,"
        f' features: {{nose: {{filed: "{words}"}}}}}}\n'
        "  ratchet: {title: ratchet wheel, material: mild steel, ratchet: {teeth: 12,"
        " outside: 14 mm, depth: 1.2 mm, width: 2 mm},"
        " features: {bore: {reamed: 4 mm, depth: through}}}\n"
        "  head: {title: hammer head, material: mild steel, block: {length: 14 mm, width: 14 mm,"
        " height: 26 mm},"
        " features: {eye: {slotted: 8 mm, on: left, length: 10 mm, depth: through}}}\n"
    )


def codes_of(outcome: Outcome) -> set[str]:
    return {one.code.name for one in outcome.findings}


@pytest.mark.parametrize(
    ("words", "item", "place"),
    [
        (NOSE, "ratchet", "tooth"),
        ("rounded to enter the eye of the hammer head", "head", "eye"),
        ("flat on both sides, for the head's eye", "head", "eye"),
        ("to fit ratchet wheel", "ratchet", ""),
    ],
)
def test_the_part_is_found_by_its_name_or_title(
    compile_text: Compile, words: str, item: str, place: str
) -> None:
    outcome = compile_text(text_with(words))
    assert outcome.design is not None
    (one,) = fitted(outcome.design)
    assert isinstance(one, Fitted)
    assert (one.item, one.place) == (item, place)
    assert not {one for one in codes_of(outcome) if one.startswith("filed-")}


def test_it_is_made_after_what_it_is_filed_to(compile_text: Compile) -> None:
    outcome = compile_text(text_with(NOSE))
    assert outcome.design is not None
    pairs = {(one.earlier, one.later) for one in outcome.design.befores}
    assert ("make ratchet", "make pawl") in pairs


def test_the_leaf_tells_the_size_of_the_other(compile_text: Compile) -> None:
    outcome = compile_text(text_with(NOSE), Phase.COMPOSE)
    assert isinstance(outcome.binder, Binder)
    (parts,) = [one for one in outcome.binder.sections if one.id == "parts"]
    (leaf,) = [one for one in parts.sections if one.id == "part-pawl"]
    rows = [row for one in leaf.blocks if isinstance(one, Table) for row in one.rows]
    (row,) = [row for row in rows if text_of(row[0]) == "nose"]
    assert "ratchet wheel, made first" in text_of(row[3])
    assert "depth 1.2 mm" in text_of(row[3])


@pytest.mark.parametrize("words", ["to a neat point", "to the line", "to shape", "rounded 1 mm"])
def test_what_is_filed_to_no_part_is_left_alone(compile_text: Compile, words: str) -> None:
    assert not {one for one in codes_of(compile_text(text_with(words))) if "filed-" in one}


@pytest.mark.parametrize("words", ["to fit", "to suit", "to the lever", "to enter the socket"])
def test_words_that_name_no_part_are_asked_about(compile_text: Compile, words: str) -> None:
    assert "filed-to-nothing" in codes_of(compile_text(text_with(words)))


@pytest.mark.parametrize(
    ("words", "is_found"),
    [("square hole of 3 mm", True), ("a slot 2 mm wide", True), ("flat beside the hole", False)],
)
def test_an_opening_wants_a_hole_to_start_from(
    compile_text: Compile, words: str, *, is_found: bool
) -> None:
    text = text_with(words)
    assert ("opening-without-start" in codes_of(compile_text(text))) is is_found
    started = text.replace(
        "features: {nose: {filed:",
        "features: {start: {drilled: 2 mm, depth: through}, nose: {filed:",
    ).replace(f'"{words}"', f'"{words}", on: start')
    assert "opening-without-start" not in codes_of(compile_text(started))


@pytest.mark.parametrize(
    ("shape", "features", "is_alike"),
    [
        # Geometry: a plane through the middle maps each hole on itself or on its like.
        ("block", "seat: {tapped: M4, on: front, depth: through, at: 30 mm from left}", True),
        ("block", "seat: {tapped: M4, on: front, depth: 3 mm, at: 30 mm from left}", True),
        (
            "block",
            'seat: {tapped: M4, on: front, depth: 3 mm, at: "30 mm from left, 3 mm from top"}',
            False,
        ),
        ("block", "seat: {slotted: 3 mm, on: front, depth: 3 mm, at: 30 mm from left}", False),
        ("plate", 'eye: {drilled: 3 mm, depth: through, at: "30 mm from left, 4 mm from back"}',
         False),
        ("plate", "eye: {drilled: 3 mm, depth: through, at: 30 mm from left}", True),
    ],
)  # fmt: skip
def test_a_pair_of_hands_that_are_the_same_part(
    compile_text: Compile, shape: str, features: str, *, is_alike: bool
) -> None:
    high = "height" if shape == "block" else "thickness"
    text = (
        f"{HEAD}  post: {{material: brass, quantity: 2, handed: true, {shape}: {{length: 40 mm,"
        f" width: 12 mm, {high}: 8 mm}}, features: {{{features}}}}}\n"
    )
    assert ("hands-alike" in codes_of(compile_text(text))) is is_alike


def seated(words: str, more: str, eye: str = "depth: through") -> str:
    """A helve that is filed so, and a collar of 20 whose eye goes across it."""
    return (
        f"{HEAD}  helve: {{material: beech, board: {{length: 120 mm, width: 12 mm,"
        f' thickness: 9 mm}}, features: {{seat: {{filed: "{words}", {more}}}}}}}\n'
        "  collar: {material: mild steel, block: {length: 20 mm, width: 20 mm, height: 15 mm},"
        f" features: {{eye: {{slotted: 9 mm, on: front, length: 12 mm, {eye}}}}}}}\n"
    )


FILLS = "to fill the eye of the collar"
ALONG = "at: 45 mm from left"


@pytest.mark.parametrize(
    ("text", "is_short"),
    [
        # Geometry: the hole is 20 deep; what goes through it and is shorter stops in it.
        (seated(FILLS, f"length: 15 mm, {ALONG}"), True),
        (seated(f"15 mm long, {FILLS}", ALONG), True),
        (seated(FILLS, f"length: 20 mm, {ALONG}"), False),
        (seated(FILLS, f"length: 24 mm, {ALONG}"), False),
        (seated(FILLS, "length: 15 mm, on: right"), True),
        (seated("to enter the eye of the collar", "length: 15 mm, on: right"), False),
        # A blind hole of 10: the end of 12 stands on its floor before the shoulder closes.
        (seated(FILLS, "length: 12 mm, on: right", "depth: 10 mm"), True),
        (seated(FILLS, "length: 10 mm, on: right", "depth: 10 mm"), False),
    ],
)
def test_a_seat_is_as_long_as_the_hole_that_comes_over_it(
    text: str, is_short: bool, compile_text: Compile
) -> None:
    found = [one for one in compile_text(text).findings if one.code.name == "filed-too-short"]
    assert bool(found) is is_short
