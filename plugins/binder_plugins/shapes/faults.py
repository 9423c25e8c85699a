"""Features that do not fit the shape that they are cut in."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import Diagnostic, Feature, Part, Size, did_you_mean, shown_length
from binder_plugins.shapes import codes
from binder_plugins.shapes.features import Hole, Placed
from binder_plugins.shapes.needed import Needed
from binder_plugins.shapes.turned import Measured
from binder_plugins.shapes.vocabulary.rods import Sheet

_FACES = (
    "top",
    "underside",
    "front",
    "back",
    "left",
    "right",
    "outside",
    "ends",
    "edges",
    "corners",
    "middle",
    "all",
)
_PARTS_OF = {
    "gear": ["hub"],
    "ratchet": ["hub"],
    "sprocket": ["hub"],
    "cam": ["hub"],
    "pulley": ["hub", *(f"step{n}" for n in range(1, 9))],
    "flywheel": ["hub"],
    "handwheel": ["hub"],
}
_ON_AXIS = ("drilled", "reamed", "bored")


def feature_faults(part: Part, needed: Needed) -> Iterator[Diagnostic]:
    """Findings about all features of a part."""
    for feature in part.features:
        if isinstance(feature.entry, Placed):
            yield from _place_faults(part, feature, feature.entry)
        if isinstance(feature.entry, Hole):
            yield from _hole_faults(part, feature, feature.entry, needed)


def _place_faults(part: Part, feature: Feature, entry: Placed) -> Iterator[Diagnostic]:
    known = [*_FACES, *(one.name for one in part.features), *_step_names(part)]
    for place in (entry.on, entry.across):
        is_own = place == feature.name and place not in _FACES
        if place is not None and (place not in known or is_own):
            yield codes.PLACE_ON_NOTHING.at(
                place.span,
                f"'{part.name}' has no '{place}'",
                help=did_you_mean(place, known) or f"it has: {', '.join(known[len(_FACES) :])}",
            )


def _step_names(part: Part) -> list[str]:
    if isinstance(part.shape, Sheet):
        return [f"leg{n}" for n in range(1, len(part.shape.bends) + 2)] if part.shape.bends else []
    if not isinstance(part.shape, list):
        return _PARTS_OF.get(part.shape_kind, [])
    return [str(step.name) for step in part.shape if step.name]


def _hole_faults(part: Part, feature: Feature, entry: Hole, needed: Needed) -> Iterator[Diagnostic]:
    limit = _limit(needed, entry)
    if isinstance(entry.depth, Size) and limit is not None and entry.depth.exact > limit:
        yield codes.DEEPER_THAN_PART.at(
            entry.depth.span,
            f"'{feature.name}' is {shown_length(entry.depth.exact)} deep, "
            f"the '{part.name}' is {shown_length(limit)} through there",
            help="write `depth: through`, or a smaller depth",
        )
    step = _step(needed, entry)
    size = getattr(entry, feature.kind)
    if step is not None and feature.kind in _ON_AXIS and isinstance(size, Size):
        yield from _too_large(feature, size, step, is_across=entry.across is not None)


def _step(needed: Needed, entry: Hole) -> Measured | None:
    name = entry.across or entry.on
    return next((step for step in needed.steps if name and step.step.name == name), None)


def _limit(needed: Needed, entry: Hole) -> Fraction | None:
    """How far a hole can go before it comes out, where that is known."""
    if not needed.steps:
        across = (needed.round,) if needed.round is not None else ()
        sizes: list[Fraction] = [needed.length, *(needed.flat or across)]
        return max(sizes)
    if entry.across is not None:
        step = _step(needed, entry)
        if step is None or step.step.diameter is None:
            return None
        size: Size = step.step.diameter
        return size.exact
    return needed.length


def _too_large(
    feature: Feature, size: Size, step: Measured, *, is_across: bool
) -> Iterator[Diagnostic]:
    across = step.step.diameter
    if across is None:
        return
    if size.exact >= across.exact or (is_across and size.exact >= step.length):
        yield codes.HOLE_OUT_OF_STEP.at(
            size.span,
            f"'{feature.name}' takes all of the step '{step.step.name}'",
            help="a smaller hole, or a larger step",
        )
