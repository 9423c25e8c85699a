"""Specs of one shaft between two cheeks, and of three that stand beside one another in a plate."""

from __future__ import annotations

HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm}\n"
_BORE = "features: {bore: {reamed: to suit, depth: through}}"

# A wheel between two cheeks on a thin axle, belted or geared to a far one.
AXLE = (
    HEAD
    + """parts:
  cheek:
    material: %(metal)s
    quantity: 2
    plate: {length: 60 mm, width: 40 mm, thickness: %(thick)s}
    features: {bore: {reamed: to suit, depth: through, at: 15 mm from left}}
  axle:
    material: silver steel
    turned: [{name: journal, diameter: %(across)s, length: %(long)s}]
  wheel:
    material: brass
    disc: {diameter: 30 mm, thickness: 6 mm}
    features: {bore: {reamed: to suit, depth: through}}
  far: {material: brass, disc: {diameter: 30 mm, thickness: 6 mm}}
joints:
  ⟪1axle in cheeks⟫1: {runs_in: [axle.journal, cheek.bore], duty: slow and oiled%(fit)s}
  wheel on axle: {retained: [wheel.bore, axle.journal]}
shafts:
  axle: {along: [cheek.bore, left, wheel, right, cheek.bore], apart: %(apart)s}
bought:
  left:  {what: spacer, sizes: {length: %(left)s}}
  right: {what: spacer, sizes: {length: %(right)s}}
drive:
  motor: {turns: [axle], by: motor, speeds: [%(speed)s]%(torque)s}
  ⟪2belt⟫2: %(drive)s
"""
)

_USUAL = {
    "metal": "brass",
    "thick": "6 mm",
    "across": "4 mm",
    "long": "60 mm",
    "fit": "",
    "left": "5 mm",
    "right": "5 mm",
    "apart": "16.15 mm",
    "speed": "600 r/min",
    "torque": "",
    "drive": "{belted: [wheel, far], belt: flat, diameters: [30 mm, 30 mm], centres: 90 mm, "
    "pull: 20 N}",
}


def axle(mark: int = 0, /, **other: str) -> str:
    """The axle with some of it otherwise; the mark is left at joint 1 or drive 2, or nowhere."""
    text = AXLE % {**_USUAL, **other}
    for number in (1, 2):
        kept = number == mark
        text = text.replace(f"⟪{number}", "⟪" if kept else "")
        text = text.replace(f"⟫{number}", "⟫" if kept else "")
    return text


def belt(pull: str) -> str:
    """The belt of the axle, put on with another pull."""
    return _USUAL["drive"].replace("20 N", pull)


def three(apart: str, *, up: str = "0 mm", marked: bool = False) -> str:
    """Pinion and wheel on shafts that stand in a plate, and a third shaft beside the wheel.

    The third stands `apart` from the left end of the plate; `up` is a spacer under the wheel.
    """
    bores = "".join(
        f"      {name}: {{reamed: to suit, depth: through, at: {at} from left}}\n"
        for name, at in (("one", "20 mm"), ("two", "56.05 mm"), ("three", apart))
    )
    shafts = "".join(
        f"  {name}: {{material: silver steel, turned: [{{name: journal, diameter: 4 mm, "
        f"length: 40 mm}}, {{name: cap, diameter: 8 mm, length: 3 mm}}]}}\n"
        for name in ("a", "b", "c")
    )
    wheels = "".join(
        f"  {name}: {{material: brass, gear: {{module: 1 mm, teeth: {teeth}, width: 6 mm}}, "
        f"{_BORE}}}\n"
        for name, teeth in (("pinion", 18), ("wheel", 54))
    )
    spacer = f"  under: {{what: spacer, sizes: {{length: {up}}}}}\n" if up != "0 mm" else ""
    row = "plate.two, under, wheel" if spacer else "plate.two, wheel"
    wheel = "⟪wheel⟫" if marked and not spacer else "wheel"
    name = "⟪x⟫" if marked and spacer else "x"
    return (
        f"{HEAD}parts:\n  plate:\n    material: brass\n"
        f"    block: {{length: 160 mm, width: 40 mm, height: 12 mm}}\n    features:\n{bores}"
        f"{shafts}{wheels}"
        + (f"bought:\n{spacer}" if spacer else "")
        + "joints:\n"
        + "".join(
            f"  {one} in plate: {{runs_in: [{one}.journal, plate.{hole}], duty: slow and oiled}}\n"
            for one, hole in (("a", "one"), ("b", "two"), ("c", "three"))
        )
        + "  pinion on a: {retained: [pinion.bore, a.journal]}\n"
        "  wheel on b: {retained: [wheel.bore, b.journal]}\n"
        "shafts:\n  a: {along: [plate.one, pinion]}\n"
        f"  b: {{along: [{row}]}}\n  c: {{along: [plate.three, c.cap]}}\n"
        "stands: plate\ndrive:\n"
        "  hand: {turns: [a], by: hand, speeds: [60 r/min], force: 5 N, radius: 20 mm}\n"
        f"  {name}: {{meshes: [pinion, {wheel}]}}\n"
    )


def unstopped(*, marked: bool = False, collar: str = "") -> str:
    """Helical gears on seats beside the plate, on shafts without a row, or each with a collar.

    A collar is a step thicker than the bore, at the other end of the journal.
    """
    head, tail = three("130 mm").split("shafts:\n")
    text = head + "stands: plate\ndrive:" + tail.split("drive:")[1]
    steps = (
        "{name: journal, diameter: 4 mm, length: 40 mm}, {name: cap, diameter: 8 mm, length: 3 mm}"
    )
    assert steps in text
    text = text.replace(
        steps,
        collar + "{name: journal, diameter: 4 mm, length: 12 mm}, "
        "{name: seat, diameter: 4 mm, length: 8 mm}",
    )
    for one in ("pinion.bore, a", "wheel.bore, b"):
        text = text.replace(f"{one}.journal", f"{one}.seat")
    name = "⟪x⟫" if marked else "x"
    return text.replace(
        "x: {meshes: [pinion, wheel]", name + ": {meshes: [pinion, wheel], helix: 20 deg"
    )


def rows(third: str, *, spacer: float = 2) -> str:
    """Three shafts between two cheeks that stand nowhere: their rows alone tell what lies where.

    The third stands `third` from the left end of the cheeks; the pinion lies behind a spacer of so
    many mm.
    """
    bores = "".join(
        f"      {name}: {{reamed: to suit, depth: through, at: {at} from left}}\n"
        for name, at in (("one", "20 mm"), ("two", "56.05 mm"), ("three", third))
    )
    shafts = "".join(
        f"  {name}: {{material: silver steel, turned: [{{name: journal, diameter: 4 mm, "
        "length: 40 mm}]}\n"
        for name in ("a", "b", "c")
    )
    wheels = "".join(
        f"  {name}: {{material: brass, gear: {{module: 1 mm, teeth: {teeth}, width: 6 mm}}, "
        f"{_BORE}}}\n"
        for name, teeth in (("pinion", 18), ("wheel", 54), ("far", 18), ("idle", 12))
    )
    runs = "".join(
        f"  {one} in cheeks: {{runs_in: [{one}.journal, cheek.{hole}], duty: slow and oiled}}\n"
        for one, hole in (("a", "one"), ("b", "two"), ("c", "three"))
    )
    return (
        f"{HEAD}parts:\n  cheek:\n    material: brass\n    quantity: 2\n"
        f"    plate: {{length: 200 mm, width: 40 mm, thickness: 4 mm}}\n    features:\n{bores}"
        f"{shafts}{wheels}bought:\n"
        f"  under: {{what: spacer, sizes: {{length: {spacer:g} mm}}}}\n"
        f"  past:  {{what: spacer, sizes: {{length: {13.85 - spacer:g} mm}}}}\n"
        "  over: {what: spacer, sizes: {length: 2 mm}}\n"
        "  on:   {what: spacer, sizes: {length: 11.85 mm}}\n"
        f"joints:\n{runs}"
        "  pinion on a: {retained: [pinion.bore, a.journal]}\n"
        "  wheel on b: {retained: [wheel.bore, b.journal]}\n"
        "  far on c: {retained: [far.bore, c.journal]}\n"
        "shafts:\n  a: {along: [cheek.one, under, pinion, past, cheek.one], apart: 20 mm}\n"
        "  b: {along: [cheek.two, over, wheel, on, cheek.two], apart: 20 mm}\n"
        "  c: {along: [cheek.three, far, cheek.three], apart: 20 mm}\n"
        "drive:\n"
        "  hand: {turns: [a], by: hand, speeds: [60 r/min], force: 5 N, radius: 20 mm}\n"
        "  x: {meshes: [pinion, wheel]}\n"
        "  y: {meshes: [far, idle]}\n"
        "  motor: {turns: [c], by: motor, speeds: [60 r/min]}\n"
    )
