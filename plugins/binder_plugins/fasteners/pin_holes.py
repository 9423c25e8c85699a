"""A pin of any sort to its size, its length and the hole that it wants."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from binder.api import exact
from binder_plugins.fasteners import shaft_codes
from binder_plugins.fasteners.asking import Asked
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.fastening import (
    Length,
    NoLength,
    choose_cross_pin,
    choose_split_pin,
    choose_taper_pin,
    choose_through_pin,
)
from binder_trade.hardware import NotListed, split_pin, split_pin_for, taper_pin, taper_pin_for
from binder_trade.tapers import PinHole, drill_for, inch_pin, metric_pin

_SAME_MM = 1e-6


@dataclass(frozen=True, slots=True)
class Hole:
    """The hole of a pin: its size in mm and by name, what is done after it, how, and its kind."""

    drill_mm: float
    drill: str
    then: str
    how: str
    kind: str = "drilled"

    @property
    def verb(self) -> str:
        """Drill or ream."""
        return "ream" if self.kind == "reamed" else "drill"


def sized(asked: Asked, shaft_mm: float | None) -> Asked:
    """The pin with the size of the table for its shaft, where its words give none.

    Raises NotListed.
    """
    if asked.diameter_mm is not None or shaft_mm is None:
        return asked
    if asked.name.kind == "split pin":
        size = split_pin_for(shaft_mm).d_mm
    elif asked.name.kind == "taper pin":
        size = taper_pin_for(shaft_mm).d_mm
    else:
        return asked
    text = f"{size:g} mm"
    name = replace(
        asked.name, diameter_mm=size, diameter_text=text, says=f"{text} {asked.name.says}"
    )
    return replace(asked, name=name, diameter_mm=size)


def best_length(
    seen: Seen, lengths: dict[float, str], through: float, *, is_thin: bool
) -> Length | NoLength:
    """The length that serves, by the sort of pin; `through` is the metal that it passes in mm."""
    name, size = seen.asked.name, seen.asked.diameter_mm or 0.0
    if name.kind == "split pin":
        return choose_split_pin(lengths, size, through)
    if name.kind == "taper pin":
        return choose_taper_pin(lengths, through, _dome(size))
    return (choose_through_pin if is_thin else choose_cross_pin)(lengths, through)


def _dome(size: float) -> float:
    try:
        return taper_pin(size).dome_mm
    except NotListed:
        return 0.0


def hole_for(seen: Seen, length: float | None) -> Hole:
    """The hole of a pin of a length in mm, where that is known."""
    size = seen.asked.diameter_mm or 0.0
    if seen.asked.name.kind == "split pin":
        return Hole(size, f"{size:g} mm", "", "marked with all pieces on, just clear of them")
    if seen.asked.name.kind == "dowel pin" and seen.design.workshop.owns_reamer(exact(size)):
        # A drilled hole is wide and three-cornered: the dowel, m6, is driven into a reamed H7.
        return Hole(size, f"{size:g} mm", "", "drilled and reamed together", "reamed")
    if seen.asked.name.kind != "taper pin":
        return Hole(size, f"{size:g} mm", "", "drilled together")
    how = "drill the small end through both, then taper ream"
    if length is None:
        return Hole(size, f"{size:g} mm", "", how)
    pin = tapered(seen.asked, length)
    small, large = pin.cone.small_mm, pin.cone.large_mm
    drill_mm, drill = _drill(pin, seen)
    then = f", taper ream {pin.system} to ⌀{large:.2f} at the large end (small end ⌀{small:.2f})"
    return Hole(drill_mm, drill, then, f"{how}: till the pin goes in flush")


def tapered(asked: Asked, length: float) -> PinHole:
    """The cone of a taper pin: a metric one by its small end, an inch one by its large."""
    size = asked.diameter_mm or 0.0
    is_inch = bool(asked.name.thread_text) or asked.name.diameter_text.endswith("in")
    return inch_pin(size, length) if is_inch else metric_pin(size, length)


def _drill(pin: PinHole, seen: Seen) -> tuple[float, str]:
    """The owned drill just under the small end, else that size."""
    small = pin.cone.small_mm
    owned = {float(one.mm): one.name for one in seen.design.workshop.drills()}
    try:
        found = drill_for(pin, owned)
    except NotDefined:
        return small, f"{small:.2f} mm"
    return found, owned[found]


def split_fault(seen: Seen, across: float) -> Iterator[Said]:
    """A split pin that ISO 1234 has for a thinner or a thicker bolt; clevis pins take one more."""
    size = seen.asked.diameter_mm
    if seen.asked.name.kind != "split pin" or size is None:
        return
    try:
        right, has = split_pin_for(across), split_pin(size)
    except NotListed:
        return
    is_next = abs(has.bolt_over_mm - right.bolt_to_mm) < _SAME_MM
    if abs(has.d_mm - right.d_mm) > _SAME_MM and not is_next:
        yield shaft_codes.SPLIT_PIN_OFF_SIZE.at(
            seen.asked.at,
            f"a split pin of {size:g} mm is for bolts over {has.bolt_over_mm:g} to "
            f"{has.bolt_to_mm:g} mm, and this is {across:g} mm",
            help=f"take {right.d_mm:g} mm ({right.standard})",
        )
