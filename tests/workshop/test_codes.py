"""The codes of the workshop layer."""

from __future__ import annotations

from binder.workshop.codes import CODES


def test_each_is_explained_under_four_headings() -> None:
    for code in CODES:
        assert all((code.meaning, code.bench, code.example, code.remedy)), code.name


def test_names_are_unique_and_plain() -> None:
    names = [code.name for code in CODES]
    assert len(set(names)) == len(names)
    assert all(name == name.lower() and " " not in name for name in names)
