"""Typed facts of work besides cutting: treatments of an item, times of tasks, what to trace."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder.design.facts import Fact


@dataclass(frozen=True, slots=True)
class TreatmentStep:
    """One act of heat or finish: `act` is in the words of the rules of what goes before what.

    `ready` and `run` are minutes at the bench; `wait_h` are the hours that pass by themselves
    before anything else is done to the item. Items of one `batch` are done at one go. `buys` is
    what it uses up.
    """

    act: str
    what: str
    tool: str
    ready: float
    run: float
    wait_h: float = 0.0
    batch: str = ""
    spoils: str = ""
    buys: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class TreatmentFact(Fact):
    """What is done to an item besides cutting; the subject is its name.

    `first` is done to the stock before a fit is cut, `heat` when all is cut, `bright` to the
    metal after that, and `last` to the loose part when the model has gone together once.
    """

    first: tuple[TreatmentStep, ...] = ()
    heat: tuple[TreatmentStep, ...] = ()
    bright: tuple[TreatmentStep, ...] = ()
    last: tuple[TreatmentStep, ...] = ()


@dataclass(frozen=True, slots=True)
class TimeLine:
    """What a task spends on one thing: `count` times of it take so many `minutes` together.

    `said` are the words of its step, where it has some.
    """

    what: str
    count: int
    minutes: float
    said: str = ""


@dataclass(frozen=True, slots=True)
class TaskTime(Fact):
    """What a task without cutting takes; the subject is its id. `minutes` are at the bench.

    `wait_h` are hours that pass by themselves before its item is touched again, and `why`
    says what they are for.
    """

    minutes: float
    lines: tuple[TimeLine, ...]
    act: str
    wait_h: float = 0.0
    why: str = ""


@dataclass(frozen=True, slots=True)
class TraceFact(Fact):
    """A figure that a fault is traced by; the subject is the joint and the figure.

    `should` is what it ought to be, as printed; `unit` what is written into the empty box.
    """

    joint: str
    what: str
    should: str
    unit: str


@dataclass(frozen=True, slots=True)
class SummedFact(Fact):
    """A length that is worked to a sum of what was measured; the subject is that of the chain.

    `place` of `item` is the step whose length it is, or the groove that is set from the other one
    where it `is_groove`, '' for the whole length. The sum stands in set-up `setup` of its leaf.
    Where the whole length moves with it, it `moves_whole`; where that is cut as drawn, the one
    `shoulder` moves, so many mm from the left as drawn.
    """

    item: str
    place: str
    setup: int
    is_groove: bool = False
    moves_whole: bool = True
    shoulder: float | None = None


@dataclass(frozen=True, slots=True)
class SupplyFact(Fact):
    """What work or running uses up, and is not owned: `what` is bought for the subject.

    Where a piece of work uses up several things, `of` is its title and the subject says which.
    """

    what: str
    of: str = ""


@dataclass(frozen=True, slots=True)
class ClosedWithFact(Fact):
    """The hardware that closes the joints of an assembly; the subject is its name.

    `items` are names of bought items that are none of its members, and how many of each go in.
    """

    items: tuple[tuple[str, int], ...]


@dataclass(frozen=True, slots=True)
class SmallWork(Fact):
    """What is made without a leaf of its own: a tool, a gauge, a gib. The subject is its name.

    `count` are made of `material`; where `form` is a bar's, `length` mm of that section, in mm,
    are sawn off for each. `stock` is what it is made from, as printed. `minutes` are for all of
    them; `of` is what it is made for, and `joints` are those that wait for it. One that
    `is_kept_in` stays in the chuck from its making to its use; one `is_to_bore` is turned to a
    bore as that was measured. `buys` are the pieces of its
    stock that are no bar of the cut list and in no scrap box. `tools` are those that its steps
    name and the workshop may not have, as acts tell theirs. `reach` is how far its edge stands
    out of its body, in mm, where what it cuts asks for that.
    """

    count: int
    stock: str
    steps: tuple[str, ...]
    minutes: float
    of: str = ""
    material: str = ""
    form: str = ""
    section: tuple[Fraction, ...] = ()
    section_text: str = ""
    length: Fraction = Fraction(0)
    joints: tuple[str, ...] = ()
    is_kept_in: bool = False
    is_to_bore: bool = False
    buys: tuple[str, ...] = ()
    tools: str = ""
    reach: float = 0.0
