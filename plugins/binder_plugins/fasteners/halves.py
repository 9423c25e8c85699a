"""The ends of a joint to what the fastener finds there: metal, thickness, written holes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction

from binder.api import Design, End, Fabrication, Joint, MaterialFact, NumberOff, Part, PlaceFact
from binder_plugins.fasteners.recesses import Entered, filled, recess_in
from binder_trade.threads import Thread

WOODS = ("hardwood", "softwood", "plywood")
HOLES = ("drilled", "reamed", "bored", "tapped")
# A plain hole passes a screw where it is no wider than this over it.
_WIDEST = 1.25
_SLACK_MM = 0.3
# A hole that is named outright may be wrong in size and is still meant for the screw.
_NAMED_FROM = 0.4
_NAMED_TO = 1.5


@dataclass(frozen=True, slots=True)
class Half:
    """One end: `hole` is the written hole that takes the fastener, None where none is.

    `off` is how many of its item one model has, `thick` the metal along the hole in mm.
    A hole is moved where the spec places it on its face by `at:`. A step is entered along
    the axis (`is_axial`) where the other half meets it with the end of turned work. `recess`
    is how deep a blind bore on the same axis opens in the face, `filled` how far a step of the
    other half comes into it, both in mm; a hole through a fabrication passes so many `plates`.
    """

    end: End
    place: PlaceFact | None
    hole: PlaceFact | None
    group: str
    off: int
    is_made: bool
    thick: float | None
    hole_is_moved: bool = False
    is_axial: bool = False
    recess: float = 0.0
    filled: float = 0.0
    plates: int = 1

    @property
    def metal(self) -> float | None:
        """The metal along the hole beyond the recess."""
        return self.thick - self.recess if self.thick is not None else None

    @property
    def gripped(self) -> float | None:
        """What is clamped of it: all but the part that the mate fills."""
        return self.thick - self.filled if self.thick is not None else None

    @property
    def is_tapped(self) -> bool:
        """A tapped hole is written here."""
        return self.hole is not None and self.hole.kind == "tapped"

    @property
    def is_wood(self) -> bool:
        """It is of wood."""
        return self.group in WOODS

    @property
    def is_to_make(self) -> bool:
        """The joint makes the hole here, or gives a written one its size."""
        return self.is_made and (self.hole is None or self.hole.is_to_suit)

    @property
    def face(self) -> str:
        """The face or step that the hole is in."""
        if self.hole is not None:
            return self.hole.on or self.hole.across
        return self.end.place

    @property
    def is_radial(self) -> bool:
        """The fastener enters a round surface from the side."""
        if self.hole is not None:
            return bool(self.hole.across)
        return not self.is_axial and self.place is not None and self.place.form == "step"


def halves_of(
    joint: Joint, design: Design, size_mm: float | None, thread: Thread | None, count: int | None
) -> tuple[Half, ...]:
    """The halves of a joint, in the order written; `count` is how many holes are looked for."""
    halves = tuple(_half(end, design, size_mm, thread, count) for end in joint.ends)
    meets_face = any(_is_round_face(half.place) for half in halves)
    known = tuple(replace(half, is_axial=meets_face and _is_at_end(half.place)) for half in halves)
    return tuple(replace(half, filled=filled_by(half, known, design)) for half in known)


def filled_by(half: Half, halves: tuple[Half, ...], design: Design) -> float:
    """How far a step of another half comes into the recess of this one, in mm."""
    mates = [one for one in halves if one is not half]
    entered = [Entered(one.end.item, one.place, one.face) for one in mates]
    return filled(half.recess, half.end.item, entered, design)


def _is_round_face(place: PlaceFact | None) -> bool:
    """The end of other turned work: what meets it there is on the same axis."""
    return place is not None and place.form == "face" and place.is_round


def _is_at_end(place: PlaceFact | None) -> bool:
    """A step at one end of turned work."""
    if place is None or place.form != "step" or place.start is None or place.length is None:
        return False
    return place.start == 0 or place.start + place.length == place.thickness


def _half(
    end: End, design: Design, size_mm: float | None, thread: Thread | None, count: int | None
) -> Half:
    place = design.facts.about(PlaceFact, str(end))
    hole = _hole(end, place, design, size_mm, thread, count)
    material = design.facts.about(MaterialFact, end.item)
    number = design.facts.about(NumberOff, end.item)
    along = hole if hole is not None and hole.thickness is not None else place
    thick = along.thickness if along is not None else None
    recess = recess_in(end, place, design, thick) if hole is None else Fraction(0)
    plates = _plates(end, design) if hole is not None and hole.is_through else 1
    return Half(
        end=end,
        place=place,
        hole=hole,
        group=material.group if material is not None else "",
        off=number.count if number is not None else 1,
        is_made=end.item in design.parts or end.item in design.fabrications,
        thick=float(thick * plates) if thick is not None else None,
        hole_is_moved=hole is not None and _is_moved(hole, design),
        recess=float(recess),
        plates=plates,
    )


def _plates(end: End, design: Design) -> int:
    """How many of its first piece a hole through a fabrication passes."""
    one = design.fabrications.get(end.item)
    if one is None or not one.pieces:
        return 1
    first = one.pieces[0].item
    return sum(piece.count for piece in one.pieces if piece.item == first)


def _is_moved(hole: PlaceFact, design: Design) -> bool:
    owner = design.item(hole.item)
    features = owner.features if isinstance(owner, (Part, Fabrication)) else ()
    return any(getattr(one.entry, "at", None) for one in features if one.name == hole.place)


def _hole(
    end: End,
    place: PlaceFact | None,
    design: Design,
    size_mm: float | None,
    thread: Thread | None,
    count: int | None,
) -> PlaceFact | None:
    """The written hole for the fastener: the one that is named, else one that would pass it."""
    if place is None:
        return None
    if place.kind in HOLES and (place.is_to_suit or _is_meant(place, size_mm)):
        return place
    is_face = place.form in ("face", "step")
    for other in written_holes(end.item, design):
        is_there = place.place in (other.on, other.across)
        if is_face and not is_there and (other.across or not other.is_through):
            continue  # From the far side a hole that goes through is found; one across is not.
        if _suits(other, size_mm, thread) and count in (None, other.count):
            return other
    return None


def written_holes(item: str, design: Design) -> Iterator[PlaceFact]:
    """The holes that a part or fabrication has in the spec, those for looks left out."""
    owner = design.item(item)
    features = owner.features if isinstance(owner, (Part, Fabrication)) else ()
    for feature in features:
        fact = design.facts.about(PlaceFact, f"{item}.{feature.name}")
        if fact is not None and fact.kind in HOLES and not feature.is_dummy:
            yield fact


def _is_meant(place: PlaceFact, size_mm: float | None) -> bool:
    if place.kind == "tapped":
        return True
    if place.diameter is None or size_mm is None:
        return False
    return _NAMED_FROM * size_mm <= float(place.diameter) <= _NAMED_TO * size_mm


def _suits(place: PlaceFact, size_mm: float | None, thread: Thread | None) -> bool:
    if place.diameter is None or size_mm is None:
        return False
    diameter = float(place.diameter)
    if place.kind == "tapped":
        return thread is not None and abs(diameter - size_mm) < 1e-3
    return size_mm <= diameter <= _WIDEST * size_mm + _SLACK_MM
