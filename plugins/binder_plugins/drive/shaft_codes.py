"""What the plugin can report of shafts: their bearings, how they bend, what stands in the way."""

from __future__ import annotations

from binder.api import Code, Severity

E, W = Severity.ERROR, Severity.WARNING

BUSH_OVERLOADED = Code(
    "bush-overloaded",
    W,
    "A bush that is pressed harder than its metal bears, or whose pressure × speed is too much.",
    "It runs hot, picks up and scores the shaft, or is worn oval by the end of a day's show.",
    "drive:\n  belt: {belted: [a, b], pull: 900 N}   # in a brass bush 4 mm long",
    "A longer bush, a thicker journal, another bush metal, or less pull.",
)
BUSH_TOO_FAST = Code(
    "bush-too-fast",
    W,
    "A shaft whose surface runs faster than the metal of its bush bears.",
    "Oil is thrown off and burns, and the bush seizes on the shaft.",
    "drive:\n  motor: {turns: [axle], by: motor, speeds: [20000 r/min]}   # in a brass bush",
    "A thinner journal, a bush metal for that speed, or a ball race.",
)
SHAFT_BENDS = Code(
    "shaft-bends",
    W,
    "A shaft that gives way under what sits on it by more than a gear or the shaft itself bears.",
    "Teeth come out of mesh and ride on their corners, and belts climb off leaning pulleys.",
    "drive:\n  x: {meshes: [a, b], module: 0.5 mm}   # in the middle of 150 mm of 2 mm rod",
    "A thicker shaft, bearings nearer to the wheel, or one on either side of it.",
)
SHAFT_LEANS = Code(
    "shaft-leans-in-bush",
    W,
    "A shaft that bends so much that it lies on both edges of a bush at once.",
    "It binds under load, and the mouths of the bush are worn bell-shaped.",
    "joints:\n  axle in cheek: {runs_in: [axle.journal, cheek.bore]}   # a long bush, a thin axle",
    "A thicker shaft, a shorter bush, or a freer fit.",
)
SHAFT_TOO_THIN = Code(
    "shaft-too-thin",
    W,
    "A shaft in which torque and bending together make more stress than is usual for its steel.",
    "It takes a set at the first jam, and runs out of true for ever.",
    "drive:\n  hand: {turns: [axle], by: hand, force: 40 N, radius: 60 mm}   # on 3 mm rod",
    "The thicker shaft that the finding names, or less load.",
)
THRUST_NOT_MET = Code(
    "thrust-not-met",
    W,
    "A gear that pushes its shaft along, towards an end where no shoulder or collar stops it.",
    "The shaft walks out of mesh, and rubs on what stands beside it.",
    "drive:\n  x: {bevels: [pinion, crown], teeth: [20, 40], module: 1 mm}   # a plain rod",
    "A shoulder, a collar or a hub beside the bearing; where it runs for long, a washer between.",
)
SHAFT_WHIRLS = Code(
    "shaft-whirls",
    W,
    "A shaft that runs near the speed at which it whirls with what sits on it.",
    "It shakes, bows like a skipping rope, and throws off what sits on it.",
    "drive:\n  motor: {turns: [axle], by: motor, speeds: [9000 r/min]}   # 2 mm rod, 200 mm long",
    "Run it well below, thicken the shaft, bring the bearings together, or lighten the wheel.",
)
MESH_OUT_OF_LINE = Code(
    "mesh-out-of-line",
    W,
    "Two gears whose faces do not stand opposite one another.",
    "They touch over a part of their width, and wear a step into one another.",
    "shafts:\n  axle: {along: [cheek.bore, wheel, cheek.bore]}   # the pinion stands further along",
    "A spacer from the row on the shaft, or a wider pinion.",
)
PAWL_OUT_OF_LINE = Code(
    "pawl-out-of-line",
    W,
    "A pawl that does not stand over the whole face of its ratchet wheel.",
    "It holds by a corner, chips it, and lets the load go when the shaft has moved to one side.",
    "joints:\n  pawl: {hinged: [pawl.hole, cheek.hole]}   # the wheel stands 1 mm from the cheek",
    "A washer under the pawl, a pawl as thick as reaches over the teeth, or a longer seat of the "
    "wheel.",
)
BELT_OUT_OF_LINE = Code(
    "belt-out-of-line",
    W,
    "Two pulleys or chain wheels that do not stand in one plane.",
    "A belt climbs off, or rubs on the side of its groove; a chain grinds its plates away.",
    "positions:\n  pulley: {at: 8 mm in front of motor_pulley}",
    "Move one of them along its shaft by the offset that the finding names.",
)
GEAR_HITS_SHAFT = Code(
    "gear-hits-shaft",
    E,
    "A gear whose tips reach a shaft, post or wheel with which it does not mesh.",
    "It cuts into it at the first turn, or cannot be put in at all.",
    "drive:\n  x: {meshes: [pinion, wheel], teeth: [18, 90], module: 1 mm}   # a shaft beside",
    "Move that shaft, take fewer teeth or a finer module, or thin the shaft where they pass.",
)
WORM_HAND_WRONG = Code(
    "worm-hand-wrong",
    E,
    "A worm and a wheel of unlike hands.",
    "The threads cross instead of following one another: it binds and can never mesh.",
    "bought:\n  wheel: {what: worm wheel of 40 teeth, left hand}\n"
    "drive:\n  x: {worms: [worm, wheel], teeth: 40, hand: right}",
    "Cut the worm to the hand of the wheel: a right-hand worm drives a right-hand wheel.",
)

CODES = (
    BUSH_OVERLOADED,
    BUSH_TOO_FAST,
    SHAFT_BENDS,
    SHAFT_LEANS,
    SHAFT_TOO_THIN,
    THRUST_NOT_MET,
    SHAFT_WHIRLS,
    MESH_OUT_OF_LINE,
    PAWL_OUT_OF_LINE,
    BELT_OUT_OF_LINE,
    GEAR_HITS_SHAFT,
    WORM_HAND_WRONG,
)
