"""A joint as its hardware sees it: the fastener, the halves, the pattern, and how many."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Diagnostic, Joint, Span
from binder_plugins.fasteners import codes
from binder_plugins.fasteners.asking import Asked
from binder_plugins.fasteners.halves import Half, halves_of
from binder_plugins.fasteners.kinds import FasteningEntry
from binder_trade.explained import NotDefined
from binder_trade.fastening import Pattern, Unreadable, read_pattern, with_count


@dataclass(frozen=True, slots=True)
class Seen:
    """All that is known of a fastened joint before anything is chosen.

    `pattern` is that of one joint (a part of which two are made has it twice); `total` is how
    many fasteners one model has.
    """

    joint: Joint
    design: Design
    asked: Asked
    halves: tuple[Half, ...]
    pattern: Pattern | None
    pattern_at: Span
    total: int

    @property
    def entry(self) -> FasteningEntry:
        """What the joint says beside its halves."""
        entry = self.joint.entry
        return entry if isinstance(entry, FasteningEntry) else FasteningEntry()

    @property
    def id(self) -> str:
        """The joint's name as workings and implied features carry it."""
        return self.joint.name.replace(" ", "_")

    @property
    def each(self) -> int:
        """How many fasteners one such joint has."""
        most = max((half.off for half in self.halves), default=1)
        return max(1, self.total // most)

    @property
    def owner(self) -> Half:
        """The half on whose face the pattern was said: where it stands in the middle."""
        for half in self.halves:
            if half.hole is not None and half.hole.pattern and self.entry.pattern is None:
                return half
        return self.halves[0]

    def off_on(self, half: Half) -> int:
        """How many holes one item of a half has."""
        return max(1, -(-self.total // half.off))


def look(joint: Joint, design: Design, asked: Asked) -> Seen | Diagnostic:
    """The joint as it is seen, or the finding that its pattern cannot be read."""
    words = joint.entry.pattern if isinstance(joint.entry, FasteningEntry) else None
    at = words.span if words is not None else joint.at
    try:
        said = read_pattern(str(words)) if words is not None else None
        halves = _matched(joint, design, asked, said.count if said is not None else None)
        total = _total(halves, said)
        pattern = said or next((found for half in halves for found in _written(half)), None)
        most = max((half.off for half in halves), default=1)
        if pattern is not None and pattern.count is None:
            pattern = with_count(pattern, max(1, total // most))
    except NotDefined as fault:
        return codes.PATTERN_UNREADABLE.at(at, fault.reason, help=fault.way_out)
    return Seen(joint, design, asked, halves, pattern, at, total)


def _matched(joint: Joint, design: Design, asked: Asked, count: int | None) -> tuple[Half, ...]:
    """The halves; a hole that is named outright says how many are looked for in the others."""
    halves = _meant(halves_of(joint, design, asked.diameter_mm, asked.thread, count))
    named = [_holes(half) for half in halves if half.hole is not None and half.hole == half.place]
    if count is not None or not named:
        return halves
    return tuple(
        half
        if half.hole is None or half.hole == half.place or _holes(half) == max(named)
        else _without_hole(half)
        for half in halves
    )


def _meant(halves: tuple[Half, ...]) -> tuple[Half, ...]:
    """A plain hole that was only found on the last face takes the screw if another is tapped."""
    last = halves[-1]
    is_found = last.hole is not None and last.hole != last.place and not last.is_tapped
    if not is_found or any(half.is_tapped for half in halves):
        return halves
    return (*halves[:-1], _without_hole(last))


def _holes(half: Half) -> int:
    """How many written holes there are in one model."""
    return half.off * half.hole.count if half.hole is not None else 0


def _grooves(half: Half) -> int:
    """How many written grooves for clips there are in one model."""
    place = half.place
    return half.off * place.count if place is not None and place.kind == "grooved" else 0


def _without_hole(half: Half) -> Half:
    thick = half.place.thickness if half.place is not None else None
    return Half(
        half.end,
        half.place,
        None,
        half.group,
        half.off,
        half.is_made,
        float(thick) if thick is not None else None,
    )


def _written(half: Half) -> Iterator[Pattern]:
    """The pattern of a written hole, where its words can be read."""
    if half.hole is None or not half.hole.pattern:
        return
    try:
        yield read_pattern(half.hole.pattern)
    except NotDefined:
        return


def _total(halves: tuple[Half, ...], said: Pattern | None) -> int:
    """What the joint says on each of its parts, else the most holes that are written.

    Raises Unreadable where a pattern is said without how many, and no hole tells it.
    """
    most = max((half.off for half in halves), default=1)
    if said is not None and said.count is not None:
        return most * said.count
    written = max((max(_holes(half), _grooves(half)) for half in halves), default=0)
    if said is not None and not written:
        raise Unreadable("the pattern does not say how many holes", "write for example: 4 off")
    return max(written, most)
