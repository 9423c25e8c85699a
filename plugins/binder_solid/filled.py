"""Joints that something sets in, to what it is: as the maker names it, or by what it joins."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import MaterialFact
from binder_trade.fits.gaps import filler

if TYPE_CHECKING:
    from binder.api import Design, Joint

WOOD_GLUE = "wood glue"
SPIRIT = "spirit to degrease with"
_SETS = ("retained", "glued")
_WOODS = ("hardwood", "softwood", "plywood")


def locking(joint: Joint) -> str:
    """What a thread is locked with when all has run dry; '' for a joint that is not locked."""
    return str(getattr(joint.entry, "locked_with", None) or "")


def done_as(joint: Joint, design: Design) -> str:
    """The kind of a joint as its work is done: `wood_glued` where wood glue alone holds it."""
    return "wood_glued" if adhesive(joint, design) == WOOD_GLUE else joint.kind


def adhesive(joint: Joint, design: Design) -> str:
    """`retaining compound`, `epoxy`, `wood glue`; '' for a joint that needs none."""
    if joint.kind not in _SETS:
        return ""
    told = [design.facts.about(MaterialFact, item) for item in joint.items]
    is_wood = all(one is not None and one.group in _WOODS for one in told)
    return str(getattr(joint.entry, "compound", None) or filler(joint.kind, is_wood=is_wood))


def is_degreased(joint: Joint, design: Design) -> bool:
    """Whether both faces are wiped with spirit before they are bonded or locked; wood is not."""
    return bool(locking(joint)) or adhesive(joint, design) not in ("", WOOD_GLUE)
