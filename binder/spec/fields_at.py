"""The model that stands at a place of the language, found by walking its annotations."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, get_args

from pydantic import BaseModel


def model_at(model: type[BaseModel], loc: tuple[str | int, ...]) -> type[BaseModel] | None:
    """The model reached from `model` by the steps of an error's place, tags included."""
    here: list[Any] = [model]
    for step in loc:
        here = [found for one in here for found in _below(one, step)]
    return next((one for one in _flattened(here) if _is_model(one)), None)


def _below(annotation: Any, step: str | int) -> Iterator[Any]:  # noqa: ANN401
    for one in _flattened([annotation]):
        if _is_model(one):
            field = one.model_fields.get(step) if isinstance(step, str) else None
            if field is not None:
                yield field.annotation
        elif isinstance(step, str) and step.startswith("<"):
            if f"<{getattr(one, 'kind', '')}>" == step:
                yield one
        else:
            yield from get_args(one)[-1:]


def _flattened(annotations: list[Any]) -> Iterator[Any]:
    """Unions and Annotated taken apart."""
    for one in annotations:
        args = get_args(one)
        if hasattr(one, "__metadata__"):
            yield from _flattened([args[0]])
        elif args and getattr(one, "__origin__", None) not in (dict, list, tuple):
            yield from _flattened(list(args))
        else:
            yield one


def _is_model(one: Any) -> bool:  # noqa: ANN401
    return isinstance(one, type) and issubclass(one, BaseModel)
