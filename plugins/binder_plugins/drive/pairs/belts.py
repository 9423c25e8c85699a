"""A belt drive to the run of its belt on every step, and what it is cut to."""

from __future__ import annotations

from collections.abc import Mapping

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.drive.pairs.facts import BeltFact
from binder_plugins.drive.pairs.frame import centres_in_frame
from binder_plugins.drive.standing import centres_as_placed
from binder_plugins.drive.train.bodies import Body
from binder_plugins.drive.train.cones import Steps, layout_of
from binder_plugins.drive.train.pulleys import belt_steps
from binder_trade.belts.cone import cone_from_driver
from binder_trade.belts.round_belt import cut_length
from binder_trade.belts.run import Layout, Run, run
from binder_trade.explained import NotDefined

_STRETCH = 0.10


def belt_fact(joint: Joint, of: Mapping[str, Body], design: Design) -> BeltFact | None:
    """The belt of two pulleys; None where diameters or centres are not told."""
    steps = belt_steps(joint, design)
    if isinstance(steps, Diagnostic) or len(joint.ends) != 2:
        return None
    centres = _centres(joint, of, design)
    if centres is None:
        return None
    entry = joint.entry
    section = getattr(entry, "section", None)
    thick = section.mm if isinstance(section, Size) else 0.0
    kind = str(getattr(entry, "belt", None) or "flat")
    if kind == "toothed":
        steps = _pitch_circles(steps, thick)
    layout = layout_of(joint)
    try:
        runs = tuple(run(float(a), float(b), centres, layout) for a, b in steps)
    except NotDefined as refusal:
        return BeltFact(
            joint.name, kind, thick, centres, (), 0.0, None, (), refusal.reason, refusal.way_out
        )
    lengths = [one.length_mm for one in runs]
    a, b = joint.ends
    told = a.item in of and b.item in of
    return BeltFact(
        subject=joint.name,
        placed=centres_as_placed(of[a.item].items, of[b.item].items, design) if told else None,
        belt=kind,
        section=thick,
        centres=centres,
        runs=runs,
        apart=max(lengths) - min(lengths),
        free=_free(kind, runs, thick),
        suited=_suited(runs, layout),
    )


def _pitch_circles(steps: Steps, pitch: float) -> Steps:
    """Teeth to pitch diameters: pitch × teeth / π."""
    from fractions import Fraction
    from math import pi

    return tuple(tuple(Fraction(float(one) * pitch / pi) for one in row) for row in steps)


def _centres(joint: Joint, of: Mapping[str, Body], design: Design) -> float | None:
    said = getattr(joint.entry, "centres", None)
    if isinstance(said, Size):
        return said.mm
    a, b = joint.ends
    if a.item in of and b.item in of:
        bodies = of[a.item].items, of[b.item].items
        return centres_in_frame(*bodies, design) or centres_as_placed(*bodies, design)
    return None


def _free(kind: str, runs: tuple[Run, ...], thick: float) -> float | None:
    """What a round cord is cut to before it is welded."""
    if kind != "round" or not thick:
        return None
    try:
        return cut_length(min(one.length_mm for one in runs), thick, _STRETCH).free_mm
    except NotDefined:
        return None


def _suited(runs: tuple[Run, ...], layout: Layout) -> tuple[float, ...]:
    """The driven diameters that give every step the belt of the first, exactly."""
    if len(runs) < 2:
        return ()
    first = runs[0]
    try:
        cone = cone_from_driver(
            [one.first_mm for one in runs], first.length_mm, first.centres_mm, layout
        )
    except NotDefined:
        return ()
    return tuple(one.second_mm for one in cone.runs)
