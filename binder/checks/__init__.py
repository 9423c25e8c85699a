"""Checks that need no trade: does everything that is named exist, once, and hang together."""

from binder.checks.accepted import accepted
from binder.checks.structure import check_structure

__all__ = ["accepted", "check_structure"]
