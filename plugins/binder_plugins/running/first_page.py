"""A design to the checklist of its first run, and the tables for tracing a fault."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from binder.api import (
    Assembly,
    Blank,
    Block,
    CautionLines,
    Checklist,
    Column,
    CordFact,
    Design,
    Diagnostic,
    HardwareFact,
    Joint,
    Notice,
    NoticeKind,
    Paragraph,
    Place,
    Section,
    Subheading,
    Table,
    Text,
    Tick,
    TrainFact,
    TurningFact,
    load_data,
)
from binder_making.times import hand_passes, joining_table
from binder_plugins.running.fault_page import fault_sections
from binder_plugins.running.moving import Moving, by_its_kind, moving
from binder_plugins.running.over_the_edge import stood_for
from binder_plugins.running.upright import lifts_out
from binder_plugins.running.ways import ways_round
from binder_solid.filled import locking
from binder_solid.screw_ends import screw_ends
from binder_solid.watched import slip_line, slips_unseen
from binder_trade.mechanisms.tipping import SAFE

PACKAGE = "binder_plugins.running"
_TURNS = (
    Column("Turns", 4),
    Column("r/min", 3, is_figure=True),
    Column("Way round, seen from one side", 4),
    Column("Counted", 2.4),
)
_WORDS = (
    "Only one thing is new at a time: by hand, then slowly, then longer, then with load. At the "
    "first tight place stop, and find it; nothing that binds runs itself free."
)
_AIR = ("air", "steam")
_HOME = ("screw", "nut", "clip")
_EITHER = "it drives; the others go by it"


def first_run_pages(design: Design, findings: tuple[Diagnostic, ...] = ()) -> Iterator[Section]:
    """The checklist, and a section on faults."""
    found = moving(design)
    if not found:
        return
    inner = {one.name for each in design.assemblies.values() for one in _members(each, design)}
    tests = [one for one in design.assemblies.values() if one.test]
    table = load_data(PACKAGE, "first_run.yaml")
    before, *after = table["stages"]
    # Each assembly is tried by hand before it goes into the next; the whole at its work comes last.
    caution = CautionLines(design).at(("first run",))
    blocks: list[Block] = [Paragraph((_WORDS,))]
    if caution:
        blocks.append(Notice(NoticeKind.CAUTION, "Before it runs", caution[1:]))
    blocks += _stage(before, found, design)
    blocks += _tests("Each by itself", [one for one in tests if one.name in inner])
    for stage in after:
        blocks += _stage(stage, found, design)
    load = _ticks("under load", table["under_load"], found, design)
    blocks += _tests("At its work", [one for one in tests if one.name not in inner], load)
    blocks += _lock_last(design)
    blocks += _turns(design)
    yield Section(
        "first-run",
        "First run",
        Place.FIRST_RUN,
        tuple(blocks),
        sections=tuple(fault_sections(design, findings)),
    )


def _stage(stage: Mapping[str, Any], found: tuple[Moving, ...], design: Design) -> Iterator[Block]:
    yield Subheading(stage["title"])
    yield Checklist(_ticks(stage["title"], stage, found, design))


def _ticks(
    key: str, stage: Mapping[str, Any], found: tuple[Moving, ...], design: Design
) -> tuple[Tick, ...]:
    """The lines of a stage that apply."""
    has = _has(found, design)
    words = _words(design)
    lifted = lifts_out(design) if stage.get("lifted") else ""
    lines = [row["say"].format(**words) for row in stage["lines"] if _applies(row, has)]
    stood = stood_for(design) if stage.get("lifted") else ""
    lines += filter(None, (lifted, stood))
    return tuple(Tick(f"first run {key} {n}", (line,)) for n, line in enumerate(lines, 1))


def _words(design: Design) -> dict[str, str]:
    """The words in braces of the lines: minutes, how often, and the load where it is told."""
    cord = next(iter(design.facts.all(CordFact)), None)
    once = cord.pass_min if cord is not None else 0.0
    passes = {name: str(count) for name, count in hand_passes(once).items()}
    minutes = {name: str(one) for name, one in joining_table()["running_in"].items()}
    load = f"the load of {cord.load}" if cord is not None and cord.load else "the load"
    long = f", {once:.1f} min for each up and down" if once else ""
    kept = {"load": load, "long": long, "ends": _ends(design)}
    return {**minutes, **passes, **kept, **_tripped(design), **_watched(design)}


def _ends(design: Design) -> str:
    """Where each screw is wound to, '' where nothing tells how far one travels."""
    found = [(one, screw_ends(one, design)) for one in design.joints.values()]
    told = [f"'{one.name}' {ends.in_short(design)}" for one, ends in found if ends is not None]
    return f", and no farther: {'; '.join(told)}" if told else ""


def _tripped(design: Design) -> dict[str, str]:
    """What trips, and what it lifts: all of its load hangs on it from the first turn."""
    trips = [one for one in design.joints.values() if one.kind == "trips"]
    found = [[design.item(one.ends[n].item) for one in trips] for n in (0, -1)]
    said = (" and the ".join(one.title for one in items if one is not None) for items in found)
    return dict(zip(("wheel", "lever"), said, strict=True))


def _applies(row: Mapping[str, Any], has: frozenset[str]) -> bool:
    is_wanted = "needs" not in row or not has.isdisjoint(row["needs"])
    return (
        is_wanted and has.issuperset(row.get("all", ())) and has.isdisjoint(row.get("unless", ()))
    )


def _has(found: tuple[Moving, ...], design: Design) -> frozenset[str]:
    """The kinds of joint, drive and hardware, what drives the model, and whether it turns."""
    still = {one.kind for one in design.joints.values() if not by_its_kind(one)}
    kinds = still | {one.joint.kind for one in found}
    words = (design.spec.written.model.driven_by or "").lower().replace(",", " ").split()
    movers = {str(getattr(one.entry, "by", "")) for one in design.joints.values()} - {"hand", ""}
    by = {"air" for one in _AIR if one in words} | ({"motor"} & set(words))
    has = kinds | by | ({"power"} if by or movers else {"by hand"})
    has |= {name for name in ("locked", "unseen") if _watched(design)[name]}
    if any(any(one.speeds) for one in design.facts.all(TurningFact)):
        has |= {"speeds", "turns"}
    if any(len({abs(n) for n in one.speeds if n}) > 1 for one in design.facts.all(TurningFact)):
        has.add("steps")
    return frozenset(
        has | ({"turns"} if "runs_in" in kinds else set()) | set(_hardware(design)) | _hung(design)
    )


def _hardware(design: Design) -> Iterator[str]:
    """What is bought to hold it together, in the words of the checklist."""
    for one in design.facts.all(HardwareFact):
        is_grub = "grub" in one.what
        yield from ("grub screw",) if is_grub else (word for word in _HOME if word in one.what)


def _hung(design: Design) -> set[str]:
    """`hangs` where a load pulls back by itself, `tips` where the weight does not hold it."""
    found = set()
    for one in design.facts.all(CordFact):
        found |= {"hangs"} if one.is_hung else set()
        if one.tips_nmm is not None and (one.holds_nmm or 0.0) < SAFE * one.tips_nmm:
            found.add("tips")
    return found


def _members(whole: Assembly, design: Design) -> Iterator[Assembly]:
    """The assemblies that go into another."""
    for member in whole.members:
        if member.item in design.assemblies:
            yield design.assemblies[member.item]


def _tests(title: str, tests: Sequence[Assembly], first: tuple[Tick, ...] = ()) -> Iterator[Block]:
    """What is done before them, and the tests of the assemblies."""
    ticks = (
        Tick(f"first run {one.name}", (f"{one.title.capitalize()}: {one.test}.",)) for one in tests
    )
    if tests or first:
        yield Subheading(title)
        yield Checklist((*first, *ticks))


def _locked(design: Design) -> list[Joint]:
    """The joints that are locked when all has run."""
    return [one for one in design.joints.values() if locking(one)]


def _watched(design: Design) -> dict[str, str]:
    """What is locked last, the line that is drawn on each, and what is tried beside the line."""
    joints = _locked(design)
    unseen = [(f"'{one.name}'", said) for one in joints if (said := slips_unseen(one, design))]
    return {
        "locked": " and ".join(f"'{one.name}'" for one in joints),
        "marked": "; ".join(f"'{one.name}', with {slip_line(one, design)}" for one in joints),
        "unseen": "; ".join(f"At {name} {said}" for name, said in unseen),
    }


def _lock_last(design: Design) -> Iterator[Block]:
    """What is locked for good, in the words of the build order."""
    tasks = [task for name, task in design.tasks.items() if name.startswith("lock ")]
    if not tasks:
        return
    yield Subheading("Last of all")
    ticks = []
    for task in tasks:
        first = "Take it apart, finish it, and put it together for good; then"
        is_finished = f"close {task.item}" in design.tasks
        words = f"{first} {task.title}" if is_finished else task.title[0].upper() + task.title[1:]
        ticks.append(Tick(f"first run {task.id}", (f"{words}: {task.detail}.",)))
    yield Checklist(tuple(ticks))


def _turns(design: Design) -> Iterator[Block]:
    ways = ways_round(design)
    if any(one.kind == "ratchets" for one in design.joints.values()):
        ways = {name: f"{way}, when winding" for name, way in ways.items()}
    train = design.facts.about(TrainFact, "")
    drivers = train.mover_bodies if train is not None else ()
    ways = {**dict.fromkeys(drivers, _EITHER), **ways}
    bodies = [one for one in design.facts.all(TurningFact) if any(one.speeds)]
    rows = tuple(_turn(one, ways.get(one.subject, "")) for one in bodies)
    if rows:
        yield Subheading("How fast, and which way round")
        yield Table(_TURNS, rows)


def _turn(fact: TurningFact, told: str) -> tuple[Text, ...]:
    known = [one for one in fact.speeds if one]
    speeds = ", ".join(dict.fromkeys(f"{abs(one):.3g}" for one in known))
    way = told or ("as the driver" if known[0] > 0 else "against the driver")
    return (
        (fact.title,),
        (speeds,),
        (way if fact.has_way else "its axis lies across",),
        (Blank(f"counted {fact.subject}", "r/min"),),
    )
