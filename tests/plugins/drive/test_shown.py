"""Figures as they are printed: a limit is never rounded up."""

from __future__ import annotations

import pytest

from binder_plugins.drive.duties.shown import at_most, two_figures


@pytest.mark.parametrize(
    ("value", "limit", "near"),
    [
        (12_530, "12000", "13000"),  # 25 m/s on a rim of 38.1 mm: 60 000 × 25 / (π × 38.1)
        (1_990, "1900", "2000"),
        (2_000, "2000", "2000"),
        (87.9, "87", "88"),
    ],
)
def test_what_may_not_be_gone_over_is_rounded_down(value: float, limit: str, near: str) -> None:
    assert at_most(value) == limit
    assert two_figures(value) == near
