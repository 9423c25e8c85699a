"""Plugin `drive`: what turns what, how fast, how strongly, which way round."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    ChainFact,
    Check,
    Code,
    Contribution,
    CordFact,
    Design,
    Diagnostic,
    FitFact,
    HalfFact,
    Inset,
    Kind,
    LeaningFact,
    LoadFact,
    MaterialFact,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    RoundBottomFact,
    Section,
    ShaftFact,
    SmallWork,
    StepSizeFact,
    ThreadFact,
    TogetherFact,
    TraceFact,
    TrainFact,
    TurningFact,
    hookimpl,
)
from binder_plugins.drive import (
    belt_codes,
    codes,
    cord_codes,
    duty_codes,
    feed_codes,
    gear_codes,
    question_codes,
    shaft_codes,
)
from binder_plugins.drive.asking.questions import RECKONINGS
from binder_plugins.drive.carrying.facts import CarriedFact, InertiaFact
from binder_plugins.drive.duties.duty import DutyFact
from binder_plugins.drive.kinds import kinds
from binder_plugins.drive.motion.told import TurnFact
from binder_plugins.drive.pairs.facts import BeltFact, FoundFact, MeshFact, ToothFact
from binder_solid.facts import ContourFact, FormFact
from binder_solid.pawls import PawlFact
from binder_solid.placed import MotionFact, PlacedFact


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """The kinds of drive, and teeth as a feature."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A drive that locks, slips, stalls or does not fit together."""
    return [
        *codes.CODES,
        *gear_codes.CODES,
        *belt_codes.CODES,
        *cord_codes.CODES,
        *duty_codes.CODES,
        *feed_codes.CODES,
        *question_codes.CODES,
        *shaft_codes.CODES,
    ]


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Speeds, ways round and torques of all that turns."""
    return [
        PlanStep(
            "settle stepped pulleys", _settle_stepped, gives=(StepSizeFact,), settles_shapes=True
        ),
        PlanStep("settle cams", _settle_contours, gives=(ContourFact,), settles_shapes=True),
        PlanStep(
            "settle the drive",
            _settle,
            after=(PlaceFact,),
            gives=(TurningFact, TrainFact, LoadFact),
        ),
        PlanStep(
            "settle gears and belts",
            _settle_pairs,
            after=(PlaceFact, FormFact, PlacedFact, MotionFact),
            gives=(ToothFact, FoundFact, MeshFact, BeltFact, LeaningFact, SmallWork),
        ),
        PlanStep(
            "chain the centres of gears",
            _chain_centres,
            needs=(MeshFact,),
            after=(FitFact,),
            gives=(ChainFact,),
        ),
        PlanStep(
            "tell what is left long or round", _tell_halves, gives=(HalfFact, RoundBottomFact)
        ),
        PlanStep(
            "chain the laps of trips",
            _chain_laps,
            after=(PlaceFact, FormFact, PlacedFact),
            gives=(ChainFact,),
        ),
        PlanStep(
            "set gears in mesh",
            _set_gears,
            needs=(MeshFact,),
            after=(FitFact,),
            gives=(TogetherFact,),
        ),
        PlanStep(
            "settle what each drive does",
            _settle_duties,
            after=(
                PlaceFact,
                FormFact,
                MaterialFact,
                ThreadFact,
                TurningFact,
                TrainFact,
                PlacedFact,
                MotionFact,
            ),
            gives=(DutyFact, CordFact, PawlFact),
        ),
        PlanStep(
            "load the shafts of the drive",
            _settle_shafts,
            needs=(TrainFact,),
            after=(
                TurningFact,
                LoadFact,
                ToothFact,
                BeltFact,
                PlaceFact,
                FormFact,
                MaterialFact,
                PlacedFact,
                MotionFact,
                ShaftFact,
                FitFact,
            ),
            gives=(CarriedFact, InertiaFact),
        ),
        PlanStep(
            "turn the drive once",
            _turn_once,
            after=(TurningFact, TrainFact, PlacedFact, MotionFact),
            gives=(TurnFact,),
            for_pages=True,
        ),
        PlanStep(
            "tell what faults are traced by",
            _trace,
            after=(ToothFact, MeshFact, BeltFact, DutyFact),
            gives=(TraceFact,),
            for_pages=True,
        ),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does it turn, the right way, at the right speed, and is it strong enough."""
    return [Check("the drive turns and holds", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The page of the drive."""
    return [Page("drive", _pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """Belts, gears, trains, dials and dividing without a spec."""
    return RECKONINGS


# A model without a drive never loads the sums.
def _has_drive(design: Design) -> bool:
    return bool(design.spec.written.drive)


def _settle_stepped(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.pairs.stepped import settle_stepped

    return settle_stepped(design)


def _settle_contours(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.cams.contours import settle_contours

    return settle_contours(design)


def _settle(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.settling import settle_drive

    return settle_drive(design)


def _settle_pairs(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.pairs.settling import settle_pairs

    return settle_pairs(design)


def _chain_centres(design: Design) -> Contribution:
    meshes = design.facts.all(MeshFact)
    if not meshes:
        return Contribution()
    from binder_plugins.drive.pairs.chaining import centre_chains

    return Contribution(facts=tuple(centre_chains(meshes, design)))


def _tell_halves(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.motion.lapping import left_long
    from binder_plugins.drive.pairs.round_grooves import round_grooves

    return Contribution(facts=(*left_long(design), *round_grooves(design)))


def _chain_laps(design: Design) -> Contribution:
    if not any(joint.kind == "trips" for joint in design.joints.values()):
        return Contribution()
    from binder_plugins.drive.motion.lapping import laps

    return Contribution(facts=tuple(laps(design)))


def _set_gears(design: Design) -> Contribution:
    if not design.facts.all(MeshFact):
        return Contribution()
    from binder_plugins.drive.pairs.setting import set_gears

    return set_gears(design)


def _settle_duties(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.duties.settling import settle_duties

    return settle_duties(design)


def _settle_shafts(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.carrying.settling import settle_shafts

    return settle_shafts(design)


def _turn_once(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.motion.knocking import turn_once

    return turn_once(design)


def _trace(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.tracing import trace_drive

    return trace_drive(design)


def _check(design: Design) -> Iterator[Diagnostic]:
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


def _pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section | Inset]:
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
