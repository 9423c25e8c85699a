"""The end floats that an assembly closes, to what its test must find of them."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Assembly, Design, Joint, JointFact, NumberOff, ShaftFact
from binder_plugins.buildorder.closing import homes, housings, insides_of
from binder_solid.float_tried import EndFloat, end_floats, float_wanted, shut_by

_ROW = ": end float"
_OILED = re.compile(r"oil (?P<part>.+?) and slide (?:(?P<it>it)|(?P<mate>.+?) over it)(?P<rest>.*)")


def floats_in(one: Assembly, design: Design) -> Iterator[str]:
    """`'saddle on screw' has 0.1 mm to 0.3 mm of end float`, where the last that stops it goes on.

    For each float that inspection asks for: what an assembly closes is got at there for the last
    time with nothing hung on it.
    """
    for wanted in end_floats(design):
        if closes_row(wanted, one, design):
            yield float_wanted(wanted, design)


def tried_first(joint: Joint, design: Design) -> str:
    """What stands before the step that shuts a float for good; '' for every other joint.

    Common practice, no source.
    """
    found = list(shut_by(joint, design))
    if not found:
        return ""
    told = "; ".join(
        f"{float_wanted(one, design)}, too little: {one.little}, too much: {one.much}"
        for one in found
    )
    freed = {name: None for one in found for name in sorted(one.joints) if name != joint.name}
    oiled = [match["part"] for name in freed if (match := _oiled(name, design)) is not None]
    oil = f"take it apart, wash it, oil {' and '.join(oiled)}; " if oiled else ""
    return (
        f"first put it together dry, each part pushed hard against its shoulder: {told}; then {oil}"
    )


def for_now(joint: Joint, step: str, design: Design) -> str:
    """The step of a joint, without its oil where another one is to be tried dry before it closes.

    What was wrong is mended on dry parts. Common practice, no source.
    """
    found = _OILED.fullmatch(step)
    is_tried = any(
        joint.name in one.joints
        for other in design.joints.values()
        if other.name != joint.name
        for one in shut_by(other, design)
    )
    if found is None or not is_tried:
        return step
    part, mate, rest = found["part"], found["mate"], found["rest"]
    slid = f"slide {part}{rest}" if mate is None else f"slide {mate} over {part}{rest}"
    return f"{slid}, dry for now"


def _oiled(name: str, design: Design) -> re.Match[str] | None:
    fact = design.facts.about(JointFact, name)
    return _OILED.fullmatch(fact.step) if fact is not None else None


def closes_row(wanted: EndFloat, one: Assembly, design: Design) -> bool:
    """Whether an assembly closes the last of the joints that stop a float."""
    insides = insides_of(design)
    found = list(filter(None, (homes(each, insides, design) for each in shutting(wanted, design))))
    return any(one.name in names for names in found) and all(
        one.name in names or insides[one.name] & set(names) for names in found
    )


def shutting(wanted: EndFloat, design: Design) -> list[Joint]:
    """The joints that stop a float, and those that hold the housings between the stops."""
    joints = [design.joints[name] for name in wanted.joints if name in design.joints]
    return [*joints, *_carrying(wanted, design)]


def shaft_of(wanted: EndFloat, design: Design) -> ShaftFact | None:
    """The shaft of which it is the float; None for what turns between two shoulders."""
    return design.facts.about(ShaftFact, wanted.subject.removesuffix(_ROW))


def _carrying(wanted: EndFloat, design: Design) -> Iterator[Joint]:
    """What holds the housings of a shaft apart, where they are several."""
    shaft = shaft_of(wanted, design)
    if shaft is None:
        return
    held = housings(shaft, design)
    if len(held) < 2 and not any(_is_several(name, design) for name in held):
        return
    for joint in design.joints.values():
        fact = design.facts.about(JointFact, joint.name)
        is_fixing = fact is not None and fact.group == "fixing"
        if is_fixing and set(held) & set(joint.items) and shaft.subject not in joint.items:
            yield joint


def _is_several(name: str, design: Design) -> bool:
    number = design.facts.about(NumberOff, name)
    return number is not None and number.count > 1
