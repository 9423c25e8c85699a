"""Every part and fabrication to its route, its acts in an order that keeps all rules."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import Contribution, Design, Fabrication, Feature, HalfFact
from binder_plugins.operations import words
from binder_plugins.operations.bench import bench_vice, drill_for, place_of, vice_for
from binder_plugins.operations.cautioned import acts_fact
from binder_plugins.operations.crosswise import cross_setups
from binder_plugins.operations.disc import disc_setups
from binder_plugins.operations.easing import eased
from binder_plugins.operations.facts import Act, Grip, Left, Route, SetUp, leaf_id
from binder_plugins.operations.flat import Flat
from binder_plugins.operations.holes import HOLES, Where, hole_acts
from binder_plugins.operations.joined import JOINED
from binder_plugins.operations.lengthwise import is_thrown
from binder_plugins.operations.ordered import ordered
from binder_plugins.operations.rows import hole_in_words
from binder_plugins.operations.several import in_a_stick
from binder_plugins.operations.together import plan_together
from binder_plugins.operations.treating import brightened, hardened, softened
from binder_plugins.operations.turning import Turning
from binder_plugins.operations.work import Work, works
from binder_solid.facts import FormFact, JoinedFact, Located, Stretch

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

_LENGTHS = frozenset({"wire", "spring"})
_DISCS = frozenset({"plate", "sheet"})
_SAWN = frozenset({"cut", "tube"})


def plan_routes(design: Design) -> Contribution:
    """A route for each part and fabrication that is made, and for what is done on them together."""
    items = list(works(design))
    routes = [route_of(work) for work in items]
    uses = [work.use for work in items if work.use is not None and work.use.length > 0]
    together = plan_together({work.name: work for work in items}, design)
    return Contribution(facts=[*routes, *map(acts_fact, routes), *uses, *together])


def route_of(work: Work) -> Route:
    """The set-ups of one item, each with its acts in order."""
    planned, trouble = _setups(work)
    cut = [*planned, *_by_words(work)]
    done = [*_softened(work, cut), *_cleaned(work, planned), *eased(work)]
    setups = _numbered(in_a_stick(work, done))
    found = ordered(work.name, setups)
    return Route(
        work.name,
        work.item.title,
        found.setups,
        work.count,
        tuple(_left(work)),
        (*trouble, *found.trouble),
        work.item.at,
    )


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
        return _bent(work), []
    if form.stretches and form.shape not in _SAWN:
        turning = Turning(work, form)
        if work.stock_form in _DISCS:
            turning.setups = disc_setups(turning)
        else:
            turning.run()
        turning.setups += list(cross_setups(turning))
        turning.setups += list(_thrown(turning))
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
    return _at_bench(work, "the stock", "", [act])


def _at_bench(work: Work, on: str, datum: str, acts: Sequence[Act]) -> SetUp:
    vice = bench_vice(work.design.workshop)
    return SetUp(1, "bench", "", Grip(vice or "by hand", "bench", on), datum, tuple(acts))


def _bent(work: Work) -> list[SetUp]:
    """Wire and springs: cut, straightened, bent or wound."""
    stock = work.cut.section_text if work.cut is not None else "wire"
    length = float(work.cut.length) + 2 * work.facing if work.cut is not None else 0.0
    work.takes(length)
    long = work.mm(length) if length else ""
    cut = work.act(
        "saw",
        f"cut off {long} of {stock}, ends square",
        tool="hacksaw or cutters",
        amount=max(work.stock_across, 1.0),
    )
    setups = [_at_bench(work, "the wire", "", [cut])]
    located = work.form.located if work.form is not None else ()
    holes = [one for one in located if one.kind in HOLES]
    if holes:
        setups.append(_drilled(work, holes))
    shape = work.form.shape if work.form is not None else ""
    if shape == "spring":
        words_of = "; ".join(one.note for one in located if one.note) or "wind the spring"
        act = work.act("wind", f"wind: {words_of}", machine="", feature="coils")
        setups.append(
            SetUp(
                1,
                "bench",
                "",
                Grip("mandrel, wire through a clamp", "bench", "the wire"),
                "",
                (act,),
            )
        )
    elif shape == "wire":
        words_of = "; ".join(one.note for one in located if one.kind == "wire")
        setups.append(
            _at_bench(
                work,
                "the wire",
                "the first end",
                [work.act("bend", f"bend: {words_of}", feature="bends")],
            )
        )
    return setups


def _drilled(work: Work, holes: Sequence[Located]) -> SetUp:
    workshop = work.design.workshop
    largest = max(one.diameter or 0.0 for one in holes)
    machine = drill_for(workshop, min(largest, 13.0))
    joined = work.design.facts.about(JoinedFact, work.name)
    size = work.form.size if work.form is not None else joined.size if joined else (largest,)
    acts: list[Act] = []
    for one in holes:
        deep = one.depth or max(min(size), 1.0)
        acts += hole_acts(work, one, Where(machine, deep, first=_in_pieces(work, one)))
    vice = vice_for(workshop)
    grip = Grip(vice or "clamps", "vice", "the piece")
    return SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        "the marks",
        tuple(acts),
        minutes=words.holding_min("vice"),
    )


def _in_pieces(work: Work, one: Located) -> float:
    """The size in mm of a hole that the pieces of a fabrication bring with them, else 0."""
    pieces = work.item.pieces if isinstance(work.item, Fabrication) else ()
    sizes = [
        found.diameter
        for piece in pieces
        if (form := work.design.facts.about(FormFact, str(piece.item))) is not None
        for found in form.located
        if found.name == one.name and found.kind == "drilled" and found.diameter
    ]
    return min(sizes, default=0.0)


def _thrown(turning: Turning) -> Iterator[SetUp]:
    """Steps that are set off the axis: the four-jaw, set over by the throw."""
    thrown = [one for one in turning.form.located if one.kind == "throw"]
    if not thrown:
        return
    work = turning.work
    chucks = work.design.workshop.entry.holding.chucks
    name = next((n for n, one in chucks.items() if one.independent), "")
    if not name:
        words_of = (
            f"'{work.name}' has a step off its axis, and no four-jaw chuck is owned to set it over"
        )
        turning.trouble.append(("cannot-set-over", words_of))
    steps = [one for one in turning.steps if is_thrown(one, work) and one.across > 0]
    acts = [
        work.act(
            "turn",
            f"turn the pin ⌀{work.mm(one.across)} × {work.mm(one.end - one.start)}",
            machine=turning.lathe,
            feature=one.name or f"pin {n}",
            tool="narrow knife tool",
            size=one.across,
            start=turning.work.stock_across,
            deep=one.end - one.start,
        )
        for n, one in enumerate(steps, 1)
        if not _is_web(one, work)
    ]
    grip = Grip(
        name or "four-jaw chuck, not owned", "four-jaw", "the main axis, set over by the throw"
    )
    yield SetUp(
        1,
        "lathe",
        turning.lathe,
        grip,
        "the throw by a dial indicator over twice its size",
        tuple(acts),
        minutes=words.holding_min("four-jaw"),
    )


def _is_web(step: Stretch, work: Work) -> bool:
    shape = getattr(work.item, "shape", None)
    steps = work.form.stretches if work.form is not None else ()
    return isinstance(shape, list) and getattr(shape[steps.index(step)], "web", None) is not None


def _by_words(work: Work) -> Iterator[SetUp]:
    """Features that are told in words alone, and so have no place on the form."""
    placed = {one.name for one in work.form.located} if work.form is not None else set()
    filed = [one for one in work.item.features if one.kind == "filed" and one.name not in placed]
    acts = [_by_hand(work, one) for one in filed]
    if acts:
        yield _at_bench(work, "its faces", "", acts)


def _by_hand(work: Work, one: Feature) -> Act:
    """What is told in words is filed, or bent where the words say so."""
    words_of = _words_of(one)
    if str(getattr(one.entry, "filed", "")).startswith("bent "):
        return work.act("bend", words_of, feature=one.name, tool="vice, rod and mallet")
    return work.act("file", words_of, feature=one.name)


def _words_of(one: Feature) -> str:
    said = getattr(one.entry, "filed", "")
    return f"{one.name.replace('_', ' ')}: {said}"


def _cleaned(work: Work, setups: Sequence[SetUp]) -> Iterator[SetUp]:
    """Burrs off, heat and polish, and, where another part is made to it, the size written down."""
    acts = [work.act("deburr", "take off all burrs, break sharp edges 0.2 mm", amount=1.0)]
    heat = list(hardened(work))
    if heat:
        yield _at_bench(work, "by hand", "", acts)
        yield from heat
        acts = []
    acts += brightened(work)
    yield _at_bench(work, "by hand", "", [*acts, *_gates(work, setups)])


def _gates(work: Work, setups: Sequence[SetUp]) -> Iterator[Act]:
    """The sizes to which others are made."""
    seen: set[str] = set()
    made = {act.feature: act for setup in setups for act in setup.acts if act.lower is not None}
    for place, halves in work.halves.items():
        master = next((one for one in halves if one.is_master), None)
        if master is None or place in seen or work.waits(place) is not None:
            continue
        seen.add(place)
        mine = tuple(one.joint for one in halves if one.is_master)
        yield replace(_gate(work, master, made.get(place)), joints=mine)


def _gate(work: Work, master: HalfFact, made: Act | None) -> Act:
    place = master.place
    said = place.replace("_", " ")
    act = work.act(
        "measure",
        f"measure the {said}, write it down: its mate is made to it",
        feature=place,
        tags=("master",),
    )
    known = made.measure if made is not None else ""
    return replace(act, tool=known or work.read_with(master))


def _left(work: Work) -> Iterator[Left]:
    """What waits until other parts are there, and where that is told."""
    for place, facts in work.left.items():
        for fact in facts:
            task = work.design.tasks.get(fact.subject)
            if task is not None:
                said = f"{place.replace('_', ' ')}: {fact.how}"
                yield Left(said, task.title, leaf_id(fact.subject))


def _joined(work: Work, one: Fabrication) -> list[SetUp]:
    """The joining of the pieces, and what is cut in them as one."""
    how = one.joined.replace("-", "_").replace(" ", "_")
    act = work.act(
        JOINED.get(how, "assemble"),
        f"{one.joined.replace('_', ' ')}: all pieces, held in place",
        feature="joint",
    )
    setups = [_at_bench(work, "the pieces, clamped or pinned in place", "", [act])]
    holes = [
        found for feature in one.features if (found := hole_in_words(work, feature)) is not None
    ]
    holes = [one for one in holes if not work.is_wholly_left(one.name)]
    if holes:
        setups.append(_drilled(work, holes))
    return setups


__all__ = ["plan_routes", "route_of"]
