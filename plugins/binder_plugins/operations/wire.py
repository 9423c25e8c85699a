"""Wire and springs: cut, drilled where they are, bent or wound."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.hole_kinds import HOLES
from binder_plugins.operations.plain import at_bench, drilled
from binder_plugins.operations.wire_bends import bending, bent_in
from binder_solid.flat_eyes import hammered
from binder_solid.space import dot, length, minus, plus

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def bent(work: Work) -> list[SetUp]:
    """The set-ups of wire or a spring, straight first."""
    stock = work.cut.section_text if work.cut is not None else "wire"
    whole = float(work.cut.length) + 2 * work.facing if work.cut is not None else 0.0
    whole = math.ceil(whole * 10 - 1e-6) / 10  # Nobody cuts wire finer than a tenth.
    work.takes(whole)
    long = work.mm(whole) if whole else ""
    cut = work.act(
        "saw",
        f"cut off {long} of {stock}, ends square",
        tool="hacksaw or cutters",
        amount=max(work.stock_across, 1.0),
    )
    shape = work.form.shape if work.form is not None else ""
    # A spring's ends are cut when it is wound.
    ended = _ended(work, whole) if shape != "spring" else ()
    setups = [at_bench(work, "the wire", "", [cut, *ended])]
    located = work.form.located if work.form is not None else ()
    holes = [one for one in located if one.kind in HOLES]
    flats = [act for one in holes for act in _flattened(work, one)]
    if flats:
        setups.append(at_bench(work, "the wire, its end on a smooth block", "the end", flats))
    if holes:
        setups.append(drilled(work, holes))
    if shape == "spring":
        setups.append(_wound(work, located))
    elif shape == "wire":
        acts = list(bending(work, holes))
        setups.append(at_bench(work, "the wire", "its left-hand end as drawn", acts))
    return setups


def _ended(work: Work, whole: float) -> Iterator[Act]:
    """What was cut over is filed off, before anything is measured from an end."""
    long = round(float(work.cut.length), 1) if work.cut is not None else 0.0
    if 0 < long < whole:
        words = f"file one end square, then the other to {work.mm(long)} over all"
        yield work.act("file", words, feature="ends")


def _flattened(work: Work, one: Located) -> Iterator[Act]:
    """The place of a hole across wire that leaves too little beside it, hammered wide enough."""
    off = _from_end(work, one)
    sizes = hammered(work.stock_across, one.diameter or 0.0, off) if off is not None else None
    if sizes is None:
        return
    long, thick, wide = sizes
    yield work.act(
        "flatten",
        f"flatten the last {work.mm(round(long, 1))} for the {one.name.replace('_', ' ')} to "
        f"{work.mm(round(thick, 1))} thick, {work.mm(round(wide, 1))} wide, with light blows from "
        "both sides; soften it again if it cracks",
        feature=one.name,
    )


def _from_end(work: Work, one: Located) -> float | None:
    """How far a hole across wire is from the nearer end of it, in mm; None where it is none."""
    form = bent_in(work)
    if form is not None:
        ways = (minus(one.spots[0], end) for end in (form.points[0], form.points[-1]))
        return min(length(plus(way, one.frame.z, -dot(way, one.frame.z))) for way in ways)
    if one.face != "across":
        return None
    whole = float(work.cut.length) if work.cut is not None else 0.0
    x = one.spots[0][0]
    return min(x, whole - x) if whole else x


def _wound(work: Work, located: Sequence[Located]) -> SetUp:
    said = "; ".join(one.note for one in located if one.note) or "wind the spring"
    act = work.act("wind", f"wind: {said}", machine="", feature="coils")
    grip = Grip("mandrel, wire through a clamp", "bench", "the wire")
    return SetUp(1, "bench", "", grip, "", (act,))
