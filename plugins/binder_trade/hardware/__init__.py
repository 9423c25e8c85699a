"""Screws, nuts, washers, pins, rings, keys, rivets and their seats, as the standards list them."""

from binder_trade.hardware.dowels import Dowel, dowel, dowel_limits_um
from binder_trade.hardware.equivalents import Equivalent, equivalent
from binder_trade.hardware.grubs import GRUB_DRIVES, POINTS, Grub, grub
from binder_trade.hardware.heads import HEAD_KINDS, Head, head
from binder_trade.hardware.keys import (
    WIDTH_FITS,
    KeywayWidth,
    ParallelKey,
    keyway_width,
    parallel_key,
)
from binder_trade.hardware.lengths import length_texts, lengths, lengths_source, threaded_length
from binder_trade.hardware.listing import Listed, NotListed
from binder_trade.hardware.nuts import NUT_KINDS, Nut, nut
from binder_trade.hardware.rings import (
    Circlip,
    EClip,
    circlip_bore,
    circlip_shaft,
    e_clip,
    e_clip_named,
)
from binder_trade.hardware.rivets import RIVET_HEADS, Rivet, rivet
from binder_trade.hardware.seats import (
    ROOMS,
    Counterbore,
    Countersink,
    Spotface,
    counterbore,
    countersink,
    spotface,
)
from binder_trade.hardware.spanners import HexagonKey, Spanner, hexagon_key, spanner
from binder_trade.hardware.spring_pins import (
    SplitPin,
    SpringPin,
    split_pin,
    split_pin_for,
    spring_pin,
)
from binder_trade.hardware.studs import ENGAGED, Stud, stud
from binder_trade.hardware.taper_pins import (
    InchTaperPin,
    TaperPin,
    inch_taper_pin,
    taper_pin,
    taper_pin_for,
)
from binder_trade.hardware.thread_keys import ThreadKey, nominal_mm, thread_key
from binder_trade.hardware.washers import WASHER_KINDS, Washer, washer
from binder_trade.hardware.wood_screws import WoodScrew, wood_screw
from binder_trade.hardware.woodruff_keys import (
    InchWoodruff,
    Woodruff,
    woodruff,
    woodruff_for,
    woodruff_number,
)

__all__ = [
    "ENGAGED", "GRUB_DRIVES", "HEAD_KINDS", "NUT_KINDS", "POINTS", "RIVET_HEADS", "ROOMS",
    "WASHER_KINDS", "WIDTH_FITS",
    "Circlip", "Counterbore", "Countersink", "Dowel", "EClip", "Equivalent", "Grub", "Head",
    "HexagonKey", "InchTaperPin", "InchWoodruff", "KeywayWidth", "Listed", "NotListed", "Nut",
    "ParallelKey", "Rivet", "Spanner", "SplitPin", "Spotface", "SpringPin", "Stud", "TaperPin",
    "ThreadKey", "Washer", "WoodScrew", "Woodruff",
    "circlip_bore", "circlip_shaft", "counterbore", "countersink", "dowel", "dowel_limits_um",
    "e_clip", "e_clip_named", "equivalent", "grub", "head", "hexagon_key", "inch_taper_pin",
    "keyway_width", "length_texts", "lengths", "lengths_source", "nominal_mm", "nut",
    "parallel_key", "rivet",
    "spanner", "split_pin", "split_pin_for", "spotface", "spring_pin", "stud", "taper_pin",
    "taper_pin_for", "thread_key", "threaded_length", "washer", "wood_screw", "woodruff",
    "woodruff_for", "woodruff_number",
]  # fmt: skip
