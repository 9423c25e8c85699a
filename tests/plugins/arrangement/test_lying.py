"""What stands beside the way, the seat or the flat that should carry it.

Common practice, no source: lengths along a shaft or a way, added by hand beside each case.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\nparts:\n"
WAY = (
    "  bed:\n    material: mild steel\n    block: {length: 100 mm, width: 40 mm, height: 12 mm}\n"
    "    features: {way: {dovetailed: to suit, on: top, inside: true}}\n"
    "  slide:\n    material: brass\n    block: {length: 30 mm, width: 24 mm, height: 8 mm}\n"
    "    features: {tail: {dovetailed: to suit, on: underside}}\n"
    "joints:\n  ⟪slide on bed⟫: {dovetailed: [slide.tail, bed.way], width: 14 mm, depth: 3 mm}\n"
    "stands: bed\n"
)


def shaft(seat: str = "20 mm", flat: str = "at: 5 mm from left", at: str = "hub") -> str:
    """A hub of 20 beside two cheeks of 6, 20 apart; its screw stands in the middle of its boss."""
    return f"""{HEAD}\
  base: {{material: oak, board: {{length: 100 mm, width: 60 mm, thickness: 10 mm}}}}
  cheek:
    material: brass
    quantity: 2
    block: {{length: 30 mm, width: 6 mm, height: 40 mm}}
    features: {{bore: {{reamed: to suit, on: front, depth: through, at: 25 mm from underside}}}}
  axle:
    material: silver steel
    turned:
      - {{name: seat, diameter: 6 mm, length: {seat}}}
      - {{name: journal, diameter: 6 mm, length: 32 mm}}
    features:
      {"⟪flat⟫" if at == "flat" else "flat"}: {{flatted: 5.5 mm, on: seat, length: 6 mm, {flat}}}
  hub:
    material: brass
    turned:
      - {{name: boss, diameter: 16 mm, length: 10 mm}}
      - {{name: rim, diameter: 30 mm, length: 10 mm}}
    features: {{bore: {{reamed: to suit, on: boss, depth: through}}}}
joints:
  cheeks on base: {{glued: [cheek.underside, base.top]}}
  axle in cheeks: {{runs_in: [axle.journal, cheek.bore], duty: slow and oiled}}
  hub on axle:
    clamped: [hub.bore, {"⟪axle.seat⟫" if at == "seat" else "axle.seat"}]
    fastener: M3 grub screw
shafts:
  axle: {{along: [hub, cheek.bore, cheek.bore], apart: 20 mm}}
stands: base
positions:
  cheek: {{copies: [{{at: "20 mm from base.left, 10 mm from base.front"}},
                   {{at: "20 mm from base.left, 36 mm from base.front"}}]}}
"""


# The journal of 32 lies in its bearings of 6 + 20 + 6, so the seat ends at the first of them:
# the hub covers its last 20, and the screw stands 5 from its outer face.
CASES = {
    "slide-off-its-way": (
        f"{HEAD}{WAY}positions:\n  slide: {{at: 20 mm left of bed.left}}\n",
        f"{HEAD}{WAY}positions:\n  slide: {{at: 5 mm from bed.left}}\n",
    ),
    "seat-missed": (
        shaft(at="seat").replace("[hub, cheek.bore, cheek.bore]", "[cheek.bore, hub, cheek.bore]"),
        shaft(),
    ),
    "flat-missed": (shaft(at="flat", flat="at: 10 mm from left"), shaft(at="flat")),
}


def _marked(text: str) -> tuple[str, tuple[int, int]]:
    before = text[: text.index("⟪")]
    return text.replace("⟪", "").replace("⟫", ""), (
        before.count("\n") + 1,
        len(before) - before.rfind("\n"),
    )


@pytest.mark.parametrize("code", sorted(CASES))
def test_found_at_its_place_and_not_once_mended(code: str, compile_text: Compile) -> None:
    text, place = _marked(CASES[code][0])
    outcome = compile_text(text)
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    assert (found[0].span.line, found[0].span.column) == place
    mended = compile_text(_marked(CASES[code][1])[0] if "⟪" in CASES[code][1] else CASES[code][1])
    assert code not in {one.code.name for one in mended.findings}


# A screw of 3 on a flat of 6: its end stands whole on the flat up to 1.5 from the middle (2.5
# is drilled for it, so 1.75).
@pytest.mark.parametrize(("at", "said"), [("6.5 mm", False), ("7 mm", True), ("3 mm", True)])
def test_the_screw_needs_its_whole_end_on_the_flat(
    at: str, said: bool, compile_text: Compile
) -> None:
    found = compile_text(shaft(flat=f"at: {at} from left")).findings
    assert ("flat-missed" in {one.code.name for one in found}) == said


def helve(long: str, at: str = "", seat: str = "helve.seat") -> str:
    """A collar of 20 on a seat about 45 of a helve, or where a position puts it."""
    put = f"positions:\n  collar: {{at: {at} from helve.left}}\n" if at else ""
    return f"""{HEAD}\
  helve:
    material: beech
    board: {{length: 120 mm, width: 12 mm, thickness: 9 mm}}
    features:
      seat: {{filed: round on both edges, length: {long}, at: 45 mm from left}}
  collar:
    material: mild steel
    block: {{length: 20 mm, width: 20 mm, height: 15 mm}}
    features: {{eye: {{slotted: 9 mm, on: front, length: 12 mm, depth: through}}}}
joints:
  collar on helve: {{glued: [collar.eye, {seat}]}}
stands: helve
{put}"""


# The seat lies from 45 less half its length to 45 and half; the collar from its place, 20 long.
@pytest.mark.parametrize(
    ("text", "said"),
    [
        (helve("20 mm"), False),
        (helve("15 mm"), True),
        (helve("24 mm", "34 mm"), False),
        (helve("20 mm", "41 mm"), True),
    ],
)
def test_what_is_put_on_a_filed_seat_stands_on_all_of_it(
    text: str, said: bool, compile_text: Compile
) -> None:
    found = [one for one in compile_text(text).findings if one.code.name == "seat-missed"]
    assert bool(found) is said
