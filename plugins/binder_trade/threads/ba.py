"""Turns the number of a BA thread into its pitch and diameter."""

from __future__ import annotations

from typing import Final

from binder_trade.threads.basic import Size

NUMBERS: Final = range(17)


def ba_pitch_mm(number: int) -> float:
    """The pitch in mm: 0.9 to the power of the number, to 0.01 mm (BS 93 annex A)."""
    return float(round(0.9**number, 2))


def ba_major_mm(number: int) -> float:
    """The diameter in mm: 6 p^1.2 of the unrounded pitch, to two figures (BS 93 annex A)."""
    return float(f"{6 * (0.9**number) ** 1.2:.2g}")


def ba_sizes() -> tuple[Size, ...]:
    """0 BA to 16 BA, the sizes that BS 93 lists."""
    return tuple(
        Size("BA", f"{one} BA", ba_major_mm(one), ba_pitch_mm(one), is_coarse=True)
        for one in NUMBERS
    )
