"""The steps of a train to its settings: every combination of a mover's speed and the steps."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import islice, product

from binder.api import Joint
from binder_plugins.drive.train.links import Link
from binder_plugins.drive.train.solving import Speeds

MOST_SETTINGS = 24


@dataclass(frozen=True, slots=True)
class Mover:
    """What turns a body: its speeds in r/min, signed."""

    joint: Joint | None
    body: str
    speeds: tuple[Fraction, ...]


@dataclass(frozen=True, slots=True)
class Setting:
    """One combination: its name, the speed of each body that is settled, and what goes against.

    `against` are the joints that contradict what others settle, `twice` those that say it again.
    """

    label: str
    speeds: Mapping[str, Fraction]
    against: tuple[Joint, ...]
    twice: tuple[Joint, ...]


def settings_of(links: Sequence[Link], movers: Sequence[Mover]) -> tuple[Setting, ...]:
    """All settings, MOST_SETTINGS at the most; belts of one joint step together."""
    joints = list(dict.fromkeys(link.joint.name for link in links if len(link.ways) > 1))
    counts = {link.joint.name: len(link.ways) for link in links}
    choices = product(
        *(range(len(mover.speeds)) for mover in movers), *(range(counts[one]) for one in joints)
    )
    found = []
    for choice in islice(choices, MOST_SETTINGS):
        speeds = choice[: len(movers)]
        steps = dict(zip(joints, choice[len(movers) :], strict=True))
        found.append(_setting(links, movers, speeds, steps))
    return tuple(found)


def _setting(
    links: Sequence[Link], movers: Sequence[Mover], speeds: Sequence[int], steps: Mapping[str, int]
) -> Setting:
    solved = Speeds()
    against: list[Joint] = []
    twice: list[Joint] = []
    words = []
    for mover, number in zip(movers, speeds, strict=True):
        answer = solved.add(((mover.body, Fraction(1)),), mover.speeds[number])
        if answer == "against" and mover.joint is not None:
            against.append(mover.joint)
        if len(mover.speeds) > 1:
            words.append(f"{float(abs(mover.speeds[number])):g} r/min")
    for link in links:
        number = steps.get(link.joint.name, 0)
        answer = solved.add(link.ways[number])
        if answer == "against":
            against.append(link.joint)
        elif answer == "known":
            twice.append(link.joint)
    several = len(steps) > 1
    for name, number in steps.items():
        label = next(link.labels[number] for link in links if link.joint.name == name)
        words.append(f"{name}, {label}" if several else label)
    return Setting("; ".join(words), solved.known(), tuple(against), tuple(twice))
