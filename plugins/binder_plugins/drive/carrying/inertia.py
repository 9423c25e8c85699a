"""All that a train sets turning, as felt at its mover, and the time to bring it to speed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from binder.api import Design, Size, TrainFact, TurningFact
from binder_plugins.drive.carrying.facts import Heavy, InertiaFact
from binder_plugins.drive.carrying.weights import Weighed
from binder_plugins.drive.train.strength import GRAVITY, drum_radius, load_of
from binder_trade.explained import NotDefined, Step
from binder_trade.fits.printed import figures
from binder_trade.mechanisms.flywheel import reflected, run_up_s

REFLECTED = "J × (speed / speed of the mover)², the same energy; theory of machines"
RUN_UP = "J ω / T, a steady torque"
Column = tuple[float, ...]


def inertia_fact(
    train: TrainFact, weighed: Mapping[str, Mapping[str, Weighed | None]], design: Design
) -> InertiaFact | None:
    """What is felt at the first mover; None without one, or where nothing is weighed."""
    mover = design.facts.about(TurningFact, train.mover_bodies[0]) if train.movers else None
    if mover is None:
        return None
    heavy = tuple(
        made
        for name in train.order
        if (body := design.facts.about(TurningFact, name)) is not None
        if (made := _heavy(body, mover, weighed.get(name, {}))) is not None
    )
    loads = tuple(_hung(train, mover, design))
    total = tuple(
        sum(one.felt[n] for one in heavy) + sum(felt[n] for _, felt in loads)
        for n in range(len(train.settings))
    )
    if not any(total):
        return None
    heavy = tuple(replace(one, all_here=_all_here(one.body, mover, total, design)) for one in heavy)
    left = tuple(_left(train, mover, n) for n in range(len(total)))
    is_hand = getattr(design.joints[train.movers[0]].entry, "by", "") == "hand"
    run_up = tuple(
        None if is_hand else _time(total[n], left[n], mover.speeds[n]) for n in range(len(total))
    )
    steps = _steps(heavy, loads, total, run_up)
    return InertiaFact("", mover.subject, mover.title, heavy, loads, total, left, run_up, steps)


def _heavy(
    body: TurningFact, mover: TurningFact, weighed: Mapping[str, Weighed | None]
) -> Heavy | None:
    known = {name: one.inertia for name, one in weighed.items() if one is not None}
    own = sum(one for one in known.values() if one is not None)
    missing = tuple(name for name in weighed if known.get(name) is None)
    if not own:
        return None
    felt = tuple(reflected(own, _ratio(body, mover, number)) for number in range(len(mover.speeds)))
    return Heavy(body.subject, body.title, own, felt, missing)


def _ratio(body: TurningFact, mover: TurningFact, number: int) -> float:
    speeds = body.speeds[number], mover.speeds[number]
    return abs(speeds[0] / speeds[1]) if speeds[0] is not None and speeds[1] else 0.0


def _all_here(
    name: str, mover: TurningFact, total: Column, design: Design
) -> tuple[float | None, ...]:
    """What is felt at the mover, as felt at another body of the train."""
    body = design.facts.about(TurningFact, name)
    ratios = [_ratio(body, mover, n) if body is not None else 0.0 for n in range(len(total))]
    pairs = zip(total, ratios, strict=True)
    return tuple(reflected(whole, 1 / ratio) if ratio else None for whole, ratio in pairs)


def _hung(train: TrainFact, mover: TurningFact, design: Design) -> Iterator[tuple[str, Column]]:
    """A load on a rope goes as fast as the rope, over its lines: m (radius / lines)²."""
    for joint in design.joints.values():
        if joint.kind != "winds":
            continue
        mass, radius = getattr(joint.entry, "load", None), drum_radius(joint, design)
        bodies = (design.facts.about(TurningFact, name) for name in train.order)
        body = next((one for one in bodies if one and joint.ends[0].item in one.items), None)
        if not isinstance(mass, Size) or radius is None or body is None or not load_of(joint):
            continue
        lines = int(getattr(joint.entry, "lines", None) or 1)
        own = (load_of(joint) or 0.0) / GRAVITY * (radius / lines) ** 2
        felt = (reflected(own, _ratio(body, mover, n)) for n in range(len(mover.speeds)))
        yield joint.name, tuple(felt)


def _left(train: TrainFact, mover: TurningFact, number: int) -> float | None:
    """Of the mover's torque what its load leaves over."""
    given = train.strength[0]
    need = mover.torques[number]
    return given - (need or 0.0) if given is not None else None


def _time(inertia: float, left: float | None, speed: float | None) -> float | None:
    if left is None or left <= 0 or not speed:
        return None
    try:
        return run_up_s(inertia, left, abs(speed))
    except NotDefined:
        return None


def _steps(
    heavy: tuple[Heavy, ...],
    loads: tuple[tuple[str, Column], ...],
    total: Column,
    run_up: tuple[float | None, ...],
) -> tuple[Step, ...]:
    found = [
        Step(f"inertia of {one.body}", "sum of its pieces, each about the axis",
             figures(one.own, "kg mm²"), "theory of machines")
        for one in heavy
    ]  # fmt: skip
    found += [
        Step(f"{name} as felt at the mover", REFLECTED, _figures(felt), "theory of machines")
        for name, felt in (*((one.body, one.felt) for one in heavy), *loads)
    ]
    found += [
        Step(f"all as felt at {one.body}", REFLECTED,
             _figures(tuple(value or 0.0 for value in one.all_here)), "theory of machines")
        for one in heavy
    ]  # fmt: skip
    found.append(Step("inertia at the mover", "sum", _figures(total), "theory of machines"))
    times = [one for one in run_up if one is not None]
    if times:
        words = ", ".join(f"{one:.2g} s" for one in times)
        found.append(Step("time to speed", RUN_UP, words, "theory of machines"))
    return tuple(found)


def _figures(values: Column) -> str:
    """A figure for each setting, once where they are all alike."""
    words = [figures(one, "kg mm²") for one in values]
    return ", ".join(words if len(set(words)) > 1 else words[:1])
