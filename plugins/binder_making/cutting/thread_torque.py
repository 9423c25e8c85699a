"""What a die or a tap turns work with, and how much of the work must be gripped against it."""

from __future__ import annotations

from binder_trade.explained import positive

# What a square millimetre of chip resists with in mild steel, in N; from memory of what makers
# of taps print with the formula below.
_RESISTS_N_MM2 = 2000.0
_LEVER = 8.0
_MM_PER_M = 1000.0
# What a hand-tightened grip bears along the work, in N for each square millimetre of diameter
# times length: so a coarse thread cut on the bar that is gripped asks no longer a grip than the
# bar is thick. A collet closes all round, and bears twice as much. Common practice, no source.
_BEARS_N_MM2 = 15.5
_ALL_ROUND = 2.0


def thread_torque(pitch_mm: float, major_mm: float) -> float:
    """The torque of a tap or die in mild steel in N m: p² × d × k / 8000.

    Source: the formula of tap makers' catalogues, from memory. Raises NotDefined for what is not
    positive.
    """
    pitch, major = positive(pitch_mm, "a pitch"), positive(major_mm, "a thread")
    return pitch**2 * major * _RESISTS_N_MM2 / (_LEVER * _MM_PER_M)


def grip_for(torque_nm: float, across_mm: float, *, is_collet: bool = False) -> float:
    """How long in mm work of a diameter is gripped, so that a torque does not turn it.

    The grip bears on diameter times length, at half the diameter: common practice, no source.
    Raises NotDefined for what is not positive.
    """
    across = positive(across_mm, "a grip")
    bears = _BEARS_N_MM2 * (_ALL_ROUND if is_collet else 1.0)
    return 2 * positive(torque_nm, "a torque") * _MM_PER_M / (bears * across**2)
