"""Ratios and a smallest pulley to the steps of both, solved so that one belt serves all."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from binder.api import Diagnostic, Joint, Size
from binder_plugins.drive import belt_codes
from binder_trade.belts.cone import cone_from_driver, cone_from_first
from binder_trade.belts.run import Layout, run
from binder_trade.explained import NotDefined

Steps = tuple[tuple[Fraction, ...], ...]
Rows = Sequence[tuple[Fraction | None, ...]]
# So that the belt differs by less than a hundredth of a millimetre from step to step.
_MICROMETRES = 1000
_ABOVE = "write turns of the driven for one of the driver, above nothing"


def cone_steps(joint: Joint) -> Steps | Diagnostic:
    """The running diameters in mm, to the micrometre; `ratios` are driven turns for one."""
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
    return tuple((_whole(made[one].first_mm), _whole(made[one].second_mm)) for one in ratios)


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
    return tuple(_suited(one, two, length, centres, layout) for one, two in rows)


def _suited(
    one: Fraction | None, two: Fraction | None, length: float, centres: float, layout: Layout
) -> tuple[Fraction, Fraction]:
    """A belt is as long whichever of the two drives."""
    if one is not None and two is not None:
        return one, two
    given = one if one is not None else two or Fraction(0)
    mate = cone_from_driver([float(given)], length, centres, layout).runs[0].second_mm
    return (given, _whole(mate)) if one is not None else (_whole(mate), given)


def _whole(size: float) -> Fraction:
    return Fraction(round(size * _MICROMETRES), _MICROMETRES)


def layout_of(joint: Joint) -> Layout:
    """How the belt is laid."""
    if getattr(joint.entry, "crossed", False):
        return "crossed"
    return "quarter-turn" if getattr(joint.entry, "quarter_turn", False) else "open"


def _refused(joint: Joint, reason: str, way_out: str) -> Diagnostic:
    return belt_codes.CONE_IMPOSSIBLE.at(joint.at, reason, help=way_out)
