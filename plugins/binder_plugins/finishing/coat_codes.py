"""What the plugin can report of coats: what their heat loosens, what they hide or harm."""

from __future__ import annotations

from binder.api import Code, Severity

FINISH_MELTS_SOLDER = Code(
    "finish-melts-solder",
    Severity.WARNING,
    "A finish done in heat, on a thing with soft solder in it.",
    "It goes into the oven in one piece and comes out in two.",
    "parts:\n  lamp: {material: brass, finish: powder coated}\n"
    "joints:\n  cap on lamp: {soft_soldered: [cap.spigot, lamp.bore]}",
    "Paint it cold, or silver solder the joint.",
)
FINISH_LOOSENS_BOND = Code(
    "finish-loosens-bond",
    Severity.WARNING,
    "A finish done in heat, on a thing with adhesive in it.",
    "Compound and glue let go far below that heat.",
    "parts:\n  hub: {material: mild steel, finish: heat blued}\n"
    "joints:\n  hub on shaft: {retained: [hub.bore, shaft.end]}",
    "Finish the loose part before it is bonded and say so in `because:`, or finish it cold.",
)
FINISH_BEFORE_JOINING = Code(
    "finish-before-joining",
    Severity.WARNING,
    "A coat on a piece that is soldered, brazed, welded or glued to others afterwards.",
    "The flame burns it off, and no glue or solder holds on it.",
    "parts:\n  side: {material: mild steel, finish: painted black}\n"
    "fabrications:\n  frame: {pieces: [2 off side], joined: silver_soldered}",
    "Write the finish on the fabrication.",
)
PLATED_HARD_STEEL = Code(
    "plated-hard-steel",
    Severity.WARNING,
    "Hard steel or a spring that is plated, and nothing said of baking.",
    "The bath drives hydrogen into it: it breaks days later, with nobody near.",
    "parts:\n  leaf: {material: spring steel, finish: zinc plated}",
    "Order it `baked` within hours of plating, or black it and oil it.",
)
FINISH_LOCKED_IN = Code(
    "finish-locked-in",
    Severity.ADVICE,
    "A coat on a part that cannot be taken out of its mate again, and the mate gets none.",
    "The coat is brushed round an edge, and runs over both.",
    "parts:\n  arm: {material: mild steel, finish: painted black}\n"
    "joints:\n  pin in arm: {riveted: [pin.tail, arm.eye]}",
    "Write the same finish on both, or say what is masked: `painted black, the pin masked`.",
)

CODES = (
    FINISH_MELTS_SOLDER,
    FINISH_LOOSENS_BOND,
    FINISH_BEFORE_JOINING,
    PLATED_HARD_STEEL,
    FINISH_LOCKED_IN,
)
