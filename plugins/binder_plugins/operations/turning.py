"""A turned part to its set-ups in the lathe: first end, cut off, second end."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import lathe_for, round_holder, steady_for
from binder_plugins.operations.edges import axial_acts, edge_acts, is_spoiled
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.holes import HOLES
from binder_plugins.operations.lengthwise import (
    Plan,
    grips,
    has_limits,
    is_true,
    opens_at,
    plan,
)
from binder_plugins.operations.outsides import finish_turn, rough_turn
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch

CLEAR_MM = 2.0
SUPPORTED = 3.0
STEADIED = 10.0
SHORT = 3.0
_JAW_MM = 10.0
COLLET_MM = 6.0


class Turning:
    """The planning of one turned part; `setups` are numbered as they come."""

    def __init__(self, work: Work, form: FormFact) -> None:
        self.work = work
        self.form = form
        self.steps: Sequence[Stretch] = form.stretches
        self.axial = [
            one for one in form.located if one.face == "axis" and not _is_of_tube(one, work)
        ]
        self.around = [one for one in form.located if one.face != "axis"]
        self.plan: Plan = plan(work, self.steps, self.axial)
        self.lathe = lathe_for(work.design.workshop, max(form.size[1:]))
        self.setups: list[SetUp] = []
        self.trouble: list[tuple[str, str]] = []
        self.length = max(one.end for one in self.steps)

    def run(self) -> list[SetUp]:
        """All set-ups in the lathe."""
        if not self.lathe:
            words = (
                f"'{self.work.name}' is turned, and no lathe here swings {self.form.size[1]:g} mm"
            )
            self.trouble.append(("no-machine-for-it", words))
        self._saw()
        self._first()
        self._second()
        return self.setups

    # --- stock -----------------------------------------------------------------------------
    def _saw(self) -> None:
        across = self.work.stock_across
        if self.plan.is_parted and self._passes(across):
            return
        over = self._grip_left() if self.plan.is_parted else 0.0
        long = self.length + 2 * self._facing() + over
        words = f"saw off {self.work.mm(long)} of {self._stock()}"
        self._add(
            "saw",
            "",
            Grip("bench vice", "bench", "the bar", across, free="right"),
            "",
            [self.work.act("saw", words, amount=across or 1.0, tags=())],
        )

    def _passes(self, across: float) -> bool:
        lathes = self.work.design.workshop.entry.machines.lathes
        found = lathes.get(self.lathe)
        return found is None or across <= found.spindle_bore.mm

    def _facing(self) -> float:
        found = self.work.design.workshop.facing
        return float(found) if found is not None else 1.0

    def _grip_left(self) -> float:
        """What is left on a sawn piece to hold it by, with the width of the parting tool."""
        return max(15.0, self.work.stock_across) + self._parting()

    def _parting(self) -> float:
        width = self.work.design.workshop.parting_width
        return float(width) if width is not None else 2.0

    def _stock(self) -> str:
        return self.work.cut.section_text if self.work.cut is not None else "the stock"

    # --- first end -------------------------------------------------------------------------
    def _first(self) -> None:
        free, work = self.plan.free, self.work
        out = self._stand_out()
        bores = [a for a in self.axial if self._is_first(a)]
        grip = self._first_grip(out, bores)
        acts = [self._face(free, "face the end", ("first-end", "needs-waste"))]
        if grip.support == "tailstock centre":
            acts.append(self._centre(free))
        acts += list(self._turns(self.plan.first, free, ("first-end",)))
        acts += list(axial_acts(work, self.form, bores, self.lathe, free, self._postponed()))
        acts += list(edge_acts(work, self.form, self._edges(free, first=True), self.lathe, free))
        if self.plan.is_parted:
            acts += list(self._parted())
        self._add(
            "lathe",
            self.lathe,
            grip,
            self._datum(free),
            acts,
            true=self._true(bores),
            until=self._until(),
        )

    def _stand_out(self) -> float:
        whole = self.length + self._parting() + CLEAR_MM
        if self.plan.is_parted and whole <= SUPPORTED * self.work.stock_across:
            return whole
        return max(self.plan.reach, self._cut_reach(self.plan.free)) + SHORT

    def _cut_reach(self, end: str) -> float:
        """How far from an end threads and grooves in a bar as bought go, in mm."""
        found = [2.0]
        for one in self.around:
            if (
                not self._is_turned_at(one)
                and self._is_near(one, end)
                and one.kind in {"screwed", "grooved", "knurled", "undercut"}
            ):
                step = self.steps[self._step_at(one)]
                found.append(self._from_end(step, one, end))
        return max(found)

    def _from_end(self, step: Stretch, one: Located, end: str) -> float:
        whole = step.end - step.start
        before = step.start if end == "left" else self.length - step.end
        if one.kind == "screwed":
            return before + min(one.length or whole, whole)
        return before + (whole / 2 if len(one.spots) == 1 else 3.0)

    def _first_grip(self, out: float, bores: Sequence[Located]) -> Grip:
        across = self.work.stock_across or max(self.form.size[1:])
        holder, kind = round_holder(
            self.work.design.workshop, across, true=not self.plan.is_parted or across <= COLLET_MM
        )
        if self.work.stock_form == "board" or any(one.corners == 4 for one in self.steps):
            holder, kind = self._four_jaw(holder, kind)
        if not holder:
            words = f"nothing here grips ⌀{across:g} mm, which '{self.work.name}' is cut from"
            self.trouble.append(("nothing-to-grip", words))
        support = self._support(out, bores)
        start, end = self._jaws(out)
        on = (
            "the bar"
            if self.plan.is_parted or self.work.stock_form in {"", "drawn rod"}
            else "the piece"
        )
        return Grip(
            holder, kind, on, across, abs(end - start), out, support, (start, end), self.plan.free
        )

    def _jaws(self, out: float) -> tuple[float, float]:
        """Where the jaws are along the part; beyond its end where it is still on the bar."""
        if self.plan.free == "right":
            edge = self.length - out
            return (
                (min(edge - _JAW_MM, 0.0), edge) if self.plan.is_parted else (0.0, max(edge, 1.0))
            )
        far = max(out + _JAW_MM, self.length)
        return (out, far) if self.plan.is_parted else (min(out, self.length - 1.0), self.length)

    def _four_jaw(self, holder: str, kind: str) -> tuple[str, str]:
        chucks = self.work.design.workshop.entry.holding.chucks
        return next(((n, "four-jaw") for n, one in chucks.items() if one.jaws == 4), (holder, kind))

    def _support(self, out: float, bores: Sequence[Located]) -> str:
        """What carries the free end where it stands out far; finished thickness decides."""
        thin = min((self.steps[i].across for i in self.plan.first), default=self.work.stock_across)
        across = max(self.work.stock_across, thin)
        ratio = max(out / across if across else 0.0, self._slender())
        if ratio <= SUPPORTED or not self.plan.first:
            return ""
        name = self.work.name
        if ratio > STEADIED and not steady_for(self.work.design.workshop, across):
            words = f"'{name}' stands out {ratio:.0f} times its thickness; no steady takes it"
            self.trouble.append(("needs-steady", words))
        tail = self._tailstock()
        if not tail:
            if ratio > SUPPORTED + 1:
                words = (
                    f"'{name}' stands {out:g} mm out of the jaws, {ratio:.1f} times its thickness, "
                    "and no tailstock is told that would carry its end"
                )
                self.trouble.append(("stands-out-too-far", words))
            return ""
        return (
            "tailstock centre"
            if not any(b.kind in HOLES for b in bores)
            else "tailstock centre, in the mouth of the bore"
        )

    def _slender(self) -> float:
        """The worst length over thickness among what is turned down."""
        first = [self.steps[i] for i in self.plan.first]
        return max(((one.end - one.start) / one.across for one in first if one.across), default=0.0)

    def _tailstock(self) -> bool:
        found = self.work.design.workshop.entry.machines.lathes.get(self.lathe)
        return found is not None and found.tailstock is not None

    def _is_first(self, one: Located) -> bool:
        return (one.depth is None and one.kind in {"drilled", "reamed", "bored", "tapped"}) or (
            opens_at(one) == self.plan.free
        )

    def _postponed(self) -> frozenset[str]:
        """Bores to be reamed after a cross hole has thrown its burr into them."""
        return frozenset(
            one.name
            for one in self.axial
            if one.kind == "reamed" and self.work.feature(one.name) and breaking_in(one, self.form)
        )

    def _face(self, end: str, words: str, tags: tuple[str, ...]) -> Act:
        across = self.steps[-1 if end == "right" else 0].across
        return self.work.act(
            "face",
            words,
            machine=self.lathe,
            feature=f"{end} end",
            size=max(across, 1.0),
            end=end,
            tags=tags,
        )

    def _centre(self, end: str) -> Act:
        return self.work.act(
            "centre",
            "centre it for the tailstock",
            machine=self.lathe,
            feature=f"{end} end",
            size=3.0,
            end=end,
        )

    def _turns(self, places: Sequence[int], free: str, tags: tuple[str, ...]) -> Iterator[Act]:
        largest_first = sorted(places, key=lambda i: -self.steps[i].across)
        for i in largest_first:
            yield from rough_turn(self, i, free, tags)
        for i in largest_first:
            yield from finish_turn(self, i, free, tags)

    def _edges(self, end: str, *, first: bool) -> list[Located]:
        """Grooves, threads, knurls and edges that belong to the first or the second set-up."""
        mine = set(self.plan.first) if first else set(self.plan.second)
        found = []
        for one in self.around:
            if one.face in {"left", "right"}:
                if one.face == end:
                    found.append(one)
            elif self._step_at(one) in mine or (
                not self._is_turned_at(one) and self._is_near(one, end)
            ):
                found.append(one)
        return found

    def _is_turned_at(self, one: Located) -> bool:
        place = self._step_at(one)
        return place in self.plan.first or place in self.plan.second

    def _is_near(self, one: Located, end: str) -> bool:
        """Whether what is cut in a bar left as bought lies at this end, or at both."""
        if self.plan.is_parted and one.kind not in {"screwed", "chamfered"}:
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
            yield self.work.act(
                "part-off", "saw it off in the chuck", tool="hacksaw", amount=across
            )
            return
        if across > 4:
            yield self.work.act(
                "nick",
                "break the back edge with the parting tool",
                machine=self.lathe,
                feature="back edge",
                size=across,
            )
        name = f"parting tool {self.work.mm(self._parting())}"
        over = self.work.mm(self.length + 0.5)
        drawn = "" if self._is_out() else "draw the bar out, "
        yield self.work.act(
            "part-off",
            f"{drawn}part off {over} long",
            machine=self.lathe,
            tool=name,
            size=across,
            amount=across,
        )

    def _is_out(self) -> bool:
        """Whether the whole length stands out of the jaws from the start."""
        return self._stand_out() >= self.length + self._parting()

    def _datum(self, end: str) -> str:
        return f"lengths from the {_end_name(end)} end as drawn"

    def _true(self, bores: Sequence[Located]) -> str:
        names = [
            f"⌀{self.work.mm(self.steps[i].across)}"
            for i in self.plan.first
            if has_limits(self.steps[i], self.work)
        ]
        names += [_title(one.name) for one in bores if is_true(one, self.work)]
        if len(names) < 2:
            return ""
        return f"{', '.join(names[:-1])} and {names[-1]} true to one another: all in this grip"

    def _until(self) -> str:
        return "it is parted off" if self.plan.is_parted else "all of this is done"

    # --- second end ------------------------------------------------------------------------
    def _second(self) -> None:
        end, work = self.plan.other, self.work
        bores = [a for a in self.axial if not self._is_first(a)]
        bored = list(bores)
        acts = [self._face(end, f"face to {work.mm(self.length)} over all", ("back",))]
        acts += list(self._turns(self.plan.second, end, ("back",)))
        acts += list(
            axial_acts(work, self.form, bored, self.lathe, end, self._postponed(), tags=("back",))
        )
        edges = self._edges(end, first=False)
        cut = edge_acts(work, self.form, edges, self.lathe, end, tags=("back",))
        acts += [_other_end(act) if self._is_at_both(act) else act for act in cut]
        grip = self._second_grip()
        fitted = self._is_fitted(bores)
        true = f"run {grip.on} true to 0.02 mm first" if fitted and grip.kind != "mandrel" else ""
        self._two_settings(grip, fitted=fitted)
        self._add(
            "lathe",
            self.lathe,
            grip,
            self._datum(end),
            acts,
            true=true,
            until="all of this is done" if len(acts) > 1 else "",
        )

    def _is_at_both(self, act: Act) -> bool:
        """Whether the same is cut at either end of a bar left as bought."""
        found = next((one for one in self.around if one.name == act.feature), None)
        return found is not None and len(found.spots) > 1 and not self._is_turned_at(found)

    def _is_fitted(self, bores: Sequence[Located]) -> bool:
        late = any(has_limits(self.steps[i], self.work) for i in self.plan.second)
        late = late or any(is_true(one, self.work) for one in bores)
        early = any(has_limits(self.steps[i], self.work) for i in self.plan.first)
        early = early or any(is_true(one, self.work) for one in self.axial if self._is_first(one))
        return late and early

    def _second_grip(self) -> Grip:
        end = self.plan.other
        threaded = [i for i in range(len(self.steps)) if is_spoiled(self.form, self.steps[i])]
        able = grips(self.work, self.steps, self.plan.first, threaded)
        able = [i for i in able if i not in self.plan.second] or able
        if not able:
            return self._no_grip(end)
        step = self.steps[able[0]]
        fitted = self._is_fitted([a for a in self.axial if not self._is_first(a)])
        holder, kind = round_holder(
            self.work.design.workshop,
            step.across,
            true=fitted or has_limits(step, self.work) or step.across <= COLLET_MM,
        )
        out = step.start if end == "left" else self.length - step.end
        out = max(out if self.plan.second else min(out, self._cut_reach(end) + SHORT), 2.0)
        on = f"⌀{self.work.mm(step.across)}" + (f" ({_title(step.name)})" if step.name else "")
        if has_limits(step, self.work) and kind != "collet":
            on += ", in card or copper"
        self._crushed(step, kind)
        return Grip(
            holder,
            kind,
            on,
            step.across,
            step.end - step.start,
            out,
            "",
            (step.start, step.end),
            end,
        )

    def _crushed(self, step: Stretch, kind: str) -> None:
        bore = max(
            (
                a.diameter or 0.0
                for a in self.axial
                if a.kind in {"bored", "reamed", "drilled"} and _covers(a, step, self.length)
            ),
            default=0.0,
        )
        wall = (step.across - bore) / 2
        if kind == "chuck" and bore and wall < step.across / 12:
            words = (
                f"'{self.work.name}' is gripped on a wall of {wall:.2g} mm at ⌀{step.across:g} mm"
            )
            self.trouble.append(("thin-part-crushed", words))

    def _no_grip(self, end: str) -> Grip:
        """On a mandrel in its bore, else on a thread in a split ring; else nothing is there."""
        if any(a.depth is None and a.kind in {"reamed", "bored"} for a in self.axial):
            return Grip(
                "stub mandrel turned to the bore",
                "mandrel",
                "its bore",
                0.0,
                0.0,
                2.0,
                "",
                (0.0, 0.0),
                end,
            )
        screwed = [one for one in self.form.located if one.kind == "screwed"]
        tapped = any(a.kind == "tapped" for a in self.axial)
        if screwed or tapped:
            on = f"the thread, in a {'split tapped ring' if screwed else 'screwed stub'}"
            name, kind = round_holder(
                self.work.design.workshop, max(s.across for s in self.steps), true=False
            )
            return Grip(name, kind, on, 0.0, 5.0, 2.0, "", (0.0, 0.0), end)
        if self.plan.second or any(not self._is_first(a) for a in self.axial):
            words = (
                f"nothing on '{self.work.name}' is long enough to grip for its {_end_name(end)} end"
            )
            self.trouble.append(("nothing-to-grip", words))
        return Grip(
            "soft jaws bored to suit",
            "chuck",
            "its outside",
            max(s.across for s in self.steps),
            2.0,
            1.0,
            "",
            (0.0, self.length),
            end,
        )

    def _two_settings(self, grip: Grip, *, fitted: bool) -> None:
        if fitted and grip.kind == "chuck":
            words = (
                f"fits of '{self.work.name}' are cut in two grips that must be true to each other, "
                f"and the {grip.holder} cannot be trued"
            )
            self.trouble.append(("two-settings-for-true", words))

    def _add(
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


def _covers(one: Located, step: Stretch, length: float) -> bool:
    if one.depth is None:
        return True
    start = one.frame.origin[0]
    low, high = (start - one.depth, start) if one.frame.z[0] > 0 else (start, start + one.depth)
    return low < step.end and high > step.start


def _is_of_tube(one: Located, work: Work) -> bool:
    """Whether a bore is that of the tube as it is bought."""
    return work.stock_form == "tube" and one.name == "bore" and work.half(one.name) is None


def _other_end(act: Act) -> Act:
    """The act as one of a feature of its own, so that no rule takes both ends for one."""
    return replace(act, feature=f"{act.feature}, other end")


def _title(name: str) -> str:
    return name.replace("_", " ")


def _end_name(end: str) -> str:
    return f"{end}-hand"
