"""Features of a part to where each lies, what it cuts, and what its note says."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from binder.api import (
    Design,
    Fabrication,
    Feature,
    Part,
    RoundBottomFact,
    Size,
    ThreadFact,
    ThreadName,
    exact,
    shown_length,
)
from binder_plugins.shapes.cutting.in_holes import in_hole
from binder_plugins.shapes.cutting.slots import room_of, run_within
from binder_plugins.shapes.cutting.task import Task, depth_of, length_of, run_of, size_of
from binder_plugins.shapes.cutting.tools import COSMETIC, tools_for
from binder_plugins.shapes.forming.body import Body, moved
from binder_plugins.shapes.forming.patterns import Spread, spread
from binder_plugins.shapes.forming.whereabouts import (
    Whereabouts,
    place_in_hole,
    placed_at,
)
from binder_plugins.shapes.words import callout, what
from binder_solid.facts import Located, Told
from binder_solid.forms import Form, Frame, Vector
from binder_solid.open_ends import open_along

IN_WORDS = ("filed",)
_DRILLED = ("drilled", "reamed", "bored", "tapped")
_SLOTS = ("slotted", "t_slotted", "dovetailed", "keywayed")
_LEVEL = 1e-6
# A spotface only cleans up: as deep as a flat needs on a rough face.
_SPOTFACE = 0.5
HOLES = ("drilled", "reamed", "bored", "tapped", "counterbored", "recessed")


@dataclass(frozen=True, slots=True)
class Made:
    """A feature that is located: the feature, its place, and the frame of each alike."""

    feature: Feature
    place: Whereabouts
    around: Spread
    located: Located


def all_made(part: Part | Fabrication, body: Body, design: Design) -> Iterator[Made]:
    """Features in the order written; one may stand on another that came before it."""
    spots: dict[str, Vector] = {}
    before: dict[str, Made] = {}
    for feature in part.features:
        if feature.kind in IN_WORDS:
            continue
        mate = before.get(str(getattr(feature.entry, "on", None) or ""))
        found = _made(feature, mate, body, spots, design)
        if found is not None:
            spots.setdefault(feature.name, found.located.frame.origin)
            before[feature.name] = found
            yield found


def _made(
    feature: Feature, mate: Made | None, body: Body, spots: dict[str, Vector], design: Design
) -> Made | None:
    if mate is not None and mate.located.adds:
        return _on_boss(feature, mate, body, design)
    if mate is not None and mate.feature.kind in HOLES and mate.located.diameter is not None:
        return _in_hole(feature, mate, body, design)
    place = placed_at(feature, body, spots, design.units)
    if place is None:
        return None
    around = spread(feature, place, body)
    task = _task(feature, place, body, design)
    height = _height(place, around, task, design)
    place = replace(place, told=tuple(_unended(place, task)))
    cut = replace(task, depth=_cut_depth(task, design))
    tools = () if feature.kind in COSMETIC else tuple(tools_for(cut, around.frames))
    made = _as_made(feature, place, around, tools, task, design)
    note = f"{made.located.note}{height}{_whole_length(made.located, body)}"
    return replace(made, located=replace(made.located, note=note))


def _whole_length(one: Located, body: Body) -> str:
    """That a slot runs from end to end: nothing else on the sheet tells how long it is."""
    is_open = not body.is_turned and one.length is None
    return ", from end to end" if is_open and open_along(one, body.size) is not None else ""


def _unended(place: Whereabouts, task: Task) -> Iterator[Told]:
    """The sizes that place it, but not along a slot from end to end: nothing begins there."""
    run = run_of(task, place.frame)
    is_long = task.feature.kind in _SLOTS and place.face != "across"
    is_open = is_long and run_within(task, run) == room_of(task, run)
    axis = "xyz"[max(range(3), key=lambda n: abs(run.x[n]))]
    yield from (one for one in place.told if not (is_open and one.along == axis))


def _height(place: Whereabouts, around: Spread, task: Task, design: Design) -> str:
    """How high a hole stands in an upright face, for the scribing block, where nothing says it.

    In words: that it stands in the middle needs no dimension line more.
    """
    heights = {round(spot[2], 6) for spot in around.spots}
    is_upright = not task.body.is_turned and abs(place.frame.z[2]) < _LEVEL
    is_told = any(one.along == "z" for one in place.told)
    if not (task.feature.kind in _DRILLED and is_upright) or is_told or len(heights) != 1:
        return ""
    high = exact(round(heights.pop() - task.body.least[2], 3))
    return f", {shown_length(high, design.units)} from underside"


def _on_boss(feature: Feature, mate: Made, body: Body, design: Design) -> Made:
    """On top of a boss: through means through the part as well."""
    high = _mm(mate.feature, "height")
    frames = tuple(Frame(moved(one, 0.0, 0.0, high), one.z, one.x) for one in mate.around.frames)
    place = replace(mate.place, frame=frames[0], told=(), unread=())
    task = _task(feature, place, body, design)
    if task.depth is None:
        task = replace(task, depth=high + body.through(frames[0]))
    tools = tuple(tools_for(replace(task, depth=_cut_depth(task, design)), frames))
    return _as_made(feature, place, Spread(frames, mate.around.circle), tools, task, design)


def _in_hole(feature: Feature, mate: Made, body: Body, design: Design) -> Made:
    """In a hole that is there already: its mouth, a groove, a wider part, a keyway."""
    hole = mate.located
    deep = hole.depth if hole.depth is not None else body.through(hole.frame)
    place = place_in_hole(feature, mate.place, body, design.units)
    task = _task(feature, place, body, design)
    bore = ((hole.diameter or 0.0) / 2, deep)
    frames = mate.around.frames
    tools = tuple(tool for frame in frames for tool in in_hole(task, frame, bore))
    return _as_made(feature, place, Spread(frames, mate.around.circle), tools, task, design)


def _task(feature: Feature, place: Whereabouts, body: Body, design: Design) -> Task:
    size = _size(feature, design) or 0.0
    depth = depth_of(feature)
    if depth is None and feature.kind == "spotfaced":
        depth = _SPOTFACE
    is_round = design.facts.about(RoundBottomFact, f"{feature.owner}.{feature.name}") is not None
    return Task(feature, size, depth, length_of(feature), place, body, is_round)


def _cut_depth(task: Task, design: Design) -> float | None:
    """How deep is cut: a blind tapped hole is drilled further than its thread."""
    feature = task.feature
    fact = design.facts.about(ThreadFact, f"{feature.owner}.{feature.name}")
    if feature.kind != "tapped" or task.depth is None or fact is None or fact.drill_depth is None:
        return task.depth
    return max(task.depth, round(fact.drill_depth, 1))


def _as_made(
    feature: Feature,
    place: Whereabouts,
    around: Spread,
    tools: tuple[Form, ...],
    task: Task,
    design: Design,
) -> Made:
    key = f"{feature.owner}.{feature.name}"
    shape = ", round at its bottom" if task.is_round else ""
    located = Located(
        name=feature.name,
        kind=feature.kind,
        face=place.face,
        frame=place.frame,
        spots=around.spots,
        tools=tools,
        note=callout(feature, len(around.spots), design.units) + shape,
        told=place.told,
        diameter=task.size or None,
        depth=task.depth,
        length=task.length,
        width=_mm(feature, "width") or None,
        circle=around.circle,
        adds=feature.kind == "bossed",
        is_thread=feature.kind in ("tapped", "screwed"),
        is_dummy=feature.is_dummy,
        ids=(f"{key}.{feature.kind}",),
        also=tuple(f"{key}.{name}" for name in _also(feature)),
        core=what(feature, design.units) + shape,
        at=feature.at,
    )
    return Made(feature, place, around, located)


def _also(feature: Feature) -> Iterator[str]:
    """The further fields that the note tells: sizes, the number off and the pattern."""
    entry = feature.entry
    for name in type(entry).model_fields:
        value = getattr(entry, name, None)
        is_size = name != feature.kind and isinstance(value, Size)
        if is_size or (value is not None and name in ("off", "pattern")):
            yield name


def _mm(feature: Feature, name: str) -> float:
    size = getattr(feature.entry, name, None)
    return size.mm if isinstance(size, Size) else 0.0


def _size(feature: Feature, design: Design) -> float | None:
    """The diameter that is cut: that of the drill where a thread follows."""
    size = size_of(feature)
    if size is not None:
        return size.mm
    thread = getattr(feature.entry, feature.kind, None)
    if not isinstance(thread, ThreadName):
        return None
    fact = design.facts.about(ThreadFact, f"{feature.owner}.{feature.name}")
    if fact is not None and fact.is_internal and fact.drill_mm:
        return fact.drill_mm
    if fact is not None:
        return fact.major
    return float(thread.major_mm) if thread.major_mm is not None else None
