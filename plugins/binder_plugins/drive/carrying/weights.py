"""What the pieces of a body weigh, and how hard they are to set turning, by plain geometry."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace

from binder.api import Design, MaterialFact, Size
from binder_plugins.drive.duties.rings import Ring, rings_of
from binder_plugins.drive.motion.axes import is_round_about
from binder_plugins.drive.pairs.facts import ToothFact
from binder_plugins.drive.standing import Axis, axis_of
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, frame_y, length, minus, placed
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.flywheel import disc_wheel

_PARALLEL = 1e-6


@dataclass(frozen=True, slots=True)
class Weighed:
    """A piece: its mass in kg, and its inertia about the axis of its body in kg·mm².

    The inertia is None where it is not known how the piece stands to the axis.
    """

    mass: float
    inertia: float | None


def weigh(item: str, mates: Collection[str], design: Design) -> Weighed | None:
    """A piece of the body that `mates` make up; None where form or metal are not told.

    Round work as rings, gears to their pitch circle, all else as the box round it: its holes
    and hollows are left out.
    """
    form = design.facts.about(FormFact, item)
    material = design.facts.about(MaterialFact, item)
    if form is None or material is None or material.density is None:
        return None
    density = material.density * 1000
    copies = [one for one in design.facts.all(PlacedFact) if one.item == item]
    axis = axis_of(mates, design)
    if not form.stretches:
        return _box(form, density, copies, axis)
    made = _rings(form, item, density, design)
    if made is None or axis is None or not copies or is_round_about(copies[0], axis, design):
        return made
    return _aside(made, copies[0], axis, form)


def _rings(form: FormFact, item: str, density: float, design: Design) -> Weighed | None:
    rings = [_toothed(one, item, design) for one in rings_of(form)]
    try:
        discs = [disc_wheel(one.across, one.long, density, one.inside) for one in rings]
    except NotDefined:
        return None
    return Weighed(sum(one.mass_kg for one in discs), sum(one.inertia_kgmm2 for one in discs))


def _toothed(ring: Ring, item: str, design: Design) -> Ring:
    """A gear weighs about what a disc of its pitch circle does, saw teeth half of their depth."""
    part, tooth = design.parts.get(item), design.facts.about(ToothFact, item)
    if part is not None and part.shape_kind == "ratchet":
        depth = getattr(part.shape, "depth", None)
        return replace(ring, across=ring.across - depth.mm) if isinstance(depth, Size) else ring
    if tooth is None or tooth.refusal or tooth.gear.is_internal:
        return ring
    is_rim = abs(ring.across - tooth.gear.tip_mm) < 2 * tooth.gear.module_mm
    return replace(ring, across=tooth.gear.pitch_mm) if is_rim else ring


def _aside(made: Weighed, copy: PlacedFact, axis: Axis, form: FormFact) -> Weighed:
    """Round work beside the axis (a crank pin) or across it: as the box that it fits in."""
    along = dot(copy.frame.x, axis.way)
    arm = minus(placed(_middle(copy), copy.frame), axis.origin)
    apart = length(cross(arm, axis.way))
    if abs(abs(along) - 1) < _PARALLEL and made.inertia is not None:
        return Weighed(made.mass, made.inertia + made.mass * apart**2)
    return Weighed(made.mass, _of_box(made.mass, form, copy, axis) + made.mass * apart**2)


def _box(form: FormFact, density: float, copies: list[PlacedFact], axis: Axis | None) -> Weighed:
    x, y, z = form.size
    mass = x * y * z * density * 1e-9
    if axis is None or not copies:
        return Weighed(mass, None)
    arm = minus(placed(_middle(copies[0]), copies[0].frame), axis.origin)
    apart = length(cross(arm, axis.way))
    return Weighed(mass, _of_box(mass, form, copies[0], axis) + mass * apart**2)


def _of_box(mass: float, form: FormFact, copy: PlacedFact, axis: Axis) -> float:
    """Of a box about the axis through its own middle: m (b² + c²) / 12, side by side."""
    x, y, z = (one**2 for one in form.size)
    ways = (copy.frame.x, frame_y(copy.frame), copy.frame.z)
    shares = [dot(way, axis.way) ** 2 for way in ways]
    sides = (y + z, x + z, x + y)
    return mass / 12 * sum(share * side for share, side in zip(shares, sides, strict=True))


def _middle(copy: PlacedFact) -> tuple[float, float, float]:
    (a, b, c), (d, e, f) = copy.corners
    return (a + d) / 2, (b + e) / 2, (c + f) / 2
