"""What the plugin can report of feed screws and their dials."""

from __future__ import annotations

from binder.api import Code, Severity

E, W, A = Severity.ERROR, Severity.WARNING, Severity.ADVICE

LEAD_MISSING = Code(
    "lead-missing",
    E,
    "A feed screw whose lead is not told.",
    "What a turn moves cannot be said, nor its dial divided.",
    "drive:\n  feed: {feeds: [screw], divisions: 40}   # and the screw has no thread that leads",
    "Give the screw a thread and a `leads:` joint with its nut, or write `lead:`.",
)
HANDWHEEL_WRONG_WAY = Code(
    "handwheel-wrong-way",
    W,
    "A handwheel that moves its slide the other way than is wanted.",
    "The hand learns clockwise for away on every machine, and runs this one into the work.",
    "drive:\n  feed: {feeds: [screw], clockwise: away}   # and its thread is right-hand",
    "Cut the thread left-handed, or let the screw travel with the slide.",
)
DIAL_AWKWARD = Code(
    "dial-awkward",
    A,
    "A dial whose division is no round figure.",
    "Nobody can count in it: 0.0175 mm a line.",
    "drive:\n  feed: {feeds: [screw], divisions: 40}   # and the lead is 0.7 mm",
    "Divide the dial as the finding says.",
)

THREAD_SHORT_OF_TRAVEL = Code(
    "thread-short-of-travel",
    W,
    "A screw whose thread, less its nut and the turns that the die leaves half cut, is shorter "
    "than the travel.",
    "It runs tight on the last turns, short of the end that is promised.",
    "drive:\n  lift: {feeds: [screw], travel: 20 mm}   # 35 mm of M10 in a nut of 15 mm",
    "Make the thread longer, or turn an undercut for it to run out into.",
)

CODES = (LEAD_MISSING, HANDWHEEL_WRONG_WAY, DIAL_AWKWARD, THREAD_SHORT_OF_TRAVEL)
