"""What is milled, filed and bent on the faces of a flat part."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import exact
from binder_plugins.operations.bench import (
    bench_vice,
)
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.sides import datum

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.flat import Flat
    from binder_solid.facts import Located


def milled(flat: Flat, face: str, found: Sequence[Located]) -> None:
    """Slots, pockets and steps of one face; by hand where there is no mill."""
    if flat.is_wood or not flat.mill:
        acts = [_by_hand(flat, one) for one in found]
        flat.add(
            "bench",
            "",
            Grip(bench_vice(flat.workshop) or "vice", "bench", "its faces"),
            datum(face),
            acts,
        )
        return
    acts = []
    for one in found:
        width = one.diameter or one.width or 6.0
        half = flat.work.half(one.name)
        what = half.what if half is not None and one.kind == "dovetailed" else one.note
        act = "keyway" if one.kind == "keywayed" else "mill"
        if one.kind == "dovetailed":
            acts.append(
                flat.work.act(
                    "mill",
                    "mill the slot or sides square first, to the narrow width",
                    machine=flat.mill,
                    feature=one.name,
                    tool=flat.cutter(width),
                    size=min(width, 12.0),
                )
            )
            acts.append(
                flat.work.act(
                    "mill",
                    what,
                    machine=flat.mill,
                    feature=one.name,
                    tool="dovetail cutter",
                    size=16.0,
                    tags=("finish",),
                )
            )
            continue
        cutter = flat.workshop.widest_end_cutter(exact(min(width, 16.0)), plunging=True)
        name = (
            f"{cutter.name} {'slot drill' if cutter.plunges else 'end mill'}"
            if cutter
            else "slot drill, not owned"
        )
        acts.append(
            flat.work.act(
                act,
                what,
                machine=flat.mill,
                feature=one.name,
                tool=name,
                size=float(cutter.mm) if cutter else width,
                times=len(one.spots),
            )
        )
    _travel(flat)
    flat.add("mill", flat.mill, flat.vice(), datum(face), acts)


def _by_hand(flat: Flat, one: Located) -> Act:
    if one.kind in {"pocketed", "t_slotted", "dovetailed"} and not flat.is_wood:
        words = f"'{one.name}' of '{flat.work.name}' is milled, and no mill is owned"
        flat.trouble.append(("no-machine-for-it", words))
    tool = "chisel and saw" if flat.is_wood else "saw and files"
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
    flat.add(
        "bench",
        "",
        Grip(bench_vice(flat.workshop) or "vice", "bench", "its faces"),
        datum(face),
        acts,
    )


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
