"""Gears of the scrap box to what they may be, by the sizes that were measured."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Bought, Design, Joint
from binder_trade.explained import NotDefined
from binder_trade.gears.candidates import Candidate
from binder_trade.gears.identify import Identified, identify

_SPAN = re.compile(r"over_([0-9]{1,2})")


def salvaged(joint: Joint, number: int, teeth: int | None, design: Design) -> Bought | None:
    """The scrap box's gear at an end of a drive, where its teeth and its outside are told."""
    item = design.bought.get(joint.ends[number].item)
    if item is None or not item.is_salvaged or teeth is None:
        return None
    return item if "outside" in dict(item.sizes) else None


def identified(item: Bought, teeth: int) -> Identified | NotDefined:
    """Candidates, likeliest first, or why there are none.

    Sizes are `outside`, `bore`, and spans as `over_5` and `over_6` teeth.
    """
    sizes = {str(name): size.mm for name, size in item.sizes}
    spans = [
        (int(found[1]), size) for name, size in sizes.items() if (found := _SPAN.fullmatch(name))
    ]
    try:
        return identify(sizes["outside"], teeth, bore_mm=sizes.get("bore"), spans_mm=spans)
    except NotDefined as refusal:
        return refusal


def likeliest(
    joint: Joint, teeth: tuple[int | None, ...], design: Design
) -> tuple[Bought, Candidate] | None:
    """The first gear of the scrap box that can be told, as what it most likely is."""
    return next(_told(joint, teeth, design), None)


def _told(
    joint: Joint, teeth: tuple[int | None, ...], design: Design
) -> Iterator[tuple[Bought, Candidate]]:
    for number, count in enumerate(teeth):
        item = salvaged(joint, number, count, design)
        if item is not None and count is not None:
            found = identified(item, count)
            if isinstance(found, Identified):
                yield item, found.candidates[0]
