"""A spec spoiled at random: always an answer, never an exception, and places that exist."""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from pathlib import Path

import pytest

from binder.diagnostics import Span
from binder.source import CODES, Document, read_text

SPEC = Path(__file__).with_name("mutants.yaml").read_text(encoding="utf-8")
RUNS = 4
MUTANTS_IN_A_RUN = 500
_BITS = [
    ":", ": ", "-", "- ", "#", " #3", "'", '"', "[", "]", "{", "}", ",", "&a ", "*a", "!", "|", ">",
    "%", "@", "`", "?", "\t", "\n", "\r", " ", "  ", "\\", "\\x", "<<: ", "---\n", "...\n", "\x00",
    "\u202e", "\u2028", "é", "½", "\ud800", "1,5", "0", "include: x\n", "~", "\ufeff",
]  # fmt: skip


def _insert(text: str, chance: random.Random) -> str:
    at = chance.randrange(len(text) + 1)
    return text[:at] + chance.choice(_BITS) + text[at:]


def _delete(text: str, chance: random.Random) -> str:
    at = chance.randrange(len(text))
    return text[:at] + text[at + chance.randint(1, 8) :]


def _swap_lines(text: str, chance: random.Random) -> str:
    lines = text.split("\n")
    first, second = chance.randrange(len(lines)), chance.randrange(len(lines))
    lines[first], lines[second] = lines[second], lines[first]
    return "\n".join(lines)


def _repeat_line(text: str, chance: random.Random) -> str:
    lines = text.split("\n")
    lines.insert(chance.randrange(len(lines)), chance.choice(lines))
    return "\n".join(lines)


def _indent_line(text: str, chance: random.Random) -> str:
    lines = text.split("\n")
    at = chance.randrange(len(lines))
    lines[at] = chance.choice([" ", "  ", "\t"]) + lines[at]
    return "\n".join(lines)


_MUTATIONS: list[Callable[[str, random.Random], str]] = [
    _insert,
    _insert,
    _delete,
    _swap_lines,
    _repeat_line,
    _indent_line,
]


def _mutant(chance: random.Random) -> str:
    text = SPEC
    for _ in range(chance.choice([1, 1, 2, 4])):
        text = chance.choice(_MUTATIONS)(text, chance)
    return text


def test_the_spec_itself_is_good() -> None:
    document, findings = read_text(SPEC)
    assert findings == ()
    assert document is not None
    assert SPEC.count("\n") >= 60


@pytest.mark.parametrize("run", range(RUNS))
def test_mutants_get_an_answer(run: int) -> None:
    chance = random.Random(run)
    good = 0
    for _ in range(MUTANTS_IN_A_RUN):
        text = _mutant(chance)
        document, findings = read_text(text, "f")
        assert document is not None or any(finding.is_error for finding in findings)
        good += document is not None and not findings
        for finding in findings:
            assert finding.code in CODES
            assert finding.message.isprintable()
            assert _exists(finding.span, text, document), (finding, text)
    # Fewer good ones would mean that hardly any mutant gets past the parser.
    assert MUTANTS_IN_A_RUN * 0.05 < good < MUTANTS_IN_A_RUN


# One slip of the hand in one line. Shifts of a whole line are not among them: where a table's
# first line is shifted, the second is the one that does not fit.
_SLIPS: dict[str, tuple[str, str]] = {
    "no colon": (r"^( *[a-z ]+): (?=\S)", r"\1 "),
    "no space after the colon": (r"^( *(?:- )?[a-z ]+): (?=\w)", r"\1:"),
    "no space after the dash": (r"^( *)- ", r"\1-"),
    "tab": (r"^ {2}", "\t"),
    "bracket not closed": (r"[\]}]", ""),
    "quote not closed": (r'"([^"]*)"$', r'"\1'),
    "value behind a comment sign": (r"^( *[a-z]+): (?=\w)", r"\1: #"),
    "second colon": (r"^( *[a-z]+: [a-z]+)$", r"\1: x"),
}


def test_first_finding_is_on_the_line_of_the_slip() -> None:
    lines = SPEC.split("\n")
    hits = total = 0
    for pattern, instead in _SLIPS.values():
        for number, line in enumerate(lines):
            slipped = re.sub(pattern, instead, line, count=1)
            if slipped != line:
                _, findings = read_text("\n".join([*lines[:number], slipped, *lines[number + 1 :]]))
                hits += bool(findings) and findings[0].span.line == number + 1
                total += 1
    assert total > 150
    assert hits >= 0.95 * total


def _exists(span: Span, text: str, document: Document | None) -> bool:
    """Whether a place lies in the text (or just past a line's end, where something lacks)."""
    if span.line == 0:
        return document is None or span.column == 0
    lines = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n").split("\n")
    begins = 1 <= span.line <= len(lines) and 1 <= span.column <= len(lines[span.line - 1]) + 1
    ends = (span.line, span.column) < (span.end_line, span.end_column)
    return begins and ends and span.end_line <= len(lines)
