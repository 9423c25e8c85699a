"""A stranger's text is printed as it stands and changes nothing else."""

from __future__ import annotations

import pytest

from binder.render.html import render_html, render_paper
from tests.render.hostile import INJECTIONS, binder_of
from tests.render.reading import read_page


def test_there_are_two_dozen_attacks() -> None:
    assert len(set(INJECTIONS)) == 24


@pytest.mark.parametrize("words", INJECTIONS)
def test_page_has_the_same_elements_as_with_harmless_words(words: str) -> None:
    for render in (render_html, render_paper):
        harmless = read_page(render(binder_of("plain words")))
        assert read_page(render(binder_of(words))).shape == harmless.shape


@pytest.mark.parametrize("words", INJECTIONS)
def test_words_are_printed_whole(words: str) -> None:
    harmless = read_page(render_html(binder_of("plain words"))).text.count("plain words")
    assert read_page(render_html(binder_of(words))).text.count(words) == harmless


@pytest.mark.parametrize("words", INJECTIONS)
def test_ids_keys_and_links_hold_safe_characters_alone(words: str) -> None:
    page = read_page(render_html(binder_of(words)))
    for name in ("id", "data-tick", "data-blank", "data-unit", "data-digest"):
        for value in page.all(name):
            assert not set(value) & set("<>\"'&={}"), (name, value)
    for href in page.all("href"):
        assert href.startswith("#") or href == "data:,"


def test_the_comparison_notices_an_unescaped_word() -> None:
    harmless = render_html(binder_of("plain words"))
    broken = harmless.replace(">plain words<", "><b>plain</b> words<", 1)
    assert read_page(broken).shape != read_page(harmless).shape
