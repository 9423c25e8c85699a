"""The sizes of a form to the sizes of its drawing, each once, from the datum."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from binder.api import Design, HalfFact, exact, shown_length
from binder_drafting import Across, Along, Note, Size
from binder_plugins.drawings.callouts import bare, notes_of
from binder_plugins.drawings.diameters import diameters
from binder_plugins.drawings.filed import filed_notes
from binder_plugins.drawings.pointing import view_of
from binder_plugins.drawings.suited import SuitedSizes, suited_of
from binder_plugins.drawings.sunk import sunk_lines
from binder_plugins.drawings.tapped import drilled_to
from binder_plugins.drawings.thickness import thickness_note
from binder_solid.clip_walls import holds_clip, outer_wall
from binder_solid.facts import FormFact, Located, Stretch, Told
from binder_solid.views import flat

# Which views show a length along an axis, the better one first.
_SHOWING = {
    "x": ("front", "top", "underside", "back"),
    "y": ("top", "underside", "right", "left"),
    "z": ("front", "right", "left", "back"),
}
_AXES = "xyz"
_SAME = 1e-6


def sizes_of(fact: FormFact, views: tuple[str, ...], design: Design) -> tuple[Size, ...]:
    """Every size of a form, in the order in which the bench needs them."""
    halves = _halves(fact.subject, design)
    units = design.units
    suited = suited_of(fact, design)
    found = [*_turned(fact, views, halves, design), *_sides(fact, views)]
    for one in fact.located:
        view = view_of(one, fact, views)
        for told in (suited.placed(told, one) for told in _to_wall(one, fact, design)):
            found += _along(told, views, one.spots[0], fact.size, first=view)
    sunk, drilled = sunk_lines(fact, halves, design), drilled_to(fact, design)
    found += notes_of(fact, views, halves, units, sunk, drilled)
    found += filed_notes(fact, views, design)
    return tuple(_once({size.id: size for size in found}.values()))


def _to_wall(one: Located, fact: FormFact, design: Design) -> Iterator[Told]:
    """The sizes that place a feature; of a groove for a clip to the wall that the clip bears on."""
    is_clip = holds_clip(fact.subject, one, design)
    for told in one.told:
        if not is_clip or told.along != "x":
            yield told
            continue
        wall = outer_wall(one, told.end, fact.size[0])
        text = shown_length(exact(round(abs(wall - told.start), 3)), design.units)
        yield replace(told, end=wall, text=text)


def _halves(item: str, design: Design) -> dict[str, HalfFact]:
    """The half at each place that a drawing tells: of several, the one with limits."""
    found: dict[str, HalfFact] = {}
    for one in design.facts.all(HalfFact):
        if one.item == item and (one.place not in found or one.lower is not None):
            found[one.place] = one
    return found


def told_by(size: Size) -> tuple[str, ...]:
    """The ids of all that the words of a size tell."""
    return (size.id, *(size.also if isinstance(size, Across | Note) else ()))


def _once(sizes: Iterable[Size]) -> Iterator[Size]:
    """A length that is there already, told for another feature in the same place, once."""
    seen: set[object] = set()
    for size in sizes:
        if isinstance(size, Along):
            along = (size.datum, size.direction, size.text, _apart(size))
            if along in seen and size.datum.startswith("from"):
                continue
            seen.add(along)
        yield size


def _apart(size: Along) -> float:
    (u, v), (x, y) = size.start, size.end
    return round(abs(x - u) + abs(y - v), 6)


def _sides(fact: FormFact, views: tuple[str, ...]) -> Iterator[Size]:
    steps = {key for one in fact.stretches for key in one.ids}
    for told in (one for one in fact.told if one.id not in steps):
        if told.along == "z" and not {"front", "right", "left", "back"} & set(views):
            yield thickness_note(told, fact, views[0])
            continue
        yield from _along(told, views, (0.0, 0.0, 0.0), fact.size, rank=9)


def _along(
    told: Told,
    views: tuple[str, ...],
    near: tuple[float, float, float],
    size: tuple[float, float, float],
    rank: int = 0,
    first: str = "",
) -> Iterator[Size]:
    """A length on the best view that shows it."""
    able = [name for name in (first, *_SHOWING[told.along]) if name in views]
    able = [name for name in able if _shows(name, told.along)]
    if not able:
        return
    axis = _AXES.index(told.along)
    ends = [list(near), list(near)]
    ends[0][axis], ends[1][axis] = told.start, told.end
    start, end = (flat((a, b, c), able[0]) for a, b, c in ends)  # type: ignore[arg-type]
    direction = "u" if abs(start[0] - end[0]) > abs(start[1] - end[1]) else "v"
    yield Along(
        f"{told.id}.{told.along}",
        able[0],
        direction,
        start,
        end,
        bare(told.text),
        tier=told.tier,
        datum=_datum(told, size),
        rank=rank,
    )


_ENDS = {"x": ("left", "right"), "y": ("front", "back"), "z": ("underside", "top")}


def _datum(told: Told, size: tuple[float, float, float]) -> str:
    """What a size starts from, in the words of the spec."""
    first, last = _ENDS[told.along]
    whole = size[_AXES.index(told.along)]
    if abs(told.start) < _SAME:
        return f"from {first}"
    return f"from {last}" if abs(told.start - whole) < _SAME else f"from {told.start:.2f}"


def _shows(name: str, along: str) -> bool:
    axis = _AXES.index(along)
    point = [0.0, 0.0, 0.0]
    point[axis] = 1.0
    return flat((point[0], point[1], point[2]), name) != (0.0, 0.0)  # type: ignore[arg-type]


def _turned(
    fact: FormFact,
    views: tuple[str, ...],
    halves: dict[str, HalfFact],
    design: Design,
) -> Iterator[Size]:
    if fact.stretches:
        yield from diameters(fact, views, halves, design.units)
        yield from _lengths(fact, suited_of(fact, design), design.units)


def _lengths(fact: FormFact, suited: SuitedSizes, units: str) -> Iterator[Size]:
    """Baselines from the first face; behind a step that takes the rest, from the last one."""
    rest = next((n for n, one in enumerate(fact.stretches) if len(one.ids) < 2), None)
    whole = fact.size[0]
    for number, one in enumerate(fact.stretches[:rest] if rest is not None else fact.stretches):
        if one is fact.stretches[-1]:
            break
        size = _length(one.ids[1], 0.0, one.end, _run(fact.stretches[: number + 1]), fact, units)
        yield suited.along(size, fact.stretches[: number + 1])
    if rest is not None:
        for number, one in enumerate(fact.stretches[rest + 1 :], rest + 1):
            size = _length(one.ids[1], whole, one.start, _run(fact.stretches[number:]), fact, units)
            yield suited.along(size, fact.stretches[number:])
    yield suited.overall(_overall(fact, units))


def _overall(fact: FormFact, units: str) -> Along:
    last = fact.stretches[-1]
    has_rest = any(len(one.ids) < 2 for one in fact.stretches)
    key = f"{fact.subject}.overall" if has_rest else last.ids[1]
    return _length(key, 0.0, fact.size[0], "", fact, units, rank=9)


def _run(stretches: tuple[Stretch, ...]) -> str:
    """The length of a single step as it is written; nothing of several, whose sum it is."""
    return stretches[0].length_text if len(stretches) == 1 else ""


def _length(
    key: str, start: float, end: float, text: str, fact: FormFact, units: str, rank: int = 0
) -> Along:
    words = bare(text) or _figure(abs(end - start), units)
    edge = -fact.size[2] / 2
    return Along(
        key,
        "front",
        "u",
        (start, edge),
        (end, edge),
        words,
        datum="from left" if start == 0 else "from right",
        side="below",
        rank=rank,
    )


def _figure(mm: float, units: str) -> str:
    if units == "inch":
        return shown_length(exact(round(mm, 4)), units)
    return f"{mm:.3f}".rstrip("0").rstrip(".")
