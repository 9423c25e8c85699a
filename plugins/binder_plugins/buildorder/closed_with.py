"""Each assembly to the screws, pins and clips with which its joints are closed."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from binder.api import Assembly, ClosedWithFact, Contribution, Design, HardwareFact, NumberOff
from binder_plugins.buildorder.closing import joints_closed_in


def tell_hardware(design: Design) -> Contribution:
    """What has to lie beside the members of an assembly before it goes together."""
    return Contribution(facts=list(_told(design)))


def _told(design: Design) -> Iterator[ClosedWithFact]:
    for one in design.assemblies.values():
        counts = _counts(one, design)
        if counts:
            yield ClosedWithFact(one.name, tuple(counts.items()))


def _counts(one: Assembly, design: Design) -> Counter[str]:
    """For one of the assemblies; facts of hardware count for the model."""
    closed = {joint.name for joint in joints_closed_in(one, design)}
    members = {member.item for member in one.members}
    found: Counter[str] = Counter()
    for own in design.facts.all(HardwareFact):
        if own.joint in closed and own.name not in members:
            found[own.name] += own.count
    off = design.facts.about(NumberOff, one.name)
    many = off.count if off is not None else 1
    return Counter({name: -(-count // many) for name, count in found.items()})
