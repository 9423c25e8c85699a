"""A straight pawl as it stands in the model to how its nose is filed, or why it cannot seat."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Diagnostic, Size, exact, shown_length
from binder_plugins.drive import cord_codes as codes
from binder_plugins.drive.standing import axis_of
from binder_solid.facts import FormFact
from binder_solid.pawls import PawlFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, length, minus, plus
from binder_trade.explained import NotDefined
from binder_trade.gears.stopping.noses import pawl_nose, ratchet_space, square_reach

if TYPE_CHECKING:
    from binder.api import Design, Joint

_UPRIGHT = 0.999


@dataclass(frozen=True, slots=True)
class _Stands:
    """A bar about its pin, in mm: `long` over all, the rest as in `PawlFact`."""

    centres: float
    long: float
    reach: float
    half: float
    across: float
    end: str
    side: str


@dataclass(frozen=True, slots=True)
class _Wheel:
    """The teeth of a ratchet wheel: radii in mm, the lean of the faces in degrees."""

    teeth: int
    outside: float
    root: float
    lean: float


def pawling(joint: Joint, design: Design) -> tuple[tuple[PawlFact, ...], tuple[Diagnostic, ...]]:
    """The nose of a straight pawl that is filed to its wheel, or the finding that none seats.

    Nothing where its end is of another form, or either of them stands nowhere.
    """
    bar, wheel = _stands(joint, design), _wheel(joint.ends[0].item, design)
    if bar is None or wheel is None:
        return (), ()
    try:
        space = ratchet_space(
            wheel.teeth, 2 * wheel.outside, wheel.outside - wheel.root, wheel.lean
        )
        nose = pawl_nose(
            bar.centres, bar.reach, bar.half, wheel.root, wheel.outside - wheel.root, space
        )
    except NotDefined as refusal:
        return (), (_unseated(joint, bar, wheel, refusal, design),)
    fact = PawlFact(
        joint.ends[-1].item, joint.name, joint.ends[0].item, wheel.teeth, wheel.outside,
        wheel.root, bar.reach, bar.half, bar.across, bar.end, bar.side, space, nose,
    )  # fmt: skip
    return (fact,), ()


def _unseated(
    joint: Joint, bar: _Stands, wheel: _Wheel, refusal: NotDefined, design: Design
) -> Diagnostic:
    def mm(size: float) -> str:
        return shown_length(exact(round(size, 1)), design.units)

    square = square_reach(bar.centres, bar.half, wheel.root, wheel.lean)
    whole = mm(bar.long - bar.reach + square)
    return codes.PAWL_DOES_NOT_SEAT.at(
        joint.at,
        f"'{joint.ends[-1].item}' reaches {mm(bar.reach)} past its pin, which stands "
        f"{mm(bar.centres)} from the axis of '{joint.ends[0].item}': {refusal.reason}",
        help=f"let it reach {mm(square)}, {whole} over all: its end seats as it is sawn, square"
        if square else "set its pin farther from the wheel",
    )  # fmt: skip


def _stands(joint: Joint, design: Design) -> _Stands | None:
    """How the bar lies about its pin; None for one of another form or that stands nowhere."""
    name = joint.ends[-1].item
    form, pin = design.facts.about(FormFact, name), axis_of({name}, design)
    wheel, bar = (_only(item, design) for item in (joint.ends[0].item, name))
    if form is None or form.stretches or not _is_filed(name, design):
        return None
    if pin is None or wheel is None or bar is None:
        return None
    lies = (abs(dot(pin.way, bar.frame.z)), abs(dot(pin.way, wheel.frame.x)))
    if min(lies) < _UPRIGHT:
        return None
    apart = minus(pin.origin, wheel.frame.origin)
    centres = length(plus(apart, wheel.frame.x, -dot(apart, wheel.frame.x)))
    foot, aside = minus(pin.origin, bar.frame.origin), frame_y(bar.frame)
    (left, front, _), (right, back, _) = bar.corners
    x, y = dot(foot, bar.frame.x), dot(foot, aside)
    is_right, is_back = right - x > x - left, dot(apart, aside) < 0
    return _Stands(
        centres, right - left, right - x if is_right else x - left,
        back - y if is_back else y - front, back - front,
        "right" if is_right else "left", "back" if is_back else "front",
    )  # fmt: skip


def _wheel(name: str, design: Design) -> _Wheel | None:
    part = design.parts.get(name)
    shape = part.shape if part is not None else None
    teeth, lean = getattr(shape, "teeth", None), getattr(shape, "lean", None)
    outside, depth = getattr(shape, "outside", None), getattr(shape, "depth", None)
    if not isinstance(teeth, int) or not isinstance(outside, Size) or not isinstance(depth, Size):
        return None
    angle = float(lean.exact) if isinstance(lean, Size) else 0.0
    return _Wheel(teeth, outside.mm / 2, outside.mm / 2 - depth.mm, angle)


def _is_filed(item: str, design: Design) -> bool:
    """Whether its nose is filed to the wheel, so that nothing else tells its form."""
    part = design.parts.get(item)
    return part is not None and any(
        "ratchet" in str(getattr(one.entry, "filed", "")) for one in part.features
    )


def _only(item: str, design: Design) -> PlacedFact | None:
    return next((one for one in design.facts.all(PlacedFact) if one.item == item), None)
