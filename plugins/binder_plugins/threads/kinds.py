"""The joints of this plugin: one thread in another."""

from __future__ import annotations

from binder.api import JointEntry, Kind, Length, Thread, Words, joint_kinds, load_data

PACKAGE = "binder_plugins.threads"


class ThreadedEntry(JointEntry):
    """What a threaded joint may say: its `thread` and `length` where no half tells them.

    `locked_with` is what is put on the thread when all has run dry.
    """

    thread: Thread | None = None
    locked_with: Words | None = None
    length: Length | None = None


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], ThreadedEntry)
