"""A hanging load to whether the model stands under it, from masses and places as they are drawn."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import hypot

from binder.api import CordFact, Design, Diagnostic, Joint, Size
from binder_plugins.drive import cord_codes as codes
from binder_plugins.drive.carrying.weights import weigh
from binder_plugins.drive.cords.passing import pass_min
from binder_plugins.drive.cords.room import room_mm, travel_mm
from binder_plugins.drive.cords.runs import runs_of
from binder_plugins.drive.duties.shown import figure, size
from binder_plugins.drive.train.strength import load_of, tackle_of
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import placed
from binder_solid.stands_at import corners_of
from binder_trade.mechanisms.tipping import SAFE, Tipping, tipping

Flat = tuple[float, float]
# A load so near inside the edge is not worth a line, mm.
_NEAR_MM = 0.5


@dataclass(frozen=True, slots=True)
class Tips:
    """The edge over which a load tips the model, as told, and what the sum about it gives.

    The load hangs `past` mm outside it; what has the edge is `high` mm high.
    """

    edge: str
    made: Tipping
    base: str
    past: float
    high: float


def tips(joint: Joint, design: Design) -> Tips | None:
    """The edge of the part that stands which the load hangs past furthest; None within it.

    Round work weighs as rings, all else as the box round it, holes left out; what is not
    placed does not weigh at all.
    """
    load, spot = load_of(joint), _hangs_at(joint, design)
    base = _base(design)
    if load is None or spot is None or base is None or not getattr(joint.entry, "hangs", False):
        return None
    past, one, other = max(
        (_inside(spot, a, b) * -1.0, a, b) for a, b in _edges(base)
    )  # fmt: skip
    if past < _NEAR_MM:
        return None
    weights = [(mass, _inside(middle, one, other)) for mass, middle in _weights(design)]
    item = design.item(base.item)
    title = item.title if item is not None else base.subject
    return Tips(
        f"the {_side(one, other, base)} edge of the {title}",
        tipping(load, past, weights),
        base.item,
        past,
        _height(base),
    )


def _height(base: PlacedFact) -> float:
    heights = [z for *_, z in corners_of(base)]
    return max(heights) - min(heights)


def _base(design: Design) -> PlacedFact | None:
    """The part that stands: the lowest of those that nothing was put onto."""
    found = [one for one in design.facts.all(PlacedFact) if not one.onto]
    return min(found, key=lambda one: min(c[2] for c in corners_of(one)), default=None)


def _hangs_at(joint: Joint, design: Design) -> Flat | None:
    """Where the load hangs in plan: under its block, or where a single line leaves its sheave."""
    runs = runs_of(joint, design)
    lines = tackle_of(joint).falls
    if not runs:
        return None
    if lines > 1 and len(runs) > 1:
        x, y, _ = runs[1].rounds[1].middle
        return x, y
    if lines > 1:
        return None
    last = runs[-1]
    if last.rounds[1].radius <= 0:
        return None
    # Past the last sheave the line goes straight down on the side away from the drum.
    (x, y, _), (a, b, _) = last.rounds[1].middle, last.rounds[0].middle
    apart = hypot(x - a, y - b)
    share = last.rounds[1].radius / apart if apart else 0.0
    return x + (x - a) * share, y + (y - b) * share


def _weights(design: Design) -> Iterator[tuple[float, Flat]]:
    for one in design.facts.all(PlacedFact):
        made = weigh(one.item, (), design)
        if made is not None and design.facts.about(FormFact, one.item) is not None:
            (a, b, c), (d, e, f) = one.corners
            x, y, _ = placed(((a + d) / 2, (b + e) / 2, (c + f) / 2), one.frame)
            yield made.mass, (x, y)


def _edges(base: PlacedFact) -> Iterator[tuple[Flat, Flat]]:
    """The sides of the box round the base in plan, each with the base on its left."""
    spots = list(corners_of(base))
    xs, ys = ([spot[n] for spot in spots] for n in (0, 1))
    ring = [(min(xs), min(ys)), (max(xs), min(ys)), (max(xs), max(ys)), (min(xs), max(ys))]
    yield from zip(ring, [*ring[1:], ring[0]], strict=True)


def _inside(point: Flat, one: Flat, other: Flat) -> float:
    """How far a point lies on the left of the line from one to the other, in mm."""
    way = (other[0] - one[0], other[1] - one[1])
    return (way[0] * (point[1] - one[1]) - way[1] * (point[0] - one[0])) / hypot(*way)


def _side(one: Flat, other: Flat, base: PlacedFact) -> str:
    if abs(one[0] - other[0]) < abs(one[1] - other[1]):
        return "right-hand" if one[0] > base.frame.origin[0] + 1e-6 else "left-hand"
    return "front" if other[0] > one[0] else "back"


def cord_fact(
    joint: Joint, design: Design, rows: dict[str, str], found: Tips | None, cut: str = ""
) -> CordFact:
    """What other pages tell of a cord, from the rows of its hand and from what tips."""
    load = getattr(joint.entry, "load", None)
    return CordFact(
        joint.name,
        rows.get("Leaves the drum", ""),
        rows.get("Winds up", ""),
        bool(getattr(joint.entry, "hangs", False)),
        found.made.tips_nmm if found is not None else None,
        found.made.holds_nmm if found is not None else None,
        pass_min(joint, design),
        " ".join(str(load.text).split()) if isinstance(load, Size) else "",
        cut,
        travel_mm(joint),
        room_mm(joint, design),
        found.edge if found is not None else "",
        found.past if found is not None else 0.0,
        found.high if found is not None else 0.0,
    )


def tip_row(found: Tips) -> tuple[str, str]:
    """`Tips over` as the page of the drive has it."""
    made = found.made
    words = (
        f"about {found.edge}: the load with {figure(made.tips_nmm)} N·mm, held by the weight "
        f"with {figure(made.holds_nmm)} N·mm, {made.times:.2f} times"
    )
    return "Tips over", words


def check_tipping(design: Design) -> Iterator[Diagnostic]:
    """A finding for each load that the weight of the model does not hold twice over."""
    for joint in design.joints.values():
        found = tips(joint, design) if joint.kind == "winds" else None
        if found is None or found.made.times >= SAFE:
            continue
        made = found.made
        arm = size(made.tips_nmm / (load_of(joint) or 1.0), design)
        base = design.item(found.base)
        yield codes.LOAD_TIPS_MODEL.at(
            base.at if base is not None else joint.at,
            f"the load of '{joint.name}' hangs {arm} past {found.edge}: it tips with "
            f"{figure(made.tips_nmm)} N·mm, and the weight holds with {figure(made.holds_nmm)}",
            help=f"clamp or screw '{found.base}' to the bench and say so there (`because: clamped "
            f"down`), or a base that holds {SAFE:g} times",
        )
