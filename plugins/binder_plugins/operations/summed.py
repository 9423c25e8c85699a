"""Which lengths the routes work to a sum: drawing and inspection tell them as made to suit."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import SummedFact
from binder_solid.facts import FormFact
from binder_solid.suited import suited_lengths

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from binder.api import Design
    from binder_plugins.operations.facts import Act, Route
    from binder_solid.suited import Suited

_SUM, _CLIPS, _LEFT = "= ______", "both clips as measured", "is left of the "
_OVER = " over all"


def summed(routes: Iterable[Route], design: Design) -> Iterator[SummedFact]:
    """Each length of a part that an act of its route works to the sum of a chain."""
    by_item = {one.subject: one for one in routes}
    for one in suited_lengths(design):
        route = by_item.get(one.item)
        for setup in route.setups if route is not None else ():
            act = next((act for act in setup.acts if _works_to(act, one)), None)
            if act is None or route is None:
                continue
            is_groove = act.act == "groove"
            place = act.feature.partition(",")[0] if is_groove else one.step
            moves = not is_groove and not _is_set(route)
            at = _shoulder(act, one, design) if one.step and not moves else None
            name = one.chain.subject
            yield SummedFact(name, one.item, place, setup.number, is_groove, moves, at)
            break


def _works_to(act: Act, one: Suited) -> bool:
    """Whether an act is the one whose words hold the sum."""
    if _SUM not in act.what:
        return False
    if one.link.key.endswith(" walls"):
        return _CLIPS in act.what
    if one.step:
        is_left = f"{_LEFT}{one.step.replace('_', ' ')} " in act.what
        return is_left or (act.act == "turn" and act.feature == one.step)
    return act.act in {"face", "turn"} and _CLIPS not in act.what


def _shoulder(act: Act, one: Suited, design: Design) -> float | None:
    """Which end of a step the act sets: that far from the free end, or that of the step it cuts."""
    form = design.facts.about(FormFact, one.item)
    steps = form.stretches if form is not None else ()
    mine = next((step for step in steps if step.name == one.step), None)
    if mine is None:
        return None
    if act.feature == one.step:
        return mine.end if act.end == "left" else mine.start
    cut = next((step for step in steps if step.name == act.feature), None)
    return mine.start if cut is not None and cut.start < mine.start else mine.end


def _is_set(route: Route) -> bool:
    """Whether a face is cut to the whole length as drawn, wherever the steps come to lie."""
    return any(
        act.act == "face" and _OVER in act.what and _SUM not in act.what for act in route.acts
    )
