"""Times: minutes of acts, estimates as a range, factors that a maker's own times teach."""

from binder_making.times.acts import ActTime, act_time, acts
from binder_making.times.estimate import Estimate, Maker, Work, estimate, in_range, learned

__all__ = [
    "ActTime",
    "Estimate",
    "Maker",
    "Work",
    "act_time",
    "acts",
    "estimate",
    "in_range",
    "learned",
]
