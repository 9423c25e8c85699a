"""Drums and hanging loads: does the rope lie, and does the load stay up."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint
from binder_plugins.drive import codes
from binder_plugins.drive.facts import TrainFact
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.train.strength import drum_radius, rope_of

# Diameters of the rope that a drum has at the least: common practice, no source.
_LEAST_ROPES = 8.0


def check_ropes(design: Design) -> Iterator[Diagnostic]:
    """Each drum with its rope."""
    for joint in design.joints.values():
        if joint.kind == "winds":
            yield from _drum(joint, design)
            yield from _held(joint, design)


def _drum(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    radius, rope = drum_radius(joint, design), rope_of(joint, design)
    if radius is None or not rope:
        return
    drum = 2 * radius - rope
    if drum < _LEAST_ROPES * rope:
        yield codes.DRUM_TOO_SMALL.at(
            joint.ends[0].at,
            f"a rope of {rope:g} mm on a drum of {drum:g} mm; "
            f"{_LEAST_ROPES:g} ropes' diameters, {_LEAST_ROPES * rope:g} mm, is the least",
            help=f"a drum of {_LEAST_ROPES * rope:g} mm, or a rope of {drum / _LEAST_ROPES:.2g} mm",
        )


def _held(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    if not getattr(joint.entry, "hangs", False):
        return
    drum = turning_of(joint.ends[0].item, design)
    reached = set(_held_bodies(design))
    train = design.facts.about(TrainFact, "")
    if drum is None or train is None or drum.subject in reached:
        return
    if reached & set(train.order):
        return
    yield codes.HANGS_ON_NOTHING.at(
        joint.at,
        f"the load of '{joint.name}' hangs, and nothing holds it",
        help="add a ratchet: `pawl: {ratchets: [ratchet, pawl], teeth: [12]}`",
    )


def _held_bodies(design: Design) -> Iterator[str]:
    """Bodies that a ratchet, or a worm that holds, keeps from turning back."""
    for joint in design.joints.values():
        is_worm = joint.kind == "worms" and getattr(joint.entry, "holds", False)
        if joint.kind == "ratchets" or is_worm:
            body = turning_of(joint.ends[-1 if is_worm else 0].item, design)
            if body is not None:
                yield body.subject
