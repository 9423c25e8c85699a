"""The sides of a flat part, and how they are told."""

from __future__ import annotations

SHEET_MM = 2.0
SAME_MM = 1e-6
# What a mark is set true by: no indicator rides in a pop.
CLOCKED = "clocked true by a pointed rod in it"
_EDGES = "sizes from the two made edges"
_MIDDLE = "what carries no size lies in the middle"
# How plate stands in the vice while its edges are milled.
EDGES_UP = "its faces, the edge up"
OPPOSITE = {"left": "right", "right": "left", "front": "back", "back": "front"}
SHEETS = frozenset({"sheet", "plate", "board"})
SAID = {
    "top": "top",
    "underside": "underside",
    "front": "front",
    "back": "back",
    "left": "left end",
    "right": "right end",
}


def datum(face: str) -> str:
    """What lies up, and where sizes start."""
    if face in {"top", "underside"}:
        return f"{SAID[face]} up; {_EDGES}"
    return f"{SAID[face]} up"


def with_edges(told: str) -> str:
    """A datum that tells only what lies up, and from where the places of cuts in it start."""
    return f"{told}; {_MIDDLE}, other {_EDGES}" if told.endswith(" up") else told


def found_edges(told: str) -> str:
    """A datum on the mill: what finds the edges that its sizes start from."""
    return f"{told}, found by an edge finder" if told.endswith(_EDGES) else told


def face_up(told: str) -> str:
    """The face that a datum tells to lie up, the top where it tells none."""
    return next((face for face, said in SAID.items() if told.startswith(f"{said} up")), "top")
