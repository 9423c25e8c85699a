"""The drive as written to its facts: speeds, ways round, torques at every setting."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    Fact,
    Joint,
    LoadFact,
    Passed,
    TrainFact,
    TurningFact,
)
from binder_plugins.drive import codes
from binder_plugins.drive.train.bodies import Body, bodies, shared
from binder_plugins.drive.train.flow import Arm, outwards, torques, watts
from binder_plugins.drive.train.links import Link
from binder_plugins.drive.train.losses import bearings_kept, loss_of
from binder_plugins.drive.train.reading import read_links
from binder_plugins.drive.train.settings import Mover, Setting, settings_of
from binder_plugins.drive.train.strength import given, loads_of

_SKEWED = ("bevels", "worms", "skews")
_MOVERS = ("turns", "prototype")
_R_MIN = 6  # degrees a second
_TURN = Fraction(1)


@dataclass(frozen=True, slots=True)
class _Train:
    """What the settling of a train hands on from step to step."""

    of: Mapping[str, Body]
    links: tuple[Link, ...]
    movers: tuple[Mover, ...]
    settings: tuple[Setting, ...]
    order: tuple[str, ...]
    arms: tuple[Arm, ...]
    loads: tuple[LoadFact, ...]


def settle_drive(design: Design) -> Contribution:
    """The facts of the train, and what contradicts itself in it."""
    of = bodies(design)
    read = read_links(design, of)
    links = tuple(one for one in read if isinstance(one, Link))
    faults = [one for one in read if isinstance(one, Diagnostic)]
    faults += _which(design)
    movers, starts = _movers(design, of, links)
    order, arms = outwards(links, starts)
    loads = tuple(loads_of(design, {item: body.name for item, body in of.items()}))
    settings = settings_of(links, movers) if links or movers else ()
    train = _Train(of, links, movers, settings, order, arms, loads)
    return Contribution(
        facts=[*loads, *_facts(train)] if settings else list(loads),
        findings=[*faults, *_conflicts(train), *_still(train), *_idle(train, design)],
    )


def _movers(
    design: Design, of: Mapping[str, Body], links: Sequence[Link]
) -> tuple[tuple[Mover, ...], tuple[str, ...]]:
    """The movers; without one, the first body turns once, so that ratios can still be told."""
    found = []
    for joint in design.joints.values():
        if joint.kind == "turns" and joint.ends[0].item in of:
            entry = joint.entry
            sign = -1 if getattr(entry, "way", None) == "anticlockwise" else 1
            speeds = tuple(sign * one.exact / _R_MIN for one in getattr(entry, "speeds", ()))
            found.append(Mover(joint, of[joint.ends[0].item].name, speeds))
    if not found and links:
        found = [Mover(None, links[0].bodies[0], (_TURN,))]
    return tuple(found), tuple(mover.body for mover in found)


def _conflicts(train: _Train) -> list[Diagnostic]:
    """Each drive that contradicts the others, and each that only repeats them, once."""
    against = {one.name: one for setting in train.settings for one in setting.against}
    twice = {one.name: one for setting in train.settings for one in setting.twice}
    found = [
        codes.DRIVE_LOCKS.at(
            joint.at,
            _locked(joint, train),
            help="free one of the two paths, put a slipping belt in one, or change a ratio",
        )
        for joint in against.values()
    ]
    found += [
        codes.DRIVE_IN_A_RING.at(
            joint.at,
            f"'{joint.name}' closes a ring: its bodies are coupled already at the same ratio",
            help="leave one path out; two that agree on paper fight by their backlash",
        )
        for name, joint in twice.items()
        if name not in against
    ]
    return found


def _locked(joint: Joint, train: _Train) -> str:
    names = [end.item for end in joint.ends[:2] if end.item in train.of]
    if len(names) == 2 and train.of[names[0]] is train.of[names[1]]:
        return f"'{names[0]}' and '{names[1]}' are fixed together, and '{joint.name}' joins them"
    return f"'{joint.name}' wants another speed than the rest of the train gives: it locks"


def _which(design: Design) -> list[Diagnostic]:
    """A drive that names what stands on several shafts."""
    doubtful = shared(design)
    return [
        codes.WHICH_SHAFT.at(
            end.at,
            f"'{end.item}' stands on {' and on '.join(doubtful[end.item])}: which one is meant?",
            help=f"name the shaft, as '{doubtful[end.item][0]}', or write the wheels as two parts",
        )
        for name in design.spec.written.drive
        for end in design.joints[name].ends
        if end.item in doubtful
    ]


def _idle(train: _Train, design: Design) -> list[Diagnostic]:
    """A mover that stands, or whose body nothing else of the drive names."""
    others = [
        joint
        for name in design.spec.written.drive
        if (joint := design.joints[name]).kind not in _MOVERS
    ]
    used = {
        train.of[end.item].name for joint in others for end in joint.ends if end.item in train.of
    }
    found = []
    for mover in train.movers:
        if mover.joint is None:
            continue
        if not any(mover.speeds):
            why = f"'{mover.joint.name}' turns at nothing"
        elif mover.body not in used and (others or not _carries(mover, train)):
            why = f"'{mover.joint.ends[0].item}' turns, and no other drive names it"
        else:
            continue
        found.append(
            codes.TURNS_NOTHING.at(
                mover.joint.at, why, help="name the shaft that it turns, and a speed above nothing"
            )
        )
    return found


def _carries(mover: Mover, train: _Train) -> bool:
    """Whether what it turns has something fixed to it: a stone on its axle is a whole machine."""
    return any(body.name == mover.body and len(body.items) > 1 for body in train.of.values())


def _still(train: _Train) -> list[Diagnostic]:
    """A drive that no mover reaches."""
    reached = set(train.order)
    names: dict[str, Diagnostic] = {}
    for link in train.links:
        if train.movers and not reached & set(link.bodies):
            names[link.joint.name] = codes.NOT_DRIVEN.at(
                link.joint.at,
                f"nothing that turns reaches '{link.joint.name}'",
                help="say what turns it: `turns: [shaft], by: hand, speeds: [60 r/min]`",
            )
    return list(names.values())


def _facts(train: _Train) -> list[Fact]:
    facts: list[Fact] = [_turning(name, train) for name in train.order]
    facts.append(
        TrainFact(
            subject="",
            settings=tuple(setting.label for setting in train.settings),
            order=train.order,
            passed=tuple(_passed(arm) for arm in train.arms),
            movers=tuple(mover.joint.name for mover in train.movers if mover.joint is not None),
            mover_bodies=tuple(mover.body for mover in train.movers),
            strength=tuple(given(mover) for mover in train.movers),
            is_relative=all(mover.joint is None for mover in train.movers),
        )
    )
    return facts


def _turning(name: str, train: _Train) -> TurningFact:
    body = next(one for one in train.of.values() if one.name == name)
    speeds = tuple(_float(setting.speeds.get(name)) for setting in train.settings)
    needs = tuple(_need(name, setting, train) for setting in train.settings)
    powers = tuple(
        watts(need, speed) if need is not None and speed is not None else None
        for need, speed in zip(needs, speeds, strict=True)
    )
    return TurningFact(
        subject=name,
        title=body.title,
        items=body.items,
        speeds=speeds,
        torques=needs,
        powers=powers,
        has_way=_has_way(name, train),
    )


def _float(value: Fraction | None) -> float | None:
    return float(value) if value is not None else None


def _need(name: str, setting: Setting, train: _Train) -> float | None:
    """The torque that goes in at a body, None where no load is told."""
    if not any(load.torque is not None or load.power is not None for load in train.loads):
        return None
    speeds = {one: float(speed) for one, speed in setting.speeds.items()}
    loads: dict[str, float] = {}
    for load in train.loads:
        torque = load.torque
        if torque is None and load.power is not None and speeds.get(load.body):
            torque = load.power / (watts(1.0, speeds[load.body]))
        loads[load.body] = loads.get(load.body, 0.0) + (torque or 0.0)
    need = torques(train.order, train.arms, speeds, loads, lambda link: loss_of(link).kept)[name]
    # Each drive counts the bearings of the shaft that it drives; the first has none before it.
    return need / bearings_kept() if any(name == one.body for one in train.movers) else need


def _has_way(name: str, train: _Train) -> bool:
    """Whether all drives from the mover to a body have parallel shafts."""
    before = {arm.driven: arm for arm in train.arms}
    while name in before:
        arm = before[name]
        entry = arm.link.joint.entry
        if arm.link.joint.kind in _SKEWED or getattr(entry, "quarter_turn", False):
            return False
        name = arm.driver
    return True


def _passed(arm: Arm) -> Passed:
    loss = loss_of(arm.link)
    ratios = []
    for way in arm.link.ways:
        factors = dict(way)
        turned = factors.get(arm.driven, Fraction(0))
        ratios.append(float(-factors.get(arm.driver, Fraction(0)) / turned) if turned else 0.0)
    joint = arm.link.joint
    return Passed(
        joint=joint.name,
        kind=joint.kind,
        driver=arm.driver,
        driven=arm.driven,
        ratios=tuple(ratios),
        labels=arm.link.labels,
        kept=loss.kept,
        loss_words=loss.words,
    )
