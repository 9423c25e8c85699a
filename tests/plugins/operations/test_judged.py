"""What is judged of tools, reach and metals, each at its place; and the like that is in order."""

from __future__ import annotations

import pytest

from binder_plugins.operations.judging.reach import flute_length
from tests.plugins.operations.conftest import BUILT_IN, HEAD, Plan, marked, without

BLOCK = "block: {length: 60 mm, width: 30 mm, height: 20 mm}"
STEEL = "material: mild steel"
PIECE = "{material: mild steel, block: {length: 30 mm, width: 20 mm, height: 6 mm}}"


def part(text: str, more: str = "", place: str = "part") -> str:
    """A spec of one part, and what follows it."""
    return f"{HEAD}  {place}: {{{text}}}\n{more}"


def turned(steps: str, feature: str, bar: str = "12 mm round bar") -> str:
    """A turned part of mild steel with a feature."""
    return part(f"{STEEL}, stock: {bar}, turned: [{steps}], features: {{{feature}}}")


def joined(one: str, how: str) -> str:
    """Two pieces in a joint that the finding points at."""
    return (
        f"{HEAD}  one: {one}\n  other: {PIECE}\njoints:\n  ⟪it⟫: {{{how}: [one.top, other.top]}}\n"
    )


def block_of(material: str, more: str = "") -> str:
    """A small block."""
    size = "block: {length: 30 mm, width: 20 mm, height: 6 mm}"
    return f"{{material: {material}, {size}{more}}}"


FEW_DRILLS = BUILT_IN.replace("metric: 1 mm to 13 mm by 0.1 mm", "metric: [1 mm, 3 mm, 5 mm, 6 mm]")
CASES: dict[str, tuple[str, str]] = {
    "drill-not-owned": (
        part(f"{STEEL}, {BLOCK}, features: {{⟪it⟫: {{drilled: 4 mm, on: top, depth: through}}}}"),
        FEW_DRILLS,
    ),
    "reamer-without-drill": (
        part(f"{STEEL}, {BLOCK}, features: {{⟪it⟫: {{reamed: 4 mm, on: top, depth: through}}}}"),
        FEW_DRILLS,
    ),
    "slot-cutter-not-owned": (
        part(f"{STEEL}, {BLOCK}, features: {{⟪it⟫: {{slotted: 0.8 mm, on: top, depth: 2 mm}}}}"),
        "",
    ),
    "knurl-not-owned": (
        turned("{name: head, diameter: 12 mm, length: 20 mm}", "⟪it⟫: {knurled: 0.6 mm, on: head}"),
        "",
    ),
    "drill-turns-too-slowly": (
        part(
            f"material: brass, {BLOCK},"
            " features: {⟪it⟫: {drilled: 0.5 mm, on: top, depth: 2 mm}}"
        ),
        BUILT_IN.replace("metric: 1 mm to 13 mm", "metric: 0.5 mm to 13 mm"),
    ),
    "drill-too-short": (
        part(f"{STEEL}, {BLOCK}, features: {{⟪it⟫: {{drilled: 1.6 mm, on: left, depth: 22 mm}}}}"),
        "",
    ),
    "quill-too-short": (
        part(f"{STEEL}, {BLOCK}, features: {{⟪it⟫: {{drilled: 8 mm, on: left, depth: 52 mm}}}}"),
        without("machines/mills"),
    ),
    "beyond-throat": (
        part(
            f"{STEEL}, plate: {{length: 260 mm, width: 240 mm, thickness: 5 mm}},"
            " features: {⟪it⟫: {drilled: 5 mm, on: top, depth: through}}"
        ),
        without("machines/mills"),
    ),
    "bore-too-deep": (
        turned(
            "{name: body, diameter: 18 mm, length: 40 mm}",
            "⟪it⟫: {bored: 9 mm, on: body, depth: through}",
            "18 mm round bar",
        ),
        "",
    ),
    "taper-bore-too-small": (
        turned(
            "{name: hub, diameter: 18 mm, length: 20 mm}",
            "⟪it⟫: {bored: 9 mm, narrows_to: 8 mm, on: hub, depth: through}",
            "18 mm round bar",
        ),
        "",
    ),
    "vice-too-small": (
        part(
            f"{STEEL}, block: {{length: 120 mm, width: 80 mm, height: 75 mm}}",
            place="⟪part⟫",
        ),
        "",
    ),
    "neck-too-narrow": (
        part(
            f"{STEEL}, stock: 12 mm round bar, turned: [{{name: a, diameter: 12 mm, length: 6 mm}},"
            " {name: neck, diameter: 8 mm, length: 1.5 mm},"
            " {name: b, diameter: 12 mm, length: 6 mm}]",
            place="⟪part⟫",
        ),
        "",
    ),
    "starts-on-slope": (
        turned(
            "{name: a, diameter: 12 mm, length: 20 mm},"
            " {name: cone, taper: 12 mm to 6 mm, length: 10 mm}",
            "⟪it⟫: {drilled: 2 mm, across: cone, at: 5 mm from right, depth: 3 mm}",
        ),
        "",
    ),
    "drill-brushes-step": (
        turned(
            "{name: tail, diameter: 6 mm, length: 10 mm}, {name: flange, diameter: 12 mm,"
            " length: 4 mm}, {name: neck, diameter: 8.3 mm, length: 4 mm}",
            "⟪tie⟫: {drilled: 1 mm, on: flange, depth: 3 mm, pattern: 1 off on 9.4 mm PCD}",
        ),
        "",
    ),
    "tapped-deeper-than-needed": (
        part(f"{STEEL}, {BLOCK}, features: {{⟪it⟫: {{tapped: M3, on: top, depth: through}}}}"),
        "",
    ),
    "melts-in-flame": (joined(block_of("aluminium"), "silver_soldered"), ""),
    "metal-takes-no-solder": (joined(block_of("aluminium"), "soft_soldered"), ""),
    "metal-does-not-weld": (
        HEAD + f"  one: {block_of('leaded steel')}\n"
        "fabrications:\n  ⟪it⟫: {pieces: [2 off one], joined: welded}\n",
        "",
    ),
    "plating-in-flame": (
        joined(block_of("mild steel", ", note: from a galvanised bracket"), "silver_soldered"),
        "",
    ),
    "bend-cracks": (
        part(
            "material: engraving brass, sheet: {length: 60 mm, width: 20 mm, thickness: 2 mm,"
            " bends: [{at: 20 mm, angle: 90 deg, inside: ⟪2 mm⟫}]}"
        ),
        "",
    ),
    "spring-hard-to-wind": (
        part(
            "material: music wire, spring: {kind: compression, wire: 1 mm, mean: 3 mm,"
            " coils: 8, free: 25 mm}",
            place="⟪part⟫",
        ),
        "",
    ),
}

# What is changed in a case so that it is in order: the old words, and the new ones.
IN_ORDER = {
    "drill-not-owned": ("drilled: 4 mm", "drilled: 3 mm"),
    "reamer-without-drill": ("reamed: 4 mm", "bored: 4 mm"),
    "slot-cutter-not-owned": ("slotted: 0.8 mm", "slotted: 2 mm"),
    "knurl-not-owned": ("knurled: 0.6 mm", "knurled: 1 mm"),
    "drill-turns-too-slowly": ("drilled: 0.5 mm", "drilled: 0.9 mm"),
    "drill-too-short": ("depth: 22 mm", "depth: 19 mm"),
    "quill-too-short": ("depth: 52 mm", "depth: 40 mm"),
    "beyond-throat": ("width: 240 mm", "width: 200 mm"),
    "bore-too-deep": ("length: 40 mm", "length: 30 mm"),
    # A bar from 8 mm goes into what is drilled half a millimetre under 9 mm.
    "taper-bore-too-small": ("bored: 9 mm, narrows_to: 8 mm", "bored: 10 mm, narrows_to: 9 mm"),
    "vice-too-small": ("width: 80 mm", "width: 60 mm"),
    "neck-too-narrow": ("length: 1.5 mm", "length: 2 mm"),
    "starts-on-slope": ("taper: 12 mm to 6 mm", "taper: 12 mm to 10 mm"),
    "drill-brushes-step": ("diameter: 8.3 mm", "diameter: 8.1 mm"),
    "tapped-deeper-than-needed": ("depth: through", "depth: 8 mm"),
    "melts-in-flame": ("material: aluminium", "material: copper"),
    "metal-takes-no-solder": ("material: aluminium", "material: brass"),
    "metal-does-not-weld": ("material: leaded steel", "material: mild steel"),
    "plating-in-flame": ("a galvanised bracket", "a rusty bracket"),
    "bend-cracks": ("inside: ⟪2 mm⟫", "inside: ⟪6 mm⟫"),
    "spring-hard-to-wind": ("mean: 3 mm", "mean: 5 mm"),
}


@pytest.mark.parametrize("code", sorted(CASES))
def test_the_finding_points_at_the_mark(code: str, plan: Plan) -> None:
    text, place = marked(CASES[code][0])
    outcome = plan(text, CASES[code][1])
    found = [one for one in outcome.findings if one.code.name == code]
    assert found, [(one.code.name, one.message) for one in outcome.findings]
    span = found[0].span
    assert (span.line, span.column, span.end_line, span.end_column) == place


@pytest.mark.parametrize("code", sorted(CASES))
def test_a_little_change_puts_it_in_order(code: str, plan: Plan) -> None:
    text, workshop = CASES[code]
    old, new = IN_ORDER[code]
    assert old in text
    outcome = plan(marked(text.replace(old, new))[0], workshop)
    assert outcome.design is not None, [one.message for one in outcome.findings]
    assert code not in {one.code.name for one in outcome.findings}


@pytest.mark.parametrize(
    ("across", "flutes"),
    [(1.0, 12), (1.5, 18), (2.0, 24), (2.5, 30), (3.0, 33), (4.0, 43), (5.0, 52), (6.0, 57),
     (8.0, 75), (10.0, 87), (12.0, 101), (13.0, 101)],
)  # fmt: skip
def test_flutes_of_jobber_drills(across: float, flutes: float) -> None:
    """Source: ISO 235 (DIN 338), jobber series, from memory."""
    assert flute_length(across) == flutes


def test_flutes_grow_with_the_drill_and_end_with_the_table() -> None:
    lengths = [flute_length(n / 10) for n in range(2, 200)]
    assert lengths == sorted(lengths)
    assert flute_length(25.0) == 0
