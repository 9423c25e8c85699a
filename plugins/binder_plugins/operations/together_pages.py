"""Work on parts put together to its leaves: operations with boxes to tick, one for each task."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import (
    Block,
    BuildSequence,
    Design,
    Diagnostic,
    HalfFact,
    Joint,
    Link,
    Paragraph,
    Place,
    Section,
    Strong,
    Text,
    TogetherFact,
)
from binder_plugins.operations.facts import Route, leaf_id
from binder_plugins.operations.joined import JOINED
from binder_plugins.operations.leaf import operations
from binder_plugins.operations.minutes import route_text
from binder_plugins.operations.sketch_leaning import goes_up
from binder_plugins.operations.sketch_together import sketch_together
from binder_solid.leaning import leaning, leans_at
from binder_solid.pinned_stop import pinned_stop
from binder_solid.set_there import set_there

if TYPE_CHECKING:
    from collections.abc import Iterator

_FIXED = JOINED.keys()
_WORDS = (
    "What is pressed, bonded, soldered, drilled through both or finished in line, in the places "
    "that the build order gives it. The leaves of the parts leave it for here."
)


def together_pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    """One section, a leaf for each task in which parts are worked together."""
    leaves = [
        _leaf(fact, route, design)
        for fact in _in_order(design)
        if (route := design.facts.about(Route, fact.subject)) is not None
    ]
    if leaves:
        blocks = (Paragraph((_WORDS,)),)
        yield Section(
            "together", "Work on parts put together", Place.TOGETHER, blocks, sections=tuple(leaves)
        )


def _in_order(design: Design) -> list[TogetherFact]:
    """The tasks as the build order has them."""
    sequence = design.facts.about(BuildSequence, "")
    steps = sequence.steps if sequence is not None else ()
    place = {step.task: number for number, step in enumerate(steps)}
    facts = design.facts.all(TogetherFact)
    return sorted(facts, key=lambda fact: place.get(fact.subject, len(place)))


def _leaf(fact: TogetherFact, route: Route, design: Design) -> Section:
    blocks: list[Block] = [Paragraph(tuple(_head(fact, route, design)))]
    blocks += [Paragraph(text) for text in _told(fact, design)]
    blocks.append(operations(route, design, lambda setup: sketch_together(setup, fact, design)))
    title = route.title[0].upper() + route.title[1:]
    return Section(leaf_id(fact.subject), title, Place.TOGETHER, tuple(blocks), starts_page=False)


def _told(fact: TogetherFact, design: Design) -> Iterator[Text]:
    """Where the one stands on the other once it is fixed, and what the maker notes of the joint."""
    told: set[str] = set()
    for name in fact.joints:
        joint = design.joints.get(name)
        if joint is None:
            continue
        # What the row sets is told at its mark: a place as drawn would speak against that.
        is_set = joint.kind in _FIXED and pinned_stop(joint, design) is None
        place = set_there(joint, design) if is_set else ""
        leans = leans_at(joint, design)
        place = place or (leans and f"{leans}; set with a protractor{_seen(joint, fact, design)}")
        if place and place not in told:
            yield Strong("Place: "), f"{place}."
        told.add(place)
        if joint.entry.note:
            yield Strong("Note: "), f"{joint.entry.note}."


def _seen(joint: Joint, fact: TogetherFact, design: Design) -> str:
    """From where the sketch shows it, where there is one."""
    lean = leaning(joint, design)
    is_shown = lean is not None and goes_up(lean, fact, design) is not None
    return "; the sketch shows it from above, as it lies under the drill" if is_shown else ""


def _is_made_to_it(item: str, joint: str, fact: TogetherFact, design: Design) -> bool:
    """Whether a shaft is made to the bore of a pressed bush: it is not there yet."""
    bores = {place for line in fact.lines for place in line}
    return joint != fact.joints[0] and any(
        half.is_master and half.joint == joint and f"{half.item}.{half.place}" in bores
        for half in design.facts.all(HalfFact)
        if half.item != item
    )


def _head(fact: TogetherFact, route: Route, design: Design) -> Iterator[Strong | str | Link]:
    """The time, and the parts that lie ready."""
    off = f", {route.count} off" if route.count > 1 else ""
    yield Strong(f"{route_text(route, design.workshop)}{off}. ")
    met = (
        item
        for name in fact.joints
        if name in design.joints
        for item in design.joints[name].items
        if not _is_made_to_it(item, name, fact, design)
    )
    worked = (place.partition(".")[0] for line in fact.lines for place in line)
    items = dict.fromkeys(
        item
        for item in fact.items or (*met, *worked)
        if item in design.parts or item in design.fabrications
    )
    if items:
        yield "On the bench: "
        for number, name in enumerate(items):
            item = design.item(name)
            yield ", " if number else ""
            yield Link(item.title if item is not None else name, f"part-{name}")
        yield "."
