"""The things of a model: made, bought, joined and put together."""

from __future__ import annotations

from dataclasses import dataclass

from binder.diagnostics import Span
from binder.spec.models import FeatureEntry, JointEntry, LayerEntry
from binder.spec.values import Member, Size, Stock


@dataclass(frozen=True, slots=True)
class Feature:
    """Something cut or formed on a part or fabrication.

    `implied_by` names the joint that asked for it, '' where the maker wrote it.
    """

    name: str
    owner: str
    kind: str
    entry: FeatureEntry
    at: Span
    implied_by: str = ""

    @property
    def is_dummy(self) -> bool:
        """Made and drawn for looks, and left out of functional checks."""
        return self.entry.dummy


@dataclass(frozen=True, slots=True)
class Item:
    """What all things have: a name in the spec, a title for print, a place and a reason."""

    name: str
    title: str
    at: Span
    quantity: int | None
    note: str
    because: str


@dataclass(frozen=True, slots=True)
class Part(Item):
    """One made piece. `shape_kind` is '' and `shape` None where only its stock is told.

    `like` is the part whose sizes it took over, of the other hand where it `is_mirrored`.
    """

    material: str
    material_at: Span
    stock: Stock | None
    overall: Size | None
    handed: bool
    finish: str
    is_dummy: bool
    shape_kind: str
    shape: object
    features: tuple[Feature, ...]
    like: str = ""
    is_mirrored: bool = False


@dataclass(frozen=True, slots=True)
class Bought(Item):
    """An item that is not made here; `measured` are the sizes to take before parts fit it."""

    what: str
    sizes: tuple[tuple[str, Size], ...]
    measured: tuple[str, ...]
    is_salvaged: bool


@dataclass(frozen=True, slots=True)
class Fabrication(Item):
    """Pieces joined first and then machined as one; `stack` is how they lie, if it is told."""

    pieces: tuple[Member, ...]
    joined: str
    finish: str
    features: tuple[Feature, ...]
    stack: tuple[LayerEntry, ...] = ()


@dataclass(frozen=True, slots=True)
class Assembly(Item):
    """Things that go together, with a sheet and a test of their own."""

    members: tuple[Member, ...]
    steps: tuple[str, ...]
    test: str


@dataclass(frozen=True, slots=True)
class End:
    """One half of a joint: an item and the feature or step of it that meets the other."""

    item: str
    place: str
    at: Span

    def __str__(self) -> str:
        return f"{self.item}.{self.place}" if self.place else self.item


@dataclass(frozen=True, slots=True)
class Joint:
    """A relation between two or more ends; `master` is made and measured first."""

    name: str
    kind: str
    entry: JointEntry
    ends: tuple[End, ...]
    master: End | None
    made: str
    held_by: str
    at: Span

    @property
    def items(self) -> tuple[str, ...]:
        """The names of the things that meet, each once."""
        return tuple(dict.fromkeys(end.item for end in self.ends))


@dataclass(frozen=True, slots=True)
class Departure:
    """Where the maker departs from the trade, with his reason."""

    what: str
    because: str
    at: Span
