"""The strip of a gib, its screws and their nuts: what is bought, and what is made of it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from math import ceil
from typing import TYPE_CHECKING

from binder.api import (
    Bought,
    Design,
    HardwareFact,
    SmallWork,
    exact,
    shown_length,
)
from binder_plugins.slides.facts import SlideFact
from binder_plugins.slides.made import bevelled, made_gib, made_screws
from binder_trade.slides import Gib

if TYPE_CHECKING:
    from binder_plugins.slides.gibs import Setting

# The end of a screw passes what of its hole is not tapped, so much under the tapping drill in mm;
# common practice, no source.
_UNDER = 0.1
# Grub screws are sold no longer than this in diameters (ISO 4026, from memory: M2 to 10 mm).
_SOLD = 5
# What each piece of a gib is for, by what stands after `gib` in its name.
_WHY = {"_screw": "sets the slide", "_nut": "locks its screw", "": "takes up the wear"}


def gib_items(
    fact: SlideFact, gib: Gib, setting: Setting | None, design: Design
) -> Iterator[tuple[Bought, int]]:
    """The strip, and its screws and nuts where they find room, each with how many."""
    wide = ceil(gib.blank_mm - 1e-6)
    thick, across, long = (
        shown_length(exact(round(mm, 1)), design.units)
        for mm in (gib.thick_mm, wide, gib.length_mm)
    )
    what = f"brass strip {thick} × {across}, {long} long, gib"
    yield _bought(fact, what, "gib", design, bevelled(fact, gib, design.units)), 1
    if setting is not None:
        screw = _bought(fact, _screw(setting), "gib_screw", design)
        yield screw, len(gib.screws_mm)
        nut = _bought(fact, f"{setting.thread.designation} nut, for the gib", "gib_nut", design)
        yield nut, len(gib.screws_mm)


def made_pieces(
    fact: SlideFact, gib: Gib, setting: Setting | None, design: Design
) -> Iterator[SmallWork]:
    """What is not used as it is bought."""
    yield made_gib(fact, gib, setting, design)
    if setting is not None:
        how = _end(setting) if _is_sold(setting) else (_rod(setting), *_end(setting))
        yield from made_screws(fact, setting, how, design, is_sold=_is_sold(setting))


def _is_sold(setting: Setting) -> bool:
    """Whether a grub screw of that length is sold."""
    return setting.screw_mm <= _SOLD * setting.thread.major_mm


def _rod(setting: Setting) -> str:
    return f"made from {setting.thread.major_mm:g} mm rod, slotted"


def _end(setting: Setting) -> tuple[str, ...]:
    """What is turned down to pass where the hole is not tapped."""
    deep = setting.reach_mm - setting.tapped_mm
    if setting.tapped_mm >= setting.wall_mm:
        return ()
    across = round(setting.drill.drill.mm - _UNDER, 1)
    return (f"its end turned to {across:g} mm over {ceil(deep)} mm",)


def _screw(setting: Setting) -> str:
    """A screw as it is sold; what must be done to it, or what it is made from."""
    long = shown_length(exact(setting.screw_mm), "mm").removesuffix(" mm")
    kind = "grub screw" if _is_sold(setting) else "gib screw"
    how = [] if _is_sold(setting) else [_rod(setting)]
    said = f"{setting.thread.designation} × {long} {kind}"
    return ", ".join([said, *how, *_end(setting), "for the gib"])


def _bought(fact: SlideFact, what: str, stem: str, design: Design, note: str = "") -> Bought:
    own = re.sub(r"[^a-z0-9]+", "_", fact.joint.name.casefold()).strip("_")
    name = f"{stem}_of_{own}" if design.item(stem) is not None else stem
    return Bought(
        name=name,
        title=what,
        at=fact.joint.at,
        quantity=1,
        note=note,
        because="",
        what=what,
        sizes=(),
        measured=(),
        is_salvaged=False,
    )


def gib_hardware(fact: SlideFact, item: Bought, count: int) -> HardwareFact:
    """A piece of the gib as hardware of its joint, with what it is for."""
    is_made = "made from" in item.what
    return HardwareFact(
        subject=f"{fact.joint.name}: {item.name}",
        joint=fact.joint.name,
        name=item.name,
        what=item.what,
        count=count,
        why=_WHY[next(one for one in _WHY if f"gib{one}" in item.name)],
        # What is made here is made when one is lost.
        spares=0 if is_made or item.name.startswith("gib_of") or item.name == "gib" else 1,
        is_made=is_made,
    )
