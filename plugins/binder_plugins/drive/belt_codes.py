"""What the plugin can report of belts and their pulleys."""

from __future__ import annotations

from binder.api import Code, Severity

E, W, C = Severity.ERROR, Severity.WARNING, Severity.CAUTION

BELT_LENGTHS_DIFFER = Code(
    "belt-lengths-differ",
    W,
    "Steps of a pulley that want belts of different lengths.",
    "The belt that is tight on one step hangs on the next.",
    "drive:\n  belt: {belted: [a, b], steps: [[24 mm, 40 mm], [30 mm, 30 mm]], centres: 90 mm}",
    "Make the steps as the finding says, or give the belt a jockey.",
)
BELT_SLIPS = Code(
    "belt-wrap-short",
    W,
    "A belt that lies on its small pulley over less than 120°.",
    "It slips when it should pull.",
    "drive:\n  belt: {belted: [a, b], diameters: [12 mm, 90 mm], centres: 50 mm}",
    "Set the shafts further apart, lead the belt over a jockey, or take two stages.",
)
BELT_CANNOT_REACH = Code(
    "belt-cannot-reach",
    E,
    "Pulleys that stand so near that they touch.",
    "There is no room for both.",
    "drive:\n  belt: {belted: [a, b], diameters: [60 mm, 90 mm], centres: 70 mm}",
    "Set the shafts further apart than half the sum of the diameters.",
)
BELT_BENDS_TOO_SHARP = Code(
    "belt-bends-too-sharp",
    W,
    "A pulley that is smaller than its belt likes to bend.",
    "The belt warms, cracks and goes at its joint.",
    "drive:\n  belt: {belted: [a, b], belt: round, section: 5 mm, diameters: [16 mm, 60 mm]}",
    "Take a larger pulley or a thinner belt.",
)
BELT_STRETCH_OUT = Code(
    "belt-length-wrong",
    W,
    "A bought belt that is too short or too long for its pulleys.",
    "It cannot be put on, or hangs and slips.",
    "bought:\n  cord: {what: round belt, sizes: {length: 300 mm}}   # the run is 420 mm",
    "Buy or weld it to the length that the finding names, or move the shafts.",
)
QUARTER_TURN_CLOSE = Code(
    "quarter-turn-close",
    W,
    "A quarter-turn belt whose shafts stand too near for its pulleys.",
    "It comes off the pulley at a slant and climbs over the edge.",
    "drive:\n  belt: {belted: [a, b], diameters: [40 mm, 60 mm], centres: 80 mm,"
    " quarter_turn: true}",
    "Set the shafts four diameters or more apart.",
)

SHAFTS_STAND_OTHERWISE = Code(
    "shafts-stand-otherwise",
    E,
    "A belt whose centres are written, and whose shafts stand at another distance.",
    "The belt is bought or welded to a length that does not fit.",
    "drive:\n  belt: {belted: [a, b], diameters: [24 mm, 40 mm], centres: 180 mm}",
    "Leave `centres:` out: they are then taken from where the shafts stand.",
)
SLIP_IMPOSSIBLE = Code(
    "slip-impossible",
    E,
    "A belt whose slip is less than nothing, or half of its speed and more.",
    "Belts creep by a hundredth or two; one that slips more burns, and drives nothing.",
    "drive:\n  belt: {belted: [a, b], diameters: [20 mm, 40 mm], slip: 2}",
    "Write it as a part of one, as `slip: 0.02`.",
)
CONE_IMPOSSIBLE = Code(
    "cone-impossible",
    E,
    "Ratios for which no stepped pulleys can be found.",
    "The pulleys would touch, or turn backwards.",
    "drive:\n  belt: {belted: [a, b], ratios: [0.1, 10], smallest: 40 mm, centres: 90 mm}",
    "Set the shafts further apart, bring the ratios together, or take a smaller pulley.",
)

BELT_PULL_SHORT = Code(
    "belt-pull-short",
    W,
    "A belt that slips before it pulls what its load takes.",
    "It stands and burns on the turning pulley when the model starts to work.",
    "drive:\n  belt: {belted: [a, b], diameters: [20 mm, 40 mm], centres: 90 mm, pull: 1 N}\n"
    "  work: {works: [b], torque: 0.5 N·m}",
    "Put it on tighter, take larger pulleys, or lead it over a jockey.",
)
GUARD_WANTED = Code(
    "guard-wanted",
    C,
    "A belt that runs so fast that what it takes it does not let go.",
    "A finger or a sleeve is drawn in where the belt meets its pulley before a hand can follow.",
    "drive:\n  motor: {turns: [a], by: motor, speeds: [2800 r/min]}\n"
    "  belt: {belted: [a, b], diameters: [20 mm, 40 mm], centres: 90 mm}",
    "Guard it on every side that can be reached, and follow the rules of the place.",
)

PULLEY_DIFFERS = Code(
    "pulley-differs",
    E,
    "A step of a pulley that is another size than its belt says.",
    "The belt hangs slack on one step or is torn on the next, and the speed is another.",
    "drive:\n  belt: {belted: [a, b], ratios: [0.6, 1], smallest: 24 mm, centres: 90 mm}"
    "   # a step of `a` is 30 mm",
    "Turn the step as the remark says, or leave its diameter `to suit`.",
)

CODES = (
    PULLEY_DIFFERS,
    SHAFTS_STAND_OTHERWISE,
    BELT_LENGTHS_DIFFER,
    BELT_SLIPS,
    BELT_CANNOT_REACH,
    BELT_BENDS_TOO_SHARP,
    BELT_STRETCH_OUT,
    QUARTER_TURN_CLOSE,
    SLIP_IMPOSSIBLE,
    CONE_IMPOSSIBLE,
    BELT_PULL_SHORT,
    GUARD_WANTED,
)
