"""Any noun of the compiler to plain lists, tables and texts that JSON can hold."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from fractions import Fraction
from typing import Any

from pydantic import BaseModel

from binder.diagnostics import Span
from binder.spec.values import Size
from binder.units import Quantity, shown


def plain(value: object) -> Any:  # noqa: ANN401 - whatever JSON holds
    """Quantities as they are printed, places as file:line:column, fractions as text."""
    if value is None or isinstance(value, (bool, int, float)):
        return value
    if isinstance(value, (Span, Fraction, str)):
        return str(value)
    if isinstance(value, bytes):
        return f"{len(value)} bytes"
    if isinstance(value, Quantity):
        return shown(value)
    if isinstance(value, Size):
        return {"text": str(value.text), "is": shown(value.quantity), "at": str(value.span)}
    return _container(value)


def _container(value: object) -> Any:  # noqa: ANN401 - whatever JSON holds
    if isinstance(value, BaseModel):
        return {name: plain(getattr(value, name)) for name in value.model_fields_set}
    if is_dataclass(value):
        return {one.name: plain(getattr(value, one.name)) for one in fields(value)}
    if isinstance(value, Mapping):
        return {str(key): plain(one) for key, one in value.items()}
    if isinstance(value, (list, tuple)):
        return [plain(one) for one in value]
    return str(value)
