"""A gear's depth of cut as it is found: a few spaces short of it, the span over them, then down."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.form_cutters import GROUND, SWING_MM
from binder_plugins.operations.tried_early import is_on_mandrel
from binder_trade.explained import NotDefined
from binder_trade.gears.gear import Gear
from binder_trade.gears.measuring import Span, span
from binder_trade.gears.racks import Rack, rack

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act, Grip
    from binder_plugins.operations.toothings import Toothing
    from binder_plugins.operations.work import Work

# How much short of its depth a gear is tried, in modules; common practice, no source.
_SHORT = 0.1
# Minutes to set a cutter in its holder; common practice, no source.
_SET_MIN = 3.0
_MANY = 3
_TOO_MUCH = 0.01


def ground_trial(
    work: Work, one: Toothing, teeth: Act, grip: Grip, machine: str, depths: int
) -> Iterator[Act]:
    """A cutter that is ground here, set in its holder and tried in scrap: both are there by now.

    In as many `depths` as the work: the scrap bends the mandrel as that does.
    """
    if not one.cutter.startswith(GROUND) or not machine:
        return
    on = "disc, on the mandrel" if is_on_mandrel(grip) else "piece, held as the work will be"
    whose = "a cutter ground here" if "; or " in one.cutter else "the cutter"
    cut = work.act(
        "mill",
        f"set {whose} in its holder, its tip {work.mm(SWING_MM)} from the axis, its back end no "
        "farther out on the other side, the grub screw tight on its flat; try it first: three "
        f"spaces in the scrap {on}{_in(depths)}; where the thin sheet of the space does not lie in "
        "them all round, stone the cutter; then the work in its place",
        machine=machine,
        feature=one.feature,
        tool=one.cutter,
        size=one.across,
        tags=("on-scrap",),
    )
    yield replace(cut, speed=teeth.speed, feed=teeth.feed, run=_MANY * depths + _SET_MIN)


def _in(depths: int) -> str:
    return f", each in {depths} depths as the work is cut" if depths > 1 else ""


def trial(work: Work, one: Toothing, teeth: Act, machine: str, *, is_begun: bool) -> Iterator[Act]:
    """The spaces cut short, and the span that says how much deeper the cutter goes.

    `is_begun` where the cutter has been set already, and all spaces were cut less deep.

    A cutter that goes deeper by e makes the span less by 2 e sin α (ISO 21771, a shift of e).
    """
    found = _span(work, one)
    across = found.across if found is not None else _MANY
    short = _SHORT * one.module
    begin = "" if is_begun else "centre the cutter on the axis, touch the blank, "
    cut = work.act(
        "mill",
        f"{begin}cut {across + 1} spaces side by side "
        f"{work.mm(one.depth - short)} deep, {work.mm(short)} short",
        machine=machine,
        feature=one.feature,
        tool=one.cutter,
        size=one.across,
        tags=("tried",),
    )
    yield replace(cut, speed=teeth.speed, feed=teeth.feed, run=float(across + 1))
    yield work.act(
        "measure",
        f"{_spanned(work, found)}: for each {work.mm(_TOO_MUCH)} that it is too much go "
        f"{work.mm(_deeper(one))} deeper, cut the same spaces again and measure again; then lock "
        "the depth",
        feature=one.feature,
        tool=_read_with(work, found),
        tags=("tried",),
        spoils="anvils that bear on a tip or a burr",
    )


def _spanned(work: Work, found: Span | None) -> str:
    if found is None:
        return "measure over the teeth between them, to the size under Teeth"
    return f"measure over {found.across} teeth, {work.mm(found.span_mm)} when it is deep enough"


def _deeper(one: Toothing) -> float:
    """How much deeper in mm for a span that is `_TOO_MUCH`."""
    return _TOO_MUCH / (2 * math.sin(_rack(one).angle))


def _rack(one: Toothing) -> Rack:
    return rack("20 DP") if one.is_dp else rack("A")


def _span(work: Work, one: Toothing) -> Span | None:
    """The span of a plain gear; None where its drive shifts or leans it, which is told there."""
    if _is_special(work):
        return None
    try:
        return span(Gear(one.count, one.module, _rack(one)))
    except NotDefined:
        return None


def _is_special(work: Work) -> bool:
    entries = [getattr(work.item, "shape", None)]
    entries += [one.entry for one in work.design.joints.values() if work.name in one.items]
    return any(
        getattr(entry, key, None) for entry in entries
        for key in ("shift", "helix", "pressure_angle")
    )  # fmt: skip


def _read_with(work: Work, found: Span | None) -> str:
    """A caliper, whose thin jaws go in between teeth where the anvils of a micrometer do not."""
    size = found.span_mm if found is not None else 0.0
    able = (
        one.name
        for one in work.tools
        if "caliper" in one.name and "outside" in one.measures and one.low_mm <= size <= one.high_mm
    )
    return next(able, "caliper, its thin jaws")
