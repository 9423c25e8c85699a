"""Times: minutes of acts, estimates as a range, factors that a maker's own times teach."""

from binder_making.times.acts import ActTime, act_time, acts
from binder_making.times.estimate import Estimate, Maker, Work, estimate, in_range, learned
from binder_making.times.joining import (
    Joined,
    hand_passes,
    in_place,
    joining,
    joining_table,
    reading,
    running_in,
    trying,
    under_load,
)

__all__ = [
    "ActTime",
    "Estimate",
    "Joined",
    "Maker",
    "Work",
    "act_time",
    "acts",
    "estimate",
    "hand_passes",
    "in_place",
    "in_range",
    "joining",
    "joining_table",
    "learned",
    "reading",
    "running_in",
    "trying",
    "under_load",
]
