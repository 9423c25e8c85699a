"""What the plugin can report of gears and their blanks."""

from __future__ import annotations

from binder.api import Code, Severity

E, W, A = Severity.ERROR, Severity.WARNING, Severity.ADVICE
_DRIVE = "drive:\n  gears: "

MODULES_DIFFER = Code(
    "pitch-mismatch",
    E,
    "Two gears that mesh and have different modules.",
    "Their teeth do not fit into one another: they grind and jam.",
    f"{_DRIVE}{{meshes: [pinion, wheel], module: 0.5 mm}}   # and the wheel has module 0.6",
    "Give both one module; 25.4 divided by the diametral pitch is a module too.",
)
CENTRES_DISAGREE = Code(
    "centres-disagree",
    E,
    "Two gears whose shafts stand at another distance than the teeth want.",
    "Too near they lock, too far they rattle or slip over.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [18, 54], module: 0.5 mm, centres: 19 mm}}",
    "Bore the frame at half the sum of the pitch diameters, and a little more for backlash.",
)
BLANK_WRONG = Code(
    "gear-blank-wrong",
    E,
    "A blank whose outside does not suit the teeth that are cut in it.",
    "The teeth come out without tops, or without room at their feet.",
    "parts:\n  wheel: {disc: {diameter: 27 mm, thickness: 3 mm}}   # 54 teeth of module 0.5",
    "Turn the blank to the module times the teeth and two.",
)
TOO_FEW_TEETH = Code(
    "too-few-teeth",
    W,
    "A gear with so few teeth that cutting them cuts their feet away.",
    "The teeth are weak and run rough.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [10, 40], module: 1 mm}}",
    "Take more teeth, or shift the profile: `shift: [0.4, -0.4]`.",
)
ROOT_UNDER_BORE = Code(
    "root-under-bore",
    E,
    "A gear whose bore leaves no metal under its teeth.",
    "The rim tears at the first load.",
    "parts:\n  pinion: {gear: {module: 0.5 mm, teeth: 12, width: 4 mm},"
    " features: {bore: {reamed: 4 mm}}}",
    "Cut it solid with its shaft, take more teeth, or a thinner shaft.",
)
MODULE_MISSING = Code(
    "module-missing",
    E,
    "Gears whose module is not told.",
    "No blank can be turned and no centre distance bored without it.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [18, 54]}}",
    "Write `module: 0.5 mm`, or `dp: 48`.",
)
TEETH_DIFFER = Code(
    "teeth-differ",
    E,
    "A drive that says other teeth than its part has by its own shape.",
    "One of the two is cut; the ratio, the centres or the blank is then wrong.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [18, 54]}}   # and the pinion is a gear of 20",
    "Leave `teeth:` out where the parts tell them.",
)
GEAR_IMPOSSIBLE = Code(
    "gear-impossible",
    E,
    "Teeth that no gear can have.",
    "They cannot be drawn, cut or meshed.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [2, 54], module: 1 mm}}",
    "Take the number or the size that the finding names.",
)
CONTACT_SHORT = Code(
    "contact-short",
    W,
    "Two gears of which one tooth leaves before the next has come well in.",
    "They run with a knock at every tooth, and wear where they meet.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [12, 12], module: 1 mm, centres: 12.6 mm}}",
    "Bring the centres together, or take more teeth.",
)
TIPS_INTERFERE = Code(
    "tips-interfere",
    W,
    "Teeth whose tips dig into the feet of the other gear.",
    "They jam, or wear a groove into each other.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [12, 80], module: 1 mm}}",
    "Take more teeth for the small gear, or shift its profile.",
)
CANNOT_DIVIDE = Code(
    "cannot-divide",
    W,
    "A number of teeth that the dividing head owned here cannot index.",
    "The blank is on the mandrel when it is found out.",
    f"{_DRIVE}{{meshes: [pinion, wheel], teeth: [18, 127], module: 0.5 mm}}",
    "Take the nearest number that goes, or another plate.",
)

SALVAGED_TAKEN = Code(
    "salvaged-gear-taken-as",
    A,
    "A gear of the scrap box whose module is not told, and is taken as the likeliest.",
    "Its mate is cut to that; two pitches may lie within what a caliper reads.",
    "scrap_box:\n  gear: {what: clock wheel, sizes: {outside: 28 mm, bore: 4 mm}}\n"
    f"{_DRIVE}{{meshes: [pinion, gear], teeth: [18, 54]}}",
    "Measure what the drive's page says next, then write `module:` or `dp:`.",
)
SALVAGED_DIFFERS = Code(
    "salvaged-gear-differs",
    W,
    "A gear of the scrap box that measures as another module than its drive says.",
    "The mate that is cut to it does not run.",
    "scrap_box:\n  gear: {what: clock wheel, sizes: {outside: 28 mm}}\n"
    f"{_DRIVE}{{meshes: [pinion, gear], teeth: [18, 54], module: 0.6 mm}}",
    "Count its teeth again and measure over its tips, then write what it is.",
)
SALVAGED_UNKNOWN = Code(
    "salvaged-gear-unknown",
    W,
    "A gear of the scrap box that is near no pitch which is sold.",
    "A mate for it cannot be bought or cut with cutters that are sold.",
    "scrap_box:\n  gear: {what: clock wheel, sizes: {outside: 31 mm}}\n"
    f"{_DRIVE}{{meshes: [pinion, gear], teeth: [18, 300]}}",
    "Count its teeth again, and measure over the tips.",
)

NO_BORE_TO_SET = Code(
    "no-bore-to-set",
    W,
    "Gears that are `set in mesh`, and no one part that has a bore for each of their shafts.",
    "The second bore is put where the cut gears run: there must be a second bore to put.",
    "drive:\n  crank to drum: {meshes: [pinion, wheel], teeth: [18, 54], module: 0.5 mm, "
    "made: set in mesh}   # each shaft in a bracket of its own",
    "Bore one part for both shafts, or leave `made:` out and shift a bracket until they run.",
)
CODES = (
    MODULES_DIFFER,
    CENTRES_DISAGREE,
    BLANK_WRONG,
    TOO_FEW_TEETH,
    ROOT_UNDER_BORE,
    MODULE_MISSING,
    TEETH_DIFFER,
    GEAR_IMPOSSIBLE,
    CONTACT_SHORT,
    TIPS_INTERFERE,
    CANNOT_DIVIDE,
    SALVAGED_TAKEN,
    SALVAGED_DIFFERS,
    SALVAGED_UNKNOWN,
    NO_BORE_TO_SET,
)
