"""Keys, and the parts of YAML that a spec does without."""

from __future__ import annotations

import pytest

from binder.source import read_text

Place = tuple[int, int, int, int]

CASES: list[tuple[str, str, Place]] = [
    ("a: &long 40 mm", "anchor-or-alias", (1, 4, 1, 9)),
    ("a: *long", "anchor-or-alias", (1, 4, 1, 9)),
    ("a: &all {b: 1}", "anchor-or-alias", (1, 4, 1, 8)),
    ("a: &empty", "anchor-or-alias", (1, 4, 1, 10)),
    ("&key a: 1", "anchor-or-alias", (1, 1, 1, 5)),
    ("a: !!int 40", "tag-refused", (1, 4, 1, 5)),
    ("a: !!python/object/apply:os.system ['x']", "tag-refused", (1, 4, 1, 5)),
    ("a: ! 40", "tag-refused", (1, 4, 1, 5)),
    ("<<: {b: 1}", "merge-key", (1, 1, 1, 3)),
    ("a: 1\n---\nb: 2", "more-than-one-document", (2, 1, 2, 4)),
    ("%YAML 1.2\n---\na: 1", "yaml-directive", (1, 1, 1, 10)),
    ("%TAG ! !x\n---\na: 1", "yaml-directive", (1, 1, 1, 10)),
    ("[a, b]: 1", "key-not-text", (1, 1, 1, 7)),
    ("{a: b}: 1", "key-not-text", (1, 1, 1, 7)),
    ("2nd drum: 1", "key-not-plain-words", (1, 1, 1, 9)),
    ("drum  on axle: 1", "key-not-plain-words", (1, 1, 1, 14)),
    ("a.b: 1", "key-not-plain-words", (1, 1, 1, 4)),
    ('"": 1', "key-not-plain-words", (1, 1, 1, 2)),
    # Look-alikes: a Cyrillic o, a French accent composed and apart, Arabic digits.
    ("r\u043ed: 1", "key-not-plain-words", (1, 1, 1, 4)),
    ("pi\u00e8ce: 1", "key-not-plain-words", (1, 1, 1, 6)),
    ("pie\u0300ce: 1", "key-not-plain-words", (1, 1, 1, 7)),
    ("rod\u0661: 1", "key-not-plain-words", (1, 1, 1, 5)),
    ("rod\u200b: 1", "hidden-character", (1, 4, 1, 5)),
    ("k" * 61 + ": 1", "key-too-long", (1, 1, 1, 62)),
]


@pytest.mark.parametrize(("text", "code", "place"), CASES)
def test_it_is_refused_and_reading_goes_on(text: str, code: str, place: Place) -> None:
    document, findings = read_text(text, "jack.yaml")
    assert document is not None
    assert [(f.code.name, *f.span) for f in findings] == [(code, "jack.yaml", *place)]


@pytest.mark.parametrize(
    ("text", "code", "line"),
    [
        ("", "empty-file", 0),
        ("# only a comment\n", "empty-file", 0),
        ("---\n", "empty-file", 0),
        ("\n- a\n- b", "root-not-table", 2),
        ("just text", "root-not-table", 1),
    ],
)
def test_a_spec_is_a_table_of_sections(text: str, code: str, line: int) -> None:
    document, findings = read_text(text)
    assert document is None
    assert [(f.code.name, f.span.line) for f in findings] == [(code, line)]


def test_key_written_twice_shows_both_places_and_keeps_the_first() -> None:
    document, (finding,) = read_text("drum:\n  length: 19 mm\n  length: 21 mm", "c.yaml")
    assert finding.code.name == "key-written-twice"
    assert finding.span == ("c.yaml", 3, 3, 3, 9)
    assert [other.span for other in finding.related] == [("c.yaml", 2, 3, 2, 9)]
    assert document is not None
    assert document.root == {"drum": {"length": "19 mm"}}


def test_quoted_and_plain_spelling_of_a_key_are_the_same() -> None:
    _, (finding,) = read_text("drum: 1\n'drum': 2")
    assert (finding.code.name, finding.span.line) == ("key-written-twice", 2)


def test_keys_of_several_words_are_good() -> None:
    document, findings = read_text("drum on axle: 1\ncap-2 to post_B: 2\n" + "k" * 60 + ": 3")
    assert document is not None
    assert len(document.root) == 3
    assert findings == ()


def test_alias_bomb_stays_small() -> None:
    lines = ["a0: &a0 [x, x]", *(f"a{n}: &a{n} [*a{n - 1}, *a{n - 1}]" for n in range(1, 31))]
    document, findings = read_text("\n".join(lines))
    assert document is not None
    assert document.root["a30"] == [None, None]
    assert {f.code.name for f in findings} == {"anchor-or-alias"}
    assert len(findings) == 31 + 60


def test_merge_bomb_stays_small() -> None:
    lines = [
        "a0: &a0 {k: v}",
        *(f"a{n}: &a{n} {{<<: [*a{n - 1}, *a{n - 1}]}}" for n in range(1, 21)),
    ]
    document, findings = read_text("\n".join(lines))
    assert document is not None
    assert document.root["a20"] == {}
    assert {f.code.name for f in findings} == {"anchor-or-alias", "merge-key"}


def test_alias_of_itself_is_refused() -> None:
    document, findings = read_text("a: &a [*a]")
    assert document is not None
    assert document.root == {"a": [None]}
    assert [f.span.column for f in findings] == [4, 8]
