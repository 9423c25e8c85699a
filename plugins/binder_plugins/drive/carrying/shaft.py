"""One shaft of the train to what it carries: every setting, and either way round."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import product

from binder.api import Design, MaterialFact, TrainFact, TurningFact
from binder_plugins.drive.carrying.bearings import bearing_of
from binder_plugins.drive.carrying.facts import Bearing, CarriedFact, Sag
from binder_plugins.drive.carrying.line import Bush, Line, line_of
from binder_plugins.drive.carrying.loads import Bearer, Loaded, loaded
from binder_plugins.drive.carrying.passing import Passing
from binder_plugins.drive.carrying.thrusts import taken
from binder_plugins.drive.carrying.weights import Weighed
from binder_plugins.drive.carrying.whirling import whirl_of
from binder_plugins.drive.pairs.facts import ToothFact
from binder_trade.explained import NotDefined, Step
from binder_trade.fits.printed import figures
from binder_trade.shafting.allowed import Allowed, at_gear, elsewhere
from binder_trade.shafting.influence import SUPERPOSED, Borne, borne
from binder_trade.shafting.line import Piece, round_piece
from binder_trade.shafting.twist import STEEL_E, least_diameter, shaft_stress

_MPA = 1000.0
# Of the length between the bearings: what hangs out by less is taken to hang out so far.
_LEAST_OVERHANG = 0.1


@dataclass(frozen=True, slots=True)
class Rod:
    """A shaft as the sums want it: pieces from its left end, long enough for all that pushes.

    `left` is what was put on at the left end; `props` are the two places that carry, with the
    bearing of each and how long it is there; mm.
    """

    steps: tuple[tuple[float, float], ...]
    left: float
    props: tuple[tuple[float, Bush, float], tuple[float, Bush, float]]
    modulus: float

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """The pieces with their second moments."""
        return tuple(round_piece(length, across) for length, across in self.steps)

    @property
    def bearings(self) -> tuple[float, float]:
        """Where it is carried, from its left end."""
        return self.props[0][0] + self.left, self.props[1][0] + self.left

    @property
    def thin(self) -> float:
        """Its least diameter in mm."""
        return min(across for _, across in self.steps)


@dataclass(frozen=True, slots=True)
class Case:
    """One setting and way round: what acts, what the bearings carry, the speed in r/min."""

    loaded: Loaded
    borne: Borne
    speed: float


def carried_fact(
    body: TurningFact,
    train: TrainFact,
    given: Passing,
    weighed: Mapping[str, Weighed | None],
    design: Design,
) -> CarriedFact:
    """What a body's shaft carries, or why that is not known."""
    line = line_of(body, design)
    if isinstance(line, str):
        return CarriedFact(body.subject, body.title, "", refusal=line)
    try:
        return _carried(Bearer(body, line, train, given, weighed), design)
    except NotDefined as said:
        return CarriedFact(body.subject, body.title, line.shaft, refusal=said.reason)


def _carried(bearer: Bearer, design: Design) -> CarriedFact:
    body, line, given = bearer.body, bearer.line, bearer.given
    acting = list(_acting(bearer, design))
    places = [load.at_mm for one, _ in acting for _, _, push in one.pushes for load in push.loads]
    rod = _rod(line, places, design)
    cases = [_case(one, rod, abs(body.speeds[number] or 0.0)) for one, number in acting]
    fastest = max(case.speed for case in cases)
    torque = max(given.into.get(body.subject, (0.0,)), default=0.0)
    moment = max(case.borne.moment_nmm for case in cases)
    stress = shaft_stress(torque, rod.thin, moment)
    least = least_diameter(torque, moment)[0] if torque or moment else 0.0
    whirl, unweighed = whirl_of(line, rod.bearings, rod.pieces, rod.left, bearer.weighed, design)
    missing = dict.fromkeys(name for case in cases for name in case.loaded.missing)
    missing |= dict.fromkeys(f"the weight of '{name}'" for name in unweighed)
    if len(line.bushes) > 2:
        missing[f"{len(line.bushes) - 2} of its {len(line.bushes)} bearings"] = None
    if line.is_bored:
        missing |= {f"how '{one.item}' bends": None for one in line.bushes}
    bearings = _bearings(rod, cases, design)
    return CarriedFact(
        subject=body.subject,
        title=body.title,
        shaft=line.shaft,
        is_placed=line.frame is not None,
        basis=given.basis,
        bearings=bearings,
        sags=() if line.is_bored else _sags(cases, rod, design),
        stress=0.0 if line.is_bored else stress.greatest_shear_mpa,
        least_mm=least,
        fastest=fastest,
        whirl=whirl,
        missing=tuple(missing),
        steps=_steps(
            bearings, rod, cases, (*stress.steps, *(whirl.steps if whirl is not None else ()))
        ),
        thrusts=taken([one.thrusts for one, _ in acting], line, design),
    )


def _acting(bearer: Bearer, design: Design) -> Iterator[tuple[Loaded, int]]:
    """Every setting, either way round, and thrusts of either hand where there are any."""
    for number, way in product(range(len(bearer.train.settings)), (1, -1)):
        one = loaded(bearer, number, way, 1, design)
        yield one, number
        if one.thrusts:
            yield loaded(bearer, number, way, -1, design), number


def _rod(line: Line, pushes: Sequence[float], design: Design) -> Rod:
    """The two bearings that carry: the outer ones, or the two halves of a single one."""
    first, last = line.bushes[0], line.bushes[-1]
    props = _prop(first), _prop(last)
    if len(line.bushes) == 1:
        long = first.high - first.low
        props = (first.low + long / 4, first, long / 2), (first.high - long / 4, first, long / 2)
    ends = [*pushes, props[0][0], props[1][0], 0.0, line.long]
    left, right = -min(ends), max(ends) - line.long
    steps = list(line.steps)
    if left > 0:
        steps[0] = (steps[0][0] + left, steps[0][1])
    if right > 0:
        steps[-1] = (steps[-1][0] + right, steps[-1][1])
    metal = design.facts.about(MaterialFact, line.shaft)
    modulus = metal.modulus * _MPA if metal is not None and metal.modulus else STEEL_E
    return Rod(tuple(steps), left, props, modulus)


def _prop(bush: Bush) -> tuple[float, Bush, float]:
    return bush.middle, bush, bush.high - bush.low


def _wheels(one: Loaded) -> dict[tuple[str, str], float]:
    """What a drive pushes on, by which drive, and where along the shaft."""
    return {
        (item, joint): push.at_mm for item, joint, push in one.pushes if joint and not push.lever_mm
    }


def _case(one: Loaded, rod: Rod, speed: float) -> Case:
    pushes = [replace(push, at_mm=push.at_mm + rod.left) for _, _, push in one.pushes]
    places = [at + rod.left for at in _wheels(one).values()]
    return Case(one, borne(rod.pieces, rod.bearings, pushes, places, rod.modulus), speed)


def _bearings(rod: Rod, cases: Sequence[Case], design: Design) -> tuple[Bearing, ...]:
    return tuple(
        bearing_of(
            bush,
            long,
            [
                (case.borne.bearings_n[side], case.borne.leans_rad[side], case.speed)
                for case in cases
            ],
            design,
        )
        for side, (_, bush, long) in enumerate(rod.props)
    )


def _sags(cases: Sequence[Case], rod: Rod, design: Design) -> tuple[Sag, ...]:
    """Each wheel in the case in which it uses most of what is allowed."""
    worst: dict[tuple[str, str], Sag] = {}
    for case in cases:
        for number, ((item, joint), at) in enumerate(_wheels(case.loaded).items()):
            most = _allowed(item, at + rod.left, rod, design)
            sag = Sag(
                item,
                joint,
                case.borne.sags_mm[number],
                most.sag_mm,
                case.borne.slopes_rad[number],
                most.slope_rad,
                most.source,
            )
            known = worst.get((item, joint))
            if known is None or sag.use > known.use:
                worst[item, joint] = sag
    return tuple(worst.values())


def _allowed(item: str, at: float, rod: Rod, design: Design) -> Allowed:
    tooth = design.facts.about(ToothFact, item)
    if tooth is not None and not tooth.refusal:
        return at_gear(tooth.gear.module_mm)
    low, high = rod.bearings
    if low <= at <= high:
        return elsewhere(high - low)
    return elsewhere(max(low - at, at - high, _LEAST_OVERHANG * (high - low)))


def _steps(
    bearings: Sequence[Bearing],
    rod: Rod,
    cases: Sequence[Case],
    others: tuple[Step, ...],
) -> tuple[Step, ...]:
    """Every bearing's sum under its own number, since two may be alike."""
    found = []
    for side, one in enumerate(bearings):
        name = f"bearing {side + 1}"
        worst = max(cases, key=lambda case: case.borne.bearings_n[side])
        formula = f"{_listed(worst, rod)}; {SUPERPOSED}"
        found.append(Step(f"load on {name}", formula, figures(one.load, "N"), "statics"))
        found += [
            Step(f"{step.name} in {name}", step.formula, step.value, step.source)
            for step in (one.wear.steps if one.wear is not None else ())
        ]
    return (*found, *others)


def _listed(case: Case, rod: Rod) -> str:
    """What pushes where, from the left end of the shaft: `8.41 N at 13.0 mm by 'pulleys'`."""
    low, high = (at for at, _, _ in rod.props)
    pushes = ", ".join(
        f"{figures(push.size_n, 'N')} "
        + (f"along, {push.lever_mm:.1f} mm out, " if push.lever_mm else "")
        + f"at {push.at_mm:.1f} mm by "
        + (f"'{joint}'" if joint else "weight")
        for _, joint, push in case.loaded.pushes
    )
    return f"carried at {low:.1f} and {high:.1f} mm: {pushes}"
