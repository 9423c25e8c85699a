"""Threads to what this workshop lacks for them, with the threads that would serve."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import Design, Diagnostic, Labelled
from binder_plugins.threads import codes
from binder_plugins.threads.found import Found, material_of
from binder_plugins.threads.shop import Shop
from binder_trade.drills import NoDrill
from binder_trade.threading import Substitute, screwcutting, substitutes
from binder_trade.threads import MOVING, Thread

_MOST_NAMED = 3
_MOST_PLACES = 5


def check_tools(found: Iterable[Found], shop: Shop, design: Design) -> Iterator[Diagnostic]:
    """One finding for each thread that lacks its tap, die or drill, at its first place."""
    groups: dict[tuple[Thread, bool], list[Found]] = {}
    for one in found:
        groups.setdefault((one.thread, one.is_internal), []).append(one)
    for (thread, is_internal), alike in groups.items():
        if not shop.cuts(thread, is_internal=is_internal):
            yield _not_owned(alike, shop, design)
        elif is_internal:
            yield from _no_drill(alike, shop, design)


def _not_owned(alike: list[Found], shop: Shop, design: Design) -> Diagnostic:
    first = alike[0]
    tool = "tap" if first.is_internal else "die"
    ranked = _substitutes(alike, shop)
    serving = [one for one in ranked if one.serves][:_MOST_NAMED]
    failing = [one for one in ranked if not one.serves][: _MOST_NAMED - len(serving)]
    words = [_worked(one, first, shop, design) for one in serving]
    best = f"{words[0]}; or " if words else ""
    return codes.TAP_OR_DIE_NOT_OWNED.at(
        first.at,
        f"there is no {tool} for {first.thread.designation} in this workshop",
        label=f"{_places(alike)} {'tapped' if first.is_internal else 'threaded'} so",
        related=_elsewhere(alike),
        notes=[*_screwcut(first, design), *words[1:], *(_refused(one) for one in failing)],
        help=f"{best}put the {tool} on the shopping list{_or_else(first)}",
    )


def _or_else(first: Found) -> str:
    """Screws and nuts that move are sold by the length and by the piece."""
    if first.thread.family not in MOVING:
        return ""
    return ", or buy the nut with its thread" if first.is_internal else ", or buy screwed rod"


def _places(alike: list[Found]) -> str:
    count = sum(one.count for one in alike)
    return "1 place is" if count == 1 else f"{count} places are"


def _elsewhere(alike: list[Found]) -> list[Labelled]:
    return [Labelled(one.at, f"here too, in '{one.subject}'") for one in alike[1:_MOST_PLACES]]


def _substitutes(alike: list[Found], shop: Shop) -> tuple[Substitute, ...]:
    lengths = [float(one.length) for one in alike if one.length is not None]
    engaged = min(lengths, default=None)
    walls = [wall for one in alike if (wall := wall_round(one)) is not None]
    return substitutes(alike[0].thread, shop.both_halves, min(walls, default=None), engaged)


def wall_round(found: Found) -> float | None:
    """The metal in mm beside a tapped hole at best: in the middle of its face; None unknown."""
    surface = found.surface
    is_end = found.is_internal and not getattr(found.feature.entry, "across", None)
    if not is_end or surface is None or found.metal is None:
        return None
    if surface.is_round and surface.diameter is not None:
        across = surface.diameter
    elif surface.length is not None and surface.width is not None:
        across = min(surface.length, surface.width)
    else:
        return None
    return max(0.0, (float(across) - found.thread.major_mm) / 2)


def _worked(one: Substitute, first: Found, shop: Shop, design: Design) -> str:
    """`5-40 UNC serves: no. 38 drill, 73 % of thread; +3 % strength ...`."""
    if not first.is_internal:
        blank = screwcutting(one.thread).die_blank_mm
        return f"{one.thread.designation} serves: turn to {blank:.2f} mm; {one.why}"
    chosen = shop.drill_for(one.thread, material_of(first.feature.owner, design))
    if isinstance(chosen, NoDrill):
        return f"{one.thread.designation} serves, but no drill here suits it: {one.why}"
    depth = f"{_drill(chosen.drill.name)}, {chosen.percent.on_chart:.0f} % of thread"
    return f"{one.thread.designation} serves: {depth}; {one.why}"


def _drill(name: str) -> str:
    """`no. 38 drill`, but `drill 2.5 mm`."""
    return name if name.endswith("drill") else f"drill {name}"


def _refused(one: Substitute) -> str:
    return f"{one.thread.designation} is owned, but does not serve: {one.why}"


def _screwcut(first: Found, design: Design) -> Iterator[str]:
    """A lathe with a leadscrew cuts any outside thread."""
    lathes = design.workshop.entry.machines.lathes.values()
    if not first.is_internal and any(lathe.leadscrew is not None for lathe in lathes):
        depth = screwcutting(first.thread).infeeds[0].depth_mm
        yield f"it can be screwcut, {depth:.3f} mm deep, if the change wheels give its pitch"


def _no_drill(alike: list[Found], shop: Shop, design: Design) -> Iterator[Diagnostic]:
    first = alike[0]
    chosen = shop.drill_for(first.thread, material_of(first.feature.owner, design))
    if isinstance(chosen, NoDrill):
        yield codes.DRILL_FOR_THREAD_NOT_OWNED.at(
            first.at, chosen.reason, related=_elsewhere(alike), help=chosen.way_out
        )
