"""The fits to choose first."""

from __future__ import annotations

import pytest

from binder_trade.limits import NotDefined, fit, name_of, preferred_fits, read_fit

# ANSI B4.2-1978 (R2004), the ten pairs of preferred fits.
TEN = {
    "loose running": ("H11/c11", "C11/h11"),
    "free running": ("H9/d9", "D9/h9"),
    "close running": ("H8/f7", "F8/h7"),
    "sliding": ("H7/g6", "G7/h6"),
    "locational clearance": ("H7/h6", "H7/h6"),
    "locational transition": ("H7/k6", "K7/h6"),
    "locational transition (more accurate / tighter)": ("H7/n6", "N7/h6"),
    "locational interference": ("H7/p6", "P7/h6"),
    "medium drive": ("H7/s6", "S7/h6"),
    "force": ("H7/u6", "U7/h6"),
}


def test_the_ten_named_fits_stand_first_on_each_basis() -> None:
    named = [one for one in preferred_fits() if one.name]
    assert [one.name for one in named] == [*TEN, *TEN]
    for one in named:
        assert one.designation == TEN[one.name][0 if one.basis == "hole" else 1]
        assert (one.status, one.use == "") == ("verified", False)
    assert tuple(named) == preferred_fits()[:20]


def test_every_fit_is_listed_once_on_its_basis_with_its_source() -> None:
    known = [(one.basis, one.designation) for one in preferred_fits()]
    assert len(known) == len(set(known))
    for one in preferred_fits():
        hole, shaft = read_fit(one.designation)
        assert (hole[0] == "H") if one.basis == "hole" else (shaft[0] == "h")
        assert all(one.sources)


# ISO 286-1:2010, preferred fits of the hole-basis system.
@pytest.mark.parametrize("designation", ["H7/js6", "H8/e8", "H11/b11", "H6/g5", "H7/x6"])
def test_iso_lists_more_than_have_a_name(designation: str) -> None:
    (one,) = [one for one in preferred_fits() if one.designation == designation]
    assert (one.name, one.kind, one.note) == ("", "", "")


def test_what_stands_in_no_checked_source_says_so() -> None:
    from_memory = {one.basis for one in preferred_fits() if one.status == "memory"}
    assert from_memory == {"shaft"}


@pytest.mark.parametrize("nominal_mm", [0.5, 2, 3, 6, 10, 18, 30, 50, 80, 120, 250, 500])
def test_a_named_fit_is_of_its_kind_but_for_h7_p6_up_to_3_mm(nominal_mm: float) -> None:
    for one in preferred_fits():
        if not one.name:
            continue
        kind = fit(nominal_mm, *read_fit(one.designation)).kind
        is_exception = one.designation == "H7/p6" and nominal_mm <= 3
        assert kind == ("transition" if is_exception else one.kind)
        assert (one.note == "a transition fit up to 3 mm") == (one.designation == "H7/p6")


# ANSI B4.2-1978, note to the table of hole-basis transition and interference fits.
def test_the_name_of_h7_p6_says_what_it_is_up_to_3_mm() -> None:
    assert name_of("H7/p6", 3) == "locational interference (a transition fit at this size)"
    assert name_of("H7/p6", 3.1) == "locational interference"


def test_names_go_by_the_designation_and_by_the_kind_without_a_name() -> None:
    assert name_of(" G7 / h6", 10) == "sliding"
    assert name_of("H8/e8", 10) == "clearance fit"
    assert name_of("H7/m6", 10) == "transition fit"
    assert name_of("H7/x6", 10) == "interference fit"
    with pytest.raises(NotDefined, match="t is not defined up to 24 mm"):
        name_of("H7/t6", 10)
