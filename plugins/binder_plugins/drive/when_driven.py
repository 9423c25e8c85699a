"""The steps, checks and pages of the drive, which load their sums only where a model has one."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Contribution,
    Design,
    Diagnostic,
    Inset,
    Section,
)
from binder_plugins.drive.pairs.facts import MeshFact


# A model without a drive never loads the sums.
def _has_drive(design: Design) -> bool:
    return bool(design.spec.written.drive)


def settle_stepped(design: Design) -> Contribution:
    """Stepped pulleys that are left to suit."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.pairs.stepped import settle_stepped

    return settle_stepped(design)


def settle_contours(design: Design) -> Contribution:
    """The outlines of cams."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.cams.contours import settle_contours

    return settle_contours(design)


def settle(design: Design) -> Contribution:
    """Speeds, ways round and torques."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.settling import settle_drive

    return settle_drive(design)


def settle_pairs(design: Design) -> Contribution:
    """Teeth, belts and what leans."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.pairs.settling import settle_pairs

    return settle_pairs(design)


def chain_centres(design: Design) -> Contribution:
    """The tolerance chains of centre distances."""
    meshes = design.facts.all(MeshFact)
    if not meshes:
        return Contribution()
    from binder_plugins.drive.pairs.chaining import centre_chains

    return Contribution(facts=tuple(centre_chains(meshes, design)))


def tell_halves(design: Design) -> Contribution:
    """What is left long, and grooves that are round at their bottom."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.motion.lapping import left_long
    from binder_plugins.drive.pairs.round_grooves import round_grooves

    return Contribution(facts=(*left_long(design), *round_grooves(design)))


def chain_laps(design: Design) -> Contribution:
    """The tolerance chains of what trips."""
    if not any(joint.kind == "trips" for joint in design.joints.values()):
        return Contribution()
    from binder_plugins.drive.motion.lapping import laps

    return Contribution(facts=tuple(laps(design)))


def set_gears(design: Design) -> Contribution:
    """The tasks in which gears are set in mesh."""
    if not design.facts.all(MeshFact):
        return Contribution()
    from binder_plugins.drive.pairs.setting import set_gears

    return set_gears(design)


def settle_duties(design: Design) -> Contribution:
    """What each drive does."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.duties.settling import settle_duties

    return settle_duties(design)


def settle_shafts(design: Design) -> Contribution:
    """What the shafts carry, and what there is to set turning."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.carrying.settling import settle_shafts

    return settle_shafts(design)


def turn_once(design: Design) -> Contribution:
    """One turn of the whole, for its pictures."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.motion.knocking import turn_once

    return turn_once(design)


def trace(design: Design) -> Contribution:
    """What faults are traced by."""
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.tracing import trace_drive

    return trace_drive(design)


def check_drive(design: Design) -> Iterator[Diagnostic]:
    """All findings of the drive."""
    if not _has_drive(design):
        return
    from binder_plugins.drive.cords.checking import check_hoists
    from binder_plugins.drive.duties.worm_hand import check_hands
    from binder_plugins.drive.judging.belts import check_belts
    from binder_plugins.drive.judging.gears import check_gears
    from binder_plugins.drive.judging.in_line import check_in_line
    from binder_plugins.drive.judging.in_way import check_in_way
    from binder_plugins.drive.judging.leaning import check_leaning
    from binder_plugins.drive.judging.ropes import check_ropes
    from binder_plugins.drive.judging.running import check_running
    from binder_plugins.drive.judging.salvage import check_salvaged
    from binder_plugins.drive.judging.shafts import check_shafts
    from binder_plugins.drive.motion.agreeing import check_linkages

    yield from check_running(design)
    yield from check_ropes(design)
    yield from check_hoists(design)
    yield from check_gears(design)
    yield from check_leaning(design)
    yield from check_salvaged(design)
    yield from check_belts(design)
    yield from check_shafts(design)
    yield from check_in_line(design)
    yield from check_in_way(design)
    yield from check_hands(design)
    yield from check_linkages(design)


def all_pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section | Inset]:
    """The page of the drive, and what it adds to the leaves."""
    if not _has_drive(design):
        return
    from binder_plugins.drive.page import drive_pages
    from binder_plugins.drive.pages_cams import cam_leaves
    from binder_plugins.drive.pages_gears import gear_leaves
    from binder_plugins.drive.pages_leaning import leaning_leaves
    from binder_plugins.drive.pages_pawls import pawl_leaves

    yield from drive_pages(design)
    yield from gear_leaves(design)
    yield from leaning_leaves(design)
    yield from cam_leaves(design)
    yield from pawl_leaves(design)
