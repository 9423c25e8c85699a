"""The thumb rule of the Model Engineer's Handbook."""

from __future__ import annotations

import pytest

from binder_trade.explained import NotDefined
from binder_trade.fits.thumb_rule import thumb_names, thumb_shaft


@pytest.mark.parametrize(
    ("name", "um"),
    [("force", 17), ("drive", 10), ("push", -6), ("slide", -10), ("close run", -20),
     ("normal run", -34), ("easy run", -52)],
)  # fmt: skip
def test_at_six_millimetres(name: str, um: float) -> None:
    # The rule worked out at 6 mm, whole micrometres.
    assert round(thumb_shaft(6, name).difference_um) == um


@pytest.mark.parametrize(("name", "inches"), [("push", 0.9995), ("shrink", 1.002)])
def test_printed_examples_at_one_inch(name: str, inches: float) -> None:
    # Public table of the Model Engineer's Handbook, both examples.
    assert thumb_shaft(25.4, name).shaft_mm / 25.4 == pytest.approx(inches, abs=1e-9)


def test_the_table_runs_from_tight_to_loose() -> None:
    for size in (1.0, 6.0, 50.0):
        sizes = [thumb_shaft(size, name).difference_um for name in thumb_names()]
        assert sizes == sorted(sizes, reverse=True)


def test_the_constant_is_stated() -> None:
    step = thumb_shaft(6, "normal run").steps[0]
    assert step.formula == "-1 -1.5 × 0.2362 in"
    assert step.value == "-1.35 thou = −34.4 µm"


def test_another_name_is_refused() -> None:
    with pytest.raises(NotDefined, match="did you mean push"):
        thumb_shaft(6, "pushh")
