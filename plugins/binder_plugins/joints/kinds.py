"""Rows of the table of joints to kinds of the language."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Annotated, Any

from pydantic import Field, create_model

from binder.api import Flag, JointEntry, Kind, Ref, Slot, load_data

PACKAGE = "binder_plugins.joints"


@dataclass(frozen=True, slots=True)
class JointKind:
    """A row: `first` is the position of the half made first, 0 where none is."""

    key: str
    says: str
    group: str
    step: str
    first: int = 0
    why: str = ""
    lasting: bool = False
    heat: bool = False
    wants_holder: bool = False


@cache
def rows() -> Mapping[str, JointKind]:
    """The table of joints by key."""
    table: Mapping[str, Any] = load_data(PACKAGE, "joints.yaml")["kinds"]
    return {key: JointKind(key=key, **row) for key, row in table.items()}


class PairEntry(JointEntry):
    """What every joint of this plugin may say; `fixed` is one that is not undone in use."""

    fixed: Flag = False


def joint_kinds() -> list[Kind]:
    """A kind for each row."""
    return [Kind(Slot.JOINT, row.key, _model(row), f"A {row.says} B") for row in rows().values()]


def _model(row: JointKind) -> type[PairEntry]:
    ends: Any = (
        Annotated[list[Ref], Field(min_length=2, max_length=8, description=f"A {row.says} B")],
        ...,
    )
    fields: dict[str, Any] = {row.key: ends}
    model = create_model(f"Joint_{row.key}", __base__=PairEntry, **fields)
    model.kind = row.key
    return model
