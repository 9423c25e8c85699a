"""Where a taper ends at a larger step on the chuck's side: the shoulder is made square.

A tool on the swung slide is as far from square as that stands, and a pointed one as far as its
flank besides, with a round in the corner: what either leaves at a shoulder slopes. Geometry.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.outsides import (
    is_ball,
    is_shaped,
    max_across,
    parting,
    step_name,
)
from binder_plugins.operations.taper_necks import Neck, neck_across, neck_act

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning

_SAME = 1e-6


def far_neck(
    turning: Turning, place: int, free: str, tags: tuple[str, ...], there: float
) -> Iterator[Act]:
    """A taper that grows thinner up to the shoulder ends in a neck; `there` mm is the bar thick.

    No tool faces down to it later without cutting into the cone.
    """
    near, far = _ends(turning, place, free)
    behind = _behind(turning, place, free)
    if not behind or near < far:
        return
    mm, step = turning.work.mm, turning.steps[place]
    blade = float(turning.work.design.workshop.parting_width or 0)
    made = Neck(neck_across(step.end - step.start, (far, near), blade), blade)
    words = (
        f"before the {_title(turning, place, free)} to ⌀{mm(made.across)} with the "
        f"{parting(turning)}, "
        f"ending {mm(_from_end(turning, place, free))} from the end"
    )
    yield neck_act(turning, step_name(turning, place), (free, tags), (there, made), words)


def squared(turning: Turning, place: int, free: str, tags: tuple[str, ...]) -> Iterator[Act]:
    """The shoulder at the big end of a taper, faced once the slide stands at 0° again."""
    near, far = _ends(turning, place, free)
    behind = _behind(turning, place, free)
    if not behind or near > far:
        return
    work = turning.work
    # Behind what is thicker than its foot no knife tool comes down to it from the end.
    front = turning.steps[place + 1 :] if free == "right" else turning.steps[:place]
    is_deep = any(max_across(one) > far + _SAME for one in front)
    tool = "parting tool" if is_deep else "knife tool"
    yield work.act(
        "face-shoulder",
        f"face the shoulder of the {_title(turning, place, free)} square with the {tool}, "
        f"{work.mm(_from_end(turning, place, free))} from the end, in to ⌀{work.mm(far)}, where "
        "the taper ends",
        machine=turning.lathe,
        feature=step_name(turning, place),
        tool=tool,
        size=behind if _is_turned(turning, place, free) else max(behind, work.stock_across),
        end=free,
        tags=(*tags, "outside"),
    )


def _behind(turning: Turning, place: int, free: str) -> float:
    """How thick in mm the step is at which a taper ends on the chuck's side; 0 for no shoulder."""
    if not is_shaped(turning, place) or is_ball(turning, place):
        return 0.0
    step = _next(place, free)
    if not 0 <= step < len(turning.steps) or is_ball(turning, step):
        return 0.0
    one = turning.steps[step]
    side = one.end_across if free == "right" else one.across
    return side if side > _ends(turning, place, free)[1] + _SAME else 0.0


def _is_turned(turning: Turning, place: int, free: str) -> bool:
    """Whether the step at the shoulder is turned before the shoulder is faced."""
    first = turning.plan.first
    return _next(place, free) in first or (bool(turning.plan.second) and place not in first)


def _next(place: int, free: str) -> int:
    """The number of the step on the chuck's side of another."""
    return place - 1 if free == "right" else place + 1


def _title(turning: Turning, place: int, free: str) -> str:
    return step_name(turning, _next(place, free)).replace("_", " ")


def _ends(turning: Turning, place: int, free: str) -> tuple[float, float]:
    """How thick a step is at the end that is worked, and at the chuck's, in mm."""
    step = turning.steps[place]
    ends = (step.across, step.end_across)
    return ends if free == "left" else ends[::-1]


def _from_end(turning: Turning, place: int, free: str) -> float:
    """How far the shoulder is from the end that is worked, in mm."""
    step = turning.steps[place]
    return step.end if free == "left" else turning.length - step.start
