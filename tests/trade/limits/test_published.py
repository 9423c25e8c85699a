"""Limits, tolerances and fits against printed tables; `published.yaml` names each source."""

from __future__ import annotations

from typing import Any

import pytest

from binder_trade.limits import (
    NotDefined,
    fit,
    limits,
    name_of,
    read_fit,
    tolerance_factor_um,
    tolerance_um,
)


def test_limits_are_those_of_the_printed_table(limits_row: tuple[list[Any], float]) -> None:
    (nominal_mm, cls, upper_um, lower_um), allowed_um = limits_row
    found = limits(nominal_mm, cls)
    assert abs(found.upper_um - upper_um) <= allowed_um
    assert abs(found.lower_um - lower_um) <= allowed_um


def test_a_class_that_the_notes_exclude_is_refused(not_defined_row: list[Any]) -> None:
    with pytest.raises(NotDefined):
        limits(*not_defined_row)


def test_tolerances_are_those_of_the_printed_table(tolerances_row: list[Any]) -> None:
    nominal_mm, grade, expected_um = tolerances_row
    assert tolerance_um(nominal_mm, grade) == expected_um


def test_the_tolerance_factor_is_that_of_annex_a(tolerance_factors_row: list[Any]) -> None:
    over_mm, up_to_mm, expected_um = tolerance_factors_row
    for inside_mm in (over_mm + 0.1, up_to_mm):
        assert tolerance_factor_um(inside_mm) == pytest.approx(expected_um, abs=0.001)


def test_fits_have_the_printed_clearances(fits_row: list[Any]) -> None:
    nominal_mm, hole, shaft, least_um, greatest_um, kind = fits_row
    found = fit(nominal_mm, hole, shaft)
    assert (found.clearance_min_um, found.clearance_max_um) == (least_um, greatest_um)
    assert found.kind == kind


def test_preferred_fits_have_the_printed_names(fit_names_row: list[Any]) -> None:
    designation, name = fit_names_row
    assert read_fit(designation)
    assert name in name_of(designation, 10)
