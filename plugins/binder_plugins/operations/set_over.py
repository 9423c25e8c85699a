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

    The tool post stands on the top-slide: every tool that comes after is as far from square as
    the slide was swung, also in the next grip. Common practice, no source.
    """
    return tuple(replace(one, acts=tuple(_back(work, one.acts))) for one in setups)


def _back(work: Work, acts: Sequence[Act]) -> Iterator[Act]:
    for act, after in pairwise((*acts, None)):
        if act is None:
            continue
        yield act
        if act.act == "taper" and (after is None or after.act != "taper"):
            yield work.act("set-back", _BACK, feature=act.feature, end=act.end)
