"""The top-slide set over for a taper, and set back before the next tool has to stand square."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act, SetUp
    from binder_plugins.operations.work import Work

_BACK = (
    "stop the lathe, swing the top-slide back to 0° and tighten it; set the tool square again, by "
    "a square against the chuck or the work"
)
_POINTED = "pointed tool"
_SET = (
    "swing the top-slide as the next line tells, set the pointed tool square to the work at centre "
    "height, and try it in the {} before the lathe runs: the shoulder's side stays clear of it"
)
_TO_THE_BOTTOM = f"{_SET.format('neck')} down to the bottom"
# A taper too short for the neck is cut down pass by pass, and the wall behind the point with it.
_IN_THE_MOUTH = (
    f"{_SET.format('mouth of the neck')}; the point is wider than the neck, so stop the lathe "
    "after each cut, and see that it still stays clear one cut deeper"
)


def swung(near_end: float, far_end: float, long: float, *, has_mate: bool) -> str:
    """The small end, the angle of the top-slide, and which way its handle swings for it.

    Both ends and the length are in mm, the near end is that on the tailstock's side. Seen from the
    front of the lathe, the tool on the near side and the handle on the right: on its way to the
    chuck the tool comes out to a cone that grows there, so that the handle's end lies nearer to
    the far side; inside a bore too, where it cuts the near wall. Geometry. The angle of a cone
    with a mate is told as its joint tells it.
    """
    to_tailstock = near_end < far_end
    small = "the tailstock" if to_tailstock else "the chuck"
    way = "away from you" if to_tailstock else "towards you"
    angle = math.degrees(math.atan2(abs(near_end - far_end) / 2, long))
    told = f"{angle:.3f}" if has_mate else f"{angle:.1f}"
    return f"its small end towards {small}, top-slide at {told}°, its handle's end swung {way}"


def swung_back(work: Work, setups: Sequence[SetUp]) -> tuple[SetUp, ...]:
    """The set-ups in their order, the slide set back after the last of each run of tapers.

    A pointed tool is tried in its neck once the slide is swung.

    The tool post stands on the top-slide: every tool that comes after is as far from square as
    the slide was swung, also in the next grip. Common practice, no source.
    """
    return tuple(replace(one, acts=tuple(_back(work, one.acts))) for one in setups)


def _back(work: Work, acts: Sequence[Act]) -> Iterator[Act]:
    for act, after in pairwise((*acts, None)):
        if act is None:
            continue
        if act.act == "taper" and act.tool.startswith(_POINTED):
            yield work.act("try-tool", _tried(act, acts), feature=act.feature, end=act.end)
        yield act
        if act.act == "taper" and (after is None or after.act != "taper"):
            yield work.act("set-back", _BACK, feature=act.feature, end=act.end)


def _tried(taper: Act, acts: Sequence[Act]) -> str:
    """How the tool is tried: down to the bottom of a neck that is wide enough for its point."""
    mine = (one for one in acts if one.feature == taper.feature)
    return _TO_THE_BOTTOM if any(one.is_entered for one in mine) else _IN_THE_MOUTH
