"""The critical path of the work: early and late times, floats, and three-point ranges."""

from binder_making.network.path import Activity, Network, Times, critical_path
from binder_making.network.ranges import Guess, Outlook, outlook

__all__ = ["Activity", "Guess", "Network", "Outlook", "Times", "critical_path", "outlook"]
