"""The halves of joints to spots on a part: sockets, plugs and faces with their directions."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from binder.api import At, Design, Feature, OffMiddleFact, Position, Size
from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.space import scaled
from binder_solid.facts import FormFact, Located, Stretch
from binder_solid.forms import Raised, Vector
from binder_solid.space import dot, length, minus, plus, unit

Sort = Literal["socket", "plug", "face", "way"]
_HOLES = (
    "drilled",
    "reamed",
    "bored",
    "tapped",
    "counterbored",
    "recessed",
    "centred",
    "slotted",
    "pocketed",
)
_EPS = 1e-6
FACES: dict[str, Vector] = {
    "left": (-1.0, 0.0, 0.0),
    "right": (1.0, 0.0, 0.0),
    "front": (0.0, -1.0, 0.0),
    "back": (0.0, 1.0, 0.0),
    "top": (0.0, 0.0, 1.0),
    "underside": (0.0, 0.0, -1.0),
}
_ENDS = {"left": "left", "underside": "left", "right": "right", "top": "right"}


@dataclass(frozen=True, slots=True)
class Spot:
    """A place on a part, in its own axes.

    A socket's `point` is its mouth, a plug's the shoulder that seats it (`is_seated`) or the
    inner end of its thread, a face's its middle. `way` points out of the metal, of a plug to
    its free end; `long` is how deep, or from seat to tip. `is_open`: the hole goes through,
    the plug passes both ways. `along` is the line of a pattern or of a slide. `holes` are the
    mouths of a pattern of several, of which `point` is the middle.
    """

    sort: Sort
    point: Vector
    way: Vector
    long: float = 0.0
    is_open: bool = False
    is_seated: bool = False
    is_end: bool = False
    along: Vector | None = None
    is_thread: bool = False
    holes: tuple[Vector, ...] = ()

    @property
    def singly(self) -> tuple[Spot, ...]:
        """Each hole of a pattern as a spot of its own."""
        if len(self.holes) < 2:
            return (self,)
        return tuple(replace(self, point=one, holes=(), along=None) for one in self.holes)

    @property
    def middle(self) -> Vector:
        """Half way along a socket or plug."""
        half = self.long / 2 if self.sort == "plug" else -self.long / 2
        return plus(self.point, self.way, half if self.sort in ("plug", "socket") else 0.0)


def spots_of(copy: Copy, place: str, design: Design, *, joint: str = "") -> tuple[Spot, ...]:
    """The spots of a named place, in the order of its pattern; empty where it is not known."""
    fact = copy.fact
    found = next((one for one in fact.located if one.name == place), None)
    feature = _feature(copy.item, place, design)
    if found is not None:
        spots = tuple(_located(found, fact, feature))
    elif face_point(fact, place) is not None:
        spots = (_face(fact, place),)
    elif place == "ends":
        spots = (_face(fact, "left"), _face(fact, "right"))
    elif (step := stretch_of(fact, place)) is not None:
        spots = (plug_of(fact, step, step.start, step.end),)
    elif feature is not None:
        spots = (_by_eye(feature, copy),)
    else:
        spots = ()
    aside = design.facts.about(OffMiddleFact, f"{copy.item}.{place}")
    if aside is not None:
        spots = tuple(replace(one, point=plus(one.point, aside.off, 1.0)) for one in spots)
    return tuple(_on_copy(one, copy) for one in spots)


def _on_copy(spot: Spot, copy: Copy) -> Spot:
    along = copy.vector(spot.along) if spot.along is not None else None
    return replace(
        spot,
        point=copy.point(spot.point),
        way=copy.vector(spot.way),
        along=along,
        holes=tuple(copy.point(one) for one in spot.holes),
    )


def _feature(item: str, place: str, design: Design) -> Feature | None:
    part = design.parts.get(item)
    return next((one for one in part.features if one.name == place), None) if part else None


def implied_spots(copy: Copy, joint: str, design: Design) -> tuple[Spot, ...]:
    """The holes that a joint asked for on a part, a pattern as one spot in its middle.

    A bore that it named and sized as well, where it makes a hole for its pin, is none of them.
    """
    part = design.parts.get(copy.item)
    names = {one.name for one in part.features if one.implied_by == joint} if part else set()
    told = design.joints[joint].ends if joint in design.joints else ()
    names = names - {end.place for end in told if end.item == copy.item} or names
    located = [one for one in copy.fact.located if one.name in names]
    holes = [one for one in located if one.kind in ("drilled", "tapped", "reamed", "slotted")]
    spots = [spot for one in holes for spot in _located(one, copy.fact, None)]
    return tuple(_on_copy(one, copy) for one in spots)


def stretch_of(fact: FormFact, name: str) -> Stretch | None:
    """The step of a name; `outside` is the widest."""
    found = next((one for one in fact.stretches if one.name == name), None)
    if found is None and name in ("outside", "middle", "") and fact.stretches:
        return max(fact.stretches, key=lambda one: one.across)
    return found


def face_point(fact: FormFact, name: str) -> tuple[Vector, Vector] | None:
    """The middle of a face and the way that it looks."""
    x, y, z = fact.size
    if fact.stretches:
        end = _ENDS.get(name)
        if end is None:
            return None
        return ((0.0 if end == "left" else x, 0.0, 0.0), FACES[end])
    way = FACES.get(name)
    if way is None:
        return None
    a, b, c = (size / 2 * (1 + one) for size, one in zip((x, y, z), way, strict=True))
    return (a, b, c), way


def _face(fact: FormFact, name: str) -> Spot:
    found = face_point(fact, name)
    point, way = found if found is not None else ((0.0, 0.0, 0.0), (0.0, 0.0, 1.0))
    return Spot("face", point, way)


def through(fact: FormFact, way: Vector) -> float:
    """The size of a part along one of its axes."""
    return sum(abs(part) * size for part, size in zip(way, fact.size, strict=True))


def _located(one: Located, fact: FormFact, feature: Feature | None) -> Iterator[Spot]:
    if one.kind == "screwed":
        yield from _threads(one, fact)
    elif one.kind == "dovetailed":
        yield _dovetail(one, feature)
    elif one.kind in _HOLES:
        yield from _sockets(one, fact)
    elif one.kind == "grooved" and fact.stretches:
        step = next((s for s in fact.stretches if s.start <= one.spots[0][0] <= s.end), None)
        if step is not None:
            yield plug_of(fact, step, step.start, step.end)


def _sockets(one: Located, fact: FormFact) -> Iterator[Spot]:
    """One socket for each face that the holes of a pattern start from."""
    levels: dict[float, list[Vector]] = {}
    for spot in one.spots:
        levels.setdefault(round(dot(spot, one.frame.z), 6), []).append(spot)
    first = next(iter(levels))
    for level, spots in levels.items():
        way = one.frame.z if level == first else scaled(one.frame.z, -1.0)
        count = len(spots)
        a, b, c = (sum(spot[n] for spot in spots) / count for n in range(3))
        run = minus(spots[1], spots[0]) if count > 1 else None
        along = unit(run) if run is not None and length(run) > _EPS and count != 3 else None
        deep = one.depth if one.depth is not None else through(fact, one.frame.z)
        if one.depth is None and fact.stretches and one.face == "across":
            deep = 2 * length((0.0, spots[0][1], spots[0][2]))
        is_open = one.depth is None
        yield Spot("socket", (a, b, c), way, deep, is_open, along=along, holes=tuple(spots))


def _threads(one: Located, fact: FormFact) -> Iterator[Spot]:
    """An outside thread on each end that it is cut on, from its inner end."""
    x = one.spots[0][0]
    step = next((s for s in fact.stretches if s.start - _EPS <= x <= s.end + _EPS), None)
    if step is None:
        return
    long = min(one.length or step.end - step.start, step.end - step.start)
    if len(one.spots) > 1:
        left = plug_of(fact, step, step.start, step.start + long)
        right = plug_of(fact, step, step.end - long, step.end)
        yield replace(
            left,
            point=(step.start + long, 0.0, 0.0),
            way=FACES["left"],
            long=long,
            is_seated=False,
            is_end=True,
            is_thread=True,
        )
        yield replace(
            right,
            point=(step.end - long, 0.0, 0.0),
            way=FACES["right"],
            long=long,
            is_seated=False,
            is_end=True,
            is_thread=True,
        )
        return
    whole = plug_of(fact, step, step.start, step.end)
    tip = plus(whole.point, whole.way, whole.long)
    is_seated = whole.is_seated and long > whole.long - 2.0
    start = whole.point if is_seated else plus(tip, whole.way, -long)
    deep = whole.long if is_seated else long
    yield replace(whole, point=start, long=deep, is_seated=is_seated, is_thread=True)


def plug_of(fact: FormFact, step: Stretch, start: float, end: float) -> Spot:
    """A step of turned work as what goes into a hole: which end leads, what stops it."""
    before = [one for one in fact.stretches if one.end <= step.start + _EPS]
    behind = [one for one in fact.stretches if one.start >= step.end - _EPS]
    across = max(step.across, step.end_across)
    passes_left = all(max(s.across, s.end_across) <= across + _EPS for s in before)
    passes_right = all(max(s.across, s.end_across) <= across + _EPS for s in behind)
    is_left = passes_left and (not passes_right or (not before and bool(behind)))
    way = FACES["left"] if is_left else FACES["right"]
    seat = end if is_left else start
    is_open = passes_left and passes_right
    is_end = not is_open or not before or not behind
    return Spot(
        "plug",
        (seat, *step.aside),
        way,
        end - start,
        is_open=is_open,
        is_seated=_is_stopped(step, behind if is_left else before),
        is_end=is_end and len(fact.stretches) > 1,
    )


def _is_stopped(step: Stretch, neighbours: list[Stretch]) -> bool:
    touching = [
        one
        for one in neighbours
        if abs(one.end - step.start) < _EPS or abs(one.start - step.end) < _EPS
    ]
    return any(
        max(one.across, one.end_across) > max(step.across, step.end_across) + _EPS
        for one in touching
    )


def _dovetail(one: Located, feature: Feature | None) -> Spot:
    """A dovetail slides along the line that it is cut on, its shoulders on the face."""
    along = next((tool.frame.z for tool in one.tools if isinstance(tool, Raised)), None)
    is_inside = bool(getattr(feature.entry, "inside", False)) if feature is not None else False
    sunk = 0.0 if is_inside else -(one.depth or 0.0)
    return Spot("way", plus(one.frame.origin, one.frame.z, sunk), one.frame.z, along=along)


def _by_eye(feature: Feature, copy: Copy) -> Spot:
    """What is filed to fit on a long piece: a plug along it, at its end or so far along."""
    fact = copy.fact
    x, y, z = fact.size
    on = str(getattr(feature.entry, "on", "") or "")
    at: At | None = getattr(feature.entry, "at", None)
    if on in ("left", "right"):
        way = FACES[on]
        tip = x if on == "right" else 0.0
        return Spot("plug", (tip, y / 2, z / 2), way, 0.0, is_end=True)
    far = _along(at, x)
    return Spot("plug", (far, y / 2, z / 2), FACES["right"], 0.0, is_open=True)


def _along(at: Position | None, whole: float) -> float:
    for one in at.all if at is not None else ():
        if isinstance(one.distance, Size) and one.rest == "from left":
            return one.distance.mm
        if isinstance(one.distance, Size) and one.rest == "from right":
            return whole - one.distance.mm
    return whole / 2
