"""Plugin `drive`: what turns what, how fast, how strongly, which way round."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    ChainFact,
    Check,
    Code,
    CordFact,
    FitFact,
    HalfFact,
    Kind,
    LeaningFact,
    LoadFact,
    MaterialFact,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    RoundBottomFact,
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
from binder_plugins.drive.when_driven import (
    all_pages,
    chain_centres,
    chain_laps,
    check_drive,
    set_gears,
    settle,
    settle_contours,
    settle_duties,
    settle_pairs,
    settle_shafts,
    settle_stepped,
    tell_halves,
    trace,
    turn_once,
)
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
            "settle stepped pulleys", settle_stepped, gives=(StepSizeFact,), settles_shapes=True
        ),
        PlanStep("settle cams", settle_contours, gives=(ContourFact,), settles_shapes=True),
        PlanStep(
            "settle the drive",
            settle,
            after=(PlaceFact,),
            gives=(TurningFact, TrainFact, LoadFact),
        ),
        PlanStep(
            "settle gears and belts",
            settle_pairs,
            after=(PlaceFact, FormFact, PlacedFact, MotionFact),
            gives=(ToothFact, FoundFact, MeshFact, BeltFact, LeaningFact, SmallWork),
        ),
        PlanStep(
            "chain the centres of gears",
            chain_centres,
            needs=(MeshFact,),
            after=(FitFact,),
            gives=(ChainFact,),
        ),
        PlanStep("tell what is left long or round", tell_halves, gives=(HalfFact, RoundBottomFact)),
        PlanStep(
            "chain the laps of trips",
            chain_laps,
            after=(PlaceFact, FormFact, PlacedFact),
            gives=(ChainFact,),
        ),
        PlanStep(
            "set gears in mesh",
            set_gears,
            needs=(MeshFact,),
            after=(FitFact,),
            gives=(TogetherFact,),
        ),
        PlanStep(
            "settle what each drive does",
            settle_duties,
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
            settle_shafts,
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
            turn_once,
            after=(TurningFact, TrainFact, PlacedFact, MotionFact),
            gives=(TurnFact,),
            for_pages=True,
        ),
        PlanStep(
            "tell what faults are traced by",
            trace,
            after=(ToothFact, MeshFact, BeltFact, DutyFact),
            gives=(TraceFact,),
            for_pages=True,
        ),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does it turn, the right way, at the right speed, and is it strong enough."""
    return [Check("the drive turns and holds", check_drive)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The page of the drive."""
    return [Page("drive", all_pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """Belts, gears, trains, dials and dividing without a spec."""
    return RECKONINGS
