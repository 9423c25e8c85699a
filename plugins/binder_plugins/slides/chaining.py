"""A dovetail slide to its tolerance chain: mouth, tail and gib to the clearance that is left."""

from __future__ import annotations

from binder.api import ChainFact, ChainLink
from binder_plugins.slides.facts import SlideFact
from binder_trade.limits import stray_mm

_GENERAL = "ISO 2768-1 m"
GIB = "gib, along the flat"
MOUTH = "slot across its mouth"


def chain_of(fact: SlideFact) -> ChainFact | None:
    """The chain of a settled slide.

    A gib is set by its screws; without one the slot is widened last, to the tail as it is.
    """
    slide = fact.slide
    if slide is None or slide.clearance_mm <= 0:
        return None
    links = [
        _link(MOUTH, slide.female.narrow_mm, 1.0, fact),
        _link("tail across its root", slide.male.narrow_mm, -1.0, fact),
    ]
    if slide.gib_mm > 0:
        links.append(_link(GIB, slide.gib_width_mm, -1.0, fact))
    return ChainFact(
        subject=f"{fact.subject}: clearance",
        kind="slide",
        title=f"Clearance of '{fact.subject}'",
        items=(fact.male.end.item, fact.female.end.item),
        links=tuple(links),
        least=slide.clearance_mm / 2,
        most=slide.clearance_mm * 1.5,
        jams=0.0,
        closing=GIB if slide.gib_mm > 0 else MOUTH,
        is_set=slide.gib_mm > 0,
        at=fact.joint.at,
    )


def _link(name: str, size: float, factor: float, fact: SlideFact) -> ChainLink:
    half = stray_mm(size)
    return ChainLink(name, size, half, -half, factor, f"{fact.subject} {name}", _GENERAL)
