"""The critical path of the work: early and late times, floats, ranges, and few hands."""

from binder_making.network.hands import Schedule, scheduled
from binder_making.network.path import Activity, Network, Times, critical_path
from binder_making.network.ranges import Guess, Outlook, outlook

__all__ = [
    "Activity",
    "Guess",
    "Network",
    "Outlook",
    "Schedule",
    "Times",
    "critical_path",
    "outlook",
    "scheduled",
]
