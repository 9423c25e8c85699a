"""The sizes of a form to the sizes of its drawing, each once, from the datum."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import Design, HalfFact, exact, shown_length
from binder_drafting import Across, Along, Note, Size
from binder_solid.facts import FormFact, Located, Stretch, Told
from binder_solid.views import flat

_VIEW_OF_FACE = {
    "top": "top",
    "underside": "underside",
    "front": "front",
    "back": "back",
    "left": "left",
    "right": "right",
}
# Which views show a length along an axis, the better one first.
_SHOWING = {
    "x": ("front", "top", "underside", "back"),
    "y": ("top", "underside", "right", "left"),
    "z": ("front", "right", "left", "back"),
}
_AXES = "xyz"
_SAME = 1e-6
_INCH = 25.4


def sizes_of(fact: FormFact, views: tuple[str, ...], design: Design) -> tuple[Size, ...]:
    """Every size of a form, in the order in which the bench needs them."""
    halves = {one.place: one for one in design.facts.all(HalfFact) if one.item == fact.subject}
    units = design.units
    found = [*_turned(fact, halves, units), *_sides(fact, views)]
    for one in fact.located:
        found += _feature(one, fact, views, _limits_of(halves.get(one.name), units))
    return tuple(_once({size.id: size for size in found}.values()))


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
        _bare(told.text),
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


def _turned(fact: FormFact, halves: dict[str, HalfFact], units: str) -> Iterator[Size]:
    if fact.stretches:
        yield from _diameters(fact, halves, units)
        yield from _lengths(fact, units)


def _diameters(fact: FormFact, halves: dict[str, HalfFact], units: str) -> Iterator[Size]:
    for one in fact.stretches:
        x = (one.start + one.end) / 2
        limits = _limits(halves.get(one.name), one.across, units)
        tier = "fit" if limits else "free"
        if one.across == one.end_across:
            yield Across(
                one.ids[0],
                "front",
                (x, -one.across / 2),
                (x, one.across / 2),
                _bare(one.text),
                limits,
                tier,
            )
            continue
        first, last = one.text.split(" to ")
        for place, across, words, end in (
            (one.start, one.across, first, ""),
            (one.end, one.end_across, last, ".end"),
        ):
            yield Across(
                one.ids[0] + end, "front", (place, -across / 2), (place, across / 2), _bare(words)
            )


def _limits(half: HalfFact | None, nominal: float, units: str) -> tuple[str, ...]:
    if half is None or half.lower is None or half.upper is None:
        return ()
    return tuple(
        f"{_fine(size - nominal, units, '+')}".replace("-", "−")
        for size in (half.upper, half.lower)
    )


def _limits_of(half: HalfFact | None, units: str) -> str:
    """`3.000 – 3.010`, '' where a half has no limits."""
    if half is None or half.lower is None or half.upper is None:
        return ""
    return f"{_fine(half.lower, units)} – {_fine(half.upper, units)}"


def _fine(mm: float, units: str, sign: str = "") -> str:
    """To a thousandth of a millimetre, or to a tenth of a thou."""
    return f"{mm / _INCH:{sign}.4f}" if units == "inch" else f"{mm:{sign}.3f}"


def _lengths(fact: FormFact, units: str) -> Iterator[Size]:
    """Baselines from the first face; behind a step that takes the rest, from the last one."""
    rest = next((n for n, one in enumerate(fact.stretches) if len(one.ids) < 2), None)
    whole = fact.size[0]
    for number, one in enumerate(fact.stretches[:rest] if rest is not None else fact.stretches):
        if one is fact.stretches[-1]:
            break
        run = _run(fact.stretches[: number + 1])
        yield _length(one.ids[1], 0.0, one.end, run, fact, units)
    if rest is not None:
        for number, one in enumerate(fact.stretches[rest + 1 :], rest + 1):
            run = _run(fact.stretches[number:])
            yield _length(one.ids[1], whole, one.start, run, fact, units)
    yield _overall(fact, units)


def _overall(fact: FormFact, units: str) -> Size:
    last = fact.stretches[-1]
    has_rest = any(len(one.ids) < 2 for one in fact.stretches)
    key = f"{fact.subject}.overall" if has_rest else last.ids[1]
    return _length(key, 0.0, fact.size[0], "", fact, units, rank=9)


def _run(stretches: tuple[Stretch, ...]) -> str:
    """The length of a single step as it is written; of several their sum."""
    return stretches[0].length_text if len(stretches) == 1 else ""


def _length(
    key: str, start: float, end: float, text: str, fact: FormFact, units: str, rank: int = 0
) -> Size:
    words = _bare(text) or _figure(abs(end - start), units)
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


def _bare(text: str) -> str:
    """A figure without the unit of the whole drawing (ISO 129-1)."""
    return text.removesuffix(" mm") if "(" not in text else text


def _feature(one: Located, fact: FormFact, views: tuple[str, ...], limits: str) -> Iterator[Size]:
    view = _view_of(one, fact, views)
    for told in one.told:
        yield from _along(told, views, one.spots[0], fact.size, first=view)
    if not one.note:
        return
    lines = [one.note]
    if limits:
        lines.append(limits)
    at, radius = _pointed_at(one, fact, view)
    tier = "fit" if len(lines) > 1 else "tool"
    for key in one.ids:
        yield Note(key, view, at, tuple(lines), radius, tier)


def _pointed_at(one: Located, fact: FormFact, view: str) -> tuple[tuple[float, float], float]:
    """Where a leader points, and the radius of the circle that it touches there."""
    u, v = flat(one.spots[0], view)  # type: ignore[arg-type]
    radius = (one.diameter or 0.0) / 2
    if fact.stretches and view == "front":
        # The mouth of a hole on the axis is seen in the half that is cut.
        return ((u, v + radius) if one.face == "axis" and len(one.spots) == 1 else (u, v)), 0.0
    return (u, v), radius


def _view_of(one: Located, fact: FormFact, views: tuple[str, ...]) -> str:
    if fact.stretches:
        is_ring = one.face == "axis" and len(one.spots) > 1 and "right" in views
        return "right" if is_ring else "front"
    wanted = _VIEW_OF_FACE.get(one.face, "front")
    return wanted if wanted in views else "front"
