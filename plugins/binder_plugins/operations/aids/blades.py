"""How long the blade of a grooving tool is: its blank clears what stands beside the groove."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Misread, read_thread
from binder_solid.facts import FormFact
from binder_trade.threading import screwcutting
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.aids.sizes import Place
    from binder_solid.facts import Stretch

# How wide in mm the blank is behind its blade, to one side of it at the most: as the recipes say.
_BLANK = 6.0
# So much longer than it goes in a blade is, in mm, and to what its length is rounded up; common
# practice, no source.
_CLEAR, _TO = 0.5, 0.5
_GROOVES = frozenset({"grooved", "undercut"})
_SHAPING = frozenset({"turn", "taper"})
_SAME = 1e-6


def blade(place: Place) -> float:
    """How long the blade is in mm that cuts what is told at a place; 0 where that is unknown."""
    reach = max((*_of_part(place), _of_stub(place)), default=0.0)
    return math.ceil((reach + _CLEAR) / _TO - _SAME) * _TO if reach > _SAME else 0.0


def _of_part(place: Place) -> Iterator[float]:
    """From the floor of each groove of the act up to the highest step that the blank passes."""
    form = place.design.facts.about(FormFact, place.route.subject)
    if form is None or place.act is None or place.making:
        return
    for one in form.located:
        if one.name != place.act.feature or one.kind not in _GROOVES or one.face != "across":
            continue
        wide = one.diameter or 0.0
        deep = one.depth if one.depth is not None else wide / 2
        for x, *_ in one.spots:
            own = [s for s in form.stretches if s.start - _SAME <= x <= s.end + _SAME]
            near, far = x - wide / 2 - _BLANK, x + wide / 2 + _BLANK
            tops = [_top(s, place) for s in form.stretches if s.start < far and s.end > near]
            if own and tops:
                yield max(tops) - own[0].across / 2 + deep


def _top(step: Stretch, place: Place) -> float:
    """How high a step stands over the axis, in mm; one turned in a later grip is bar until then."""
    across = max(step.across, step.end_across)
    later = (one for one in place.route.setups if one.number > place.setup.number)
    if any(a.act in _SHAPING and a.feature == step.name for one in later for a in one.acts):
        across = max(across, place.setup.grip.across)
    return across / 2 / (math.cos(math.pi / step.corners) if step.corners else 1.0)


def _of_stub(place: Place) -> float:
    """From the neck of a stub's thread up to the bar that is its shoulder."""
    name = read_thread(place.thread) if place.making and place.thread else None
    if name is None or isinstance(name, Misread):
        return 0.0
    try:
        neck = screwcutting(from_name(name)).groove_diameter_mm
    except NotMade:
        return 0.0
    return max(place.bar - float(neck), 0.0) / 2
