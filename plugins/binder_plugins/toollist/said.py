"""Values of a workshop file to words, as their author wrote them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from binder.api import Model


def said(value: object) -> str:
    """One line; '' for what is not there. A size or run keeps the author's own text."""
    if isinstance(value, Model | Mapping):
        return _joined(dict(told(value)))
    if isinstance(value, list | tuple):
        return ", ".join(said(one) for one in value)
    if value is None or isinstance(value, bool):
        return ""
    return " ".join(str(getattr(value, "text", value)).split())


def told(value: Model | Mapping[str, object]) -> Iterator[tuple[str, object]]:
    """What is told of a thing: names in plain words, with all that is not there left out."""
    pairs = value.items() if isinstance(value, Mapping) else _fields(value)
    for name, one in pairs:
        if one is True or said(one):
            yield name, one


def _fields(model: Model) -> Iterator[tuple[str, object]]:
    """Each field by its title where its own name would be read as something else."""
    fields = type(model).model_fields.items()
    return ((one.title or name.replace("_", " "), getattr(model, name)) for name, one in fields)


def _joined(pairs: Mapping[str, object]) -> str:
    """`jaws 3, grips 2 mm to 80 mm`; where there are lists in it, semicolons part them."""
    is_deep = any(isinstance(one, Model | Mapping | list | tuple) for one in pairs.values())
    phrases = [_phrase(name, one) for name, one in pairs.items()]
    return ("; " if is_deep else ", ").join(phrases)


def _phrase(name: str, value: object) -> str:
    if value is True:
        return name
    if isinstance(value, Model | Mapping):
        return f"{name} ({said(value)})"
    return f"{name}: {said(value)}" if name == "note" else f"{name} {said(value)}"
