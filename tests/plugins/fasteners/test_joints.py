"""Both halves of fastened joints, and the hardware, reckoned by hand beside each test.

Clearance holes: ISO 273 medium (M3 3.4, M4 4.5). Tapped depth: 1.5 times what must hold and two
threads over, to half a millimetre. Lengths: ISO 888. All in mm.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from binder.api import Design, Feature, HalfFact, HardwareFact, Notice, NumberOff, Table
from binder.compiler import Job, Outcome, Phase, compiled
from binder.host import Host
from binder_plugins.fasteners.page import hardware_pages

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
INCH = Path(__file__).parents[3] / "specs" / "workshops" / "inch.yaml"
PARTS = """parts:
  lid: {material: mild steel, plate: {length: 40 mm, width: 30 mm, thickness: 5 mm}}
  box: {material: brass, block: {length: 40 mm, width: 30 mm, height: 30 mm}}
  foot:
    material: mild steel
    quantity: 2
    block: {length: 24 mm, width: 22 mm, height: 25 mm}
    features: {hole: {tapped: to suit, on: underside, depth: 8 mm, off: 2, pattern: 14 mm apart}}
  bed: {material: mild steel, block: {length: 150 mm, width: 50 mm, height: 6 mm}}
  base: {material: oak, board: {length: 220 mm, width: 110 mm, thickness: 18 mm}}
  wheel:
    material: brass
    turned: [{name: boss, diameter: 18 mm, length: 12 mm}]
    features: {bore: {reamed: 6 mm, on: boss, depth: through}}
  shaft:
    material: silver steel
    turned: [{name: seat, diameter: 6 mm, length: 20 mm}]
  gear:
    material: brass
    turned: [{name: boss, diameter: 24 mm, length: 12 mm}]
    features: {bore: {reamed: 10 mm, on: boss, depth: through}}
  axle:
    material: mild steel
    turned: [{name: seat, diameter: 10 mm, length: 20 mm}]
"""
ASSEMBLY = "assemblies:\n  all: {of: [lid, box, 2 off foot, bed, base, wheel, shaft, gear, axle]}\n"


def designed(compile_text: Callable[..., Outcome], *joints: str) -> Design:
    lines = "".join(f"  {joint}\n" for joint in joints)
    said = f"joints:\n{lines}" if joints else ""
    outcome = compile_text(f"{HEAD}{PARTS}{said}{ASSEMBLY}")
    assert outcome.design is not None
    return outcome.design


def made(design: Design, owner: str, name: str) -> Feature:
    return next(one for one in design.parts[owner].features if one.name == name)


def size(feature: Feature, field: str = "") -> str:
    value = getattr(feature.entry, field or feature.kind)
    return str(getattr(value, "text", value))


def hardware(design: Design, joint: str) -> list[HardwareFact]:
    return [one for one in design.facts.all(HardwareFact) if one.joint == joint]


def test_lid_on_a_brass_box(compile_text: Callable[..., Outcome]) -> None:
    """Brass: 1.5 x 3 = 4.5 must hold, so 5 + 4.5 = 9.5: 10 is the shortest sold, and 5 hold. The
    hole goes on for two threads: 5 + 2 x 0.5 = 6 full. Four, and one spare."""
    design = designed(
        compile_text,
        "lid on box: {screwed: [lid.underside, box.top], fastener: M3 cap screw, "
        'pattern: "at the corners, 6 mm in"}',
    )
    clear, tapped = made(design, "lid", "lid_on_box"), made(design, "box", "lid_on_box")
    assert (clear.kind, size(clear), size(clear, "depth")) == ("drilled", "3.4 mm", "through")
    assert (tapped.kind, size(tapped), size(tapped, "depth")) == ("tapped", "M3", "6 mm")
    assert [size(one, "off") for one in (clear, tapped)] == ["4", "4"]
    assert clear.implied_by == tapped.implied_by == "lid on box"
    (screw,) = hardware(design, "lid on box")
    assert (screw.what, screw.count, screw.spares) == ("M3 × 10 mm cap screw", 4, 1)
    assert (screw.length, screw.grip, screw.engagement) == (10, 5, 5)
    assert design.bought[screw.name].quantity == 4
    number = design.facts.about(NumberOff, screw.name)
    assert number is not None
    assert number.count == 4
    halves = {one.subject: one for one in design.facts.all(HalfFact)}
    assert halves["lid on box: lid.underside"].what.startswith("drill 3.4 mm through, 4 off")
    assert design.workings["lid_on_box.length"].result == "10 mm"


def test_counterbored_head_takes_its_depth_off_the_grip(
    compile_text: Callable[..., Outcome],
) -> None:
    """DIN 974-1: M3 head 3 + 0.4 = 3.4 deep, 6.5 wide. Grip 5 - 3.4 = 1.6; least 6.1; 6 is
    too short: 8, and 6.4 hold. 1.6 of metal is left, over half of 3."""
    design = designed(
        compile_text,
        "a: {screwed: [lid.underside, box.top], fastener: M3 cap screw, head: counterbored}",
    )
    seat = made(design, "lid", "a_seat")
    assert (seat.kind, size(seat), size(seat, "depth")) == ("counterbored", "6.5 mm", "3.4 mm")
    assert size(seat, "on") == "top"
    (screw,) = hardware(design, "a")
    assert screw.length == 8
    assert screw.engagement == pytest.approx(6.4)


def test_feet_on_a_bed_two_of_them(compile_text: Callable[..., Outcome]) -> None:
    """Two feet of two holes: four holes in the bed, four screws. Bed 6, steel: 3 must hold;
    6 + 3 = 9: 10 is the shortest sold, and 4 hold. The tapped hole is settled."""
    design = designed(
        compile_text,
        "feet on bed: {screwed: [foot.hole, bed.top], fastener: M3 cap screw}",
    )
    assert size(made(design, "foot", "hole")) == "M3"
    bed = made(design, "bed", "feet_on_bed")
    assert (bed.kind, size(bed), size(bed, "off")) == ("drilled", "3.4 mm", "4")
    (screw,) = hardware(design, "feet on bed")
    assert (screw.what, screw.count, screw.engagement) == ("M3 × 10 mm cap screw", 4, 4)


def test_wood_screws_in_oak(compile_text: Callable[..., Outcome]) -> None:
    """Bed 6 on oak 18, no. 6: 4 d = 14 and two thirds = 12, so 20 to 23: 7/8 in = 22.2."""
    design = designed(
        compile_text,
        "bed on base: {screwed: [bed.underside, base.top], "
        'fastener: "no. 6 brass wood screw, round head", pattern: "2 off, 100 mm apart"}',
    )
    (screw,) = hardware(design, "bed on base")
    assert screw.what == "no. 6 × 7/8 in brass round head wood screw"
    assert screw.engagement == pytest.approx(22.225 - 6)
    halves = {one.subject: one for one in design.facts.all(HalfFact)}
    how = halves["bed on base: base.top"].how
    assert how == "spotted through its mate; cut the thread with a steel screw first"


def test_bolt_and_nut(compile_text: Callable[..., Outcome]) -> None:
    """M4 screw through 5 + 6, nut 3.2, one thread 0.7: 14.9 up to 16, 2.6 threads past."""
    design = designed(
        compile_text,
        "a: {bolted: [lid.underside, bed.top], fastener: M4 hexagon screw, "
        'pattern: "2 off, 24 mm apart"}',
    )
    found = {one.what: one for one in hardware(design, "a")}
    assert found["M4 × 16 mm hexagon screw"].count == 2
    assert found["M4 hexagon nut"].count == 2
    assert "2.6 threads past the nut" in found["M4 × 16 mm hexagon screw"].why
    assert size(made(design, "bed", "a")) == "4.5 mm"


def test_grub_screw_makes_its_hole_and_its_flat(compile_text: Callable[..., Outcome]) -> None:
    """Hub 18 on shaft 6: wall 6, flat 0.08 x 6 = 0.5 deep; room 6.5: M3 x 6, half below."""
    design = designed(
        compile_text, "a: {clamped: [wheel.bore, shaft.seat], fastener: M3 grub screw}"
    )
    hole, flat = made(design, "wheel", "a_grub"), made(design, "shaft", "a_flat")
    assert (size(hole), size(hole, "across"), size(hole, "depth")) == ("M3", "boss", "6 mm")
    assert (size(flat), size(flat, "on")) == ("5.5 mm", "seat")
    (screw,) = hardware(design, "a")
    assert (screw.length, screw.engagement) == (6, 5.5)


def test_pin_and_key_and_circlip(compile_text: Callable[..., Outcome]) -> None:
    """Pin of 2 on a shaft of 6, through a hub of 18: 18 is sold (ISO 8752), flush. Key for 10
    (ISO 773, over 8 to 10): 3 x 3, 1.8 and 1.4 deep, the hub 12 long. DIN 471 for 6: 0.8 wide."""
    design = designed(
        compile_text,
        "pin: {pinned: [wheel.bore, shaft.seat], fastener: 2 mm roll pin}",
        "key: {keyed: [gear.bore, axle.seat], fastener: parallel key}",
        "clip: {clipped: [wheel, shaft.seat], fastener: external circlip}",
    )
    assert size(made(design, "wheel", "pin_pin"), "across") == "boss"
    assert hardware(design, "pin")[0].length == 18
    assert size(made(design, "axle", "key_keyway"), "depth") == "1.8 mm"
    assert size(made(design, "gear", "key_keyway"), "depth") == "1.4 mm"
    assert hardware(design, "key")[0].what == "3 mm × 3 mm × 12 mm parallel key"
    assert size(made(design, "shaft", "clip_groove")) == "0.8 mm"
    assert hardware(design, "clip")[0].what == "6 mm external circlip"


def test_rivets_and_dowels(compile_text: Callable[..., Outcome]) -> None:
    """Rivet 2 through 5 + 6: 11 + 3 = 14. Dowel 3: 6 in the box, through the lid 5 (1.67 d):
    9 to 11: 10."""
    design = designed(
        compile_text,
        "r: {riveted: [lid.underside, bed.top], fastener: 2 mm snap head rivet, "
        'pattern: "2 off, 20 mm apart"}',
        "d: {dowelled: [lid.underside, box.top], fastener: 3 mm dowel pin, "
        'pattern: "2 off, 24 mm apart"}',
    )
    assert hardware(design, "r")[0].length == 14
    assert size(made(design, "lid", "r")) == "2.1 mm"
    assert hardware(design, "d")[0].length == 10
    assert size(made(design, "box", "d"), "depth") == "6 mm"


def test_studs_with_nut_and_washer(compile_text: Callable[..., Outcome]) -> None:
    """M4 in brass: 6 in; lid 5, washer 0.8, nut 3.2, one thread 0.7: 15.7 up to 16, 1.4 past."""
    design = designed(
        compile_text,
        'a: {studded: [lid.underside, box.top], fastener: M4 stud, pattern: "2 off, 24 mm apart"}',
    )
    found = {one.what: one.count for one in hardware(design, "a")}
    assert found == {"M4 hexagon nut": 2, "M4 washer": 2, "M4 × 16 mm stud": 2}


def test_board_with_room_to_move(compile_text: Callable[..., Outcome]) -> None:
    design = designed(
        compile_text,
        "a: {buttoned: [base.underside, box.top], fastener: M4 cap screw, "
        "pattern: 2 off 20 mm apart}",
    )
    slot = made(design, "base", "a_slot")
    assert (slot.kind, size(slot), size(slot, "length")) == ("slotted", "4.5 mm", "8.5 mm")


def test_the_taps_of_the_workshop_choose_the_thread(host: Host, tmp_path: Path) -> None:
    """The metric shop has M3. The inch shop has 6 BA (2.8), 4-40 (2.84), 5 BA (3.2) and 6-32
    (3.5) within a fifth of 3 mm: all are sold, 4-40 is the nearest. 4-40 in brass: 1.5 x 2.84 =
    4.27 must hold; 5 + 4.27 = 9.27: 3/8 in = 9.53 is the shortest sold."""
    joint = "a: {screwed: [lid.underside, box.top], fastener: about 3 mm cap screw}"
    spec = tmp_path / "trial.yaml"
    spec.write_text(f"{HEAD}{PARTS}joints:\n  {joint}\n", encoding="utf-8")
    found = []
    for shop in (None, INCH):
        outcome = compiled(Job(spec, shop, ()), host, Phase.CHECK)
        assert outcome.design is not None
        found.append(
            (size(made(outcome.design, "box", "a")), hardware(outcome.design, "a")[0].what)
        )
    assert found == [
        ("M3", "M3 × 10 mm cap screw"),
        ("4-40 UNC", "4-40 UNC × 3/8 in cap screw"),
    ]


def test_what_is_listed_and_written_stays(compile_text: Callable[..., Outcome]) -> None:
    """An old spec: the screw under bought, both holes written; nothing is made twice."""
    text = (
        f"{HEAD}parts:\n"
        "  lid: {material: mild steel, plate: {length: 40 mm, width: 30 mm, thickness: 5 mm},"
        " features: {h: {drilled: 3.4 mm, on: top, depth: through}}}\n"
        "  box: {material: mild steel, block: {length: 40 mm, width: 30 mm, height: 30 mm},"
        " features: {t: {tapped: M3, on: top, depth: 8 mm}}}\n"
        "bought:\n  screw: {what: M3 x 10 cap screw}\n"
        "joints:\n  a: {screwed: [lid.h, box.t], held_by: screw}\n"
    )
    outcome = compile_text(text)
    assert outcome.design is not None
    assert [one.code.name for one in outcome.findings] == []
    assert not [one for one in outcome.design.features() if one.implied_by]
    (screw,) = hardware(outcome.design, "a")
    assert (screw.name, screw.engagement) == ("screw", 5)


def test_the_page_lists_what_to_buy(compile_text: Callable[..., Outcome]) -> None:
    """Four screws and a spare in one row; M3 of class 4.8 is proved to 1560 N (ISO 898-1)."""
    design = designed(
        compile_text,
        "a: {screwed: [lid.underside, box.top], fastener: M3 cap screw, "
        'pattern: "4 off on 16 mm PCD"}',
    )
    (section,) = hardware_pages(design, ())
    table = next(block for block in section.blocks if isinstance(block, Table))
    assert [cell[0] for cell in table.rows[0][:3]] == ["M3 × 10 mm cap screw", "4", "5"]
    notice = next(block for block in section.blocks if isinstance(block, Notice))
    assert notice.text == ("M3: each is proved to about 1600 N",)
    assert "competent person" in notice.source
    assert not list(hardware_pages(designed(compile_text), ()))


HOSTILE = (
    "a: {screwed: [lid.underside, box.top], fastener: M3 x 99999999 cap screw}",
    "a: {screwed: [lid.underside, box.top], fastener: M3 x 0 cap screw}",
    "a: {screwed: [lid.underside, box.top], fastener: M0 cap screw}",
    "a: {screwed: [lid.underside, box.top], fastener: M99999 cap screw}",
    "a: {screwed: [lid.underside, box.top], fastener: no. 999 wood screw}",
    "a: {screwed: [lid.underside, base.top], fastener: 0.001 mm x 5 mm wood screw}",
    "a: {screwed: [lid, box], fastener: M3 cap screw}",
    "a: {screwed: [wheel, shaft], fastener: M3 cap screw, head: countersunk}",
    "a: {screwed: [lid.top, bed.top, box.top], fastener: M3 cap screw, grip: 9 m}",
    "a: {screwed: [lid.underside, box.top], fastener: M3 cap screw, engagement: 9 m}",
    "a: {screwed: [lid.top, box.top], fastener: M3 cap screw, pattern: 400 off on 1 mm PCD}",
    "a: {screwed: [lid.underside, box.top], fastener: about 99 mm cap screw}",
    "a: {screwed: [lid.underside, box.top], fastener: about cap screw}",
    "a: {bolted: [lid, box], fastener: M3 x 1 hexagon bolt}",
    "a: {studded: [base.top, base.left, lid.top], fastener: M300 stud}",
    "a: {pinned: [wheel, shaft], fastener: no. 99 taper pin}",
    "a: {pinned: [wheel.bore, shaft.seat], fastener: 9999 mm dowel pin}",
    "a: {keyed: [lid.top, box.top], fastener: no. 404 woodruff key}",
    "a: {clipped: [lid.top, wheel.bore], fastener: internal circlip}",
    "a: {clipped: [lid.top, shaft], fastener: e-clip}",
    "a: {riveted: [lid, wheel.bore], fastener: 99 in x 99 in rivet}",
    "a: {dowelled: [lid.top, wheel.bore], fastener: 99 mm dowel pin}",
    "a: {clamped: [lid.top, box.top], fastener: 1/4 x 40 ME grub screw}",
    "a: {buttoned: [base.top, base.left], fastener: no. 6 wood screw}",
)


@pytest.mark.parametrize("joint", HOSTILE)
def test_nothing_makes_it_fall_over(joint: str, compile_text: Callable[..., Outcome]) -> None:
    outcome = compile_text(f"{HEAD}{PARTS}joints:\n  {joint}\n")
    assert "plugin-failed" not in {one.code.name for one in outcome.findings}
    assert all(one.message and len(one.message) < 300 for one in outcome.findings)
