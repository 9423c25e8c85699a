"""Functions that are imported when they are first called: most runs call few of them."""

from __future__ import annotations

from collections.abc import Callable
from importlib import import_module
from typing import Any


def late(module: str, name: str) -> Callable[..., Any]:
    """The function of a module by its name, which is not imported before the first call.

    For pages, exports and steps that only some runs come to: a step of a check gains nothing.
    """

    def call(*arguments: object) -> Any:  # noqa: ANN401
        return getattr(import_module(module), name)(*arguments)

    call.__name__ = name
    return call
