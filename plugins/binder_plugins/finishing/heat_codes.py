"""What the plugin can report of hardening, tempering and other heat."""

from __future__ import annotations

from binder.api import Code, Severity

TEMPER_DOES_NOTHING = Code(
    "temper-does-nothing",
    Severity.WARNING,
    "A part that is to be tempered, of a metal that does not harden.",
    "It shows every colour in the book, and is as soft as before.",
    "parts:\n  pin: {material: mild steel, finish: tempered to dark straw}",
    "Make it of silver steel, hardened and tempered; for the colour alone write `heat blued`.",
)
TEMPER_COLOUR_WRONG = Code(
    "temper-colour-wrong",
    Severity.WARNING,
    "A tempering colour at which this steel is not used.",
    "A spring let down to straw snaps at its first bend; tough steel stays brittle until it is "
    "far hotter than any colour.",
    "parts:\n  leaf: {material: spring steel, finish: hardened and tempered to dark straw}",
    "Take the colour or the heat that the help names, or another steel.",
)
HARDENED_TOO_SOON = Code(
    "hardened-too-soon",
    Severity.WARNING,
    "A hardened part that is drilled or reamed together with its mate.",
    "The drill squeals and goes blunt: nothing cuts it any more.",
    "parts:\n  arm: {material: silver steel, finish: hardened and tempered}\n"
    "joints:\n  pin in arm: {pinned: [arm.eye, post.eye], made: drilled together}",
    "Drill it soft to the drawing, or put it together soft, drill, take it apart and harden it.",
)
BENDS_IN_THE_QUENCH = Code(
    "bends-in-the-quench",
    Severity.WARNING,
    "A hardened part so slender that it comes out of the quench bent, and that has a fit.",
    "It is past straightening, and too hard to turn true.",
    "parts:\n  spindle: {material: silver steel, finish: hardened and tempered}   # 6 mm, 100 long",
    "Leave it as bought, harden its end alone and say so in `because:`, or leave it to grind.",
)
HEAT_NOT_KNOWN = Code(
    "heat-not-known",
    Severity.ADVICE,
    "Softening or easing of a material of whose heats nothing is known here.",
    "No temperature is printed, and no act stands in the route for it.",
    "parts:\n  seat: {material: oak, finish: annealed}",
    "Take the heat from the maker's sheet of the metal, or leave the word out.",
)

CODES = (
    TEMPER_DOES_NOTHING,
    TEMPER_COLOUR_WRONG,
    HARDENED_TOO_SOON,
    BENDS_IN_THE_QUENCH,
    HEAT_NOT_KNOWN,
)
