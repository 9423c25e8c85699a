"""Whether a workshop owns a tool that an operation names."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import shown_length
from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.form_cutters import has_grinder

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Mapping

    from binder.api import Workshop
    from binder_plugins.operations.aids.vocabulary import Said

_FIGURE = re.compile(r"\d")
_WIDE = re.compile(r"(\d+(?:\.\d+)?)(?:/(\d+))? ?(mm|in|thou)\b")
_UNITS = {"mm": 1.0, "in": 25.4, "thou": 0.0254}
_SAME = 1e-6


def owns(said: Said, workshop: Workshop) -> bool:
    """Whether it is there: of its size where one is told, else any of its kind."""
    if said.is_missing or said.row.own == "none":
        return False
    if said.row.own == "plain":
        return any(
            said.row.has.search(one) and not _is_too_wide(one, said.words)
            for one in in_plain_words(workshop)
        )
    names = [name for name in _LISTS[said.row.own](workshop) if name]
    if not _FIGURE.search(said.words) or said.row.own in _UNSIZED:
        return bool(names)
    return any(said.words.startswith(name) for name in names)


def width_mm(words: str) -> float | None:
    """The first size that words tell, in mm: `1/32 in`, `0.5 mm`."""
    found = _WIDE.search(words)
    if found is None or (found[2] and not int(found[2])):
        return None
    return float(found[1]) / int(found[2] or 1) * _UNITS[found[3]]


def _is_too_wide(owned: str, asked: str) -> bool:
    """Whether an owned tool that tells its width is wider than the one asked for."""
    wanted, has = (width_mm(one) if " wide" in asked else None for one in (asked, owned))
    return wanted is not None and has is not None and has > wanted + _SAME


def owned_name(said: Said, workshop: Workshop, units: str) -> str:
    """One name for one tool, whatever the words: what it is called here, or with its width."""
    if said.row.own in {"indicators", "calipers", "rules", "heights", "drill_chucks"}:
        return _LISTS[said.row.own](workshop)[0]
    if said.row.own == "vices":
        return bench_vice(workshop) or said.name
    width = workshop.parting_width
    if said.row.own == "parting_tool" and width is not None:
        return f"parting tool {shown_length(width, units)}"
    return said.name


def in_plain_words(workshop: Workshop) -> Iterator[str]:
    """All that the workshop file lists in plain words."""
    entry = workshop.entry
    for one in (*entry.hand_tools, *entry.holding.fixtures, *entry.cutters.others):
        yield str(one)
    yield from entry.machines.others


def _names(things: Iterable[object]) -> list[str]:
    return [str(getattr(one, "name", one)) for one in things]


def _vices(workshop: Workshop) -> list[str]:
    return list(workshop.entry.holding.vices)


def _end(workshop: Workshop, *, plunges: bool) -> list[str]:
    return [one.name for one in workshop.owned.end_cutters if one.plunges == plunges]


def _reading(workshop: Workshop, way: str, called: str) -> list[str]:
    """The instruments that measure so, the finest first, of those that are called so."""
    able = [one for one in workshop.instruments() if way in one.measures]
    able.sort(key=lambda one: one.resolution)
    return [one.name for one in able if re.search(called, one.name, re.IGNORECASE)]


def _told(value: object, name: str) -> list[str]:
    return [name] if value else []


# Lists whose rows the planner has chosen by their size already, in words of its own.
_UNSIZED = frozenset(
    {"boring_bars", "countersinks", "counterbores", "knurls", "dovetail_cutters", "gear_cutters",
     "slitting_saws", "parting_tool", "shanks"}
)  # fmt: skip
_LISTS: Mapping[str, Callable[[Workshop], list[str]]] = {
    "drills": lambda shop: _names(shop.drills()),
    # The shanks that words name were chosen out of the drills that are there.
    "shanks": lambda shop: _names(shop.drills()),
    "reamers": lambda shop: _names(shop.reamers()),
    "taps": lambda shop: [one.designation for one in shop.taps()],
    "dies": lambda shop: [one.designation for one in shop.dies()],
    "end_mills": lambda shop: _end(shop, plunges=False),
    "slot_drills": lambda shop: _end(shop, plunges=True),
    "saws": lambda shop: list(shop.entry.machines.saws),
    "lathes": lambda shop: list(shop.entry.machines.lathes),
    "drill_chucks": lambda shop: list(shop.entry.holding.drill_chucks or ()),
    "vices": _vices,
    "four_jaw": lambda shop: [n for n, one in shop.entry.holding.chucks.items() if one.jaws == 4],
    "faceplate": lambda shop: _told(shop.entry.holding.faceplate, "faceplate"),
    "angle_plate": lambda shop: _told(shop.entry.holding.angle_plate, "angle plate"),
    "parting_tool": lambda shop: _told(shop.entry.cutters.parting_tool, "parting tool"),
    "grinder": lambda shop: _told(has_grinder(shop), "grinder"),
    "indicators": lambda shop: _reading(shop, "run-out", ""),
    "calipers": lambda shop: _reading(shop, "outside", "caliper"),
    "rules": lambda shop: _reading(shop, "outside", r"\brule\b"),
    "heights": lambda shop: _reading(shop, "height", ""),
    "boring_bars": lambda shop: _told(shop.entry.cutters.boring_bars, "boring bar"),
    "countersinks": lambda shop: _told(shop.entry.cutters.countersinks, "countersink"),
    "counterbores": lambda shop: _told(shop.entry.cutters.counterbores, "counterbore"),
    "knurls": lambda shop: _told(shop.entry.cutters.knurls, "knurls"),
    "dovetail_cutters": lambda shop: _told(shop.entry.cutters.dovetail_cutters, "dovetail cutter"),
    "gear_cutters": lambda shop: _told(shop.entry.cutters.gear_cutters, "gear cutter"),
    "slitting_saws": lambda shop: _told(shop.entry.cutters.slitting_saws, "slitting saw"),
}
