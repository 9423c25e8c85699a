"""Kinds to the JSON Schema of a spec, as editors take it (draft 2020-12)."""

from __future__ import annotations

from typing import Any

from binder.spec.kinds import Kinds
from binder.spec.language import language

_TEXT = {"type": ["string", "number"]}


def spec_schema(kinds: Kinds) -> dict[str, Any]:
    """The schema of a whole spec, the parts that are read before typing included."""
    schema = language(kinds).model_json_schema()
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema"
    schema["title"] = "A build spec for binder, format 1"
    schema["properties"] |= _BEFORE_TYPING
    _let_parts_be_alike(schema)
    return schema


def _let_parts_be_alike(schema: dict[str, Any]) -> None:
    """What a part takes over from the one that it is like need not be written."""
    for entry in schema["$defs"].values():
        if "like" in entry.get("properties", {}):
            entry["required"] = [key for key in entry.get("required", []) if key != "material"]


_BEFORE_TYPING: dict[str, Any] = {
    "include": {
        "description": "further files of the spec's folder",
        "anyOf": [{"type": "string"}, {"type": "array", "items": {"type": "string"}}],
    },
    "sizes": {
        "description": "named sizes; each may use the others",
        "type": "object",
        "additionalProperties": _TEXT,
    },
    "picture": {
        "description": "a picture to measure from, with one known length",
        "type": "object",
        "additionalProperties": True,
    },
}
