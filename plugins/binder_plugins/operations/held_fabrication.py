"""How joined pieces are held for their holes: never by the faces that those go through.

Jaws on those faces leave no way for the drill, and press plates together that lie apart.
Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import vice_for
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.plain import in_pieces
from binder_plugins.operations.words import holding_min
from binder_solid.facts import JoinedFact

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Fabrication
    from binder_plugins.operations.facts import SetUp
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# So many layers of a riveted stack leave room between the outer ones.
_LAYERS = 3
_HIGH = 2
_UP = (("left end", "right end"), ("front", "back"), ("underside", "top"))


def held_for_holes(work: Work, item: Fabrication, holes: Sequence[Located], setup: SetUp) -> SetUp:
    """The set-up with its grip across the holes, and its datum the holes that the pieces bring."""
    joined = work.design.facts.about(JoinedFact, item.name)
    axis, is_far = _face(holes, joined)
    grip = _grip(work, item, _UP[axis][is_far], axis, joined)
    brought = [size for one in holes if (size := in_pieces(work, one))]
    sizes, datum, drills = sorted(set(brought)), setup.datum, []
    if len(brought) == len(holes):
        told = " and ".join(f"⌀{work.mm(size)}" for size in sizes)
        many, each = ("s", "each") if len(brought) > 1 else ("", "it")
        datum = f"the {told} hole{many} there already: its drill, let down, centres {each}"
        drills = [drill_name(work, size, fitted=False) for size in sizes]
    acts = setup.acts
    if acts:
        # What an act names is laid out for it, which the words of a grip alone are not.
        tools = ", ".join(dict.fromkeys([acts[0].tool, *drills, "packing"]))
        acts = (replace(acts[0], tool=tools), *acts[1:])
    return replace(setup, grip=grip, datum=datum, acts=acts, minutes=holding_min(grip.kind))


def by_face(holes: Sequence[Located], joined: JoinedFact | None) -> list[list[Located]]:
    """The holes that are drilled with one face up; for those of another the work is turned.

    What goes right through is drilled with the blind ones of either face that it comes out at.
    """
    blind = [one for one in holes if one.depth is not None]
    groups: dict[tuple[int, bool], list[Located]] = {}
    for one in (*blind, *(one for one in holes if one.depth is None)):
        axis, is_far = _face([one], joined)
        ways = [key for key in groups if key[0] == axis] if one.depth is None else []
        groups.setdefault(ways[0] if ways else (axis, is_far), []).append(one)
    return sorted(
        (sorted(group, key=holes.index) for group in groups.values()),
        key=lambda group: holes.index(group[0]),
    )


def _face(holes: Sequence[Located], joined: JoinedFact | None) -> tuple[int, bool]:
    """Along which of length, width and height the holes go, and whether from its far face.

    What goes through with no blind hole beside it is told from the left, the front and the top;
    where nothing is known a hole goes through the stack.
    """
    names = {one.name for one in holes}
    found = [one for one in joined.located if one.name in names] if joined is not None else []
    if not found:
        return 2, True
    leads = min(found, key=lambda one: one.depth is None)
    axis = max(range(3), key=lambda n: abs(leads.frame.z[n]))
    return axis, axis == _HIGH if leads.depth is None else leads.frame.z[axis] > 0


def _grip(work: Work, item: Fabrication, up: str, axis: int, joined: JoinedFact | None) -> Grip:
    """Across the narrower way of the two that the holes do not take."""
    workshop = work.design.workshop
    size = joined.size if joined is not None else (0.0, 0.0, 0.0)
    ways = [n for n in range(3) if n != axis]
    way = min(ways, key=lambda n: size[n])
    by = "its faces" if way == 2 else "its long edges" if way == 1 else "its ends"
    vice = vice_for(workshop)
    opens = workshop.entry.holding.vices[vice].opens.mm if vice else 0.0
    riveted = item.joined.startswith("riveted")
    heads = " and of the rivet heads" if riveted else ""
    under = f"{up} up and level on packing clear of the hole{heads}"
    if riveted and len(item.stack) >= _LAYERS and axis == 2:
        under += "; the plates packed apart beside the hole"
    if not vice or size[way] > opens:
        return Grip("clamped flat on the table", "plate", f"{by} free, {under}", size[way])
    clear = ", the rivet heads clear of the jaws" if riveted and way == 2 else ""
    return Grip(vice, "vice", f"{by}, {under}{clear}", size[way])
