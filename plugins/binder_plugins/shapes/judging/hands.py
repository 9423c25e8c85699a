"""Parts in pairs of hands, or the opposite hand of another: has its shape a hand at all."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from binder.api import Design, Diagnostic, Part
from binder_plugins.shapes import form_codes
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Vector

# Their features are placed from faces that are left and right of the part as it lies.
_HANDED = ("block", "plate", "board", "cut")
_BOXES = ("block", "plate", "board")
_ROUND = ("drilled", "reamed", "bored", "tapped", "counterbored", "countersunk", "spotfaced")
_BROKEN = ("chamfered", "rounded")
_FINE, _ALONG = 4, 0.999


def check_hands(design: Design) -> Iterator[Diagnostic]:
    """Every mirrored part whose shape is not told by its faces."""
    for part in design.parts.values():
        if part.is_mirrored and part.shape_kind and part.shape_kind not in _HANDED:
            yield form_codes.HAND_OF_ROUND_WORK.at(
                part.at,
                f"'{part.name}' is the opposite hand of '{part.like}', which has none",
                help="leave out `mirrored: true`",
            )
        elif (part.handed or part.is_mirrored) and is_its_own_mirror(part, design):
            word = "handed" if part.handed else "mirrored"
            yield form_codes.HANDS_ALIKE.at(
                part.at,
                f"'{part.name}' is `{word}`, and both hands of it are the same part",
                help=f"leave out `{word}: true`, and turn one round under `positions:` where they "
                "face one another; or give it what makes the hands differ",
            )


def is_its_own_mirror(part: Part, design: Design) -> bool:
    """Whether a plane cuts the part into halves that mirror each other, all that is cut told.

    A plate turned over is its own mirror where all goes through; as its good face would lie
    inside then (common practice, no source), that plane counts for blocks alone.
    """
    form = design.facts.about(FormFact, part.name)
    if form is None or form.shape not in _BOXES:
        return False
    told = {one.name for one in form.located}
    if any(one.name not in told for one in part.features if not one.is_dummy):
        return False
    if not all(one.kind in _ROUND or _is_all_round(one, part) for one in form.located):
        return False
    holes = [one for one in form.located if one.kind in _ROUND]
    axes = (0, 1, 2) if form.shape == "block" else (0, 1)
    return any(_mirrors(holes, axis, form.size) for axis in axes)


def _is_all_round(one: Located, part: Part) -> bool:
    """Edges that are broken all round have no hand."""
    entry = next((each.entry for each in part.features if each.name == one.name), None)
    on = str(getattr(entry, "on", None) or "edges")
    return one.kind in _BROKEN and on in ("edges", "all", "corners")


def _mirrors(holes: list[Located], axis: int, size: Vector) -> bool:
    """Whether the holes on one side of the middle are those on the other."""
    here = Counter(_key(one, spot) for one in holes for spot in one.spots)
    there = Counter(_key(one, spot, axis, size[axis]) for one in holes for spot in one.spots)
    return here == there


def _key(one: Located, spot: Vector, axis: int = -1, long: float = 0.0) -> tuple[object, ...]:
    """A hole by its kind, sizes, place and way; the same seen in a mirror across an axis."""
    place = [long - at if n == axis else at for n, at in enumerate(spot)]
    way = [-to if n == axis else to for n, to in enumerate(one.frame.z)]
    sizes = (one.kind, one.diameter, one.depth, one.note)
    if one.depth is None:  # right through: the same from either face
        lies = [round(abs(to), _FINE) for to in way]
        place = [0.0 if there > _ALONG else at for at, there in zip(place, lies, strict=True)]
        way = lies
    return (*sizes, *(round(at, _FINE) + 0.0 for at in (*place, *way)))
