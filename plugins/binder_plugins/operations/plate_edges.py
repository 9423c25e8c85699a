"""The edges of plate and sheet: stood up in the vice, laid flat where they would bend, or filed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, vice_for
from binder_plugins.operations.end_cutters import end_cutter
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.parallels import ON_PARALLELS, in_vice, jaw_depth
from binder_plugins.operations.sides import EDGES_UP, SHEET_MM

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.flat import Flat

# Plate that stands more than so many of its thicknesses out of the jaws bends away from the cutter
# and chatters; plates held together are not one piece and bend each by itself. Common practice,
# no source.
_STANDS = 5.0
_ON_TABLE = "clamped flat on the table, on packing"
_BEYOND_PACKING = "each edge in turn just beyond the packing"
_BEYOND_JAWS = "its made edges, the end just beyond the jaws and the parallels"
_BY_SQUARE = (
    "the first edge along the travel of the table; for what follows a made edge by the square"
)
_SIDE = ", with the side of the cutter"
_FIRST, _SECOND = ("datum", "first-datum"), ("datum", "second-datum")


def plate_edges(flat: Flat) -> None:
    """Two edges square to each other, then the others to size."""
    long, wide = flat.form.size[0], flat.form.size[1]
    if flat.form.shape == "sheet" and flat.work.cut is not None:
        long, wide = float(flat.work.cut.length), float(flat.work.cut.width or wide)
    pair = f", {flat.work.count} together" if flat.work.count > 1 else ""
    thick = flat.thin * (flat.work.count if pair else 1)
    if flat.thin < SHEET_MM or not flat.mill:
        grip = Grip(f"{bench_vice(flat.workshop) or 'vice'}{pair}", "bench", "its faces", thick)
        flat.add("bench", "", grip, "the first edge and end", _all(flat, long, wide, "file"))
        return
    vice = vice_for(flat.workshop)
    bends = [_bends(flat, high) for high in (wide, long)]
    if not any(bends):
        acts = _all(flat, long, wide, "mill")
        held = in_vice(flat.workshop, wide, long) or "vice"
        standing = Grip(f"{held}{pair}", "vice", EDGES_UP, thick)
        flat.add("mill", flat.mill, standing, "the first edge and end", acts)
    elif bends[0] or not _opens(flat, wide):
        acts = _all(flat, long, wide, "mill", _SIDE)
        faces = f"its faces, {_BEYOND_PACKING}"
        grip = Grip(f"{_ON_TABLE}{pair}", "plate", faces, thick)
        flat.add("mill", flat.mill, grip, "the first edge and end", acts, true=_BY_SQUARE)
    else:
        standing = Grip(f"{in_vice(flat.workshop, wide)}{pair}", "vice", EDGES_UP, thick)
        flat.add("mill", flat.mill, standing, "the first edge", _edges(flat, long, wide))
        on = f"{flat.work.count} together, {_BEYOND_JAWS}" if pair else _BEYOND_JAWS
        grip = Grip(f"{vice}, {ON_PARALLELS}", "vice", on, wide)
        flat.add(
            "mill", flat.mill, grip, "the first edge to the fixed jaw", _ends(flat, long, wide)
        )


def _bends(flat: Flat, high: float) -> bool:
    """Whether plate so high in mm, an edge of it up, stands too far out of the jaws."""
    return high - jaw_depth(flat.workshop) > _STANDS * flat.thin


def _opens(flat: Flat, wide: float) -> bool:
    vice = flat.workshop.entry.holding.vices.get(vice_for(flat.workshop))
    return vice is not None and wide <= vice.opens.mm


def _all(flat: Flat, long: float, wide: float, act: str, said: str = "") -> list[Act]:
    """An edge, an end square to it, and the others to `long` × `wide` mm."""
    sizes = f"{flat.work.mm(long)} × {flat.work.mm(wide)}"
    return [
        _act(flat, act, f"{act} one long edge straight{said}", "edge 1", long, _FIRST),
        _act(flat, act, f"{act} one end square to it", "edge 2", wide, _SECOND),
        _act(flat, act, f"the others to {sizes}", "edges", long + wide),
    ]


def _edges(flat: Flat, long: float, wide: float) -> list[Act]:
    """Both long edges, while the plate stands on one of them."""
    return [
        _act(flat, "mill", "mill one long edge straight", "edge 1", long, _FIRST),
        _act(flat, "mill", f"the other to {flat.work.mm(wide)}", "edges", long),
    ]


def _ends(flat: Flat, long: float, wide: float) -> list[Act]:
    """Both ends, the plate lying between its made edges."""
    return [
        _act(flat, "mill", f"mill one end square{_SIDE}", "edge 2", wide, _SECOND),
        _act(flat, "mill", f"the other end to {flat.work.mm(long)}", "ends", wide),
    ]


def _act(
    flat: Flat, act: str, words: str, feature: str, cut: float, tags: tuple[str, ...] = ()
) -> Act:
    """One act over `cut` mm of edge."""
    machine = flat.mill if act == "mill" else ""
    tool, size = end_cutter(flat.workshop) if machine else ("", 0.0)
    return flat.work.act(
        act,
        words,
        machine=machine,
        feature=feature,
        tool=tool,
        size=size,
        amount=cut / 3,
        tags=tags,
    )
