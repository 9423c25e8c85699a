"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

OIL_SWELLS_WOOD = Code(
    "oil-swells-wood",
    Severity.WARNING,
    "A running joint with a half of wood that is to be oiled.",
    "The wood swells and grips the pin, and the oil holds all the dust.",
    "joints:\n  wheel on peg: {runs_in: [wheel.bore, peg.rod], duty: oiled}   # an oak wheel",
    "Bush the bore with metal, or say `duty: dry` and run it on wax or graphite.",
)
DRY_AND_FAST = Code(
    "dry-and-fast",
    Severity.WARNING,
    "Metal on metal that is to run dry, faster than it can.",
    "It squeals, warms, and picks up within minutes.",
    "joints:\n  shaft: {runs_in: [shaft.journal, frame.bore], duty: runs dry}   # 3000 r/min",
    "Oil it, or bush it with sintered bronze or a plastic that runs dry.",
)
TEST_MISSING = Code(
    "test-missing",
    Severity.ADVICE,
    "An assembly that has something moving in it, and no test.",
    "The bind is found when everything is together, and nobody knows in which joint.",
    "assemblies:\n  winch: {of: [cheek, axle]}",
    "Write what it must do by itself: `test: the axle spins by two fingers`.",
)
GREASE_ON_SINTERED = Code(
    "grease-on-sintered",
    Severity.WARNING,
    "A bush of sintered bronze that is to be greased.",
    "Grease closes the pores; the oil in them no longer comes to the shaft, and it runs dry.",
    "joints:\n  shaft: {runs_in: [shaft.journal, bush.bore], duty: slow and greased}"
    "   # sintered bronze",
    "Soak it in warm oil and say `duty: slow and oiled`, or make the bush of solid bronze.",
)
OIL_ON_FRICTION = Code(
    "oil-on-friction",
    Severity.WARNING,
    "A drive that holds by friction, of which it is said that it is oiled or greased.",
    "It slips under the first load, and rubber swells and rots in it.",
    "drive:\n  pulleys: {belted: [one, other], belt: round, note: oil the belt}",
    "Keep it dry; oil the bearings beside it sparingly.",
)
TRIP_WHEEL_WRONG_WAY = Code(
    "trip-wheel-wrong-way",
    Severity.WARNING,
    "A trip wheel that stands so that the stopping faces of its teeth press the head of its lever "
    "down, whichever way the shaft is turned to use them.",
    "Run that way it jams; run the other way the backs of the teeth slide under the lever.",
    "positions:\n  cam: {reversed: true}   # its stopping faces look the other way now",
    "Turn the wheel round on its shaft: write or take off `reversed: true` under `positions:`.",
)
WEIGHT_ON_BARE_END = Code(
    "weight-on-bare-end",
    Severity.WARNING,
    "An upright shaft whose end turns on wood or on paint.",
    "It drills itself in, the paint rubs off as grit into the bearing, and it turns stiffer.",
    "joints:\n  post in bush: {runs_in: [post.journal, bush.bore]}   # on an oak base",
    "Leave a floor in the bush, or put a pad of bronze under the end, with a drop of oil.",
)

CODES = (
    WEIGHT_ON_BARE_END,
    OIL_SWELLS_WOOD,
    DRY_AND_FAST,
    TEST_MISSING,
    GREASE_ON_SINTERED,
    OIL_ON_FRICTION,
    TRIP_WHEEL_WRONG_WAY,
)
