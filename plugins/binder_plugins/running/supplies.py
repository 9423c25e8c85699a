"""Moving joints to the oils and greases that have to be bought for them."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, SupplyFact
from binder_plugins.running.moving import moving
from binder_plugins.running.oiling import oil_for


def supply_oils(design: Design) -> Contribution:
    """What the chart of oil asks for and the workshop does not list."""
    return Contribution(facts=list(_supplies(design)))


def _supplies(design: Design) -> Iterator[SupplyFact]:
    entry = design.workshop.entry
    listed = [str(one) for one in (*entry.hand_tools, *entry.holding.fixtures)]
    for one in moving(design):
        oil = oil_for(one)
        if oil is not None and oil.buy and not oil.is_owned(listed):
            yield SupplyFact(one.joint.name, oil.buy)
