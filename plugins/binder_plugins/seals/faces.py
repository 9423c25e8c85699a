"""Turns a gasket between two faces into what both parts and the shopping list print."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, HalfFact, LayerFact, Working, exact, shown_length
from binder_plugins.seals import codes
from binder_plugins.seals.bought import Supply, made_times
from binder_plugins.seals.facts import GasketFact
from binder_plugins.seals.sums import workings_of

# What pulls two faces together; common practice, no source.
_PULLS = ("screwed", "bolted", "studded", "threaded", "clamped", "riveted")


def gasket_layer(fact: GasketFact) -> LayerFact:
    """What the gasket adds to the grip of the screws, pulled down."""
    made = fact.gasket
    words = f"gasket of {made.sheet.name}, pulled down"
    return LayerFact(fact.joint.name, fact.joint.items, words, made.closed_mm)


def gasket_findings(fact: GasketFact, design: Design) -> Iterator[Diagnostic]:
    """A gasket between two parts that no joint pulls together."""
    items = set(fact.joint.items)
    if any(one.kind in _PULLS and items <= set(one.items) for one in design.joints.values()):
        return
    first, second = fact.joint.ends[0], fact.joint.ends[1]
    yield codes.GASKET_NOT_HELD.at(
        fact.joint.at,
        f"nothing pulls '{first.item}' down on the gasket of '{fact.joint.name}'",
        help=f"add {{screwed: [{first}, {second}]}}, with its fastener and pattern",
    )


def gasket_halves(fact: GasketFact, design: Design) -> Iterator[HalfFact]:
    """Both faces, and what stands between them."""
    made, joint = fact.gasket, fact.joint
    closed = shown_length(exact(round(made.closed_mm, 2)), design.units)
    for end, other in ((joint.ends[0], joint.ends[1]), (joint.ends[1], joint.ends[0])):
        yield HalfFact(
            subject=f"{joint.name}: {end}",
            joint=joint.name,
            item=end.item,
            place=end.place,
            what=f"flat face; {made.sheet.name} {closed} thick when pulled down",
            mate=str(other),
            how="face flat, no ridge round the holes",
            is_master=str(end) == str(joint.master or joint.ends[1]),
        )


def gasket_workings(fact: GasketFact) -> Iterator[Working]:
    """The sum behind its thickness."""
    return workings_of(fact.joint, fact.gasket.steps, (("t, free", fact.gasket.free_mm),))


def gasket_supply(fact: GasketFact, design: Design) -> Iterator[Supply]:
    """The gasket, and one to spare."""
    thick = shown_length(exact(fact.gasket.free_mm), design.units)
    count = made_times(fact.joint, fact.joint.ends[0].item, design)
    what = f"gasket of {fact.gasket.sheet.name}, {thick}"
    yield Supply(fact.joint, what, count, "cut to the outline of the face", 1)
