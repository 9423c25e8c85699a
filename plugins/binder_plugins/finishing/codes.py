"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

FINISH_ON_WRONG_METAL = Code(
    "finish-on-wrong-metal",
    Severity.ERROR,
    "A finish that this material does not take.",
    "Steel black on brass comes off on the rag; the anodiser's bath dissolves a steel part.",
    "parts:\n  plate: {material: mild steel, finish: anodised}",
    "Take a finish that the help names, or another material.",
)
WILL_NOT_HARDEN = Code(
    "will-not-harden",
    Severity.ERROR,
    "A part to be hardened, of a material that heat and quenching do not harden.",
    "It is heated, quenched and scaled for nothing, and wears out in an afternoon.",
    "parts:\n  pawl: {material: mild steel, finish: hardened and tempered}",
    "Silver steel or gauge plate hardens through; mild steel can be `case hardened`.",
)
HARDENED_NOT_TEMPERED = Code(
    "hardened-not-tempered",
    Severity.WARNING,
    "A part that is hardened, with nothing said of tempering.",
    "Left glass hard it cracks at the first knock, or overnight on the bench.",
    "parts:\n  pawl: {material: silver steel, finish: hardened}",
    "Write `hardened and tempered`, and the colour: `tempered to dark straw`.",
)
FLAME_DRAWS_TEMPER = Code(
    "flame-draws-temper",
    Severity.WARNING,
    "A hardened part that is silver soldered, brazed, welded or shrunk.",
    "The flame is far over any tempering heat: the part is soft again.",
    "parts:\n  pawl: {material: silver steel, finish: hardened and tempered}\n"
    "joints:\n  pawl on arm: {silver_soldered: [pawl.tail, arm.slot]}",
    "Join it by compound, pin or screw, or harden after joining and say so in `because:`.",
)
FINISH_UNKNOWN = Code(
    "finish-unknown",
    Severity.ADVICE,
    "A finish of which no process is known here.",
    "No coats, drying times or masks can be printed for it.",
    "parts:\n  plate: {material: brass, finish: as the old one}",
    "Use a word of the trade (`painted`, `polished and lacquered`), or keep your own sheet.",
)

CODES = (
    FINISH_ON_WRONG_METAL,
    WILL_NOT_HARDEN,
    HARDENED_NOT_TEMPERED,
    FLAME_DRAWS_TEMPER,
    FINISH_UNKNOWN,
)
