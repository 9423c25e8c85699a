"""The JSON Schema of a workshop file."""

from __future__ import annotations

import json
from collections.abc import Iterator
from typing import Any

from binder.workshop import workshop_schema


def _properties(schema: dict[str, Any]) -> Iterator[tuple[str, dict[str, Any]]]:
    for name, model in [("a workshop", schema), *schema["$defs"].items()]:
        for key, field in model["properties"].items():
            yield f"{key} of {name}", field


def test_it_is_plain_json_and_the_same_each_time() -> None:
    assert json.dumps(workshop_schema()) == json.dumps(workshop_schema())


def test_every_field_is_described() -> None:
    without = [place for place, field in _properties(workshop_schema()) if not _says(field)]
    assert without == []


def _says(field: dict[str, Any]) -> bool:
    return bool(field.get("description"))


def test_lengths_are_described_with_their_unit() -> None:
    definitions = workshop_schema()["$defs"]
    lathe = definitions["Lathe"]["properties"]
    for key in ("swing", "swing_over_cross_slide", "between_centres", "spindle_bore", "read_out"):
        assert "in mm or in" in lathe[key]["description"]
    assert "r/min" in lathe["speeds"]["description"]


def test_no_unknown_key_is_let_in() -> None:
    schema = workshop_schema()
    assert schema["additionalProperties"] is False
    assert all(model["additionalProperties"] is False for model in schema["$defs"].values())


def test_one_value_or_a_list_of_them() -> None:
    speeds = workshop_schema()["$defs"]["Lathe"]["properties"]["speeds"]
    assert [way["type"] for way in speeds["anyOf"]] == ["string", "array"]
