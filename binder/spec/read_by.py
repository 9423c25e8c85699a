"""Marks a field that is read by a function of ours, and by nothing else."""

from __future__ import annotations

import inspect
from collections.abc import Callable
from functools import cache
from typing import Any

from pydantic import GetCoreSchemaHandler
from pydantic_core import CoreSchema, core_schema


@cache
def _takes_context(read: Callable[..., Any]) -> bool:
    """Asked once of each function: a few dozen read the thousand fields of the language."""
    return len(inspect.signature(read).parameters) > 1


class ReadBy:
    """The function that reads a field's raw value, with or without pydantic's context.

    Pydantic's own marker does the same and also builds a schema for the type that comes out,
    which nothing here uses and which would take a third of the start-up.
    """

    def __init__(self, read: Callable[..., Any]) -> None:
        self.read = read

    def __get_pydantic_core_schema__(
        self, source: object, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        """Pydantic's way to ask how a marked field is read."""
        if _takes_context(self.read):
            return core_schema.with_info_plain_validator_function(self.read)
        return core_schema.no_info_plain_validator_function(self.read)
