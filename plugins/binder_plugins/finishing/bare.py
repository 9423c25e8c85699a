"""Places of an item that no coat may reach: fits, threads, seats, and faces that bear."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, FitFact, HalfFact, HardwareFact, Piece, ShaftFact, ThreadFact

# Joints that are made after the coat, with a hole that locates and faces that bear.
_BEARING = frozenset({"pinned", "screwed", "bolted", "dowelled", "hinged"})
_CLIPPED = "clipped"


def bare_places(item: str, design: Design) -> tuple[str, ...]:
    """Fits, threads and seats of an item that no coat may reach, each with what it meets or is."""
    parts = (_fits, _threads, _seats, _bears, _clips)
    return tuple(dict.fromkeys(place for told in parts for place in told(item, design)))


def _fits(item: str, design: Design) -> Iterator[str]:
    for fit in design.facts.all(FitFact):
        for place in (fit.hole, fit.shaft):
            owner, _, name = place.partition(".")
            if owner == item:
                clear = f"{max(fit.clearance_min_um, 0) / 1000:.3f} mm"
                yield f"{name or owner}: fit of '{fit.subject}', least clearance {clear}"


def _threads(item: str, design: Design) -> Iterator[str]:
    for thread in design.facts.all(ThreadFact):
        if thread.item == item:
            yield f"{thread.place}: thread {thread.designation}"


def _seats(item: str, design: Design) -> Iterator[str]:
    """Holes that locate, and faces that bear: paint between them opens what was drilled together.

    What is fixed before the coat, in a flame or by a filler, has its face covered already.
    """
    fits = {fit.subject for fit in design.facts.all(FitFact)}
    for half in design.facts.all(HalfFact):
        joint = design.joints.get(half.joint)
        if half.item != item or joint is None or half.joint in fits:
            continue
        mates = {end.item for end in joint.ends} - {item}
        if joint.kind in _BEARING and mates:
            named = [found.title for name in sorted(mates) if (found := design.item(name))]
            where = half.place.replace("_", " ")
            yield f"{where}: hole, and the face round it against the {' and the '.join(named)}"


def _bears(item: str, design: Design) -> Iterator[str]:
    """Faces on which the next piece of a row along a shaft bears, and what slides on the shaft.

    Paint there takes up the end float, and rubs off under a clip, a spacer or a washer, which
    then stands loose. Common practice, no source.
    """
    for row in design.facts.all(ShaftFact):
        met: dict[str, dict[str, None]] = {}
        for n, piece in enumerate(row.pieces):
            if piece.item != item or item == row.subject:
                continue
            beside = [row.pieces[k] for k in (n - 1, n + 1) if 0 <= k < len(row.pieces)]
            names = (_named(one, row, design) for one in beside if one.item != item)
            met.setdefault(piece.place, {}).update(dict.fromkeys(names))
            if not piece.joint:
                yield f"bore: it slides on the {_title(row.subject, design)}"
        for place, named in met.items():
            if named:
                where = f"{place.replace('_', ' ')}: the faces round it" if place else "both ends"
                yield f"{where}, on which the {' and the '.join(named)} {_bear(named)}"
        if item == row.subject:
            loose = dict.fromkeys(
                one.title for one in row.pieces if not one.joint and one.item != item
            )
            yield from (f"length under the {title}, which slides on it" for title in loose)


def _clips(item: str, design: Design) -> Iterator[str]:
    """The groove of a clip, and the face that it bears on where no row along the shaft tells."""
    rows = list(design.facts.all(ShaftFact))
    for joint in design.joints.values():
        if joint.kind != _CLIPPED or item not in joint.items or len(joint.ends) < 2:
            continue
        what, shaft = _clip(joint.name, design), joint.ends[1]
        if shaft.item == item:
            yield f"{shaft.place.replace('_', ' ')}: groove of the {what}"
        elif not any(row.subject == shaft.item and _has(item, row) for row in rows):
            place = joint.ends[0].place.replace("_", " ")
            yield f"{place or 'face'}: the face round it, on which the {what} bears"


def _named(one: Piece, row: ShaftFact, design: Design) -> str:
    """A neighbour in the row by its title; a groove of the shaft by the clip in it."""
    if one.item != row.subject:
        return one.title
    ends = f"{one.item}.{one.place}"
    joints = (
        joint.name
        for joint in design.joints.values()
        if joint.kind == _CLIPPED and ends in [str(end) for end in joint.ends]
    )
    return next((_clip(name, design) for name in joints), one.title)


def _clip(joint: str, design: Design) -> str:
    found = (one.what for one in design.facts.all(HardwareFact) if one.joint == joint)
    return next(found, "clip")


def _has(item: str, row: ShaftFact) -> bool:
    return any(piece.item == item for piece in row.pieces)


def _bear(named: dict[str, None]) -> str:
    return "bear" if len(named) > 1 else "bears"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
