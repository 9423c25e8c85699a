"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

STACK_MAY_JAM = Code(
    "stack-may-jam",
    Severity.WARNING,
    "Sizes along an axis that leave no play where each of them lies at its worst limit.",
    "Every part passes inspection, and the shaft is stiff when the last nut is tight.",
    "shafts:\n  axle: {along: [cheek.bore, drum, cheek.bore], apart: 24 mm}   # drum 23.8 mm",
    "Name a piece `to_suit:` and make it last, to the others as measured; or leave more play.",
)
STACK_JAMS_AT_WORST = Code(
    "stack-jams-at-worst",
    Severity.ADVICE,
    "More than three sizes along an axis that leave play as they usually fall (root sum square), "
    "and none where each of them lies at its worst limit.",
    "Most go together, and the one that is stiff shows no part that is wrong.",
    "shafts:\n  axle: {along: [cheek.bore, drum, hub, boss, cheek.bore], apart: 40 mm}   # 39.4 mm",
    "Measure them as they are made, and let the last one take up what the others left.",
)
STACK_TOO_LOOSE = Code(
    "stack-too-loose",
    Severity.ADVICE,
    "A part between two shoulders with more play, as drawn, than such a part wants.",
    "It rattles from the first turn, and knocks its shoulders round.",
    "joints:\n  grip on pin: {swivels: [grip.bore, pin.journal]}   # 18 mm on a journal of 18.5 mm",
    "Shorten the journal; with `master:` the half that it names is measured, and the other is "
    "made to it.",
)
CLOSING_PIECE_THIN = Code(
    "closing-piece-thin",
    Severity.WARNING,
    "The piece that closes the row may have to be thinner than can be turned.",
    "The others used up the room, and a washer of foil is wanted on the last evening.",
    "shafts:\n  axle: {along: [cheek.bore, drum, washer, cheek.bore], apart: 24 mm}",
    "Shorten another piece, so that the one made to suit is 0.5 mm thick at the least.",
)
MESH_MAY_BIND = Code(
    "mesh-may-bind",
    Severity.WARNING,
    "Bores that may come so near to one another that the gears have no backlash.",
    "It grinds once a turn, and no running-in cures it.",
    "drive:\n  winch: {meshes: [pinion, wheel], teeth: [18, 54], module: 0.5 mm}",
    "Add `made: set in mesh`: bore one, cut the gears, and put the second where they run.",
)
MESH_MAY_PART = Code(
    "mesh-may-part",
    Severity.WARNING,
    "Bores that may come so far apart that one pair of teeth lets go before the next has hold.",
    "Small teeth knock and jump; the finer the pitch, the less a stray hole is forgiven.",
    "drive:\n  winch: {meshes: [a, b], teeth: [18, 54], module: 0.2 mm}   # marked out by hand",
    "Add `made: set in mesh`, drill the bores to coordinates, or take coarser teeth.",
)
TRIP_MAY_MISS = Code(
    "trip-may-miss",
    Severity.WARNING,
    "A tooth that laps over the tail of its lever by less than the sizes of both may stray.",
    "Every part is as drawn, and the wheel turns past the tail without lifting it; or it lifts "
    "twice as far.",
    "drive:\n  helve: {trips: [cam, helve], lifts: 4, lift: 6 mm, arm: 43 mm}   # laps 0.4 mm",
    "Leave the tail long, `left_long: 1.5 mm`, and file it to the lift on the standing machine.",
)
DRAWN_WITHOUT_FLOAT = Code(
    "drawn-without-float",
    Severity.ADVICE,
    "A row whose closing piece is named, and that leaves less than nothing with all as drawn.",
    "The drawing of that piece tells a length at which it cannot go in.",
    "shafts:\n  axle: {along: [cheek.bore, drum, cheek.bore], apart: 24 mm, to_suit: drum}"
    "   # drum 26 mm",
    "Draw the closing piece as long as the others leave, less the float.",
)
NIPPED_BETWEEN_SHOULDERS = Code(
    "nipped-between-shoulders",
    Severity.WARNING,
    "A part that turns on a journal shorter than itself, with a shoulder at one end and something "
    "drawn up at the other.",
    "It turns until the screw is tight, or the rivet spread, and then never again.",
    "joints:\n  saddle on pin: {swivels: [saddle.bore, screw.pin]}   # 6 mm on a pin of 5.9 mm\n"
    "  keeper on pin: {screwed: [keeper.underside, screw.pin], fastener: M3 cheese head screw}",
    "Make the journal a hair longer than what turns on it.",
)

CODES = (
    STACK_MAY_JAM,
    STACK_JAMS_AT_WORST,
    STACK_TOO_LOOSE,
    CLOSING_PIECE_THIN,
    MESH_MAY_BIND,
    MESH_MAY_PART,
    TRIP_MAY_MISS,
    DRAWN_WITHOUT_FLOAT,
    NIPPED_BETWEEN_SHOULDERS,
)
