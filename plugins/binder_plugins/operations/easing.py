"""Outsides brought to a measured bore: tight rods as bought, and seats of what is bought."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import lathe_for, place_of, round_holder
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.words import holding_min
from binder_solid.eased_along import eased_along
from binder_trade.explained import NotDefined
from binder_trade.fits.gaps import gap

if TYPE_CHECKING:
    from binder.api import HalfFact
    from binder_plugins.operations.work import Work
    from binder_solid.eased_along import Eased

# What is polished off with a stick and abrasive, on diameter in mm: common practice, no source.
_POLISHED_MM = 0.05
# By how much the steps of a plug grow that tells a bore to polish to, on diameter in mm: common
# practice, no source.
_STEP_MM = 0.02
# A land shorter than this holds nothing; a journal so many times its thickness long is turned end
# for end and gripped by its other half; what the parting tool takes, and what stays clear of the
# jaws, in mm: common practice, no source.
_LAND_MM, _LONG = 3.0, 4.0
_PARTED_MM, _CLEAR_MM = 3.0, 3.0


def eased(work: Work) -> Iterator[SetUp]:
    """One set-up for all places that are tried in their measured bores, gripped beside them."""
    found = [(place, half) for place, half in _tight(work) if _land(work, place, half)]
    sized = [(place, half.upper or 1.0) for place, half in found]
    acts = [_polish(work, place, half) for place, half in found]
    for place, half, across in _to_bought(work):
        sized.append((place, across))
        acts.append(_to_measured(work, place, half, across))
    if acts:
        across = max(size for _, size in sized)
        on = f"⌀{work.mm(round(across, 1))}, beside the place"
        yield _setup(work, across, on, acts)


def eased_in_the_bar(work: Work) -> Iterator[SetUp]:
    """The first set-up of a piece that has no land left beside the place once it is turned."""
    found = [(place, half) for place, half in _tight(work) if not _land(work, place, half)]
    if not found:
        return
    long = work.form.size[0] if work.form is not None else 0.0
    reach = long + _PARTED_MM
    acts = [_polish(work, place, half, reach) for place, half in found]
    across = max(half.upper or 1.0 for _, half in found)
    setup = _setup(work, across, "the bar", acts)
    out = replace(setup.grip, across=across, stand_out=reach + _CLEAR_MM)
    datum = f"{setup.datum}; in the bar, since no land is left beside the place later"
    yield replace(setup, grip=out, datum=datum)


def _setup(work: Work, across: float, on: str, acts: list[Act]) -> SetUp:
    workshop = work.design.workshop
    machine = lathe_for(workshop, across)
    holder, kind = round_holder(workshop, across, true=True)
    return SetUp(
        1,
        place_of(workshop, machine),
        machine,
        Grip(holder or "by hand", kind, on),
        "the mate, as it was measured",
        tuple(acts),
        minutes=holding_min(kind),
    )


def _tight(work: Work) -> Iterator[tuple[str, HalfFact]]:
    """The places of a rod as bought that may be tight in their measured mates."""
    for place, halves in work.halves.items():
        yield from ((place, one) for one in halves if one.is_eased and one.upper is not None)


def _land(work: Work, place: str, half: HalfFact) -> bool:
    """Whether enough of the rod's own thickness is left to grip beside what is polished."""
    step = (
        next((one for one in work.form.stretches if one.name == place), None) if work.form else None
    )
    if step is None:
        return True
    spans = eased_along(half, work.design).own or ((step.start, step.end),)
    free = [max(low - step.start, step.end - high) for low, high in spans]
    return max(free) >= _LAND_MM or (step.end - step.start) >= _LONG * step.across


def _polish(work: Work, place: str, half: HalfFact, in_bar: float = 0.0) -> Act:
    """Tried in its mate, polished where that sits, or for `in_bar` mm of the bar's end."""
    if_tight = half.how.removeprefix("eased ")
    if in_bar:
        words = (
            f"burr off the bar's end, try it in the {half.mate}; polish the last "
            f"{work.mm(in_bar)} {if_tight}"
        )
        return _act(work, place, words, half.upper or 1.0)
    found = eased_along(half, work.design)
    words = f"try the {_said(place)} in the {half.mate}; polish it {_where(work, found)} {if_tight}"
    return _act(work, place, f"{words}{_kept(work, place, half, found)}", half.upper or 1.0)


def _where(work: Work, found: Eased) -> str:
    """From the end that goes in first, since all that its mate slides over is in the way."""
    if not found.own:
        return "from the end that goes in first to where it sits"
    return f"from {_spans(work, found.own)} off its left-hand end"


def _spans(work: Work, spans: Iterable[tuple[float, float]]) -> str:
    return " and ".join(f"{work.mm(low)} to {work.mm(high)}" for low, high in spans)


def _kept(work: Work, place: str, half: HalfFact, found: Eased) -> str:
    """The stretches of other mates: those that this one must pass over, and those left alone."""
    passed: dict[str, str] = {}
    left: dict[str, str] = {}
    for other in work.halves.get(place, ()):
        lands = () if other.joint == half.joint else eased_along(other, work.design).lands
        over = [span for span, one in found.passed if one.joint == other.joint]
        if over:
            passed[other.mate] = f"{_spans(work, over)}, which the {other.mate} is for"
        mine = (*found.lands, *over)
        free = [one for one in lands if not any(_meets(one, own) for own in mine)]
        if free:
            left[other.mate] = f"{_spans(work, free)}, which the {other.mate} is for"
    across, alone = " and ".join(passed.values()), "; nor ".join(left.values())
    words = f"; it slides over {across}: there no further than that" if across else ""
    return f"{words}; not {alone}" if alone else words


def _meets(one: tuple[float, float], other: tuple[float, float]) -> bool:
    return one[0] < other[1] and one[1] > other[0]


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
        f"try the bore of the {title} with a stepped plug whose steps grow by "
        f"{work.mm(_STEP_MM)}: the thickest that goes in is its size, write it down; polish the "
        f"{_said(place)} "
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
