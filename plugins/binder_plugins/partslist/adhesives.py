"""What joints and fabrications are filled with that sets or melts, to be bought with the rest."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Fabrication, MaterialFact
from binder_solid.filled import adhesive
from binder_trade.fits.gaps import filler

# What is melted in, and what goes with it; common practice, no source.
_MELTED = {
    "silver_soldered": "silver solder, free of cadmium, and its flux",
    "soft_soldered": "soft solder and its flux",
    "soldered": "solder and its flux",
    "brazed": "brazing rod and its flux",
    "welded": "welding rod or wire",
}
# Words for a fabrication to the kind of joint that is filled so.
_SETS = {"glued": "glued", "bonded": "glued", "retained": "retained"}
_SAID = ("compound", "locked_with")
_WOODS = ("hardwood", "softwood", "plywood")


def adhesives(design: Design) -> dict[str, list[str]]:
    """Each filler with the joints and fabrications that it is for, in the order of the spec."""
    found: dict[str, list[str]] = {}
    for what, name in (*_of_joints(design), *_of_fabrications(design)):
        found.setdefault(what, []).append(name)
    return found


def _of_joints(design: Design) -> Iterator[tuple[str, str]]:
    for joint in design.joints.values():
        told = (getattr(joint.entry, one, None) for one in _SAID)
        said = next((str(one) for one in told if one), "")
        what = adhesive(joint, design) or said or _MELTED.get(joint.kind, "")
        if what:
            yield what, joint.name


def _of_fabrications(design: Design) -> Iterator[tuple[str, str]]:
    for one in design.fabrications.values():
        how = one.joined.lower().replace("-", "_").replace(" ", "_")
        kind = _SETS.get(how, "")
        what = filler(kind, is_wood=_is_wood(one, design)) if kind else _MELTED.get(how, "")
        if what:
            yield what, one.title


def _is_wood(one: Fabrication, design: Design) -> bool:
    """Whether all of its pieces are wood."""
    told = [design.facts.about(MaterialFact, piece.item) for piece in one.pieces]
    return all(fact is not None and fact.group in _WOODS for fact in told)
