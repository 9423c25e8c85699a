"""One turn of the driving shaft to what knocks: the pair, the angle, and how much they share."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import Contribution, Design, Diagnostic, TrainFact, TurningFact
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.motion.axes import Turning, at_angle, is_round_about, turning_bodies
from binder_plugins.drive.motion.reach import can_meet, ring_of
from binder_plugins.drive.motion.told import TurnFact
from binder_solid.cache import own_store
from binder_solid.forms import Frame
from binder_solid.jobs import Crowd, Crowded
from binder_solid.placed import PlacedFact
from binder_solid.presence import is_kernel_there
from binder_solid.solid import NamedForm
from binder_solid.spread import answered

STEPS = 24
"""Positions of one turn that are looked at: every 15°."""
LEAST = 0.05
"""mm³: less than this is a corner that the file breaks."""


def turn_once(design: Design) -> Contribution:
    """The drive turned once, and a finding for each pair that knocks."""
    train = design.facts.about(TrainFact, "")
    bodies = list(turning_bodies(design))
    if train is None or not bodies or not is_kernel_there():
        return Contribution()
    pairs = list(_pairs(bodies, design))
    found: list[Diagnostic] = []
    is_looked_at = True
    told: set[frozenset[str]] = set()
    for number in range(1, STEPS):
        clashes = _at(number, bodies, pairs, design) if pairs else ()
        if clashes is None:
            is_looked_at = False
            break
        for clash in clashes:
            pair = frozenset((clash[0].item, clash[1].item))
            if pair not in told:
                told.add(pair)
                found.append(_finding(clash, number, train, design))
    fact = TurnFact(
        "", train.mover_bodies[0], tuple(body.name for body in bodies),
        tuple((one.subject, other.subject) for one, other in pairs), STEPS, is_looked_at,
    )  # fmt: skip
    return Contribution(facts=[fact], findings=found)


def _pairs(bodies: list[Turning], design: Design) -> Iterator[tuple[PlacedFact, PlacedFact]]:
    """What is not round and turns, with all that its ring meets and that is not of its body."""
    told: set[frozenset[str]] = set()
    turning = {copy.subject: body for body in bodies for copy in body.copies}
    for body in bodies:
        own = set(_items(body.name, design))
        for copy in body.copies:
            if is_round_about(copy, body.axis, design):
                continue
            ring = ring_of(copy, body.axis)
            for other in design.facts.all(PlacedFact):
                key = frozenset((copy.subject, other.subject))
                if other.item in own or key in told or _are_joined(copy.item, other.item, design):
                    continue
                beside = turning.get(other.subject)
                if can_meet(ring, body.axis, other, beside.axis if beside else None):
                    told.add(key)
                    yield copy, other


def _items(name: str, design: Design) -> tuple[str, ...]:
    body = design.facts.about(TurningFact, name)
    return body.items if body is not None else ()


def _are_joined(one: str, other: str, design: Design) -> bool:
    """Whether a joint says how the two meet: then they touch, or share room as drawn."""
    return any({one, other} <= set(joint.items) for joint in design.joints.values())


def _at(
    number: int,
    bodies: list[Turning],
    pairs: list[tuple[PlacedFact, PlacedFact]],
    design: Design,
) -> list[tuple[PlacedFact, PlacedFact, float]] | None:
    """The pairs that share room at one position; None where no kernel can tell."""
    turning = {copy.subject: body for body in bodies for copy in body.copies}
    known = {one.subject: one for pair in pairs for one in pair}
    forms = tuple(
        NamedForm(name, copy.form, _frame(copy, turning.get(name), number))
        for name, copy in known.items()
    )
    wanted = {frozenset((one.subject, other.subject)) for one, other in pairs}
    names = list(known)
    allowed = tuple(
        (one, other)
        for place, one in enumerate(names)
        for other in names[place + 1 :]
        if frozenset((one, other)) not in wanted
    )
    answer = answered(Crowd(forms, allowed), own_store())
    if not isinstance(answer, Crowded):
        return None
    return [
        (known[one.first], known[one.second], one.volume_mm3)
        for one in answer.clashes
        if one.volume_mm3 >= LEAST
    ]


def _frame(copy: PlacedFact, body: Turning | None, number: int) -> Frame:
    if body is None:
        return copy.frame
    return at_angle(copy, body.axis, 2 * math.pi * number / STEPS * body.turns)


def _finding(
    clash: tuple[PlacedFact, PlacedFact, float], number: int, train: TrainFact, design: Design
) -> Diagnostic:
    one, other, volume = clash
    item = design.item(one.item)
    driver = design.facts.about(TurningFact, train.mover_bodies[0])
    title = driver.title if driver is not None else train.mover_bodies[0]
    at = item.at if item is not None else design.spec.resolved.document.span(())
    return codes.MOTION_CLASH.at(
        at,
        f"'{one.subject}' knocks '{other.subject}' when the {title} has turned "
        f"{360 * number // STEPS}° ({volume:.1f} mm³ in one another)",
        help="move one of them, shorten what turns, or take away where they meet",
    )
