"""An item on the bench: all that the planner asks of it, and the making of its acts."""

from __future__ import annotations

import math
import re
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, TypedDict, Unpack

from binder.api import (
    BarUse,
    CutSize,
    Design,
    Fabrication,
    Feature,
    FitFact,
    HalfFact,
    MaterialFact,
    NumberOff,
    Part,
    Span,
    TogetherFact,
    exact,
    shown_length,
)
from binder_making.cutting import Cut, Group, Machine, Way, advise, drill_min, group_of, passes
from binder_making.cutting import turn_min as turn_minutes
from binder_making.measuring import Instrument, is_tried, told_by
from binder_making.times import act_time
from binder_plugins.operations import words
from binder_plugins.operations.bench import as_machine, instruments
from binder_plugins.operations.facts import Act
from binder_plugins.operations.out_of_balance import no_faster
from binder_solid.facts import FormFact
from binder_trade.explained import NotDefined

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

# Rods and bright bar are left as bought where a step is as thick as they are.
_SAME = 1e-6
_INCH_MM = 25.4
# How the words of a half tell a size that is read over or between pins.
_PINS = re.compile(r"([0-9]+(?:\.[0-9]+)?) (mm|in) (over|between) two ([^;]{1,40}? pins)")
_ALONG = frozenset({"turn", "taper"})
_UNDER_POWER = frozenset({"turn", "face", "bore", "drill", "taper"})
# Common practice, no source: a drill so small, in mm, and so many times too slow, snaps.
_TINY_MM, _FAR = 0.8, 4.0
# How a half says that it is bored for a gap over the shaft as it was measured.
_OVER_SHAFT = "to the measured shaft + "
# What is not even drilled before its parts are put together.
_WHOLLY = ("drilled together", "drilled in place", "set in mesh")


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
        return any(one.how in _WHOLLY for one in self.left.get(place, ()))

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
        size, deep, start = asked.get("size", 0.0), asked.get("deep", 0.0), asked.get("start", 0.0)
        machine, feature = asked.get("machine", ""), asked.get("feature", "")
        half = asked.get("half")
        known = words.row(act)
        cut, wrong = self._cut(
            # The edge meets what is there before the cut: the bar's diameter in a first cut.
            known.get("speed", ""),
            max(size, start),
            machine,
            finish=asked.get("finish", False),
            deep=deep,
        )
        finer = None
        if known.get("speed") in _ALONG and size < start:
            finer, _ = self._cut(known["speed"], size, machine, finish=asked.get("finish", False))
        ready, run, alone = self._minutes(act, cut, (size, deep, start), asked.get("amount", 0.0))
        lower, upper = (half.lower, half.upper) if half is not None else (None, None)
        seen = self._seen(half, act)
        return Act(
            id=f"{self.name} {self.numbered}",
            act=act,
            what=what,
            feature=feature,
            tool=asked.get("tool") or known["tool"],
            speed=_speeds(cut, finer),
            feed=_feed(cut),
            ready=ready,
            run=run * (1 + 0.5 * (asked.get("times", 1) - 1)),
            alone=alone,
            measure=seen,
            spoils=asked.get("spoils") or str(known["spoils"]),
            end=asked.get("end", ""),
            tags=frozenset(asked.get("tags", ())),
            meets=asked.get("meets", ()),
            joints=self.joints_at(feature) if feature else (),
            lower=lower,
            upper=upper,
            size=size,
            deep=deep,
            cuts=_cuts(known.get("speed", ""), cut, size, start),
            by_motor=cut is not None and cut.by_motor,
            trouble=wrong,
            at=self._at(feature),
        )

    def _at(self, feature: str) -> Span:
        found = self.feature(feature)
        return found.at if found is not None else self.item.at

    def _cut(
        self, act: str, size: float, machine: str, *, finish: bool, deep: float = 0.0
    ) -> tuple[Cut | None, tuple[tuple[str, str], ...]]:
        there = self.machine(machine) if machine else None
        if there is not None and math.isfinite(self.most_rpm):
            there = no_faster(there, self.most_rpm)
        if not act or self.group is None or there is None or size <= 0:
            return None, ()
        try:
            cut = advise(self.group, act, size, there, finish=finish, deep_mm=deep)
        except NotDefined:
            return None, ()
        return cut, tuple(_troubles(cut, act, size, machine))

    def _minutes(
        self, act: str, cut: Cut | None, sizes: tuple[float, float, float], amount: float
    ) -> tuple[float, float, float]:
        known = words.row(act)
        if "time" not in known:
            return 0.0, float(known["minutes"]), 0.0
        try:
            time = act_time(
                known["time"], amount or known.get("amount"), self._cutting(act, cut, *sizes)
            )
        except NotDefined:
            return 0.0, 5.0, 0.0
        return time.set_min, time.run_min, time.unattended_min

    def _cutting(
        self, act: str, cut: Cut | None, size: float, deep: float, start: float
    ) -> float | None:
        """Minutes of the cut by geometry, where speed and feed are known."""
        if cut is None or not cut.turning.rpm or not cut.feed_mm or deep <= 0:
            return None
        count = _cuts(act, cut, size, start)
        if count:
            return max(turn_minutes(deep, cut.feed_mm, cut.turning.rpm, count), 1.0)
        if act == "drill":
            return max(drill_min(deep, size, cut.feed_mm, cut.turning.rpm), 0.8)
        return None

    def _seen(self, half: HalfFact | None, act: str) -> str:
        """What it is measured with; nothing where it has no limits."""
        if half is None or half.lower is None or half.upper is None:
            return self._plugs(half, act) if half is not None else ""
        way = "inside" if act in {"ream", "bore", "drill", "lap"} else "outside"
        fit, joint = self.design.facts.about(FitFact, half.joint), self.design.joints[half.joint]
        by_mate = fit is None or is_tried(joint.kind, fit.clearance_min_um, fit.clearance_max_um)
        return told_by(
            (half.lower, half.upper), way, self.tools, is_master=half.is_master, by_mate=by_mate
        )

    def _plugs(self, half: HalfFact, act: str) -> str:
        """What tells a bore that is bored for a gap over its measured shaft."""
        over = half.what.partition(_OVER_SHAFT)[2].split(" to ")
        if act == "mill":
            return self._over_pins(half)
        if act != "bore" or len(over) != 2:
            return ""
        if is_tried(self.design.joints[half.joint].kind, 0.0, 0.0):
            return "its shaft, tried in it"
        return f"two plugs turned to the shaft: + {over[0]} goes in, + {over[1]} does not"

    def read_with(self, half: HalfFact) -> str:
        """What a half without limits that is made first, as bright bar is, is read with."""
        fit = self.design.facts.about(FitFact, half.joint)
        if fit is None:
            return self._over_pins(half) or "a gauge that fits it"
        size = float(fit.nominal)
        return self._read(size, size, "inside" if fit.hole == half_of(half) else "outside")

    def _over_pins(self, half: HalfFact) -> str:
        """`digital caliper, over two 1.9 mm pins`, where that is how its words tell its size."""
        found = _PINS.search(half.what)
        if found is None:
            return ""
        size = float(found[1]) * (_INCH_MM if found[2] == "in" else 1.0)
        way = "outside" if found[3] == "over" else "inside"
        return f"{self._read(size, size, way)}, {found[3]} two {found[4]}"

    def read_along(self, length: float) -> str:
        """What a length in mm is read with over its two ends."""
        return self._read(length, length, "outside")

    def measured_with(self, half: HalfFact) -> str:
        """The gauge with which a half was measured when it was made: the same ever after."""
        if "as bought" in half.what:
            return self.read_with(half)
        feature = self.feature(half.place)
        act = {"reamed": "ream", "bored": "bore", "drilled": "drill"}
        kind = feature.kind if feature is not None else ""
        return self._seen(half, act.get(kind, "turn")) or self.read_with(half)

    def _read(self, least: float, most: float, way: str) -> str:
        """The finest instrument that reaches: its mate, which is made to it, is not there yet."""
        found = self.design.workshop.finest(exact(least), exact(most), way)
        return found.name if found is not None else "a borrowed instrument"


def half_of(half: HalfFact) -> str:
    """`part.place`, as facts of fits name a half."""
    return f"{half.item}.{half.place}" if half.place else half.item


def works(design: Design) -> Iterator[Work]:
    """Every part and fabrication with its form, stock, metal and halves."""
    halves: dict[str, dict[str, list[HalfFact]]] = {}
    for one in design.facts.all(HalfFact):
        halves.setdefault(one.item, {}).setdefault(one.place, []).append(one)
    tools = instruments(design.workshop)
    machines: dict[str, Machine | None] = {}
    left = _left(design)
    made: list[Part | Fabrication] = [*design.parts.values(), *design.fabrications.values()]
    for item in made:
        at = {place: tuple(found) for place, found in halves.get(item.name, {}).items()}
        yield Work(
            design,
            item,
            design.facts.about(FormFact, item.name),
            design.facts.about(CutSize, item.name),
            _group(design, item),
            at,
            tools,
            left.get(item.name, {}),
            machines=machines,
        )


def _left(design: Design) -> dict[str, dict[str, tuple[TogetherFact, ...]]]:
    """By item and place the work in which it gets its size, what is wholly left first."""
    found: dict[str, dict[str, tuple[TogetherFact, ...]]] = {}
    for fact in sorted(design.facts.all(TogetherFact), key=lambda one: one.how not in _WHOLLY):
        for place in fact.left:
            item, _, name = place.partition(".")
            at = found.setdefault(item, {})
            at[name] = (*at.get(name, ()), fact)
    return found


def _group(design: Design, item: Part | Fabrication) -> Group | None:
    """The metal; of a fabrication that of its pieces, where all that are made here have one."""
    names = [one.item for one in item.pieces] if isinstance(item, Fabrication) else [item.name]
    found = {
        group_of(f"{metal.id} {metal.group}".replace("-", " "))
        for name in names
        if (metal := design.facts.about(MaterialFact, str(name))) is not None
    }
    return found.pop() if len(found) == 1 else None


def hole_volume(across: float, deep: float) -> float:
    """What the time of a drilled hole goes by: its volume in mm³."""
    return max(math.pi / 4 * across**2 * deep, 1.0)


def _troubles(cut: Cut, act: str, size: float, machine: str) -> list[tuple[str, str]]:
    found = []
    if cut.turning.way is Way.BY_HAND and act in _UNDER_POWER:
        words_of = f"{act} at ⌀{size:g} mm wants {cut.turning.wanted_rpm:.0f} r/min"
        found.append(("lowest-speed-too-fast", f"{words_of}, which the {machine} does not have"))
    if act == "drill" and size < _TINY_MM and cut.turning.wanted_rpm > _FAR * cut.turning.rpm > 0:
        words_of = f"a ⌀{size:g} mm drill wants {cut.turning.wanted_rpm:.0f} r/min"
        has = f"the {machine} turns {cut.turning.rpm:g} at most"
        found.append(("drill-turns-too-slowly", f"{words_of}; {has}"))
    if act == "drill" and cut.load is not None and not cut.load.is_carried:
        words_of = f"a ⌀{size:g} mm drill wants {cut.load.asked_w:.0f} W of the {machine}"
        found.append(("motor-too-weak", f"{words_of}; its motor has {cut.load.motor_w:.0f} W"))
    return found


def _speeds(cut: Cut | None, last: Cut | None) -> str:
    """The speed of the first cut, and that of the last where the work is thinner by then."""
    first, then = _speed(cut), _speed(last)
    return f"{first} to {then}" if then and then != first else first


def _speed(cut: Cut | None) -> str:
    if cut is None:
        return ""
    return f"{cut.turning.rpm:g}" if cut.turning.rpm else "by hand"


def _feed(cut: Cut | None) -> str:
    if cut is None or not cut.feed_mm or not cut.turning.rpm:
        return ""
    if cut.turning.light_feed:
        return "light"
    each = "/z" if cut.is_per_tooth else ""
    return f"{cut.feed_mm:.2g}{each}"


def _cuts(act: str, cut: Cut | None, size: float, start: float) -> int:
    """In how many cuts a diameter is brought to another; 0 where it is not, or not known."""
    if cut is None or act not in {"turn", "bore", "taper"} or start <= 0:
        return 0
    return min(max(passes(start, size, cut.depth_mm or 0.5), 1), 400)
