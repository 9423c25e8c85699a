"""A sum's refusal to a finding, and its steps to the lines of an answer."""

from __future__ import annotations

from binder.api import COMMAND_LINE, Diagnostic, NotAskedError
from binder_plugins.slides.codes import RECKON_UNREADABLE
from binder_trade.explained import NotDefined


def refused(reason: NotAskedError | NotDefined) -> Diagnostic:
    """The finding for a question without an answer."""
    return RECKON_UNREADABLE.at(COMMAND_LINE, reason.reason, help=reason.way_out)
