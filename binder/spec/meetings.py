"""Rows of a plugin's table of joints to kinds of the language."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Any

from pydantic import Field, create_model

from binder.spec.fields import Ref
from binder.spec.kinds import Kind, Slot
from binder.spec.meeting import Meeting
from binder.spec.models import JointEntry

MOST_ENDS = 8


def joint_kinds(rows: Mapping[str, Mapping[str, Any]], base: type[JointEntry]) -> list[Kind]:
    """A kind of joint for each row of a table, told by its key; `base` has its other fields.

    A row holds the fields of Meeting.
    """
    return [
        _kind(Slot.JOINT, key, base, Meeting(**row), f"A {row['says']} B")
        for key, row in rows.items()
    ]


def drive_kind(
    key: str, base: type[JointEntry], meeting: Meeting | None, says: str, least: int = 2
) -> Kind:
    """A kind of drive, told by its key; a mover or a load has one end alone and no meeting."""
    return _kind(Slot.DRIVE, key, base, meeting, says, least)


def _kind(
    slot: Slot,
    key: str,
    base: type[JointEntry],
    meeting: Meeting | None,
    says: str,
    least: int = 2,
) -> Kind:
    ends: Any = (
        Annotated[list[Ref], Field(min_length=least, max_length=MOST_ENDS, description=says)],
        ...,
    )
    fields: dict[str, Any] = {key: ends}
    model = create_model(f"Joint_{key}", __base__=base, **fields)
    model.kind = key
    model.meeting = meeting
    return Kind(slot, key, model, says)
