"""The published figures beside these tests, as plain rows."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml

HERE = Path(__file__).parent


def published() -> dict[str, Any]:
    content: dict[str, Any] = yaml.safe_load((HERE / "published.yaml").read_text(encoding="utf-8"))
    return content


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    """Hands each published row to the tests that ask for its group."""
    content = published()
    if "limits_row" in metafunc.fixturenames:
        rows = [
            (row, group.get("tolerance", 0)) for group in content["limits"] for row in group["rows"]
        ]
        metafunc.parametrize("limits_row", rows, ids=[f"{row[0]} {row[1]}" for row, _ in rows])
    for group in ("not_defined", "tolerances", "tolerance_factors", "fits", "fit_names"):
        if f"{group}_row" in metafunc.fixturenames:
            rows = content[group]["rows"]
            ids = [" ".join(str(cell) for cell in row[:3]) for row in rows]
            metafunc.parametrize(f"{group}_row", rows, ids=ids)
