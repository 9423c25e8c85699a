"""What is marked on a part before it is filed in words, and the gauge that its round is tried by.

Lines where it begins and ends, and the section on the end that the file comes from: a line alone
tells no radius. Common practice, no source.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import filed_stretch
from binder_solid.rounded import RoundedFact

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Feature
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work

_FROM_END = re.compile(r"\bfrom (the|its|this) (\w+ )?end\b")
_IN_WOOD, _IN_METAL = "square, soft pencil", "scriber, square"
_SAME = 1e-3


def marked(work: Work, one: Feature, cut: Sequence[float]) -> Iterator[Act]:
    """The act that marks it out; nothing where it has neither a stretch nor a section.

    `cut` are the shoulders that stand there already, in mm from the left end: lines as they are.
    """
    if work.form is None or work.form.stretches:
        return
    section = section_of(work, one)
    lines = _lines(one, work.form.size[0], cut, work)
    said = [lines] if lines else []
    said += _drawn(one, section, work.form.size, work) if section is not None else []
    if said:
        is_wood = work.group is None or work.group.name == "wood"
        tools = _IN_WOOD if is_wood else _IN_METAL
        if section is not None:
            tools += ", marking gauge, dividers" if is_wood else ", centre punch, dividers"
        name = one.name.replace("_", " ")
        words = f"{name}: {'; '.join(said)}"
        yield work.act("mark-out", words, feature=f"marks {one.name}", tool=tools)


def section_of(work: Work, one: Feature) -> RoundedFact | None:
    """The section that it is filed round to, where its mate gives one."""
    return work.design.facts.about(RoundedFact, f"{work.name}.{one.name}")


def gauge_of(work: Work, found: RoundedFact) -> str:
    """`half-round gauge ⌀9 mm`: by these words it is made."""
    return f"half-round gauge ⌀{work.mm(2 * found.radius)}"


def _lines(one: Feature, long: float, cut: Sequence[float], work: Work) -> str:
    """Where it begins and ends, but for the ends of the part and the shoulders."""
    stretch = filed_stretch(one)
    if stretch is None:
        return ""
    start, end, side = float(stretch[0]), float(stretch[1]), stretch[2]
    free = [
        x
        for x in (start, end)
        if _SAME < x < long - _SAME
        and all(abs((x if side == "left" else long - x) - at) > _SAME for at in cut)
    ]
    if not free:
        return ""
    lines = "a line" if len(free) == 1 else "lines"
    return f"{lines} all round, {' and '.join(work.mm(x) for x in free)} from the {side} end"


def _drawn(one: Feature, found: RoundedFact, size: Sequence[float], work: Work) -> Iterator[str]:
    """The middle line, the centres and arcs on the end, and where the flats begin."""
    _, wide, high = size
    edges, flats = ("front and back", "top and underside")
    if high > wide:
        edges, flats = flats, edges
    radius = work.mm(found.radius)
    yield f"the middle of the thickness along the {edges}: that line stays"
    end = _end(one)
    if end:
        yield (
            f"the same line across the {end} end, and on it {_centres(work, found)}: strike "
            f"R{radius} with the dividers"
        )
    if found.apart > _SAME:
        yield f"on the {flats} a line {radius} in from either edge, where the round begins"


def _centres(work: Work, found: RoundedFact) -> str:
    if found.apart <= _SAME:
        return "one centre in the middle"
    return f"two centres, {work.mm(found.apart / 2)} to either side of the middle"


def _end(one: Feature) -> str:
    """The end on which the section can be drawn: it is filed alike from there."""
    stretch = filed_stretch(one)
    if stretch is None:
        return ""
    is_from_end = stretch[0] <= 0 or _FROM_END.search(str(getattr(one.entry, "filed", "")))
    return stretch[2] if is_from_end else ""
