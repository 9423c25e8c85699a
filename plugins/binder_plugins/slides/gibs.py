"""A slide's gib to what it is made and set with: the strip, its screws, and their holes."""

from __future__ import annotations

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
from binder_plugins.slides.astride import beside_mm
from binder_plugins.slides.facts import SlideFact
from binder_plugins.slides.gib_holes import below_face, beside_slot, screw_holes, screw_threads
from binder_plugins.slides.gib_pieces import gib_hardware, gib_items, made_pieces
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
# of a thick wall: its shank is larger than its thread. Common practice,
# no source.
_THREAD = 2.5


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
        for item, count in gib_items(fact, gib, setting, design):
            bought.append(item)
            told += [NumberOff(item.name, count), gib_hardware(fact, item, count)]
        told += made_pieces(fact, gib, setting, design)
        if setting is not None:
            half = screw_holes(fact, setting, design.units)
            told += [half, beside_slot(fact, setting, half), screw_threads(fact, setting)]
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
    lean = (slide.female.depth_mm - below_face(fact)) / tan(radians(slide.angle_deg))
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
