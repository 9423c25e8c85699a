"""How far along the work a hole across it lies, told with its first act."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def told_along(work: Work, one: Located, acts: Iterable[Act]) -> Iterator[Act]:
    """The acts of a hole, the first with its place from the end next to it."""
    if work.form is None or one.face != "across":
        yield from acts
        return
    length = work.form.size[0]
    places = sorted({round(x, 3) for x, *_ in one.spots})
    is_left = sum(places) <= length * len(places) / 2
    far = [x if is_left else length - x for x in places]
    told = " and ".join(work.mm(x) for x in sorted(far))
    for number, act in enumerate(acts):
        end = "left" if is_left else "right"
        yield act if number else replace(act, what=f"{act.what}, {told} from the {end}-hand end")
