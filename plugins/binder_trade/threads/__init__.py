"""Screw threads: a designation turned into sizes, limits, areas and loads."""

from binder_trade.threads.complete import from_name, thread
from binder_trade.threads.form import Form
from binder_trade.threads.series import all_threads, choice, is_listed
from binder_trade.threads.thread import NotMade, Thread

__all__ = [
    "Form",
    "NotMade",
    "Thread",
    "all_threads",
    "choice",
    "from_name",
    "is_listed",
    "thread",
]
