"""A gib and the screws that set it, as small work: what is filed, turned and slotted."""

from __future__ import annotations

from math import ceil
from typing import TYPE_CHECKING

from binder.api import SmallWork, exact, shown_length

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design
    from binder_plugins.slides.facts import SlideFact
    from binder_plugins.slides.gibs import Setting
    from binder_trade.slides import Gib

# Minutes for a strip filed to a slot, for a screw made of rod, and for turning the end of one
# that is bought; and what a piece of rod is longer than its screw, in mm. Common practice, no
# source.
_STRIP_MIN, _SCREW_MIN, _END_MIN = 20.0, 15.0, 5.0
_TO_HOLD_MM = 15


def bevelled(fact: SlideFact, gib: Gib, units: str) -> str:
    """How a square-edged strip becomes a gib that stands lower than the tail."""
    angle = fact.slide.angle_deg if fact.slide is not None else 0.0
    along, high = (shown_length(exact(round(mm, 1)), units) for mm in (gib.flank_mm, gib.height_mm))
    return (
        f"file both long edges to {angle:g}°, leaning alike, till it is {along} wide between them "
        f"and stands {high} high: it must not bear on the floor of the slot nor over its face"
    )


def made_gib(fact: SlideFact, gib: Gib, setting: Setting | None, design: Design) -> SmallWork:
    """The strip, from that of the hardware list."""
    long = shown_length(exact(round(gib.length_mm, 1)), design.units)
    steps = [
        f"file the ends square to {long}; {bevelled(fact, gib, design.units)}",
        "straighten it on the plate, and rub both faces flat on fine paper",
    ]
    if setting is not None:
        steps.append(
            "when the slide has been tried: mark the screws through their holes, and sink a "
            "shallow dimple at each mark, or the strip creeps along"
        )
    return SmallWork(
        subject=f"gib, {fact.joint.name}",
        count=1,
        stock="the brass strip of the hardware list",
        steps=tuple(steps),
        minutes=_STRIP_MIN,
        of=fact.joint.name,
        joints=(fact.joint.name,),
        tools=f"files, protractor, flat plate, fine abrasive cloth, {_reads(gib, design)}",
    )


def _reads(gib: Gib, design: Design) -> str:
    """What the height of the strip is read with."""
    high = exact(round(gib.height_mm, 3))
    finest = design.workshop.finest(high, high, "outside")
    return finest.name if finest is not None else "a borrowed instrument"


def made_screws(
    fact: SlideFact, setting: Setting, how: Sequence[str], design: Design, *, is_sold: bool
) -> Iterator[SmallWork]:
    """The screws that are made of rod, or whose ends are turned; none that serve as they come."""
    if not how:
        return
    count, thread = len(setting.gib.screws_mm), setting.thread
    long = shown_length(exact(setting.screw_mm), design.units)
    turned = [one for one in how if "turned" in one]
    steps = [f"{one}, by light cuts with a keen tool, the end rounded" for one in turned]
    if is_sold:
        yield SmallWork(
            subject=f"gib screws, {fact.joint.name}",
            count=count,
            stock="the grub screws of the hardware list",
            steps=tuple(steps),
            minutes=_END_MIN * count,
            of=fact.joint.name,
            joints=(fact.joint.name,),
            tools=f"{_holder(thread.major_mm, design)}, knife tool",
        )
        return
    across = exact(round(thread.major_mm, 3))
    section = f"{shown_length(across, design.units)} drawn rod"
    sawn = ceil(setting.screw_mm) + _TO_HOLD_MM
    yield SmallWork(
        subject=f"gib screws, {fact.joint.name}",
        count=count,
        stock=f"mild steel, {section}, {shown_length(exact(sawn), design.units)} each",
        steps=(
            (
                "hold the rod in a collet a little out, cut "
                f"{thread.designation} over {long} with the die, a few millimetres at a time"
            ),
            *steps,
            (
                f"part it off or saw it at {long}; held by two of the nuts, one locked against the "
                "other, saw the slot across the other end, deburr; run a nut over it"
            ),
        ),
        minutes=_SCREW_MIN * count,
        of=fact.joint.name,
        material="mild steel",
        form="drawn rod",
        section=(across,),
        section_text=section,
        length=exact(sawn),
        joints=(fact.joint.name,),
        tools=f"{_holder(thread.major_mm, design)}, {thread.designation} die, tailstock holder for "
        "dies, knife tool, hacksaw, piercing saw, files",
    )


def _holder(across: float, design: Design) -> str:
    """A collet for rod so thick in mm where there is one, else the chuck that grips it best."""
    held = design.workshop.holders(exact(round(across, 3)))
    collets = design.workshop.entry.holding.collets
    names = [one.name for one in held]
    return next((one for one in names if one in collets), next(iter(names), ""))
