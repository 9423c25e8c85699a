"""Parts, joints and words to places: one part after the other, from the one that stands."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from binder.api import Design, Diagnostic, did_you_mean
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.copies import Copy, copies_of
from binder_plugins.arrangement.joined import Stand, holds_of, lays_of
from binder_plugins.arrangement.kinds import CopyPosition, PositionEntry
from binder_plugins.arrangement.meetings import Meeting, meetings_of
from binder_plugins.arrangement.rows import (
    ALONG,
    Row,
    holds_in_row,
    holds_of_shaft,
    holds_on_axis,
    line_of,
    rows_of,
)
from binder_plugins.arrangement.solving import Settled, settle
from binder_plugins.arrangement.space import carried, scaled, tidy
from binder_plugins.arrangement.ties import Hold, Lay
from binder_plugins.arrangement.turning import off, turn_for
from binder_plugins.arrangement.words import (
    faults_of,
    holds_said,
    lays_said,
    references,
    turn_of,
)
from binder_solid.forms import Frame, Vector

_ASKEW = 0.5
_UPRIGHT = Frame(z=(-1.0, 0.0, 0.0), x=(0.0, 0.0, 1.0))
"""Turned work as the part that stands: its axis upwards, its first face on the bench."""


@dataclass
class Model:
    """The model being put together: what stands already, and what has been found."""

    design: Design
    copies: Mapping[str, tuple[Copy, ...]]
    meetings: tuple[Meeting, ...]
    rows: tuple[Row, ...]
    entries: Mapping[str, PositionEntry]
    by_copy: Mapping[str, tuple[Meeting, ...]]
    standing: dict[str, Stand] = field(default_factory=dict)
    findings: list[Diagnostic] = field(default_factory=list)

    def said(self, copy: Copy) -> CopyPosition:
        """What the maker says of one copy."""
        entry = self.entries.get(copy.item)
        if entry is None:
            return CopyPosition.model_construct()
        if copy.number <= len(entry.copies):
            return entry.copies[copy.number - 1]
        return entry

    def meetings_with(self, copy: Copy) -> tuple[Meeting, ...]:
        """The meetings of a copy, seen from it."""
        return self.by_copy.get(copy.name, ())

    def stands(self) -> dict[str, tuple[Stand, ...]]:
        """What stands, by the name of the item."""
        found: dict[str, tuple[Stand, ...]] = {}
        for stand in self.standing.values():
            found[stand.copy.item] = (*found.get(stand.copy.item, ()), stand)
        return found


def put_together(design: Design) -> Model:
    """Places every part that joints and words reach."""
    copies = copies_of(design)
    entries = getattr(design.spec.written, "positions", None) or {}
    met = meetings_of(design, copies)
    model = Model(design, copies, met, rows_of(design, copies), entries, _by_copy(met))
    first = _first(model)
    if first is None:
        return model
    model.findings += _faults(model)
    if any(finding.is_error for finding in model.findings):
        return model
    is_upright = bool(first.fact.stretches) and not model.said(first).parallel
    home = Frame() if not is_upright else _UPRIGHT
    model.standing[first.name] = Stand(first, home)
    left = [copy for every in copies.values() for copy in every if copy.name not in model.standing]
    while (copy := _next(left, model)) is not None:
        left.remove(copy)
        _place(copy, model)
    return model


def _by_copy(meetings: tuple[Meeting, ...]) -> dict[str, tuple[Meeting, ...]]:
    found: dict[str, list[Meeting]] = {}
    for one in meetings:
        for name in (one.one.name, one.other.name):
            found.setdefault(name, []).append(one.seen_from(name))
    return {name: tuple(ones) for name, ones in found.items()}


def _first(model: Model) -> Copy | None:
    """The part that the maker names, or the largest that any joint knows."""
    named = getattr(model.design.spec.written, "stands", None)
    if named is not None:
        found = model.copies.get(str(named))
        if found:
            return found[0]
        model.findings.append(
            codes.POSITION_UNKNOWN.at(
                named.span,
                f"there is no '{named}' to stand on the bench",
                help=did_you_mean(str(named), model.copies) or "name a part whose sizes are told",
            )
        )
        return None
    met = {one.one.item for one in model.meetings} | {one.other.item for one in model.meetings}
    known = [copies[0] for name, copies in model.copies.items() if name in met and copies]
    return max(known, key=lambda copy: _bulk(copy.fact.size), default=None)


def _bulk(size: Vector) -> float:
    return round(size[0] * size[1] * size[2], 3)


def _faults(model: Model) -> Iterator[Diagnostic]:
    for name, entry in model.entries.items():
        span = model.design.spec.resolved.document.span(("positions", name), of_key=True)
        if name not in model.copies:
            yield codes.POSITION_UNKNOWN.at(
                span,
                f"there is no part '{name}' to place",
                help=did_you_mean(name, model.copies) or "name a part whose sizes are told",
            )
            continue
        for one in (entry, *entry.copies):
            yield from faults_of(one, model.copies, model.design)


def _next(left: list[Copy], model: Model) -> Copy | None:
    """Of the parts that can be placed the one that waits for the fewest others."""
    best: tuple[tuple[bool, int], Copy] | None = None
    items = {stand.copy.item for stand in model.standing.values()}
    for copy in left:
        near = {one.other.name for one in model.meetings_with(copy)}
        is_met = any(name in model.standing for name in near)
        if not _can_stand(copy, items, model, is_met=is_met):
            continue
        is_apart = bool(near) and not is_met
        waiting = (is_apart, sum(1 for name in near if name not in model.standing))
        if best is None or waiting < best[0]:
            best = (waiting, copy)
    return best[1] if best else None


def _can_stand(copy: Copy, items: set[str], model: Model, *, is_met: bool) -> bool:
    needed = [name for name in references(model.said(copy)) if name != copy.item]
    if any(name not in items for name in needed):
        return False
    own = [row for row in model.rows if _is_in(copy, row)]
    if any(not row.is_carried(model.standing) for row in own):
        return False
    return is_met or bool(needed) or any(copy.name != row.shaft.name for row in own)


def _is_in(copy: Copy, row: Row) -> bool:
    """Whether a copy waits for a row: the shaft itself, or a piece that carries nothing."""
    if copy.name == row.shaft.name:
        return True
    loose = [one for n, one in enumerate(row.pieces) if n not in row.bearings]
    return any(one is not None and one.name == copy.name for one in loose)


def _place(copy: Copy, model: Model) -> None:
    said, stands = model.said(copy), model.stands()
    met = [one for one in model.meetings_with(copy) if one.other.name in model.standing]
    met = _firm_first(met)
    lays = list(lays_said(said, copy, stands))
    for one in met:
        lays += lays_of(one, model.standing[one.other.name])
    lays += _lays_in_rows(copy, met, model)
    lays.sort(key=lambda lay: not lay.is_axis)
    turned = turn_for(
        lays,
        _like(said, stands),
        turned=turn_of(said),
        is_reversed=said.reversed,
        prefers=_row_way(copy, model),
    )
    holds = list(holds_said(said, copy, turned, stands, model.design))
    for one in met:
        holds += holds_of(one, model.standing[one.other.name], turned)
    holds += _in_rows(copy, turned, tuple(model.meetings_with(copy)), model)
    settled = settle(holds, turned)
    frame = tidy(Frame(settled.origin, turned.z, turned.x))
    onto = met[0].other.name if met else next(iter(references(said)), "")
    stand = Stand(copy, frame, _way_off(met, frame, model), onto, _is_free(met))
    model.standing[copy.name] = stand
    model.findings += _disagreements(copy, lays, settled, turned)
    if copy.number == 1:
        model.findings += _left_open(copy, settled, model)


def _firm_first(met: list[Meeting]) -> list[Meeting]:
    """Faces and fits before hinges: what holds a part says best how it lies."""
    loose = ("hinged", "swivels", "runs_in", "slides", "leads")
    return sorted(met, key=lambda one: one.joint.kind in loose)


def _like(said: CopyPosition, stands: Mapping[str, tuple[Stand, ...]]) -> Frame:
    if said.parallel is None:
        return Frame()
    return stands[str(said.parallel)][0].frame


def _row_way(copy: Copy, model: Model) -> tuple[Vector, Vector] | None:
    """A shaft lies from left to right as its row does, and so do its pieces."""
    for row in model.rows:
        if _is_in(copy, row) and copy.fact.stretches:
            line = line_of(row, model.standing, model.design)
            if line is not None:
                return ALONG, line.way
    return None


def _lays_in_rows(copy: Copy, met: list[Meeting], model: Model) -> Iterator[Lay]:
    """What is only slid on a shaft, without a joint, lies along it."""
    for row in model.rows:
        line = line_of(row, model.standing, model.design) if _is_in(copy, row) else None
        if line is not None and not met:
            yield Lay(ALONG, line.way, 0, f"shafts: {row.fact.subject}", row.at)


def _in_rows(
    copy: Copy, turned: Frame, meetings: tuple[Meeting, ...], model: Model
) -> Iterator[Hold]:
    for row in model.rows:
        line = line_of(row, model.standing, model.design)
        if line is None:
            continue
        if copy.name == row.shaft.name:
            yield from holds_of_shaft(row, line, turned, meetings, model.design)
        elif _is_in(copy, row):
            yield from holds_in_row(copy, row, line)
            if not meetings:
                yield from holds_on_axis(copy, row, line)


def _way_off(met: list[Meeting], frame: Frame, model: Model) -> Vector:
    """The direction in which a part comes off what holds it."""
    if not met:
        return (0.0, 0.0, 1.0)
    own, there = met[0].spot, met[0].other_spot
    if own.sort == "way":
        return carried(own.along or own.way, frame)
    if own.sort == "socket" and there.sort == "plug":  # Over the free end of the plug.
        return carried(there.way, model.standing[met[0].other.name].frame)
    return carried(scaled(own.way, -1.0), frame)


def _is_free(met: list[Meeting]) -> bool:
    """Whether it comes off both ways: a bush on a plain shaft."""
    if not met:
        return False
    own, there = met[0].spot, met[0].other_spot
    plug, socket = (own, there) if own.sort == "plug" else (there, own)
    return own.sort == "way" or (plug.sort == "plug" and socket.is_open and plug.is_open)


def _disagreements(
    copy: Copy, lays: list[Lay], settled: Settled, turned: Frame
) -> Iterator[Diagnostic]:
    told: set[tuple[str, str]] = set()
    for lay in lays[1:]:
        askew = off(lay, turned)
        if askew > _ASKEW and (lays[0].source, lay.source) not in told:
            told.add((lays[0].source, lay.source))
            yield codes.PARTS_DO_NOT_MEET.at(
                lay.at,
                f"'{copy.name}' lies {askew:.1f}° askew: '{lays[0].source}' and '{lay.source}'"
                " want it in two directions",
                help="look at the faces that the two name",
            )
    for first, second, miss in settled.clashes:
        if (first.source, second.source) in told:
            continue
        told.add((first.source, second.source))
        yield codes.PARTS_DO_NOT_MEET.at(
            second.at,
            f"'{copy.name}' is wanted in two places, {abs(miss):.2f} mm apart:"
            f" by '{first.source}' and by '{second.source}'",
            help="correct the size or the place that is wrong",
        )


def _left_open(copy: Copy, settled: Settled, model: Model) -> Iterator[Diagnostic]:
    if settled.guessed and copy.item not in model.entries:
        hold = settled.guessed[0]
        yield codes.PLACE_LEFT_OPEN.at(
            hold.at,
            f"nothing says where on its face '{copy.item}' lies; it is drawn in the middle",
            help=f"write `positions: {copy.item}: {{at: ...}}`",
        )
