"""Moving joints to what has to be bought for them: oils, greases, and what washes them out."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, SupplyFact
from binder_plugins.running.moving import moving
from binder_plugins.running.oiling import oil_for

# What swarf and grey oil are washed out with: common practice, no source.
_PARAFFIN = "paraffin"
# The line of its task, by which it lies ready for that.
_FIRST_RUN = "first run"


def supply_oils(design: Design) -> Contribution:
    """What the chart of oil and the first run ask for and the workshop does not list."""
    return Contribution(facts=list(_supplies(design)))


def _supplies(design: Design) -> Iterator[SupplyFact]:
    entry = design.workshop.entry
    listed = [str(one) for one in (*entry.hand_tools, *entry.holding.fixtures)]
    found = moving(design)
    if found and not any(_PARAFFIN in one.lower() for one in listed):
        yield SupplyFact(_FIRST_RUN, _PARAFFIN, "what moves, when it has run in")
    for one in found:
        oil = oil_for(one)
        if oil is not None and oil.buy and not oil.is_owned(listed):
            yield SupplyFact(one.joint.name, oil.buy)
