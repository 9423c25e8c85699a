"""A turned part to its set-ups in the lathe: first end, cut off, second end."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.around import is_thread
from binder_plugins.operations.bench import lathe_for
from binder_plugins.operations.centre_holes import CentreHole, centre_hole, centre_words
from binder_plugins.operations.cutting_off import saw_off
from binder_plugins.operations.die_torque import turned_by_threads
from binder_plugins.operations.early_corners import early_corners
from binder_plugins.operations.edges import corners
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.first_end import first
from binder_plugins.operations.gripping import end_across
from binder_plugins.operations.hole_kinds import narrows_to
from binder_plugins.operations.late_grooves import late_grooves, on_mandrel
from binder_plugins.operations.lengthwise import (
    Plan,
    opens_at,
    plans,
)
from binder_plugins.operations.outsides import (
    finish_turn,
    is_shaped,
    max_across,
    rough_turn,
)
from binder_plugins.operations.rings import is_beside
from binder_plugins.operations.second_end import second
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch


class Turning:
    """The planning of one turned part; `setups` are numbered as they come.

    `over` is what is left to face at the second end in mm, `turned` are the threads that turn the
    work in its grip; where it `has_collets` these hold what is threaded, which jaws do else.
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
        self.over = work.facing

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
        self.over = self.work.facing
        self._planned()
        self.turned = turned_by_threads(self.work, self.setups)
        return self

    def _planned(self) -> None:
        if not self.lathe:
            words = (
                f"'{self.work.name}' is turned, and no lathe here swings {self.form.size[1]:g} mm"
            )
            self.trouble.append(("no-machine-for-it", words))
        saw_off(self)
        self.early = early_corners(self)
        self.late = late_grooves(self)
        first(self)
        second(self)
        on_mandrel(self)

    def is_first(self, one: Located) -> bool:
        """Whether a feature on the axis is made from the first end."""
        is_through = one.depth is None and one.kind in {"drilled", "reamed", "bored", "tapped"}
        # A taper bore is made from its mouth, where its mate goes in.
        is_either = is_through and not narrows_to(self.work, one)
        return one in self.early or is_either or opens_at(one) == self.plan.free

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
        hole = centre_hole(self, end, end_across(self, end)) or CentreHole(0.0)
        return self.work.act(
            "centre",
            f"centre it for the tailstock{centre_words(self.work.mm, hole)}",
            machine=self.lathe,
            feature=f"{end} end",
            tool=f"{self.work.mm(hole.pilot)} centre drill, form A" if hole.pilot else "",
            size=hole.mouth,
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
            elif self.step_at(one) in mine or (
                not self.is_turned_at(one) and self.is_near(one, end)
            ):
                found.append(one)
        return found

    def is_turned_at(self, one: Located) -> bool:
        """Whether a step has metal taken off at all where a feature lies."""
        place = self.step_at(one)
        return place in self.plan.first or place in self.plan.second

    def is_near(self, one: Located, end: str) -> bool:
        """Whether what is cut in a bar left as bought lies at this end, or at both."""
        is_first = self.plan.is_threaded and is_thread(one)
        if is_first or (self.plan.is_parted and one.kind not in {"screwed", "chamfered"}):
            return end == self.plan.free
        if len(one.spots) > 1:
            return True
        return (end == "right") == (one.frame.origin[0] >= self.length / 2)

    def step_at(self, one: Located) -> int:
        """The number of the step on which a feature lies."""
        x = one.frame.origin[0]
        return next((i for i, s in enumerate(self.steps) if s.start - 1e-6 <= x <= s.end + 1e-6), 0)

    def datum(self, end: str) -> str:
        """Where lengths start."""
        return f"lengths from the {end}-hand end as drawn"

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


def _is_of_tube(one: Located, work: Work) -> bool:
    """Whether a bore is that of the tube as it is bought."""
    return work.stock_form == "tube" and one.name == "bore" and work.half(one.name) is None
