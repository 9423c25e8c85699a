"""Speeds and loads to the torque that each body takes, from the last shaft back to the mover."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from math import pi

from binder_plugins.drive.train.links import Link


@dataclass(frozen=True, slots=True)
class Arm:
    """A link as it is passed through: from the body nearer to the mover to the one beyond."""

    link: Link
    driver: str
    driven: str


def outwards(
    links: Sequence[Link], starts: Sequence[str]
) -> tuple[tuple[str, ...], tuple[Arm, ...]]:
    """Bodies in the order in which the drive reaches them, and the links as they are passed."""
    order = list(dict.fromkeys(starts))
    arms: list[Arm] = []
    for here in order:
        for link in links:
            if here not in link.bodies or any(arm.link is link for arm in arms):
                continue
            for other in link.bodies:
                if other != here and other not in order:
                    arms.append(Arm(link, here, other))
                    order.append(other)
    return tuple(order), tuple(arms)


def torques(
    order: Sequence[str],
    arms: Sequence[Arm],
    speeds: Mapping[str, float],
    loads: Mapping[str, float],
    kept: Callable[[Link], float],
) -> Mapping[str, float]:
    """What has to be put in at each body in N·mm: its own load, and all beyond with the losses."""
    found: dict[str, float] = {}
    for name in reversed(order):
        need = loads.get(name, 0.0)
        for arm in arms:
            beyond = found.get(arm.driven, 0.0)
            if arm.driver == name and beyond and speeds.get(name):
                ratio = abs(speeds.get(arm.driven, 0.0) / speeds[name])
                need += beyond * ratio / kept(arm.link)
        found[name] = need
    return found


def watts(torque_n_mm: float, speed_r_min: float) -> float:
    """The power in W of a torque at a speed."""
    return torque_n_mm / 1000 * abs(speed_r_min) * 2 * pi / 60
