"""Refusals to findings, steps to lines of an answer, and plain counts in the words."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from fractions import Fraction

from binder.api import COMMAND_LINE, Answer, Diagnostic, NotAskedError, Workshop, unread
from binder_plugins.drive.question_codes import QUESTION_UNREADABLE
from binder_trade.explained import NotDefined

_WHOLE = re.compile(r"[0-9]{1,4}")
_NUMBER = re.compile(r"[0-9]{1,9}(?:\.[0-9]{1,9})?")
_MOST_WHEELS = 40


def answered(
    run: Callable[[Sequence[str], Workshop], Answer],
) -> Callable[[Sequence[str], Workshop], Answer | Diagnostic]:
    """The question with its refusals turned into findings."""

    def tried(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
        try:
            return run(words, workshop)
        except (NotAskedError, NotDefined) as refusal:
            return QUESTION_UNREADABLE.at(COMMAND_LINE, refusal.reason, help=refusal.way_out)

    return tried


def whole(text: str, what: str, example: str) -> int:
    """A whole number in the words; NotAskedError for anything else."""
    if not _WHOLE.fullmatch(text.strip()):
        raise unread(text, f"no {what}", f"as `{example}`")
    return int(text)


def ratio_of(text: str, example: str) -> Fraction:
    """`3.75`, `15/4` or `1:3`; NotAskedError for anything else, and for nothing."""
    parts = re.split(r" ?[:/] ?", text.strip())
    if len(parts) > 2 or not all(_NUMBER.fullmatch(part) for part in parts):
        raise unread(text, "no ratio", f"as `{example}`")
    numbers = [Fraction(part) for part in parts]
    if not all(numbers):
        raise unread(text, "no ratio: it has a nothing in it", f"as `{example}`")
    return numbers[0] / numbers[1] if len(numbers) == 2 else numbers[0]


def wheels_of(text: str, example: str) -> tuple[int, ...]:
    """Numbers of teeth, by spaces or commas."""
    found = [one for one in re.split(r"[ ,]+", text.strip()) if one]
    if not 2 <= len(found) <= _MOST_WHEELS:
        raise unread(text, f"no set of 2 to {_MOST_WHEELS} wheels", f"as `{example}`")
    return tuple(whole(one, "number of teeth", example) for one in found)
