"""The holes of a gib's screws: where they stand, and how they are made."""

from __future__ import annotations

from math import radians, tan
from typing import TYPE_CHECKING

from binder.api import (
    AsideFact,
    HalfFact,
    ThreadFact,
    exact,
    shown_length,
)
from binder_plugins.slides.astride import along_of, gib_side
from binder_plugins.slides.facts import Side, SlideFact
from binder_trade.slides import Gib

if TYPE_CHECKING:
    from binder_plugins.slides.gibs import Setting

# What a slot may be longer than its gib and still tell its middle, in mm.
_UNDER = 0.1


def screw_holes(fact: SlideFact, setting: Setting, units: str) -> HalfFact:
    """The tapped holes on the leaf of the part that has the slot."""
    places = ", ".join(shown_length(exact(round(mm, 1)), units) for mm in setting.gib.screws_mm)
    below = shown_length(exact(round(below_face(fact), 2)), units)
    return HalfFact(
        subject=f"{fact.joint.name}: {fact.female.end.item} gib screws",
        joint=fact.joint.name,
        item=fact.female.end.item,
        place="gib_screws",
        what=f"tap {len(setting.gib.screws_mm)} × {setting.thread.designation} from the side into "
        f"the slot, drill {setting.drill.drill.name}; {places} from the end of the gib, "
        f"{_stations(fact, setting.gib, units)}{below} below the face",
        mate=str(fact.male.end),
        how=f"mark them on {_where(fact)}, its ends level with those of the "
        f"{_shorter(fact)} at half its travel",
        is_master=False,
    )


def _stations(fact: SlideFact, gib: Gib, units: str) -> str:
    """Where the screws stand along the slot, where it tells the place of the slide's middle."""
    at = along_of(fact)
    if at is None or at.distance is None:
        return ""
    first = at.distance.mm - gib.length_mm / 2
    along = [exact(round(first + one, 1)) for one in gib.screws_mm]
    return f"{', '.join(shown_length(one, units) for one in along)} {at.rest}, "


def _where(fact: SlideFact) -> str:
    side = gib_side(fact)
    return f"the {side}, where the gib lies" if side else "the side where the gib lies"


def _shorter(fact: SlideFact) -> str:
    """The half that the gib is as long as, by the name of its part."""
    male, female = _long(fact.male), _long(fact.female)
    half = fact.female if 0 < female < male else fact.male
    return half.end.item.replace("_", " ")


def _long(side: Side) -> float:
    return float(side.place.length or 0) if side.place is not None else 0.0


def below_face(fact: SlideFact) -> float:
    """How far under the face the screws stand, in mm: half way down the slot."""
    return fact.slide.female.depth_mm / 2 if fact.slide is not None else 0.0


def beside_slot(fact: SlideFact, setting: Setting, half: HalfFact) -> AsideFact:
    """The same holes as they lie in the side of the part, for its drawing and its route."""
    chosen = setting.drill.drill
    return AsideFact(
        half.subject,
        half.item,
        half.place,
        setting.thread.designation,
        setting.thread.major_mm,
        chosen.name,
        chosen.mm,
        setting.wall_mm,
        setting.tapped_mm,
        tuple(setting.gib.screws_mm),
        below_face(fact),
        half.how,
        chosen.mm / 2 / tan(radians(fact.slide.angle_deg)) if fact.slide is not None else 0.0,
        _slot(fact, setting.gib),
        gib_side(fact),
    )


def _slot(fact: SlideFact, gib: Gib) -> str:
    """The slot in whose middle the gib lies: where that is told, or both are of one length."""
    side, at = fact.female, along_of(fact)
    if side.feature is None or not (_long(side) <= gib.length_mm + _UNDER or at is not None):
        return ""
    return side.feature.name


def screw_threads(fact: SlideFact, setting: Setting) -> ThreadFact:
    """The holes of the gib's screws among the tapped holes of the model."""
    item, thread, chosen = fact.female.end.item, setting.thread, setting.drill
    note = "through into the slot"
    if setting.tapped_mm < setting.wall_mm:
        note += f", the outer {setting.tapped_mm:g} mm tapped"
    return ThreadFact(
        subject=f"{item}.gib_screws",
        item=item,
        place="gib_screws",
        designation=thread.designation,
        is_internal=True,
        major=thread.major_mm,
        effective=thread.effective_mm,
        pitch=thread.pitch_mm,
        drill=chosen.drill.name,
        drill_mm=chosen.drill.mm,
        percent=chosen.percent.basis,
        count=len(setting.gib.screws_mm),
        note=note,
    )
