"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

_EXAMPLE = "shafts:\n  axle: {along: [collar, cheek.bore, drum, cheek.bore, collar], apart: 24 mm}"

SHAFT_UNKNOWN = Code(
    "shaft-unknown",
    Severity.ERROR,
    "The section of shafts names a part or a piece that is not there.",
    "A piece that nobody makes leaves a hole in the row, and every length behind it is wrong.",
    "shafts:\n  axel: {along: [drum]}   # the part is called axle",
    "Name the part, or the part and its bore, as cheek.bore.",
)
NO_END_FLOAT = Code(
    "no-end-float",
    Severity.ERROR,
    "What stands between two bearings, or two shoulders of the shaft, is as long as the gap, or"
    " longer.",
    "The shaft locks when the nuts are tightened, and the last evening goes into filing.",
    _EXAMPLE,
    "Shorten a piece, widen the gap, or name a washer `to_suit:` and turn it last.",
)
END_FLOAT_OFF = Code(
    "end-float-off",
    Severity.WARNING,
    "The end float that the lengths give lies outside what is wanted.",
    "Too little binds when it is warm; too much lets a gear walk half out of mesh.",
    _EXAMPLE,
    "Change the piece that closes the row by the difference, or write the float you want.",
)
NOT_LOCATED = Code(
    "not-located",
    Severity.ERROR,
    "Nothing stops the shaft from sliding one way along its axis.",
    "It works its way out, and the gear on it leaves its mate.",
    "shafts:\n  axle: {along: [cheek.bore, drum, cheek.bore]}   # drum is loose on the axle",
    "Fix a piece on the shaft beside a bearing: a collar, a circlip, a pinned hub.",
)
LOCATED_TWICE = Code(
    "located-twice",
    Severity.WARNING,
    "What stands between the bearings locates the shaft, and so do the pieces outside them.",
    "A little warmth or a small error in a length locks it.",
    "shafts:\n  axle: {along: [collar, cheek.bore, hub, cheek.bore, collar], apart: 20 mm}",
    "Let one bearing locate it; leave the other end free, or give it more float.",
)
CANNOT_BE_ASSEMBLED = Code(
    "cannot-be-assembled",
    Severity.ERROR,
    "A bore sits on a step that is thinner than the steps on both sides of it.",
    "It was possible on paper only; the shaft has to be sawn to get it on.",
    "joints:\n  wheel on axle: {retained: [wheel.bore, axle.waist]}",
    "Thin one end of the shaft, make the piece in two halves, or screw on a collar.",
)
HOLE_STOPPED = Code(
    "hole-stopped-by-shaft",
    Severity.WARNING,
    "A hole through both walls of a part, across a bore that a shaft fixed in it fills.",
    "What should go through it, a cord or a wire, comes to the shaft and no further.",
    "features:\n  tie: {drilled: 1 mm, across: drum, depth: through}   # the axle is in its bore",
    "Drill through a flange beside the bore; a hole for a pin is written by `pinned:`.",
)
APART_MISSING = Code(
    "shaft-gap-missing",
    Severity.WARNING,
    "The row cannot be added up: the gap between the bearings or a length is not told.",
    "The end float is then found at the bench, mostly too late to turn anything longer.",
    "shafts:\n  axle: {along: [cheek.bore, drum, cheek.bore]}",
    "Write `apart:` for the gap, and the length of each bought piece under its `sizes:`.",
)
NOTHING_CARRIES = Code(
    "nothing-carries-shaft",
    Severity.WARNING,
    "No piece of the row carries the shaft.",
    "A shaft that runs in nothing turns nothing.",
    "shafts:\n  axle: {along: [drum]}",
    "Name the bearings in the row, and say by a joint that the shaft runs in them.",
)
FLUSH_AT_BEARING = Code(
    "flush-at-bearing",
    Severity.ADVICE,
    "A hub flush with the end of its seat, where the bearing beside it meets the hub as well.",
    "A plate that is a tenth too thick stands out of its seat and uses up the float.",
    "shafts:\n  axle: {along: [bush, barrel, bush], apart: 24 mm}\njoints:\n"
    "  wheel: {retained: [wheel.bore, barrel.spigot]}   # 3 mm on 3 mm, and the bush has a rim",
    "Let the seat stand out of the hub by what both may stray.",
)
BEARING_BESIDE_JOURNAL = Code(
    "bearing-beside-journal",
    Severity.WARNING,
    "A bearing that stands partly beside the journal that its bore is made to.",
    "The step beside it is not made to the fit: the shaft binds there, or bears on half a bush.",
    "shafts:\n  axle: {along: [cheek.bore, cheek.bore], apart: 40 mm}   # journal 48, cheeks 2 x 6",
    "Make the journal as long as what lies between the outer ends of its bearings.",
)
HUB_BESIDE_SEAT = Code(
    "hub-beside-seat",
    Severity.WARNING,
    "A hub that stands partly beside the step that is made to fit its bore.",
    "It stops at the step, or the step is thick where it has to go on: the float is then wrong, "
    "and the bearings stand beside what was eased for them.",
    "shafts:\n  axle: {along: [collar, cheek.bore, cheek.bore, wheel], apart: 40 mm}\n"
    "# the journal is 66 mm long, both cheeks and the gap are 64 mm",
    "Let the seat begin where the bearing beside it ends.",
)

CODES = (
    HUB_BESIDE_SEAT,
    FLUSH_AT_BEARING,
    SHAFT_UNKNOWN,
    NO_END_FLOAT,
    END_FLOAT_OFF,
    NOT_LOCATED,
    LOCATED_TWICE,
    CANNOT_BE_ASSEMBLED,
    HOLE_STOPPED,
    APART_MISSING,
    NOTHING_CARRIES,
    BEARING_BESIDE_JOURNAL,
)
