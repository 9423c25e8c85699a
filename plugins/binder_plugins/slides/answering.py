"""A sum's refusal to a finding, and its steps to the lines of an answer."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import COMMAND_LINE, Diagnostic, NotAskedError, Reason
from binder_plugins.slides.codes import RECKON_UNREADABLE
from binder_trade.explained import NotDefined, Step


def refused(reason: NotAskedError | NotDefined) -> Diagnostic:
    """The finding for a question without an answer."""
    return RECKON_UNREADABLE.at(COMMAND_LINE, reason.reason, help=reason.way_out)


def reasons(steps: Sequence[Step]) -> tuple[Reason, ...]:
    """The steps of a sum as an answer shows them."""
    return tuple(Reason(one.name, one.formula, one.value, one.source) for one in steps)
