"""The features of a design to its threads, each with what is known of its place."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from binder.api import (
    Design,
    End,
    Fabrication,
    Feature,
    Joint,
    MaterialFact,
    Misread,
    NumberOff,
    PlaceFact,
    Size,
    Span,
    ThreadName,
    exact,
    metal_at,
    read_thread,
)
from binder_trade.explained import NotDefined
from binder_trade.fastening import from_axis, read_pattern
from binder_trade.threads import NotMade, Thread, from_name

KINDS = ("tapped", "screwed")
JOINTS = ("threaded", "leads")
_MOST_DIAMETERS = 8
_OPEN = Fraction(1, 20)
_BORES = ("bored", "drilled", "reamed")


@dataclass(frozen=True, slots=True)
class Found:
    """A thread of the model: its feature, its sizes, and the step or face that it stands on.

    `at` is where its designation was written, `count` how many one item has, `wall` the metal
    in mm that a hole across turned work finds before it comes into a bore.
    """

    feature: Feature
    thread: Thread
    surface: PlaceFact | None
    place: PlaceFact | None
    at: Span
    count: int
    wall: Fraction | None = None

    @property
    def subject(self) -> str:
        """The name of its facts: `item.place`."""
        return f"{self.feature.owner}.{self.feature.name}"

    @property
    def is_internal(self) -> bool:
        """Whether it is tapped."""
        return self.feature.kind == "tapped"

    @property
    def depth(self) -> Fraction | None:
        """The full thread asked of a tapped hole in mm, None where it goes through."""
        depth = getattr(self.feature.entry, "depth", None)
        return depth.exact if isinstance(depth, Size) else None

    @property
    def metal(self) -> Fraction | None:
        """The metal along a tapped hole in mm, None where it is not known.

        Nobody taps right through a bar from end to end: there the end is where the hole
        stands, and says nothing of its way.
        """
        known = self._way
        if known is None:
            return None
        is_long = float(known) > _MOST_DIAMETERS * self.thread.major_mm
        return None if is_long and self.depth is None else known

    @property
    def _way(self) -> Fraction | None:
        """The metal along the hole, what is written of it before what is known of its face."""
        if self._opens:
            return self.depth
        if self.place is not None and self.place.thickness is not None:
            return self.place.thickness
        if self.surface is None:
            return None
        return _beside_axis(self.feature, self.surface) or self.surface.thickness

    @property
    def _opens(self) -> bool:
        """Whether it comes out in the bore, as the hole for a grub screw does."""
        depth = self.depth
        return self.wall is not None and depth is not None and depth >= self.wall - _OPEN

    @property
    def is_met(self) -> bool:
        """Whether its depth is told and no bore ends it: it may open behind its thread."""
        return self.is_internal and self.depth is not None and self.wall is None

    @property
    def is_blind(self) -> bool:
        """Whether a tapped hole ends in the metal."""
        depth, metal = self.depth, self.metal
        return self.is_internal and depth is not None and (metal is None or depth < metal)

    @property
    def length(self) -> Fraction | None:
        """The thread that a mate can find, in mm: along the screw, or down the hole."""
        if self.is_internal:
            return self.depth if self.is_blind else self.metal
        length = getattr(self.feature.entry, "length", None)
        if isinstance(length, Size):
            return length.exact
        return self.surface.length if self.surface is not None else None


def _beside_axis(feature: Feature, surface: PlaceFact) -> Fraction | None:
    """The metal that holes round the axis of turned work find; None for a hole on the axis."""
    words = getattr(feature.entry, "pattern", None)
    if words is None or surface.diameter is None or getattr(feature.entry, "across", None):
        return None
    try:
        pattern = read_pattern(str(words), getattr(feature.entry, "off", None))
        radius = from_axis(pattern, float(surface.diameter))
    except NotDefined:
        return None
    return metal_at(exact(round(radius, 6)), surface.stack) if radius > 0 else None


@cache
def thread_of(name: ThreadName) -> Thread | NotMade:
    """The thread that a name means, or why nobody makes it."""
    try:
        return from_name(name)
    except NotMade as refused:
        return refused


@cache
def thread_in(text: str) -> Thread | None:
    """The thread of a designation, None where it names none that is made."""
    name = read_thread(text)
    found = None if isinstance(name, Misread) else thread_of(name)
    return found if isinstance(found, Thread) else None


def has_threads(design: Design) -> bool:
    """Whether this plugin has anything to do."""
    return any(one.kind in KINDS for one in design.features()) or any(
        joint.kind in JOINTS for joint in design.joints.values()
    )


def threads_of(design: Design) -> list[Found]:
    """Every thread that is made and is no dummy, written or asked for by a joint."""
    return [found for feature in threaded(design) if (found := found_at(feature, design))]


def threaded(design: Design) -> Iterator[Feature]:
    """The tapped and screwed features that are no dummies."""
    return (one for one in design.features() if one.kind in KINDS and not one.is_dummy)


def found_at(feature: Feature, design: Design) -> Found | None:
    """A feature's thread, None where it is still to suit or nobody makes it."""
    name = named_in(feature)
    thread = thread_of(name) if name is not None else None
    if not isinstance(thread, Thread):
        return None
    entry = feature.entry
    surface = str(getattr(entry, "across", None) or getattr(entry, "on", None) or "top")
    about = design.facts.about
    found = about(PlaceFact, f"{feature.owner}.{surface}")
    return Found(
        feature,
        thread,
        found,
        about(PlaceFact, f"{feature.owner}.{feature.name}"),
        written_at(feature, design),
        _count(feature, design),
        _wall(feature, found, design),
    )


def _wall(feature: Feature, surface: PlaceFact | None, design: Design) -> Fraction | None:
    """The metal in mm between the side of turned work and a bore right through it."""
    part = design.parts.get(feature.owner)
    across = surface.diameter if surface is not None else None
    if part is None or across is None or not getattr(feature.entry, "across", None):
        return None
    places = (
        design.facts.about(PlaceFact, f"{part.name}.{one.name}")
        for one in part.features
        if one.kind in _BORES and not getattr(one.entry, "pattern", None)
    )
    bores = [
        one.diameter
        for one in places
        if one is not None and one.is_through and not one.across and one.diameter is not None
    ]
    return (across - max(bores)) / 2 if bores else None


def named_in(feature: Feature) -> ThreadName | None:
    """The designation of a tapped or screwed feature, None where it is to suit."""
    value = getattr(feature.entry, feature.kind, None)
    return value if isinstance(value, ThreadName) else None


def written_at(feature: Feature, design: Design) -> Span:
    """Where the designation stands, or the joint that asked for the thread."""
    if feature.implied_by:
        return feature.at
    table = "fabrications" if feature.owner in design.fabrications else "parts"
    path = (table, feature.owner, "features", feature.name, feature.kind)
    return design.spec.resolved.document.span(path)


def feature_at(end: End, design: Design) -> Feature | None:
    """The feature that an end of a joint means: by its name, else the one thread that is there."""
    owner = design.parts.get(end.item) or design.fabrications.get(end.item)
    return meant(end, owner.features if owner is not None else ())


def meant(end: End, features: Sequence[Feature]) -> Feature | None:
    """The feature of that name; or the only thread on that step or face, or of the whole item."""
    for one in features:
        if one.name == end.place:
            return one
    threads = [one for one in features if one.kind in KINDS]
    there = [one for one in threads if end.place in ("", str(getattr(one.entry, "on", None)))]
    return there[0] if len(there) == 1 else None


def by_item(found: Iterable[Found]) -> dict[str, list[Found]]:
    """The threads of each item."""
    grouped: dict[str, list[Found]] = {}
    for one in found:
        grouped.setdefault(one.feature.owner, []).append(one)
    return grouped


def half_at(end: End, joint: Joint, found: Mapping[str, list[Found]]) -> Found | None:
    """The thread of an end: the one that it means, or the one that the joint made there."""
    here = found.get(end.item, [])
    feature = meant(end, [one.feature for one in here])
    for one in here:
        made_here = one.feature.implied_by == joint.name and not named_elsewhere(one, end)
        if one.feature is feature or (feature is None and made_here):
            return one
    return None


def named_elsewhere(one: Found, end: End) -> bool:
    """Whether a thread stands on another step or face than an end names."""
    return str(getattr(one.feature.entry, "on", None) or "") != end.place


def material_of(item: str, design: Design) -> str:
    """The words that tell what an item is made of, as `free cutting steel steel`."""
    made: str = item
    fabrication = design.fabrications.get(item)
    if isinstance(fabrication, Fabrication) and fabrication.pieces:
        made = fabrication.pieces[0].item
    fact = design.facts.about(MaterialFact, made)
    return f"{fact.id} {fact.condition} {fact.group}" if fact is not None else ""


def _count(feature: Feature, design: Design) -> int:
    entry = feature.entry
    off = getattr(entry, "off", None) or 1
    number = design.facts.about(NumberOff, feature.owner)
    ends = 2 if getattr(entry, "each_end", False) else 1
    return off * ends * (number.count if number is not None else 1)
