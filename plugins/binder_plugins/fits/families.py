"""Kinds of joint by what their gap is for."""

from __future__ import annotations

RUNNING = ("runs_in", "swivels", "hinged")
MOVING = (*RUNNING, "slides")
PRESSED = ("pressed", "shrunk")
GAPPED = ("retained", "glued", "soft_soldered", "silver_soldered")
BONDED = ("retained", "glued")
HOT = ("soft_soldered", "silver_soldered", "shrunk")
SEATED = ("seated",)
# The bore is made first, since it comes as the reamer leaves it: common practice, no source.
BORE_FIRST = (*MOVING, "pressed", "retained")
# What other plugins hold by a screw or a key is a hub on a shaft, and fits it.
HUBS = ("clamped", "keyed", "pinned")

# Without a word of the maker: the duty that a kind of joint has; common practice, no source.
USUAL_DUTY = {
    "runs_in": "runs",
    "swivels": "runs",
    "hinged": "swings",
    "slides": "slides",
    "pressed": "press",
    "shrunk": "shrink",
    "seated": "located",
    "clamped": "located, can come apart",
    "keyed": "located, can come apart",
    "pinned": "located, can come apart",
}
