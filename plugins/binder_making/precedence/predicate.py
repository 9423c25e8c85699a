"""The words of a rule to a test of operations: `drill and (oil-hole or cross) and not pilot`.

Grammar: `either = both {"or" both}`, `both = one {"and" one}`,
`one = "not" one | "(" either ")" | word`.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass

Test = Callable[[frozenset[str]], bool]
_TOKEN = re.compile(r"\s*(?:([()])|([a-z][a-z0-9-]*))")
_SIGNS = frozenset({"and", "or", "not", "(", ")"})


class BadPredicate(ValueError):
    """A rule's words that cannot be read: a fault of the data file, never of a spec."""


@dataclass(frozen=True, slots=True)
class Predicate:
    """A test of the words that stand for an operation: its act, its groups and its tags."""

    text: str
    words: tuple[str, ...]
    _test: Test

    def holds(self, words: frozenset[str]) -> bool:
        """Whether it is true of an operation with these words."""
        return self._test(words)


def predicate(text: str) -> Predicate:
    """Reads a predicate. Raises `BadPredicate` where it is not of the grammar."""
    tokens = _tokens(text)
    test, after = _either(tokens, 0)
    if after != len(tokens):
        raise BadPredicate(f"{tokens[after]!r} is too much in {text!r}")
    words = tuple(dict.fromkeys(token for token in tokens if token not in _SIGNS))
    return Predicate(text, words, test)


def _tokens(text: str) -> list[str]:
    found: list[str] = []
    place = 0
    stripped = text.rstrip()
    while place < len(stripped):
        match = _TOKEN.match(stripped, place)
        if match is None:
            raise BadPredicate(f"{stripped[place:]!r} cannot be read in {text!r}")
        found.append(match[1] or match[2])
        place = match.end()
    return found


def _either(tokens: list[str], place: int) -> tuple[Test, int]:
    test, place = _both(tokens, place)
    tests = [test]
    while place < len(tokens) and tokens[place] == "or":
        test, place = _both(tokens, place + 1)
        tests.append(test)
    return (test if len(tests) == 1 else _any_of(tests)), place


def _both(tokens: list[str], place: int) -> tuple[Test, int]:
    test, place = _one(tokens, place)
    tests = [test]
    while place < len(tokens) and tokens[place] == "and":
        test, place = _one(tokens, place + 1)
        tests.append(test)
    return (test if len(tests) == 1 else _all_of(tests)), place


def _one(tokens: list[str], place: int) -> tuple[Test, int]:
    if place >= len(tokens):
        raise BadPredicate("a word is missing at the end")
    word = tokens[place]
    if word == "not":
        test, place = _one(tokens, place + 1)
        return (lambda words: not test(words)), place
    if word == "(":
        test, place = _either(tokens, place + 1)
        if place >= len(tokens) or tokens[place] != ")":
            raise BadPredicate("a bracket is not closed")
        return test, place + 1
    if word in _SIGNS:
        raise BadPredicate(f"a word is missing before {word!r}")
    return (lambda words: word in words), place + 1


def _any_of(tests: list[Test]) -> Test:
    return lambda words: any(test(words) for test in tests)


def _all_of(tests: list[Test]) -> Test:
    return lambda words: all(test(words) for test in tests)
