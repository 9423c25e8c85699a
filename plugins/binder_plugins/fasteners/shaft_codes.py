"""What the plugin can report of grub screws, pins, keys and circlips on shafts."""

from __future__ import annotations

from typing import Final

from binder.api import Code, Severity

GRUB_ON_BARE_SHAFT: Final = Code(
    "grub-on-bare-shaft",
    Severity.WARNING,
    "A grub screw on a shaft that has no flat for it and is not made here.",
    "It raises a burr that locks the wheel on for ever, and slips until then.",
    "joints:\n  wheel on motor: {clamped: [wheel.bore, motor], fastener: M3 grub screw}",
    "File a flat or drill a dimple in the shaft, or put a brass slug under the screw.",
)
GRUB_TOO_BIG: Final = Code(
    "grub-out-of-proportion",
    Severity.WARNING,
    "A grub screw under a quarter or over two thirds of its shaft.",
    "A thin one slips, a thick one leaves no hub and bruises the shaft.",
    "fastener: M6 grub screw   # on a 6 mm shaft",
    "Take about half of the shaft: M3 on 6 mm.",
)
GRUB_IN_SOFT_HUB: Final = Code(
    "grub-in-soft-hub",
    Severity.WARNING,
    "A grub screw in aluminium, zinc or plastic that holds by less than 1.5 diameters.",
    "It strips when it is nipped up, and the hub has to be bored out for a bush.",
    "joints:\n  pulley on shaft: {clamped: [pulley.bore, shaft.seat], fastener: M4 grub screw}",
    "Make the boss larger, press a brass or steel bush in it, or use a smaller screw.",
)
SPLIT_HUB_HAS_NO_ROOM: Final = Code(
    "split-hub-has-no-room",
    Severity.WARNING,
    "A split hub with less metal beside its bore than two clearance holes of its screw.",
    "The screw breaks out into the bore, or through the end of the ear.",
    "joints:\n  lever on shaft: {clamped: [lever.bore, shaft.seat], fastener: M5 cap screw}",
    "Make the hub longer on the side that is split, or use a smaller screw.",
)
PIN_TOO_BIG: Final = Code(
    "pin-too-big",
    Severity.WARNING,
    "A cross pin of more than a third of its shaft.",
    "The shaft shears where it is drilled.",
    "fastener: 3 mm dowel pin   # across a 6 mm shaft",
    "Take a third of the shaft at most, or use a flat and a grub screw.",
)
SINGLE_PIN_IS_HINGE: Final = Code(
    "single-pin-is-hinge",
    Severity.WARNING,
    "One cross pin is all that holds two parts which lie against one another.",
    "It is a hinge: the first side load turns the one about the pin, and the hole wears oval.",
    "joints:\n  jib on post: {pinned: [jib.foot, post.foot], fastener: 3 mm dowel pin}",
    "A second pin at a distance, or a stay; what is to turn is `hinged:`.",
)
PIN_WIDER_THAN_SHAFT: Final = Code(
    "pin-wider-than-shaft",
    Severity.ERROR,
    "A cross pin as thick as its shaft, or thicker.",
    "The drill cuts the shaft in two.",
    "joints:\n  wheel on axle: {pinned: [wheel.boss, axle.seat], fastener: 8 mm dowel pin}",
    "Take a pin of a third of the shaft at the most.",
)
PIN_TOO_SHORT: Final = Code(
    "pin-too-short",
    Severity.WARNING,
    "A pin that ends inside the outer one of thin plates, or a split pin with no leg to bend.",
    "It bears on half the plate, wears the hole oval and drops out.",
    "joints:\n  jib on post: {pinned: [jib.foot, post.foot], fastener: 3 mm x 12 mm dowel pin}",
    "Take the next length that is sold; it may stand out a little on each side.",
)
SPLIT_PIN_OFF_SIZE: Final = Code(
    "split-pin-off-size",
    Severity.WARNING,
    "A split pin that its standard has for a thinner or thicker bolt.",
    "A thin one is shorn off, a thick one weakens the bolt.",
    "fastener: 1 mm split pin   # through a bolt of 10 mm",
    "Take the split pin of the table, or leave its size out.",
)
PIN_IN_HARD_SHAFT: Final = Code(
    "pin-in-hard-shaft",
    Severity.WARNING,
    "A pin across a shaft that is hardened.",
    "The drill skates and is spoilt; the part is finished and cannot be drilled.",
    "parts:\n  spindle: {material: silver steel, finish: hardened and tempered, ...}",
    "Drill before hardening, or use a flat ground on it and a grub screw.",
)
PIN_TAPER_MIXED: Final = Code(
    "pin-taper-mixed",
    Severity.ERROR,
    "Metric taper pins (1:50) and inch ones (1:48) in one model.",
    "A pin of one system in the hole of the other holds at one end only.",
    "fastener: 1/16 in taper pin   # another joint has a 2 mm taper pin",
    "Use one system in the whole model, that of your taper reamers.",
)
KEY_NOT_STANDARD: Final = Code(
    "key-not-standard",
    Severity.WARNING,
    "A key of another width than the table has for its shaft.",
    "No key steel of that size is sold for it, and the shaft is weakened.",
    "fastener: 5 mm x 5 mm x 12 mm key   # on a 12 mm shaft, which has 4 mm x 4 mm",
    "Take the key of the table, or say `because:`.",
)
KEY_LONGER_THAN_SEAT: Final = Code(
    "key-longer-than-seat",
    Severity.WARNING,
    "A Woodruff key whose seat is longer than its step, or than the hub over it.",
    "The cutter runs into the shoulder, or the key stands out of the hub and tips.",
    "fastener: 4 mm x 6.5 mm woodruff key   # 15.7 mm long, on a step of 12 mm",
    "Make step and hub longer than the seat, or take a smaller key or a parallel one.",
)
WOODRUFF_CUTTER_NOT_OWNED: Final = Code(
    "woodruff-cutter-not-owned",
    Severity.WARNING,
    "A Woodruff key for which the workshop has no cutter of that diameter and width.",
    "No other cutter sinks a round seat; the shaft waits for the post.",
    "joints:\n  wheel on axle: {keyed: [wheel.bore, axle.seat], fastener: woodruff key}",
    "Put the cutter on the shopping list, write it under `tee_slot_cutters:` once it is there,"
    " or use a parallel key.",
)
KEYWAY_THINS_HUB: Final = Code(
    "keyway-thins-hub",
    Severity.WARNING,
    "Less metal over a keyway than the key is high (common practice).",
    "The hub splits along the corner of the keyway.",
    "joints:\n  gear on shaft: {keyed: [gear.bore, shaft.seat]}   # a 12 mm shaft in an 18 mm hub",
    "Make the hub larger, the key smaller, or retain and pin it.",
)
CIRCLIP_GROOVE_WRONG: Final = Code(
    "circlip-groove-wrong",
    Severity.ERROR,
    "A circlip groove whose width or diameter is not that of the circlip.",
    "The clip does not go in, or springs out.",
    "features: {groove: {grooved: 0.5 mm, on: journal, depth: 0.3 mm}}   # an 8 mm shaft",
    "Write `grooved: to suit` and let the joint size it.",
)
CLIP_OF_OTHER_SIZE: Final = Code(
    "clip-of-other-size",
    Severity.ERROR,
    "A circlip or E-clip that is made for another shaft or bore than the one it is to sit on.",
    "It drops off, or cannot be opened far enough to go on.",
    "joints:\n  wheel on axle: {clipped: [wheel, axle.seat], fastener: 93 mm external circlip}",
    "Take the clip of the table, or leave the size out and let the joint choose.",
)
CLIP_HAS_NO_ROOM: Final = Code(
    "clip-has-no-room",
    Severity.ERROR,
    "A step on which the piece, the groove of its clip and the metal beyond it do not go.",
    "The land beside the groove breaks off, or the clip has no groove to go in.",
    "turned: [{name: tip, diameter: 6 mm, length: 8 mm}]   # with a hub of 8 mm",
    "Make the step longer, or the hub shorter.",
)

SHAFT_CODES: Final = (
    GRUB_ON_BARE_SHAFT,
    GRUB_TOO_BIG,
    GRUB_IN_SOFT_HUB,
    SPLIT_HUB_HAS_NO_ROOM,
    PIN_TOO_BIG,
    SINGLE_PIN_IS_HINGE,
    PIN_WIDER_THAN_SHAFT,
    PIN_TOO_SHORT,
    SPLIT_PIN_OFF_SIZE,
    PIN_IN_HARD_SHAFT,
    PIN_TAPER_MIXED,
    KEY_NOT_STANDARD,
    KEY_LONGER_THAN_SEAT,
    WOODRUFF_CUTTER_NOT_OWNED,
    KEYWAY_THINS_HUB,
    CIRCLIP_GROOVE_WRONG,
    CLIP_OF_OTHER_SIZE,
    CLIP_HAS_NO_ROOM,
)
