"""Every size has an end: what lies past it is found, quickly and in little memory."""

from __future__ import annotations

from pathlib import Path

import pytest

from binder.source import bounds, read_spec, read_text


def test_depth_is_bounded() -> None:
    good = "a: " + "[" * (bounds.DEPTH - 1) + "]" * (bounds.DEPTH - 1)
    assert read_text(good)[1] == ()
    document, (finding,) = read_text("a: " + "[" * bounds.DEPTH + "]" * bounds.DEPTH)
    assert document is None
    assert finding.code.name == "too-deep"
    assert finding.span[1:] == (1, 3 + bounds.DEPTH, 1, 4 + bounds.DEPTH)


def test_depth_1000_ends_at_the_bound() -> None:
    for text, line in (
        ("\n".join(" " * depth + "a:" for depth in range(1000)), bounds.DEPTH + 1),
        ("a: " + "[" * 1000, 1),
    ):
        document, (finding,) = read_text(text)
        assert document is None
        assert (finding.code.name, finding.span.line) == ("too-deep", line)


def test_number_of_values_is_bounded() -> None:
    keys = "k:\n" + "- a\n" * bounds.VALUES
    document, (finding,) = read_text(keys)
    assert document is None
    assert finding.code.name == "too-many-values"
    # The root, its key and the list count as well.
    assert finding.span[1:3] == (bounds.VALUES - 1, 3)


def test_length_of_a_text_is_bounded() -> None:
    assert read_text("a: " + "x" * bounds.TEXT_CHARACTERS)[1] == ()
    document, (finding,) = read_text("a: 1\nb: " + "x" * (bounds.TEXT_CHARACTERS + 1))
    assert finding.code.name == "text-too-long"
    assert finding.span[1:] == (2, 4, 2, 5 + bounds.TEXT_CHARACTERS)
    assert document is not None
    assert len(str(document.root["b"])) == bounds.TEXT_CHARACTERS


def test_size_of_a_file_is_bounded(tmp_path: Path) -> None:
    spec = tmp_path / "crane.yaml"
    spec.write_bytes(b"a: 1\n#" + b"x" * (bounds.FILE_BYTES - 6))
    assert read_spec(spec)[1] == ()
    spec.write_bytes(b"a: 1\n#" + b"x" * (bounds.FILE_BYTES - 5))
    document, (finding,) = read_spec(spec)
    assert document is None
    assert (finding.code.name, finding.span) == ("file-too-large", (str(spec), 0, 0, 0, 0))
    assert "1 MB" in finding.message


def test_size_of_a_text_is_bounded() -> None:
    document, (finding,) = read_text("#" + "x" * bounds.FILE_BYTES)
    assert document is None
    assert finding.code.name == "file-too-large"


def test_findings_past_the_hundredth_are_counted() -> None:
    document, findings = read_text("a: 1\n" * 151)
    assert document is not None
    assert len(findings) == bounds.FINDINGS + 1
    assert findings[0].code.name == "findings-left-out"
    assert "50 more" in findings[0].message
    assert [f.span.line for f in findings[1:]] == list(range(2, 102))


def test_errors_are_kept_before_warnings() -> None:
    joined = "".join(f"k{letter}: brass\n  length 20 mm\n" for letter in map(_word, range(120)))
    _, findings = read_text(joined + "a: 1\na: 2\n")
    codes = [finding.code.name for finding in findings]
    assert codes.count("key-written-twice") == 1
    assert codes.count("lines-run-together") == 99
    assert "21 more" in findings[0].message


_M = bounds.FILE_BYTES // 2
_BOMBS = {
    "control characters": "a: " + "\x1b" * (_M - 3),
    "escapes": 'a: "' + "\\0" * (_M // 2 - 5) + '"',
    "keys without colon": "a: {" + "b," * (_M // 2 - 10) + "}",
    "cut numbers": "a: {" + "1,5 mm," * (_M // 7 - 5) + "}",
    "comments": "a: [b " + " #a" * (_M // 3 - 5),
    "comments in quotes": 'a: [b "' + " #a" * (_M // 3 - 5) + '" c',
    "many keys": "\n".join(f"k{number}: 1" for number in range(90_000)),
    "glued colons": "a: [" + "b:1," * (_M // 4 - 10) + "]",
    "lines run together": "a: b\n" + "  - c\n" * (_M // 6 - 10),
    "spaces": "a: #x" + " " * (_M - 10) + "y",
    "aliases": "a: [" + "*b," * (_M // 3 - 10) + "]",
    "blank lines": "a: {b\n" + "\n" * (_M - 10),
    "same key": "a: 1\n" * (_M // 5),
    "brackets": "a: [," + "{" * (_M - 100),
    "quotes": "a: [" + '"x" ' * (_M // 4 - 5),
}


@pytest.mark.parametrize("name", _BOMBS)
def test_a_fault_repeated_to_the_bounds_is_answered(name: str) -> None:
    """Answered at all: work that grew with the square of these would take hours."""
    _, findings = read_text(_BOMBS[name])
    assert len(findings) <= bounds.FINDINGS + 1
    assert all(len(finding.message) < 300 for finding in findings)


def _word(number: int) -> str:
    return chr(97 + number // 26) + chr(97 + number % 26)
