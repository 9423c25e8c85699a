"""What the plugin can report of things that are filed to others, or to words alone."""

from __future__ import annotations

from binder.api import Code, Severity

FILED_TO_NOTHING = Code(
    "filed-to-nothing",
    Severity.ADVICE,
    "A shape is filed to fit, and no part of the model bears the name that it is to fit.",
    "At the vice nobody knows what to try it in, nor what must be made before it.",
    "parts:\n  pawl: {features: {nose: {filed: to the rachet}}}",
    "Name the part as under `parts:`, by name or title; or give the size.",
)
FILED_TO_NO_SIZE = Code(
    "filed-to-no-size",
    Severity.WARNING,
    "A shape is filed to another that has no size itself.",
    "Two shapes made by eye, each waiting for the other, fit by chance.",
    "parts:\n  helve: {features: {nose: {filed: to the head's eye}}}\n"
    "  head: {features: {eye: {filed: to a nice square}}}",
    "Give the one that is made first a size, as `eye: {slotted: 8 mm, length: 10 mm}`.",
)
FILED_TO_EACH_OTHER = Code(
    "filed-to-each-other",
    Severity.WARNING,
    "Of two parts each is filed to the other.",
    "Neither can be first; both are on the bench, and metal is taken off whichever is nearer.",
    "parts:\n  head: {features: {eye: {slotted: 8 mm, note: filed to the helve}}}\n"
    "  helve: {features: {nose: {filed: to the head}}}",
    "Make one to a size, the opening where there is one, and file the other to it.",
)
FILED_TOO_SHORT = Code(
    "filed-too-short",
    Severity.WARNING,
    "A seat filed to enter a hole is shorter than a through hole is deep, or longer than a blind "
    "one.",
    "The other part stops on the edge of the seat short of its place, or its shoulder stands off.",
    "parts:\n  helve: {features: {seat: {filed: to fill the eye of the collar, length: 15 mm}}}\n"
    "  collar: {features: {eye: {slotted: 9 mm, on: front, depth: through}}}   # 20 mm wide",
    "Write `length:` as deep as the hole.",
)
OPENING_WITHOUT_START = Code(
    "opening-without-start",
    Severity.ADVICE,
    "An opening is filed in words, and nothing is drilled or sawn out before.",
    "A file cuts no hole of its own; the plan would begin with it.",
    "parts:\n  plate: {features: {window: {filed: square hole of 6 mm}}}",
    "Write the hole that is drilled first, and let the filed one stand `on:` it.",
)

FITTED_CODES = (
    FILED_TO_NOTHING,
    FILED_TO_NO_SIZE,
    FILED_TO_EACH_OTHER,
    FILED_TOO_SHORT,
    OPENING_WITHOUT_START,
)
