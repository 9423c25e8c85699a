"""A pawl as it stands to its wheel: does it hold, does it fall in, can it be lifted."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Diagnostic, Joint
from binder_plugins.drive import cord_codes as codes
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.standing import Axis, axis_of
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, length, minus, placed, plus

_PARALLEL = 0.999
_DOWN: Vector = (0.0, 0.0, -1.0)
# What a finger tip can press, mm behind the pin: common practice, no source.
_TAIL_MM = 6.0
# As drawn a pawl may stand lifted; nearer to balance than this it is not judged, mm.
_NEAR_MM = 0.2


@dataclass(frozen=True, slots=True)
class _Pawl:
    """The wheel's axis with the way that it is stopped in, the pin, nose and middle of the pawl.

    `tail` is how far the pawl reaches behind its pin, in mm.
    """

    wheel: Axis
    pin: Vector
    nose: Vector
    middle: Vector
    tail: float


def check_pawls(design: Design) -> Iterator[Diagnostic]:
    """Each pawl that is hinged, and stands in the model beside a ratchet wheel."""
    for joint in design.joints.values():
        pawl = _stands(joint, design) if joint.kind == "ratchets" else None
        if pawl is not None:
            yield from _judged(joint, pawl, design)


def _stands(joint: Joint, design: Design) -> _Pawl | None:
    wheel, pawl = (_copy(end.item, design) for end in (joint.ends[0], joint.ends[-1]))
    form = design.facts.about(FormFact, joint.ends[0].item)
    pin = axis_of({joint.ends[-1].item}, design)
    if wheel is None or pawl is None or pin is None or form is None or form.shape != "ratchet":
        return None
    x, y, z = wheel.frame.x
    # The stopping faces look clockwise from the wheel's own right (RATCHET_HAND).
    stopped = Axis(wheel.frame.origin, (-x, -y, -z))
    if abs(dot(pin.way, stopped.way)) < _PARALLEL:
        return None
    foot = minus(pin.origin, pawl.frame.origin)
    hinge = dot(foot, pawl.frame.x)
    (low, b, c), (high, e, f) = pawl.corners
    ends = [placed((at, (b + e) / 2, (c + f) / 2), pawl.frame) for at in (low, high)]
    reach = [hinge - low, high - hinge]
    nose = 0 if reach[0] > reach[1] else 1
    middle = plus(ends[0], minus(ends[1], ends[0]), 0.5)
    return _Pawl(stopped, pin.origin, ends[nose], middle, reach[1 - nose])


def _copy(item: str, design: Design) -> PlacedFact | None:
    return next((one for one in design.facts.all(PlacedFact) if one.item == item), None)


def _judged(joint: Joint, pawl: _Pawl, design: Design) -> Iterator[Diagnostic]:
    name = joint.ends[-1].item
    goes = cross(pawl.wheel.way, minus(pawl.nose, pawl.wheel.origin))
    if dot(goes, minus(pawl.pin, pawl.nose)) < 0:
        yield codes.PAWL_LETS_GO.at(
            joint.at,
            f"the teeth of '{joint.ends[0].item}' draw '{name}' away from its pin, the way that "
            "they should be stopped",
            help="turn the wheel round (`reversed: true`), or set the pin on the other side",
        )
    if not _has_spring(joint, design) and _falls_out(pawl):
        yield codes.PAWL_FALLS_OUT.at(
            joint.at,
            f"'{name}' stands so that its own weight swings its nose off '{joint.ends[0].item}'",
            help="set its pin higher than the teeth and beside them, or name its spring",
        )
    if pawl.tail < _TAIL_MM and _is_loaded(joint, design):
        yield codes.PAWL_WITHOUT_TAIL.at(
            joint.at,
            f"'{name}' reaches {pawl.tail:.1f} mm behind its pin: nothing to lift it by when the "
            "load is let down",
            help=f"let a tail of {_TAIL_MM:g} mm or more stand out behind the pin",
        )


def _falls_out(pawl: _Pawl) -> bool:
    """Its weight turns it about the pin so that the nose goes away from the wheel's axis."""
    way = pawl.wheel.way
    lever = dot(cross(minus(pawl.middle, pawl.pin), _DOWN), way)
    arm = minus(pawl.nose, pawl.pin)
    goes = cross(way, arm)
    inwards = dot(goes, minus(pawl.wheel.origin, pawl.nose))
    return abs(lever) > _NEAR_MM and length(arm) > _NEAR_MM and lever * inwards < 0


def _has_spring(joint: Joint, design: Design) -> bool:
    """A spring beside the pawl in a joint, or in the words of its own joints."""
    pawl = joint.ends[-1].item
    for one in design.joints.values():
        if pawl not in one.items:
            continue
        titles = [item.title for name in one.items if (item := design.item(name)) is not None]
        words = (getattr(one.entry, "feel", None), one.entry.note, *one.items, *titles)
        if any("spring" in str(word).lower() for word in words if word):
            return True
    return False


def _is_loaded(joint: Joint, design: Design) -> bool:
    """Whether what hangs on a drum of its body is held by it."""
    body = turning_of(joint.ends[0].item, design)
    return any(
        one.kind == "winds" and getattr(one.entry, "hangs", False)
        and body is not None and one.ends[0].item in body.items
        for one in design.joints.values()
    )  # fmt: skip
