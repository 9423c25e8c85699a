"""Measuring tools as a workshop file describes them."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.source import Written
from binder.spec.choices import OneOf
from binder.spec.fields import Length, Words
from binder.spec.models import Model
from binder.workshop.ranges import LengthRange

Measures = Annotated[
    Written,
    OneOf("what a tool measures", "outside", "inside", "depth", "height", "run-out"),
]


class MeasuringTool(Model):
    """A measuring tool: what it can be put to, over what range, how finely it reads."""

    measures: list[Measures] = Field(
        min_length=1,
        description="`outside`, `inside`, `depth`, `height` or `run-out`, one or several",
    )
    range: LengthRange = Field(description="smallest and largest size, as `0 mm to 150 mm`")
    resolution: Length = Field(description="the smallest step that can be read, in mm or in")
    note: Words | None = Field(default=None, description="anything worth knowing of it")
