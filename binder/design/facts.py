"""Typed facts: what one plugin works out and another may need."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from operator import attrgetter
from typing import TypeVar

from binder.diagnostics import NOWHERE, Span


@dataclass(frozen=True, slots=True)
class Fact:
    """Something known about a `subject`: the name of an item, joint or the model itself ('')."""

    subject: str


@dataclass(frozen=True, slots=True)
class MaterialFact(Fact):
    """What a part's material is: density in g/cm³, modulus in GPa, expansion in 1e-6/K.

    A figure that no source gives is None; `hazards` are tags that call for cautions.
    """

    id: str
    designation: str
    group: str
    condition: str
    density: float | None
    modulus: float | None
    expansion: float | None
    forms: tuple[str, ...]
    hazards: tuple[str, ...]
    advice: str
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CutSize(Fact):
    """What a part needs of stock: form, section sizes and finished length, exact in mm.

    A sheet part has `length` and `width` of its blank, its thickness in `section`. Where nobody
    wrote the section and none of its form is sold just so, `is_least`: what comes may be larger.
    """

    form: str
    section: tuple[Fraction, ...]
    section_text: str
    length: Fraction
    width: Fraction | None = None
    is_least: bool = False
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class BarUse(Fact):
    """What a part takes of its bar: `length` mm as it leaves the saw or the parting tool.

    `over` mm of it are there to hold it by; `verb` is what cuts it off, as printed. A piece of
    plate or sheet is `width` mm wide as well; of a round one, which `is_round`, that is the
    diameter, and so is `length` without what is `over`.
    """

    length: Fraction
    over: Fraction = Fraction(0)
    verb: str = "saw"
    width: Fraction | None = None
    is_round: bool = False


@dataclass(frozen=True, slots=True)
class NumberOff(Fact):
    """How many of an item one model needs, rolled up over assemblies and fabrications."""

    count: int


@dataclass(frozen=True, slots=True)
class ItemNumber(Fact):
    """The item number after ISO 6433, as printed: 1, 2, 3 ..."""

    number: int


@dataclass(frozen=True, slots=True)
class PlacedPiece:
    """A piece on a bar: from `start` to `end` in mm from the bar's free end."""

    item: str
    start: Fraction
    end: Fraction


@dataclass(frozen=True, slots=True)
class CutPiece:
    """A part as it is cut: its length in mm with facing, and how many; see `BarUse`."""

    item: str
    length: Fraction
    count: int
    over: Fraction = Fraction(0)
    verb: str = "saw"


@dataclass(frozen=True, slots=True)
class BarCut:
    """One bar, `length` mm long: its pieces, what is left of it, and whether it is owned."""

    length: Fraction
    is_owned: bool
    pieces: tuple[PlacedPiece, ...]
    left: Fraction


@dataclass(frozen=True, slots=True)
class BarPlan(Fact):
    """Bars of one material and section: the subject is their name as bought.

    `least` is the least number of bars that any plan needs which buys no more length.
    """

    material: str
    form: str
    section_text: str
    pieces: tuple[CutPiece, ...]
    bars: tuple[BarCut, ...]
    holding: Fraction
    least: int
    is_proven: bool


@dataclass(frozen=True, slots=True)
class CautionFact(Fact):
    """A usual published caution that applies: `title` and `text` come from cited data.

    `where` are the items that call for it, () for the whole model. `short` is the same in a line,
    for the place where the work is done; `at` says where that is, in acts, machines (`at the
    lathe`), joints, finishes and `first run`. `asks` is who is asked first, where it defers.
    """

    hazard: str
    title: str
    text: str
    source: str
    where: tuple[str, ...] = ()
    short: str = ""
    at: frozenset[str] = frozenset()
    asks: str = ""


@dataclass(frozen=True, slots=True)
class ActsFact(Fact):
    """How an item is made: the words of each of its acts, as `drill`, `at the drill`."""

    acts: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Step:
    """A task in the build order with the layer that it stands in and why it waits."""

    task: str
    layer: int
    after: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class BuildSequence(Fact):
    """The order of all tasks; empty where the order loops."""

    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class HoursFact(Fact):
    """What the whole model takes at the bench, as `20 to 43 h`, and in how many evenings."""

    text: str
    evenings: int


F = TypeVar("F", bound=Fact)


@dataclass(frozen=True, slots=True)
class Facts:
    """All facts, by type and subject."""

    _by_type: dict[type[Fact], dict[str, Fact]] = field(default_factory=dict)
    # What `where` has sorted already, so that a search for each of many parts stays linear.
    _sorted: dict[tuple[type[Fact], str], dict[object, list[Fact]]] = field(
        default_factory=dict, init=False, compare=False, repr=False
    )

    def about(self, kind: type[F], subject: str) -> F | None:
        """The fact of one kind about one subject, if there is one."""
        return self._by_type.get(kind, {}).get(subject)  # type: ignore[return-value]

    def all(self, kind: type[F]) -> tuple[F, ...]:
        """All facts of one kind, in the order in which they were given."""
        return tuple(self._by_type.get(kind, {}).values())  # type: ignore[arg-type]

    def where(self, kind: type[F], field_name: str, value: object) -> Sequence[F]:
        """The facts of one kind in whose field stands a value, in the order of `all`.

        The field may lie deeper, as `shaft.end.item`.
        """
        known = self._sorted.get((kind, field_name))
        if known is None:
            known = self._sorted[kind, field_name] = {}
            told = attrgetter(field_name)
            for fact in self.all(kind):
                known.setdefault(told(fact), []).append(fact)
        return known.get(value, ())  # type: ignore[return-value]

    def kinds(self) -> tuple[type[Fact], ...]:
        """The kinds of which there are any."""
        return tuple(self._by_type)

    def plus(self, facts: Iterable[Fact]) -> Facts:
        """These facts and more; a later one about the same subject takes the place."""
        merged = {kind: dict(known) for kind, known in self._by_type.items()}
        for fact in facts:
            merged.setdefault(type(fact), {})[fact.subject] = fact
        return Facts(merged)
