"""The core models of a spec: what can be written without any plugin."""

from __future__ import annotations

from typing import Annotated, ClassVar

from pydantic import BaseModel, ConfigDict, Field

from binder.source import Written
from binder.spec.choices import OneOf
from binder.spec.fields import Count, Flag, Length, MemberOf, Name, Ref, StockOf, Words
from binder.spec.meeting import Meeting
from binder.spec.values import Reference

UnitWord = Annotated[Written, OneOf("a unit", "mm", "inch")]
StandingWord = Annotated[
    Written, OneOf("a way to stand", "flat", "on end", "on edge", "on edge across")
]
ProjectionWord = Annotated[Written, OneOf("a method of projection", "first angle", "third angle")]
Made = Annotated[
    Written,
    OneOf(
        "a way of making",
        "to drawing",
        "spotted through",
        "drilled together",
        "reamed in line",
        "lapped together",
        "set in mesh",
    ),
]
Format = Annotated[Written, OneOf("a format", "1")]


class Model(BaseModel):
    """A table of the spec: strict, closed and never changed.

    Each is built when it is first asked for: most are only parts of a whole language, which
    is built once all plugins are known.
    """

    model_config = ConfigDict(
        strict=True,
        extra="forbid",
        frozen=True,
        arbitrary_types_allowed=True,
        defer_build=True,
    )


class Noted(Model):
    """What may stand on anything made or joined.

    `because` is the reason for a departure from what the trade would do.
    """

    note: Words | None = None
    because: Words | None = None


class Head(Model):
    """What the model is, and the words of its cover."""

    title: Words
    about: Words | None = None
    issue: Name
    date: Words | None = None
    units: UnitWord
    bare_numbers: UnitWord | None = None
    driven_by: Words | None = None
    scale: Words | None = None
    projection: ProjectionWord | None = None


class FeatureEntry(Noted):
    """Something cut or formed; kinds of feature come from plugins and extend this."""

    dummy: Flag = False

    kind: ClassVar[str] = ""


class PartEntry(Noted):
    """One made piece; the shapes that plugins know are further keys of it.

    One that is `like` another was written out from it when it was read.
    """

    like: Name | None = None
    mirrored: Flag = False
    title: Words | None = None
    material: Words
    stock: StockOf | None = None
    quantity: Count | None = None
    handed: Flag = False
    overall: Length | None = None
    finish: Words | None = None
    dummy: Flag = False
    features: dict[str, FeatureEntry] = Field(default_factory=dict)

    shape_keys: ClassVar[tuple[str, ...]] = ()


class BoughtEntry(Noted):
    """Something not made here; what is `measured_first` holds up all that fits it."""

    what: Words
    quantity: Count | None = None
    sizes: dict[str, Length] = Field(default_factory=dict)
    measure_first: list[Name] = Field(default_factory=list)


class JointEntry(Noted):
    """A relation between features of two or more parts; its kinds come from plugins.

    `fixed` is one that is not undone in use. One of the drive says what turns what.
    """

    master: Ref | None = None
    made: Made | None = None
    held_by: Name | None = None
    feel: Words | None = None
    fixed: Flag = False

    kind: ClassVar[str] = ""
    meeting: ClassVar[Meeting | None] = None

    @property
    def ends(self) -> tuple[Reference, ...]:
        """The features that meet, in the order written."""
        return tuple(getattr(self, self.kind))


class LayerEntry(Model):
    """Pieces that lie side by side in a stack, as many as are told, laid out by words."""

    piece: Name
    stands: StandingWord | None = None
    off: Count | None = None
    pattern: Words | None = None


class FabricationEntry(Noted):
    """Pieces joined first and then machined as one.

    `stack` says how they lie on one another, from the underside up, each in the middle of the
    first one unless a pattern spreads them.
    """

    stack: list[LayerEntry] = Field(default_factory=list, max_length=40)
    title: Words | None = None
    pieces: list[MemberOf]
    joined: Name
    quantity: Count | None = None
    finish: Words | None = None
    features: dict[str, FeatureEntry] = Field(default_factory=dict)


class AssemblyEntry(Noted):
    """Parts that go together, with a sheet and a test of their own."""

    title: Words | None = None
    of: list[MemberOf]
    steps: list[Words] = Field(default_factory=list)
    test: Words | None = None


class SpecEntry(Model):
    """A whole spec, format 1."""

    format: Format
    model: Head
    parts: dict[str, PartEntry]
    bought: dict[str, BoughtEntry] = Field(default_factory=dict)
    scrap_box: dict[str, BoughtEntry] = Field(default_factory=dict)
    fabrications: dict[str, FabricationEntry] = Field(default_factory=dict)
    assemblies: dict[str, AssemblyEntry] = Field(default_factory=dict)
    joints: dict[str, JointEntry] = Field(default_factory=dict)
    drive: dict[str, JointEntry] = Field(default_factory=dict)
    changes: dict[str, Words] = Field(default_factory=dict)
