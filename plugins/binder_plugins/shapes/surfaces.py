"""Shapes to their surfaces: what a hole or a head would find there, in exact mm."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from binder.api import CutSize, Design, Part, Size
from binder_plugins.shapes.blanks import round_size
from binder_plugins.shapes.kinds import Block, Board, Disc, Plate, TurnedStep
from binder_plugins.shapes.turned import Measured, measured
from binder_plugins.shapes.vocabulary.rods import Sheet, Wire

Stack = tuple[tuple[Fraction, Fraction], ...]
_RODS = ("round bar", "drawn rod", "wire", "tube")


@dataclass(frozen=True, slots=True)
class Surface:
    """A face or step: how thick the metal is under it, its two sides, and its diameter.

    `stack` is what lies below it in turned work: the sections inwards, how wide and how long.
    """

    form: str
    thickness: Fraction | None
    length: Fraction | None = None
    width: Fraction | None = None
    diameter: Fraction | None = None
    is_round: bool = False
    is_bought_rod: bool = False
    start: Fraction | None = None
    stack: Stack = ()


def surfaces_of(part: Part, design: Design) -> dict[str, Surface]:
    """The faces and named steps of a part by name; empty where its shape is not whole."""
    shape = part.shape
    if isinstance(shape, list):
        return dict(_turned(part, shape))
    if isinstance(shape, Block):
        return _box(shape.length.exact, shape.width.exact, shape.height.exact)
    if isinstance(shape, (Plate, Board)):
        return _box(shape.length.exact, shape.width.exact, shape.thickness.exact)
    if isinstance(shape, Disc):
        return _disc(shape.diameter.exact, shape.thickness.exact)
    if isinstance(shape, Size):
        return _as_bought(part, shape.exact, design)
    return _wider(part, shape)


def _wider(part: Part, shape: object) -> dict[str, Surface]:
    """Of the wider vocabulary, what is flat and what is round."""
    if isinstance(shape, Sheet) and not shape.bends:
        return _box(shape.length.exact, shape.width.exact, shape.thickness.exact)
    if isinstance(shape, Wire):
        return _bent(shape.diameter.exact)
    size = round_size(part, shape)
    return _disc(*size) if size is not None else {}


def _box(length: Fraction, width: Fraction, height: Fraction) -> dict[str, Surface]:
    flat = Surface("face", height, length, width)
    end = Surface("face", length, width, height)
    side = Surface("face", width, length, height)
    names = {"top": flat, "underside": flat, "left": end, "right": end, "ends": end}
    return {**names, "front": side, "back": side}


def _bent(across: Fraction) -> dict[str, Surface]:
    """Bent wire from every side: as thick as it is bought."""
    side = Surface("face", across, None, across)
    return dict.fromkeys(("top", "underside", "front", "back", "left", "right"), side)


def _disc(diameter: Fraction, thickness: Fraction) -> dict[str, Surface]:
    flat = Surface("face", thickness, diameter, diameter, diameter, is_round=True)
    rim = Surface("step", diameter, thickness, None, diameter, is_round=True)
    return {"top": flat, "underside": flat, "outside": rim}


def _as_bought(part: Part, length: Fraction, design: Design) -> dict[str, Surface]:
    cut = design.facts.about(CutSize, part.name)
    section = cut.section if cut is not None else ()
    if len(section) == 2 and cut is not None and cut.form != "tube":
        return _box(length, max(section), min(section))
    if not section or cut is None:
        return {}
    if cut.form in _RODS:
        across = section[0]
        rod = Surface("step", length, length, None, across, is_round=True, is_bought_rod=True)
        return {"outside": rod, "ends": _end(length, across), "middle": rod}
    if cut.form in ("square bar", "hexagon bar"):
        return _box(length, section[0], section[0])
    return {}


def _end(length: Fraction, across: Fraction, stack: Stack = ()) -> Surface:
    return Surface("face", length, across, across, across, is_round=True, stack=stack)


def _turned(part: Part, shape: list[TurnedStep]) -> Iterator[tuple[str, Surface]]:
    steps, _ = measured(part, shape)
    if not steps:
        return
    overall = steps[-1].end
    first, last = (_across(steps[0].step), _across(steps[-1].step))
    below = tuple((_across(one.step), one.length) for one in steps)
    yield "underside", _end(overall, first, below)
    yield "left", _end(overall, first, below)
    yield "top", _end(overall, last, below[::-1])
    yield "right", _end(overall, last, below[::-1])
    yield "ends", _end(overall, min(first, last), below)
    widest = max(steps, key=lambda one: _across(one.step))
    yield "outside", _step(widest, part, steps)
    for step in steps:  # Last, so that a step may be called top.
        if step.step.name:
            yield str(step.step.name), _step(step, part, steps)


def _step(step: Measured, part: Part, steps: Sequence[Measured]) -> Surface:
    across = _across(step.step)
    is_round = step.step.diameter is not None
    drawn = part.stock is not None and part.stock.form == "drawn rod"
    widest = max(_across(one.step) for one in steps)
    return Surface(
        "step",
        steps[-1].end,
        step.length,
        None,
        across,
        is_round=is_round,
        is_bought_rod=drawn and is_round and across == widest,
        start=step.start,
        stack=_below(step, steps),
    )


def _below(step: Measured, steps: Sequence[Measured]) -> Stack:
    """A step and all that lies behind it, as a drill meets it from the nearer end.

    So a flange in the middle is drilled from its own shoulder.
    """
    number = steps.index(step)
    is_left = step.start < steps[-1].end - step.end
    behind = steps[number:] if is_left else steps[number::-1]
    return tuple((_across(one.step), one.length) for one in behind)


def _across(step: TurnedStep) -> Fraction:
    """Diameter, least diameter of a taper, or size across flats."""
    if step.taper is not None:
        return min(step.taper.start.exact, step.taper.end.exact)
    across = step.hexagon or step.square or step.diameter or step.ball or step.web
    return across.exact if across is not None else Fraction(0)
