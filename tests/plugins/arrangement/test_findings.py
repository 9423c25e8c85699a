"""Each code of the plugin at its exact place, and right specs that get none of them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome, Phase
from binder_plugins.arrangement import picturing
from binder_plugins.arrangement.codes import CODES
from binder_solid.placed import PlacedFact

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
BASE = "  base: {material: oak, board: {length: 100 mm, width: 60 mm, thickness: 10 mm}}\n"
BLOCK = "  block: {material: brass, block: {length: 20 mm, width: 12 mm, height: 30 mm}}\n"
GLUED = "joints:\n  block on base: {glued: [block.underside, base.top]}\n"
ALL = "assemblies: {all: {of: [base, block]}}\n"
CASES = {
    "position-unknown": (
        f"{HEAD}{BASE}{BLOCK}{GLUED}positions:\n  block: {{at: ⟪3 mm above bass.top⟫}}\n"
    ),
    "position-not-read": (
        f"{HEAD}{BASE}{BLOCK}{GLUED}positions:\n  block: {{at: ⟪somewhere on it⟫}}\n"
    ),
    "parts-do-not-meet": (
        f"{HEAD}{BASE}{BLOCK}joints:\n  ⟪block on base⟫: {{glued: [block.underside, base.top]}}\n"
        "positions:\n  block: {at: '3 mm above base.top, middle of base'}\n"
    ),
    "part-not-placed": (
        f"{HEAD}{BASE}{BLOCK}  ⟪lamp⟫: {{material: brass, block: {{length: 5 mm, width: 5 mm,"
        f" height: 5 mm}}}}\n{GLUED}positions:\n  block: {{at: middle of base}}\n"
        "assemblies: {all: {of: [base, block, lamp]}}\n"
    ),
    "wheel-wanders": (
        f"{HEAD}  base: {{material: brass, block: {{length: 30 mm, width: 9 mm, height: 12 mm}}}}\n"
        "  cheek: {material: brass, quantity: 2, plate: {length: 30 mm, width: 40 mm,"
        " thickness: 3 mm}, features: {hole: {reamed: to suit, depth: through}}}\n"
        "  pin: {material: silver steel, turned: [{name: rod, diameter: 4 mm, length: 18 mm}]}\n"
        "  wheel: {material: brass, turned: [{name: rim, diameter: 16 mm, length: 4 mm}],"
        " features: {bore: {reamed: to suit, on: rim, depth: through}}}\n"
        "joints:\n  pin in cheeks: {slides: [pin.rod, cheek.hole]}\n"
        "  ⟪wheel on pin⟫: {runs_in: [wheel.bore, pin.rod]}\n"
        "stands: base\npositions:\n  cheek:\n    copies:\n"
        "      - {at: 0 mm above base.top}\n      - {at: 0 mm below base.underside}\n"
        "  pin: {at: middle of base}\n"
    ),
    "place-left-open": (
        f"{HEAD}{BASE}{BLOCK}joints:\n  ⟪block on base⟫: {{glued: [block.underside, base.top]}}\n"
        f"{ALL}"
    ),
}


def _marked(text: str) -> tuple[str, tuple[int, int, int, int]]:
    start = text.index("⟪")
    plain = text.replace("⟪", "")
    end = plain.index("⟫")
    return plain.replace("⟫", ""), (*_place(plain, start), *_place(plain, end))


def _place(text: str, offset: int) -> tuple[int, int]:
    before = text[:offset]
    return before.count("\n") + 1, offset - before.rfind("\n")


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(compile_text: Compile, code: str) -> None:
    text, place = _marked(CASES[code])
    found = [one for one in compile_text(text).findings if one.code.name == code]
    assert found
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ("at: 3 mm from base", "position-not-read"),
        ("at: middle", "position-not-read"),
        ("at: 3 mm above base.bore", "position-unknown"),
        ("at: 3 mm above base.top, by: bore", "position-unknown"),
        ("on: lamp.top", "position-unknown"),
        ("parallel: lamp", "position-unknown"),
    ],
)
def test_words_that_say_nothing(compile_text: Compile, words: str, code: str) -> None:
    text = f"{HEAD}{BASE}{BLOCK}{GLUED}positions:\n  block: {{{words}}}\n"
    assert code in [one.code.name for one in compile_text(text).findings]


def lamps(count: int) -> str:
    """So many lamps that nothing holds, each with a shade that is glued on."""
    sides = "{length: 5 mm, width: 5 mm, height: 5 mm}"
    names = [f"{what}{n}" for n in range(count) for what in ("lamp", "shade")]
    parts = "".join(f"  {name}: {{material: brass, block: {sides}}}\n" for name in names)
    joints = "".join(
        f"  j{n}: {{glued: [shade{n}.underside, lamp{n}.top]}}\n" for n in range(count)
    )
    said = "positions:\n  block: {at: middle of base}\n"
    of = ", ".join(["base", "block", *names])
    return (
        f"{HEAD}{BASE}{BLOCK}{parts}{GLUED}{joints}{said}assemblies: {{all: {{of: [{of}]}}}}\n"
        "stands: base\n"
    )


def test_what_hangs_together_is_told_once_and_many_by_one(compile_text: Compile) -> None:
    def told(count: int) -> list[str]:
        found = compile_text(lamps(count)).findings
        return [one.message for one in found if one.code.name == "part-not-placed"]

    assert told(1) == ["nothing says where 'lamp0' stands, nor so shade0"]
    assert len(told(6)) == 6
    (every,) = told(7)
    assert every.endswith("; the same is true of 6 others")


def test_what_there_is_no_room_for_is_not_denied(compile_text: Compile) -> None:
    """The parts are written in the spec, so no message may say that they are not there."""
    cube = "{material: brass, quantity: 60, block: {length: 5 mm, width: 5 mm, height: 5 mm}}"
    many = "".join(f"  shot{n}: {cube}\n" for n in range(20))
    lamp = BLOCK.replace("block:", "lamp:", 1)
    said = "positions:\n  lamp: {at: 3 mm above block.top}\n  shot0: {at: 9 mm above lamp.top}\n"
    found = compile_text(f"{HEAD}{BASE}{many}{lamp}{BLOCK}{GLUED}{said}stands: base\n").findings
    told = [one for one in found if one.code.name.startswith(("position", "part-not"))]
    assert [one.code.name for one in told] == ["part-not-placed"]
    assert told[0].message.startswith("'lamp' is not placed (nor 1 more): 1200 copies of other")


def test_a_part_that_lies_on_itself_is_not_placed(compile_text: Compile) -> None:
    text = f"{HEAD}{BASE}{BLOCK}stands: base\npositions:\n  block: {{on: block.top}}\n"
    design = compile_text(text).design
    assert design is not None
    assert [one.subject for one in design.facts.all(PlacedFact)] == ["base"]


def test_two_places_name_both_who_want_them(compile_text: Compile) -> None:
    text, _ = _marked(CASES["parts-do-not-meet"])
    (found,) = (one for one in compile_text(text).findings if one.code.name == "parts-do-not-meet")
    assert "'positions'" in found.message
    assert "'block on base'" in found.message
    assert "3.00 mm" in found.message


def test_right_places_are_left_in_peace(compile_text: Compile) -> None:
    text = f"{HEAD}{BASE}{BLOCK}{GLUED}positions:\n  block: {{at: middle of base}}\n{ALL}"
    own = {code.name for code in CODES}
    assert not {one.code.name for one in compile_text(text, Phase.COMPOSE).findings} & own


def test_a_block_in_the_board_collides(compile_text: Compile) -> None:
    text = (
        f"{HEAD}{BASE}{BLOCK}stands: base\npositions:\n"
        "  block: {at: '4 mm below base.top, middle of base', by: underside}\n"
    )
    (found,) = (
        one
        for one in compile_text(text, Phase.COMPOSE).findings
        if one.code.name == "parts-collide"
    )
    # 20 by 12 by 4 mm of it stand in the oak.
    assert "960.0 mm³" in found.message
    assert "50 mm right, 30 mm back and 8 mm up" in found.message
    assert found.span.line == 5


def test_two_crossing_bars_share_a_steinmetz_solid(compile_text: Compile) -> None:
    """Two cylinders of one radius at right angles share 16 r³ / 3: 666.7 mm³ for 5 mm.

    Archimedes, The Method (from memory); Steinmetz's name for it is common practice.
    """
    bar = "{material: brass, turned: [{name: rod, diameter: 10 mm, length: 40 mm}]}"
    text = (
        f"{HEAD}  mast: {bar}\n  boom: {bar}\nstands: mast\npositions:\n"
        "  boom: {at: middle of mast}\n"
    )
    (found,) = (
        one
        for one in compile_text(text, Phase.COMPOSE).findings
        if one.code.name == "parts-collide"
    )
    assert "666.7 mm³" in found.message


def test_press_fits_and_threads_are_no_collision(compile_text: Compile) -> None:
    text = (
        f"{HEAD}  foot: {{material: brass, block: {{length: 30 mm, width: 30 mm, height: 20 mm}},"
        " features: {hole: {tapped: M6, on: top, depth: 10 mm}}}\n"
        "  stud: {material: mild steel, turned: [{name: rod, diameter: 6 mm, length: 30 mm}],"
        " features: {thread: {screwed: M6, on: rod, length: 10 mm}}}\n"
        "joints:\n  stud in foot: {threaded: [stud.thread, foot.hole]}\n"
    )
    codes = [one.code.name for one in compile_text(text, Phase.COMPOSE).findings]
    assert "parts-collide" not in codes


def test_what_a_pin_holds_may_not_run_through_it(compile_text: Compile) -> None:
    """A bar of 6 pinned across a post of 12, hole on hole: it stands in the post."""
    text = (
        f"{HEAD}  post: {{material: mild steel, turned: [{{name: mast, diameter: 12 mm,"
        " length: 40 mm}], features: {foot: {drilled: to suit, across: mast, depth: through}}}\n"
        "  bar: {material: mild steel, block: {length: 40 mm, width: 12 mm, height: 6 mm},"
        " features: {eye: {drilled: to suit, on: top, depth: through}}}\n"
        "joints:\n  bar on post: {pinned: [bar.eye, post.foot],"
        " fastener: 3 mm x 16 mm steel dowel pin, made: drilled together}\n"
    )
    codes = [one.code.name for one in compile_text(text, Phase.COMPOSE).findings]
    assert "parts-collide" in codes


def hollow(bore: str) -> str:
    """A peg of 12 mm in a hollow of 14 mm, which a bore leads into."""
    return (
        f"{HEAD}  ⟪peg⟫: {{material: brass, turned: [{{name: body, diameter: 12 mm,"
        " length: 6 mm}]}\n"
        "  box: {material: brass, block: {length: 30 mm, width: 30 mm, height: 30 mm},"
        f" features: {{bore: {{bored: {bore}, on: top, depth: through}},"
        " room: {recessed: 14 mm, on: bore, length: 10 mm}}}\n"
        "stands: box\npositions:\n  peg: {at: middle of box}\n"
    )


def test_a_peg_in_a_closed_hollow_is_caged(compile_text: Compile) -> None:
    text, place = _marked(hollow("4 mm"))
    outcome = compile_text(text, Phase.COMPOSE)
    (found,) = (one for one in outcome.findings if one.code.name == "part-is-caged")
    span = found.span
    assert (span.line, span.column, span.end_line, span.end_column) == place
    assert "'box'" in found.message


def test_a_peg_that_passes_the_bore_is_not(compile_text: Compile) -> None:
    # Stood on end in the axis of the bore, 12 mm wide under a bore of 13 mm.
    text, _ = _marked(hollow("13 mm").replace("middle of box}", "middle of box, parallel: pin}"))
    pin = "  pin: {material: brass, turned: [{name: rod, diameter: 2 mm, length: 9 mm}]}\n"
    text = text.replace("  box: {", f"{pin}  box: {{", 1)
    text = text.replace("  peg: {at", "  pin: {on: box.top, by: left}\n  peg: {at")
    codes = {one.code.name for one in compile_text(text, Phase.COMPOSE).findings}
    assert "part-is-caged" not in codes


def test_without_the_kernel_the_places_stand_and_nothing_is_drawn(
    compile_text: Compile, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(picturing, "is_kernel_there", lambda: False)
    text = f"{HEAD}{BASE}{BLOCK}{GLUED}positions:\n  block: {{at: middle of base}}\n{ALL}"
    outcome = compile_text(text, Phase.COMPOSE)
    assert outcome.binder is not None
    assert "arrangement" not in [section.id for section in outcome.binder.sections]
