"""The blank of a flat part: sawn out, then squared up by what the shop has."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import (
    bench_vice,
    flat_holder,
    lathe_for,
)
from binder_plugins.operations.end_cutters import end_cutter
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.parallels import in_vice
from binder_plugins.operations.pawl_noses import ended, left_on
from binder_plugins.operations.plate_edges import plate_edges
from binder_plugins.operations.sides import SHEET_MM, SHEETS
from binder_plugins.operations.wood_blanks import planed

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.flat import Flat

_AS_BOUGHT = "; sides of a bar that comes just to size stay as bought"
# The cutter in mm that faces are milled with; common practice, no source.
_FACING = 16.0


def saw(flat: Flat) -> None:
    """The stock sawn to a little over size."""
    long, wide, high = flat.form.size
    cut = flat.work.cut
    stock = cut.section_text if cut is not None else "the stock"
    if cut is not None and cut.form in SHEETS:
        long, wide = float(cut.length), float(cut.width or wide)
        over = 2 * flat.work.facing if cut.form == "board" else 1.0
        most = float(cut.section[0]) if len(cut.section) > 1 else wide + over
        wide = max(wide, min(wide + over, most))  # A board that is just as wide stays so.
        flat.work.takes_plate(long + over, wide)
        words = f"saw out {flat.work.mm(long + over)} × {flat.work.mm(wide)} of {stock}"
    else:
        long = (float(cut.length) if cut else long) + 2 * flat.work.facing + left_on(flat.work)
        flat.work.takes(long)
        words = f"saw off {flat.work.mm(long)} of {stock}"
    tool = "tenon saw" if flat.is_wood else "piercing saw" if flat.thin < SHEET_MM else "hacksaw"
    vice = bench_vice(flat.workshop)
    act = flat.work.act("saw", words, tool=tool, amount=max(math.sqrt(wide * high), 1.0))
    flat.add("saw", "", Grip(vice or "by hand", "bench", "the stock"), "", [act])


def blank(flat: Flat) -> None:
    """The faces or edges that all else is measured from."""
    if flat.is_wood:
        planed(flat)
        return
    if flat.is_sheet() and flat.form.shape != "block":
        plate_edges(flat)
    elif _has_raw_faces(flat):
        _six_faces(flat, " × ".join(flat.work.mm(one) for one in flat.form.size))
    else:
        _two_ends(flat)


def _has_raw_faces(flat: Flat) -> bool:
    """Whether the section of the part is smaller than that of the bar, or may be."""
    cut = flat.work.cut
    if cut is not None and cut.is_least:
        return True
    section = sorted(float(one) for one in cut.section) if cut is not None else []
    own = sorted(flat.form.size[1:])
    if len(section) == 1 and cut is not None and cut.form == "square bar":
        section *= 2
    return len(section) < 2 or any(abs(a - b) > 1e-3 for a, b in zip(section, own, strict=False))


def _six_faces(flat: Flat, sizes: str) -> None:
    if not flat.mill:
        _faced_in_the_lathe(flat, sizes)
        return
    cutter, cut = flat.cutter(_FACING), flat.work.cut
    acts = [
        flat.work.act(
            "mill",
            f"mill {words}",
            machine=flat.mill,
            feature=name,
            tool=cutter,
            size=_FACING,
            tags=tags,
        )
        for name, words, tags in _faces(flat)
    ]
    vice = in_vice(flat.workshop, *flat.form.size) or "clamps on the table"
    grip = Grip(vice, "vice", "opposite faces, turned for each", min(flat.form.size[1:]))
    as_bought = _AS_BOUGHT if cut is not None and cut.is_least else ""
    flat.add("mill", flat.mill, grip, f"face 1, then each made face{as_bought}", acts)


def _faces(flat: Flat) -> Iterator[tuple[str, str, tuple[str, ...]]]:
    """The six faces by name, in the order in which each stands on those before it."""
    # The largest face has the least thickness behind it, whichever way the block is drawn.
    sides = zip(reversed(flat.form.size), ("top", "front", "an end"), strict=True)
    (thick, first), (broad, _), (tall, _) = sorted(sides, key=lambda one: one[0])
    thin, wide, long = (flat.work.mm(one) for one in (thick, broad, tall))
    to_jaw = "face 2 square to it: face 1 to the fixed jaw, a round bar at the other"
    yield "face 1", f"face 1, the largest ({first} as drawn), clean", ("datum", "first-datum")
    yield "face 2", to_jaw, ("datum", "second-datum")
    yield "face 3", f"face 3 opposite to face 2, to {wide}", ("datum",)
    yield "face 4", f"face 4 opposite to face 1, to {thin}", ("datum",)
    yield "end 1", "one end square, set up by a square from the vice", ("datum",)
    yield "end 2", f"the other end to {long}", ("datum",)


def _faced_in_the_lathe(flat: Flat, sizes: str) -> None:
    """Without a mill a block is faced in the four-jaw, or filed."""
    across = math.hypot(*flat.form.size[1:])
    lathe = lathe_for(flat.workshop, max(across, flat.form.size[0]))
    holder, kind = flat_holder(flat.workshop, across)
    if lathe and holder:
        acts = [
            flat.work.act(
                "face",
                f"face the six sides in turn, to {sizes}",
                machine=lathe,
                feature="faces",
                size=across,
                times=6,
                tags=("datum",),
            )
        ]
        flat.add(
            "lathe", lathe, Grip(holder, kind, "opposite faces", across), "the first face", acts
        )
        return
    act = flat.work.act("file", f"file the six sides square, to {sizes}", feature="faces", times=6)
    flat.add(
        "bench",
        "",
        Grip(bench_vice(flat.workshop) or "vice", "bench", "its faces"),
        "the first face",
        [act],
    )


def _two_ends(flat: Flat) -> None:
    long = ended(flat.work, flat.form.size[0])
    act, machine = (
        ("mill", flat.mill) if flat.mill and min(flat.form.size[1:]) >= 5 else ("file", "")
    )
    tool, size = end_cutter(flat.workshop) if machine else ("", 0.0)
    acts = [
        flat.work.act(
            act,
            "one end square",
            machine=machine,
            feature="end 1",
            tool=tool,
            size=size,
            amount=8.0,
            tags=("datum",),
        ),
        flat.work.act(
            act,
            f"the other end to {long}",
            machine=machine,
            feature="end 2",
            tool=tool,
            size=size,
            amount=8.0,
            tags=("datum",),
        ),
    ]
    vice = in_vice(flat.workshop, flat.form.size[2]) if machine else bench_vice(flat.workshop)
    grip = Grip(
        vice or "vice", "vice" if machine else "bench", "the bar's faces", flat.form.size[1]
    )
    flat.add("mill" if machine else "bench", machine, grip, "the first end", acts)
