"""The hand of a worm and of its wheel, and which way the wheel turns by it."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Bought, Design, Diagnostic, End, Joint, ThreadFact
from binder_plugins.drive import shaft_codes as codes
from binder_plugins.drive.standing import Axis, axis_of
from binder_plugins.drive.train.bodies import bodies
from binder_solid.forms import Vector
from binder_solid.space import cross, dot, length, minus, plus, unit

_WORDS = re.compile(r"\b(left|right)[- ]hand(?:ed)?\b|\b(LH|RH)\b", re.IGNORECASE)
_SIDES: tuple[tuple[str, Vector], ...] = (
    ("the front", (0.0, -1.0, 0.0)),
    ("the right", (1.0, 0.0, 0.0)),
    ("the top", (0.0, 0.0, 1.0)),
)
_ALONG = 0.999
_ACROSS = 1e-3


def hand_of(joint: Joint, design: Design) -> str:
    """The hand of the worm: as the drive says, else its thread or its own words; else right."""
    said = getattr(joint.entry, "hand", None)
    return str(said) if said else (_told(joint.ends[0], design) or "right")


def check_hands(design: Design) -> Iterator[Diagnostic]:
    """Each worm whose wheel, or whose own thread, tells another hand."""
    for joint in design.joints.values():
        if joint.kind != "worms":
            continue
        hand = hand_of(joint, design)
        for end, what in zip(joint.ends[:2], ("worm", "wheel"), strict=False):
            other = _told(end, design)
            if other is not None and other != hand:
                yield codes.WORM_HAND_WRONG.at(
                    end.at,
                    f"'{end.item}' is a {other}-hand {what}, and the worm of '{joint.name}' "
                    f"{hand}-hand",
                    help=f"cut the worm {other}-hand, and write `hand: {other}`",
                )


def _told(end: End, design: Design) -> str | None:
    """What the thread of a worm tells, or the words by which an item is called."""
    thread = design.facts.about(ThreadFact, str(end))
    if thread is not None and end.place:
        return "left" if thread.designation.endswith(" LH") else "right"
    item = design.item(end.item)
    if item is None:
        return None
    words = f"{item.title} {item.what if isinstance(item, Bought) else ''} {item.note or ''}"
    found = _WORDS.search(words)
    if found is None:
        return None
    return "left" if found[0][0].lower() == "l" else "right"


def turns_by(joint: Joint, design: Design) -> str:
    """Which way the wheel turns, in words; by the model's sides where both stand in it."""
    hand = hand_of(joint, design)
    comes = "come towards you" if hand == "right" else "go away from you"
    words = f"{hand}-hand: seen from where the worm turns clockwise, the wheel's teeth {comes}"
    seen = _seen(joint, hand, design)
    return f"{words}; {seen}" if seen else words


def _seen(joint: Joint, hand: str, design: Design) -> str:
    of = bodies(design)
    ends = [of[end.item].items for end in joint.ends[:2] if end.item in of]
    axes = [axis_of(items, design) for items in ends]
    if len(axes) < 2 or axes[0] is None or axes[1] is None:
        return ""
    sides = [_side(one.way) for one in axes if one is not None]
    if sides[0] is None or sides[1] is None:
        return ""
    spin = wheel_spin(axes[0], axes[1], sides[0][1], is_right=hand == "right")
    if spin is None:
        return ""
    way = "anticlockwise" if dot(spin, sides[1][1]) > 0 else "clockwise"
    return f"seen from {sides[0][0]} the worm clockwise, from {sides[1][0]} the wheel {way}"


def wheel_spin(worm: Axis, wheel: Axis, viewer: Vector, *, is_right: bool) -> Vector | None:
    """The way about which the wheel turns (right-hand rule), the worm clockwise to the viewer.

    `viewer` is the direction in which he stands, along the worm. None where the shafts do not
    pass across one another.
    """
    across = cross(worm.way, wheel.way)
    if length(across) < _ACROSS:
        return None
    normal = unit(across)
    off = dot(minus(worm.origin, wheel.origin), normal)
    if abs(off) < _ACROSS:
        return None
    touch = plus((0.0, 0.0, 0.0), normal, off)
    # A right-hand screw turned clockwise goes away from whoever turns it; one that cannot go
    # draws its nut, and the teeth of its wheel, towards him.
    drawn = plus((0.0, 0.0, 0.0), viewer, 1.0 if is_right else -1.0)
    return unit(cross(touch, drawn))


def _side(way: Vector) -> tuple[str, Vector] | None:
    return next((one for one in _SIDES if abs(dot(one[1], way)) > _ALONG), None)
