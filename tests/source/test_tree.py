"""The tree: raw text with exact places."""

from __future__ import annotations

from pathlib import Path

from binder.diagnostics import Span
from binder.source import Document, Row, Table, Written, read_spec, read_text


def _document(text: str) -> Document:
    document, findings = read_text(text, "f")
    assert findings == ()
    assert document is not None
    return document


def _place(document: Document, *path: str | int) -> tuple[int, ...]:
    return tuple(document.span(path)[1:])


def test_nothing_gets_a_type() -> None:
    written = ["yes", "NO", "1:30", "0755", "1_0.5", "1.10", ".inf", "2026-13-45", "~", "null", "="]
    document = _document("\n".join(f"k{n}: {text}" for n, text in enumerate(written)))
    assert list(document.root.values()) == written
    assert all(type(value) is Written for value in document.root.values())


def test_nothing_written_is_none_and_quotes_are_kept_in_mind() -> None:
    document = _document("a:\nb: ''\nc: x\nd: 'y'\ne: |\n  z\n")
    assert document.root == {"a": None, "b": "", "c": "x", "d": "y", "e": "z\n"}
    quoted = {
        key: value.is_quoted for key, value in document.root.items() if isinstance(value, Written)
    }
    assert quoted == {"b": True, "c": False, "d": True, "e": True}


def test_places_of_scalars() -> None:
    document = _document("a:  x y  # z\nb: 'it''s'\nover: 1\n")
    assert _place(document, "a") == (1, 5, 1, 8)
    assert _place(document, "b") == (2, 4, 2, 11)
    assert tuple(document.span(("over",), of_key=True)) == ("f", 3, 1, 3, 5)


def test_columns_count_characters_and_not_bytes() -> None:
    document = _document("a: [⌀½ in, \U0001f527, 6 mm]")
    assert [_place(document, "a", n) for n in range(3)] == [
        (1, 5, 1, 10),
        (1, 12, 1, 13),
        (1, 15, 1, 19),
    ]


def test_places_of_tables_and_rows_end_with_their_last_entry() -> None:
    document = _document(
        "a:\n  b: 1\n  c:\n    - x\n    - y  # z\n\nd: {e: 1, f: [2, 3] }\ng:\n  h:\n"
    )
    assert document.root.span == Span("f", 1, 1, 9, 4)
    assert _place(document, "a") == (2, 3, 5, 8)
    assert _place(document, "a", "c") == (4, 5, 5, 8)
    assert _place(document, "d") == (7, 4, 7, 22)
    assert _place(document, "d", "f") == (7, 14, 7, 20)
    assert _place(document, "g") == (9, 3, 9, 4)


def test_place_of_a_block_of_text_ends_with_its_text() -> None:
    document = _document("a: |\n  one\n  two  \n\n# c\nb: >-\n  x\n   \n\nc: |")
    assert _place(document, "a") == (1, 4, 3, 6)
    assert _place(document, "b") == (6, 4, 7, 4)
    assert _place(document, "c") == (10, 4, 10, 5)
    assert _place(_document("a: |\n  one"), "a") == (1, 4, 2, 6)


def test_place_of_text_over_several_lines() -> None:
    document = _document("a: turn the\n   shoulder\nb: 'x\n\n  y'\n")
    assert document.root == {"a": "turn the shoulder", "b": "x\ny"}
    assert _place(document, "a") == (1, 4, 2, 12)
    assert _place(document, "b") == (3, 4, 5, 5)


def test_every_plain_place_holds_what_was_read() -> None:
    text = Path(__file__).with_name("mutants.yaml").read_text(encoding="utf-8")
    document = _document(text)
    lines = text.split("\n")
    checked = [_check(node, lines) for node in _all(document.root)]
    assert sum(checked) == 71 + 46  # keys, and values in one line without quotes, by hand


def _check(node: object, lines: list[str]) -> bool:
    if not isinstance(node, Written) or node.is_quoted or node.span.line != node.span.end_line:
        return False
    line = lines[node.span.line - 1]
    assert line[node.span.column - 1 : node.span.end_column - 1] == node
    return True


def _all(node: object) -> list[object]:
    if isinstance(node, Table):
        keys = [Written(key, node.key_spans[key]) for key in node]
        return [node, *keys, *(below for value in node.values() for below in _all(value))]
    if isinstance(node, Row):
        return [node, *(below for item in node for below in _all(item))]
    return [node]


def test_a_path_leads_to_the_deepest_node_there_is() -> None:
    document = _document("a:\n  b: [x, {c: 1}]\n  d:\n")
    assert document.node(("a", "b", 1, "c")) == "1"
    assert document.node(("a", "b", 7)) == ["x", {"c": "1"}]
    assert document.node(("a", "b", 0, "x")) == "x"
    assert document.node(("a", "d")) is None
    assert document.node(("z",)) is document.root


def test_what_is_missing_has_the_place_of_its_parents_key() -> None:
    document = _document("a:\n  b: [x, {c: 1}, ]\n  d:\n  e: [x, ]\n")
    assert tuple(document.span(("a", "q"))[1:]) == (1, 1, 1, 2)
    assert _place(document, "a", "d") == (3, 3, 3, 4)
    assert _place(document, "a", "b", 1, "q") == (2, 10, 2, 16)
    assert _place(document, "a", "b", -1) == (2, 3, 2, 4)
    assert _place(document, "q") == (1, 1, 1, 2)
    assert tuple(document.span(("a", "b", 1), of_key=True)[1:]) == (2, 10, 2, 16)


def test_file_is_named_as_it_was_given(tmp_path: Path) -> None:
    spec = tmp_path / "jack.yaml"
    spec.write_text("a: 1", encoding="utf-8")
    for given in (spec, str(spec)):
        document, _ = read_spec(given)
        assert document is not None
        assert document.file == document.span(("a",)).file == str(spec)
        assert list(document.texts) == [str(spec)]


def test_digest_of_a_text_is_that_of_the_same_file(tmp_path: Path) -> None:
    (tmp_path / "jack.yaml").write_text("a: 1", encoding="utf-8")
    by_file, _ = read_spec(tmp_path / "jack.yaml")
    by_text, _ = read_text("a: 1", "jack.yaml")
    assert by_file is not None
    assert by_text is not None
    assert by_file.digest == by_text.digest
    assert len(by_file.digest) == 64
