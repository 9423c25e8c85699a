"""What is milled, filed and bent on the faces of a flat part."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import Size, exact
from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.hole_kinds import through
from binder_plugins.operations.parallels import clear_of_cuts
from binder_plugins.operations.sides import SAME_MM, datum
from binder_solid.open_ends import open_along

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.flat import Flat
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


# A slot drill of the long series cuts so many of its diameters deep; from memory of DIN 327.
_REACH = 2.0
_BOTH_SIDES = "; half way from each face, turned over on the same edges"
_FILED = "filed "
# Bright bar springs where so much of its thickness goes from one side, and it is so slender; so
# much is left on it for the last cut, in mm. Common practice, no source.
_MUCH, _SLENDER, _LEFT_MM = 0.4, 10.0, 0.3
# What a dovetail that is made to its measured mate is left by the end mill, across, in mm: common
# practice, no source.
_SPARE_MM = 0.5


def milled(flat: Flat, face: str, found: Sequence[Located]) -> None:
    """Slots, pockets and steps of one face; by hand where there is no mill."""
    if flat.is_wood or not flat.mill:
        flat.add("bench", "", _in_vice(flat), datum(face), [_by_hand(flat, one) for one in found])
        return
    acts: list[Act] = []
    for one in found:
        cuts = _dovetailed(flat, one) if one.kind == "dovetailed" else _milled(flat, one)
        acts += _let_go(flat, one, list(cuts))
    _travel(flat)
    grip, clear = clear_of_cuts(flat.vice(), flat.form.size, face, found, flat.work)
    flat.add("mill", flat.mill, grip, datum(face), acts, true=clear)
    filed = [act for one in found for act in _filed_after(flat, one)]
    if filed:
        flat.add("bench", "", _in_vice(flat), datum(face), filed)


def _in_vice(flat: Flat) -> Grip:
    return Grip(bench_vice(flat.workshop) or "vice", "bench", "its faces")


def _let_go(flat: Flat, one: Located, cuts: list[Act]) -> list[Act]:
    """A bright bar that loses much of one side springs: roughed, let go, held lightly, finished."""
    long, _, high = flat.form.size
    is_bright = "bar" in flat.work.stock_form
    if not is_bright or (one.depth or 0.0) < _MUCH * high or long < _SLENDER * high:
        return cuts
    said = one.name.replace("_", " ")
    first = cuts[0]
    rough = flat.work.act(
        "mill",
        f"rough the {said}, {flat.work.mm(_LEFT_MM)} left all over",
        machine=flat.mill,
        feature=one.name,
        tool=first.tool,
        size=first.size,
        tags=("rough",),
    )
    words = "slacken the clamps and let the bar spring; shim it where it rocks, clamp it lightly; "
    return [rough, replace(first, what=f"{words}{first.what}"), *cuts[1:]]


def _milled(flat: Flat, one: Located) -> Iterator[Act]:
    width = one.diameter or one.width or 6.0
    cutter = flat.workshop.widest_end_cutter(exact(min(width, 16.0)), plunging=True)
    name = f"{cutter.name} slot drill" if cutter else "slot drill, not owned"
    size = float(cutter.mm) if cutter else width
    deep = through(one, flat.form.size)
    turned = _BOTH_SIDES if one.depth is None and deep > _REACH * size else ""
    yield flat.work.act(
        "keyway" if one.kind == "keywayed" else "mill",
        f"{one.note}{widened(flat.work, one, size)}{turned}",
        machine=flat.mill,
        feature=one.name,
        tool=name,
        size=size,
        times=len(one.spots),
    )


def _filed_after(flat: Flat, one: Located) -> Iterator[Act]:
    """The filing that a note orders: `filed to the helve`."""
    feature = flat.work.feature(one.name)
    note = str(getattr(feature.entry, "note", None) or "") if feature is not None else ""
    if note.startswith(_FILED):
        words = f"file the {one.name.replace('_', ' ')} {note.removeprefix(_FILED)}"
        yield flat.work.act("file", words, feature=one.name, tags=("finish",))


def widened(work: Work, one: Located, cutter: float) -> str:
    """A slot wider than its cutter is opened out to both sides of the first cut."""
    width = one.diameter or 0.0
    if one.kind not in {"slotted", "keywayed"} or width <= cutter + SAME_MM:
        return ""
    return f"; open it from {work.mm(cutter)} to {work.mm(width)}, both sides alike"


def _dovetailed(flat: Flat, one: Located) -> Iterator[Act]:
    """Square first with an end mill, then the flanks."""
    feature = flat.work.feature(one.name)
    entry = feature.entry if feature is not None else None
    width, depth = one.diameter or 6.0, getattr(entry, "depth", None)
    half = flat.work.half(one.name)
    # What is made to a measured mate may come out narrower, or wider, than it is drawn.
    spare = 0.0 if half is None or half.is_master else _SPARE_MM
    deep = f", {flat.work.mm(depth.mm)} deep" if isinstance(depth, Size) else ""
    wide = flat.work.mm(round(width - spare, 1 if spare else 6))
    more = f" and {flat.work.mm(spare)} more" if spare else ""
    words = (
        f"mill the slot square first, {wide} wide{deep}{_whole_length(flat, one)}"
        if getattr(entry, "inside", False)
        else f"mill both sides square first{deep}, the width across the top of the tail{more} left"
    )
    yield flat.work.act(
        "mill",
        words,
        machine=flat.mill,
        feature=one.name,
        tool=flat.cutter(width),
        size=min(width, 12.0),
    )
    yield flat.work.act(
        "mill",
        half.what if half is not None else one.note,
        machine=flat.mill,
        feature=one.name,
        tool=_dovetail_cutter(flat),
        size=16.0,
        tags=("finish",),
        half=half,
    )
    if half is not None and half.eased:
        yield flat.work.act(
            "file", half.eased, feature=one.name, tool="saw and files", tags=("finish",)
        )


def _whole_length(flat: Flat, one: Located) -> str:
    """That the cutter goes in at one end and comes out at the other."""
    return ", from end to end" if open_along(one, flat.form.size) is not None else ""


def _dovetail_cutter(flat: Flat) -> str:
    owned = flat.workshop.entry.cutters.dovetail_cutters
    if not owned:
        return "dovetail cutter, not owned"
    best = max(owned, key=lambda one: one.width.mm)
    return f"{flat.work.mm(best.diameter.mm)} dovetail cutter, {float(best.angle.exact):g}°"


def _by_hand(flat: Flat, one: Located) -> Act:
    if one.kind in {"pocketed", "t_slotted", "dovetailed"} and not flat.is_wood:
        words = f"'{one.name}' of '{flat.work.name}' is milled, and no mill is owned"
        flat.trouble.append(("no-machine-for-it", words))
    tool = "tenon saw, chisel" if flat.is_wood else "saw and files"
    return flat.work.act(
        "file",
        f"{'cut' if flat.is_wood else 'drill, saw and file'}: {one.note}",
        feature=one.name,
        tool=tool,
        times=len(one.spots),
    )


def _travel(flat: Flat) -> None:
    mill = flat.workshop.entry.machines.mills.get(flat.mill)
    if mill is not None and flat.form.size[0] > mill.travels.x.mm:
        words = (
            f"'{flat.work.name}' is {flat.form.size[0]:g} mm long; the {flat.mill} "
            f"travels {mill.travels.x.mm:g} mm"
        )
        flat.trouble.append(("mill-travel-too-short", words))


def edged(flat: Flat, face: str, found: Sequence[Located]) -> None:
    """Rounded and bevelled edges, by file."""
    acts = [
        flat.work.act(
            "file",
            one.note,
            feature=one.name,
            tool="files and radius gauge" if one.kind == "rounded" else "file",
        )
        for one in found
    ]
    flat.add("bench", "", _in_vice(flat), datum(face), acts)


def bends(flat: Flat) -> None:
    """The bends, the first one as the inner."""
    found = [one for one in flat.form.located if one.kind.startswith("bend")]
    if not found:
        return
    acts = [
        flat.work.act(
            "bend",
            one.note,
            feature=one.name,
            tags=("inner",) if n == 0 and len(found) > 1 else ("outer",),
        )
        for n, one in enumerate(found)
    ]
    flat.add(
        "bench",
        "",
        Grip("bending bars in the vice", "bench", "beside the bend line"),
        "the bend line",
        acts,
    )
