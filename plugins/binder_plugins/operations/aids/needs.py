"""What a tool that is made is itself made with: chuck, instrument, and what cuts its undercut."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Misread, exact, read_thread
from binder_plugins.operations.aids.owning import in_plain_words, width_mm
from binder_plugins.operations.bench import bench_vice
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from binder.api import Design, Workshop
    from binder_plugins.operations.aids.sizes import Place

_SAME = 1e-6
_JAWS = 3
# So much over its reckoned size a tapping drill may be, in mm; common practice, no source.
_OVER = 0.2
# A hole is drilled so much under the reamer, and a tube so much over its shaft, in mm, with a drill
# that is off by this part of the size at the most; common practice, no source.
_LEFT, _CLEAR, _NEAR = 0.2, 0.05, 0.05


def held_with(across: float, size: float, place: Place) -> dict[str, str]:
    """The words that a recipe's tools leave open, for stock so thick in mm; '' where none is.

    What is turned of it to `size` mm, 0 where none is told, is what must be read.
    """
    workshop = place.design.workshop
    read = exact(round(min(size, across) if size else across, 3))
    finest = workshop.finest(read, read, "outside")
    return {
        "chuck": _chuck(across, place.design),
        "reads": finest.name if finest is not None else "a borrowed instrument",
        "vice": bench_vice(workshop) or "vice",
        "tap_drill": tap_drill(place.thread, workshop),
    }


def holed_with(size: float, place: Place) -> dict[str, str]:
    """What a hole of about that size in mm is drilled, reamed and read with; '' where none is."""
    workshop = place.design.workshop
    mm, near = exact(round(size, 3)), exact(round(max(_NEAR * size, _OVER), 3))
    under = workshop.nearest_drill(mm - exact(_LEFT), near)
    over = workshop.nearest_drill(mm + exact(_CLEAR), exact(0), near)
    reamer = workshop.owns_reamer(mm)
    reads = workshop.finest(mm, mm, "inside")
    return {
        "under_drill": _called(under.name, "drill") if under is not None and size else "drill",
        "over_drill": _called(over.name, "drill") if over is not None and size else "drill",
        "reamer": _called(reamer.name, "reamer") if reamer is not None else "reamer",
        "bore_reads": reads.name if reads is not None else "a borrowed instrument",
    }


def _called(name: str, kind: str) -> str:
    return name if kind in name else f"{name} {kind}"


def groover(wide: float, place: Place) -> dict[str, str]:
    """What cuts an undercut `wide` mm wide: `groover` as a step says it, `groover_tool` as a list.

    The parting tool where it is narrow enough; else a tool that is owned, or made for a groove of
    the model, and no wider; else one that is ground to the undercut.
    """
    workshop = place.design.workshop
    parting = workshop.parting_width
    if parting is not None and float(parting) <= wide + _SAME:
        return _said("parting tool", is_narrower=float(parting) < wide - _SAME)
    for one in in_plain_words(workshop):
        width = width_mm(one) if "grooving tool" in one.lower() else None
        if width is not None and width <= wide + _SAME:
            return _said(f"grooving tool {place.mm(width)} wide", is_narrower=width < wide - _SAME)
    narrow = [(mm, said) for said, mm in place.grooves().items() if mm <= wide + _SAME]
    if narrow:
        width, said = max(narrow)
        return _said(f"grooving tool {said} wide", is_narrower=width < wide - _SAME)
    return _said(f"grooving tool {place.mm(wide)} wide", is_narrower=False)


def _said(tool: str, *, is_narrower: bool) -> dict[str, str]:
    step = f"the {tool.removesuffix(' wide')}{', moved along to that width' if is_narrower else ''}"
    return {"groover": step, "groover_tool": tool}


def _chuck(across: float, design: Design) -> str:
    """A self-centring chuck that grips it, else what grips it best."""
    size = exact(round(across, 3))
    chucks = design.workshop.entry.holding.chucks
    able = [n for n, one in chucks.items() if one.jaws == _JAWS and one.grips.holds(size)]
    others = [one.name for one in design.workshop.holders(size)]
    return next(iter((*able, *others)), "")


def tap_drill(designation: str, workshop: Workshop) -> str:
    """The owned drill that goes before a tap; '' where none does."""
    name = read_thread(designation) if designation else None
    if name is None or isinstance(name, Misread):
        return ""
    try:
        thread = from_name(name)
    except NotMade:
        return ""
    size = exact(round(thread.major_mm - thread.pitch_mm, 3))
    found = workshop.nearest_drill(size, above=exact(_OVER))
    return _called(found.name, "drill") if found is not None else ""
