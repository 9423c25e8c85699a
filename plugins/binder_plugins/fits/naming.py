"""How tasks name what they are done to."""

from __future__ import annotations

from collections.abc import Iterable

from binder.api import Design


def is_made(item: str, design: Design) -> bool:
    """Whether an item is made here, from stock or from pieces."""
    return item in design.parts or item in design.fabrications


def title_of(name: str, design: Design) -> str:
    """The title of an item, its name where it has none."""
    item = design.item(name)
    return item.title if item is not None else name


def listed(words: Iterable[str]) -> str:
    """`a, b and c`."""
    *most, last = words
    return f"{', '.join(most)} and {last}" if most else last
