"""A pin through two plates with something between them, to the move in which all goes together."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, FitFact, Joint, NumberOff, Role, ShaftFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed

MOVING = ("runs_in", "swivels", "hinged", "slides")
"""The joints in which one part moves on another that it is put on."""
_PASSED = ("slides", "pressed", "retained", "runs_in", "swivels")


def riders(hold: Joint, design: Design) -> list[Joint]:
    """The joints of what goes on a pin between the plates that this joint passes it through.

    A pin with a row of its own tells its pieces there; one that has shoulders between plates
    goes in from neither side, and is no pin to be passed through.
    """
    fit = design.facts.about(FitFact, hold.name)
    if fit is None or hold.kind not in _PASSED:
        return []
    pin, plates = _item(fit.shaft), _item(fit.hole)
    if design.facts.about(ShaftFact, pin) is not None or not _straddles(plates, pin, design):
        return []
    return [
        joint
        for joint in design.joints.values()
        if joint.name != hold.name and joint.kind in MOVING and _on(joint, pin, plates, design)
    ]


def goes_with(joint: Joint, design: Design) -> bool:
    """Whether what this joint puts on a pin is on it as soon as the pin has gone through."""
    for fact in design.facts.all(ShaftFact):
        places = [n for n, piece in enumerate(fact.pieces) if piece.role is Role.BEARING]
        inner = fact.pieces[places[0] : places[-1]] if places else ()
        if any(piece.joint == joint.name and piece.role is Role.LOOSE for piece in inner):
            return True
    return any(joint in riders(other, design) for other in design.joints.values())


def between_plates(hold: Joint, design: Design) -> str:
    """What the step of the pin says of what it goes through besides the plates; else ''."""
    found = riders(hold, design)
    if not found:
        return ""
    fits = [design.facts.about(FitFact, one.name) for one in found]
    names = [design.item(_item(fit.hole)) for fit in fits if fit is not None]
    titles = " and ".join(f"the {one.title}" for one in names if one is not None)
    return f"; {titles} held between the plates, so that the pin goes through all in one move"


def _item(place: str) -> str:
    return place.partition(".")[0]


def _straddles(plates: str, pin: str, design: Design) -> bool:
    """Whether several plates go on one pin: pieces of a fabrication, or parts off more than it."""
    whole = design.fabrications.get(plates)
    if whole is not None:
        return any(piece.count > 1 for piece in whole.pieces)
    return _off(plates, design) > _off(pin, design)


def _on(joint: Joint, pin: str, plates: str, design: Design) -> bool:
    """Whether a joint puts something else on the pin, and that stands between the plates."""
    fit = design.facts.about(FitFact, joint.name)
    if fit is None or _item(fit.shaft) != pin or _item(fit.hole) == plates:
        return False
    rod = next((one for one in design.facts.all(PlacedFact) if one.item == pin), None)
    if rod is None:
        return False
    rider = list(_far(_item(fit.hole), rod, design))
    sides = list(_far(plates, rod, design))
    return bool(rider) and len(sides) > 1 and min(sides) < rider[0] < max(sides)


def _far(item: str, rod: PlacedFact, design: Design) -> Iterator[float]:
    """How far along the pin the middles of an item's copies stand, in mm."""
    whole = design.fabrications.get(item)
    names = [piece.item for piece in whole.pieces if piece.count > 1] if whole else [item]
    for one in design.facts.all(PlacedFact):
        if one.item in names:
            low, high = one.corners
            a, b, c = ((x + y) / 2 for x, y in zip(low, high, strict=True))
            yield dot(minus(placed((a, b, c), one.frame), rod.frame.origin), rod.frame.x)


def _off(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    return number.count if number is not None else 1
