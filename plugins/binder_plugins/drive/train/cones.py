"""Ratios and a smallest pulley to the steps of both, solved so that one belt serves all."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from binder.api import Diagnostic, Joint, Size
from binder_plugins.drive import belt_codes
from binder_trade.belts.cone import cone_from_driver, cone_from_first
from binder_trade.belts.run import Layout, length_of, run
from binder_trade.explained import NotDefined

Steps = tuple[tuple[Fraction, ...], ...]
Rows = Sequence[tuple[Fraction | None, ...]]
# As a lathe is read; to the micrometre where the belt would differ by more from step to step.
_PLACES = (100, 1000)
_APART_MM = 0.01
_ABOVE = "write turns of the driven for one of the driver, above nothing"


def cone_steps(joint: Joint) -> Steps | Diagnostic:
    """The running diameters in mm, in tidy figures; `ratios` are driven turns for one."""
    entry = joint.entry
    smallest, centres = getattr(entry, "smallest", None), getattr(entry, "centres", None)
    ratios = [float(one.exact) for one in entry.ratios]  # type: ignore[attr-defined]
    if not isinstance(smallest, Size) or not isinstance(centres, Size):
        return _refused(joint, "the ratios want a smallest pulley and the centres",
                        "add `smallest: 24 mm` and `centres: 180 mm`")  # fmt: skip
    if min(ratios) <= 0:
        return _refused(joint, f"a ratio of {min(ratios):g} is none", _ABOVE)
    try:
        return _solved(ratios, smallest.mm, centres.mm, layout_of(joint))
    except NotDefined as refusal:
        return _refused(joint, refusal.reason, refusal.way_out)


def _solved(ratios: list[float], smallest: float, centres: float, layout: Layout) -> Steps:
    """The slowest step has the smallest driver, the fastest the smallest driven pulley."""
    slow, fast = min(ratios), max(ratios)
    first, driver = (slow, smallest) if 1 / slow >= fast else (fast, smallest * fast)
    order = [first, *(one for one in ratios if one != first)]
    cone = cone_from_first(driver, order, centres, layout)
    made = dict(zip(order, cone.runs, strict=True)) if len(set(ratios)) == len(ratios) else {}
    if not made:
        raise NotDefined("two steps of one ratio", "write each ratio once")
    pairs = [(made[one].first_mm, made[one].second_mm) for one in ratios]
    return _rounded(pairs, centres, layout)


def suited_steps(rows: Rows, centres: float, layout: Layout) -> Steps:
    """The running diameters in mm, with those that are None worked out from their partners.

    The belt is that of the first step of which both are told. Raises NotDefined where no step
    is, or where both of one are left open.
    """
    known = next(((one, two) for one, two in rows if one is not None and two is not None), None)
    if known is None:
        raise NotDefined("no step has both of its diameters", "write one step of both pulleys")
    if any(one is None and two is None for one, two in rows):
        raise NotDefined(
            "a step is to suit on both pulleys", "write one of the two, or `ratios:` for all"
        )
    length = run(float(known[0]), float(known[1]), centres, layout).length_mm
    pairs = [_suited(one, two, length, centres, layout) for one, two in rows]
    return _rounded(pairs, centres, layout)


def _rounded(pairs: Sequence[tuple[float, float]], centres: float, layout: Layout) -> Steps:
    """The diameters in as few places as keep the belt of one length."""
    steps: Steps = ()
    for places in _PLACES:
        steps = tuple(tuple(_whole(size, places) for size in pair) for pair in pairs)
        lengths = [length_of(float(a), float(b), centres, layout) for a, b in steps]
        if max(lengths) - min(lengths) < _APART_MM:
            break
    return steps


def _suited(
    one: Fraction | None, two: Fraction | None, length: float, centres: float, layout: Layout
) -> tuple[float, float]:
    """A belt is as long whichever of the two drives."""
    if one is not None and two is not None:
        return float(one), float(two)
    given = float(one if one is not None else two or 0)
    mate = cone_from_driver([given], length, centres, layout).runs[0].second_mm
    return (given, mate) if one is not None else (mate, given)


def _whole(size: float, places: int) -> Fraction:
    return Fraction(round(size * places), places)


def layout_of(joint: Joint) -> Layout:
    """How the belt is laid."""
    if getattr(joint.entry, "crossed", False):
        return "crossed"
    return "quarter-turn" if getattr(joint.entry, "quarter_turn", False) else "open"


def _refused(joint: Joint, reason: str, way_out: str) -> Diagnostic:
    return belt_codes.CONE_IMPOSSIBLE.at(joint.at, reason, help=way_out)
