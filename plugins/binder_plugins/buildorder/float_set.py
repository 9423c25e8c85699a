"""Hubs that screws hold on a shaft as its stops, to the step that sets its end float by them."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Design, Joint, Located, Piece, ShaftFact, Tick, shown_length
from binder_plugins.buildorder.closing import joints_closed_in
from binder_plugins.buildorder.floating import closes_row, shaft_of, shutting
from binder_solid.float_tried import end_floats, float_tried

_SET = "clamped"
_BESIDE = (Located.OUTSIDE, Located.ONE)


def float_set(joint: Joint, one: Assembly, design: Design) -> Iterator[Tick]:
    """A step of its own behind the last joint of the row that an assembly closes."""
    for shaft in _set_behind(joint, one, design):
        yield Tick(f"{one.name} float of {shaft.subject}", (_words(shaft, design),))


def float_words(joint: Joint, one: Assembly, design: Design) -> Iterator[str]:
    """The words of these steps: they name what is laid out for them."""
    yield from (_words(shaft, design) for shaft in _set_behind(joint, one, design))


def _set_behind(joint: Joint, one: Assembly, design: Design) -> Iterator[ShaftFact]:
    """The shafts whose float is set once this joint is closed.

    Before that the hubs stand by eye: bearings that are screwed down afterwards move the faces
    that they run against. Common practice, no source.
    """
    for wanted in end_floats(design):
        shaft = shaft_of(wanted, design)
        if shaft is None or not movable(shaft, design) or not closes_row(wanted, one, design):
            continue
        names = {each.name for each in shutting(wanted, design)}
        last = [each.name for each in joints_closed_in(one, design) if each.name in names]
        if last and last[-1] == joint.name:
            yield shaft


def movable(shaft: ShaftFact, design: Design) -> list[Piece]:
    """The stops of a shaft that can be set along it and then held there by a screw."""
    stops = (shaft.pieces[n] for n in dict.fromkeys(shaft.stops))
    return [
        one for one in stops if one.joint in design.joints and design.joints[one.joint].kind == _SET
    ]


def _words(shaft: ShaftFact, design: Design) -> str:
    title, units = design.parts[shaft.subject].title, design.units
    tried = float_tried(float(shaft.least), float(shaft.most), design)
    least, most = shown_length(shaft.least, units), shown_length(shaft.most, units)
    *others, last = movable(shaft, design)
    held = f"tighten the {others[0].title} in its place, then set" if others else "set"
    stops = [shaft.pieces[n] for n in shaft.stops]
    fellow = next((one for one in stops if one is not last), None)
    apart = ""
    if shaft.span is not None and fellow is not None and shaft.located in _BESIDE:
        middle = shown_length(shaft.span + (shaft.least + shaft.most) / 2, units)
        apart = f" {middle} from the {fellow.title}, face to face over what lies between them,"
    return (
        f"Set the end float of the {title}: {held} the {last.title}{apart} so that {least} to "
        f"{most} is left ({tried}); tighten it there, its screw on its flat, and try again"
    )
