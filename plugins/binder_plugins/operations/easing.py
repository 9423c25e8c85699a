"""Outsides brought to a measured bore: tight rods as bought, and seats of what is bought."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import lathe_for, place_of, round_holder
from binder_plugins.operations.eased_held import ENDS, holds_of
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.gauging import read_along, seen
from binder_plugins.operations.words import holding_min
from binder_solid.eased_along import come_over, eased_along, slides_through
from binder_trade.explained import NotDefined
from binder_trade.fits.gaps import gap

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder.api import HalfFact
    from binder_plugins.operations.eased_held import Span, Stretched
    from binder_plugins.operations.work import Work
    from binder_solid.eased_along import Eased

# What is polished off with a stick and abrasive, on diameter in mm: common practice, no source.
_POLISHED_MM = 0.05
# By how much the steps of a plug grow that tells a bore to polish to, on diameter in mm: common
# practice, no source.
_STEP_MM = 0.02
# By how much more work it is where the farther of two bearings is tried as well.
_FARTHER = 1.5
# What the parting tool takes, and what stays clear of the jaws, in mm: common practice, no source.
_PARTED_MM, _CLEAR_MM = 3.0, 3.0


def eased(work: Work) -> Iterator[SetUp]:
    """The set-ups for all places that are tried in their measured bores, gripped beside them."""
    found: dict[str, list[tuple[Stretched, HalfFact]]] = {end: [] for end in ("", *ENDS)}
    for place, half in _tight(work):
        for hold in holds_of(work, place) or ():
            if hold.takes(eased_along(half, work.design)):
                found[hold.end].append((hold, half))
    bought = list(_to_bought(work))
    if found[""] or bought:
        acts = [_polish(work, hold, half) for hold, half in found[""]]
        acts += [_to_measured(work, place, half, across) for place, half, across in bought]
        sized = [half.upper or 1.0 for _, half in found[""]] + [across for *_, across in bought]
        across = max(sized)
        on = f"⌀{work.mm(round(across, 1))}, beside the place"
        yield _setup(work, across, on, acts, [hold for hold, _ in found[""]])
    for end in ENDS:
        if found[end]:
            acts = [_polish(work, hold, half) for hold, half in found[end]]
            across = max(half.upper or 1.0 for _, half in found[end])
            again = "" if end == ENDS[0] or not found[ENDS[0]] else "turned round, "
            on = f"⌀{work.mm(round(across, 1))}, {again}{_free(work, found[end])}"
            yield _setup(work, across, on, acts, [hold for hold, _ in found[end]])


def _free(work: Work, found: Sequence[tuple[Stretched, HalfFact]]) -> str:
    """What stays clear of the jaws, so that all that comes from an end can be tried there."""
    holds = [hold for hold, _ in found]
    end, total = holds[0].end, holds[0].total
    free = max(one.bare[1] if end == "left" else total - one.bare[0] for one in holds)
    return f"clear of the jaws to {work.mm(free)} off its {end}-hand end"


def eased_in_the_bar(work: Work) -> Iterator[SetUp]:
    """The first set-up of a piece that has no land left beside the place once it is turned."""
    found = [(place, half) for place, half in _tight(work) if holds_of(work, place) is None]
    if not found:
        return
    long = work.form.size[0] if work.form is not None else 0.0
    reach = long + _PARTED_MM
    acts = [_polish_bar(work, place, half, reach) for place, half in found]
    across = max(half.upper or 1.0 for _, half in found)
    setup = _setup(work, across, "the bar", acts, [])
    out = replace(setup.grip, across=across, stand_out=reach + _CLEAR_MM)
    datum = f"{setup.datum}; in the bar, since no land is left beside the place later"
    yield replace(setup, grip=out, datum=datum)


def _setup(
    work: Work, across: float, on: str, acts: list[Act], holds: Sequence[Stretched]
) -> SetUp:
    workshop = work.design.workshop
    machine = lathe_for(workshop, across)
    holder, kind = round_holder(workshop, across, true=True)
    held = [one for one in holds if one.jaws[1] > one.jaws[0]]
    # Jaws leave their print on what is polished to a fit; a collet does not.
    soft = ", paper under the jaws" if kind != "collet" and any(one.end for one in holds) else ""
    grip = Grip(holder or "by hand", kind, f"{on}{soft}")
    if held:
        least = min(held, key=lambda one: one.long)
        grip = replace(grip, across=across, long=least.long, jaws=least.jaws)
    return SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        "the mate, as it was measured",
        tuple(acts),
        minutes=holding_min(kind),
    )


def _tight(work: Work) -> Iterator[tuple[str, HalfFact]]:
    """The places of a rod as bought that may be tight in their measured mates."""
    for place, halves in work.halves.items():
        yield from ((place, one) for one in halves if one.is_eased and one.upper is not None)


def _polish(work: Work, hold: Stretched, half: HalfFact) -> Act:
    """Tried in its mate, polished where that sits, as far as the grip leaves it bare."""
    found = eased_along(half, work.design)
    place, if_tight = half.place, half.how.removeprefix("eased ")
    where = _where(work, found, hold)
    words = f"try the {_said(place)} in the {half.mate}; polish it {where} {if_tight}"
    through = _through(work, half, hold)
    said = f"{_over(work, half, found, hold)}{words}{_kept(work, half, found, hold)}{through}"
    act = _act(work, place, said, half)
    if through:
        act = replace(act, run=act.run * _FARTHER)
    # What is done in two grips is half of the work in each.
    is_whole = not hold.is_half and len({end for end, _ in found.from_ends}) == 1
    return replace(act, run=act.run / 2) if hold.end and not is_whole else act


def _polish_bar(work: Work, place: str, half: HalfFact, reach: float) -> Act:
    """The end of the bar tried in its mate and polished for `reach` mm."""
    words = (
        f"burr off the bar's end, try it in the {half.mate}; polish the last "
        f"{work.mm(reach)} {half.how.removeprefix('eased ')}"
    )
    return _act(work, place, words, half)


def _where(work: Work, found: Eased, hold: Stretched) -> str:
    """From the end that goes in first, since all that its mate slides over is in the way."""
    if not found.own:
        return "from the end that goes in first to where it sits"
    return (
        f"from {_spans(work, hold.told(hold.eased(found)))} off its {hold.end or 'left'}-hand end"
    )


def _spans(work: Work, spans: Iterable[Span]) -> str:
    return " and ".join(f"{work.mm(low)} to {work.mm(high)}" for low, high in spans)


def _kept(work: Work, half: HalfFact, found: Eased, hold: Stretched) -> str:
    """The stretches of other mates: those that this one must pass over, and those left alone."""
    passed: dict[str, str] = {}
    left: dict[str, str] = {}
    for other in work.halves.get(half.place, ()):
        lands = () if other.joint == half.joint else eased_along(other, work.design).lands
        over = [span for span, one in found.passed if one.joint == other.joint]
        if hold.told(over):
            passed[other.mate] = f"{_spans(work, hold.told(over))}, which the {other.mate} is for"
        mine = (*found.lands, *over)
        free = [one for one in lands if not any(_meets(one, own) for own in mine)]
        if hold.told(free):
            left[other.mate] = f"{_spans(work, hold.told(free))}, which the {other.mate} is for"
    across, alone = " and ".join(passed.values()), "; nor ".join(left.values())
    words = f"; it slides over {across}: there no further than that" if across else ""
    return f"{words}; not {alone}" if alone else words


def _over(work: Work, half: HalfFact, found: Eased, hold: Stretched) -> str:
    """The steps as bought that the mate slides over first: a bore may go on them size for size."""
    ends = [hold.end] if hold.end else sorted({end for end, _ in found.from_ends})
    over = dict.fromkeys(name for end in ends for name in come_over(half, end, work.design))
    if not over:
        return ""
    said = " and the ".join(_said(name) for name in over)
    return f"try the {half.mate} dry over the {said} first: polish there only till it goes; then "


def _through(work: Work, half: HalfFact, hold: Stretched) -> str:
    """The farther bearing comes over what lies between the two, which is as bought as well."""
    found = slides_through(half, work.design)
    if found is None or hold.end not in ("", found[0]):
        return ""
    end, (low, high) = found
    total = work.form.size[0] if work.form is not None else high
    span = (low, high) if end == "left" else (total - high, total - low)
    return (
        f"; drawn farther out, try the other {half.mate} on from this end as well, up to "
        f"{work.mm(span[1])}: polish {_spans(work, [span])} only till it goes"
    )


def _meets(one: Span, other: Span) -> bool:
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
    return _act(work, place, words, half, across)


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


def _act(work: Work, place: str, words: str, half: HalfFact, bought: float = 0.0) -> Act:
    """By hand, and measured: on a rod `bought` mm across, whose mate is bought, over that."""
    across = bought or half.upper or 1.0
    gauge = read_along(work, bought) if bought else seen(work, half, "turn")
    act = work.act(
        "polish",
        words,
        machine=lathe_for(work.design.workshop, across),
        feature=place,
        size=across,
        tags=("finish", "fit", "outside"),
    )
    return replace(act, feed="by hand", measure=gauge or read_along(work, across))
