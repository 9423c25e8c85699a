"""What the plugin can report of cords in the way, pawls that do not hold, and loads that tip."""

from __future__ import annotations

from binder.api import Code, Severity

W, A, C = Severity.WARNING, Severity.ADVICE, Severity.CAUTION

CORD_IN_THE_WAY = Code(
    "cord-in-the-way",
    W,
    "A straight run of a cord that goes through a part.",
    "The cord rubs itself through on the edge, or drags the part round, at the first load.",
    "drive:\n  rope: {winds: [barrel.drum, twine], over: [head_sheave], rope: 1 mm}"
    "   # and the post stands between the two",
    "Move or shorten the part, move the drum, or lead the cord round it over one more sheave.",
)
PAWL_LETS_GO = Code(
    "pawl-lets-go",
    W,
    "A pawl that the wheel drags off its teeth instead of pushing it against its pin.",
    "It clicks, looks right, and holds nothing: the load runs down at the first stop.",
    "positions:\n  ratchet: {reversed: true}   # its teeth look the other way now",
    "Turn the ratchet wheel round, or set the pawl's pin on the other side of its nose.",
)
PAWL_FALLS_OUT = Code(
    "pawl-falls-out",
    W,
    "A pawl without a spring whose own weight swings it off the wheel.",
    "It hangs beside the teeth, and the load runs down.",
    "joints:\n  pawl on cheek: {hinged: [pawl.hole, cheek.pin_hole]}   # below the wheel",
    "Hinge it above the wheel so that its nose falls in, or name its spring.",
)
PAWL_DOES_NOT_SEAT = Code(
    "pawl-does-not-seat",
    W,
    "A pawl whose end, so far from its pin, cannot be filed to lie on a tooth of its wheel: it "
    "does not come to the foot, the tooth pushes it out, or the nose would be too thin.",
    "It rides on the points and lets go, or breaks at the first stop.",
    "parts:\n  pawl: {stock: 6 mm x 4 mm flat bar, cut: 30 mm,"
    " features: {hole: {drilled: 2 mm, at: 9 mm from left}, nose: {filed: to the ratchet}}}",
    "Make it as long as is told, or move its pin.",
)
PAWL_WITHOUT_TAIL = Code(
    "pawl-without-tail",
    A,
    "A pawl that holds a load and has nothing behind its pin to lift it by.",
    "To lower the load a finger goes between the pawl and a wheel that wants to run.",
    "parts:\n  pawl: {stock: 6 mm x 3 mm flat bar, cut: 16 mm,"
    " features: {hole: {drilled: 2 mm, at: 3 mm from left}}}",
    "Make it longer, with the hole so far from the end that a tail stands out behind the pin.",
)
LOAD_TIPS_MODEL = Code(
    "load-tips-the-model",
    W,
    "A load that hangs past the part which stands, so that the weight of the model holds it "
    "down less than twice.",
    "It goes over with the load, and takes hold of the hand at the crank.",
    "drive:\n  rope: {winds: [barrel.drum, twine], load: 1.5 kg, over: [head_sheave]}"
    "   # 30 mm past the edge of a light base",
    "Clamp or screw it to the bench and write that as `because:`; or a wider, heavier base.",
)

KNOT_HAS_NO_ROOM = Code(
    "knot-has-no-room",
    W,
    "A cord that is knotted behind a flange, where the knot is thicker than the room there.",
    "The knot rubs on the wheel beside it, or on the pawl, and wears through.",
    "parts:\n  barrel: {turned: [..., {name: flange, ...}, {name: neck, length: 1 mm}, ...],"
    " features: {tie: {drilled: 1 mm, on: flange, depth: 1 mm}}}   # and a cord of 0.8 mm",
    "Lengthen the step behind the flange to three cords' thickness.",
)

CODES = (
    CORD_IN_THE_WAY,
    PAWL_LETS_GO,
    PAWL_FALLS_OUT,
    PAWL_DOES_NOT_SEAT,
    PAWL_WITHOUT_TAIL,
    LOAD_TIPS_MODEL,
    KNOT_HAS_NO_ROOM,
)
