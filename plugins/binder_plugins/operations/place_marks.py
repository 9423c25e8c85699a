"""Lines scribed on turned work where something comes that no shoulder stops, before it is fixed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import JointFact
from binder_plugins.operations.plain import at_bench
from binder_solid.outer_stop import outer_stop
from binder_solid.set_there import set_there

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint
    from binder_plugins.operations.facts import SetUp
    from binder_plugins.operations.work import Work

_WITH = "caliper, marking blue, scriber"


def place_marks(work: Work) -> Iterator[SetUp]:
    """One set-up with a line for each place that the words of a joint tell; common practice.

    It comes last: what eases the seat would rub the line away.
    """
    acts = []
    for joint in work.design.joints_at(work.name):
        found = outer_stop(joint, work.design) if _is_told(joint, work.design) else None
        if found is None or found.shaft != work.name or found.face.at is None:
            continue
        other = next(one for one in joint.items if one != work.name)
        item = work.design.item(other)
        title = item.title if item is not None else other
        words = (
            f"blue it and scribe a line round it, {work.mm(found.face.at)} from the left-hand end, "
            f"the jaws of the caliper set to that: the inner face of the {title} comes to it"
        )
        acts.append(work.act("mark-out", words, feature=f"marks {joint.name}", tool=_WITH))
    if acts:
        yield at_bench(work, "by hand", "the left-hand end", acts)


def _is_told(joint: Joint, design: Design) -> bool:
    """Whether the assembly tells it by the line.

    What a screw holds is set by the float of the shaft, what a tube or an end sets by that.
    """
    said = design.facts.about(JointFact, joint.name)
    return said is not None and said.is_lasting and not set_there(joint, design)
