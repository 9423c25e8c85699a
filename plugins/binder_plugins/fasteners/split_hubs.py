"""Split hubs, drawn together on their shaft by a screw across a slit: slit, holes, length."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Misread, PlaceFact, made_at, made_places, made_size, read_thread
from binder_plugins.fasteners import shaft_codes
from binder_plugins.fasteners.choosing import screw_length, wanted
from binder_plugins.fasteners.clearing import clear_hole
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holding import holds_thread, screw_group
from binder_plugins.fasteners.holes import made_here
from binder_plugins.fasteners.hubs import diameter, hub_and_shaft, outside
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import Grip, TappedHole, least_engagement
from binder_trade.threads import Thread

_SLIT_MM = 1.0  # where no slitting saw is owned: a hacksaw's; common practice, no source
_WALLS = 2.0  # holes of metal and hole between bore and edge; common practice, no source
# By the face that the bore is in: along the slit's depth, across it, and along the bore; each
# with its two faces. The slit of a bore from the top runs across the end face.
_WAYS = {
    "top": (("left", "right"), ("front", "back"), ("underside", "top"), "across"),
    "underside": (("left", "right"), ("front", "back"), ("underside", "top"), "across"),
    "front": (("left", "right"), ("underside", "top"), ("front", "back"), "along"),
    "back": (("left", "right"), ("underside", "top"), ("front", "back"), "along"),
}


@dataclass(frozen=True, slots=True)
class Ear:
    """Where a hub is split, in mm: the end face, and what lies round the bore.

    `edge` is the bore's middle from that face, `near` and `far` from the sides that the screw
    enters and holds in; `mid` the middle of the hub along the bore; `slit` the width sawn.
    """

    end: str
    enters: str
    holds: str
    foot: str
    runs: str
    edge: float
    near: float
    far: float
    mid: float
    slit: float
    bore: float

    @property
    def room(self) -> float:
        """The metal between the bore and the end face."""
        return self.edge - self.bore / 2


def split_clamped(seen: Seen) -> Iterator[Said]:
    """All that follows from a hub that is split and drawn together by a screw."""
    hub, _ = hub_and_shaft(seen)
    thread, clear = seen.asked.thread, clear_hole(seen)
    if not hub.is_made or thread is None or clear is None:
        yield wanted(seen, seen.asked.name)
        return
    ear = _ear(seen, hub)
    if ear is None:
        yield from _round(seen, hub, thread, clear.mm)
        yield wanted(seen, seen.asked.name)
    elif min(ear.room, 2 * ear.mid) < _WALLS * clear.mm:
        yield _no_room(seen, hub, min(ear.room, 2 * ear.mid), thread, clear.mm)
        yield wanted(seen, seen.asked.name)
    else:
        yield from _cuts(seen, hub, ear, thread, clear.mm)
        yield from _length(seen, hub, ear, thread)


def _no_room(seen: Seen, hub: Half, room: float, thread: Thread, clear: float) -> Said:
    return shaft_codes.SPLIT_HUB_HAS_NO_ROOM.at(
        hub.end.at,
        f"'{hub.end.item}' has {room:.1f} mm of metal for the screw of '{seen.joint.name}'; "
        f"{thread.designation} wants {_WALLS * clear:.1f} mm",
        help="make the hub larger there, use a smaller screw, or clamp it by a grub screw",
    )


def _round(seen: Seen, hub: Half, thread: Thread, clear: float) -> Iterator[Said]:
    """A round hub is told how it is split: a hole beside the axis of turned work is not drawn."""
    over, bore = outside(seen, hub), diameter(seen, hub)
    if over is None or bore is None:
        return
    room = (over - bore) / 2
    if room < _WALLS * clear:
        yield _no_room(seen, hub, room, thread, clear)
        return
    beside = (over + bore) / 4
    words = (
        f"saw {_saw(seen):g} mm through one side into the bore; across it, {beside:.1f} mm from "
        f"the axis, drill {clear:g} mm to the slit and tap {thread.designation} beyond it"
    )
    mate = str(hub_and_shaft(seen)[1].end)
    yield half_fact(seen, hub, words, mate, "holes first, then ream the bore, saw last")


def _ear(seen: Seen, hub: Half) -> Ear | None:
    """The ear of a hub of flat faces; None for a round one, which has no room for a screw."""
    bore = hub.place
    if bore is None or bore.diameter is None or bore.on not in _WAYS:
        return None
    sides, across, along, runs = _WAYS[bore.on]
    spans = [_span(seen.design, hub.end.item, pair) for pair in (sides, across, along)]
    if None in spans:
        return None
    long, wide, deep = (one or 0.0 for one in spans)
    from_first = _placed(seen, hub, sides, long)
    near = _placed(seen, hub, across, wide)
    end = sides[0] if from_first <= long / 2 else sides[1]
    edge = min(from_first, long - from_first)
    return Ear(end, across[0], across[1], along[0], runs, edge, near, wide - near, deep / 2,
               _saw(seen), float(bore.diameter))  # fmt: skip


def _span(design: Design, item: str, faces: tuple[str, str]) -> float | None:
    """The metal between two faces: what a hole through one of them passes."""
    face = design.facts.about(PlaceFact, f"{item}.{faces[0]}")
    is_flat = face is not None and face.form == "face" and not face.is_round
    return float(face.thickness) if face is not None and is_flat and face.thickness else None


def _placed(seen: Seen, hub: Half, faces: tuple[str, str], span: float) -> float:
    """How far the middle of the bore is from the first of two faces, in mm."""
    owner = seen.design.parts.get(hub.end.item)
    features = owner.features if owner is not None else ()
    entry = next((one.entry for one in features if one.name == hub.end.place), None)
    at = getattr(entry, "at", None)
    for one in at.all if at is not None else ():
        if one.distance is not None and one.rest == f"from {faces[0]}":
            return float(one.distance.mm)
        if one.distance is not None and one.rest == f"from {faces[1]}":
            return span - float(one.distance.mm)
    return span / 2


def _saw(seen: Seen) -> float:
    saws = [one.width.mm for one in seen.design.workshop.entry.cutters.slitting_saws]
    return min(saws, default=_SLIT_MM)


def _cuts(seen: Seen, hub: Half, ear: Ear, thread: Thread, clear: float) -> Iterator[Said]:
    """The slit into the bore, the clearance hole to the slit, the tapped one beyond it."""
    joint = seen.joint
    place = made_places(
        (made_at(ear.room / 2, ear.end, joint), made_at(ear.mid, ear.foot, joint)), joint
    )
    read = read_thread(thread.designation)
    if isinstance(read, Misread):
        return
    beyond = ear.far + ear.slit / 2
    slit = {
        "slotted": made_size(ear.slit, joint), "on": ear.end, "runs": ear.runs,
        "depth": made_size(ear.edge, joint), "at": made_at(ear.near, ear.enters, joint),
    }  # fmt: skip
    hole = {
        "drilled": made_size(clear, joint), "on": ear.enters, "at": place,
        "depth": made_size(ear.near, joint),
    }  # fmt: skip
    tapped = {"tapped": read, "on": ear.holds, "at": place, "depth": made_size(beyond, joint)}
    mate = str(hub_and_shaft(seen)[1].end)
    for suffix, kind, values, words in (
        ("slit", "slotted", slit, f"saw {ear.slit:g} mm from {ear.end} into the bore"),
        ("clear", "drilled", hole, f"drill {clear:g} mm from {ear.enters} to the slit"),
        ("tap", "tapped", tapped, f"tap {thread.designation} from the slit to {ear.holds}"),
    ):
        feature = made_here(seen, hub, suffix, kind, values)
        yield feature
        how = (
            "last, when the bore is reamed and both holes are there"
            if kind == "slotted"
            else ("before the slit is sawn, through both sides with the tapping drill")
        )
        yield half_fact(seen, hub, words, mate, how, feature.name)


def _length(seen: Seen, hub: Half, ear: Ear, thread: Thread) -> Iterator[Said]:
    """The screw passes one side and the slit, and holds in the other side."""
    grip = Grip(ear.near + ear.slit / 2)
    hole = TappedHole(ear.far - ear.slit / 2, thread.pitch_mm, is_through=True)
    group = hub.group if holds_thread(hub.group) else "carbon steel"
    least = least_engagement(group, screw_group(seen), thread.major_mm, thread.pitch_mm)
    yield from screw_length(seen, grip, hole, least.least_mm)
