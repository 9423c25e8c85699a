"""What the plugin can report of fits: words, sizes and what comes out."""

from __future__ import annotations

from binder.api import Code, Severity

E, W = Severity.ERROR, Severity.WARNING
_JOINT = "joints:\n  pin in arm: "

CLASS_UNDEFINED = Code(
    "class-undefined",
    E,
    "A tolerance class that the standard does not have, or not at this size.",
    "Nobody can look its limits up, so each builder makes another fit of it.",
    f"{_JOINT}{{slides: [pin.rod, arm.bore], fit: H7/q9}}",
    "Write a class of ISO 286, as H7/g6, or say the duty: `duty: slides`.",
)
FIT_UNREADABLE = Code(
    "fit-unreadable",
    E,
    "The words of a fit or duty say nothing of a fit, or two things at once.",
    "The limits follow from them; a guess would be turned into metal.",
    f"{_JOINT}{{slides: [pin.rod, arm.bore], duty: wobbly}}",
    "Say one duty, as `runs slow and oiled`, a tool, as `reamed 6 mm`, or a class, as `H7/g6`.",
)
FIT_SIZE_MISSING = Code(
    "fit-size-missing",
    E,
    "Neither half of a fit tells how large it is.",
    "A hole to suit waits for its shaft, and that one is not told either.",
    f"{_JOINT}{{slides: [pin.rod, arm.bore]}}   # both to suit",
    "Write the size of one half, or `size:` in the joint.",
)
FIT_HALVES_DIFFER = Code(
    "fit-halves-differ",
    E,
    "The two halves of a fit have sizes that cannot go together so.",
    "Both are made right to their drawings, and one of them is scrap.",
    f"{_JOINT}{{slides: [pin.rod, arm.bore]}}   # rod 6 mm, bore 5 mm",
    "Give both one size and let the joint find the clearance.",
)
FIT_CAN_BIND = Code(
    "fit-can-bind",
    E,
    "A fit that has to move, and whose limits allow no clearance.",
    "Half of the pairs turn, the other half are filed until they do.",
    f"{_JOINT}{{runs_in: [pin.rod, arm.bore], fit: H7/k6}}",
    "Take a looser class, as H8/f7, or say the duty and let the joint choose.",
)
FIT_CAN_BE_LOOSE = Code(
    "fit-can-be-loose",
    W,
    "A fit that has to hold by its nip, and whose limits allow clearance.",
    "It goes in by hand and falls out in use.",
    f"{_JOINT}{{pressed: [pin.rod, arm.bore], fit: H7/k6}}",
    "Take a tighter class, as H7/s6, or bond it.",
)
FIT_NOT_REACHABLE = Code(
    "fit-not-reachable",
    W,
    "Tool and bar as they come cannot give the fit that is asked for.",
    "The reamer cuts its own size and the bar has its own; nothing is left to turn.",
    f"{_JOINT}{{pressed: [pin.rod, arm.bore]}}   # reamed hole, rod as bought",
    "Turn the shaft from a larger bar, buy ground rod, bond it, or loosen the fit.",
)
REAMER_NOT_OWNED = Code(
    "reamer-not-owned",
    W,
    "A reamed hole of a size for which the workshop has no reamer.",
    "Found when the hole is drilled under size and the evening is over.",
    "features: {bore: {reamed: 7 mm}}   # the workshop has 6 and 8",
    "Bore and lap it, move both halves to an owned size, or put the reamer on the shopping list.",
)
PRESS_SPLITS_BOSS = Code(
    "press-splits-boss",
    W,
    "A press or shrink fit that stretches its ring past what the metal bears.",
    "A brass boss gives and lets go; cast iron cracks at once.",
    "joints:\n  bush in boss: {pressed: [bush.outside, boss.bore], fit: H7/u6}   # thin boss",
    "Take less interference, a larger boss, or retaining compound.",
)
BAR_TOO_SMALL_FOR_NIP = Code(
    "bar-too-small-for-nip",
    Severity.ERROR,
    "A pressed outside whose upper limit is larger than the bar that it is turned from.",
    "The bar of the nominal size drops through the bore that it should be pressed into.",
    "stock: 10 mm round bar\njoints: {bush in arm: {pressed: [bush.outside, arm.seat]}}"
    "   # a seat of 10 mm",
    "Take a larger bar, or make seat and outside smaller.",
)
BUSH_WALL_THIN = Code(
    "bush-wall-thin",
    W,
    "A pressed bush whose wall is under a tenth of its bore, or under 0.8 mm.",
    "It buckles on the way in instead of going home.",
    "joints:\n  bush in arm: {pressed: [bush.outside, arm.bore]}   # bush 6 bore, 7 outside",
    "Make the bush thicker, or bond it in with retaining compound.",
)
BUSH_BORE_TOO_SOON = Code(
    "bush-bore-too-soon",
    Severity.CAUTION,
    "A pressed bush closes by more than its shaft has room, and its bore cannot be reamed after.",
    "The shaft went in on the bench and will not enter the finished bush.",
    "parts: {bush: {features: {bore: {bored: 6 mm}}}}   # pressed in, then runs a shaft",
    "Write the bore as reamed, so that it is sized when the bush is in place.",
)
SINTERED_BUSH_REAMED = Code(
    "sintered-bush-reamed",
    W,
    "A porous bush whose bore is reamed.",
    "The cutter smears the pores shut and the bush runs dry.",
    "parts: {bush: {material: sintered bronze, features: {bore: {reamed: 6 mm}}}}",
    "Buy it to size and press it in on a mandrel, or size it with a ball.",
)
FINER_THAN_GAUGE = Code(
    "finer-than-gauge",
    W,
    "Limits that no measuring tool of this workshop can tell, to be kept without the mate at hand.",
    "The size is guessed, and called right.",
    f"{_JOINT}{{slides: [pin.rod, arm.bore], fit: H6/g5, made: to drawing}}",
    "Make one half to suit the other, try it with a gauge, or take a coarser class.",
)
COATING_EATS_CLEARANCE = Code(
    "coating-eats-clearance",
    W,
    "A finish that takes more of the clearance than there is.",
    "It ran before it was painted, and not after.",
    "parts: {pin: {finish: painted black}}   # and it runs in a close bore",
    "Mask the bore or journal and say so in `finish:`, or give more clearance.",
)
FIT_NOT_SAID = Code(
    "fit-not-said",
    E,
    "A reamed hole that no joint names, though another part has a step of just that size.",
    "Whether it should turn, slide or hold is left to each builder.",
    "features: {bore: {reamed: 6 mm}}   # and a 6 mm journal elsewhere, no joint",
    "Say by a joint what meets there.",
)
QUESTION_UNREAD = Code(
    "fit-question-unread",
    E,
    "The words of a question about limits or fits cannot be read.",
    "An answer to another question than the one asked is worse than none.",
    "binder reckon fit twelve H7/g6",
    'Write the size with its unit first, then class or duty: `binder reckon fit "12 mm" H7/g6`.',
)

MASTER_MADE_TO_SUIT = Code(
    "master-made-to-suit",
    W,
    "The half that is named as master is the one that has to be made to the other.",
    "A reamed hole and a rod as bought come as they come: the build order begins with that half.",
    f"{_JOINT}{{slides: [pin.rod, arm.bore], master: pin.rod}}   # arm.bore is reamed",
    "Name the other half, leave `master:` out, or write the hole as bored.",
)
NOTHING_TO_TURN = Code(
    "nothing-to-turn",
    W,
    "A shaft that is turned to a fit, from a bar of its own nominal size.",
    "The fit wants a few hundredths less, and no tool takes so little off a bar that is not true.",
    f"stock: 12 mm round bar\n{_JOINT}{{runs_in: [pin.rod, arm.bore]}}   # a rod of 12 mm",
    "Take the next larger bar, or drawn rod as bought and a bore that is made to suit it.",
)

FIT_CODES = (
    CLASS_UNDEFINED,
    FIT_UNREADABLE,
    FIT_SIZE_MISSING,
    FIT_HALVES_DIFFER,
    FIT_CAN_BIND,
    FIT_CAN_BE_LOOSE,
    FIT_NOT_REACHABLE,
    REAMER_NOT_OWNED,
    PRESS_SPLITS_BOSS,
    BAR_TOO_SMALL_FOR_NIP,
    BUSH_WALL_THIN,
    BUSH_BORE_TOO_SOON,
    SINTERED_BUSH_REAMED,
    FINER_THAN_GAUGE,
    COATING_EATS_CLEARANCE,
    FIT_NOT_SAID,
    QUESTION_UNREAD,
    MASTER_MADE_TO_SUIT,
    NOTHING_TO_TURN,
)
