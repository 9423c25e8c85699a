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
    return [_kind(key, Meeting(**row), base) for key, row in rows.items()]


def _kind(key: str, meeting: Meeting, base: type[JointEntry]) -> Kind:
    says = f"A {meeting.says} B"
    ends: Any = (
        Annotated[list[Ref], Field(min_length=2, max_length=MOST_ENDS, description=says)],
        ...,
    )
    fields: dict[str, Any] = {key: ends}
    model = create_model(f"Joint_{key}", __base__=base, **fields)
    model.kind = key
    model.meeting = meeting
    return Kind(Slot.JOINT, key, model, says)
