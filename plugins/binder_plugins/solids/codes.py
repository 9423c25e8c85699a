"""What the plugin can report."""

from __future__ import annotations

from binder.api import Code, Severity

SOLID_UNBUILDABLE = Code(
    "solid-unbuildable",
    Severity.WARNING,
    "The shape of a part cannot be built as a solid.",
    "Something in it has no size, crosses itself or lies outside the metal: nobody could cut it.",
    "features:\n  slot: {slotted: 30 mm, on: top, depth: 2 mm}   # wider than the block",
    "Look at the feature that is named, and give it a size that the part can hold.",
)
SOLID_IN_PIECES = Code(
    "solid-in-pieces",
    Severity.WARNING,
    "What is cut away leaves the part in several pieces.",
    "It drops off in the vice, and the drawing shows a part that does not exist.",
    "features:\n  slot: {slotted: 4 mm, on: top, depth: through}   # from edge to edge",
    "Make the cut shorter or shallower, or write two parts.",
)
SOLID_EMPTY = Code(
    "solid-empty",
    Severity.WARNING,
    "What is cut away leaves nothing of the part.",
    "There is no part to make.",
    "features:\n  bore: {bored: 25 mm, on: rim, depth: through}   # of a 20 mm disc",
    "Make the features smaller, or the part larger.",
)
KERNEL_MISSING = Code(
    "kernel-missing",
    Severity.ADVICE,
    "The kernel that builds solids is not installed.",
    "The binder stands, but without drawings, weights, STEP and checks of the solids.",
    "pip install build-binder   # without [solid]",
    "Install it: `pip install build-binder[solid]`, or `make binder`, which does.",
)

CODES = (SOLID_UNBUILDABLE, SOLID_IN_PIECES, SOLID_EMPTY, KERNEL_MISSING)
