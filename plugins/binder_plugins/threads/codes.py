"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

THREAD_NOT_MADE = Code(
    "thread-not-made",
    Severity.ERROR,
    "A designation reads well, but no series has that size with that pitch.",
    "No tap, die, screw or gauge can be had for it, and nobody can repair the model.",
    "features:\n  hole: {tapped: M6 x 3}",
    "Take the nearest thread that is made; the finding names it.",
)
THREAD_NOT_SAID = Code(
    "thread-not-said",
    Severity.ERROR,
    "A threaded joint of which neither half, nor the joint, says the thread.",
    "The maker would have to guess, and the two halves would be guessed apart.",
    "joints:\n  rod in fork: {threaded: [rod.end, fork.hole]}   # hole: {tapped: to suit}",
    "Write `thread: M4` in the joint, or name the thread of one half.",
)
THREAD_HALVES_DIFFER = Code(
    "thread-halves-differ",
    Severity.ERROR,
    "The halves of a threaded joint do not go together: form, size, pitch or hand, or both inside.",
    "It starts, jams after two turns, and strips when it is forced.",
    "joints:\n  rod in fork: {threaded: [rod.thread, fork.thread]}   # M5 into 2 BA",
    "Give both halves one designation; leave one `to suit` and the joint sees to it.",
)
THREAD_ENGAGEMENT_SHORT = Code(
    "thread-engagement-short",
    Severity.ERROR,
    "Less thread is engaged than the material asks: 1 D in steel, 1.5 D in brass and cast iron,"
    " 2 D in aluminium and plastic, never under three full threads.",
    "It strips at the first nip, in the dearer part.",
    "joints:\n  rod in fork: {threaded: [rod.thread, fork.thread]}   # 2 mm of M4 in brass",
    "Make thread and hole longer, take a finer pitch, or say `because:` where nothing pulls.",
)
SCREW_BOTTOMS = Code(
    "screw-bottoms",
    Severity.ERROR,
    "An outside thread below a shoulder is longer than the tapped hole that it goes into is deep.",
    "It meets the bottom or the bush below, and the shoulder never comes down on its seat.",
    "turned:\n  - {name: spigot, diameter: 4 mm, length: 6 mm}\n"
    "  - {name: nut, diameter: 8 mm, length: 3 mm}   # into 5 mm of M4",
    "Shorten the spigot and its thread, or tap deeper where there is metal.",
)
THREAD_CLAIMED_TWICE = Code(
    "thread-claimed-twice",
    Severity.WARNING,
    "Two threaded joints name the same tapped hole, and there is only one such hole.",
    "Two screws in one hole meet in the middle; one of the names is mostly a slip.",
    "joints:\n  one: {threaded: [rod.end, fork.hole]}\n  two: {threaded: [pin.end, fork.hole]}",
    "Give each its own hole, or say `because:` where they come in from both ends.",
)
UNSCREWS_IN_USE = Code(
    "unscrews-in-use",
    Severity.WARNING,
    "A part is screwed on a shaft that turns, and nothing keeps it from turning off.",
    "The drag of the work undoes a right-hand thread in one of the two ways of turning.",
    "joints:\n  axle in cheek: {runs_in: [axle, cheek.bore]}\n"
    "  crank on axle: {threaded: [axle.end, crank.hub]}",
    "Lock it by a pin or compound and say `fixed: true`, or cut the thread left hand.",
)
SCREW_SHAKES_LOOSE = Code(
    "screw-shakes-loose",
    Severity.WARNING,
    "A screw on which a lever turns that a wheel lifts and lets fall, without a lock.",
    "Each blow turns it back a little, until the lever hangs on one side alone.",
    "joints:\n  pivots in post: {threaded: [pivot.thread, post.seat]}\n"
    "  lever on pivots: {hinged: [pivot.point, lever.cone]}",
    "Add a lock nut and name it with `held_by:`, or say `fixed: true` where compound holds it.",
)
LOOKALIKE_THREAD = Code(
    "lookalike-thread",
    Severity.CAUTION,
    "Two threads of the model can be taken for one another: nearly one size and pitch.",
    "The wrong screw goes in two turns, is helped with a spanner, and spoils the hole.",
    "features:\n  one: {tapped: M3}\n  two: {tapped: 5 BA}",
    "Use one family throughout, or bag and label both, and say so with `because:`.",
)
TAP_OR_DIE_NOT_OWNED = Code(
    "tap-or-die-not-owned",
    Severity.WARNING,
    "A thread for which this workshop has no tap or no die.",
    "The evening ends at the first hole; the shop that sells it is shut.",
    "features:\n  hole: {tapped: M3.5}",
    "Take a thread of which both halves are owned, or put the tap or die on the shopping list.",
)
DRILL_FOR_THREAD_NOT_OWNED = Code(
    "drill-for-thread-not-owned",
    Severity.WARNING,
    "No drill of this workshop leaves 50 to 85 % of thread for a tap that it owns.",
    "With the next drill down the tap breaks, with the next one up the thread pulls out.",
    "features:\n  hole: {tapped: M1.6}   # the smallest drill here is 2 mm",
    "Buy the drill that the finding names, or take a thread that the drills here suit.",
)
TAPPING_DRILL_TOO_SMALL = Code(
    "tapping-drill-too-small",
    Severity.WARNING,
    "The hole drilled for a tap is tighter than its thread needs.",
    "More than 85 % of thread holds no better and breaks small taps.",
    "features:\n  pilot: {drilled: 2.4 mm, on: top}\n  hole: {tapped: M3, on: top}",
    "Drill the size that the finding names; or write the tapped hole alone, its drill is chosen.",
)
TAPPING_DRILL_TOO_LARGE = Code(
    "tapping-drill-too-large",
    Severity.WARNING,
    "The hole drilled for a tap leaves less than half a thread.",
    "The thread looks whole at the mouth and pulls out at the first hard turn.",
    "features:\n  pilot: {drilled: 2.8 mm, on: top}\n  hole: {tapped: M3, on: top}",
    "Drill the size that the finding names; or write the tapped hole alone, its drill is chosen.",
)
BLIND_HOLE_TOO_SHALLOW = Code(
    "blind-hole-too-shallow",
    Severity.ERROR,
    "The metal has no room for the full thread and the lead of the tap behind it.",
    "The tap meets the bottom and breaks in a part that is nearly finished.",
    "features:\n  hole: {tapped: M4, on: top, depth: 9.5 mm}   # 10 mm of metal",
    "Ask for less thread, let the hole go through, or give the part more metal.",
)
DRILL_POINT_BREAKS_THROUGH = Code(
    "drill-point-breaks-through",
    Severity.ERROR,
    "The point of the tapping drill, 0.3 of its size, comes out on the other side.",
    "A pimple or a leak on the face that was to stay whole.",
    "features:\n  hole: {tapped: M4, on: top, depth: 8 mm}   # 10 mm of metal",
    "Ask for less thread, finish the bottom flat, or let the hole go through.",
)
TAP_BOTTOMS = Code(
    "tap-bottoms",
    Severity.WARNING,
    "A blind hole has room for a plug tap, and none is owned for its thread.",
    "The taper tap meets the bottom while it still cuts half a thread.",
    "features:\n  hole: {tapped: M2, on: top, depth: 5 mm}   # only a taper tap is there",
    "Buy the plug tap, drill deeper where there is metal, or grind the end of an old tap off.",
)
THREAD_WALL_TOO_THIN = Code(
    "thread-wall-too-thin",
    Severity.WARNING,
    "Less metal than a quarter of the diameter stands round a tapped hole.",
    "The wall swells under the tap, or splits when the screw is tightened.",
    "features:\n  hole: {tapped: M6, on: boss}   # in a boss of 8 mm",
    "Take a smaller or finer thread, or a bigger boss.",
)
THREAD_MOUTH_ROUNDED = Code(
    "thread-mouth-rounded-off",
    Severity.WARNING,
    "A rounded or chamfered edge that reaches into the mouth of a thread in the same end.",
    "The first threads are gone, the tap starts askew on the slope, and nothing seats there.",
    "turned: [{name: ball, diameter: 7 mm, length: 8 mm}]\nfeatures:\n"
    "  thread: {tapped: M3, on: ball, depth: 5 mm}\n  round: {rounded: 2.5 mm, on: ball}",
    "Round it less, or leave a flat as wide as the thread.",
)
THREAD_TO_SHOULDER = Code(
    "thread-to-shoulder",
    Severity.ERROR,
    "An outside thread runs up to a shoulder without room for the die to run out.",
    "The last two turns stay half cut, and the mate never seats on the shoulder.",
    "turned:\n  - {name: spigot, diameter: 5 mm, length: 8 mm}\n"
    "  - {name: head, diameter: 10 mm, length: 4 mm}\n"
    "features:\n  thread: {screwed: M5, on: spigot, length: 8 mm}",
    "Add an `undercut:` of 2 to 3 pitches below the core, or end the thread short of the shoulder.",
)
THREAD_OFF_SIZE = Code(
    "thread-off-size",
    Severity.ERROR,
    "The step that is to be threaded is not of the thread's diameter.",
    "A die does not cut a thick bar, and on a thin one it leaves scratches.",
    "turned: [{name: rod, diameter: 6 mm, length: 30 mm}]\n"
    "features:\n  thread: {screwed: M5, on: rod}",
    "Turn a step of the thread's own diameter, or take the thread that suits the bar.",
)
SLIT_BEFORE_THREAD = Code(
    "slit-before-thread",
    Severity.WARNING,
    "A slot or flat is written before the thread that it crosses.",
    "The tap or die drifts into the slot, and the interrupted thread tears.",
    "features:\n  slit: {slotted: 1 mm, on: boss}\n  thread: {screwed: M8, on: boss}",
    "Write the thread first: cut it, then the slot, then run the tap or die over it again.",
)
CROSS_HOLE_MEETS_THREAD = Code(
    "cross-hole-meets-thread",
    Severity.WARNING,
    "A hole across a step breaks into the thread on it and is written before that thread; or a"
    " hole cuts through a tapped hole of the same part.",
    "The die or tap snags on the edge of the hole and takes the crests off; two screws meet.",
    "features:\n  oil: {drilled: 1 mm, across: spigot}\n  thread: {screwed: M6, on: spigot}",
    "Write the thread first, then the hole, and run the die over it again to clear the burr; end"
    " a tapped hole before the other, or move one.",
)
DRILL_UNKNOWN = Code(
    "drill-unknown",
    Severity.ERROR,
    "A name that is on no drill: no size, number, letter or fraction that is sold.",
    "It cannot be bought, and a guess at it spoils the hole.",
    'binder reckon drill "no. 81"',
    "Write it as 3.3 mm, no. 34, letter F or 7/64 in.",
)
HUB_STOPS_SHORT = Code(
    "hub-stops-short",
    Severity.WARNING,
    "A hub that is screwed up to a shoulder, on a thread that ends short of it.",
    "The plain length does not enter the thread of the hub: it stops there, and is not square.",
    "turned:\n  - {name: journal, diameter: 4 mm, length: 30 mm}\n"
    "  - {name: tail, diameter: 3 mm, length: 5 mm}\n"
    "features:\n  thread: {screwed: M3, on: tail, length: 4 mm}",
    "Undercut the tail at the shoulder and thread it right up, or open the mouth of the hub.",
)

CODES = (
    HUB_STOPS_SHORT,
    THREAD_NOT_MADE,
    THREAD_NOT_SAID,
    THREAD_HALVES_DIFFER,
    THREAD_ENGAGEMENT_SHORT,
    SCREW_BOTTOMS,
    THREAD_CLAIMED_TWICE,
    UNSCREWS_IN_USE,
    SCREW_SHAKES_LOOSE,
    LOOKALIKE_THREAD,
    TAP_OR_DIE_NOT_OWNED,
    DRILL_FOR_THREAD_NOT_OWNED,
    TAPPING_DRILL_TOO_SMALL,
    TAPPING_DRILL_TOO_LARGE,
    BLIND_HOLE_TOO_SHALLOW,
    DRILL_POINT_BREAKS_THROUGH,
    TAP_BOTTOMS,
    THREAD_WALL_TOO_THIN,
    THREAD_MOUTH_ROUNDED,
    THREAD_TO_SHOULDER,
    THREAD_OFF_SIZE,
    SLIT_BEFORE_THREAD,
    CROSS_HOLE_MEETS_THREAD,
    DRILL_UNKNOWN,
)
