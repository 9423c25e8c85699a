"""Classes and fits as makers write them, and what is no class."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.limits import GRADES, NotDefined, fit, read_class, read_fit, shaft_letters


@pytest.mark.parametrize(
    ("text", "letter", "grade"),
    [
        ("H7", "H", "7"),
        (" g6 ", "g", "6"),
        ("JS 9", "JS", "9"),
        ("zc11", "zc", "11"),
        ("h01", "h", "01"),
        ("h0", "h", "0"),
        ("cd18", "cd", "18"),
    ],
)
def test_a_class_is_read(text: str, letter: str, grade: str) -> None:
    assert read_class(text) == (letter, grade)


# ISO 286-1:2010, clause 4: I, L, O, Q, W are not used.
@pytest.mark.parametrize(
    ("text", "reason", "way_out"),
    [
        ("q9", "there is no q", "p or r"),
        ("W6", "there is no W", "V or X"),
        ("i7", "there is no i", "h or js"),
        ("L7", "there is no L", "K or M"),
        ("o7", "there is no o", "n or p"),
        ("H", "H has no grade", "H7"),
        ("H20", "no grade '20'", "1 to 18"),
        ("H07", "no grade '07'", "1 to 18"),
        ("7H", "grade comes first", "write H7"),
        ("6js", "grade comes first", "write js6"),
        ("7Q", "is not a class", "as H7"),
        ("", "no class is written", "as H7"),
        ("  ", "no class is written", "as H7"),
        ("7", "is not a class", "as H7"),
        ("Js7", "mixes capitals", "JS for a hole, js for a shaft"),
        ("hH7", "no 'hH' in ISO 286", "A to ZC"),
        ("H-7", "is not a class", "as H7"),
        ("H7/g6", "is a fit", "one half"),
        ("H\u0667", "is not a class", "as H7"),
        ("\u017f7", "is not a class", "as H7"),
        ("X" * 1000, "…", "A to ZC"),
    ],
)
def test_what_is_no_class(text: str, reason: str, way_out: str) -> None:
    with pytest.raises(NotDefined) as caught:
        read_class(text)
    assert reason in caught.value.reason
    assert way_out in caught.value.way_out
    assert len(str(caught.value)) < 200


@pytest.mark.parametrize(
    ("text", "hole", "shaft"),
    [
        ("H7/g6", "H7", "g6"),
        (" H7 / g6\n", "H7", "g6"),
        ("G7/h6", "G7", "h6"),
        ("JS9/h9", "JS9", "h9"),
        ("H 11 / c 11", "H11", "c11"),
    ],
)
def test_a_fit_is_read(text: str, hole: str, shaft: str) -> None:
    assert read_fit(text) == (hole, shaft)


@pytest.mark.parametrize(
    ("text", "reason", "way_out"),
    [
        ("g6/H7", "the hole comes before the shaft", "write H7/g6"),
        ("H7/q9", "there is no q", "p or r"),
        ("H7/K6", "has no shaft", "H7/h6"),
        ("g6/h6", "has no hole", "H7/h6"),
        ("H7", "is not a fit", "as H7/g6"),
        ("H7/g6/h6", "is not a fit", "as H7/g6"),
        ("", "is not a fit", "as H7/g6"),
        ("H7/", "no class is written", "as H7"),
        ("/g6", "no class is written", "as H7"),
    ],
)
def test_what_is_no_fit(text: str, reason: str, way_out: str) -> None:
    with pytest.raises(NotDefined) as caught:
        read_fit(text)
    assert reason in caught.value.reason
    assert way_out in caught.value.way_out


def test_a_fit_takes_its_halves_in_order() -> None:
    with pytest.raises(NotDefined, match="hole comes before"):
        fit(10, "g6", "H7")
    with pytest.raises(NotDefined, match="is not a fit"):
        fit(10, "H7/g6", "h6")


@given(st.text(max_size=12))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        letter, grade = read_class(text)
    except NotDefined:
        return
    assert letter.lower() in shaft_letters()
    assert grade in GRADES


@given(st.text(alphabet="HhgGjJsSkqQ/ 0123456789", max_size=9))
def test_any_text_like_a_fit_is_read_or_refused(text: str) -> None:
    try:
        hole, shaft = read_fit(text)
    except NotDefined:
        return
    assert hole[0].isupper()
    assert shaft[0].islower()
