"""Wire and springs: cut, drilled where they are, bent or wound."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.holes import HOLES
from binder_plugins.operations.plain import at_bench, drilled

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def bent(work: Work) -> list[SetUp]:
    """The set-ups of wire or a spring, straight first."""
    stock = work.cut.section_text if work.cut is not None else "wire"
    length = float(work.cut.length) + 2 * work.facing if work.cut is not None else 0.0
    work.takes(length)
    long = work.mm(length) if length else ""
    cut = work.act(
        "saw",
        f"cut off {long} of {stock}, ends square",
        tool="hacksaw or cutters",
        amount=max(work.stock_across, 1.0),
    )
    setups = [at_bench(work, "the wire", "", [cut])]
    located = work.form.located if work.form is not None else ()
    holes = [one for one in located if one.kind in HOLES]
    if holes:
        setups.append(drilled(work, holes))
    shape = work.form.shape if work.form is not None else ""
    if shape == "spring":
        setups.append(_wound(work, located))
    elif shape == "wire":
        said = "; ".join(one.note for one in located if one.kind == "wire")
        act = work.act("bend", f"bend: {said}", feature="bends")
        setups.append(at_bench(work, "the wire", "the first end", [act]))
    return setups


def _wound(work: Work, located: Sequence[Located]) -> SetUp:
    said = "; ".join(one.note for one in located if one.note) or "wind the spring"
    act = work.act("wind", f"wind: {said}", machine="", feature="coils")
    grip = Grip("mandrel, wire through a clamp", "bench", "the wire")
    return SetUp(1, "bench", "", grip, "", (act,))
