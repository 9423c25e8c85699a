"""What the plugin can report of bearings, and of what is pressed, bonded or soldered."""

from __future__ import annotations

from binder.api import Code, Severity

E, W = Severity.ERROR, Severity.WARNING

LIKE_METALS_RUB = Code(
    "like-metals-rub",
    W,
    "Two halves of one soft metal that rub on each other.",
    "They pick up, score and seize, oil or no oil.",
    "joints: {axle in arm: {runs_in: [axle.journal, arm.bore]}}   # both aluminium",
    "Put a bronze bush between, or make one half of cast iron, hardened steel or plastic.",
)
BEARING_SHORT = Code(
    "bearing-short",
    W,
    "A shaft in one bearing alone that is shorter than the shaft is thick.",
    "It wobbles, and wears the bore to a bell mouth.",
    "joints: {axle in plate: {runs_in: [axle.journal, plate.bore]}}   # 8 mm shaft, 3 mm plate",
    "Make the bearing 1 to 1.5 diameters long, or carry the shaft in two.",
)
PV_TOO_HIGH = Code(
    "pv-too-high",
    W,
    "Load and speed are more than the bush material bears.",
    "It runs hot, then loose, then not at all.",
    "joints: {axle in arm: {runs_in: [axle.journal, arm.bore], load: 500 N, speed: 3000 r/min}}",
    "Make the bush longer, take a better bearing metal, or a ball race.",
)
BEARINGS_NOT_IN_LINE = Code(
    "bearings-not-in-line",
    W,
    "A shaft in several bearings that are made apart, with nothing to bring them in line.",
    "It turns in each of them, and is tight when all are screwed up.",
    "joints: {axle in cheeks: {runs_in: [axle.journal, cheek.bore]}}   # two cheeks",
    "Say `made: reamed in line`, or `made: drilled together`.",
)
NO_WAY_FOR_OIL = Code(
    "no-way-for-oil",
    W,
    "A long running bearing into which no oil can get.",
    "It squeaks by Sunday, and is scored by Monday.",
    "joints: {post in bush: {runs_in: [post.journal, bush.bore]}}   # 20 mm long, no oil hole",
    "Drill an oil hole of 1 to 1.5 mm on the unloaded side, and call it `oil`.",
)
METALS_CORRODE = Code(
    "metals-corrode",
    Severity.ADVICE,
    "Steel or iron that is said to be wet, in brass, bronze or aluminium.",
    "It rusts in over the winter, and comes out with a drill.",
    "joints: {pin in arm: {slides: [pin.rod, arm.bore], note: stands in water}}",
    "Make the steel half of stainless steel or bronze, or keep it oiled.",
)
LEAD_IN_MISSING = Code(
    "lead-in-missing",
    W,
    "A press fit with no chamfer on the half that enters, nor on the hole.",
    "The sharp edge shaves the bore, and what was nip becomes swarf.",
    "joints: {bush in arm: {pressed: [bush.outside, arm.bore]}}   # no chamfer",
    "Give the leading edge a chamfer of 0.3 to 0.5 mm at 15 to 30 deg.",
)
AIR_TRAPPED = Code(
    "air-trapped",
    E,
    "A shaft that is pressed or bonded into a blind hole, with no way out for the air.",
    "It springs back out, and wipes the compound off on its way.",
    "joints: {pin in arm: {pressed: [pin.rod, arm.bore]}}   # the bore is 10 mm deep",
    "File a flat on the shaft, drill a vent of 1 mm and call it `vent`, or go through.",
)
BOND_GAP_WRONG = Code(
    "bond-gap-wrong",
    W,
    "A gap in which compound or glue cannot hold.",
    "Too tight and it is wiped off; too wide and it stays weak.",
    "joints: {gear on axle: {retained: [gear.bore, axle.seat], gap: 0.3 mm}}",
    "Leave 0.02 to 0.05 mm on diameter for compound; knurl or sleeve a worn shaft.",
)
BOND_NEAR_HEAT = Code(
    "bond-near-heat",
    E,
    "Two pieces that are bonded to each other and then heated together.",
    "Compound lets go long before solder runs.",
    "joints: {post in foot: {retained: [post.end, foot.bore]}}   # both pieces of a soldered frame",
    "Solder first and bond afterwards, or pin the two.",
)
SOLDER_GAP_WRONG = Code(
    "solder-gap-wrong",
    W,
    "A gap into which solder cannot run, or in which it puddles.",
    "The joint looks full at the edge and is empty inside.",
    "joints: {post in foot: {silver_soldered: [post.foot, foot.bore], gap: 0.4 mm}}",
    "Leave 0.04 to 0.08 mm for silver solder, held open by pop marks.",
)
SOLDER_STEPS_CLASH = Code(
    "solder-steps-clash",
    W,
    "One part with two joints of the same solder, and nothing that parts their heats.",
    "The first joint drops apart while the second is heated.",
    "joints:\n  a: {silver_soldered: [boss.spigot, plate.hole]}\n"
    "  b: {silver_soldered: [lug.spigot, plate.eye]}",
    "Name alloys that melt in steps by `compound:`, or say there `one heat`.",
)
SEALED_CAVITY_HEATED = Code(
    "sealed-cavity-heated",
    E,
    "A blind hole that is closed by a joint in the flame.",
    "The air in it blows the joint apart, and hot alloy into the face.",
    "joints: {post in foot: {silver_soldered: [post.foot, foot.bore]}}   # the bore is blind",
    "Drill a vent of 1 mm first and call it `vent`, or go through.",
)
TAPER_MISSING = Code(
    "taper-missing",
    E,
    "A joint by a taper whose shaft, or whose bore, is a plain cylinder.",
    "A cylinder in a cone touches along one line; it neither centres nor holds.",
    "joints: {wheel on arbor: {tapered: [wheel.bore, arbor.nose]}}   # both of 12 mm all along",
    "Give the shaft a step with `taper:`, and the bore `bored: to suit`.",
)
TAPER_HALVES_DIFFER = Code(
    "taper-halves-differ",
    E,
    "A taper and its bore of two rates, or of sizes that never touch.",
    "It rocks on one end, or goes in to the shoulder and is loose.",
    "features: {bore: {bored: 12 mm, narrows_to: 11 mm, depth: through}}"
    "   # for a nose of 12 mm to 10 mm",
    "Leave the bore to suit: it then follows from the shaft.",
)
TAPER_DOES_NOT_HOLD = Code(
    "taper-does-not-hold",
    W,
    "A taper so blunt that it lets go by itself, with nothing that draws it in.",
    "The wheel walks off its nose under the first load.",
    "turned: [{name: nose, taper: 12 mm to 8 mm, length: 10 mm}]   # no nut, no draw screw",
    "Make it 1 in 10 or finer, or draw it in by a nut, a screw or a draw bar.",
)
OIL_HOLE_SHORT = Code(
    "oil-hole-short",
    W,
    "An oil hole that stops at the wall of its bore, or short of it.",
    "Its point just pricks the bore or does not reach it, and no oil comes through.",
    "oil: {drilled: 1.5 mm, on: right, depth: 5 mm}   # the bore's wall lies 5 mm down",
    "Drill it a millimetre past the wall, before the bore is finished.",
)

JOINING_CODES = (
    LIKE_METALS_RUB,
    BEARING_SHORT,
    PV_TOO_HIGH,
    BEARINGS_NOT_IN_LINE,
    NO_WAY_FOR_OIL,
    OIL_HOLE_SHORT,
    METALS_CORRODE,
    LEAD_IN_MISSING,
    AIR_TRAPPED,
    BOND_GAP_WRONG,
    BOND_NEAR_HEAT,
    SOLDER_GAP_WRONG,
    SOLDER_STEPS_CLASH,
    SEALED_CAVITY_HEATED,
    TAPER_MISSING,
    TAPER_HALVES_DIFFER,
    TAPER_DOES_NOT_HOLD,
)
