"""Ways of joining for good to the acts that do it."""

from __future__ import annotations

JOINED = {
    "silver_soldered": "silver-solder",
    "soft_soldered": "soft-solder",
    "brazed": "braze",
    "welded": "weld",
    "riveted": "rivet",
    "pressed": "press",
    "bonded": "bond",
    "retained": "bond",
    "glued": "glue",
    "pinned": "pin",
    "shrunk": "press",
}
# Those in which the whole joint must come to the alloy's heat.
FLAMES = frozenset({"silver-solder", "soft-solder", "braze"})
