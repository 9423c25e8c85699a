"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity
from binder_plugins.operations.judging.metal_codes import METAL_CODES
from binder_plugins.operations.judging.reach_codes import REACH_CODES
from binder_plugins.operations.judging.tool_codes import TOOL_CODES

E, W, A = Severity.ERROR, Severity.WARNING, Severity.ADVICE


NO_MACHINE_FOR_IT = Code(
    "no-machine-for-it",
    W,
    "Something is turned, milled or divided, and no machine here does that.",
    "It is found out when the blank is sawn.",
    "lever: {block: ..., features: {slot: {pocketed: 20 mm, ...}}}   # in a shop without a mill",
    "Another shape, a part in two pieces, or an evening at a friend's machine.",
)
NOTHING_TO_GRIP = Code(
    "nothing-to-grip",
    W,
    "No chuck or collet here takes the bar, or nothing is left to hold for the second end.",
    "It is held by a finished edge, runs out, and flies off.",
    "turned: [{name: rim, diameter: 20 mm, length: 2 mm}, {name: neck, ball: 8 mm, length: 8 mm}]",
    "Leave a plain step of 3 mm or more, put a hole through it, or take another bar.",
)
STANDS_OUT_TOO_FAR = Code(
    "stands-out-too-far",
    W,
    "Turned work that stands out of the jaws more than four times its thickness, or two and a "
    "half times as far as it is gripped, with nothing to carry its end (common practice).",
    "It bends away from the tool, chatters, and climbs over it.",
    "turned: [{name: spindle, diameter: 3 mm, length: 40 mm}]   # from 6 mm bar, no tailstock",
    "Shorter or thicker; or tell the tailstock or a steady in the workshop file.",
)
NEEDS_STEADY = Code(
    "needs-steady",
    W,
    "Turned work longer than ten times its thickness, and no steady that takes it "
    "(common practice).",
    "Even between centres its middle bends away: it comes out thick in the middle.",
    "turned: [{name: rod, diameter: 4 mm, length: 60 mm}]   # turned down from 6 mm bar",
    "Use a rod that can stay as bought, turn it in short lengths, or make a steady.",
)
DRILL_CANNOT_REACH = Code(
    "drill-cannot-reach",
    W,
    "A hole deeper than 20 times its diameter, which is where long-series drills end.",
    "The chips stay in the flutes, the drill wanders and breaks off inside.",
    "features:\n  oil: {drilled: 1 mm, on: end, depth: 40 mm}",
    "From both ends, stepped from a larger hole, or larger.",
)
TWO_SETTINGS_FOR_TRUE = Code(
    "two-settings-for-true",
    W,
    "Fits that must be true to one another are cut in two grips, and nothing here grips truly.",
    "A three-jaw chuck runs out by 0.05 to 0.1 mm, and so do the two fits.",
    "turned: [{name: a, diameter: 8 mm, ...}, {name: flange, ...}, {name: b, diameter: 8 mm, ...}]",
    "A collet or four-jaw chuck; a bore right through, for a mandrel; or both fits on one side.",
)
THIN_PART_CRUSHED = Code(
    "thin-part-crushed",
    W,
    "A three-jaw chuck grips a wall thinner than a twelfth of its diameter (common practice).",
    "It is bored round in the jaws and springs to a three-lobed hole when it is let go.",
    "turned: [{name: ring, diameter: 40 mm, length: 8 mm}]\nfeatures: {bore: {bored: 36 mm, ...}}",
    "A collet, a split ring round it, or bore it before the outside and finish on a mandrel.",
)
LOWEST_SPEED_TOO_FAST = Code(
    "lowest-speed-too-fast",
    W,
    "The lowest speed of the machine is more than a quarter too fast for this cut.",
    "The edge is burnt off the tool in one pass.",
    "flywheel: {outside: 180 mm, ...}   # of steel, in a lathe that turns 130 r/min at least",
    "Carbide, a slower machine or back gear, or a softer metal.",
)
BAR_WILL_NOT_PASS = Code(
    "bar-will-not-pass",
    W,
    "A bar that neither goes through the spindle nor into any saw here.",
    "There is no way to get a piece off it.",
    "stock: 80 mm round bar   # lathe passes 20 mm, saw 60 mm",
    "Order it sawn to length, or a casting.",
)
REAM_BLIND = Code(
    "ream-blind",
    W,
    "A blind hole is reamed, and the only reamer of its size is a hand reamer.",
    "Its long lead leaves the last third of the hole tapered.",
    "features:\n  seat: {reamed: 6 mm, on: end, depth: 8 mm}",
    "Right through, a machine reamer, or bore it.",
)
FLAT_BOTTOM_BY_DRILL = Code(
    "flat-bottom-by-drill",
    A,
    "A part is pressed or bonded into a blind hole that is only drilled.",
    "A drill leaves a cone of 118°: the part stands on its edge, or on air.",
    "joints:\n  pin in block: {pressed: [pin.outside, block.hole]}   # drilled 6 mm deep",
    "Ream or bore it; finish the floor with a slot drill; or let the hole go deeper.",
)
CANNOT_BE_MEASURED = Code(
    "cannot-be-measured",
    W,
    "A size with limits that no instrument of this workshop reaches at all.",
    "It is made by guess.",
    "turned: [{name: rim, diameter: 180 mm, ...}]   # to a fit; the caliper ends at 150 mm",
    "Make its mate first and try it; borrow an instrument; or give it no limits.",
)
OPERATIONS_LOOP = Code(
    "operations-loop",
    E,
    "Acts of the work wait for one another in a ring.",
    "There is nowhere to start.",
    "two bores, each to be reamed after a hole that is drilled from the other",
    "The lines name each reason: move a feature to the other end, or change what is made first.",
)
MOTOR_TOO_WEAK = Code(
    "motor-too-weak",
    W,
    "A drill asks more power of a machine than its motor has, at any feed.",
    "The belt slips or the drill stalls, and jams when it breaks through.",
    "features:\n  hole: {drilled: 25 mm, ...}   # in steel, on 150 W",
    "Bore it after a smaller drill, turn slower, or take a larger machine.",
)
WILL_WARP = Code(
    "will-warp",
    A,
    "A long thin piece of bright steel, milled half through from one side.",
    "The skin of bright-drawn bar is under stress: it bows when one side is cut away.",
    "block: {length: 150 mm, width: 20 mm, height: 6 mm}   # a groove 3 mm deep along its length",
    "Anneal it, rough both sides before either is finished, or buy black or ground stock.",
)
CANNOT_SET_OVER = Code(
    "cannot-set-over",
    W,
    "A step off the axis, and no four-jaw chuck to set it over.",
    "A packed three-jaw holds on one jaw.",
    "turned: [{diameter: 8 mm, ...}, {diameter: 8 mm, throw: 6 mm, ...}]",
    "A four-jaw chuck, or build the crank up from pieces.",
)
MILL_TRAVEL_TOO_SHORT = Code(
    "mill-travel-too-short",
    W,
    "A part with milled cuts that is longer than the table of the mill travels.",
    "It is moved half-way, and the two halves of the slot do not meet.",
    "block: {length: 400 mm, ...}   # the table travels 260 mm",
    "Shorter cuts from each end, a part in two pieces, or a larger mill.",
)
HOLE_TOO_LARGE = Code(
    "hole-too-large",
    W,
    "A drilled hole larger than any drill that the machines here take.",
    "The drill does not go in the chuck, or stalls.",
    "plate: {length: 300 mm, ...}\nfeatures: {hole: {drilled: 20 mm, ...}}",
    "Saw and file it, bore it, or make it smaller.",
)
KNURL_BENDS_IT = Code(
    "knurl-bends-it",
    A,
    "A knurl on work thinner than 4 mm (common practice).",
    "The wheels push it away, and it comes out of the chuck bent.",
    "features:\n  grip: {knurled: 0.5 mm, on: stem}   # a stem of 3 mm",
    "Knurl thicker bar and turn it down beside the knurl, or clamp-type wheels from both sides.",
)
THREAD_TURNS_THE_WORK = Code(
    "thread-turns-the-work",
    W,
    "A die or a tap that turns the work in its grip: too little of it is held for the torque, "
    "whichever end is made first (p² × d × 2000 N/mm² / 8; the grip by common practice).",
    "The work spins in the jaws, is scored all round, and the thread tears.",
    "turned: [{name: head, diameter: 8 mm, length: 4 mm}, {name: shank, diameter: 10 mm, ...}]\n"
    "features: {thread: {screwed: M10, on: shank, length: 30 mm}}",
    "A longer or thicker step to hold it by, a collet of its size, or a finer thread.",
)

_OWN = tuple(value for value in list(globals().values()) if isinstance(value, Code))
CODES = (*_OWN, *TOOL_CODES, *REACH_CODES, *METAL_CODES)
BY_NAME = {code.name: code for code in CODES}
