"""Faults of syntax: the code and the exact place, in our own words."""

from __future__ import annotations

import pytest
import yaml

from binder.source import read_text

Place = tuple[int, int, int, int]

# What is written, the code, and line, column, end line, end column of its place.
CASES: list[tuple[str, str, Place]] = [
    ("a:\n\tb: 1", "tab-in-indent", (2, 1, 2, 2)),
    ("a:\n  b: 1\n  \tc: 2", "tab-in-indent", (3, 3, 3, 4)),
    ("\ta: 1", "tab-in-indent", (1, 1, 1, 2)),
    ("a: b\n\t\nc: d", "tab-in-indent", (2, 1, 2, 2)),
    ("a: b\n\tc", "tab-in-indent", (2, 1, 2, 2)),
    ("a: |\n  x\n\ty\n", "tab-in-indent", (3, 1, 3, 2)),
    ("title: Crane: the big one", "colon-in-text", (1, 13, 1, 14)),
    ("a: b:", "colon-in-text", (1, 5, 1, 6)),
    ("note: turn it\n  and that\n  then: stop", "colon-in-text", (3, 7, 3, 8)),
    ("model:\n  title x\n  issue: A", "colon-missing", (2, 3, 2, 10)),
    ("a: 1\nb\nc: 2", "colon-missing", (2, 1, 2, 2)),
    ("sizes:\n  bar 25 mm  # in hand: it\n  b: 1", "colon-missing", (2, 3, 2, 27)),
    ("key with words\n  more: 1", "colon-missing", (1, 1, 1, 15)),
    ("model:\n  title:x\n  issue: A", "colon-without-space", (2, 8, 2, 9)),
    ("a: 1\nb:1\nc: 2", "colon-without-space", (2, 2, 2, 3)),
    ("a: {b:[1]}", "colon-without-space", (1, 6, 1, 7)),
    ("holes:\n  - bore\n  -slot\n", "dash-without-space", (3, 3, 3, 4)),
    ('a: "x\nb: 2\n', "quote-not-closed", (1, 4, 1, 5)),
    ("a: 'x\nb: 2", "quote-not-closed", (1, 4, 1, 5)),
    ('a: "x\n---\n"', "quote-not-closed", (1, 4, 1, 5)),
    ("a: [1, 2\nb: 3", "bracket-not-closed", (1, 4, 1, 5)),
    ("a: {b: 1, c: 2", "bracket-not-closed", (1, 4, 1, 5)),
    ("a: [\n", "bracket-not-closed", (1, 4, 1, 5)),
    ("note: the crane's jib\nx: [1, 2\n", "bracket-not-closed", (2, 4, 2, 5)),
    ("a: {b: [1, 2}", "bracket-not-closed", (1, 13, 1, 14)),
    ("a: }", "bracket-not-opened", (1, 4, 1, 5)),
    ("]", "bracket-not-opened", (1, 1, 1, 2)),
    ('a: "1/4" in', "text-after-close", (1, 10, 1, 12)),
    ("a: '1/4'in\nb: 1", "text-after-close", (1, 9, 1, 11)),
    ('{a: "b" c}', "text-after-close", (1, 9, 1, 11)),
    ("a: [1, 2] mm\n", "text-after-close", (1, 11, 1, 13)),
    ("a:\n    b: 1\n  c: 2", "bad-indent", (3, 3, 3, 7)),
    ("a:\n  b: 1\n   c: 2", "bad-indent", (3, 4, 3, 8)),
    ("  a: 1\nb: 2", "bad-indent", (2, 1, 2, 5)),
    ("a: |\n   x\n  y\n", "bad-indent", (3, 3, 3, 4)),
    ("a:\n  - b\n  c: d", "list-among-keys", (3, 3, 3, 7)),
    ("a:\n  b: c\n  - d", "list-among-keys", (3, 3, 3, 6)),
    ("a:\n  : 1", "key-not-plain-words", (2, 3, 2, 4)),
    ("a: {: 1}", "key-not-plain-words", (1, 5, 1, 6)),
    ("a: - b", "dash-after-key", (1, 4, 1, 5)),
    ("a: @x", "character-starts-nothing", (1, 4, 1, 5)),
    ("a: `x", "character-starts-nothing", (1, 4, 1, 5)),
    ("a: %x", "character-starts-nothing", (1, 4, 1, 5)),
    ("a: , b", "character-starts-nothing", (1, 4, 1, 5)),
    ("a: ? b", "character-starts-nothing", (1, 4, 1, 5)),
    (r'a: "\q"', "escape-unknown", (1, 5, 1, 7)),
    (r'a: "\x4"', "escape-unknown", (1, 5, 1, 8)),
    (r'a: "\U00110000"', "escape-unknown", (1, 5, 1, 15)),
    ("a: {b: 5 mm c: 2}", "comma-missing", (1, 14, 1, 15)),
    ("a: [{b: 1} {c: 2}]", "comma-missing", (1, 12, 1, 13)),
    ("a: {b: 5 mm\n  c: 2}", "comma-missing", (2, 4, 2, 5)),
    ("a: [1,,2]", "comma-with-nothing", (1, 7, 1, 8)),
    ("a: |x\n b", "block-text-mark", (1, 4, 1, 5)),
    ("a: |0\n b", "block-text-mark", (1, 4, 1, 5)),
    ("a: [#4-40, M3]\nb: 1", "value-read-as-comment", (1, 5, 1, 15)),
    ("a: [1, #4]", "value-read-as-comment", (1, 8, 1, 11)),
    ("a: &", "anchor-or-alias", (1, 4, 1, 5)),
    ("a: !<x", "tag-refused", (1, 4, 1, 5)),
    ("%x", "yaml-directive", (1, 1, 1, 3)),
    ("# x\n%YAML 1.2\na: 1", "yaml-directive", (2, 1, 2, 10)),
    ("%YAML 3.0\n---\na: 1", "yaml-directive", (1, 1, 1, 10)),
    ("a: 1\n...\nb: 2", "more-than-one-document", (3, 1, 3, 5)),
    ("k" * 1100 + ": 1", "key-too-long", (1, 1, 1, 1104)),
]
_SLOW_PARSER_TAKES = {"a: {b:[1]}"}


@pytest.mark.parametrize(("text", "code", "place"), CASES)
def test_fault_is_found_where_it_is(text: str, code: str, place: Place) -> None:
    document, findings = read_text(text, "jack.yaml")
    assert document is None
    assert [(f.code.name, *f.span) for f in findings] == [(code, "jack.yaml", *place)]


@pytest.mark.parametrize(("text", "code", "place"), CASES)
def test_parser_without_libyaml_says_the_same(
    text: str, code: str, place: Place, monkeypatch: pytest.MonkeyPatch
) -> None:
    if text in _SLOW_PARSER_TAKES:
        return
    monkeypatch.setattr(yaml, "__with_libyaml__", False)
    _, findings = read_text(text)
    assert [(f.code.name, *f.span[1:]) for f in findings] == [(code, *place)]


@pytest.mark.parametrize(("text", "code", "place"), CASES)
def test_fault_is_said_in_our_words(text: str, code: str, place: Place) -> None:
    with pytest.raises(yaml.MarkedYAMLError) as raised:
        list(yaml.parse(text, Loader=yaml.CBaseLoader))
    _, (finding,) = read_text(text)
    assert str(raised.value.problem) not in finding.message
    assert finding.help, (code, place)


def test_quote_that_closes_on_a_later_line_is_found_where_it_opens() -> None:
    _, findings = read_text('a: "x\nb: "y"\n')
    found = [(f.code.name, *f.span[1:]) for f in findings]
    assert found == [
        ("quote-not-closed", 1, 4, 1, 5),
        ("lines-run-together", 2, 1, 2, 7),
    ]


def test_what_the_table_does_not_know_is_said_in_general_words() -> None:
    _, findings = read_text("a: *b c")
    assert [(f.code.name, f.span.column) for f in findings] == [
        ("anchor-or-alias", 4),
        ("not-yaml", 7),
    ]


def test_closing_bracket_of_the_other_kind_shows_the_opening_one() -> None:
    _, (finding,) = read_text("a: [1, 2}")
    assert finding.code.name == "bracket-not-closed"
    assert [tuple(other.span[1:]) for other in finding.related] == [(1, 4, 1, 5)]


def test_faults_before_a_syntax_fault_are_kept() -> None:
    _, findings = read_text("a: 1\na: 2\nb: [")
    assert [f.code.name for f in findings] == ["key-written-twice", "bracket-not-closed"]
