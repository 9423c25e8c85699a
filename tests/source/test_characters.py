"""Bytes and characters: encodings, and what cannot be seen."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.diagnostics import Diagnostic
from binder.source import Document, read_spec, read_text
from binder.source.characters import is_hidden


@pytest.mark.parametrize(
    "character",
    [
        "\x00", "\x07", "\x1b", "\x7f", "\x85", "\x9b", "\u00ad", "\u200b", "\u200e", "\u2028",
        "\u2029", "\u202e", "\u2066", "\ud800", "\ue000", "\ufeff", "\U000e0041", "\U000e0fff",
    ],
)  # fmt: skip
def test_hidden_character_is_found_and_made_visible(character: str) -> None:
    document, (finding,) = read_text(f"a: 1\nb: x{character}y", "jack.yaml")
    assert finding.code.name == "hidden-character"
    assert finding.span == ("jack.yaml", 2, 5, 2, 6)
    assert f"<U+{ord(character):04X}>" in finding.message
    assert document is not None
    assert document.root["b"] == "x\ufffdy"
    assert document.texts["jack.yaml"] == "a: 1\nb: x\ufffdy"


@pytest.mark.parametrize(
    ("escape", "number"),
    [
        (r"\0", "0000"), (r"\x1b", "001B"), (r"\e", "001B"), (r"\a", "0007"), (r"\N", "0085"),
        (r"\u202E", "202E"), (r"\u2066", "2066"), (r"\L", "2028"), (r"\U000e0041", "E0041"),
    ],
)  # fmt: skip
def test_hidden_character_is_found_when_it_is_escaped(escape: str, number: str) -> None:
    document, (finding,) = read_text(f'a: "drum{escape}x"')
    assert finding.code.name == "hidden-character"
    assert finding.span[1:] == (1, 9, 1, 9 + len(escape))
    assert f"<U+{number}>" in finding.message
    assert document is not None
    assert document.root["a"] == "drum\ufffdx"


def test_escape_on_a_later_line_of_a_quoted_text_has_its_own_place() -> None:
    _, (finding,) = read_text('a: "one\n\n  two \\u202E"\n')
    assert finding.span[1:] == (3, 7, 3, 13)


def test_escaped_backslash_is_no_escape_of_what_follows() -> None:
    _, findings = read_text(r'a: "see \\u202E"')
    assert findings == ()


def test_surrogate_by_escape_is_refused() -> None:
    _, (finding,) = read_text(r'a: "\ud800"')
    assert (finding.code.name, finding.span.column) == ("escape-unknown", 5)


def test_hidden_character_in_a_comment_is_found() -> None:
    _, (finding,) = read_text("a: 1 # x\u202ey")
    assert (finding.code.name, finding.span.column) == ("hidden-character", 9)


def test_joiner_and_signs_of_the_trade_are_let_through() -> None:
    text = "a: 1½ in × ⌀6 ±0.01 ° µm\nb: \U0001f469\u200d\U0001f527\n"
    document, findings = read_text(text)
    assert findings == ()
    assert document is not None
    assert document.root["a"] == "1½ in × ⌀6 ±0.01 ° µm"


def test_utf_16_is_named(tmp_path: Path) -> None:
    for encoding in ("utf-16", "utf-16-le", "utf-16-be"):
        _, (finding,) = _spec_of(tmp_path, "format: 1\n".encode(encoding))
        assert (finding.code.name, finding.span.line) == ("utf-16", 0)


def test_older_encoding_is_named_with_line_and_column(tmp_path: Path) -> None:
    data = "# Brücke\r\na: 1\r\nb: °1½ in".encode().replace("½".encode(), b"\xbd")
    document, (finding,) = _spec_of(tmp_path, data)
    assert document is None
    assert finding.code.name == "not-utf-8"
    assert finding.span[1:] == (3, 6, 3, 7)
    assert "`½`" in finding.label


def test_older_encoding_after_a_mark_has_the_right_column(tmp_path: Path) -> None:
    _, (finding,) = _spec_of(tmp_path, b"\xef\xbb\xbfa: \xb0")
    assert finding.span[1:] == (1, 4, 1, 5)


def test_mark_at_the_start_and_line_ends_change_no_column(tmp_path: Path) -> None:
    document, findings = _spec_of(tmp_path, b"\xef\xbb\xbfa: 1\r\nb:\r\n  c: 2\rd: 3\n")
    assert findings == ()
    assert document is not None
    assert document.span(("a",))[1:] == (1, 4, 1, 5)
    assert document.span(("b", "c"))[1:] == (3, 6, 3, 7)
    assert document.span(("d",), of_key=True)[1:] == (4, 1, 4, 2)


@given(st.text(max_size=60))
def test_no_text_raises_and_no_value_hides_anything(text: str) -> None:
    document, findings = read_text(text)
    assert document is not None or any(finding.is_error for finding in findings)
    for read in document.texts.values() if document else ():
        assert not any(map(is_hidden, read))


@given(st.binary(max_size=60))
def test_no_bytes_raise(tmp_path_factory: pytest.TempPathFactory, data: bytes) -> None:
    _spec_of(tmp_path_factory.getbasetemp(), data)


def _spec_of(folder: Path, data: bytes) -> tuple[Document | None, tuple[Diagnostic, ...]]:
    spec = folder / "trial.yaml"
    spec.write_bytes(data)
    return read_spec(spec)
