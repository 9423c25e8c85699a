"""The little language of rules reads what it should and refuses the rest."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making.precedence import BadPredicate, predicate


@pytest.mark.parametrize(
    ("text", "words", "answer"),
    [
        ("drill", "drill", True),
        ("drill", "bore", False),
        ("drill and cross", "drill", False),
        ("drill and cross", "drill cross", True),
        ("drill or bore", "bore", True),
        ("not pilot", "drill", True),
        ("drill and not pilot", "drill pilot", False),
        ("drill or bore and fit", "drill", True),  # `and` binds closer
        ("(drill or bore) and fit", "drill", False),
        ("not (drill or bore)", "turn", True),
        ("not not drill", "drill", True),
    ],
)
def test_answers(text: str, words: str, answer: bool) -> None:
    assert predicate(text).holds(frozenset(words.split())) is answer


@pytest.mark.parametrize(
    "text",
    ["", "drill and", "(drill", "drill)", "and", "drill bore", "Drill", "drill & bore", "not"],
)
def test_refuses(text: str) -> None:
    with pytest.raises(BadPredicate):
        predicate(text)


WORDS = st.sampled_from(["drill", "bore", "fit", "cross"])
TEXTS = st.recursive(
    WORDS,
    lambda inner: st.one_of(
        st.builds("({} and {})".format, inner, inner),
        st.builds("({} or {})".format, inner, inner),
        st.builds("(not {})".format, inner),
    ),
    max_leaves=12,
)


@given(TEXTS, st.frozensets(WORDS))
def test_means_what_python_means_by_the_same_words(text: str, true: frozenset[str]) -> None:
    facts = {word: word in true for word in ("drill", "bore", "fit", "cross")}
    assert predicate(text).holds(true) is bool(eval(text, {}, facts))  # noqa: S307 - our own text
