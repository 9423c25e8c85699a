"""The end floats that an assembly closes, to what its test must find of them."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, ChainFact, Design, exact, shown_length
from binder_plugins.buildorder.closing import joints_closed_in
from binder_solid.float_tried import float_tried


def floats_in(one: Assembly, design: Design) -> Iterator[str]:
    """`'saddle on screw' has 0.1 mm to 0.3 mm of end float`, where what closes it is put on here.

    A row without one joint that closes it is told on its own sheet alone.
    """
    closed = {joint.name for joint in joints_closed_in(one, design)}
    for fact in design.facts.all(ChainFact):
        if fact.closed_by in closed:
            least, most = (
                shown_length(exact(round(mm, 3)), design.units) for mm in (fact.least, fact.most)
            )
            joint = fact.subject.partition(": ")[0]
            tried = float_tried(fact.least, fact.most, design)
            yield f"'{joint}' has {least} to {most} of end float ({tried})"
