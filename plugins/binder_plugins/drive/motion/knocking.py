"""One turn of the driving shaft to what knocks: the pair, the angle, and how much they share."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, Diagnostic
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.facts import TrainFact, TurningFact
from binder_plugins.drive.motion.axes import turning_bodies
from binder_plugins.drive.motion.levers import moved_bodies
from binder_plugins.drive.motion.pairing import STEPS, Pair, pairs_of
from binder_plugins.drive.motion.told import TurnFact
from binder_solid.cache import own_store
from binder_solid.jobs import Crowd, Crowded
from binder_solid.presence import is_kernel_there
from binder_solid.solid import NamedForm
from binder_solid.spread import answered

LEAST = 0.05
"""mm³: less than this is a corner that the file breaks."""


def turn_once(design: Design) -> Contribution:
    """The drive turned once, and a finding for each pair that knocks."""
    train = design.facts.about(TrainFact, "")
    turning = list(turning_bodies(design))
    if train is None or not turning or not is_kernel_there():
        return Contribution()
    bodies = [*turning, *moved_bodies(design, turning)]
    pairs = list(pairs_of(bodies, design))
    told: set[frozenset[str]] = set()
    found: list[Diagnostic] = []
    for pair in pairs:
        items = frozenset((pair.first.item, pair.second.item))
        if items in told:
            continue
        for finding in _knock(pair, train, design):
            told.add(items)
            found.append(finding)
    fact = TurnFact(
        "", train.mover_bodies[0], tuple(body.name for body in bodies),
        tuple((one.first.subject, one.second.subject) for one in pairs), STEPS,
    )  # fmt: skip
    return Contribution(facts=[fact], findings=found)


def _knock(pair: Pair, train: TrainFact, design: Design) -> Iterator[Diagnostic]:
    """The first position at which the two share room."""
    one, other = pair.first, pair.second
    for number in range(1, STEPS):
        here, there = pair.frames(number)
        forms = (
            NamedForm(one.subject, one.form, here),
            NamedForm(other.subject, other.form, there),
        )
        answer = answered(Crowd(forms), own_store())
        clashes = answer.clashes if isinstance(answer, Crowded) else ()
        volume = sum(clash.volume_mm3 for clash in clashes)
        if volume >= LEAST:
            turned = pair.body.own if pair.other is None else train.mover_bodies[0]
            yield _finding(pair, number, volume, turned, design)
            return


def _finding(pair: Pair, number: int, volume: float, turned: str, design: Design) -> Diagnostic:
    item = design.item(pair.first.item)
    body = design.facts.about(TurningFact, turned)
    title = body.title if body is not None else turned
    at = item.at if item is not None else design.spec.resolved.document.span(())
    return codes.MOTION_CLASH.at(
        at,
        f"'{pair.first.subject}' knocks '{pair.second.subject}' when the {title} has turned "
        f"{360 * number // STEPS}° ({volume:.1f} mm³ in one another)",
        help="move one of them, shorten what moves, or take away where they meet",
    )
