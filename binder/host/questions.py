"""Questions of plugins to questions that no flood of letters gets through."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from binder.api.answers import Answer
from binder.api.contributions import Reckoning
from binder.diagnostics import Diagnostic, Span
from binder.host import codes
from binder.workshop import Workshop

MOST_LETTERS = 120
_COMMAND_LINE = Span("<command line>", 0, 0, 0, 0)


def bounded(question: Reckoning) -> Reckoning:
    """The same question, which refuses a word of more than 120 letters."""

    def run(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
        if any(len(word) > MOST_LETTERS for word in words):
            return codes.QUESTION_TOO_LONG.at(
                _COMMAND_LINE,
                f"a word of the question has more than {MOST_LETTERS} letters",
                help=f"ask as in: binder reckon {question.name} {question.usage}",
            )
        return question.run(words, workshop)

    return replace(question, run=run)
