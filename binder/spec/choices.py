"""Fields that take one of a few words."""

from __future__ import annotations

from typing import Any

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import CoreSchema, core_schema

from binder.parameters.near import did_you_mean
from binder.source import Written
from binder.spec import codes
from binder.spec.reading import written
from binder.spec.refusal import refused


class OneOf:
    """Marks a field that takes one of the given words; `what` names it in findings."""

    def __init__(self, what: str, *words: str) -> None:
        self.what = what
        self.words = words

    def read(self, value: object) -> Written:
        """The word, or a refusal that offers the nearest one."""
        text = written(value, self.what)
        if text in self.words:
            return text
        raise refused(
            codes.NOT_ONE_OF,
            f"'{text}' is not {self.what} that is known here",
            did_you_mean(text, self.words) or f"one of: {', '.join(self.words)}",
        )

    def __get_pydantic_core_schema__(
        self, source: object, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        """Pydantic's way to ask how a marked field is read."""
        return core_schema.no_info_plain_validator_function(self.read)

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        """The words as an enumeration, numbers as numbers, for editors."""
        return {"enum": [int(word) if word.isdigit() else word for word in self.words]}
