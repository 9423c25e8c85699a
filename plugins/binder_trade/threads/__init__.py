"""Screw threads: a designation turned into sizes, limits, areas and loads."""

from binder_trade.explained import NotDefined, Step
from binder_trade.threads.compare import Mating, is_alike, is_same, lookalikes, mates
from binder_trade.threads.complete import thread
from binder_trade.threads.form import Form
from binder_trade.threads.iso965 import deviation_um, engagement_normal
from binder_trade.threads.limit_sizes import ThreadLimits
from binder_trade.threads.limits import limits
from binder_trade.threads.naming import from_name
from binder_trade.threads.series import all_threads, choice, is_listed
from binder_trade.threads.strength import (
    PropertyClass,
    proof_load_n,
    property_class,
    ultimate_load_n,
)
from binder_trade.threads.thread import MOVING, NotMade, Thread
from binder_trade.threads.working import working

__all__ = [
    "MOVING",
    "Form",
    "Mating",
    "NotDefined",
    "NotMade",
    "PropertyClass",
    "Step",
    "Thread",
    "ThreadLimits",
    "all_threads",
    "choice",
    "deviation_um",
    "engagement_normal",
    "from_name",
    "is_alike",
    "is_listed",
    "is_same",
    "limits",
    "lookalikes",
    "mates",
    "proof_load_n",
    "property_class",
    "thread",
    "ultimate_load_n",
    "working",
]
