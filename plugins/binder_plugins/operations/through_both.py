"""Holes drilled together: the parts clamped as they will stand, one drill through them all."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import JointFact
from binder_plugins.operations.bench import bench_vice, drill_for, place_of
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import Where
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.lying import lying
from binder_plugins.operations.nested import Nested, nested
from binder_plugins.operations.plain import in_pieces
from binder_plugins.operations.rows import Hole, holes_of
from binder_plugins.operations.sides import SAID
from binder_plugins.operations.words import holding_min
from binder_solid.float_tried import FEELERS
from binder_solid.pinned_stop import pinned_stop
from binder_solid.stands_at import axis_heights, face_over

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Joint, TogetherFact
    from binder_plugins.operations.work import Work


def drilled(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """Clamped and drilled through at one setting, then marked, parted and cleaned."""
    found = zip(fact.joints, (list(holes_of(line, works)) for line in fact.lines), strict=True)
    rows = [(joint, holes) for joint, holes in found if holes]
    # All lines are scribed before the first clamping: the parts are apart only then.
    told: set[str] = set()
    marks = [act for joint, holes in rows for act in _marked(joint, holes, told)]
    for number, (joint, holes) in enumerate(rows):
        one = replace(fact, joints=(joint,))
        yield _through(one, holes, marks if number == 0 else (), is_pinned=number > 0)
    if rows:
        yield parted(rows[0][1][0].work, fact)


def _through(
    fact: TogetherFact, holes: Sequence[Hole], marks: Sequence[Act], *, is_pinned: bool
) -> SetUp:
    lead, inside = _lead(holes), _nested(fact, holes)
    work = lead.work
    deep = inside.deep if inside is not None else sum(one.deep for one in holes)
    across = lead.one.diameter or 1.0
    workshop = work.design.workshop
    machine = drill_for(workshop, min(across, 13.0))
    led = _leading(holes)
    first = led[1] if led is not None else 0.0
    where = Where(machine, deep, tags=("stacked",), is_together=True, first=first)
    pin = "a pin in the hole before, " if is_pinned else ""
    lies = lying([inside.inner, inside.outer] if inside is not None else holes)
    grip = inside.gripped(lies.grip) if inside is not None else lies.grip
    packed = lies.again if is_pinned else lies.packed
    put = inside.up if inside is not None else fact.up
    peg = _PEGGED if len(lead.one.spots) > 1 else ""
    up = f"{pin}{put}{packed}; tried with a square or a protractor{peg}"
    tool = _CLAMPS if packed else _GLUED if inside is not None else ""
    clamp = work.act("clamp-stack", up, feature=lead.one.name, tool=tool)
    acts = [*marks, clamp]
    if led is not None:
        acts.append(_led(lead, *led, machine, deep))
    acts += hole_acts(work, lead.one, where)
    return SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        f"where they will stand{_levelled(holes)}",
        tuple(replace(act, joints=fact.joints) for act in acts),
        "the holes to one another: one drill through both",
        "all are through",
        holding_min(grip.kind),
    )


def _leading(holes: Sequence[Hole]) -> tuple[Hole, float] | None:
    """The hole that is in a part already, as its pieces brought it, and its size in mm."""
    found = [(one, size) for one in holes if (size := in_pieces(one.work, one.one))]
    return min(found, key=lambda pair: pair[1], default=None)


def _led(lead: Hole, by: Hole, size: float, machine: str, deep: float) -> Act:
    """The drill of the hole that is there goes through both: nothing is spotted beside it."""
    work = lead.work
    return work.act(
        "drill",
        f"drill ⌀{work.mm(size)} through both, led by the hole that is in the {by.work.item.title}",
        machine=machine,
        feature=lead.one.name,
        tool=drill_name(work, size, fitted=False),
        size=size,
        deep=deep,
        tags=("stacked", "pilot"),
        spoils="a drill that misses the hole of the other plate",
    )


def _nested(fact: TogetherFact, holes: Sequence[Hole]) -> Nested | None:
    """The one part round the other, of the joint that is drilled."""
    return nested(holes[0].work.design.joints[fact.joints[0]], holes)


def _marked(joint: str, holes: Sequence[Hole], told: set[str]) -> Iterator[Act]:
    """Where the hole comes on round work: from the nearer end, on a line that is told once.

    On a shaft whose float it fixes it comes where the stop stands, as the row was measured.
    """
    stop = pinned_stop(holes[0].work.design.joints[joint], holes[0].work.design)
    inside = nested(holes[0].work.design.joints[joint], holes)
    yield from _on_flat(holes)
    for hole in holes:
        if stop is not None and hole.work.name == stop.shaft.subject:
            design = hole.work.design
            words, name = stop.said(design), f"marks {hole.one.name}"
            yield hole.work.act("mark-out", words, feature=name, amount=1.0, tool=_BY_FEELER)
            continue
        if inside is not None and hole is inside.inner:
            name = f"marks {hole.one.name}"
            yield hole.work.act("mark-out", inside.line, feature=name, amount=1.0, tool=_ROUND)
            continue
        form = hole.work.form
        if form is None or not form.stretches or hole.one.face != "across":
            continue
        x, whole = hole.one.frame.origin[0], form.size[0]
        end, away = ("left", x) if x <= whole / 2 else ("right", whole - x)
        title, said = hole.work.item.title, hole.work.mm(away)
        over = _on_it(hole)
        line = over.line if over is not None else ""
        way = "that line" if line and line in told else f"a line along its axis{line}"
        tool = _BY_HEIGHT if line and line not in told else ""
        told.add(line)
        yield hole.work.act(
            "mark-out",
            f"scribe the {title} {said} from its {end}-hand end, across {way}: the hole comes "
            "where they cross",
            feature=f"marks {hole.one.name}",
            amount=1.0,
            tool=tool,
        )


def _on_flat(holes: Sequence[Hole]) -> Iterator[Act]:
    """The holes on the flat part that lies up, where nothing else tells the drill its place."""
    lead = _lead(holes)
    form = lead.work.form
    if form is None or form.stretches or any(in_pieces(one.work, one.one) for one in holes):
        return
    if any(one.work.form is not None and one.one.face == "across" for one in holes):
        return  # The line on the round part tells it.
    count = len(lead.one.spots)
    holes_said = f"{count} holes" if count > 1 else "the hole"
    yield lead.work.act(
        "mark-out",
        f"mark out {holes_said} on the {SAID.get(lead.one.face, lead.one.face)} of the "
        f"{lead.work.item.title}, which lies up",
        feature=f"marks {lead.one.name}",
        amount=float(count),
    )


_PEGGED = "; the first hole through, a peg of its size goes in before the next is drilled"
_GLUED = "toolmaker's clamps, packing, superglue"
_ROUND = "scriber, square"
_CLAMPS = "toolmaker's clamps, packing, height gauge"
_BY_FEELER = f"{FEELERS}, scriber"
_BY_HEIGHT = "height gauge, flat plate, square and centre punch"


@dataclass(frozen=True, slots=True)
class _Over:
    """What is fixed on the round work already and tells how its hole is turned."""

    title: str
    face: str
    turned: float
    high: str

    @property
    def line(self) -> str:
        """Where along the round work the line is scribed."""
        side = f" on the side that the {self.face} face of the {self.title} looks to"
        if self.turned:
            return (
                f"{side}, turned {abs(self.turned):.3g}° about the axis; with the {self.title} set "
                "over by that from flat on the plate, by a protractor, the line is as high as the "
                "axis"
            )
        return (
            f"{side}; with the {self.title} flat on the plate on {self.high} the line is as high "
            "as the axis"
        )


def _on_it(hole: Hole) -> _Over | None:
    """The block that a flame has fixed on the work before the hole is drilled."""
    design = hole.work.design
    for joint in design.joints.values():
        said = design.facts.about(JointFact, joint.name)
        if said is None or not said.is_hot or hole.work.name not in joint.items:
            continue
        other, face, turned = face_over(joint, hole.one.name, design)
        item = design.item(other) if other and other != hole.work.name else None
        if item is not None:
            return _Over(item.title, face, turned, _high(joint, face, hole.work))
    return None


def _high(joint: Joint, face: str, work: Work) -> str:
    """On what the block lies, and how high its axis stands then: `its back face, 12 mm up:`."""
    found = axis_heights(joint, face, work.design)
    if not found:
        return "a face beside that one"
    heights = {high for _, high in found}
    on = "a face beside that one" if len(heights) == 1 else f"its {found[0][0]} face"
    return f"{on} and the height gauge at {work.mm(found[0][1])} over it"


def _levelled(holes: Sequence[Hole]) -> str:
    """What is set level under the drill: the face that the hole is square to."""
    found = next((over for one in holes if (over := _on_it(one)) is not None), None)
    if found is None:
        return ""
    turned = f" but for {abs(found.turned):.3g}°" if found.turned else ""
    return f"; the {found.face} face of the {found.title} up, level{turned}"


def _lead(holes: Sequence[Hole]) -> Hole:
    """The hole by which it is drilled: a reamed one, in a known metal, the smallest."""
    return min(
        holes,
        key=lambda one: (
            one.one.kind != "reamed",
            one.work.group is None,
            one.one.diameter or 0.0,
        ),
    )


_BOTH = "mark both for the way round, then take them apart"


def parted(work: Work, fact: TogetherFact, marks: str = _BOTH) -> SetUp:
    """Marked for the way round, taken apart, and the burrs between the pieces taken off."""
    acts: list[Act] = [
        replace(work.act("separate", marks), joints=fact.joints),
        replace(
            work.act("deburr", "take off the burrs between them, wash", amount=1.0),
            joints=fact.joints,
        ),
    ]
    vice = bench_vice(work.design.workshop)
    return SetUp(2, "bench", "", Grip(vice or "by hand", "bench", "by hand"), "", tuple(acts))
