"""The data files of `materials` and `stock` as plain YAML, and lengths as makers write them."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
import yaml

PLUGINS = Path(__file__).parents[3] / "plugins" / "binder_plugins"
FILES = (
    PLUGINS / "materials" / "data" / "materials.yaml",
    PLUGINS / "stock" / "data" / "gauges.yaml",
    PLUGINS.parent / "binder_trade" / "drills" / "data" / "drills.yaml",
    PLUGINS / "stock" / "data" / "sections.yaml",
)
UNITS = {"mm": Fraction(1), "in": Fraction("25.4"), "": Fraction(1)}
LENGTH = re.compile(
    r"(?:(?P<whole>[0-9]+) )?(?P<part>[0-9]+(?:/[0-9]+|\.[0-9]+)?)(?: (?P<unit>mm|in))?"
)

Rows = dict[str, dict[str, Any]]


def load(path: Path) -> dict[str, Any]:
    content: dict[str, Any] = yaml.safe_load(path.read_text(encoding="utf-8"))
    return content


def millimetres(text: str) -> Fraction:
    found = LENGTH.fullmatch(text)
    assert found, f"{text!r} is not a length as makers write it"
    number = Fraction(found["whole"] or 0) + Fraction(found["part"])
    return number * UNITS[found["unit"] or ""]


def by_name(files: list[dict[str, Any]], *keys: str) -> Rows:
    rows = [row for content in files for key in keys for row in content.get(key, ())]
    named = {row["name"]: row for row in rows}
    assert len(named) == len(rows), "two tables have one name"
    return named


@pytest.fixture(scope="session")
def mm() -> Callable[[str], Fraction]:
    return millimetres


@pytest.fixture(scope="session")
def catalogue() -> dict[str, Any]:
    return load(FILES[0])


@pytest.fixture(scope="session")
def materials(catalogue: dict[str, Any]) -> Rows:
    return {row["id"]: row for row in catalogue["materials"]}


@pytest.fixture(scope="session")
def gauges() -> Rows:
    return by_name([load(path) for path in FILES[1:]], "gauges")


@pytest.fixture(scope="session")
def series() -> Rows:
    return by_name([load(path) for path in FILES[1:]], "series", "preferred_numbers")


@pytest.fixture(scope="session")
def pairs() -> Rows:
    return by_name([load(path) for path in FILES[1:]], "pairs")


@pytest.fixture(scope="session")
def by_gauge() -> Rows:
    return by_name([load(path) for path in FILES[1:]], "by_gauge")


@pytest.fixture(scope="session")
def bright_bar() -> dict[str, Any]:
    row: dict[str, Any] = by_name([load(FILES[3])], "bar_tolerances")["bright_bar"]
    return row


@pytest.fixture(params=FILES, ids=lambda path: path.name)
def data_file(request: pytest.FixtureRequest) -> Path:
    path: Path = request.param
    return path
