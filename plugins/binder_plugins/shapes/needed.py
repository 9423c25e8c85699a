"""What a shape needs, whatever it is cut from: its length and the section round it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from binder.api import Part, Size, Stock
from binder_plugins.shapes.blanks import flat_size, round_size, wire_size
from binder_plugins.shapes.kinds import Block, Board, Disc, Plate
from binder_plugins.shapes.turned import Measured, bar_needed
from binder_plugins.shapes.vocabulary.rods import Tube
from binder_plugins.shapes.vocabulary.toothed import Gear, Ratchet, Sprocket

ZERO = Fraction(0)
_ROUND = ("round bar", "drawn rod", "wire", "tube")


@dataclass(frozen=True, slots=True)
class Needed:
    """Length and section in mm: `round` is a diameter, `flat` are width and thickness.

    `width` is that of a blank of sheet or plate. `because` says how length and section
    were found; `wall` is that of a tube, `over` what a bar must have beyond its steps.
    """

    length: Fraction
    because: str
    round: Fraction | None = None
    flat: tuple[Fraction, Fraction] | None = None
    width: Fraction | None = None
    as_bought: Stock | None = None
    steps: tuple[Measured, ...] = ()
    wall: Fraction = ZERO
    over: Fraction = ZERO

    def in_form(self, form: str) -> tuple[Fraction, ...] | None:
        """The least section of a form that holds the shape; None where it cannot be."""
        if self.as_bought is not None:
            return tuple(size.exact for size in self.as_bought.sizes)
        if form == "casting":
            return ()
        if self.round is not None:
            return self._round_in(form, self.round)
        return self._flat_in(form) if self.flat is not None else None

    def _round_in(self, form: str, diameter: Fraction) -> tuple[Fraction, ...] | None:
        if form == "tube":
            return (diameter, self.wall)
        if form in (*_ROUND, "hexagon bar", "square bar"):
            steps = [one.step for one in self.steps]
            return (bar_needed(steps, form) + self.over if steps else diameter,)
        if form == "board":
            return (diameter, diameter)
        if form in ("plate", "sheet") and self.width is not None:
            return (self.length,)
        return None

    def _flat_in(self, form: str) -> tuple[Fraction, ...] | None:
        if self.flat is None:
            return None
        width, thickness = self.flat
        if form in ("flat bar", "strip", "board"):
            return (width, thickness)
        if form in ("plate", "sheet"):
            return (thickness,)
        if form == "square bar":
            return (max(width, thickness),)
        return None

    def forms(self) -> tuple[str, ...]:
        """Forms that could give the shape."""
        if self.round is not None:
            return ("round bar", "drawn rod", "hexagon bar", "square bar", "tube")
        return ("flat bar", "square bar", "plate", "sheet", "strip", "board")


def needed_of(part: Part, steps: Sequence[Measured]) -> Needed | None:
    """What a part needs; None where its shape is not whole."""
    shape = part.shape
    if not isinstance(shape, (Disc, Block, Plate, Board, Size, list)):
        return _wider(part, shape)
    if isinstance(shape, Disc):
        size = shape.diameter.exact
        return Needed(shape.thickness.exact, "thickness, and diameter", round=size, width=size)
    if isinstance(shape, Block):
        sides = (shape.width.exact, shape.height.exact)
        return Needed(shape.length.exact, "length, and width by height", flat=sides)
    if isinstance(shape, (Plate, Board)):
        return Needed(
            shape.length.exact,
            "length, and width by thickness",
            flat=(shape.width.exact, shape.thickness.exact),
            width=shape.width.exact,
        )
    if isinstance(shape, Size):
        return Needed(shape.exact, "the length cut, the section as bought", as_bought=part.stock)
    length = sum((step.length for step in steps), Fraction(0))
    across = bar_needed([step.step for step in steps], "round bar")
    words = "sum of the steps' lengths, and the largest section among them"
    return Needed(length, words, round=across, steps=tuple(steps))


def _is_flat_wheel(shape: object) -> bool:
    """A toothed wheel without a hub comes out of plate as well as off a bar."""
    return isinstance(shape, (Gear, Ratchet, Sprocket)) and shape.hub is None


def _wider(part: Part, shape: object) -> Needed | None:
    """What a shape of the wider vocabulary needs."""
    size = round_size(part, shape)
    if size is not None:
        wall = (shape.outside.exact - shape.bore.exact) / 2 if isinstance(shape, Tube) else ZERO
        words = "length and diameter over all"
        width = size[0] if _is_flat_wheel(shape) else None
        return Needed(size[1], words, round=size[0], width=width, wall=wall)
    flat = flat_size(shape)
    if flat is not None:
        words = "the flat blank: length, and width by thickness"
        return Needed(flat[0], words, flat=flat[1:], width=flat[1])
    wire = wire_size(shape)
    if wire is not None:
        return Needed(wire[1], "the length of the wire, laid straight", round=wire[0])
    return None
