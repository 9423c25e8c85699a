"""Shapes of the wider vocabulary to what is wrong with them, before anything is made of them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

from binder.api import Diagnostic, Part, Size, Span
from binder_plugins.shapes import codes, shape_codes
from binder_plugins.shapes.vocabulary.rods import Sheet, Tube, Wire
from binder_plugins.shapes.vocabulary.toothed import Gear, Rack, Ratchet, Sprocket
from binder_plugins.shapes.vocabulary.wheels import Profile, Pulley, Spring, Wheel


def shape_faults(part: Part) -> Iterator[Diagnostic]:
    """Findings about a part's shape; none for the plain shapes, whose sizes are always whole."""
    look = _LOOKS.get(type(part.shape))
    if look is not None:
        yield from look(part, part.shape)


def _tube(part: Part, shape: Tube) -> Iterator[Diagnostic]:
    if shape.bore.exact >= shape.outside.exact:
        yield _order(shape.bore.span, part, "the bore is as wide as the tube")


def _order(at: Span, part: Part, words: str) -> Diagnostic:
    return shape_codes.SIZES_OUT_OF_ORDER.at(at, f"'{part.name}': {words}")


def _wire(part: Part, shape: Wire) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.rods import path_fault

    fault = path_fault(shape)
    if fault is not None:
        number, words = fault
        yield shape_codes.BEND_NO_ROOM.at(
            shape.points[number].x.span,
            f"point {number + 1} of '{part.name}': {words}",
            help="a smaller `bend:`, or the points farther apart",
        )


def _sheet(part: Part, shape: Sheet) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.bends import fault_of as bend_fault
    from binder_plugins.shapes.forming.outline import fault_of
    from binder_plugins.shapes.forming.sheet import sheet_nodes

    if shape.points:
        fault = fault_of(sheet_nodes(shape))
        if fault is not None:
            yield _point(part, shape.points[fault[0]].x.span, fault)
        yield from _outside(part, shape)
    fault = bend_fault(shape) if shape.bends else None
    if fault is not None:
        yield shape_codes.BEND_NO_ROOM.at(
            shape.bends[fault[0]].at.span,
            f"bend {fault[0] + 1} of '{part.name}': {fault[1]}",
            help="a smaller `inside:`, or a longer leg",
        )


def _outside(part: Part, shape: Sheet) -> Iterator[Diagnostic]:
    """Points past the rectangle that the part is cut from."""
    for one in shape.points or ():
        for size, most in ((one.x, shape.length), (one.y, shape.width)):
            if not 0 <= size.exact <= most.exact:
                yield codes.SIZES_DO_NOT_ADD.at(
                    size.span,
                    f"a point of '{part.name}' lies outside its length or width",
                    help="measure from the lower left corner, or make the sheet larger",
                )


def _point(part: Part, at: Span, fault: tuple[int, str]) -> Diagnostic:
    return shape_codes.OUTLINE_OPEN.at(
        at,
        f"point {fault[0] + 1} of '{part.name}': {fault[1]}",
        help="look at its place, its radius, and the points beside it",
    )


def _profile(part: Part, shape: Profile) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.outline import fault_of
    from binder_plugins.shapes.forming.profiles import profile_nodes

    points = shape.points
    fault = fault_of(profile_nodes(shape))
    bad = next((n for n, one in enumerate(points) if one.diameter.exact < 0), None)
    if bad is not None:
        fault = bad, "a diameter is not under nothing"
    elif points[0].at.exact != 0:
        fault = 0, "the first point lies at 0 mm"
    elif any(not 0 <= one.at.exact <= points[-1].at.exact for one in points):
        fault = len(points) - 1, "the last point lies farthest to the right"
    if fault is not None:
        number = min(fault[0], len(points) - 1)
        yield _point(part, points[number].at.span, (number, fault[1]))


def _toothed(part: Part, shape: Gear | Rack | Ratchet | Sprocket) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.toothed import has_order, module_of, teeth_of
    from binder_solid.faults import Unbuildable

    if isinstance(shape, (Gear, Rack)) and module_of(shape) is None:
        yield _missing(part, "teeth of no size", "write `module: 1 mm`, or `dp: 20`")
        return
    if isinstance(shape, Rack) and shape.height.mm <= 2.25 * (module_of(shape) or 0.0):
        yield _order(shape.height.span, part, "the rack is no higher than its teeth")
        return
    try:
        teeth_of(shape)
    except Unbuildable as fault:
        yield shape_codes.TEETH_CANNOT_BE.at(
            shape.width.span,
            f"'{part.name}': {fault.reason}",
            help="more teeth, a smaller module or pitch, or shallower ones",
        )
        return
    if isinstance(shape, Gear) and not has_order(shape):
        at = shape.outside.span if shape.outside is not None else part.at
        yield _order(at, part, "an internal gear needs an `outside` over the roots of its teeth")


def _missing(part: Part, words: str, way_out: str) -> Diagnostic:
    return codes.SIZE_MISSING.at(part.at, f"'{part.name}' has {words}", help=way_out)


def _pulley(part: Part, shape: Pulley) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.wheels import pulley_fault

    if shape.groove != "flat" and shape.belt is None:
        yield _missing(part, "a groove of no size", "write `belt:`, its width or diameter")
        return
    fault = pulley_fault(shape)
    if fault is not None:
        yield _order((shape.belt or shape.width).span, part, fault)


def _wheel(part: Part, shape: Wheel) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.wheels import wheel_fault

    if part.shape_kind == "flywheel" and shape.width is None:
        yield _missing(part, "a rim of no width", "write `width:`")
    elif shape.web is None and (shape.spoke is None or shape.spokes is None):
        yield _missing(
            part, "nothing between hub and rim", "write `spokes:` and `spoke:`, or `web:`"
        )
    fault = wheel_fault(part, shape)
    if fault is not None:
        yield _order(fault[1].span, part, fault[0])


def _spring(part: Part, shape: Spring) -> Iterator[Diagnostic]:
    from binder_plugins.shapes.forming.springs import mean_of, wound
    from binder_solid.faults import Unbuildable

    if mean_of(shape) is None:
        yield _missing(part, "coils of no diameter", "write `outside:` or `mean:`")
        return
    if shape.kind == "compression" and shape.free is None:
        yield _missing(part, "no free length", "write `free:`")
        return
    try:
        wound(shape)
    except Unbuildable as fault:
        at: Size = shape.free or shape.coils
        yield _order(at.span, part, fault.reason)


_LOOKS: dict[type, Callable[[Part, Any], Iterator[Diagnostic]]] = {
    Tube: _tube,
    Wire: _wire,
    Sheet: _sheet,
    Profile: _profile,
    Gear: _toothed,
    Rack: _toothed,
    Ratchet: _toothed,
    Sprocket: _toothed,
    Pulley: _pulley,
    Wheel: _wheel,
    Spring: _spring,
}
