"""A set-up to the words by which cautions find it, and to the line that stands over its acts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ActsFact, CautionLines, Contribution
from binder_plugins.operations.facts import Route

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Text
    from binder_plugins.operations.facts import Act, SetUp

_STICKS = ("superglue", "acetone")
_CHUCKS = frozenset({"chuck", "four-jaw"})


def tell_acts(design: Design) -> Contribution:
    """The acts of every route in the words by which cautions go."""
    return Contribution(facts=[_acts(route) for route in design.facts.all(Route)])


def _acts(route: Route) -> ActsFact:
    """What is done to an item, each kind of act once with where and how it is held."""
    done = (
        (said, *_places(setup))
        for setup in route.setups
        for act in setup.acts
        for said in _said(act)
    )
    return ActsFact(route.subject, tuple(dict.fromkeys(done)))


def _places(setup: SetUp) -> Iterator[str]:
    yield f"at the {setup.place}"
    if setup.grip.kind in _CHUCKS:
        yield "in a chuck"
    if setup.place == "lathe" and setup.grip.on == "the bar":
        yield "out of the bar"


def cautioned(route: Route, design: Design) -> Iterator[tuple[SetUp, Text]]:
    """Each set-up with its cautions in a line; what was said higher on the leaf is not repeated."""
    lines = CautionLines(design)
    items = {route.subject, *_pieces(route.subject, design)}
    for setup in route.setups:
        yield setup, lines.at(set(doing(setup)), items)


def doing(setup: SetUp) -> Iterator[str]:
    """What is done in a set-up, in the words by which cautions go."""
    yield from _places(setup)
    for act in setup.acts:
        for said in _said(act):
            yield said
            yield f"{said} at the {setup.place}"


def _said(act: Act) -> Iterator[str]:
    """An act by its kind, and `bond` where instant glue goes on or is soaked off."""
    yield act.act
    if any(word in f"{act.tool}; {act.what}" for word in _STICKS):
        yield "bond"


def _pieces(name: str, design: Design) -> Iterator[str]:
    """What a fabrication is joined from: its metals are in the flame as well."""
    item = design.fabrications.get(name)
    if item is not None:
        yield from (piece.item for piece in item.pieces)
