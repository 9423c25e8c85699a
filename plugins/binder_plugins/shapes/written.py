"""A shape's table to its sizes and words, as they are written."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import LENGTH, Model, Size, shown, size_text


def written_sizes(shape: object, before: str = "") -> Iterator[tuple[str, Size]]:
    """Each size of a shape with its name; of a list, `diameter 2`, `point 3 x`."""
    if not isinstance(shape, Model):
        return
    for name in type(shape).model_fields:
        value = getattr(shape, name)
        label = f"{before}{name.replace('_', ' ')}"
        for number, one in enumerate(value if isinstance(value, list) else [value], 1):
            own = f"{label.removesuffix('s')} {number}" if isinstance(value, list) else label
            if isinstance(one, Size):
                yield own, one
            else:
                yield from written_sizes(one, f"{own} ")


def written_rows(shape: object, units: str, before: str = "") -> Iterator[tuple[str, str]]:
    """Each field of a shape for print, in the order in which it is told."""
    if not isinstance(shape, Model):
        return
    for name in type(shape).model_fields:
        value = getattr(shape, name)
        label = f"{before}{name.replace('_', ' ')}"
        if isinstance(value, list):
            yield from _list(value, label.removesuffix("s"), units)
        elif isinstance(value, bool):
            if value:
                yield label.capitalize(), "yes"
        elif value is not None:
            yield label.capitalize(), _text(value, units)


def _list(values: list[object], label: str, units: str) -> Iterator[tuple[str, str]]:
    for number, one in enumerate(values, 1):
        if isinstance(one, Model):
            words = ", ".join(f"{name.lower()} {text}" for name, text in written_rows(one, units))
            yield f"{label} {number}".capitalize(), words
        else:
            yield f"{label} {number}".capitalize(), _text(one, units)


def _text(value: object, units: str) -> str:
    if not isinstance(value, Size):
        return str(value)
    is_length = value.quantity.dimension == LENGTH
    return size_text(value, units) if is_length else shown(value.quantity)
