"""The joints of this plugin: one thread in another."""

from __future__ import annotations

from binder.api import JointEntry, Kind, Length, Thread, joint_kinds, load_data

PACKAGE = "binder_plugins.threads"


class ThreadedEntry(JointEntry):
    """What a threaded joint may say: its `thread` and `length` where no half tells them."""

    thread: Thread | None = None
    length: Length | None = None


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], ThreadedEntry)
