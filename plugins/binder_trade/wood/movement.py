"""Turns a board and the damp it will meet into how much its width moves, and the room for it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any, Final, Literal

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, positive, within

Cut = Literal["flat-sawn", "quarter-sawn"]
RULE: Final = "USDA Wood Handbook FPL-GTR-190, ch. 13, change = width · C · change of moisture"
PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Wood:
    """A wood: change of width for each per cent of moisture, as a part of the width."""

    name: str
    radial: float
    tangential: float
    listed: str
    source: str

    def coefficient(self, cut: Cut) -> float:
        """The change across a board of this cut for each per cent of moisture."""
        return self.tangential if cut == "flat-sawn" else self.radial


@cache
def wood(name: str) -> Wood:
    """A wood by its name; raises NotDefined for one that is not kept, naming those that are.

    Source: USDA Wood Handbook FPL-GTR-190, table 13-5; plywood and some woods from memory.
    """
    data = load_data("binder_trade.wood", "woods.yaml")
    rows: dict[str, dict[str, Any]] = data["woods"] | data["boards"]
    key = name.strip().lower()
    if key not in rows:
        raise NotDefined(f"no movement is kept for '{key[:40]}'", "one of: " + ", ".join(rows))
    row = rows[key]
    source = data["source"] if row["status"] == "verified" else f"{data['source']} (from memory)"
    return Wood(key, row["radial"], row["tangential"], row["listed"], source)


def wood_names() -> tuple[str, ...]:
    """The woods whose movement is kept."""
    data = load_data("binder_trade.wood", "woods.yaml")
    return (*data["woods"], *data["boards"])


@dataclass(frozen=True, slots=True)
class Season:
    """Moisture of the wood in per cent of its dry weight: at the bench, driest, dampest."""

    now: float
    driest: float
    dampest: float


# What wood settles at; common practice, to be measured where it matters.
HEATED_ROOM: Final = Season(10.0, 7.0, 12.0)
WORKSHOP: Final = Season(12.0, 9.0, 15.0)
OUTDOORS: Final = Season(14.0, 11.0, 19.0)


@dataclass(frozen=True, slots=True)
class Movement:
    """How a width moves from what it is at the bench; mm, both as positive lengths."""

    width_mm: float
    shrinks_mm: float
    swells_mm: float
    steps: tuple[Step, ...]

    @property
    def range_mm(self) -> float:
        """From driest to dampest; mm."""
        return self.shrinks_mm + self.swells_mm


def movement(width_mm: float, kind: Wood, season: Season, cut: Cut = "flat-sawn") -> Movement:
    """How much a board of this width across the grain shrinks and swells; mm.

    Holds between 6 and 14 % moisture; beyond, up to 25 %, as an estimate. Raises NotDefined
    for moisture that wood in use does not have. Source: USDA Wood Handbook, ch. 13.
    """
    width = positive(width_mm, "the width across the grain")
    now, low, high = (
        within(each, 2, 25, "the moisture in per cent")
        for each in (season.now, season.driest, season.dampest)
    )
    if not low <= now <= high:
        raise NotDefined(
            "the moisture now is not between driest and dampest", "put the three in order"
        )
    each = width * kind.coefficient(cut)
    shrinks, swells = each * (now - low), each * (high - now)
    return Movement(
        width,
        shrinks,
        swells,
        (
            Step("shrinks", "width · C · (now − driest)", mm(shrinks), kind.source),
            Step("swells", "width · C · (dampest − now)", mm(swells), kind.source),
        ),
    )


@dataclass(frozen=True, slots=True)
class Slot:
    """A slotted hole for a screw, across the grain; mm.

    `from_inner_end_mm` is where the screw's middle stands, from the slot's end nearest to the
    fixed line.
    """

    length_mm: float
    width_mm: float
    from_inner_end_mm: float
    steps: tuple[Step, ...]


def slot(moved: Movement, clearance_mm: float) -> Slot:
    """The slot in the board that lets `moved` happen past a screw; mm.

    `moved` is the movement of the width between the fixed line and the screw, `clearance_mm`
    the round clearance hole. Where the board swells, its slot travels outwards and the screw
    comes to stand nearer to the inner end. Source: geometry.
    """
    hole = positive(clearance_mm, "the clearance hole")
    length = hole + moved.range_mm
    return Slot(
        length,
        hole,
        hole / 2 + moved.swells_mm,
        (Step("slot", "clearance hole + shrinks + swells", mm(length), PRACTICE),),
    )


@dataclass(frozen=True, slots=True)
class Button:
    """The room a button needs in its groove, and the gap left behind a panel; mm."""

    tongue_least_mm: float
    gap_mm: float
    steps: tuple[Step, ...]


def button(moved: Movement, tongue_mm: float = 6.0) -> Button:
    """A button that still holds when the board has shrunk and does not bind when it swells; mm.

    The tongue in the groove is at least `tongue_mm` when the board is driest. Common practice.
    """
    tongue = positive(tongue_mm, "the tongue") + moved.shrinks_mm
    return Button(
        tongue,
        moved.swells_mm,
        (
            Step("tongue in the groove at the bench", "hold + shrinks", mm(tongue), PRACTICE),
            Step("gap left at the bench", "swells", mm(moved.swells_mm), PRACTICE),
        ),
    )
