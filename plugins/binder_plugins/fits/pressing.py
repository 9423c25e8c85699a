"""Press and shrink fits to what they do: pressure, stress, force, heat, and a bush's bore."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from binder.api import Design, Fact, Given, Part, PlaceFact, Working
from binder_plugins.fits.ends import feature_at, holes_through
from binder_plugins.fits.facts import Half, MadeFit
from binder_plugins.fits.families import PRESSED
from binder_plugins.fits.figures import with_unit
from binder_trade.explained import NotDefined, Step
from binder_trade.fits.bush import bush_advice, is_sized_in_place
from binder_trade.fits.cylinders import Joint, joint
from binder_trade.fits.metals import friction, metal
from binder_trade.fits.press import Grip, grip, hold, most_interference_mm
from binder_trade.fits.shrink import Heat, heat_ring

# By family where a metal has no row of its own: as the softest of its family.
_BY_GROUP = {
    "carbon steel": "free-cutting-steel",
    "alloy steel": "mild-steel",
    "tool steel": "silver-steel",
    "spring steel": "mild-steel",
    "stainless steel": "stainless",
    "cast iron": "cast-iron",
    "brass": "brass",
    "bronze": "gunmetal",
    "copper": "copper",
    "aluminium": "aluminium",
}


@dataclass(frozen=True, slots=True)
class Pressing(Fact):
    """What the tightest of a press fit does; the subject is the joint. Lengths in mm, forces N.

    `most_mm` is the interference that the metals bear; `bore` is the bush's own bore that
    closes; `heat` is how a shrunk ring is warmed.
    """

    fit: MadeFit
    cylinders: Joint
    tightest: Grip
    most_mm: float
    length_mm: float | None
    push_n: float | None
    bore: PlaceFact | None
    closes_mm: float
    advice: str
    heat: Heat | None
    working: Working

    @property
    def is_sized_in_place(self) -> bool:
        """Whether the bush gets its bore when it is in: its own leaf leaves metal for that."""
        if self.bore is None or self.bore.kind not in ("reamed", "bored"):
            return False
        return is_sized_in_place(self.closes_mm, porous=self.cylinders.shaft.porous)


def pressings(fits: Iterable[MadeFit], design: Design) -> Iterator[Pressing]:
    """What each press fit does, where its metals are known; nothing for wood and plastics."""
    made = list(fits)
    settled = {str(fit.hole.end): fit.nominal for fit in made}
    for fit in made:
        if fit.joint.kind in PRESSED and fit.least_um < 0:
            found = _pressing(fit, design, settled)
            if found is not None:
                yield found


def _pressing(fit: MadeFit, design: Design, settled: Mapping[str, Fraction]) -> Pressing | None:
    shaft_id, hub_id = metal_id(fit.shaft), metal_id(fit.hole)
    if not shaft_id or not hub_id:
        return None
    bore = bore_of(fit.shaft, design, settled)
    inner = float(bore.diameter) if bore is not None and bore.diameter else 0.0
    try:
        made = joint(fit.mm, metal(shaft_id), metal(hub_id), outside_of(fit.hole, design), inner)
        tightest = grip(made, -fit.least_um / 1000)
        heat = _heat(fit, made)
        length = length_of(fit)
        rubs = friction(fit.joint.kind, made.hub).most
        held = hold(made, tightest.pressure_mpa, length, rubs) if length else None
    except NotDefined:
        return None
    closes = tightest.bore_closes_mm
    advice = (
        bush_advice(closes, porous=made.shaft.porous, bored=bore.kind == "bored")
        if bore is not None
        else ""
    )
    push = held.force_n if held is not None else None
    steps = (*tightest.steps, *(held.steps[:1] if held else ()), *(heat.steps if heat else ()))
    return Pressing(
        fit.subject,
        fit,
        made,
        tightest,
        most_interference_mm(made),
        length,
        push,
        bore,
        closes,
        advice,
        heat,
        _working(fit, steps, advice, closes, design.units),
    )


def metal_id(half: Half) -> str:
    """The metal by which a half is reckoned, '' for wood, plastic and what is not known."""
    try:
        metal(half.material)
    except NotDefined:
        return _BY_GROUP.get(half.group, "")
    return half.material


def outside_of(hole: Half, design: Design) -> float | None:
    """The diameter round a hole in mm: of its step, or the narrow side of its face."""
    owner = hole.end.item
    under = design.facts.about(PlaceFact, f"{owner}.{hole.place.on}") if hole.place.on else None
    if under is None:
        return None
    if under.is_round and under.diameter is not None:
        return float(under.diameter)
    sides = [float(side) for side in (under.length, under.width) if side is not None]
    return min([*sides, *_walls(hole, under, design)], default=None)


# The sides of a face between which a place is told, and which of its two sizes they span.
_SPANS = {
    **{key: {"left": 0, "right": 0, "front": 1, "back": 1} for key in ("top", "underside")},
    **{key: {"left": 0, "right": 0, "top": 1, "underside": 1} for key in ("front", "back")},
    **{key: {"front": 0, "back": 0, "top": 1, "underside": 1} for key in ("left", "right")},
}


def _walls(hole: Half, under: PlaceFact, design: Design) -> Iterator[float]:
    """Twice the distance of a hole's middle from the edges that it is placed by."""
    feature = feature_at(hole.end, design)
    at = getattr(feature.entry, "at", None) if feature is not None else None
    spans = _SPANS.get(hole.place.on, {})
    for place in at.all if at is not None else ():
        span = spans.get(place.rest.removeprefix("from "))
        whole = None if span is None else (under.length, under.width)[span]
        if whole is not None and place.distance is not None:
            yield 2 * float(min(place.distance.exact, whole - place.distance.exact))


def bore_of(shaft: Half, design: Design, settled: Mapping[str, Fraction]) -> PlaceFact | None:
    """The bore through a pressed bush, the widest where there are several.

    `settled` are the bores that fits of the same model give their size, by place.
    """
    part = design.parts.get(shaft.end.item)
    found = holes_through(part, design) if isinstance(part, Part) else ()
    holes = [replace(one, diameter=settled.get(one.subject, one.diameter)) for one in found]
    inside = [
        hole
        for hole in holes
        if hole.diameter is not None
        and shaft.place.diameter is not None
        and hole.diameter < shaft.place.diameter
    ]
    return max(inside, key=lambda hole: hole.diameter or 0, default=None)


def length_of(fit: MadeFit) -> float | None:
    """How much of a fit bears, in mm: what is said, or the shorter of the two halves."""
    said = getattr(fit.joint.entry, "length", None)
    if said is not None:
        return float(said.mm)
    hole = fit.hole.place.depth or fit.hole.place.thickness
    known = [float(one) for one in (hole, fit.shaft.place.length) if one is not None and one > 0]
    return min(known, default=None)


def _heat(fit: MadeFit, made: Joint) -> Heat | None:
    if fit.joint.kind != "shrunk":
        return None
    return heat_ring(fit.mm, -fit.least_um / 1000, made.hub)


def _working(
    fit: MadeFit, steps: tuple[Step, ...], advice: str, closes: float, units: str
) -> Working:
    given = tuple(Given(step.name, step.value) for step in steps)
    result = steps[1].value if len(steps) > 1 else ""
    closing = f", the bore closes by {with_unit(closes, units)}" if advice else ""
    return Working(
        id=f"{fit.subject.replace(' ', '_')}.press",
        title=f"grip of '{fit.subject}' at its tightest",
        given=given,
        formula="; ".join(f"{step.name}: {step.formula}" for step in steps),
        result=f"{result}{closing}",
        because="what the tightest pair does to ring and shaft",
        source="Lamé, thick cylinders, as in DIN 7190-1",
        span=fit.joint.at,
    )
