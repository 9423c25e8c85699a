"""What is true because it is cut in one grip: the acts of a set-up to the words that say so."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.lengthwise import has_limits

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Stretch

# What is told to be true to a bore where no step has limits.
_PLAIN = {"turn": "turned outside", "groove": "groove"}


def true_to_one_another(work: Work, steps: Sequence[Stretch], acts: Sequence[Act]) -> str:
    """Steps with limits and bores that get their size in these acts; nothing for less than two.

    A bore that is only drilled here, or left short of its size, is not among them.
    """
    fits, bores = list(_steps(work, steps, acts)), list(_bores(acts))
    cut = {act.act for act in acts}
    if bores and not fits:
        fits = [f"the {said}" for name, said in _PLAIN.items() if name in cut]
    names = [*fits, *bores]
    if len(names) < 2:
        return ""
    return f"{', '.join(names[:-1])} and {names[-1]} true to one another: all in this grip"


def _steps(work: Work, steps: Sequence[Stretch], acts: Sequence[Act]) -> Iterator[str]:
    turned = {act.feature for act in acts if act.act == "turn" and "rough" not in act.tags}
    sizes = [one.across for one in steps if one.name in turned and has_limits(one, work)]
    for one in steps:
        if one.name in turned and has_limits(one, work):
            is_one = sizes.count(one.across) == 1
            said = "" if is_one else f" ({one.name.replace('_', ' ')})"
            yield f"⌀{work.mm(one.across)}{said}"


def _bores(acts: Sequence[Act]) -> Iterator[str]:
    for act in acts:
        is_fit = act.act in {"bore", "taper"} and {"finish", "fit"} <= act.tags
        if act.act == "ream" or is_fit:
            yield act.feature.replace("_", " ")
