"""Which form cutter of the set of eight cuts a gear, and how far in it goes."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm
from binder_trade.gears.gear import Gear
from binder_trade.gears.racks import PitchSystem

_LEAST = 12


@dataclass(frozen=True, slots=True)
class FormCutter:
    """A cutter of the set of eight: its number, the teeth that it cuts (`most` None: a rack).

    `seen_teeth` is what the cutter is chosen for, greater than the gear's own on helical and
    bevel gears; `other_number` is what the other way of counting calls the same cutter.
    """

    number: int
    other_number: int
    system: PitchSystem
    least: int
    most: int | None
    seen_teeth: float
    steps: tuple[Step, ...]

    @property
    def range_name(self) -> str:
        """The teeth that it cuts, as it is stamped."""
        return f"{self.least} to {self.most or 'rack'}"


@cache
def _sets() -> dict[str, Any]:
    data: dict[str, Any] = load_data("binder_trade.gears", "cutters.yaml")
    return data


def form_cutter(seen_teeth: float, system: PitchSystem = "module") -> FormCutter:
    """The cutter for so many teeth, of spur gears or as seen by the cutter (z / cos³ β).

    Raises NotDefined under 12 teeth. Source: the involute set of eight.
    """
    if not seen_teeth >= _LEAST:
        raise NotDefined(
            f"form cutters begin at {_LEAST} teeth, not at {seen_teeth:g}",
            "cut it with a fly cutter ground to the tooth, hob it, or take more teeth",
        )
    sets, source = _sets()["sets"], _sets()["source"]
    number, (least, most) = next(
        (each, ends)
        for each, ends in sorted(sets[system].items(), key=lambda row: -row[1][0])
        if seen_teeth >= ends[0]
    )
    name = f"No. {number}, {least} to {most or 'rack'}"
    step = Step("form cutter", "by the teeth that it sees", name, source)
    return FormCutter(number, 9 - number, system, least, most or None, seen_teeth, (step,))


def cutter_for(gear: Gear) -> FormCutter:
    """The form cutter of an external gear. Raises NotDefined for an internal one."""
    if gear.is_internal:
        raise NotDefined("a form cutter on an arbor does not reach inside", "shape or broach it")
    found = form_cutter(gear.virtual_teeth, gear.rack.system)
    depth = Step("depth of cut", f"{gear.rack.depth:g} m", mm(gear.depth_mm), gear.rack.name)
    return FormCutter(
        found.number,
        found.other_number,
        found.system,
        found.least,
        found.most,
        found.seen_teeth,
        (*found.steps, depth),
    )
