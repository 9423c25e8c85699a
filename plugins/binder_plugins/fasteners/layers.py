"""What lies between the halves of a joint and is gripped with them: gaskets."""

from __future__ import annotations

from binder.api import LayerFact
from binder_plugins.fasteners.seen import Seen


def layers(seen: Seen) -> list[LayerFact]:
    """What other joints put between the parts that this one pulls together."""
    items = set(seen.joint.items)
    return [one for one in seen.design.facts.all(LayerFact) if set(one.items) <= items]


def layers_mm(seen: Seen) -> float:
    """How much it adds to what is gripped, in mm."""
    return sum(one.thickness for one in layers(seen))
