"""A slide's gib to what it is made and set with: the strip, its screws, and their holes."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil, radians, tan

from binder.api import (
    AsideFact,
    Bought,
    Contribution,
    Design,
    Diagnostic,
    HalfFact,
    HardwareFact,
    MaterialFact,
    Misread,
    NumberOff,
    SmallWork,
    ThreadFact,
    exact,
    read_thread,
    shown_length,
)
from binder_plugins.slides import codes
from binder_plugins.slides.astride import along_of, beside_mm, gib_side
from binder_plugins.slides.facts import Side, SlideFact
from binder_plugins.slides.made import bevelled, made_gib, made_screws
from binder_trade.drills import Drill, NoDrill
from binder_trade.slides import Dovetail, Gib, NotDefined, straight_gib
from binder_trade.threading import TappingDrill, tapping_drill
from binder_trade.threads import NotMade, Thread, from_name

# Common practice, no source: of the slot's depth a gib screw takes so much at the most; what it
# stands out for its nut, in thread diameters; lengths as such screws are sold, in mm.
_OF_DEPTH = 0.7
_FOR_NUT = 1.5
_STEP_MM = 2
# A small tap goes no deeper than this in its own diameters, and no deeper at all from the outside
# of a thick wall: its shank is larger than its thread. The screw's end passes the rest, so much
# under the tapping drill in mm. Common practice, no source.
_THREAD = 2.5
_UNDER = 0.1
# Grub screws are sold no longer than this in diameters (ISO 4026, from memory: M2 to 10 mm).
_SOLD = 5

# What each piece of a gib is for, by what stands after `gib` in its name.
_WHY = {"_screw": "sets the slide", "_nut": "locks its screw", "": "takes up the wear"}


@dataclass(frozen=True, slots=True)
class Setting:
    """A gib with the screws that set it: their thread and its drill, how long they are.

    `wall_mm` is the metal between the side of the part and the slot, `tapped_mm` what of it
    is threaded, from the outside; `reach_mm` how deep a screw's end goes, to the gib pressed home.
    """

    gib: Gib
    thread: Thread
    drill: TappingDrill
    screw_mm: float
    wall_mm: float
    tapped_mm: float
    reach_mm: float


def set_gibs(facts: list[SlideFact], design: Design) -> Contribution:
    """The strip and the screws of each gib as bought items, and the holes on the slot's leaf."""
    bought: list[Bought] = []
    told: list[HardwareFact | NumberOff | HalfFact | AsideFact | ThreadFact | SmallWork] = []
    findings: list[Diagnostic] = []
    for fact in facts:
        gib = gib_of(fact)
        if gib is None:
            continue
        setting = _setting(fact, gib, design)
        for item, count in _items(fact, gib, setting, design):
            bought.append(item)
            told += [NumberOff(item.name, count), _hardware(fact, item, count)]
        told += _made(fact, gib, setting, design)
        if setting is not None:
            half = _holes(fact, setting, design.units)
            told += [half, _aside(fact, setting, half), _threads(fact, setting)]
        elif fact.female.is_made:
            findings.append(_no_room(fact, design))
    return Contribution(facts=told, bought=bought, findings=findings)


def gib_of(fact: SlideFact) -> Gib | None:
    """The strip of a slide, as long as the shorter half; None where there is none."""
    places = (fact.male.place, fact.female.place)
    lengths = [one.length for one in places if one is not None and one.length is not None]
    if fact.slide is None or not fact.slide.gib_mm or not lengths:
        return None
    try:
        return straight_gib(fact.slide, float(min(lengths)))
    except NotDefined:
        return None


def _setting(fact: SlideFact, gib: Gib, design: Design) -> Setting | None:
    """With the largest owned thread that finds room beside the slot; None where none does."""
    slide = fact.slide
    if slide is None:
        return None
    able = [
        one for one in _tapped(design) if one.major_mm <= _OF_DEPTH * slide.female.depth_mm + 1e-6
    ]
    for thread in sorted(able, key=lambda one: -one.major_mm):
        drill = _drill(thread, fact, design)
        if drill is not None:
            wall = max(_wall(fact, slide), 2 * thread.major_mm)
            reach = wall + slide.clearance_mm
            long = ceil((reach + _FOR_NUT * thread.major_mm) / _STEP_MM) * _STEP_MM
            tapped = _tapped_of(wall, thread, drill)
            return Setting(gib, thread, drill, float(long), wall, tapped, reach)
    return None


def _wall(fact: SlideFact, slide: Dovetail) -> float:
    """The metal on the axis of the screws: thicker than at the slot's floor, as the flank leans."""
    lean = (slide.female.depth_mm - _below(fact)) / tan(radians(slide.angle_deg))
    return beside_mm(fact) - slide.female.wide_mm / 2 + lean


def _tapped_of(wall: float, thread: Thread, drill: TappingDrill) -> float:
    """What of a wall is tapped; all of it where next to nothing would be left."""
    most = _THREAD * thread.major_mm
    return most if wall - most > drill.drill.mm else wall


def _tapped(design: Design) -> Iterator[Thread]:
    for tap in design.workshop.taps():
        name = read_thread(tap.designation)
        if isinstance(name, Misread):
            continue
        try:
            yield from_name(name)
        except NotMade:
            continue


def _drill(thread: Thread, fact: SlideFact, design: Design) -> TappingDrill | None:
    owned = [Drill(one.name, float(one.mm), "owned") for one in design.workshop.drills()]
    metal = design.facts.about(MaterialFact, fact.female.end.item)
    try:
        return tapping_drill(thread, owned, material=metal.id if metal is not None else "")
    except (NoDrill, NotDefined):
        return None


def _items(
    fact: SlideFact, gib: Gib, setting: Setting | None, design: Design
) -> Iterator[tuple[Bought, int]]:
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


def _made(
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


def _hardware(fact: SlideFact, item: Bought, count: int) -> HardwareFact:
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


def _holes(fact: SlideFact, setting: Setting, units: str) -> HalfFact:
    places = ", ".join(shown_length(exact(round(mm, 1)), units) for mm in setting.gib.screws_mm)
    below = shown_length(exact(round(_below(fact), 2)), units)
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


def _below(fact: SlideFact) -> float:
    """How far under the face the screws stand, in mm: half way down the slot."""
    return fact.slide.female.depth_mm / 2 if fact.slide is not None else 0.0


def _aside(fact: SlideFact, setting: Setting, half: HalfFact) -> AsideFact:
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
        _below(fact),
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


def _threads(fact: SlideFact, setting: Setting) -> ThreadFact:
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


def _no_room(fact: SlideFact, design: Design) -> Diagnostic:
    least = min((one.major_mm for one in _tapped(design)), default=0.0)
    deep = fact.slide.female.depth_mm if fact.slide is not None else 0.0
    way = f"a slot {shown_length(exact(round(least / _OF_DEPTH, 1)), design.units)} deep, or "
    span = fact.entry.gib.span if fact.entry.gib is not None else fact.joint.at
    return codes.GIB_NOT_SET.at(
        span,
        f"a slot {shown_length(exact(deep), design.units)} deep has no room at its side for the "
        "screws of the gib",
        help=f"{way if least else ''}a smaller tap for the shopping list",
    )
