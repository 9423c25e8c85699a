"""How parts are held together: names and patterns read, lengths chosen, room and proportion."""

from binder_trade.explained import NotDefined, Step
from binder_trade.fastening.engagement import LEAST_THREADS, Engagement, least_engagement, times_d
from binder_trade.fastening.fastener_name import FastenerName, read_fastener, with_length
from binder_trade.fastening.faults import NotAFastener, Unreadable, quoted
from binder_trade.fastening.layout import (
    Face,
    Layout,
    chord,
    from_axis,
    from_corner,
    lay_out,
    least_pitch,
    positions,
    round_face,
)
from binder_trade.fastening.lining_up import holes_line_up, placing_error
from binder_trade.fastening.naming import KIND_NAMES
from binder_trade.fastening.nut_length import NutEnd, choose_bolt, choose_stud
from binder_trade.fastening.pattern import FORMS, Pattern, read_pattern, with_count
from binder_trade.fastening.pin_length import (
    choose_cross_pin,
    choose_dowel,
    choose_grub,
    choose_split_pin,
    choose_taper_pin,
    choose_through_pin,
)
from binder_trade.fastening.proportions import (
    Chosen,
    grub_for,
    pin_for,
    pin_in_shaft,
    rivet_in_sheet,
)
from binder_trade.fastening.reach import Grip, Length, NoLength, TappedHole
from binder_trade.fastening.rivet_length import choose_rivet, rivet_allowance
from binder_trade.fastening.room import (
    LEAST_PITCH,
    edge_distance,
    head_at_edge,
    heads_side_by_side,
    hole_pitch,
    key_room,
    spanner_room,
    straight_way_in,
)
from binder_trade.fastening.screw_length import (
    BOTTOMS,
    SHORT,
    STANDS_OUT,
    Judged,
    choose_length,
    judge_length,
)
from binder_trade.fastening.seats import (
    counterbore_depth,
    countersink_depth,
    countersink_in_plate,
    land_under_head,
    same_angle,
)
from binder_trade.fastening.spares import hardware_count
from binder_trade.fastening.strength import StrengthNote, strength_note
from binder_trade.fastening.tail_seat import TAIL_SEAT_DEG, tail_mouth
from binder_trade.fastening.verdict import Verdict
from binder_trade.fastening.wood_length import LEAST_DIAMETERS, choose_wood_screw, judge_wood_screw

__all__ = [
    "BOTTOMS",
    "FORMS",
    "KIND_NAMES",
    "LEAST_DIAMETERS",
    "LEAST_PITCH",
    "LEAST_THREADS",
    "SHORT",
    "STANDS_OUT",
    "TAIL_SEAT_DEG",
    "Chosen",
    "Engagement",
    "Face",
    "FastenerName",
    "Grip",
    "Judged",
    "Layout",
    "Length",
    "NoLength",
    "NotAFastener",
    "NotDefined",
    "NutEnd",
    "Pattern",
    "Step",
    "StrengthNote",
    "TappedHole",
    "Unreadable",
    "Verdict",
    "choose_bolt",
    "choose_cross_pin",
    "choose_dowel",
    "choose_grub",
    "choose_length",
    "choose_rivet",
    "choose_split_pin",
    "choose_stud",
    "choose_taper_pin",
    "choose_through_pin",
    "choose_wood_screw",
    "chord",
    "counterbore_depth",
    "countersink_depth",
    "countersink_in_plate",
    "edge_distance",
    "from_axis",
    "from_corner",
    "grub_for",
    "hardware_count",
    "head_at_edge",
    "heads_side_by_side",
    "hole_pitch",
    "holes_line_up",
    "judge_length",
    "judge_wood_screw",
    "key_room",
    "land_under_head",
    "lay_out",
    "least_engagement",
    "least_pitch",
    "pin_for",
    "pin_in_shaft",
    "placing_error",
    "positions",
    "quoted",
    "read_fastener",
    "read_pattern",
    "rivet_allowance",
    "rivet_in_sheet",
    "round_face",
    "same_angle",
    "spanner_room",
    "straight_way_in",
    "strength_note",
    "tail_mouth",
    "times_d",
    "with_count",
    "with_length",
]
