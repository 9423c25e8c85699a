"""Holes, heads and spanners turned into the room that they need beside each other."""

from __future__ import annotations

from typing import Final

from binder_trade.explained import positive
from binder_trade.fastening.steps import mm, step
from binder_trade.fastening.verdict import Verdict, at_least

EDGE_IN_METAL: Final = 1.5  # diameters from the hole's centre
EDGE_IN_WOOD: Final = 3.0
LEAST_PITCH: Final = 3.0
BETWEEN_HEADS_MM: Final = 0.5
WOODS: Final = ("hardwood", "softwood", "plywood")


def edge_distance(centre_to_edge_mm: float, major_mm: float, group: str) -> Verdict:
    """From a hole's centre to the edge: 1.5 d in metal, 3 d in wood; mm; raises NotDefined.

    Source: common practice, no source. A centre outside the part is a distance below nothing.
    """
    factor = EDGE_IN_WOOD if group in WOODS else EDGE_IN_METAL
    needs = factor * positive(major_mm, "a diameter")
    return at_least(
        "from the hole to the edge",
        centre_to_edge_mm,
        needs,
        step("least distance to the edge", f"{factor:g} d", mm(needs)),
        (f"move the hole {mm(max(0.0, needs - centre_to_edge_mm))} in", "use a smaller screw"),
    )


def hole_pitch(pitch_mm: float, major_mm: float) -> Verdict:
    """From hole to hole: 3 d for rivets and screws; mm; common practice, no source."""
    needs = LEAST_PITCH * positive(major_mm, "a diameter")
    return at_least(
        "from hole to hole",
        positive(pitch_mm, "a pitch"),
        needs,
        step("least pitch", f"{LEAST_PITCH:g} d", mm(needs)),
        (f"space them {mm(needs)}", "use fewer or smaller ones"),
    )


def heads_side_by_side(pitch_mm: float, seat_mm: float) -> Verdict:
    """Heads, washers or counterbores do not touch; mm; common practice, no source."""
    needs = positive(seat_mm, "a head") + BETWEEN_HEADS_MM
    return at_least(
        "from head to head",
        positive(pitch_mm, "a pitch"),
        needs,
        step("least pitch of heads", f"width of the seat + {mm(BETWEEN_HEADS_MM)}", mm(needs)),
        (f"space them {mm(needs)}", "use a smaller head"),
    )


def head_at_edge(centre_to_edge_mm: float, seat_mm: float) -> Verdict:
    """A head or counterbore stays on the part; mm; plane geometry."""
    needs = positive(seat_mm, "a head") / 2
    return at_least(
        "from the head's centre to the edge",
        centre_to_edge_mm,
        needs,
        step("half the head", "width of the seat / 2", mm(needs), "plane geometry"),
        (f"move it {mm(max(0.0, needs - centre_to_edge_mm))} in", "use a smaller head"),
    )


def spanner_room(centre_to_obstacle_mm: float, spanner_head_mm: float) -> Verdict:
    """A spanner's head passes between a nut and what stands beside it; mm.

    `spanner_head_mm` is the width of the spanner's head. Source: common practice, no source.
    """
    needs = positive(spanner_head_mm, "a spanner") / 2 + BETWEEN_HEADS_MM
    return at_least(
        "from the nut's centre to what is beside it",
        centre_to_obstacle_mm,
        needs,
        step("room for the spanner", f"half its head + {mm(BETWEEN_HEADS_MM)}", mm(needs)),
        ("a cap screw and a key from above", "a box spanner", "move it out"),
    )


def key_room(above_head_mm: float, key_short_arm_mm: float) -> Verdict:
    """The short arm of a key, or a driver's blade, goes in from above the head; mm."""
    return at_least(
        "free above the head",
        above_head_mm,
        positive(key_short_arm_mm, "a key"),
        step("room for the key", "its short arm", mm(key_short_arm_mm)),
        ("a hexagon head and a spanner from the side", "fit it before what is above"),
    )


def straight_way_in(free_mm: float, length_mm: float, head_height_mm: float) -> Verdict:
    """A screw needs its whole length and its head free before its hole; mm; plane geometry."""
    needs = positive(length_mm, "a length") + positive(head_height_mm, "a head")
    return at_least(
        "free before the hole",
        free_mm,
        needs,
        step("the screw's own path", "length + head", mm(needs), "plane geometry"),
        ("a stud and nut", "screw it from the other side", "fit it before what is in the way"),
    )
