"""Every part and fabrication to its route, its acts in an order that keeps all rules."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import Contribution, Design, Fabrication, Feature, Position, filed_stretch
from binder_plugins.operations.bought_measured import bought_measured
from binder_plugins.operations.clamps import clamped_clear
from binder_plugins.operations.cleaning import cleaned
from binder_plugins.operations.clips_apart import clips_apart
from binder_plugins.operations.crosswise import cross_setups
from binder_plugins.operations.disc import disc_setups
from binder_plugins.operations.easing import eased, eased_in_the_bar
from binder_plugins.operations.facts import Act, Left, Route, SetUp, leaf_id
from binder_plugins.operations.filed_marks import gauge_of, marked, section_of
from binder_plugins.operations.flat import Flat
from binder_plugins.operations.gathering import works
from binder_plugins.operations.hand_filed import hand_filed
from binder_plugins.operations.hand_tapped import hand_tapped
from binder_plugins.operations.held_fabrication import by_face, held_for_holes
from binder_plugins.operations.in_flame import HEARTH
from binder_plugins.operations.joined import FLAMES, JOINED
from binder_plugins.operations.oil_ways import oil_way_of
from binder_plugins.operations.one_setting import at_one_setting
from binder_plugins.operations.ordered import ordered
from binder_plugins.operations.pawl_noses import nose_words
from binder_plugins.operations.place_marks import place_marks
from binder_plugins.operations.plain import at_bench, drilled
from binder_plugins.operations.riveting import riveted
from binder_plugins.operations.rows import hole_in_words
from binder_plugins.operations.set_over import swung_back
from binder_plugins.operations.several import in_a_stick
from binder_plugins.operations.summed import summed
from binder_plugins.operations.tails import sunk_for_tails
from binder_plugins.operations.thrown import thrown
from binder_plugins.operations.together import plan_together
from binder_plugins.operations.treating import softened
from binder_plugins.operations.tried_early import tried_early
from binder_plugins.operations.turning import Turning
from binder_plugins.operations.wet import wetted
from binder_plugins.operations.wire import bent
from binder_plugins.operations.wood_shoulders import shouldered_at
from binder_plugins.operations.work import Work
from binder_solid.facts import JoinedFact

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

_LENGTHS = frozenset({"wire", "spring"})
_DISCS = frozenset({"plate", "sheet"})
# What a note on a bend may order of an end, which is filed.
_FILED = ("rounded", "filed", "pointed", "tapered")
_SAWN = frozenset({"cut", "tube"})


def plan_routes(design: Design) -> Contribution:
    """A route for each part and fabrication that is made, and for what is done on them together."""
    items = list(works(design))
    routes = at_one_setting([route_of(work) for work in items], design)
    uses = [work.use for work in items if work.use is not None and work.use.length > 0]
    together = plan_together({work.name: work for work in items}, design)
    planned = [hand_filed(hand_tapped(one)) for one in (*routes, *together)]
    return Contribution(facts=[*planned, *uses, *summed(planned[: len(routes)], design)])


def route_of(work: Work) -> Route:
    """The set-ups of one item, each with its acts in order."""
    planned, trouble = _setups(work)
    planned = bought_measured(work, clips_apart(work, tried_early(work, planned)))
    filed = list(_by_words(work))
    # Wire is filed while it is straight; what is bent comes last.
    last = len(planned) - 1 if _is_bent(work) else len(planned)
    cut = [*planned[:last], *sunk_for_tails(work), *filed, *planned[last:]]
    done = [*eased_in_the_bar(work), *_softened(work, cut), *cleaned(work, planned), *eased(work)]
    done += place_marks(work)
    setups = _numbered(in_a_stick(work, done))
    found = ordered(work.name, setups)
    return Route(
        work.name,
        work.item.title,
        clamped_clear(work, wetted(work, swung_back(work, found.setups))),
        work.count,
        tuple(_left(work)),
        (*trouble, *found.trouble),
        work.item.at,
    )


def _is_bent(work: Work) -> bool:
    return work.form is not None and work.form.shape == "wire"


def _softened(work: Work, cut: Sequence[SetUp]) -> Iterator[SetUp]:
    """Heat that softens goes between the sawing, or the joining, and the first other cut."""
    is_first = bool(cut) and {act.act for act in cut[0].acts} == {"saw"}
    sawn = 1 if is_first or isinstance(work.item, Fabrication) else 0
    yield from cut[:sawn]
    yield from softened(work)
    yield from cut[sawn:]


def _setups(work: Work) -> tuple[list[SetUp], list[tuple[str, str]]]:
    if isinstance(work.item, Fabrication):
        return _joined(work, work.item), []
    form = work.form
    if form is None:
        return [_saw(work)], []
    if form.shape in _LENGTHS or work.stock_form == "wire":
        return bent(work), []
    if form.stretches and form.shape not in _SAWN:
        turning = Turning(work, form)
        if work.stock_form in _DISCS:
            turning.setups = disc_setups(turning)
        else:
            turning.run()
        turning.setups += list(cross_setups(turning))
        turning.setups += list(thrown(turning))
        return turning.setups, turning.trouble
    if form.stretches:
        turning = Turning(work, form)
        turning.run()
        turning.setups += list(cross_setups(turning))
        return turning.setups, turning.trouble
    flat = Flat(work, form)
    return flat.run(), flat.trouble


def _numbered(setups: Sequence[SetUp]) -> tuple[SetUp, ...]:
    kept: list[SetUp] = []
    for one in setups:
        if kept and _is_same_grip(kept[-1], one):
            kept[-1] = replace(kept[-1], acts=(*kept[-1].acts, *one.acts))
        elif one.acts:
            kept.append(one)
    return tuple(replace(one, number=number) for number, one in enumerate(kept, 1))


def _is_same_grip(one: SetUp, other: SetUp) -> bool:
    """Whether a set-up goes on in the grip of the one before it."""
    return (one.machine, one.grip, one.datum, one.place) == (
        other.machine,
        other.grip,
        other.datum,
        other.place,
    ) and bool(other.acts)


def _saw(work: Work) -> SetUp:
    stock = work.cut.section_text if work.cut is not None else work.item.title
    act = work.act("saw", f"cut {stock}", amount=work.stock_across or 6.0)
    return at_bench(work, "the stock", "", [act])


def _by_words(work: Work) -> Iterator[SetUp]:
    """Features that are told in words alone, and so have no place on the form."""
    placed = {one.name for one in work.form.located} if work.form is not None else set()
    filed = [one for one in work.item.features if one.kind == "filed" and one.name not in placed]
    acts = [act for one in filed for act in marked(work, one, shouldered_at(work))]
    acts += [act for one in filed for act in _by_hand(work, one)]
    if acts:
        yield at_bench(work, "its faces", "", acts)


def _by_hand(work: Work, one: Feature) -> Iterator[Act]:
    """What is told in words is filed, or bent where the words say so; its ends are filed first."""
    said = str(getattr(one.entry, "filed", ""))
    if not said.startswith("bent "):
        yield _filed(work, one)
        return
    told = said.split(", ")
    ends = [part for part in told[1:] if any(word in part for word in _FILED)]
    bent = ", ".join(part for part in told if part not in ends)
    for end in ends:
        yield work.act("file", f"{end}, filed while it is straight", feature=f"{one.name} end")
    name = one.name.replace("_", " ")
    yield work.act("bend", f"{name}: {bent}", feature=one.name, tool="vice, rod and mallet")


def _filed(work: Work, one: Feature) -> Act:
    words, section = f"{_words_of(work, one)}{nose_words(work, one)}", section_of(work, one)
    if section is None:
        return work.act("file", words, feature=one.name)
    gauge = gauge_of(work, section)
    words += "; the corners first, flat at 45°, then round to the lines, till the gauge shows no "
    words += "light along the whole of it"
    act = work.act("file", words, feature=one.name, tool=f"files, {gauge}")
    return replace(act, measure=f"{gauge}, then its own mate")


def _words_of(work: Work, one: Feature) -> str:
    said = getattr(one.entry, "filed", "")
    at = getattr(one.entry, "at", None)
    place = ""
    if isinstance(at, Position) and at.distance is not None:
        place = f"; its middle {work.mm(at.distance.mm)} {at.rest}"
    return f"{one.name.replace('_', ' ')}: {said}{place}{_stretch(work, one)}"


def _stretch(work: Work, one: Feature) -> str:
    """Lines to scribe round before the file comes: where it begins and ends."""
    found = filed_stretch(one)
    if found is None:
        return ""
    start, end, side = found
    if start <= 0:
        return f"; from this {side} end to {work.mm(float(end))} from it"
    return f"; from {work.mm(float(start))} to {work.mm(float(end))} from {side}"


def _left(work: Work) -> Iterator[Left]:
    """What waits until other parts are there, and where that is told."""
    for place, facts in work.left.items():
        for fact in facts:
            task = work.design.tasks.get(fact.subject)
            if task is not None:
                said = f"{place.replace('_', ' ')}: {fact.how}"
                yield Left(said, task.title, leaf_id(fact.subject))
    way = oil_way_of(work)
    task = work.design.tasks.get(way.fact.subject) if way is not None else None
    if way is not None and task is not None:
        said = f"{way.own.name.replace('_', ' ')}: drilled through both once it is in"
        yield Left(said, task.title, leaf_id(way.fact.subject))


def _joined(work: Work, one: Fabrication) -> list[SetUp]:
    """The joining of the pieces, and what is cut in them as one."""
    setups = [_made_one(work, one)]
    holes = [
        found for feature in one.features if (found := hole_in_words(work, feature)) is not None
    ]
    holes = [one for one in holes if not work.is_wholly_left(one.name)]
    if holes:
        groups = by_face(holes, work.design.facts.about(JoinedFact, one.name))
        setups += [held_for_holes(work, one, each, drilled(work, each)) for each in groups]
    return setups


def _made_one(work: Work, one: Fabrication) -> SetUp:
    """The joining: rivets over a dolly, flames on brick, all else in the vice."""
    how = one.joined.replace("-", "_").replace(" ", "_")
    if how == "riveted":
        return riveted(work, one)
    name = JOINED.get(how, "assemble")
    words = f"{one.joined.replace('_', ' ')}: all pieces, held in place"
    act = work.act(name, words, feature="joint")
    if name in FLAMES:
        act = replace(act, what=f"{words} by wire, pegs or weights")
        return SetUp(1, "bench", "", HEARTH, "", (act,))
    return at_bench(work, "the pieces, clamped or pinned in place", "", [act])


__all__ = ["plan_routes", "route_of"]
