"""Where joints are closed, and in which order by hand, so that nothing bars the next."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import permutations

from binder.api import (
    Assembly,
    Before,
    Design,
    FitFact,
    Joint,
    JointFact,
    Role,
    ShaftFact,
    Task,
)
from binder_plugins.buildorder.barring import barred_by, closes_plates, is_riveted_inside
from binder_plugins.buildorder.brackets import lined_up
from binder_plugins.buildorder.ranking import ordered
from binder_plugins.buildorder.straddled import MOVING, riders

_BEHIND = {"top": ("underside", "bottom"), "underside": ("top",), "bottom": ("top",)}
Pair = tuple[str, str]


def joints_closed_in(one: Assembly, design: Design) -> tuple[Joint, ...]:
    """The joints closed in an assembly, in the order of the hand."""
    return design.once(_closed_in, one.name)


def _closed_in(design: Design, name: str) -> tuple[Joint, ...]:
    one = design.assemblies[name]
    inside = inside_of(one, design)
    near = [joint for joint in design.joints.values() if inside.issuperset(joint.items)]
    inner = {
        name: inside_of(design.assemblies[name], design)
        for name in (one.name, *sorted(inside & design.assemblies.keys()))
    }
    closed = [joint for joint in near if _is_closed_in(one.name, joint, inner, design)]
    turns = [[joint for joint in closed if _turn(joint, design) == turn] for turn in range(4)]
    hot, lasting, loose, drives = turns
    groups = (hot, [*lasting, *loose], drives)
    return tuple(joint for group in groups for joint in _by_hand(group, design))


def _is_closed_in(name: str, joint: Joint, inner: Insides, design: Design) -> bool:
    """Whether an assembly is among the homes of a joint whose halves are all in it.

    `inner` is what goes into it and into those inside it. Where it holds all that the joint waits
    for as well, no other assembly can be a nearer home.
    """
    is_all_here = inner[name].issuperset(_waits_for(joint, design))
    return name in homes(joint, inner if is_all_here else insides_of(design), design)


def _by_hand(closed: list[Joint], design: Design) -> Iterator[Joint]:
    """Joints so that none bars another; what a firmer rule settled no later one turns round."""
    names = [joint.name for joint in closed]
    kept: list[Before] = []
    for earlier, later in dict.fromkeys(_pairs(closed, design)):
        trial = [*kept, Before(earlier, later, "")]
        if len(ordered(names, trial)) == len(names):
            kept = trial
    for name in ordered(names, kept):
        yield design.joints[name]


Insides = dict[str, frozenset[str]]


def insides_of(design: Design) -> Insides:
    """What goes into each assembly, by its name."""
    return {name: inside_of(one, design) for name, one in design.assemblies.items()}


def homes(joint: Joint, insides: Insides, design: Design) -> tuple[str, ...]:
    """The assemblies that close a joint: the innermost with all that must be there."""
    needed = {*joint.items, *_waits_for(joint, design)}
    return _holding(needed, insides) or _holding(set(joint.items), insides)


def _holding(needed: set[str], insides: Insides) -> tuple[str, ...]:
    holding = {name: inside for name, inside in insides.items() if needed <= inside}
    return tuple(name for name, inside in holding.items() if not inside & holding.keys())


def _waits_for(joint: Joint, design: Design) -> Iterator[str]:
    """What is not in the joint, and must be there before it can be closed."""
    over = getattr(joint.entry, "over", None)
    yield from (str(one) for one in over) if isinstance(over, list) else ()
    if joint.kind == "hinged":
        for other in design.joints.values():
            if other.kind == "threaded" and set(other.items) & set(joint.items):
                yield from other.items
    if is_lasting(joint, design):
        for fact in design.facts.all(ShaftFact):
            if joint.name in outside(fact) and not slides_in(fact, design):
                yield from (piece.item for piece in fact.pieces if piece.role is Role.BEARING)


def _turn(joint: Joint, design: Design) -> int:
    """The flame first, then what cannot be taken apart again, what can, and the drives."""
    fact = design.facts.about(JointFact, joint.name)
    if fact is None:
        return 2
    if fact.is_hot:
        return 0
    if fact.group == "drive":
        return 3
    return 1 if fact.is_lasting else 2


def _pairs(closed: list[Joint], design: Design) -> Iterator[Pair]:
    """What comes before what, the firmest rule first."""
    for fact in design.facts.all(ShaftFact):
        yield from _along(fact, closed, design)
    for hold in closed:
        yield from ((hold.name, rider.name) for rider in riders(hold, design) if rider in closed)
    for one, other in permutations(closed, 2):
        if _runs_on_pin(one, other, design) or _hangs(other, one):
            yield one.name, other.name
    for one, other in permutations(closed, 2):
        if is_riveted_inside(one, design) and closes_plates(other, one, design):
            yield one.name, other.name
    for one, other in permutations(closed, 2):
        if _is_covered_by(one, other) or barred_by(one, other, design):
            yield one.name, other.name
    yield from lined_up(closed)


def _along(fact: ShaftFact, closed: list[Joint], design: Design) -> Iterator[Pair]:
    """A shaft with what is fixed on it between its bearings, its bearings, then the ends.

    What cannot come off again between the bearings keeps the housings loose until it is in.
    """
    running = [joint for joint in closed if joint.name in bearing_joints(fact)]
    within, ends, shut = between(fact), outside(fact), is_shut(fact, design)
    held = set(housings(fact, design))
    for run in running:
        for joint in closed:
            if joint.name in within:
                first = is_lasting(joint, design)
                yield (joint.name, run.name) if first else (run.name, joint.name)
            elif joint.name in ends:
                first = is_lasting(joint, design) and slides_in(fact, design)
                yield (joint.name, run.name) if first else (run.name, joint.name)
            elif _carries(joint, held, design):
                yield (run.name, joint.name) if shut else (joint.name, run.name)
            elif _is_on_shaft(joint, fact, held, design) or (
                held & set(joint.items) and is_riveted_inside(joint, design)
            ):
                yield joint.name, run.name


def _carries(joint: Joint, held: set[str], design: Design) -> bool:
    """Whether a joint holds a housing to what carries it, and can come apart."""
    fact = design.facts.about(JointFact, joint.name)
    is_fixing = fact is not None and fact.group == "fixing" and not fact.is_lasting
    return is_fixing and bool(held & set(joint.items)) and joint.kind == "screwed"


def _is_on_shaft(joint: Joint, fact: ShaftFact, held: set[str], design: Design) -> bool:
    """Whether a lasting joint is made on a bearing, or on a piece that rides on the shaft."""
    rides = {piece.item for piece in fact.pieces} | held
    return (
        is_lasting(joint, design)
        and bool(rides & set(joint.items))
        and fact.subject not in joint.items
    )


def _runs_on_pin(runs: Joint, holds: Joint, design: Design) -> bool:
    """Whether a joint puts on a pin what a lasting joint of that pin would lock out."""
    fit = design.facts.about(FitFact, runs.name)
    if fit is None or runs.kind not in MOVING or not is_lasting(holds, design):
        return False
    pin = fit.shaft.partition(".")[0]
    if pin not in holds.items or design.facts.about(ShaftFact, pin) is not None:
        return False
    other = design.facts.about(FitFact, holds.name)
    is_inside = other is not None and other.shaft.partition(".")[0] == pin
    return holds.kind == "riveted" or is_inside


def _hangs(hung: Joint, pivot: Joint) -> bool:
    """Whether something hangs on a pivot that a screw thread holds."""
    return (
        hung.kind == "hinged"
        and pivot.kind == "threaded"
        and bool(set(hung.items) & set(pivot.items))
    )


def _is_covered_by(screwed: Joint, other: Joint) -> bool:
    """Whether another part comes where the heads of the screws are reached."""
    if screwed.kind != "screwed" or not screwed.ends:
        return False
    through = screwed.ends[0]
    hidden = _BEHIND.get(through.place, ())
    return any(end.item == through.item and end.place in hidden for end in other.ends)


def is_lasting(joint: Joint, design: Design) -> bool:
    """Whether a joint cannot be taken apart again."""
    fact = design.facts.about(JointFact, joint.name)
    return fact is not None and fact.is_lasting


def is_shut(fact: ShaftFact, design: Design) -> bool:
    """Whether something between the bearings can never come off the shaft again."""
    return any(is_lasting(design.joints[name], design) for name in between(fact))


def slides_in(fact: ShaftFact, design: Design) -> bool:
    """Whether a shaft goes through its bearings with what is fixed for good on one end of it.

    Nothing bars the other end, so that compound and flame never come beside an oiled bearing.
    """
    places = [n for n, piece in enumerate(fact.pieces) if piece.role is Role.BEARING]
    if not places or is_shut(fact, design):
        return False
    fixed = [
        n < places[0]
        for n, piece in enumerate(fact.pieces)
        if piece.joint in outside(fact) and is_lasting(design.joints[piece.joint], design)
    ]
    if len(set(fixed)) != 1:
        return False
    free = "right" if fixed[0] else "left"
    return all(fact.pieces[n].enters in {free, "either"} for n in places)


def bearing_joints(fact: ShaftFact) -> list[str]:
    """The joints in which a shaft runs."""
    return _names(piece.joint for piece in fact.pieces if piece.role is Role.BEARING)


def between(fact: ShaftFact) -> list[str]:
    """The joints of what stands on a shaft between its outer bearings."""
    first, last = _ends(fact)
    return _names(fact.pieces[n].joint for n in range(first + 1, last))


def outside(fact: ShaftFact) -> list[str]:
    """The joints of what stands on a shaft outside its outer bearings."""
    first, last = _ends(fact)
    chosen = [piece.joint for n, piece in enumerate(fact.pieces) if n < first or n > last]
    return _names(chosen) if last >= 0 else []


def _ends(fact: ShaftFact) -> tuple[int, int]:
    places = [n for n, piece in enumerate(fact.pieces) if piece.role is Role.BEARING]
    return (places[0], places[-1]) if places else (0, -1)


def _names(joints: Iterable[str]) -> list[str]:
    return [name for name in dict.fromkeys(joints) if name]


def housings(fact: ShaftFact, design: Design) -> list[str]:
    """The parts that carry a shaft: its bearings, and what its bushes are fixed in."""
    found = [piece.item for piece in fact.pieces if piece.role is Role.BEARING]
    for joint in design.joints.values():
        if is_lasting(joint, design) and fact.subject not in joint.items:
            found += [end.item for end in joint.ends if set(found) & set(joint.items)]
    return list(dict.fromkeys(found))


def inside_of(one: Assembly, design: Design) -> frozenset[str]:
    """The names of all that goes into an assembly, at any depth."""
    found: set[str] = set()
    waiting = [member.item for member in one.members]
    while waiting:
        name = waiting.pop()
        if name in found:
            continue
        found.add(name)
        if name in design.assemblies:
            waiting += [member.item for member in design.assemblies[name].members]
        if name in design.fabrications:
            waiting += [piece.item for piece in design.fabrications[name].pieces]
    return frozenset(found)


def done_after(joint: Joint, design: Design) -> Task | None:
    """The own task that makes a joint when all is finished and together for good."""
    return design.tasks.get(f"stick {joint.name}")


def done_before(joint: Joint, design: Design) -> Task | None:
    """The own task of the build order that made a joint already; None where it is made here."""
    ids = (f"{verb} {joint.name}" for verb in ("solder", "bond", "size"))
    return next((design.tasks[one] for one in ids if one in design.tasks), None)
