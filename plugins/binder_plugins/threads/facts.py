"""The step of this plugin: every thread of the design to its facts and workings."""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping
from dataclasses import replace

from binder.api import (
    Contribution,
    Design,
    End,
    Given,
    HalfFact,
    Joint,
    ThreadFact,
    Working,
    lengths_in,
)
from binder_plugins.threads.found import (
    JOINTS,
    Found,
    by_item,
    half_at,
    has_threads,
    material_of,
    threads_of,
)
from binder_plugins.threads.reckoned import Hole, Outside, hole, outside
from binder_plugins.threads.settling import settled
from binder_plugins.threads.shop import Shop, shop_of
from binder_trade.threading import LEAD_SOURCE, blank_rule
from binder_trade.threads import MOVING

# By whether the screw moves.
BLANK_BECAUSE = {
    False: "a die squeezes the crests up a little",
    True: "flat crests are turned to size before the thread",
}
_INCH = 25.4


def reckon_threads(design: Design) -> Contribution:
    """Facts and workings of all threads, and the halves that threaded joints settle."""
    if not has_threads(design):
        return Contribution()
    features, findings = settled(design)
    whole = design.with_contribution(Contribution(features=features))
    shop = shop_of(design.workshop)
    facts: dict[str, ThreadFact] = {}
    workings: list[Working] = []
    threads = threads_of(whole)
    for found in threads:
        fact, more = _reckoned(found, shop, whole)
        facts[fact.subject] = fact
        workings += [_in_units(one, design.units) for one in more]
    items = by_item(threads)
    halves = [
        half
        for joint in whole.joints.values()
        for half in _halves(joint, items, facts, design.units, design.bought)
    ]
    return Contribution(
        facts=[*facts.values(), *halves],
        features=features,
        workings=workings,
        findings=findings,
    )


def _reckoned(found: Found, shop: Shop, design: Design) -> tuple[ThreadFact, list[Working]]:
    if found.is_internal:
        tapped = hole(found, shop, material_of(found.feature.owner, design))
        return _tapped_fact(found, tapped), list(_tapped_workings(found, tapped))
    cut = outside(found, shop)
    return _screwed_fact(found, cut, design.units), [_screwed_working(found, cut)]


def _tapped_fact(found: Found, tapped: Hole) -> ThreadFact:
    chosen = tapped.drill
    return ThreadFact(
        subject=found.subject,
        item=found.feature.owner,
        place=found.feature.name,
        designation=_designation(found),
        is_internal=True,
        major=found.thread.major_mm,
        effective=found.thread.effective_mm,
        pitch=found.thread.pitch_mm,
        drill=chosen.drill.name if chosen is not None else "",
        drill_mm=chosen.drill.mm if chosen is not None else 0.0,
        percent=chosen.percent.basis if chosen is not None else "",
        full_depth=found.depth if found.is_blind or found.is_met else None,
        drill_depth=tapped.drill_mm,
        count=found.count,
        note=_tapped_note(found, tapped),
    )


def _tapped_note(found: Found, tapped: Hole) -> str:
    if found.is_met and not found.is_blind:
        return "open at its end: how deep the drill goes stands in the leaf"
    if tapped.depths is None:
        return "right through"
    chips = "" if tapped.has_chip_room else ", no room for chips: clear them at every half turn"
    return f"{tapped.last_tap} tap last{chips}"


def _screwed_fact(found: Found, cut: Outside, units: str) -> ThreadFact:
    return ThreadFact(
        subject=found.subject,
        item=found.feature.owner,
        place=found.feature.name,
        designation=_designation(found),
        is_internal=False,
        major=found.thread.major_mm,
        effective=found.thread.effective_mm,
        pitch=found.thread.pitch_mm,
        full_depth=found.length,
        turn_to=cut.figures.die_blank_mm,
        over_wires=_over_wires(cut, units),
        count=found.count,
    )


def _designation(found: Found) -> str:
    hand = " LH" if found.thread.is_left_hand else ""
    return f"{found.thread.designation.removesuffix(' LH')}{hand}"


def _in_units(one: Working, units: str) -> Working:
    """A sum whose lengths are in mm, in the units of the model."""
    if units == "mm":
        return one
    return replace(
        one,
        given=tuple(replace(got, value=lengths_in(got.value, units)) for got in one.given),
        formula=lengths_in(one.formula, units),
        result=lengths_in(one.result, units),
        because=lengths_in(one.because, units),
    )


def _over_wires(cut: Outside, units: str) -> str:
    if cut.wires is None:
        return "none: measure core and crest"
    over = cut.wires.over_mm
    if units == "inch":
        name = cut.wires.name
        if name.endswith("mm wire"):
            name = f"{float(name.removesuffix(' mm wire')) / _INCH:.4f} in wire"
        return f"{over / _INCH:.4f} in over three of {name}"
    return f"{over:.3f} mm ({over / _INCH:.4f} in) over three of {cut.wires.name}"


def _tapped_workings(found: Found, tapped: Hole) -> Iterator[Working]:
    chosen = tapped.drill
    given = (_given(found), Given("wanted", f"{chosen.wanted_mm:.2f} mm")) if chosen else ()
    if chosen is not None:
        yield Working(
            id=f"{found.subject}.drill",
            title=f"tapping drill for {_designation(found)} in '{found.subject}'",
            given=given,
            formula=f"{chosen.steps[0].formula}; of the drills from {chosen.window.least_mm:.2f}"
            f" to {chosen.window.most_mm:.2f} mm the nearest",
            result=f"{chosen.drill.name}, {chosen.percent.basis}",
            because=chosen.reason,
            source=f"{chosen.source} ({chosen.convention})",
            span=found.at,
        )
    if tapped.depths is not None and tapped.drill_mm is not None:
        depths = tapped.depths
        chips = f" + {depths.chips_mm:.2f} for chips" if tapped.has_chip_room else ""
        yield Working(
            id=f"{found.subject}.depth",
            title=f"depth to drill for {_designation(found)} in '{found.subject}'",
            given=(_given(found), Given("full thread", f"{depths.full_thread_mm:g} mm")),
            formula=f"full thread + {depths.lead_mm:.2f} lead of the {depths.tap_kind} tap{chips}",
            result=f"{tapped.drill_mm:.2f} mm, point {depths.point_mm:.2f} mm deeper",
            because=f"the {depths.tap_kind} tap cuts no full thread at its end",
            source=LEAD_SOURCE,
            span=found.at,
        )


def _screwed_working(found: Found, cut: Outside) -> Working:
    return Working(
        id=f"{found.subject}.blank",
        title=f"blank for {_designation(found)} on '{found.subject}'",
        given=(_given(found), Given("pitch", f"{found.thread.pitch_mm:.4g} mm")),
        formula=blank_rule(found.thread),
        result=f"{cut.figures.die_blank_mm:.2f} mm",
        because=BLANK_BECAUSE[found.thread.family in MOVING],
        source="common practice, no source",
        span=found.at,
    )


def _shown(mm: float, places: int, units: str) -> str:
    """A size to so many decimals in mm, to a thou in inches."""
    if units == "inch":
        return f"{mm / _INCH:.3f} in"
    return f"{mm:.{places}f} mm"


def _given(found: Found) -> Given:
    return Given("thread", found.thread.designation, found.at)


def _halves(
    joint: Joint,
    threads: Mapping[str, list[Found]],
    facts: Mapping[str, ThreadFact],
    units: str,
    bought: Container[str],
) -> Iterator[HalfFact]:
    if joint.kind not in JOINTS:
        return
    first = joint.master or joint.ends[-1]
    for end in joint.ends:
        found = half_at(end, joint, threads)
        if found is not None:
            fact = facts[found.subject]
            is_first = str(end) == str(first)
            is_bought = any(one.item in bought for one in joint.ends if one is not end)
            mate = "bought" if is_bought else "later" if is_first else "there"
            how = _how(fact, mate, is_moving=found.thread.family in MOVING)
            yield _half(joint, end, fact, how, units, is_master=is_first)


_TRIED = {
    "bought": ", and try the bought screw",
    "later": "; its screw is cut to run in it",
    "there": ", and try the screw",
}


def _how(fact: ThreadFact, mate: str, *, is_moving: bool) -> str:
    """How a half is cut; its mate is bought, is there, or is made later."""
    if fact.is_internal:
        return f"tap square to the face{_TRIED[mate]}"
    if is_moving:
        return "screwcut it, and try the nut before the last cut"
    return "open the die for the first cut, close it until it runs in the mate"


def _half(
    joint: Joint, end: End, fact: ThreadFact, how: str, units: str, *, is_master: bool
) -> HalfFact:
    mates = [str(other) for other in joint.ends if str(other) != str(end)]
    if fact.is_internal:
        verb = "" if fact.drill.endswith("drill") else "drill "
        drill = f", {verb}{fact.drill}" if fact.drill else ""
        deep = f" × {_shown(fact.drill_depth, 1, units)}" if fact.drill_depth is not None else ""
        what = f"tap {fact.designation}{drill}{deep}"
    else:
        blank = f", turn to {_shown(fact.turn_to, 2, units)}" if fact.turn_to is not None else ""
        what = f"thread {fact.designation}{blank}"
    return HalfFact(
        subject=f"{joint.name}: {end}",
        joint=joint.name,
        item=end.item,
        place=end.place,
        what=what,
        mate=" and ".join(mates),
        how=how,
        is_master=is_master,
    )
