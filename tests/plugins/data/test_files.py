"""What every data file must hold to, whatever it lists."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import yaml

STATUS = {"verified", "memory"}
NAME = re.compile(r"[a-z][a-z0-9_]*")


def mappings(node: yaml.Node) -> Iterator[yaml.MappingNode]:
    if isinstance(node, yaml.MappingNode):
        yield node
        for _, value in node.value:
            yield from mappings(value)
    elif isinstance(node, yaml.SequenceNode):
        for value in node.value:
            yield from mappings(value)


def test_no_key_is_written_twice(data_file: Path) -> None:
    # YAML keeps the last of two equal keys in silence: a gauge typed twice would hide one size.
    root = yaml.compose(data_file.read_text(encoding="utf-8"), Loader=yaml.SafeLoader)
    assert root is not None
    for node in mappings(root):
        keys = [key.value for key, _ in node.value]
        assert len(keys) == len(set(keys)), f"line {node.start_mark.line + 1}"


def test_every_table_of_sizes_has_title_source_status_and_members(
    gauges: dict[str, Any], series: dict[str, Any], pairs: dict[str, Any], by_gauge: dict[str, Any]
) -> None:
    for row in [*gauges.values(), *series.values(), *pairs.values(), *by_gauge.values()]:
        assert NAME.fullmatch(row["name"])
        assert row["title"].strip()
        assert row["source"].strip()
        assert row["status"] in STATUS
        assert len(row["members"]) >= 5, row["name"]


def test_every_member_is_text(
    gauges: dict[str, Any], series: dict[str, Any], pairs: dict[str, Any], by_gauge: dict[str, Any]
) -> None:
    # An unquoted 2.50 would come back as a float and lose its last figure.
    for row in gauges.values():
        assert all(isinstance(text, str) for item in row["members"].items() for text in item)
    for row in [*series.values(), *pairs.values(), *by_gauge.values()]:
        assert all(isinstance(text, str) for text in row["members"]), row["name"]


def test_stock_lists_without_a_standard_do_not_call_themselves_verified(
    series: dict[str, Any], pairs: dict[str, Any], by_gauge: dict[str, Any]
) -> None:
    for row in [*series.values(), *pairs.values(), *by_gauge.values()]:
        if "usual ranges" in row["source"]:
            assert row["status"] == "memory", row["name"]
