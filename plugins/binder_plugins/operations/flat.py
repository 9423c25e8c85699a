"""Blocks, plates, sheet, boards and lengths of bar to their set-ups: blank, holes, cuts."""

from __future__ import annotations

import math
from collections.abc import Sequence

from binder.api import exact
from binder_plugins.operations.bench import (
    bench_vice,
    drill_for,
    flat_holder,
    largest_drill_taken,
    lathe_for,
    mill_for,
    place_of,
    vice_for,
)
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.holes import HOLES, SINKS, Where, hole_acts, through
from binder_plugins.operations.words import holding_min
from binder_plugins.operations.work import TOGETHER, Work
from binder_solid.facts import FormFact, Located

_SHEET_MM = 2.0
# Minutes for turning a block over between its faces; common practice, no source.
_TURNING_OVER = 12.0
_SHEETS = frozenset({"sheet", "plate", "board"})
_MILLED = frozenset(
    {"slotted", "pocketed", "stepped", "t_slotted", "dovetailed", "keywayed", "flatted", "recessed"}
)
_FACES = ("top", "underside", "front", "back", "left", "right")
_SAID = {
    "top": "top",
    "underside": "underside",
    "front": "front",
    "back": "back",
    "left": "left end",
    "right": "right end",
}


class Flat:
    """The planning of one flat part; `setups` are numbered as they come."""

    def __init__(self, work: Work, form: FormFact) -> None:
        self.work = work
        self.form = form
        self.workshop = work.design.workshop
        self.mill = mill_for(self.workshop)
        self.setups: list[SetUp] = []
        self.trouble: list[tuple[str, str]] = []
        self.is_wood = work.group is None
        self.thin = work.stock_across if work.stock_form in _SHEETS else min(form.size)

    def run(self) -> list[SetUp]:
        """Saw out, square up, then the faces one after another, then what is filed."""
        self._saw()
        self._blank()
        faces = {face: [] for face in _FACES}  # type: dict[str, list[Located]]
        for one in self.form.located:
            face = self._side(one)
            if face in faces:
                faces[face].append(one)
        for face, found in faces.items():
            self._face(face, found)
        self._bends()
        return self.setups

    def _side(self, one: Located) -> str:
        """The face from which a feature is cut: a through hole from that of its sink."""
        sink = next(
            (s for s in self.form.located if s.name == f"{one.name}_seat" and s.kind in SINKS), None
        )
        return sink.face if sink is not None and one.depth is None else one.face

    # --- the blank --------------------------------------------------------------------------
    def _saw(self) -> None:
        long, wide, high = self.form.size
        cut = self.work.cut
        stock = cut.section_text if cut is not None else "the stock"
        if cut is not None and cut.form in _SHEETS:
            long, wide = float(cut.length), float(cut.width or wide)
            words = f"saw out {self.work.mm(long + 1)} × {self.work.mm(wide + 1)} of {stock}"
        else:
            words = f"saw off {self.work.mm(float(cut.length) + 2 if cut else long + 2)} of {stock}"
        tool = (
            "tenon saw" if self.is_wood else "piercing saw" if self.thin < _SHEET_MM else "hacksaw"
        )
        vice = bench_vice(self.workshop)
        act = self.work.act("saw", words, tool=tool, amount=max(math.sqrt(wide * high), 1.0))
        self._add("saw", "", Grip(vice or "by hand", "bench", "the stock"), "", [act])

    def _blank(self) -> None:
        long, wide, high = self.form.size
        sizes = " × ".join(self.work.mm(one) for one in (long, wide, high))
        if self.is_wood:
            act = self.work.act("square", f"plane to {sizes}, ends square", tags=("datum",))
            self._add(
                "bench",
                "",
                Grip(bench_vice(self.workshop) or "bench", "bench", "its faces"),
                "the best face and edge",
                [act],
            )
            return
        if self._is_sheet() and self.form.shape != "block":
            self._sheet_edges()
        elif self._has_raw_faces():
            self._six_faces(sizes)
        else:
            self._two_ends()

    def _is_sheet(self) -> bool:
        return self.work.stock_form in _SHEETS or self.thin < _SHEET_MM

    def _has_raw_faces(self) -> bool:
        """Whether the section of the part is smaller than that of the bar."""
        cut = self.work.cut
        section = sorted(float(one) for one in cut.section) if cut is not None else []
        own = sorted(self.form.size[1:])
        if len(section) == 1 and cut is not None and cut.form == "square bar":
            section *= 2
        return len(section) < 2 or any(
            abs(a - b) > 1e-3 for a, b in zip(section, own, strict=False)
        )

    def _sheet_edges(self) -> None:
        """Two edges square to each other, then the others to size."""
        long, wide = self.form.size[0], self.form.size[1]
        if self.form.shape == "sheet" and self.work.cut is not None:
            long, wide = float(self.work.cut.length), float(self.work.cut.width or wide)
        is_filed = self.thin < _SHEET_MM or not self.mill
        act, machine = ("file", "") if is_filed else ("mill", self.mill)
        verb = "file" if is_filed else "mill"
        make = self.work.act
        size = 0.0 if is_filed else 10.0
        acts = [
            make(
                act,
                f"{verb} one long edge straight",
                machine=machine,
                feature="edge 1",
                size=size,
                amount=long / 3,
                tags=("datum", "first-datum"),
            ),
            make(
                act,
                f"{verb} one end square to it",
                machine=machine,
                feature="edge 2",
                size=size,
                amount=wide / 3,
                tags=("datum", "second-datum"),
            ),
            make(
                act,
                f"the others to {self.work.mm(long)} × {self.work.mm(wide)}",
                machine=machine,
                feature="edges",
                size=size,
                amount=(long + wide) / 3,
            ),
        ]
        vice = bench_vice(self.workshop) if is_filed else vice_for(self.workshop)
        pair = f", {self.work.count} together" if self.work.count > 1 else ""
        grip = Grip(
            f"{vice or 'vice'}{pair}", "bench" if is_filed else "vice", "its faces", self.thin
        )
        self._add("bench" if is_filed else "mill", machine, grip, "the first edge and end", acts)

    def _six_faces(self, sizes: str) -> None:
        if not self.mill:
            self._faced_in_the_lathe(sizes)
            return
        long, wide, high = (self.work.mm(one) for one in self.form.size)
        make, cutter = self.work.act, self._cutter(16.0)
        size = 16.0
        said = (
            ("face 1, the largest, clean", "face 1", ("datum", "first-datum")),
            (
                "face 2 square to it: face 1 to the fixed jaw, a round bar at the other",
                "face 2",
                ("datum", "second-datum"),
            ),
            (f"face 3 opposite to face 2, to {wide}", "face 3", ("datum",)),
            (f"face 4 opposite to face 1, to {high}", "face 4", ("datum",)),
            ("one end square, set up by a square from the vice", "end 1", ("datum",)),
            (f"the other end to {long}", "end 2", ("datum",)),
        )
        acts = [
            make(
                "mill",
                f"mill {words}",
                machine=self.mill,
                feature=name,
                tool=cutter,
                size=size,
                tags=tags,
            )
            for words, name, tags in said
        ]
        grip = Grip(
            vice_for(self.workshop) or "clamps on the table",
            "vice",
            "opposite faces, turned for each",
            min(self.form.size[1:]),
        )
        self._add(
            "mill",
            self.mill,
            grip,
            "face 1, then each made face",
            acts,
        )

    def _faced_in_the_lathe(self, sizes: str) -> None:
        """Without a mill a block is faced in the four-jaw, or filed."""
        across = math.hypot(*self.form.size[1:])
        lathe = lathe_for(self.workshop, max(across, self.form.size[0]))
        holder, kind = flat_holder(self.workshop, across)
        if lathe and holder:
            acts = [
                self.work.act(
                    "face",
                    f"face the six sides in turn, to {sizes}",
                    machine=lathe,
                    feature="faces",
                    size=across,
                    times=6,
                    tags=("datum",),
                )
            ]
            self._add(
                "lathe", lathe, Grip(holder, kind, "opposite faces", across), "the first face", acts
            )
            return
        act = self.work.act(
            "file", f"file the six sides square, to {sizes}", feature="faces", times=6
        )
        self._add(
            "bench",
            "",
            Grip(bench_vice(self.workshop) or "vice", "bench", "its faces"),
            "the first face",
            [act],
        )

    def _two_ends(self) -> None:
        long = self.work.mm(self.form.size[0])
        act, machine = (
            ("mill", self.mill) if self.mill and min(self.form.size[1:]) >= 5 else ("file", "")
        )
        size = 10.0 if machine else 0.0
        acts = [
            self.work.act(
                act,
                "one end square",
                machine=machine,
                feature="end 1",
                size=size,
                amount=8.0,
                tags=("datum",),
            ),
            self.work.act(
                act,
                f"the other end to {long}",
                machine=machine,
                feature="end 2",
                size=size,
                amount=8.0,
                tags=("datum",),
            ),
        ]
        vice = vice_for(self.workshop) if machine else bench_vice(self.workshop)
        grip = Grip(
            vice or "vice", "vice" if machine else "bench", "the bar's faces", self.form.size[1]
        )
        self._add("mill" if machine else "bench", machine, grip, "the first end", acts)

    def _cutter(self, width: float) -> str:
        found = self.workshop.widest_end_cutter(exact(width))
        return (
            f"{found.name} {'slot drill' if found.plunges else 'end mill'}"
            if found
            else "end mill, not owned"
        )

    # --- the faces ---------------------------------------------------------------------------
    def _face(self, face: str, found: Sequence[Located]) -> None:
        milled = [one for one in found if one.kind in _MILLED]
        holes = [one for one in found if one.kind in HOLES | SINKS.keys()]
        edges = [one for one in found if one.kind in {"rounded", "chamfered", "bevelled"}]
        if milled:
            self._milled(face, milled)
        large = [one for one in holes if self._is_bored_in_lathe(one)]
        small = [one for one in holes if one not in large]
        if small:
            self._drilled(face, small)
        for one in large:
            self._bored(face, one)
        if edges:
            self._edged(face, edges)

    def _milled(self, face: str, found: Sequence[Located]) -> None:
        if self.is_wood or not self.mill:
            acts = [self._by_hand(one) for one in found]
            self._add(
                "bench",
                "",
                Grip(bench_vice(self.workshop) or "vice", "bench", "its faces"),
                _datum(face),
                acts,
            )
            return
        acts = []
        for one in found:
            width = one.diameter or one.width or 6.0
            half = self.work.half(one.name)
            what = half.what if half is not None and one.kind == "dovetailed" else one.note
            act = "keyway" if one.kind == "keywayed" else "mill"
            if one.kind == "dovetailed":
                acts.append(
                    self.work.act(
                        "mill",
                        "mill the slot or sides square first, to the narrow width",
                        machine=self.mill,
                        feature=one.name,
                        tool=self._cutter(width),
                        size=min(width, 12.0),
                    )
                )
                acts.append(
                    self.work.act(
                        "mill",
                        what,
                        machine=self.mill,
                        feature=one.name,
                        tool="dovetail cutter",
                        size=16.0,
                        tags=("finish",),
                    )
                )
                continue
            cutter = self.workshop.widest_end_cutter(exact(min(width, 16.0)), plunging=True)
            name = (
                f"{cutter.name} {'slot drill' if cutter.plunges else 'end mill'}"
                if cutter
                else "slot drill, not owned"
            )
            acts.append(
                self.work.act(
                    act,
                    what,
                    machine=self.mill,
                    feature=one.name,
                    tool=name,
                    size=float(cutter.mm) if cutter else width,
                    times=len(one.spots),
                )
            )
        self._travel()
        self._add("mill", self.mill, self._vice(), _datum(face), acts)

    def _by_hand(self, one: Located) -> Act:
        if one.kind in {"pocketed", "t_slotted", "dovetailed"} and not self.is_wood:
            words = f"'{one.name}' of '{self.work.name}' is milled, and no mill is owned"
            self.trouble.append(("no-machine-for-it", words))
        tool = "chisel and saw" if self.is_wood else "saw and files"
        return self.work.act(
            "file",
            f"{'cut' if self.is_wood else 'drill, saw and file'}: {one.note}",
            feature=one.name,
            tool=tool,
            times=len(one.spots),
        )

    def _travel(self) -> None:
        mill = self.workshop.entry.machines.mills.get(self.mill)
        if mill is not None and self.form.size[0] > mill.travels.x.mm:
            words = (
                f"'{self.work.name}' is {self.form.size[0]:g} mm long; the {self.mill} "
                f"travels {mill.travels.x.mm:g} mm"
            )
            self.trouble.append(("mill-travel-too-short", words))

    def _vice(self) -> Grip:
        high = self.form.size[2]
        name = vice_for(self.workshop)
        opens = self.workshop.entry.holding.vices[name].opens.mm if name else 0.0
        least = min(self.form.size[0], self.form.size[1])
        if not name or least > opens:
            return Grip("clamps on the table", "bench", "its edges", least)
        if high < _SHEET_MM:
            return Grip(f"clamped on wood in the {name}", "vice", "its face", high)
        return Grip(f"{name}, on parallels", "vice", "its sides", least)

    def _drilled(self, face: str, found: Sequence[Located]) -> None:
        together = [
            one
            for one in found
            if self.work.made(one.name) == "spotted through" and one.kind == "tapped"
        ]
        plain = [one for one in found if one not in together and not self._is_left(one)]
        if plain:
            self._holes(face, plain)
        for one in together:
            self._spotted(one)

    def _is_left(self, one: Located) -> bool:
        return one.kind == "drilled" and self.work.made(one.name) in TOGETHER

    def _holes(self, face: str, found: Sequence[Located]) -> None:
        largest = (
            max(one.diameter or 0.0 for one in found if one.kind not in SINKS)
            if any(one.kind not in SINKS for one in found)
            else 1.0
        )
        machine = self._for_holes(min(largest, 13.0))
        place = place_of(self.workshop, machine)
        by_rows = place == "mill"
        tags = ("coordinates",) if by_rows else ()
        if self.thin < _SHEET_MM:
            tags = (*tags, "sheet")
        acts: list[Act] = []
        if not by_rows:
            count = sum(len(one.spots) for one in found)
            acts.append(
                self.work.act(
                    "mark-out",
                    f"mark out {count} hole{'s' if count > 1 else ''} on the {_SAID[face]}",
                    feature=f"marks {face}",
                    amount=count,
                )
            )
        for one in sorted(found, key=lambda one: one.kind in SINKS):
            more = ("master",) if self.work.made(one.name) == "spotted through" else ()
            deep = through(one, self.form.size)
            acts += hole_acts(self.work, one, Where(machine, deep, tags=(*tags, *more)))
        self._too_large(found)
        self._add(place, machine, self._vice(), _datum(face), acts)

    def _for_holes(self, largest: float) -> str:
        """The mill where holes are placed by coordinates in metal, else the drilling machine."""
        if self.mill and not self.is_wood and self.thin >= _SHEET_MM:
            return self.mill
        return drill_for(self.workshop, largest)

    def _too_large(self, found: Sequence[Located]) -> None:
        most = largest_drill_taken(self.workshop)
        for one in found:
            if one.kind == "drilled" and most and (one.diameter or 0.0) > most and not self.is_wood:
                words = (
                    f"'{one.name}' of '{self.work.name}' is ⌀{one.diameter:g} mm; what is here "
                    f"drill ⌀{most:g} mm, and the part does not go in the lathe"
                )
                self.trouble.append(("hole-too-large", words))

    def _spotted(self, one: Located) -> None:
        mate = self._mate(one.name)
        machine = drill_for(self.workshop, one.diameter or 0.0)
        spot = self.work.act(
            "spot-through",
            f"clamp the {mate} on, spot {len(one.spots)} through",
            machine=machine,
            feature=one.name,
            times=len(one.spots),
        )
        where = Where(machine, through(one, self.form.size), tags=("later",), is_started=True)
        acts = [spot, *hole_acts(self.work, one, where)]
        self._add(
            place_of(self.workshop, machine),
            machine,
            self._vice(),
            f"the holes of the {mate}",
            acts,
        )

    def _mate(self, place: str) -> str:
        half = self.work.half(place)
        item = self.work.design.item(half.mate.partition(".")[0]) if half is not None else None
        return item.title if item is not None else "mate"

    def _is_bored_in_lathe(self, one: Located) -> bool:
        """A bore, or a hole that no drilling machine takes, in a part that the lathe swings."""
        if len(one.spots) > 1 or self.is_wood:
            return False
        most = largest_drill_taken(self.workshop)
        is_wanted = one.kind == "bored" or (
            one.kind in HOLES and (one.diameter or 0.0) > max(most, 1.0)
        )
        across = self._swung(one)
        return (
            is_wanted
            and bool(lathe_for(self.workshop, across))
            and bool(flat_holder(self.workshop, across)[0])
        )

    def _swung(self, one: Located) -> float:
        """The circle in mm that the part sweeps when it turns about a hole."""
        axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
        spans = [
            max(one.frame.origin[n], self.form.size[n] - one.frame.origin[n])
            for n in range(3)
            if n != axis
        ]
        return 2 * math.hypot(*spans)

    def _bored(self, face: str, one: Located) -> None:
        across = self._swung(one)
        lathe = lathe_for(self.workshop, across)
        holder, kind = flat_holder(self.workshop, across)
        mark = self.work.act(
            "mark-out",
            f"mark the centre of the {one.name.replace('_', ' ')} and pop it",
            feature=f"marks {one.name}",
            amount=1.0,
        )
        vice = bench_vice(self.workshop)
        self._add(
            "bench", "", Grip(vice or "surface plate", "bench", "its base"), _datum(face), [mark]
        )
        deep = through(one, self.form.size)
        acts = list(hole_acts(self.work, one, Where(lathe, deep, end=face, is_lathe=True)))
        grip = Grip(
            holder,
            kind,
            "its edges" if kind == "four-jaw" else "its face, clamped and balanced",
            across,
        )
        self._add(
            "lathe",
            lathe,
            grip,
            "the centre pop, clocked true",
            acts,
            true="the pop mark within 0.05 mm, the face square",
        )

    def _edged(self, face: str, found: Sequence[Located]) -> None:
        acts = [
            self.work.act(
                "file",
                one.note,
                feature=one.name,
                tool="files and radius gauge" if one.kind == "rounded" else "file",
            )
            for one in found
        ]
        self._add(
            "bench",
            "",
            Grip(bench_vice(self.workshop) or "vice", "bench", "its faces"),
            _datum(face),
            acts,
        )

    def _bends(self) -> None:
        found = [one for one in self.form.located if one.kind.startswith("bend")]
        if not found:
            return
        acts = [
            self.work.act(
                "bend",
                one.note,
                feature=one.name,
                tags=("inner",) if n == 0 and len(found) > 1 else ("outer",),
            )
            for n, one in enumerate(found)
        ]
        self._add(
            "bench",
            "",
            Grip("bending bars in the vice", "bench", "beside the bend line"),
            "the bend line",
            acts,
        )

    def _add(
        self,
        place: str,
        machine: str,
        grip: Grip,
        datum: str,
        acts: Sequence[Act],
        *,
        true: str = "",
    ) -> None:
        mount = holding_min(grip.kind) + (_TURNING_OVER if "turned" in grip.on else 0.0)
        self.setups.append(
            SetUp(len(self.setups) + 1, place, machine, grip, datum, tuple(acts), true, "", mount)
        )


def _datum(face: str) -> str:
    return (
        f"{_SAID[face]} up; sizes from the two made edges"
        if face in {"top", "underside"}
        else f"{_SAID[face]} up"
    )
