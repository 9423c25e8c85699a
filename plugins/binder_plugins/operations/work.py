"""An item on the bench: all that the planner asks of it, and the making of its acts."""

from __future__ import annotations

import math
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, TypedDict, Unpack

from binder.api import (
    BarUse,
    CutSize,
    Design,
    Fabrication,
    Feature,
    HalfFact,
    NumberOff,
    Part,
    Span,
    TogetherFact,
    exact,
    shown_length,
)
from binder_plugins.operations import words
from binder_plugins.operations.act_speed import pace_of
from binder_plugins.operations.bench import as_machine
from binder_plugins.operations.facts import Act
from binder_plugins.operations.gauging import seen

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from binder_making.cutting import Group, Machine
    from binder_making.measuring import Instrument
    from binder_solid.facts import FormFact

# What is not even drilled before its parts are put together.
WHOLLY = ("drilled together", "drilled in place", "set in mesh")


class Asked(TypedDict, total=False):
    """What is told of an act.

    `size` is the diameter that is cut (of the work in a lathe, else of the cutter), `start`
    what it is cut from (the speed goes by the larger), `deep` its length or depth, in mm;
    `amount` is what its time goes by, `times` how often it is done.
    """

    machine: str
    feature: str
    tool: str
    size: float
    deep: float
    start: float
    amount: float
    times: int
    finish: bool
    tags: tuple[str, ...]
    meets: tuple[str, ...]
    end: str
    half: HalfFact | None
    spoils: str


@dataclass(slots=True)
class Work:
    """A part or fabrication with what is known of it.

    `numbered` counts its acts, `use` is what was planned to be cut off its bar,
    `most_rpm` what the spindle turns at the most.
    """

    design: Design
    item: Part | Fabrication
    form: FormFact | None
    cut: CutSize | None
    group: Group | None
    halves: Mapping[str, tuple[HalfFact, ...]]
    tools: tuple[Instrument, ...]
    left: Mapping[str, tuple[TogetherFact, ...]]
    numbered: int = 0
    use: BarUse | None = None
    machines: dict[str, Machine | None] = field(default_factory=dict)
    most_rpm: float = math.inf

    @property
    def name(self) -> str:
        """The item's name in the spec."""
        return self.item.name

    @property
    def stock_form(self) -> str:
        """`round bar`, `drawn rod`, `plate` ...; nothing where it is not known."""
        return self.cut.form if self.cut is not None else ""

    @property
    def stock_across(self) -> float:
        """The first size of the section of its stock in mm; 0 where it is not known."""
        return float(self.cut.section[0]) if self.cut is not None and self.cut.section else 0.0

    @property
    def count(self) -> int:
        """How many are made for one model."""
        off = self.design.facts.about(NumberOff, self.name)
        return off.count if off is not None else self.item.quantity or 1

    def feature(self, name: str) -> Feature | None:
        """A feature of the item by its name."""
        return next((one for one in self.item.features if one.name == name), None)

    def half(self, place: str) -> HalfFact | None:
        """The half of a joint with limits at a place, else any half there."""
        found = self.halves.get(place, ())
        return next((one for one in found if one.lower is not None), found[0] if found else None)

    def joints_at(self, place: str) -> tuple[str, ...]:
        """The joints that meet at a place, or the one that makes its hole there."""
        feature = self.feature(place)
        implied = (feature.implied_by,) if feature is not None and feature.implied_by else ()
        met = (one.joint for one in self.halves.get(place, ()))
        return tuple(dict.fromkeys((*met, *implied)))

    def waits(self, place: str) -> TogetherFact | None:
        """The work on parts put together in which a place gets its size, None where on its own."""
        return next(iter(self.left.get(place, ())), None)

    def is_wholly_left(self, place: str) -> bool:
        """Whether a hole is not even drilled before its parts are put together."""
        return any(one.how in WHOLLY for one in self.left.get(place, ()))

    def made(self, place: str) -> str:
        """How the joint at a place says that it is made, as `drilled together`."""
        joints = (self.design.joints.get(name) for name in self.joints_at(place))
        return next((one.made for one in joints if one is not None and one.made), "")

    def is_bought_outside(self, place: str) -> bool:
        """Whether an outside is left as the rod came."""
        return any("as bought" in one.what for one in self.halves.get(place, ()))

    @property
    def facing(self) -> float:
        """What is left to face at an end in mm."""
        found = self.design.workshop.facing
        return float(found) if found is not None else 1.0

    def takes(self, long: float, over: float = 0.0, verb: str = "saw") -> None:
        """Notes what is cut off the bar for it in mm, `over` of it to hold it by."""
        self.use = BarUse(self.name, exact(round(long, 3)), exact(round(over, 3)), verb)

    def takes_plate(
        self, long: float, wide: float, *, over: float = 0.0, is_round: bool = False
    ) -> None:
        """Notes what is sawn out of plate or sheet for it, in mm, `over` of it to hold it by."""
        size, width = exact(round(long + over, 3)), exact(round(wide, 3))
        held = exact(round(over, 3))
        self.use = BarUse(self.name, size, held, width=width, is_round=is_round)

    def mm(self, size: float) -> str:
        """A size as printed, in the units of the drawings."""
        return shown_length(exact(round(size, 3)), self.design.units)

    def machine(self, name: str) -> Machine | None:
        """A machine's speeds and feeds, looked up once."""
        if name not in self.machines:
            self.machines[name] = as_machine(self.design.workshop, name)
        return self.machines[name]

    @contextmanager
    def no_faster(self, most_rpm: float) -> Iterator[None]:
        """Within it acts are told for work that must turn no faster, in r/min."""
        self.most_rpm = most_rpm
        try:
            yield
        finally:
            self.most_rpm = math.inf

    def act(self, act: str, what: str, **asked: Unpack[Asked]) -> Act:
        """An act with its tool, speed, feed and minutes."""
        self.numbered += 1
        sizes = (asked.get("size", 0.0), asked.get("deep", 0.0), asked.get("start", 0.0))
        machine, feature = asked.get("machine", ""), asked.get("feature", "")
        half, known = asked.get("half"), words.row(act)
        is_last, amount = asked.get("finish", False), asked.get("amount", 0.0)
        pace = pace_of(self, act, machine, sizes, finish=is_last, amount=amount)
        lower, upper = (half.lower, half.upper) if half is not None else (None, None)
        return Act(
            id=f"{self.name} {self.numbered}",
            act=act,
            what=what,
            feature=feature,
            tool=asked.get("tool") or known["tool"],
            speed=pace.speed,
            feed=pace.feed,
            ready=pace.ready,
            run=pace.run * (1 + 0.5 * (asked.get("times", 1) - 1)),
            alone=pace.alone,
            measure=seen(self, half, act),
            spoils=asked.get("spoils") or str(known["spoils"]),
            end=asked.get("end", ""),
            tags=frozenset(asked.get("tags", ())),
            meets=asked.get("meets", ()),
            joints=self.joints_at(feature) if feature else (),
            lower=lower,
            upper=upper,
            size=sizes[0],
            deep=sizes[1],
            cuts=pace.cuts,
            by_motor=pace.by_motor,
            trouble=pace.trouble,
            at=self._at(feature),
        )

    def _at(self, feature: str) -> Span:
        found = self.feature(feature)
        return found.at if found is not None else self.item.at
