"""What pushes and pulls on the shafts of a train: teeth, belts, ropes, handles, weights."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import asin, cos, hypot, pi, sin

from binder.api import Design, End, Joint, Passed, Size
from binder_plugins.drive.carrying.crossing import bevel_pair, orbit_pair, skew_pair
from binder_plugins.drive.carrying.mates import Facing, facing, wheels_of
from binder_plugins.drive.carrying.pair import Pair
from binder_plugins.drive.pairs.facts import BeltFact, ToothFact
from binder_plugins.drive.train.strength import newtons
from binder_plugins.drive.train.told import module_of, teeth_of
from binder_solid.forms import Vector
from binder_solid.space import plus
from binder_trade.belts.grip import friction_range, tension_ratio
from binder_trade.belts.round_belt import cut_length
from binder_trade.belts.run import Run
from binder_trade.explained import NotDefined
from binder_trade.gears.strength import forces
from binder_trade.gears.worm import worm, worm_forces

_NOTHING: Vector = (0.0, 0.0, 0.0)
MADE_OF = {"round": "polyurethane", "flat": "leather", "vee": "rubber", "toothed": "rubber"}
_STRETCH = 0.10
_VEE_DEG, _FLAT_DEG = 38.0, 180.0
_RUBS = 0.15  # of steel on steel, dry and clean; from memory


@dataclass(frozen=True, slots=True)
class Pull:
    """A force in N on a piece of a body, by the drive that makes it.

    `way` is the force in the model, None where its direction is not known. `left` is what of it
    is not reckoned. `thrust` in N goes along the shaft, `lever` mm out from its axis, on the side
    `spot`; `is_apart` where it can only drive the wheel away from where the two axes meet.
    """

    joint: str
    item: str
    size: float
    way: Vector | None = None
    left: str = ""
    thrust: float = 0.0
    lever: float = 0.0
    spot: Vector | None = None
    is_apart: bool = False


Maker = Callable[[Joint, tuple[End, End], float, int, Design], Pair]


def pulls_of(
    one: Passed, torque: float, step: int, turns: int, design: Design
) -> tuple[Pull, Pull] | str:
    """The pull of a drive on its driver and on its driven wheel, or why it is not reckoned.

    `torque` is what it hands on in N·mm, at the driven wheel; `turns` is 1 where the driver
    goes anticlockwise about the way of its axis, -1 the other way.
    """
    found = wheels_of(one, design)
    if found is None or one.kind not in _MAKERS:
        return f"the push of '{one.joint}'"
    joint, first, second = found
    try:
        pair = _MAKERS[one.kind](joint, (first, second), torque, step, design)
    except NotDefined:
        return f"the push of '{one.joint}'"
    stands = facing(one, design)
    ways = _ways(pair, stands, turns) if stands is not None else (None, None)
    spots = _spots(stands)
    driver, driven = (
        Pull(
            joint.name,
            end.item,
            pair.at_driver if pair.at_driver is not None and not number else pair.size,
            ways[number],
            "",
            pair.along[number],
            pair.radii[number],
            spots[number],
            pair.is_apart,
        )
        for number, end in enumerate((first, second))
    )
    return driver, driven


def _spots(stands: Facing | None) -> tuple[Vector | None, Vector | None]:
    """Where the two touch, seen from the axis of each."""
    if stands is None:
        return None, None
    return stands.towards, plus(_NOTHING, stands.towards, -1.0)


def _ways(pair: Pair, stands: Facing, turns: int) -> tuple[Vector, Vector]:
    away = plus(_NOTHING, stands.towards, pair.apart)
    way = plus(away, stands.across, pair.across * turns)
    return plus(_NOTHING, way, -1.0), way


def _mesh(joint: Joint, ends: tuple[End, End], torque: float, _step: int, design: Design) -> Pair:
    """Teeth push apart and along; inside teeth push the pinion towards the middle of the ring."""
    teeth = [design.facts.about(ToothFact, end.item) for end in ends]
    if teeth[0] is None or teeth[1] is None or teeth[1].refusal:
        raise NotDefined("the teeth are not told", "write `teeth:` and `module:`")
    made = forces(teeth[1].gear, torque)
    along = (made.axial_n, made.axial_n)
    radii = (teeth[0].gear.pitch_mm / 2, teeth[1].gear.pitch_mm / 2)
    apart, across = made.radial_n, made.tangential_n
    if teeth[1].gear.is_internal:  # the pinion touches the ring on the far side from its middle
        apart, across = -apart, -across
    elif teeth[0].gear.is_internal:
        apart = -apart
    return Pair(apart, across, None, along, radii)


def _belt(joint: Joint, ends: tuple[End, End], torque: float, step: int, design: Design) -> Pair:
    """Both strands, by the pull that is told or the stretch of a cord, else as tight as needed."""
    belt = design.facts.about(BeltFact, joint.name)
    if belt is None or not belt.runs:
        raise NotDefined("the run of the belt is not told", "write `centres:`")
    run = belt.runs[min(step, len(belt.runs) - 1)]
    is_first = ends[1] is joint.ends[0]
    driven = run.first_mm if is_first else run.second_mm
    pull = 2 * torque / driven
    tight, slack = strands(pull, rest_pull(joint, belt, run), grips(joint, belt, run))
    crossed = bool(getattr(joint.entry, "crossed", False))
    lean = _lean(run, is_crossed=crossed)
    # The strand that the driver draws in comes off the driven wheel on the side that goes to it.
    other = run.second_mm if is_first else run.first_mm
    side = -1.0 if driven > other and not crossed else 1.0
    return Pair(-(tight + slack) * cos(lean), side * (tight - slack) * sin(lean))


def _lean(run: Run, *, is_crossed: bool) -> float:
    """How far a strand leans to the line of the centres, in rad."""
    both = run.first_mm + run.second_mm if is_crossed else abs(run.first_mm - run.second_mm)
    return asin(min(1.0, both / 2 / run.centres_mm))


def strands(pull: float, rest: float | None, ratio: float) -> tuple[float, float]:
    """The tight and the slack strand in N of a belt that pulls so much."""
    least = pull * ratio / (ratio - 1)
    if rest is None:
        return least, least - pull
    tight = rest + pull / 2
    return tight, max(0.0, tight - pull)


def rest_pull(joint: Joint, belt: BeltFact, run: Run) -> float | None:
    """The pull of each strand at rest in N: as told, or by the stretch of a welded cord."""
    told = newtons(getattr(joint.entry, "pull", None))
    if told is not None:
        return told
    if belt.belt != "round" or not belt.section:
        return None
    return cut_length(run.length_mm, belt.section, _STRETCH).pretension_n


def grips(joint: Joint, belt: BeltFact, run: Run) -> float:
    """Tight over slack tension at the point of slipping."""
    said, groove = (getattr(joint.entry, name, None) for name in ("friction", "groove_angle"))
    rough = (
        float(said.exact)
        if isinstance(said, Size)
        else friction_range(MADE_OF.get(belt.belt, "leather"))[0]
    )
    usual = _VEE_DEG if belt.belt == "vee" else _FLAT_DEG
    angle = float(groove.exact) if isinstance(groove, Size) else usual
    ratio = tension_ratio(rough, run.least_wrap_rad, angle)
    if ratio <= 1:
        raise NotDefined("a belt without friction pulls nothing", "give its friction")
    return ratio


def _chain(joint: Joint, ends: tuple[End, End], torque: float, _step: int, design: Design) -> Pair:
    """One strand draws, the other hangs slack."""
    number = 1 if ends[1] is joint.ends[1] else 0
    teeth, pitch = teeth_of(joint, number, design), getattr(joint.entry, "pitch", None)
    if not teeth or not isinstance(pitch, Size):
        raise NotDefined("the chain's pitch is not told", "write `pitch:`")
    return Pair(-2 * torque / (pitch.mm / sin(pi / teeth)), 0.0)


def _rubbing(
    joint: Joint, ends: tuple[End, End], torque: float, _step: int, _design: Design
) -> Pair:
    """Pressed together by what is told, or by as much as the pull needs."""
    first, second = (one.mm for one in joint.entry.diameters)  # type: ignore[attr-defined]
    pull = 2 * torque / (second if ends[1] is joint.ends[1] else first)
    said, pressed = getattr(joint.entry, "friction", None), getattr(joint.entry, "pressed_by", None)
    rough = float(said.exact) if isinstance(said, Size) and said.exact > 0 else _RUBS
    return Pair(newtons(pressed) or pull / rough, pull)


def _worm(joint: Joint, _ends: tuple[End, End], torque: float, _step: int, design: Design) -> Pair:
    """What pushes the wheel round draws along the worm, and the other way about."""
    module, teeth = module_of(joint, design), teeth_of(joint, 1, design)
    diameter = getattr(joint.entry, "diameter", None)
    if module is None or teeth is None or not isinstance(diameter, Size):
        raise NotDefined("the worm is not told", "write `module:` and `diameter:`")
    starts = int(getattr(joint.entry, "starts", None) or 1)
    made = worm(starts, teeth, float(module), diameter.mm)
    at_worm = torque / made.ratio / made.efficiency
    pushes = worm_forces(made, at_worm)
    at_driver = hypot(pushes.tangential_n, pushes.radial_n)
    return Pair(
        pushes.radial_n,
        pushes.axial_n,
        at_driver,
        (pushes.axial_n, pushes.tangential_n),
        (diameter.mm / 2, made.wheel_mm / 2),
    )


_MAKERS: Mapping[str, Maker] = {
    "meshes": _mesh,
    "bevels": bevel_pair,
    "skews": skew_pair,
    "orbits": orbit_pair,
    "belted": _belt,
    "chained": _chain,
    "rubs": _rubbing,
    "worms": _worm,
}
