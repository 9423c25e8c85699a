"""Plain shanks of bolts and cap screws against ISO 4014 and ISO 4762, from memory."""

from __future__ import annotations

import pytest

from binder_plugins.fasteners.shanks import plain_shank


@pytest.mark.parametrize(
    ("what", "length", "shank"),
    [
        ("M5 × 60 mm hexagon bolt", 60, 44),  # b = 16
        ("M6 × 40 mm hexagon bolt", 40, 22),  # b = 18
        ("M3 × 10 mm hexagon bolt", 10, 0),
        ("M4 × 40 mm socket cap screw", 40, 20),  # b = 20
        ("M4 × 16 mm socket cap screw", 16, 0),
        ("M4 × 40 mm cheese head screw", 40, 0),
    ],
)
def test_the_shank_is_what_the_thread_leaves(what: str, length: float, shank: float) -> None:
    assert plain_shank(what, length) == shank
