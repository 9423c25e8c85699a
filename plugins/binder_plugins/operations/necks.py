"""Cuts on work that a centre carries: grooves while it is up, a die when it is drawn back."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located

# A neck is thin under so much in mm, or under this part of the thickest that is turned with it.
# Common practice, no source.
_THIN_MM, _PART = 3.0, 0.4
_CUT_IN = frozenset({"groove", "undercut"})
_BY_FILE = "with a fine file, lightly, as no centre carries it now: "


def carried(
    turning: Turning, acts: Iterable[Act], end: str, turned: Sequence[int]
) -> Iterator[Act]:
    """The edges, grooves and threads of a grip at an end that a centre carries.

    A groove pushes the work aside, so it is cut before a die has the tailstock for itself; but a
    neck too thin for the torque of the die waits for it, and for the centre to come up again.
    """
    made = list(acts)
    threads = [_located(turning, act) for act in made if act.act == "die"]
    dies = [one for one in threads if one is not None]
    for act in made:
        if act.act == "die":
            back = f"draw the centre back, {act.what}"
            yield replace(act, what=back, tags=act.tags | {"uncarried"})
        elif act.act in _CUT_IN:
            yield _cut_in(turning, act, dies, end, turned)
        else:
            yield act


def _cut_in(
    turning: Turning, act: Act, dies: Sequence[Located], end: str, turned: Sequence[int]
) -> Act:
    one = _located(turning, act)
    is_thin = act.act == "groove" and one is not None and _is_thin(turning, one, turned)
    tags = act.tags | ({"thin-neck"} if is_thin else set())
    if not dies or one is None:
        return replace(act, tags=tags)
    if is_thin and any(_drives(one, die, end) for die in dies):
        return replace(act, what=f"bring the centre up again, {act.what}", tags=tags)
    return replace(act, tags=tags | {"carried"})


def uncarried(acts: Iterable[Act], made: Iterable[Act]) -> Iterator[Act]:
    """What is left to do at an end that a die took its centre from."""
    is_back = any("uncarried" in act.tags for act in made)
    for act in acts:
        yield replace(act, what=f"{_BY_FILE}{act.what}", tool="fine file") if is_back else act


def _located(turning: Turning, act: Act) -> Located | None:
    return next((one for one in turning.around if one.name == act.feature), None)


def _drives(one: Located, die: Located, end: str) -> bool:
    """Whether a groove lies between the grip and the free end of a thread."""
    half, middle, x = (die.length or 0.0) / 2, die.frame.origin[0], one.frame.origin[0]
    return x < middle + half if end == "right" else x > middle - half


def _is_thin(turning: Turning, one: Located, turned: Sequence[int]) -> bool:
    """Whether it leaves a neck too thin to carry the cuts that come after."""
    if one.diameter is None:
        return False
    x = one.frame.origin[0]
    across = min((s.across for s in turning.steps if s.start <= x <= s.end), default=0.0)
    deep = one.depth if one.depth is not None else one.diameter / 2
    thickest = max((turning.steps[i].across for i in turned), default=across)
    return across - 2 * deep < max(_THIN_MM, _PART * thickest)
