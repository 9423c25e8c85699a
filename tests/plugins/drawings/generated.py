"""Forty parts that nobody thought of: the same ones in every run, of all the usual kinds."""

from __future__ import annotations

import random
from collections.abc import Callable

HEAD = "format: 1\nmodel: {title: Forty parts, issue: A, units: mm}\nparts:\n"
_SIZES = (4, 5, 6, 8, 10, 12, 14, 16, 18, 20, 24)


def spec() -> str:
    """A spec of forty parts."""
    dice = random.Random(1)
    makers: tuple[Callable[[random.Random], str], ...] = (_turned, _bush, _plate, _block)
    parts = [f"  part{n}:\n{makers[n % len(makers)](dice)}" for n in range(40)]
    return f"{HEAD}{''.join(parts)}"


def _features(lines: list[str]) -> str:
    return "    features:\n" + "".join(f"      {line}\n" for line in lines) if lines else ""


def _turned(dice: random.Random) -> str:
    across = [dice.choice(_SIZES) for _ in range(dice.randint(2, 5))]
    steps = [
        f"      - {{name: s{n}, diameter: {size} mm, length: {dice.randint(5, 24)} mm}}\n"
        for n, size in enumerate(across)
    ]
    lines = []
    if dice.random() < 0.6:
        lines.append("oil: {drilled: 1.5 mm, across: s1, depth: through}")
    if dice.random() < 0.5:
        lines.append("neck: {grooved: 1.2 mm, on: s0, depth: 0.5 mm}")
    if dice.random() < 0.5:
        lines.append("end: {tapped: M3, on: s0, depth: 5 mm}")
    return (
        "    material: mild steel\n    stock: round bar\n    turned:\n"
        + "".join(steps)
        + _features(lines)
    )


def _bush(dice: random.Random) -> str:
    outside = dice.choice(_SIZES[4:])
    bore = outside // 2
    # A size that no bar has: nobody asks for a joint that says why it fits.
    lines = [f"bore: {{bored: {bore}.3 mm, on: body, depth: through}}"]
    if dice.random() < 0.5:
        lines.append("lead: {chamfered: 0.5 mm, on: body}")
    if dice.random() < 0.5:
        lines.append("oil: {drilled: 1 mm, across: body, at: 4 mm from left, depth: through}")
    return (
        "    material: bronze\n    stock: round bar\n    turned:\n"
        f"      - {{name: body, diameter: {outside} mm, length: {dice.randint(10, 30)} mm}}\n"
        f"      - {{name: flange, diameter: {outside + 6} mm, length: 3 mm}}\n"
    ) + _features(lines)


def _plate(dice: random.Random) -> str:
    long, wide = dice.randint(40, 110), dice.randint(30, 60)
    thick = dice.choice((2, 3, 5, 10))
    lines = []
    for n in range(dice.randint(1, 4)):
        left, front = 8 + n * (long - 16) // 4, dice.randint(8, wide - 8)
        lines.append(
            f"hole{n}: {{drilled: {dice.choice((2, 3, 4))} mm, depth: through, "
            f'at: "{left} mm from left, {front} mm from front"}}'
        )
    if dice.random() < 0.5:
        lines.append("corners: {rounded: 3 mm, on: edges}")
    return (
        f"    material: brass\n    stock: {thick} mm plate\n"
        f"    plate: {{length: {long} mm, width: {wide} mm, thickness: {thick} mm}}\n"
    ) + _features(lines)


def _block(dice: random.Random) -> str:
    long, wide, high = dice.randint(30, 70), dice.randint(24, 40), dice.randint(20, 30)
    lines = ["bore: {bored: 8.3 mm, on: front, depth: through, at: 10 mm from underside}"]
    if dice.random() < 0.7:
        lines.append("screws: {tapped: M3, on: top, depth: 6 mm, off: 2, pattern: 16 mm apart}")
    if dice.random() < 0.6:
        lines.append("end: {drilled: 3 mm, on: right, depth: 8 mm, at: 5 mm from top}")
    if dice.random() < 0.5:
        lines.append("under: {drilled: 2 mm, on: underside, depth: 4 mm, at: 6 mm from left}")
    return (
        "    material: mild steel\n"
        f"    block: {{length: {long} mm, width: {wide} mm, height: {high} mm}}\n"
    ) + _features(lines)
