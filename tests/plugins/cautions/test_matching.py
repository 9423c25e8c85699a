"""Signs and rows brought together: whole words, each row once, silence said aloud."""

from __future__ import annotations

import pytest

from binder_plugins.cautions.facts import caution_table
from binder_plugins.cautions.matching import applied, unanswered
from binder_plugins.cautions.signs import Sign, SignKind, key_sign
from binder_plugins.cautions.words import phrases

TABLE = caution_table()


def _called(*signs: Sign) -> dict[str, tuple[str, ...]]:
    """What the signs call for beyond the general cautions."""
    found = applied(TABLE, signs)
    return {one.caution.id: one.items for one in found if not one.caution.is_general}


def _words(text: str, item: str = "thing", kind: SignKind = SignKind.WORDS) -> Sign:
    return Sign(kind, text, item, phrases(text))


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Gas-Tank", {"gas", "tank", "gas tank", "=gas tank"}),
        ("tommy_bar", {"tommy", "bar", "tommy bar", "=tommy bar"}),
        ("", {"="}),
        ("...", {"="}),
    ],
)
def test_a_text_has_these_phrases(text: str, found: set[str]) -> None:
    assert phrases(text) == found


def test_a_phrase_has_at_most_three_words_but_for_the_whole() -> None:
    assert phrases("a b c d") == {
        *("a", "b", "c", "d", "a b", "b c", "c d", "a b c", "b c d"),
        "=a b c d",
    }


@pytest.mark.parametrize("text", ["the boiler of the crane", "BOILER, copper", "boiler_shell"])
def test_words_match_in_any_case_and_company(text: str) -> None:
    assert "pressure" in _called(_words(text))


@pytest.mark.parametrize("text", ["a boilersuit", "boilermaker", "boil"])
def test_words_match_whole(text: str) -> None:
    assert "pressure" not in _called(_words(text))


def test_a_word_for_the_whole_text_matches_nothing_longer() -> None:
    assert "blacking" in _called(_words("black", kind=SignKind.FINISH))
    assert "blacking" not in _called(_words("painted black", kind=SignKind.FINISH))
    assert "paint" in _called(_words("painted black", kind=SignKind.FINISH))


def test_gunmetal_is_no_gun() -> None:
    assert "guns" not in _called(_words("gun metal"), _words("gunmetal"))
    assert "guns" in _called(_words("a field gun"))


def test_a_row_gathers_its_items_once_in_order() -> None:
    signs = [key_sign(SignKind.JOINT, "meshes", item) for item in ("b", "a", "b")]
    assert _called(*signs)["nip"] == ("b", "a")


def test_items_are_named_where_the_model_calls_as_well() -> None:
    assert _called(_words("gears", ""), _words("gear", "wheel"))["nip"] == ("wheel",)
    assert _called(_words("gears", ""))["nip"] == ()


def test_what_is_about_the_whole_model_names_no_items() -> None:
    assert _called(_words("crane", "jib"))["not-lifting-gear"] == ()


def test_a_word_counts_only_where_it_was_looked_for() -> None:
    """`plate` is a finish that poisons, and a shape that does not."""
    assert "plating" in _called(_words("plate", kind=SignKind.FINISH))
    assert "plating" not in _called(_words("plate"), key_sign(SignKind.SHAPE, "plate", "x"))


def test_general_cautions_need_no_sign() -> None:
    general = {row.id for row in TABLE.cautions if row.is_general}
    assert {one.caution.id for one in applied(TABLE, ())} == general
    assert {"eyes", "manual", "alone", "visitors"} <= general


def test_what_has_a_row_or_a_none_is_answered() -> None:
    signs = (key_sign(SignKind.JOINT, "pressed", "a"), key_sign(SignKind.JOINT, "slides", "a"))
    assert not list(unanswered(TABLE, signs))


def test_what_has_neither_is_named_once_with_its_items() -> None:
    signs = [key_sign(SignKind.FEATURE, "dimpled", item) for item in ("a", "b", "a")]
    (silent,) = unanswered(TABLE, signs)
    assert (silent.title, silent.items) == ("Feature: dimpled", ("a", "b"))


def test_plain_words_are_not_asked_to_be_known() -> None:
    assert not list(unanswered(TABLE, [_words("nothing that a table knows")]))


def test_a_sign_of_each_trigger_kind_is_read_from_some_design() -> None:
    """No row waits for a kind of sign that nothing gives."""
    used = {kind for row in TABLE.cautions for kind in row.triggers}
    assert used == set(SignKind) - {SignKind.MATERIAL}


def test_a_plate_that_is_painted_is_not_plated() -> None:
    """`paint the plate grey` names the part; common practice, no source."""
    for said in ("paint the plate grey", "two coats of paint over zinc primer"):
        assert "plating" not in _called(_words(said, kind=SignKind.FINISH))
    for said in ("nickel plated", "zinc plate on the outside", "nickel"):
        assert "plating" in _called(_words(said, kind=SignKind.FINISH))
