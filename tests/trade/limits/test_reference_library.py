"""Every fit that `pressfit`, a public library of hole-basis fits, has: a second reckoning.

pressfit 0.1.0 covers holes H and the shafts c d e f g h js k m n p s u in grades 5 to 11, up to
500 mm. Its tables were entered by other hands from other copies of the standard. No difference
was found among its 32,487 fits at 51 sizes, so none is excused here.
"""

from __future__ import annotations

from collections.abc import Iterator
from importlib import import_module
from typing import Any

import pytest

from binder_trade.limits import fit, shaft_letters

# One size within, and the upper end of, every step of either table.
ENDS = (
    *(3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180),
    *(200, 225, 250, 280, 315, 355, 400, 450, 500),
)
SIZES = (0.5, *(size for end in ENDS for size in (end - 0.75, float(end))))
GRADES = range(5, 12)

reference: Any = import_module("pressfit")  # it ships no types
tables: Any = import_module("pressfit.tables")


def shared_fits() -> Iterator[tuple[str, str]]:
    for letter in tables.SHAFT_LETTERS:
        for hole_grade in GRADES:
            for shaft_grade in GRADES:
                yield f"H{hole_grade}", f"{letter}{shaft_grade}"


def test_the_library_has_the_letters_that_we_think() -> None:
    assert set(tables.SHAFT_LETTERS) == {*"cdefghkmnpsu", "js"}
    assert set(tables.SHAFT_LETTERS) < shaft_letters()
    assert tuple(tables.GRADES) == tuple(GRADES)


@pytest.mark.parametrize("size_mm", SIZES)
def test_every_shared_fit_is_the_same(size_mm: float) -> None:
    differing = {}
    for hole, shaft in shared_fits():
        ours = fit(size_mm, hole, shaft)
        theirs = reference.fit(f"{hole}/{shaft}", size_mm)
        found = (ours.clearance_min_um, ours.clearance_max_um, ours.hole.upper_um, ours.kind)
        expected = (*theirs.clearance_um, theirs.hole_es_um, theirs.kind)
        if found != expected:
            differing[hole, shaft] = (found, expected)
    assert differing == {}
