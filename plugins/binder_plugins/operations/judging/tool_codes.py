"""What can be reported of tools that this workshop does not have."""

from __future__ import annotations

from binder.api import Code, Severity

W, A = Severity.WARNING, Severity.ADVICE

DRILL_NOT_OWNED = Code(
    "drill-not-owned",
    W,
    "A plain hole whose size no drill of this workshop makes, nor one a tenth over.",
    "The evening ends with the drill stand open and the right hole in it empty.",
    "features:\n  pivot: {drilled: 14.5 mm, on: top, depth: through}   # drills to 13 mm",
    "Take the size of an owned drill, bore it, or put the drill on the shopping list.",
)
REAMER_WITHOUT_DRILL = Code(
    "reamer-without-drill",
    W,
    "A hole to be reamed, and no drill that leaves the reamer 0.1 to 0.3 mm on the diameter.",
    "With less it rubs and squeals, with more it chokes; either way the hole is not to size.",
    "features:\n  bore: {reamed: 6 mm, on: top, depth: through}   # 5.5 and 6 mm drills alone",
    "Buy the drill, or bore to the size before the reamer: bore, then ream.",
)
SLOT_CUTTER_NOT_OWNED = Code(
    "slot-cutter-not-owned",
    W,
    "A milled slot, keyway or pocket narrower than the smallest cutter that may plunge, and than "
    "every slitting saw; or a slot sawn by hand narrower than the kerf of every hand saw.",
    "A wider cutter cannot be made narrower, and a file does not reach the bottom.",
    "features:\n  slot: {slotted: 1.5 mm, on: top, depth: 3 mm}   # slot drills from 2 mm",
    "Make it as wide as an owned cutter, or put the cutter on the shopping list.",
)
KNURL_NOT_OWNED = Code(
    "knurl-not-owned",
    W,
    "A knurl whose pitch or pattern none of the wheels here rolls.",
    "The wheels at hand roll what they are; the grip does not match its picture.",
    "features:\n  grip: {knurled: 0.5 mm, on: head}   # wheels of 1 mm",
    "Take the pitch and pattern of owned wheels, or put the wheels on the shopping list.",
)
GEAR_CUTTER_NOT_OWNED = Code(
    "gear-cutter-not-owned",
    W,
    "Teeth whose cutter, by pitch and by number in its set, is not in this workshop, nor a grinder "
    "on which a fly cutter could be ground to the space.",
    "It is ordered by post and dear for its size: the blank waits on its mandrel for it.",
    "parts:\n  wheel: {gear: {module: 0.5 mm, teeth: 54, width: 3 mm}}   # wants no. 6",
    "Buy or borrow the cutter, and tell it under `gear_cutters:` in the workshop file; or tell a "
    "grinder under `others:`.",
)
DRILL_TURNS_TOO_SLOWLY = Code(
    "drill-turns-too-slowly",
    A,
    "A drill under 0.8 mm in a machine whose highest speed is less than a quarter of what it "
    "wants (common practice).",
    "At a hand's usual feed it takes too much in a turn, bends and snaps in the hole.",
    "features:\n  jet: {drilled: 0.5 mm, ...}   # in a bench drill that turns 2600 r/min at most",
    "A larger hole, a small high-speed spindle, or a pin chuck with the lightest feed.",
)

TOOL_CODES = (
    DRILL_NOT_OWNED,
    REAMER_WITHOUT_DRILL,
    SLOT_CUTTER_NOT_OWNED,
    KNURL_NOT_OWNED,
    GEAR_CUTTER_NOT_OWNED,
    DRILL_TURNS_TOO_SLOWLY,
)
