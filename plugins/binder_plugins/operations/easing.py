"""Outsides brought to a measured bore: tight rods as bought, and seats of what is bought."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import lathe_for, place_of, round_holder
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.words import holding_min
from binder_trade.explained import NotDefined
from binder_trade.fits.gaps import gap

if TYPE_CHECKING:
    from binder.api import HalfFact
    from binder_plugins.operations.work import Work

# What is polished off with a stick and abrasive, on diameter in mm: common practice, no source.
_POLISHED_MM = 0.05


def eased(work: Work) -> Iterator[SetUp]:
    """One set-up for all places that are tried in their measured bores."""
    found = [
        (place, half)
        for place, halves in work.halves.items()
        for half in halves
        if is_eased(half) and half.upper is not None
    ]
    sized = [(place, half.upper or 1.0) for place, half in found]
    acts = [_polish(work, place, half) for place, half in found]
    for place, half, across in _to_bought(work):
        sized.append((place, across))
        acts.append(_to_measured(work, place, half, across))
    if not acts:
        return
    across = max(size for _, size in sized)
    workshop = work.design.workshop
    machine = lathe_for(workshop, across)
    holder, kind = round_holder(workshop, across, true=True)
    grip = Grip(holder or "by hand", kind, f"⌀{work.mm(round(across, 1))}, beside the place")
    yield SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        "the mate, as it was measured",
        tuple(acts),
        minutes=holding_min(kind),
    )


def is_eased(half: HalfFact) -> bool:
    """Whether a half stays as the rod was bought, unless its measured mate is tight on it."""
    return "as bought" in half.what and half.how.startswith("eased")


def _polish(work: Work, place: str, half: HalfFact) -> Act:
    words = (
        f"try the {_said(place)} in the {half.mate}; polish it there "
        f"{half.how.removeprefix('eased ')}"
    )
    return _act(work, place, words, half.upper or 1.0)


def _to_bought(work: Work) -> Iterator[tuple[str, HalfFact, float]]:
    """The round steps that suit a bought part whose bore is not known before it is measured."""
    across = {one.name: one.across for one in (work.form.stretches if work.form else ())}
    for place, halves in work.halves.items():
        for half in halves:
            if place in across and half.how == "to suit the measured other half":
                yield place, half, across[place]


def _to_measured(work: Work, place: str, half: HalfFact, across: float) -> Act:
    """The seat to the bore as it is found; a bore that is larger than the bar is bushed."""
    most = work.mm(_POLISHED_MM)
    mate = work.design.item(half.mate.partition(".")[0])
    title = mate.title if mate is not None else half.mate
    words = (
        f"measure the bore of the {title}, write it down; polish the {_said(place)} "
        f"{_until(work, half)}, turned first where more than {most} comes off; a bore too large "
        f"for the ⌀{work.mm(across)} is bushed to it"
    )
    return _act(work, place, words, across)


def _until(work: Work, half: HalfFact) -> str:
    kind = work.design.joints[half.joint].kind.replace("_", " ")
    if kind == "pressed":
        return "until it starts in it by hand and wants the vice to go on"
    try:
        wanted = gap(kind)
    except NotDefined:
        return "until it goes in by hand without shake"
    least, most = wanted.least_um / 1000, wanted.most_um / 1000
    return f"to {work.mm(least)} to {work.mm(most)} under it, for the {wanted.filler}"


def _said(place: str) -> str:
    return place.replace("_", " ")


def _act(work: Work, place: str, words: str, across: float) -> Act:
    act = work.act(
        "polish",
        words,
        machine=lathe_for(work.design.workshop, across),
        feature=place,
        size=across,
        tags=("finish", "fit", "outside"),
    )
    return replace(act, feed="by hand")
