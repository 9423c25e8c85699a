"""A turned part to its set-ups in the lathe: first end, cut off, second end."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_plugins.operations.as_bought import left_as_bought
from binder_plugins.operations.bench import lathe_for
from binder_plugins.operations.die_torque import turned_by_threads
from binder_plugins.operations.early_corners import early_corners, formed_behind, room_for
from binder_plugins.operations.edges import axial_acts, centre_back, corners, edge_acts
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.floors import floor_chamfers
from binder_plugins.operations.gripping import SHORT, SUPPORTED, end_across, ended_short, first_grip
from binder_plugins.operations.late_grooves import late_grooves, on_mandrel
from binder_plugins.operations.lengthwise import (
    Plan,
    opens_at,
    plans,
)
from binder_plugins.operations.necks import thin_neck
from binder_plugins.operations.outsides import finish_turn, is_shaped, max_across, rough_turn
from binder_plugins.operations.rings import is_beside
from binder_plugins.operations.second_end import second
from binder_plugins.operations.true import true_to_one_another
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch

CLEAR_MM = 2.0
# What parting leaves to face at the back, in mm; common practice, no source.
_BACK_MM = 0.5
# A die runs on behind a thread for so many pitches; what a faced end takes, in mm.
_DIE_PITCHES = 3.0
_FACED_MM = 2.0
_BY_HAND = "by hand"
# Above this a back edge is broken before the piece is off; common practice, no source.
_EDGED_MM = 4.0
# How much of an end its centre may take; common practice, no source.
_MOUTH = 0.6


class Turning:
    """The planning of one turned part; `setups` are numbered as they come.

    `turned` are the threads that turn the work in its grip; where it `has_collets` these hold
    what is threaded, which jaws do else.
    """

    def __init__(self, work: Work, form: FormFact) -> None:
        self.work = work
        self.form = form
        self.steps: Sequence[Stretch] = form.stretches
        on_axis = [one for one in form.located if one.face == "axis" and not _is_of_tube(one, work)]
        self.axial = [one for one in on_axis if not is_beside(one)]
        self.beside = [one for one in on_axis if is_beside(one)]
        self.around = [
            piece
            for one in form.located
            if one.face != "axis"
            for piece in corners(one, self.steps)
        ]
        self.plans: list[Plan] = plans(work, self.steps, self.axial, self.around)
        self.plan = self.plans[0]
        self.lathe = lathe_for(work.design.workshop, max(form.size[1:]))
        self.setups: list[SetUp] = []
        self.trouble: list[tuple[str, str]] = []
        self.length = max(one.end for one in self.steps)
        self.late: list[Located] = []
        self.early: list[Located] = []
        self.turned: list[tuple[str, str]] = []
        self.has_collets = False

    def run(self) -> list[SetUp]:
        """All set-ups in the lathe, from the end at which every grip bears its dies."""
        known = len(self._tried(self.plans[0]).trouble)
        if not self.turned:
            return self.setups
        for one in self.plans[1:]:
            if not self._tried(one).turned and len(self.trouble) <= known:
                return self.setups
        self.has_collets = True
        self._tried(self.plans[0])
        self.trouble += self.turned
        return self.setups

    def _tried(self, tried: Plan) -> Turning:
        """Plans all set-ups from an end, and what a die or a tap would turn in its grip."""
        self.plan, self.setups, self.trouble, self.late = tried, [], [], []
        self._planned()
        self.turned = turned_by_threads(self.work, self.setups)
        return self

    def _planned(self) -> None:
        if not self.lathe:
            words = (
                f"'{self.work.name}' is turned, and no lathe here swings {self.form.size[1]:g} mm"
            )
            self.trouble.append(("no-machine-for-it", words))
        self._saw()
        self.early = early_corners(self)
        self.late = late_grooves(self)
        self._first()
        second(self)
        on_mandrel(self)

    def _saw(self) -> None:
        across = self.work.stock_across
        facing = self.work.facing
        if self.plan.is_parted and self.passes(across):
            long = self.length + facing + _BACK_MM
            self.work.takes(long, verb="part off")
            return
        over = self._grip_left() if self.plan.is_parted else 0.0
        long = self.length + 2 * facing + over
        self.work.takes(long, over)
        words = f"saw off {self.work.mm(long)} of {self._stock()}"
        self.add(
            "saw",
            "",
            Grip("bench vice", "bench", "the bar", across, free="right"),
            "",
            [self.work.act("saw", words, amount=across or 1.0, tags=())],
        )

    def passes(self, across: float) -> bool:
        """Whether stock so thick in mm goes through the spindle of the lathe."""
        lathes = self.work.design.workshop.entry.machines.lathes
        found = lathes.get(self.lathe)
        return found is None or across <= found.spindle_bore.mm

    def _past(self) -> float:
        """How far from the free end in mm a hole must reach to be open when it is parted off."""
        over = max(_BACK_MM, self.work.facing)
        return self.length + over if self.plan.is_parted else 0.0

    def _grip_left(self) -> float:
        """What is left on a sawn piece to hold it by, with the width of the parting tool."""
        return max(15.0, self.work.stock_across) + self._parting()

    def _parting(self) -> float:
        width = self.work.design.workshop.parting_width
        return float(width) if width is not None else 2.0

    def _stock(self) -> str:
        return self.work.cut.section_text if self.work.cut is not None else "the stock"

    def _first(self) -> None:
        free, work = self.plan.free, self.work
        out = self._stand_out()
        bores = [a for a in self.axial if self.is_first(a) and a not in self.early]
        grip = first_grip(self, out, bores)
        words = f"face the end{left_as_bought(work, self.form)}"
        acts = [self.face(free, words, ("first-end", "needs-waste"))]
        if grip.support == "tailstock centre":
            acts = [*ended_short(self, grip, [acts[0], self.centre(free)])]
        threads = self._threads_first() if self.plan.is_threaded else []
        acts += threads
        acts += list(self.turns(self.plan.first, free, ("first-end",)))
        acts += list(axial_acts(work, self.form, bores, self.lathe, free, past=self._past()))
        edges = [one for one in self.edges(free, first=True) if not threads or not is_thread(one)]
        cut = edge_acts(work, self.form, edges, self.lathe, free)
        acts += [self._carried(act) if grip.support else act for act in cut]
        acts += floor_chamfers(self, free, ("first-end",))
        acts = _knurls_first(acts)
        if self.plan.is_parted:
            acts += list(self._parted())
        self.add(
            "lathe",
            self.lathe,
            grip,
            self.datum(free),
            acts,
            true=true_to_one_another(work, self.steps, acts),
            until=self._until(),
        )

    def _carried(self, act: Act) -> Act:
        """An act on work that a centre carries: a die wants its place, a thin neck comes last."""
        return thin_neck(self, centre_back(act))

    def _threads_first(self) -> list[Act]:
        """Threads over the bar, with what stands in front of them, which is cut from it after."""
        found: list[Act] = []
        for one in filter(is_thread, self.edges(self.plan.free, first=True)):
            step = self.steps[self._step_at(one)]
            far = self._from_end(step, one, self.plan.free)
            words = f" × {self.work.mm(far)} from the end{self._in_front(step)}"
            for act in edge_acts(self.work, self.form, [one], self.lathe, self.plan.free):
                said = act.what.split(" × ")[0].split(",")[0]
                is_long = act.act in {"turn", "die"}
                found.append(replace(act, what=said + words) if is_long else act)
        return found

    def _in_front(self, step: Stretch) -> str:
        """What is turned out of a thread, since it stands nearer to the free end."""
        place = self.steps.index(step)
        front = self.steps[:place] if self.plan.free == "left" else self.steps[place + 1 :]
        names = " and ".join(_title(one.name) for one in front if one.name)
        return f"; the {names} comes out of it after" if names else ""

    def _stand_out(self) -> float:
        whole = self.length + self._parting() + CLEAR_MM + room_for(self.early)
        if self.plan.is_parted and whole <= SUPPORTED * self.work.stock_across:
            return whole
        return max(self.plan.reach, self.cut_reach(self.plan.free), _FACED_MM) + SHORT

    def cut_reach(self, end: str) -> float:
        """How far from an end threads and grooves in a bar as bought go, in mm; 0 without.

        A die needs more room than a tool: three pitches behind the last thread.
        """
        found = [0.0]
        for one in self.around:
            if (
                not self.is_turned_at(one)
                and self._is_near(one, end)
                and one.kind in {"screwed", "grooved", "knurled", "undercut"}
            ):
                step = self.steps[self._step_at(one)]
                found.append(self._from_end(step, one, end) + self._die_room(one))
        return max(found)

    def _die_room(self, one: Located) -> float:
        """What a die wants of room over what any tool gets, in mm; common practice, no source."""
        fact = self.work.design.facts.about(ThreadFact, f"{self.work.name}.{one.name}")
        return max(_DIE_PITCHES * fact.pitch - SHORT, 0.0) if fact is not None else 0.0

    def _from_end(self, step: Stretch, one: Located, end: str) -> float:
        whole = step.end - step.start
        before = step.start if end == "left" else self.length - step.end
        if one.kind == "screwed":
            return before + min(one.length or whole, whole)
        if one.kind == "knurled":
            return before + whole
        return before + (whole / 2 if len(one.spots) == 1 else 3.0)

    def is_first(self, one: Located) -> bool:
        """Whether a feature on the axis is made from the first end."""
        is_through = one.depth is None and one.kind in {"drilled", "reamed", "bored", "tapped"}
        return one in self.early or is_through or opens_at(one) == self.plan.free

    def face(self, end: str, words: str, tags: tuple[str, ...]) -> Act:
        """The facing of an end, at the bar's diameter where that end is not turned yet."""
        place = len(self.steps) - 1 if end == "right" else 0
        across = self.steps[place].across
        if end == self.plan.free or place not in self.plan.first:
            across = max(across, self.work.stock_across)
        return self.work.act(
            "face",
            words,
            machine=self.lathe,
            feature=f"{end} end",
            size=max(across, 1.0),
            end=end,
            tags=tags,
        )

    def centre(self, end: str) -> Act:
        """The centre in an end that the tailstock carries, no wider than the end bears."""
        across = end_across(self, end)
        mouth = min(_MOUTH * across, 3.0)
        small = f", its mouth no wider than {self.work.mm(round(mouth, 1))}" if mouth < 3.0 else ""
        return self.work.act(
            "centre",
            f"centre it for the tailstock{small}",
            machine=self.lathe,
            feature=f"{end} end",
            size=mouth,
            end=end,
        )

    def turns(self, places: Sequence[int], free: str, tags: tuple[str, ...]) -> Iterator[Act]:
        """All steps roughed, straight ones first, then those with limits finished.

        The largest comes first; tapers and balls wait, since the top-slide is set over for them.
        """
        largest_first = sorted(
            places, key=lambda i: (is_shaped(self, i), -max_across(self.steps[i]))
        )
        for n, i in enumerate(largest_first):
            start = self._there(i, largest_first[:n], free)
            yield from rough_turn(self, i, free, tags, start)
        for i in largest_first:
            yield from finish_turn(self, i, free, tags)

    def _there(self, place: int, before: Sequence[int], free: str) -> float:
        """How thick the bar still is at a step, once those in `before` are roughed, in mm."""
        over = [
            i for i in before if i not in self.plan.behind and ((i < place) == (free == "right"))
        ]
        return min((max_across(self.steps[i]) for i in over), default=self.work.stock_across)

    def edges(self, end: str, *, first: bool) -> list[Located]:
        """Grooves, threads, knurls and edges that belong to the first or the second set-up."""
        mine = set(self.plan.first) if first else set(self.plan.second)
        found = []
        for one in self.around:
            if one in self.late or one in self.early:
                continue
            if one.face in {"left", "right"}:
                if one.face == end:
                    found.append(one)
            elif self._step_at(one) in mine or (
                not self.is_turned_at(one) and self._is_near(one, end)
            ):
                found.append(one)
        return found

    def is_turned_at(self, one: Located) -> bool:
        """Whether a step has metal taken off at all where a feature lies."""
        place = self._step_at(one)
        return place in self.plan.first or place in self.plan.second

    def _is_near(self, one: Located, end: str) -> bool:
        """Whether what is cut in a bar left as bought lies at this end, or at both."""
        is_first = self.plan.is_threaded and is_thread(one)
        if is_first or (self.plan.is_parted and one.kind not in {"screwed", "chamfered"}):
            return end == self.plan.free
        if len(one.spots) > 1:
            return True
        return (end == "right") == (one.frame.origin[0] >= self.length / 2)

    def _step_at(self, one: Located) -> int:
        x = one.frame.origin[0]
        return next((i for i, s in enumerate(self.steps) if s.start - 1e-6 <= x <= s.end + 1e-6), 0)

    def _parted(self) -> Iterator[Act]:
        across = self.steps[0 if self.plan.free == "right" else -1].across
        if (0 if self.plan.free == "right" else len(self.steps) - 1) not in self.plan.first:
            across = max(across, self.work.stock_across)
        tool = self.work.design.workshop.entry.cutters.parting_tool
        if tool is not None and tool.reach is not None and across / 2 > tool.reach.mm:
            yield self._sawn_off(across)
            return
        name = f"parting tool {self.work.mm(self._parting())}"
        over = self.work.mm(self.length + _BACK_MM)
        parting = self.work.act(
            "part-off",
            f"part off {over} long",
            machine=self.lathe,
            tool=name,
            size=across,
            amount=across,
        )
        if parting.speed == _BY_HAND:
            yield self._sawn_off(across)
            return
        nick = self.work.act(
            "nick",
            "break the back edge with the parting tool",
            machine=self.lathe,
            feature="back edge",
            size=across,
        )
        before = [*formed_behind(self)] or ([nick] if across > _EDGED_MM else [])
        first, *others = [*before, parting]
        yield self._drawn_out(first)
        yield from others

    def _drawn_out(self, act: Act) -> Act:
        """The first act at the back end, which may lie in the jaws until the bar is drawn out."""
        if self._is_out():
            return act
        long = self.work.mm(math.ceil(self.length + self._parting() + CLEAR_MM))
        return replace(act, what=f"draw the bar out to {long} and grip it again, {act.what}")

    def _sawn_off(self, across: float) -> Act:
        """Where no parting tool reaches, or no speed is slow enough for one."""
        long = self.work.mm(self.length + self.work.facing)
        return self.work.act(
            "part-off",
            f"stop the spindle, lay a board on the bed, saw it off in the chuck, {long} long",
            tool="hacksaw",
            amount=across,
            spoils="sawing into the bed; a spindle that turns under the saw",
        )

    def _is_out(self) -> bool:
        """Whether the whole length stands out of the jaws from the start."""
        return self._stand_out() >= self.length + self._parting()

    def datum(self, end: str) -> str:
        """Where lengths start."""
        return f"lengths from the {end}-hand end as drawn"

    def _until(self) -> str:
        return "it is parted off" if self.plan.is_parted else "all of this is done"

    def add(
        self,
        place: str,
        machine: str,
        grip: Grip,
        datum: str,
        acts: Sequence[Act],
        *,
        true: str = "",
        until: str = "",
    ) -> None:
        """One more set-up."""
        number = len(self.setups) + 1
        self.setups.append(
            SetUp(
                number,
                place,
                machine,
                grip,
                datum,
                tuple(acts),
                true,
                until,
                holding_min(grip.kind),
            )
        )


def _knurls_first(acts: Sequence[Act]) -> list[Act]:
    """A knurl on the stiff part comes before the end is turned thin."""
    thin = next((n for n, act in enumerate(acts) if "slender" in act.tags), len(acts))
    early = [act for act in acts[thin:] if act.act == "knurl" and "stiff" in act.tags]
    late = [act for act in acts[thin:] if act not in early]
    return [*acts[:thin], *early, *late]


def is_thread(one: Located) -> bool:
    """Whether a feature is a thread cut outside."""
    return one.kind == "screwed"


def breaking_in(bore: Located, form: FormFact) -> list[Located]:
    """Holes across the axis that break into a bore."""
    if bore.diameter is None:
        return []
    found = []
    for one in form.located:
        if one.face != "across" or one.kind not in {"drilled", "tapped", "reamed", "slotted"}:
            continue
        x = one.frame.origin[0]
        step = next((s for s in form.stretches if s.start <= x <= s.end), None)
        wall = (step.across - bore.diameter) / 2 if step is not None else 0.0
        is_there = bore.depth is None or abs(x - bore.frame.origin[0]) <= bore.depth
        if is_there and (one.depth is None or one.depth >= wall - 0.05):
            found.append(one)
    return found


def _is_of_tube(one: Located, work: Work) -> bool:
    """Whether a bore is that of the tube as it is bought."""
    return work.stock_form == "tube" and one.name == "bore" and work.half(one.name) is None


def _title(name: str) -> str:
    return name.replace("_", " ")
