"""Blocks, plates, sheet, boards and lengths of bar to their set-ups: blank, holes, cuts."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import AsideFact
from binder_plugins.operations import aside, blanks, faces, holed
from binder_plugins.operations.bench import mill_for, vice_for
from binder_plugins.operations.end_cutters import end_cutter
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import HOLES, SINKS
from binder_plugins.operations.plugged import fine_first
from binder_plugins.operations.sides import (
    OPPOSITE,
    SAID,
    SAME_MM,
    SHEET_MM,
    SHEETS,
    found_edges,
    with_edges,
)
from binder_plugins.operations.teeth import rack_setup
from binder_plugins.operations.waste import ON_TABLE
from binder_plugins.operations.wood_shoulders import shouldered, shoulders
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located

# Minutes for turning a block over between its faces; common practice, no source.
_TURNING_OVER = 12.0
# Work longer than so many widths of the jaws, and so thin for its length, bows between them;
# common practice, no source.
_OVER_JAWS, _THIN = 2.0, 1 / 15
_MILLED = frozenset(
    {"slotted", "pocketed", "stepped", "t_slotted", "dovetailed", "keywayed", "flatted", "recessed"}
)
# What the spindle is brought over before it is cut; all else begins at the edge of the work.
_PLACED = frozenset({"drilled", "reamed", "bored", "tapped", "slotted", "pocketed", "centred"})


class Flat:
    """The planning of one flat part; `setups` are numbered as they come."""

    def __init__(self, work: Work, form: FormFact) -> None:
        self.work = work
        self.form = form
        self.workshop = work.design.workshop
        self.mill = mill_for(self.workshop)
        self.setups: list[SetUp] = []
        self.trouble: list[tuple[str, str]] = []
        self.is_wood = work.group is None or work.group.name == "wood"
        self.thin = work.stock_across if work.stock_form in SHEETS else min(form.size)

    def run(self) -> list[SetUp]:
        """Saw out, square up, then the faces one after another, then what is filed."""
        blanks.saw(self)
        blanks.blank(self)
        sawn = list(shoulders(self))
        if sawn:
            shouldered(self, sawn)
        sides: dict[str, list[Located]] = {face: [] for face in SAID}
        far: list[Located] = []
        done = {one.cut.name for one in sawn}
        for whole in (one for one in self._cut_in_faces() if one.name not in done):
            one, *others = _by_ends(whole)
            far += others
            face = self._side(one)
            if face in sides:
                sides[face].append(one)
        for face in fine_first(sides, self.form):
            self._face(face, sides[face])
        holed.spotted_on_bar(self, sides)
        for one in far:
            self._other_end(one)
        aside.tapped_aside(self)
        faces.bends(self)
        self._rack()
        return self.setups

    def _cut_in_faces(self) -> Iterator[Located]:
        """All but the holes beside a joint, which have a set-up of their own."""
        asides = self.work.design.facts.all(AsideFact)
        beside = {one.place for one in asides if one.item == self.work.name}
        yield from (one for one in self.form.located if one.name not in beside)

    def _other_end(self, one: Located) -> None:
        """The same at the other end, as a feature of its own, so that no rule joins the two.

        Both ends are marked out before either is drilled.
        """
        before = len(self.setups)
        self._face(one.face, [one])
        fresh, self.setups = self.setups[before:], self.setups[:before]
        for setup in fresh:
            acts = tuple(replace(a, feature=f"{a.feature}, other end") for a in setup.acts)
            marking = next((n for n, old in enumerate(self.setups) if _only_marks(old)), None)
            if _only_marks(setup) and marking is not None:
                first = self.setups[marking]
                self.setups[marking] = replace(first, acts=(*first.acts, *acts))
            else:
                number = len(self.setups) + 1
                self.setups.append(replace(setup, acts=acts, number=number))

    def _rack(self) -> None:
        setup, wrong = rack_setup(self.work, self.form)
        self.trouble += wrong
        if setup is not None:
            self.setups.append(replace(setup, number=len(self.setups) + 1))

    def _side(self, one: Located) -> str:
        """The face from which a feature is cut: a through hole from that of its sink."""
        sink = next(
            (s for s in self.form.located if s.name == f"{one.name}_seat" and s.kind in SINKS), None
        )
        return sink.face if sink is not None and one.depth is None else one.face

    def is_sheet(self) -> bool:
        """Whether it is cut out of sheet, plate or board."""
        return self.work.stock_form in SHEETS or self.thin < SHEET_MM

    def cutter(self, width: float) -> str:
        """The widest owned end mill or slot drill up to a width in mm."""
        return end_cutter(self.workshop, width)[0]

    def _face(self, face: str, found: Sequence[Located]) -> None:
        milled = [one for one in found if one.kind in _MILLED]
        holes = [
            one
            for one in found
            if one.kind in HOLES | SINKS.keys() | {"centred"}
            and not self.work.is_wholly_left(one.name)
        ]
        edges = [one for one in found if one.kind in {"rounded", "chamfered", "bevelled"}]
        if milled:
            faces.milled(self, face, milled)
        large = [one for one in holes if holed.is_bored_in_lathe(self, one)]
        small = [one for one in holes if one not in large]
        if small:
            holed.drilled(self, face, small)
        for one in large:
            holed.bored(self, face, one)
        if edges:
            faces.edged(self, face, edges)

    def vice(self) -> Grip:
        """The vice where it opens far enough, else clamps on the table."""
        high = self.form.size[2]
        name = vice_for(self.workshop)
        opens = self.workshop.entry.holding.vices[name].opens.mm if name else 0.0
        least = min(self.form.size[0], self.form.size[1])
        if not name or least > opens:
            return Grip(ON_TABLE, "bench", "its edges", least)
        if self.bows():
            return Grip(
                "clamped flat on the table, on packing", "plate", "its ends and edges", least
            )
        if high < SHEET_MM:
            return Grip(f"clamped on wood in the {name}", "vice", "its face", high)
        return Grip(f"{name}, on parallels", "vice", "its sides", least)

    def bows(self) -> bool:
        """Whether it is so long and thin that a vice in its middle bends it up."""
        jaws = self.workshop.entry.holding.vices[vice_for(self.workshop)].jaw_width
        long, _, high = self.form.size
        is_long = jaws is not None and long > _OVER_JAWS * jaws.mm
        return is_long and SHEET_MM <= high <= _THIN * long

    def _has_a_place(self, acts: Sequence[Act]) -> bool:
        """Whether any of them cuts what the spindle has to be brought over first."""
        cut = {act.feature for act in acts}
        return any(one.name in cut and one.kind in _PLACED for one in self.form.located)

    def add(
        self,
        place: str,
        machine: str,
        grip: Grip,
        datum: str,
        acts: Sequence[Act],
        *,
        true: str = "",
        at_once: int = 1,
    ) -> None:
        """One more set-up."""
        start = datum
        if place == "mill":
            start = found_edges(
                with_edges(datum) if self._has_a_place(acts) and not true else datum
            )
        mount = holding_min(grip.kind) + (_TURNING_OVER if "turned" in grip.on else 0.0)
        number = len(self.setups) + 1
        self.setups.append(
            SetUp(number, place, machine, grip, start, tuple(acts), true, "", mount, at_once)
        )


def _by_ends(one: Located) -> tuple[Located, ...]:
    """A blind feature at both ends as two, one of each end: the work is turned round between."""
    end = {"left": 0, "right": 0, "front": 1, "back": 1}.get(one.face)
    is_through = one.depth is None and one.kind != "centred"
    if end is None or is_through or len(one.spots) < 2:
        return (one,)
    here = one.frame.origin[end]
    near = tuple(spot for spot in one.spots if abs(spot[end] - here) < SAME_MM)
    far = tuple(spot for spot in one.spots if spot not in near)
    if not far:
        return (one,)
    return replace(one, spots=near), replace(one, spots=far, face=OPPOSITE[one.face])


def _only_marks(setup: SetUp) -> bool:
    return all(act.act == "mark-out" for act in setup.acts)
