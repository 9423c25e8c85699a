"""What was finished together with its mate, as the step tells it that puts it on again: as marked.

A pair of bearings that was reamed in line fits the shaft in one place and one way round only;
so does what was spotted through its mate. Common practice, no source.
"""

from __future__ import annotations

from binder.api import Assembly, Design, Joint, NumberOff, ShaftFact, TogetherFact
from binder_plugins.buildorder.closing import bearing_joints, joints_closed_in

_SPOTTED = "spotted through"


def as_marked(joint: Joint, design: Design) -> str:
    """`each in its own place and its own way round, as marked: `, or ''."""
    if lined_by(joint, design) is None and joint.made != _SPOTTED:
        return ""
    if any(_count(name, design) > 1 for name in joint.items):
        return "each in its own place and its own way round, as marked: "
    return "the same way round as they are marked: "


def each_end(joint: Joint, design: Design) -> str:
    """How bearings of a row come on a shaft from its ends: as they stood when they were reamed."""
    is_lined = any(joint.name in one.joints and one.held for one in design.facts.all(TogetherFact))
    return ", each on its own end and its own way round, as marked" if is_lined else ""


def turned_while_tight(joint: Joint, one: Assembly, design: Design) -> str:
    """`; tighten ... while the cam shaft turns by two fingers`: what is in already tells it."""
    fact = lined_by(joint, design)
    if fact is None:
        return ""
    names = [each.name for each in joints_closed_in(one, design)]
    before = set(names[: names.index(joint.name)]) if joint.name in names else set()
    shafts = [
        f"the {design.parts[each.subject].title}"
        for each in design.facts.all(ShaftFact)
        if before & set(fact.joints) & set(bearing_joints(each))
    ]
    if not shafts:
        return ""
    turn = "turns" if len(shafts) == 1 else "turn"
    return f"; tighten a little at a time, all alike, while {' and '.join(shafts)} {turn} freely"


def lined_by(joint: Joint, design: Design) -> TogetherFact | None:
    """The work in line for which the joint held its parts up; None for other joints."""
    return next(
        (one for one in design.facts.all(TogetherFact) if one.lines and joint.name in one.held),
        None,
    )


def _count(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    return number.count if number is not None else 1
