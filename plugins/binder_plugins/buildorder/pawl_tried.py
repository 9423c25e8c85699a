"""A pawl that is filed to its wheel: hung loose, tried where both stand, then its pin is closed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.placed import PlacedFact

if TYPE_CHECKING:
    from binder.api import Design, Joint

_HUNG = frozenset({"hinged", "swivels"})


def pawl_tried(joint: Joint, design: Design) -> str:
    """What the step of a pawl's pin says besides; '' for every other joint.

    Source: common practice, no source.
    """
    if joint.kind not in _HUNG:
        return ""
    for drive in design.joints.values():
        wheel, pawl = drive.ends[0].item, drive.ends[-1].item
        if drive.kind != "ratchets" or pawl not in joint.items:
            continue
        mate = next((item for item in joint.items if item != pawl), "")
        side = _side(mate, wheel, design)
        return (
            f"{side}; first on the loose pin: stand {_title(wheel, design)} with its shaft in its "
            f"own bearing beside it, and file the end of {_title(pawl, design)} in the vice, its "
            "angle kept, until it falls to the bottom of every tooth and its end lies on the whole "
            "face, tried with marking blue; take the wheel out again, and only then close the pin"
        )
    return ""


def _side(mate: str, wheel: str, design: Design) -> str:
    """Which of several alike carries it: the one on the side of the wheel."""
    copies = [one for one in design.facts.all(PlacedFact) if one.item == mate]
    if len(copies) < 2:
        return ""
    return f"; of the {len(copies)} it is {_title(mate, design)} next to {_title(wheel, design)}"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
