"""The places of a part that a joint may name."""

from __future__ import annotations

from collections.abc import Iterable

from binder.design import Fabrication, Item, Part


def places_of(item: Item) -> frozenset[str]:
    """Features, the named steps of the shape, and the places that every part has."""
    if isinstance(item, Part):
        return frozenset((*_names(item.features), *_steps(item.shape), *_ANY))
    if isinstance(item, Fabrication):
        return frozenset((*_names(item.features), *_ANY))
    return frozenset()


_ANY = (
    "ends",
    "middle",
    "top",
    "underside",
    "front",
    "back",
    "left",
    "right",
    "outside",
)


def _names(features: Iterable[object]) -> Iterable[str]:
    return (str(getattr(feature, "name", "")) for feature in features)


def _steps(shape: object) -> Iterable[str]:
    steps = shape if isinstance(shape, list) else ()
    return (str(step.name) for step in steps if getattr(step, "name", None))
