"""Fields that take one value or a list of them, and give a tuple."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler, ValidationInfo
from pydantic_core import CoreSchema, core_schema

MOST_ENTRIES = 200


class OneOrMany:
    """Marks a field of one plain value or a list; `read` reads each, `schema` tells editors.

    The tags of the two ways hold signs that no key can have, so that they show in no place.
    """

    def __init__(
        self, read: Callable[[object, ValidationInfo], object], schema: dict[str, Any]
    ) -> None:
        self.read = read
        self.schema = schema

    def __get_pydantic_core_schema__(
        self, source: object, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        """Pydantic's way to ask how a marked field is read."""
        one = core_schema.with_info_plain_validator_function(self.read)
        many = core_schema.list_schema(one, min_length=1, max_length=MOST_ENTRIES)
        return core_schema.tagged_union_schema(
            {
                "<one>": core_schema.no_info_after_validator_function(lambda item: (item,), one),
                "<many>": core_schema.no_info_after_validator_function(tuple, many),
            },
            discriminator=lambda value: "<many>" if isinstance(value, list) else "<one>",
        )

    def __get_pydantic_json_schema__(
        self, schema: CoreSchema, handler: GetJsonSchemaHandler
    ) -> dict[str, Any]:
        """One such value or a list, for editors."""
        return {"anyOf": [self.schema, {"type": "array", "items": self.schema, "minItems": 1}]}
