"""Parts, joints and words to places: one part after the other, from the one that stands."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from binder.api import Design, Diagnostic
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.joined import Stand, holds_of, lays_of
from binder_plugins.arrangement.kinds import CopyPosition
from binder_plugins.arrangement.meetings import Meeting
from binder_plugins.arrangement.model import Model, begun, faults_in, first_of
from binder_plugins.arrangement.ordering import Queue
from binder_plugins.arrangement.rows import (
    ALONG,
    holds_in_row,
    holds_of_shaft,
    holds_on_axis,
    line_of,
)
from binder_plugins.arrangement.solving import Settled, settle
from binder_plugins.arrangement.space import carried, scaled, tidy
from binder_plugins.arrangement.ties import Hold, Lay
from binder_plugins.arrangement.turning import off, turn_for
from binder_plugins.arrangement.words import holds_said, lays_said, references, turn_of
from binder_solid.forms import Frame, Vector

_ASKEW = 0.5
_UPRIGHT = Frame(z=(-1.0, 0.0, 0.0), x=(0.0, 0.0, 1.0))
"""Turned work as the part that stands: its axis upwards, its first face on the bench."""


def put_together(design: Design) -> Model:
    """Places every part that joints and words reach."""
    model = begun(design)
    first = first_of(model)
    if first is None:
        return model
    model.findings += faults_in(model)
    if any(finding.is_error for finding in model.findings):
        return model
    model.stand(Stand(first, _UPRIGHT if first.fact.stretches else Frame()))
    queue = Queue(model)
    while (copy := queue.pop()) is not None:
        _place(copy, model)
        queue.placed(copy)
    return model


def _place(copy: Copy, model: Model) -> None:
    said, stands = model.said(copy), model.stands
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
    model.stand(stand)
    model.findings += _disagreements(copy, lays, settled, turned)
    if copy.number == 1:
        model.findings += _left_open(copy, settled, model)


def _firm_first(met: list[Meeting]) -> list[Meeting]:
    """Faces and fits before hinges: what holds a part says best how it lies."""
    loose = ("hinged", "swivels", "runs_in", "slides", "leads")
    return sorted(met, key=lambda one: one.joint.kind in loose)


def _like(said: CopyPosition, stands: Mapping[str, Sequence[Stand]]) -> Frame:
    if said.parallel is None:
        return Frame()
    return stands[str(said.parallel)][0].frame


def _row_way(copy: Copy, model: Model) -> tuple[Vector, Vector] | None:
    """A shaft lies from left to right as its row does, and so do its pieces."""
    for row in model.rows_with(copy) if copy.fact.stretches else ():
        line = line_of(row, model.standing, model.design)
        if line is not None:
            return ALONG, line.way
    return None


def _lays_in_rows(copy: Copy, met: list[Meeting], model: Model) -> Iterator[Lay]:
    """What is only slid on a shaft, without a joint, lies along it."""
    for row in model.rows_with(copy):
        line = line_of(row, model.standing, model.design)
        if line is not None and not met:
            yield Lay(ALONG, line.way, 0, f"shafts: {row.fact.subject}", row.at)


def _in_rows(
    copy: Copy, turned: Frame, meetings: tuple[Meeting, ...], model: Model
) -> Iterator[Hold]:
    for row in model.rows_with(copy):
        line = line_of(row, model.standing, model.design)
        if line is None:
            continue
        if copy.name == row.shaft.name:
            yield from holds_of_shaft(row, line, turned, meetings, model.design)
        else:
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
