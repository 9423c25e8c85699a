"""What the plugin can report of a train: what is missing, what contradicts itself."""

from __future__ import annotations

from binder.api import Code, Severity

E, W, A = Severity.ERROR, Severity.WARNING, Severity.ADVICE
_DRIVE = "drive:\n  crank to drum: "

TEETH_MISSING = Code(
    "teeth-missing",
    E,
    "A wheel of the drive whose number of teeth is not told.",
    "Without it there is no ratio, no centre distance and no blank.",
    f"{_DRIVE}{{meshes: [pinion, wheel], module: 0.5 mm}}",
    "Write `teeth: [18, 54]`, or let the part be a gear by its own shape.",
)
BELT_DIAMETERS = Code(
    "belt-diameters",
    E,
    "A belt whose pulleys do not tell as many diameters as they should.",
    "The ratio and the length of the belt follow from them.",
    "drive:\n  belt: {belted: [motor, shaft], diameters: [20 mm]}",
    "Write a diameter for each pulley, a pair for each step, or give the parts their grooves.",
)
ORBIT_WANTS_FOUR = Code(
    "planetary-members",
    E,
    "A planetary train that does not name its sun, planet, ring and arm.",
    "Two of the four turn by the third; which two, only the names can tell.",
    "drive:\n  reducer: {orbits: [sun, planet, ring], teeth: [12, 18, 48], held: ring}",
    "Name all four in this order: sun, planet, ring, arm.",
)
ORBIT_TEETH = Code(
    "planetary-teeth",
    E,
    "A ring whose teeth are not those of the sun and two planets together.",
    "The planets stand on a line between sun and ring: they would not fit in.",
    "drive:\n  reducer: {orbits: [sun, planet, ring, arm], teeth: [12, 18, 50], held: ring}",
    "Give the ring as many teeth as the sun and twice the planet.",
)
ORBIT_HELD = Code(
    "planetary-held",
    E,
    "The member of a planetary train that stands still is none of its own.",
    "With nothing held the train only idles.",
    "drive:\n  reducer: {orbits: [sun, planet, ring, arm], teeth: [12, 18, 48], held: frame}",
    "Write sun, ring or arm.",
)
DRIVE_LOCKS = Code(
    "drive-locks",
    E,
    "Two paths of the drive want a shaft to turn at two speeds.",
    "It cannot turn at all, or something slips, strips or bends until it does.",
    "drive:\n  a: {meshes: [one, two], teeth: [20, 40]}\n"
    "  b: {chained: [one, two], teeth: [10, 30]}",
    "Free one of the two paths, put a slipping belt in one, or make the ratios agree.",
)
DRIVE_IN_A_RING = Code(
    "drive-in-a-ring",
    W,
    "A drive that closes a ring of shafts which are coupled already.",
    "Two paths of one ratio agree on paper; in metal one of them carries all and the other binds.",
    "drive:\n  a: {meshes: [one, two], teeth: [20, 40]}\n"
    "  b: {chained: [one, two], teeth: [10, 20]}",
    "Leave one of the two out.",
)
NOT_DRIVEN = Code(
    "not-driven",
    W,
    "A drive that nothing turns.",
    "Its wheels are made and stand still.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [18, 54]}}   # and the hand turns another shaft",
    "Join it to the rest, or say what turns it.",
)
MOVER_MISSING = Code(
    "mover-not-said",
    A,
    "A drive without anything that turns it.",
    "Speeds are then only told as multiples of the first shaft's.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [18, 54]}}",
    "Say it: `hand: {turns: [crank], by: hand, speeds: [60 r/min]}`.",
)
TURNS_WRONG_WAY = Code(
    "turns-wrong-way",
    E,
    "A shaft that turns the other way round than its work wants.",
    "It unwinds instead of winding, and unscrews what it should drive.",
    "drive:\n  work: {works: [spindle], way: clockwise}   # and the train turns it anticlockwise",
    "Cross a belt, put an idler between two gears, or turn the mover the other way.",
)
SPEED_OFF = Code(
    "speed-off",
    W,
    "A shaft that turns slower or faster than is wanted, at every setting.",
    "The ratio is found out on the finished model, by its sound.",
    "drive:\n  work: {works: [spindle], least: 200 r/min, most: 300 r/min}",
    "Change a ratio; the finding says by how much.",
)
DRIVE_TOO_WEAK = Code(
    "drive-too-weak",
    W,
    "A mover that gives less torque than the load takes, losses included.",
    "It stalls with the first real load.",
    "drive:\n  hand: {turns: [crank], by: hand, speeds: [40 r/min], force: 5 N, radius: 20 mm}",
    "Gear it down further, lighten the load, or take a stronger mover.",
)
DRUM_TOO_SMALL = Code(
    "drum-too-small",
    W,
    "A drum that is too thin for its rope.",
    "The rope does not lie down, kinks, and wears in a season.",
    "drive:\n  rope: {winds: [barrel.drum, twine], rope: 3 mm, diameter: 8 mm}",
    "Take a drum of eight ropes' diameters or more for cord, sixteen for wire rope.",
)
HANGS_ON_NOTHING = Code(
    "load-not-held",
    W,
    "A load that hangs, and nothing that holds it when the crank is let go.",
    "It runs down, the crank handle spins, and somebody reaches for it.",
    "drive:\n  rope: {winds: [barrel.drum, twine], load: 500 g, hangs: true}",
    "Add a ratchet with its pawl, a worm that holds, or a brake.",
)

WHICH_SHAFT = Code(
    "which-shaft",
    E,
    "A drive that names a wheel which is made more than once and stands on several shafts.",
    "It cannot be told which of them turns which; speeds would be those of another shaft.",
    "parts:\n  wheel: {quantity: 2}   # on the first shaft and on the second\n"
    "drive:\n  x: {meshes: [pinion, wheel], teeth: [18, 54]}",
    "Name the shaft instead, with teeth or diameters; or write the wheels as two parts.",
)
TURNS_NOTHING = Code(
    "turns-nothing",
    W,
    "A mover on a shaft that drives nothing, or one that stands still.",
    "The crank is turned, and nothing of the model moves.",
    "drive:\n  hand: {turns: [crank], by: hand, speeds: [60 r/min]}   # no drive names the crank",
    "Join its shaft to the rest, or name the shaft that it turns.",
)

CODES = (
    TEETH_MISSING,
    BELT_DIAMETERS,
    ORBIT_WANTS_FOUR,
    ORBIT_TEETH,
    ORBIT_HELD,
    DRIVE_LOCKS,
    DRIVE_IN_A_RING,
    NOT_DRIVEN,
    MOVER_MISSING,
    TURNS_WRONG_WAY,
    SPEED_OFF,
    DRIVE_TOO_WEAK,
    DRUM_TOO_SMALL,
    HANGS_ON_NOTHING,
    WHICH_SHAFT,
    TURNS_NOTHING,
)
