"""A row that two shoulders of its own shaft stop: nothing is left that could close it.

Sums of lengths along an axis, worked beside each case; the float of 0.1 to 0.2 mm of a small
spindle is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.compiler import Outcome

Compile = Callable[..., Outcome]
FLOATS = ("no-end-float", "end-float-off")
PARTS = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle:
    material: silver steel
    turned:
      - {name: head, diameter: 8 mm, length: 3 mm}
      - {name: journal, diameter: 5 mm, length: LONG mm}
      - {name: seat, diameter: SEAT mm, length: 6 mm}
  cheek:
    material: brass
    plate: {length: 30 mm, width: 20 mm, thickness: 3 mm}
    features: {bore: {reamed: 5 mm, on: top, depth: through}}
  washer:
    material: bronze
    disc: {diameter: 9 mm, thickness: 1 mm}
    features: {bore: {drilled: 5.1 mm, depth: through}}
scrap_box:
  wheel: {what: clock wheel, measure_first: [bore], sizes: {bore: 4 mm, length: 4 mm},
    note: from the scrap box}
joints:
  axle in cheek: {runs_in: [axle.journal, cheek.bore]}
  wheel on axle: {FIXED: [wheel, axle.seat]HOW}
shafts:
  axle: {along: [axle.head, cheek.bore, washer, wheel]}
"""


def found(
    compile_text: Compile, long: str, seat: int = 4, fixed: str = "retained", how: str = ""
) -> list[tuple[str, str]]:
    """What is found of the float: the cheek of 3 and the washer of 1 stand between the stops."""
    text = PARTS.replace("LONG", long).replace("SEAT", str(seat)).replace("FIXED", fixed)
    outcome = compile_text(text.replace("HOW", how))
    assert outcome.design is not None, [one.message for one in outcome.findings]
    return [(one.code.name, one.message) for one in outcome.findings if one.code.name in FLOATS]


@pytest.mark.parametrize(
    ("long", "code"),
    [
        ("4.15", ""),
        ("4.2", ""),
        ("4", "no-end-float"),
        ("3.9", "no-end-float"),
        ("4.05", "end-float-off"),
        ("4.5", "end-float-off"),
    ],
)
def test_a_salvaged_wheel_on_a_shoulder_closes_no_row(
    compile_text: Compile, long: str, code: str
) -> None:
    """3 + 1 stand on a journal of so much between the head and the shoulder of the wheel."""
    assert [name for name, _ in found(compile_text, long)] == [code][: bool(code)]


def test_the_sizes_are_listed(compile_text: Compile) -> None:
    """4.5 - 3 - 1 leaves 0.5."""
    ((_, message),) = found(compile_text, "4.5")
    assert "4.5 mm between the shoulders" in message
    assert "cheek 3 mm + washer 1 mm stand there: 0.5 mm of end float" in message


def test_what_is_set_by_hand_closes_the_row(compile_text: Compile) -> None:
    """No shoulder behind the wheel, or a screw that nips it where it is wanted."""
    nipped = ", fastener: M3 grub screw"
    assert found(compile_text, "4.5", seat=5) == []
    assert found(compile_text, "4.5", fixed="clamped", how=nipped) == []
