"""Plugs on which two gears are set in mesh: a collared one, one with a foot, and its pin."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import TogetherFact
from binder_plugins.operations.aids.suited import Suited
from binder_solid.facts import FormFact, Located

if TYPE_CHECKING:
    from binder.api import Design
    from binder_plugins.operations.aids.sizes import Place

# Common practice, no source, in mm: the ledge of the foot past the gear, on which the clamp bears;
# how thick it is; what the collar stands past the thicker end of its plug; what stays free between
# foot and collar; the pin at its thickest, its part of the bore, and its steps; what is held.
_LEDGE, _FOOT, _COLLAR, _FREE = 6.0, 3.0, 4.0, 0.5
_PIN, _PART, _STEP, _HELD = 2.0, 0.5, 0.5, 18.0
_PIN_LONG = 60.0
_ROUND_HOLES = frozenset({"reamed", "bored", "drilled"})


@dataclass(frozen=True, slots=True)
class Meshing:
    """Gears that are set in mesh, in mm: outsides, bores and width of the loose one and the other.

    `into` is the hole that the other stands over, `deep` how deep that is, `apart` the centres.
    """

    loose: str
    outside: float
    bore: float
    wide: float
    other_bore: float
    other_wide: float
    into: float
    deep: float
    apart: float

    @property
    def pin(self) -> float:
        """The pin through the plug that spots the bore."""
        return max(min(math.floor(self.bore * _PART / _STEP) * _STEP, _PIN), _STEP)

    @property
    def foot(self) -> float:
        """The diameter of the foot."""
        return float(math.ceil(self.outside + 2 * _LEDGE))

    @property
    def collar(self) -> float:
        """The diameter of the collar."""
        return float(math.ceil(max(self.into, self.other_bore) + _COLLAR))


def for_meshing(recipe: str, place: Place) -> Suited | None:
    """What the plugs of a pair are made to; None where the gears are not known by their forms."""
    found = meshing(place)
    if found is None:
        return None
    if recipe == "pointed pin":
        return Suited({"pin": place.mm(found.pin)}, found.pin, _PIN_LONG)
    if recipe == "setting plug":
        long = math.ceil(found.deep + _FOOT + found.other_wide + _HELD)
        return Suited(
            {"into": place.mm(found.into), "stands": place.mm(found.other_bore),
             "collar": place.mm(found.collar), "foot_thick": place.mm(_FOOT)},
            found.collar, long,
        )  # fmt: skip
    under = found.pin - 0.1
    return Suited(
        {
            "loose": found.loose,
            "bore": place.mm(found.bore),
            "pin": place.mm(found.pin),
            "under": place.mm(under),
            "wide": place.mm(found.wide),
            "foot": place.mm(found.foot),
            "foot_thick": place.mm(_FOOT),
            "ledge": place.mm(_LEDGE),
            "away": _away(found, place),
        },
        found.foot,
        math.ceil(found.wide + _FOOT + _HELD),
    )


def _away(found: Meshing, place: Place) -> str:
    """What of the foot would lie under the collar of the other plug."""
    room = found.apart - found.collar / 2 - _FREE
    if room >= found.foot / 2:
        return "it clears the collar of the other plug all round"
    return (
        f"on the other gear's side alone file it back to {place.mm(round(room, 1))} from the "
        "axis, for the collar of the other plug: all else stays for the clamp"
    )


def meshing(place: Place) -> Meshing | None:
    """The pair of a task in which gears are set in mesh."""
    design = place.design
    fact = design.facts.about(TogetherFact, place.route.subject)
    if fact is None or len(fact.lines) != 2:
        return None
    joint = next((design.joints[one] for one in fact.joints if one in design.joints), None)
    items = [end.item for end in joint.ends] if joint is not None else []
    loose = next((one for one in items if fact.up == f"the {_title(one, design)}"), "")
    other = next((one for one in items if one != loose), "")
    hole = _hole(fact.lines[0][0], design)
    free, fixed = _gear(loose, design), _gear(other, design)
    if hole is None or free is None or fixed is None:
        return None
    (outside, bore, wide, tip), (far, other_bore, other_wide, other_tip) = free, fixed
    apart = (outside + far) / 2 - tip - other_tip
    into, deep = hole
    title = _title(loose, design)
    return Meshing(title, outside, bore, wide, other_bore, other_wide, into, deep, apart)


def _gear(item: str, design: Design) -> tuple[float, float, float, float] | None:
    """Outside, bore, width and what the teeth stand over the pitch circle, in mm."""
    form = design.facts.about(FormFact, item)
    part = design.parts.get(item)
    if form is None or part is None:
        return None
    bores = [one for one in form.located if one.kind in _ROUND_HOLES and one.depth is None]
    bore = next((one.diameter or 0.0 for one in bores if len(one.spots) == 1), 0.0)
    if bore <= 0:
        return None
    outside = max(form.size[1:])
    teeth = getattr(part.shape, "teeth", None)
    # An involute wheel of z teeth is z + 2 modules over its tips: ISO 53, profile A.
    tip = outside / (int(teeth) + 2) if isinstance(teeth, int) else 0.0
    return outside, bore, form.size[0], tip


def _hole(place: str, design: Design) -> tuple[float, float] | None:
    """Diameter and depth in mm of the hole that is there."""
    item, _, name = place.partition(".")
    form = design.facts.about(FormFact, item)
    one: Located | None = next(
        (each for each in (form.located if form is not None else ()) if each.name == name), None
    )
    if form is None or one is None or not one.diameter:
        return None
    return one.diameter, one.depth or min(form.size)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
