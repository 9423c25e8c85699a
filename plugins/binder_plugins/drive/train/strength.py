"""What a mover gives and what a load takes, as torque in N·mm on its body."""

from __future__ import annotations

from collections.abc import Iterator
from math import pi

from binder.api import Design, Joint, PlaceFact, Size
from binder_plugins.drive.facts import LoadFact
from binder_plugins.drive.train.settings import Mover
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.drum import Tackle, tackle_pull

GRAVITY = 9.80665  # m/s², standard (3rd CGPM, 1901)
_PER_MM = 1000.0
_PER_NEWTON = 1e6  # base units (g, mm, s) to newtons
_TURN = 360.0


def newtons(size: Size | None) -> float | None:
    """A force in N."""
    return float(size.exact) / _PER_NEWTON if size is not None else None


def newton_mm(size: Size | None) -> float | None:
    """A torque in N·mm."""
    return float(size.exact) / _PER_NEWTON if size is not None else None


def in_watts(size: Size | None) -> float | None:
    """A power in W."""
    return float(size.exact) / 1e9 if size is not None else None


def given(mover: Mover) -> float | None:
    """The torque that a mover gives at its slowest speed, None where it is not told."""
    entry = mover.joint.entry if mover.joint is not None else None
    torque = newton_mm(getattr(entry, "torque", None))
    if torque is not None:
        return torque
    force, radius = newtons(getattr(entry, "force", None)), getattr(entry, "radius", None)
    if force is not None and isinstance(radius, Size):
        return force * radius.mm
    power = in_watts(getattr(entry, "power", None))
    slowest = min((abs(float(one)) for one in mover.speeds), default=0.0)
    return power / (slowest * 2 * pi / 60) * _PER_MM if power is not None and slowest else None


def loads_of(design: Design, body_of: dict[str, str]) -> Iterator[LoadFact]:
    """What the works and the drums of the model take."""
    for joint in design.joints.values():
        if joint.kind == "works" and joint.ends[0].item in body_of:
            entry = joint.entry
            torque = newton_mm(getattr(entry, "torque", None))
            power = in_watts(getattr(entry, "power", None))
            yield LoadFact(joint.name, body_of[joint.ends[0].item], torque, power, "the work")
        elif joint.kind == "winds" and joint.ends[0].item in body_of:
            yield _drum(joint, design, body_of[joint.ends[0].item])


def _drum(joint: Joint, design: Design, body: str) -> LoadFact:
    pull = rope_pull(joint)
    radius = drum_radius(joint, design)
    torque = pull * radius if pull is not None and radius is not None else None
    return LoadFact(joint.name, body, torque, None, "the rope")


def load_of(joint: Joint) -> float | None:
    """What hangs on all lines together, in N."""
    mass = getattr(joint.entry, "load", None)
    pull = newtons(getattr(joint.entry, "pull", None))
    if pull is None and isinstance(mass, Size):
        return float(mass.exact) / 1000 * GRAVITY
    return pull


def tackle_of(joint: Joint) -> Tackle:
    """The lines of a block, and the sheaves that lead the rope to the drum."""
    lines = int(getattr(joint.entry, "lines", None) or 1)
    leads = getattr(joint.entry, "sheaves", None)
    return Tackle(falls=lines, leads=int(lines > 1 if leads is None else leads))


def rope_pull(joint: Joint) -> float | None:
    """The pull in the rope at the drum in N, what the sheaves take included.

    None where no load is told, or one that no tackle lifts.
    """
    load = load_of(joint)
    try:
        return tackle_pull(load, tackle_of(joint)) if load is not None else None
    except NotDefined:
        return None


def drum_radius(joint: Joint, design: Design) -> float | None:
    """From the drum's axis to the middle of the rope in its first layer, in mm."""
    said = getattr(joint.entry, "diameter", None)
    place = design.facts.about(PlaceFact, str(joint.ends[0]))
    known = said.mm if isinstance(said, Size) else None
    if known is None and place is not None and place.diameter is not None:
        known = float(place.diameter)
    return (known + rope_of(joint, design)) / 2 if known is not None else None


def rope_of(joint: Joint, design: Design) -> float:
    """The rope's diameter in mm: as said, else that of the bought item, else nothing."""
    said = getattr(joint.entry, "rope", None)
    if isinstance(said, Size):
        return said.mm
    for end in joint.ends[1:]:
        item = design.bought.get(end.item)
        if item is not None:
            return next((size.mm for name, size in item.sizes if name == "diameter"), 0.0)
    return 0.0
