"""Sizes as a micrometer reads them."""

from __future__ import annotations

import pytest

from binder_plugins.fits.figures import signed, size, span


@pytest.mark.parametrize(("mm", "shown"), [(-0.0, "0.000"), (-0.0002, "0.000"), (5.99, "5.990")])
def test_nothing_has_no_minus(mm: float, shown: str) -> None:
    assert size(mm, "mm") == shown


def test_a_difference_has_its_sign() -> None:
    assert [signed(one, "mm") for one in (-0.022, -0.0002, 0.02)] == [
        "− 0.022",
        "+ 0.000",
        "+ 0.020",
    ]


@pytest.mark.parametrize(
    ("near", "far", "said"),
    [
        (-0.010, -0.034, "0.010 to 0.034 mm under"),
        (0.029, 0.0, "0.000 to 0.029 mm over"),  # a press fit: from no nip on
        (-0.0, -0.024, "0.000 to 0.024 mm under"),  # H7/h6
        (0.012, -0.014, "0.012 mm over to 0.014 mm under"),  # H7/k6 may be either (ISO 286-2)
    ],
)
def test_a_span_from_the_mate_says_which_way_instead_of_a_sign(
    near: float, far: float, said: str
) -> None:
    assert span(near, far, "mm") == said
