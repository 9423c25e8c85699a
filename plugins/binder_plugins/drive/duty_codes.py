"""What the plugin can report of ropes, hammers, flywheels, linkages, cams and worms."""

from __future__ import annotations

from binder.api import Code, Severity

E, W, A, C = Severity.ERROR, Severity.WARNING, Severity.ADVICE, Severity.CAUTION

ROPE_NOT_HELD = Code(
    "rope-not-held",
    W,
    "More rope than the drum holds between its flanges.",
    "The last turns climb over the flange and wind round the axle.",
    "drive:\n  rope: {winds: [barrel.drum, twine], rope: 2 mm, load: 1 kg, height: 20 m}",
    "A wider or thicker drum, thinner rope, or less height.",
)
ROPE_WAY_WRONG = Code(
    "rope-way-wrong",
    E,
    "A rope that is led over something that is not there, or over more or fewer sheaves than its"
    " lines have.",
    "The load hangs in other lines than were reckoned with, and the drum pulls twice as hard.",
    "drive:\n  rope: {winds: [barrel.drum, twine], lines: 2, over: [head]}   # and the block?",
    "Name every sheave from the drum to the dead end, or write the `lines:` that there are.",
)
ROPE_TOO_SHORT = Code(
    "rope-too-short",
    W,
    "Rope that is bought shorter than its way, the lift, and the turns that stay on the drum.",
    "Let out to the ground, the last turns slip off the drum and the load drops.",
    "bought:\n  twine: {what: braided cord, sizes: {diameter: 1 mm, length: 200 mm}}",
    "Buy the length that the finding names.",
)
CHAIN_LENGTH_WRONG = Code(
    "chain-length-wrong",
    W,
    "A chain whose whole links do not suit the centres of its wheels.",
    "It cannot be closed, or hangs and rides over the teeth.",
    "drive:\n  chain: {chained: [a, b], teeth: [10, 30], pitch: 6 mm, centres: 100 mm, links: 40}",
    "Bore the centres that the finding names, or give the chain a jockey.",
)
TACKLE_IMPOSSIBLE = Code(
    "tackle-impossible",
    E,
    "More lines or sheaves than a tackle has.",
    "Friction of so many sheaves takes all that is won.",
    "drive:\n  rope: {winds: [barrel.drum, twine], load: 1 kg, lines: 40}",
    "Take twelve lines and twelve sheaves at the most.",
)
HAMMER_DOES_NOT_LAND = Code(
    "hammer-does-not-land",
    W,
    "A hammer that is lifted again before it has come down.",
    "It floats, and the cam knocks against its tail instead of lifting it.",
    "drive:\n  helve: {trips: [cam, helve], lifts: 6, lift: 10 mm}   # at 200 r/min",
    "Run it slower, or give it fewer lifts a turn.",
)
LIFT_IMPOSSIBLE = Code(
    "lift-impossible",
    E,
    "Lifts that run into one another.",
    "The next lift takes the tail before the last has let it go: nothing ever falls.",
    "drive:\n  helve: {trips: [cam, helve], lifts: 6, lift: 10 mm, over: 90 deg}",
    "Fewer lifts, or a lift over a smaller angle.",
)
RIM_TOO_FAST = Code(
    "rim-too-fast",
    C,
    "A flywheel whose rim goes faster than is customary for what it is made of.",
    "A wheel that bursts throws its rim through the workshop.",
    "drive:\n  wheel: {steadies: [flywheel]}   # 300 mm of cast iron at 3000 r/min",
    "Run it slower, behind a guard, and let no one stand in line with it.",
)
FLYWHEEL_TOO_LIGHT = Code(
    "flywheel-too-light",
    W,
    "A flywheel that lets the speed fall further than is wanted.",
    "The model limps, or stalls at the first lift.",
    "drive:\n  wheel: {steadies: [flywheel], swing: 0.1}",
    "A heavier rim, a larger wheel, or more speed.",
)
LINKAGE_CANNOT_TURN = Code(
    "linkage-cannot-turn",
    E,
    "A linkage or cam that cannot go through one turn.",
    "It locks at a dead point, and what drives it bends a rod.",
    "drive:\n  beam: {rocks: [crank, beam], crank: 30 mm, rod: 40 mm, rocker: 30 mm, frame: 50 mm}",
    "Change the lengths as the finding says.",
)
TRANSMISSION_POOR = Code(
    "transmission-angle-poor",
    W,
    "A rod that comes near to one line with the lever that it moves.",
    "There it pushes on the pivot instead of turning the lever, and sticks.",
    "drive:\n  beam: {rocks: [crank, beam], crank: 10 mm, rod: 30 mm, rocker: 12 mm, frame: 31 mm}",
    "A longer rod, a shorter crank, or a longer lever.",
)
CAM_TOO_STEEP = Code(
    "cam-too-steep",
    W,
    "A cam that pushes its follower more sideways than forward.",
    "The follower jams in its guide.",
    "drive:\n  valve: {cams: [cam, rod], lift: 10 mm, base: 12 mm, rise: 45 deg, follower: roller}",
    "A larger base circle, a longer rise, or a smaller lift.",
)
CHAIN_TEETH_FEW = Code(
    "chain-teeth-few",
    W,
    "A wheel of so few teeth that its chain runs over corners.",
    "The chain jerks at every tooth, wears its pins, and jumps when it has stretched.",
    "drive:\n  chain: {chained: [a, b], teeth: [6, 30], pitch: 8 mm, centres: 120 mm}",
    "More teeth on both wheels, or a chain of a smaller pitch.",
)
LINKAGE_STANDS_OTHERWISE = Code(
    "linkage-stands-otherwise",
    W,
    "A link that is written of one length, or at one angle, and stands in the model at another.",
    "Stroke and dead points are reckoned from the one, and the parts are made to the other.",
    "drive:\n  ram: {cranks: [disc, ram], throw: 12 mm, rod: 40 mm}   # its pin stands 10 mm out",
    "Write what the parts have, or move the hole for the pin.",
)
CAM_IMPOSSIBLE = Code(
    "cam-impossible",
    E,
    "A cam that says too little, or what cannot be cut.",
    "Nothing tells the maker where to file to.",
    "drive:\n  valve: {cams: [cam, rod], lift: 6 mm, base: 20 mm, nose: 18 mm}"
    "   # rounder than the cam",
    "Tell it one way: by `lift:`, `base:` and angles, by a `nose:`, or by its `radii:`.",
)
CAM_STRIKES = Code(
    "cam-strikes",
    A,
    "A cam whose follower jumps from one speed to another.",
    "It strikes at every turn: it is heard at once, and in an hour it is seen.",
    "drive:\n  valve: {cams: [cam, rod], lift: 6 mm, base: 40 mm, nose: 6 mm, follower: flat}",
    "Bow the flanks, put a roller under it, or take another law than the uniform one.",
)
CAM_UNDERCUT = Code(
    "cam-undercut",
    W,
    "A cam whose outline would have to cross itself.",
    "The cutter takes away what made the motion; the follower never reaches its lift.",
    "drive:\n  valve: {cams: [cam, rod], lift: 10 mm, base: 10 mm, rise: 30 deg, follower: flat}",
    "A larger base circle, a smaller roller, or a gentler law.",
)
WORM_IMPOSSIBLE = Code(
    "worm-impossible",
    E,
    "A worm and wheel that cannot be.",
    "The threads are deeper than the worm is thick, or the wheel has too few teeth.",
    "drive:\n  hoist: {worms: [worm, wheel], teeth: 6, module: 1 mm, diameter: 12 mm}",
    "Take the sizes that the finding names.",
)
WORM_DOES_NOT_HOLD = Code(
    "worm-does-not-hold",
    W,
    "A worm that is meant to hold and whose thread is too steep for it.",
    "The load turns it backwards; shaking does it sooner.",
    "drive:\n  hoist: {worms: [worm, wheel], starts: 2, teeth: 20, module: 1 mm,"
    " diameter: 12 mm, holds: true}",
    "Take one start, or a thicker worm, or a brake.",
)
SCALE_MISSING = Code(
    "scale-not-said",
    E,
    "The prototype's speed is told, and the model's scale is not.",
    "How fast the model should look follows from both.",
    "drive:\n  looks: {prototype: [barrel], speed: 12 r/min}   # and no scale under model",
    'Write `scale: "1:16"` under `model:`.',
)
SPEED_LOOKS_WRONG = Code(
    "speed-looks-wrong",
    A,
    "A model that runs much slower or faster than looks right at its scale.",
    "A crane that whirls like a sewing machine looks like a toy.",
    "drive:\n  looks: {prototype: [barrel], speed: 12 r/min}   # and the barrel does 400",
    "Gear it towards the speed that the finding names.",
)

MOTION_CLASH = Code(
    "motion-clash",
    E,
    "Something that turns knocks what stands in its way, or what turns beside it.",
    "It is found on the finished model, with a bent rod or a torn tooth.",
    "drive:\n  hand: {turns: [arm], by: hand, speeds: [40 r/min]}   # and a post stands in the way",
    "Move one of the two, shorten what turns, or take away where they meet.",
)

CODES = (
    MOTION_CLASH,
    ROPE_NOT_HELD,
    ROPE_WAY_WRONG,
    ROPE_TOO_SHORT,
    TACKLE_IMPOSSIBLE,
    CHAIN_LENGTH_WRONG,
    HAMMER_DOES_NOT_LAND,
    LIFT_IMPOSSIBLE,
    RIM_TOO_FAST,
    FLYWHEEL_TOO_LIGHT,
    LINKAGE_CANNOT_TURN,
    TRANSMISSION_POOR,
    CAM_TOO_STEEP,
    CHAIN_TEETH_FEW,
    LINKAGE_STANDS_OTHERWISE,
    CAM_IMPOSSIBLE,
    CAM_STRIKES,
    CAM_UNDERCUT,
    WORM_IMPOSSIBLE,
    WORM_DOES_NOT_HOLD,
    SCALE_MISSING,
    SPEED_LOOKS_WRONG,
)
