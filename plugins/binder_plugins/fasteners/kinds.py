"""The joints of this plugin: what holds two parts by hardware."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import At, Flag, JointEntry, Kind, Length, OneOf, Words, joint_kinds, load_data

PACKAGE = "binder_plugins.fasteners"
KINDS = frozenset(
    {"screwed", "bolted", "studded", "dowelled", "pinned", "keyed", "clamped"}
    | {"riveted", "clipped", "buttoned"}
)
Places = Annotated[list[At], Field(max_length=40)]
Clearance = Annotated[str, OneOf("a clearance", "close", "medium", "free")]
Head = Annotated[
    str, OneOf("a seat for a head", "on top", "counterbored", "countersunk", "spotfaced")
]


class FasteningEntry(JointEntry):
    """What a fastened joint may say beside its halves.

    `fastener` is the hardware as it is asked for in a shop, with or without its length
    (`M3 socket cap screw`), `locked_with` what is put on its thread when all has run dry;
    `pattern` how many and where (`4 off on 16 mm PCD`), `places`
    where each such joint stands on the larger part. `grip` is what is clamped, where the
    parts do not tell it; `serviced` one that is often undone. `fit` is that
    of a hub on its shaft, in any of the tongues that a fit knows.
    """

    fastener: Words | None = None
    locked_with: Words | None = None
    pattern: Words | None = None
    places: Places = Field(default_factory=list)
    clearance: Clearance | None = None
    head: Head | None = None
    grip: Length | None = None
    engagement: Length | None = None
    serviced: Flag = False
    fit: Words | None = None


def kinds() -> list[Kind]:
    """A kind for each row of the table."""
    return joint_kinds(load_data(PACKAGE, "joints.yaml")["kinds"], FasteningEntry)
