"""Sizes as a micrometer reads them."""

from __future__ import annotations

import pytest

from binder_plugins.fits.figures import signed, size


@pytest.mark.parametrize(("mm", "shown"), [(-0.0, "0.000"), (-0.0002, "0.000"), (5.99, "5.990")])
def test_nothing_has_no_minus(mm: float, shown: str) -> None:
    assert size(mm, "mm") == shown


def test_a_difference_has_its_sign() -> None:
    assert [signed(one, "mm") for one in (-0.022, -0.0002, 0.02)] == [
        "− 0.022",
        "+ 0.000",
        "+ 0.020",
    ]
