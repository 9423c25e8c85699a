"""A thread and wires to the size over three wires, and to the wires that can be used."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from binder_trade.drills import Drill
from binder_trade.explained import NotDefined, Step, positive
from binder_trade.threads import Form, Thread

_SOURCE = "M = E + W (1 + cosec a/2) − (P/2) cot a/2, handbook; helix left out"
_ROUNDED_BELOW_DEG = 60.0


@dataclass(frozen=True, slots=True)
class Constants:
    """The figures of a form: M = E + `wire` × W − `pitch` × P, and the best wire `best` × P."""

    wire: float
    pitch: float
    best: float


@dataclass(frozen=True, slots=True)
class Wires:
    """The wires in mm that can measure a thread: they touch the flanks and stand clear."""

    least_mm: float
    best_mm: float
    most_mm: float


@dataclass(frozen=True, slots=True)
class OverWires:
    """The size over three wires of a thread at its basic effective diameter, in mm."""

    over_mm: float
    wire_mm: float
    name: str
    wires: Wires
    steps: tuple[Step, ...]


def constants(form: Form) -> Constants:
    """The three-wire figures of a form: 3, 0.8660 and 0.5774 for 60°.

    55° gives 3.1657, 0.9605 and 0.5637; those of 47.5° are derived by the same formula, no
    published ones were found. Raises `NotDefined` for square flanks, on which no wire rests.
    Source: handbook, three-wire method.
    """
    if not form.angle_deg:
        raise NotDefined("no wire rests in a square thread", "measure its core and its crest")
    half = math.radians(form.angle_deg / 2)
    return Constants(1 + 1 / math.sin(half), 0.5 / math.tan(half), 0.5 / math.cos(half))


def best_wire(thread: Thread) -> float:
    """The wire in mm that touches the flanks at the effective diameter: P / (2 cos a/2)."""
    return constants(thread.form).best * thread.pitch_mm


def usable_wires(thread: Thread) -> Wires:
    """The thinnest wire that stands flush with the crest and the thickest on straight flank.

    In mm, by geometry of the basic form: 0.505 to 1.010 P for 60°, 0.506 to 0.853 P for 55°,
    which are the published figures. Raises `NotDefined` for several starts, in which wires lie
    aslant, and as `constants`.
    """
    if thread.starts > 1:
        raise NotDefined(
            f"wires lie aslant in the {thread.starts} starts of {thread.designation}",
            "measure its core and its crest",
        )
    form, pitch = thread.form, thread.pitch_mm
    best = best_wire(thread)
    half = math.radians(form.angle_deg / 2)
    sine, cosine = math.sin(half), math.cos(half)
    crest = form.effective_drop / 2
    # A rounded crest ends the straight flank below the crest.
    is_rounded = form.angle_deg < _ROUNDED_BELOW_DEG
    flank = crest - (form.radius * (1 - sine) if is_rounded else 0.0)
    least = (form.triangle + form.effective_drop) / (1 + 1 / sine)
    most = 2 * flank * sine / cosine**2 + 0.5 / cosine
    return Wires(least * pitch, best, most * pitch)


def over_wires(thread: Thread, wire_mm: float, name: str = "") -> OverWires:
    """The size in mm over three wires of this diameter in mm, at basic effective diameter.

    Raises `NotDefined` where the wire sinks below the crests or rides on them. The helix
    correction is left out, as handbooks do for single-start threads.
    """
    wire = positive(wire_mm, "a wire")
    wires = usable_wires(thread)
    if not wires.least_mm <= wire <= wires.most_mm:
        where = "sinks below the crests" if wire < wires.least_mm else "rides on the crests"
        raise NotDefined(
            f"a wire of {wire:g} mm {where} of {thread.designation}",
            f"use {wires.least_mm:.3f} to {wires.most_mm:.3f} mm, best {wires.best_mm:.3f} mm",
        )
    figures = constants(thread.form)
    over = thread.effective_mm + figures.wire * wire - figures.pitch * thread.pitch_mm
    formula = f"E + {figures.wire:.5g} W − {figures.pitch:.5g} P"
    steps = (
        Step("effective diameter E", "basic", f"{thread.effective_mm:.3f} mm", thread.standard),
        Step("wire W", "in use", name or f"{wire:.3f} mm", "choice"),
        Step("size over wires", formula, f"{over:.3f} mm", _SOURCE),
    )
    return OverWires(over, wire, name or f"{wire:g} mm", wires, steps)


def over_owned(thread: Thread, owned: Iterable[Drill | tuple[str, float]]) -> OverWires:
    """The size over the three owned wires (or drill shanks) that come nearest the best wire.

    Raises `NotDefined` where none can be used. A shank is often a hair below its drill's size:
    measure it.
    """
    wires = usable_wires(thread)
    pairs = [(one.name, one.mm) if isinstance(one, Drill) else one for one in owned]
    usable = [pair for pair in pairs if wires.least_mm <= pair[1] <= wires.most_mm]
    if not usable:
        raise NotDefined(
            f"no wire here lies in the thread of {thread.designation}",
            f"find three of {wires.best_mm:.3f} mm ({wires.least_mm:.3f} to {wires.most_mm:.3f})",
        )
    name, wire = min(usable, key=lambda pair: (abs(pair[1] - wires.best_mm), pair[1]))
    return over_wires(thread, wire, name)
