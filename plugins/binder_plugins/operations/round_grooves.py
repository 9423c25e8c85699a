"""Grooves and undercuts round turned work, and where they lie from the end that is worked."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.kept_grooves import keeper_of
from binder_plugins.operations.lengthwise import is_turned
from binder_plugins.operations.on_steps import step_of
from binder_plugins.operations.shoulders import thickness
from binder_solid.clip_walls import holds_clip, outer_wall

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located


def groove_act(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Act:
    """The grooves of a feature that are cut in one grip, with where they lie."""
    name = "undercut" if one.kind == "undercut" else "groove"
    half = work.half(one.name)
    what = half.what if half is not None else one.note
    cuts = _cuts(work, form, one)
    if cuts < len(one.spots):
        what = what.replace(f", {len(one.spots)} off", "")
    what += f"{_deep(work, one, what)}, {_from_end(work, form, one, end, cuts)}"
    tool = "grooving tool, its nose round" if "round at its bottom" in what else ""
    keeper = keeper_of(work, one, step_of(form, one))
    if keeper is not None:
        at_mark = what.replace("its middle", "its middle at that mark,")
        what = f"{keeper.words}{at_mark} as drawn"
        tool = f"{tool or 'grooving tool'}, {keeper.tool}"
    if half is not None and half.fed:
        what += f"; {half.fed}"
    act = work.act(
        name,
        what,
        machine=lathe,
        feature=one.name,
        tool=tool,
        size=thickness(form, one.frame.origin[0]),
        end=end,
        tags=tags,
        meets=(step_of(form, one),),
        times=cuts,
    )
    return replace(act, measure=half.gauged) if half is not None and half.gauged else act


def _deep(work: Work, one: Located, what: str) -> str:
    """How deep a groove is where its words tell neither depth nor floor; as it is drawn."""
    if "deep" in what or "⌀" in what or one.diameter is None:
        return ""
    return f", {work.mm(one.depth if one.depth is not None else one.diameter / 2)} deep"


def _from_end(work: Work, form: FormFact, one: Located, end: str, cuts: int) -> str:
    """Where the grooves of a grip lie, from the end that is worked: the middle of each.

    Of a groove for a clip the wall is told that the clip bears on.
    """
    if holds_clip(work.name, one, work.design):
        return _walls(work, form, one, end, cuts)
    places = sorted(form.size[0] - x if end == "right" else x for x, *_ in one.spots)
    told = " and ".join(work.mm(place) for place in places[:cuts])
    return f"{'its middle' if cuts == 1 else 'their middles'} {told} from this end"


def _walls(work: Work, form: FormFact, one: Located, end: str, cuts: int) -> str:
    """The outer walls of grooves for clips, from the end that is worked."""
    walls = (outer_wall(one, x, form.size[0]) for x, *_ in one.spots)
    places = sorted(form.size[0] - wall if end == "right" else wall for wall in walls)
    told = " and ".join(work.mm(round(place, 3)) for place in places[:cuts])
    its = "its outer wall" if cuts == 1 else "their outer walls"
    return f"{its} {told} from this end, any more width inwards of that: the clip bears there"


def _cuts(work: Work, form: FormFact, one: Located) -> int:
    """How many grooves are cut in one grip: one at each end of a bar that stays as bought."""
    step = next((s for s in form.stretches if s.name == step_of(form, one)), None)
    is_bar = step is not None and not is_turned(step, work)
    return 1 if is_bar else len(one.spots)
