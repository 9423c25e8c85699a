"""What bears or slides along a shaft keeps its faces bare; common practice, no source."""

from __future__ import annotations

from collections.abc import Callable

from binder.api import Design
from binder.compiler import Outcome
from binder_plugins.finishing.bare import bare_places

Compile = Callable[..., Outcome]

PIN = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  plate: {material: mild steel, quantity: 2, plate: {length: 20 mm, width: 20 mm, thickness: 2 mm}, finish: painted, features: {hole: {reamed: to suit, depth: through}, far: {drilled: 3 mm, depth: through, at: 4 mm from left}}}
  roller: {material: brass, turned: [{name: rim, diameter: 12 mm, length: 4 mm}], features: {bore: {reamed: to suit, on: rim, depth: through}}}
  spacer: {material: mild steel, quantity: 2, finish: painted, turned: [{name: rim, diameter: 7 mm, length: 3 mm}], features: {bore: {drilled: 4.1 mm, on: rim, depth: through}}}
  pin: {material: silver steel, stock: drawn rod, turned: [{name: journal, diameter: 4 mm, length: 17 mm}], finish: blackened, features: {clips: {grooved: to suit, on: journal, each_end: true, at: 0.95 mm from left}}}
joints:
  roller on pin: {runs_in: [roller.bore, pin.journal], duty: slow and oiled}
  pin in plates: {slides: [pin.journal, plate.hole]}
  clips on pin: {clipped: [plate.hole, pin.clips], fastener: 4 mm external circlip}
shafts:
  pin: {along: [pin.clips, plate.hole, spacer, roller, spacer, plate.hole, pin.clips], apart: 10 mm}
"""  # noqa: E501


def _design(compile_text: Compile) -> Design:
    design: Design | None = compile_text(PIN).design
    assert design is not None
    return design


def test_the_faces_under_clips_and_spacers_stay_bare(compile_text: Compile) -> None:
    places = bare_places("plate", _design(compile_text))
    (faces,) = [one for one in places if "faces" in one]
    assert faces.startswith("hole: ")
    assert "4 mm external circlip" in faces
    assert "spacer" in faces
    assert "roller" not in faces  # a spacer stands between
    assert not any(one.startswith("far") for one in places)


def test_a_spacer_stays_bare_at_its_ends_and_in_its_bore(compile_text: Compile) -> None:
    places = bare_places("spacer", _design(compile_text))
    assert any(one.startswith("bore: it slides on the pin") for one in places)
    (ends,) = [one for one in places if one.startswith("both ends")]
    assert "plate" in ends
    assert "roller" in ends


def test_a_shaft_stays_bare_in_the_groove_and_under_what_slides(compile_text: Compile) -> None:
    places = bare_places("pin", _design(compile_text))
    assert "clips: groove of the 4 mm external circlip" in places
    assert "length under the spacer, which slides on it" in places
    assert not any("under the plate" in one for one in places)  # its fit is told
