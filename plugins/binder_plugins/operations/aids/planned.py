"""Tools that are made on the way to their places among the work: just before they are wanted."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import Design, SmallWork, TaskTime
from binder_making.operation import Operation
from binder_making.precedence import Edge, Priority
from binder_plugins.operations.aids.facts import PREFIX, ToolsFact
from binder_plugins.operations.facts import Route
from binder_plugins.operations.jobs import Piece

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from binder_plugins.operations.whole import Whole

_WANTED = "the tool that it is done with"
_TO_BORE = "it is turned to the bore as that was written down"
_IN_THE_CHUCK = "what is turned in the chuck for a set-up keeps it until that is done"


def with_small_work(
    found: Whole, sequence: Sequence[str], design: Design
) -> tuple[Whole, tuple[str, ...]]:
    """The work with what is made for it, each piece before the first that wants it.

    A mandrel that is turned to a bore waits until that is written down. One that stays in
    the chuck waits for all that its set-up waits for: any other work would take it out.
    """
    tools = design.facts.about(ToolsFact, "")
    works = {one.subject: one for one in design.facts.all(SmallWork)}
    users = _users(works, tools, found, design)
    before: dict[str, list[str]] = {}
    order = _first_of(sequence, found)
    last = {found.piece_of[one]: one for one in sequence}
    pieces, piece_of = dict(found.pieces), dict(found.piece_of)
    operations, reasons = list(found.operations), list(found.reasons)
    for name in _users_first(users):
        wanted, work = users[name], works[name]
        first = min(_in_the_end(name, users), key=lambda one: order[found.piece_of[one]])
        piece = _piece(work, design)
        pieces[piece.id] = piece
        piece_of[piece.id] = piece.id
        operations.append(Operation(id=piece.id, act="make-tool", minutes=piece.minutes))
        reasons += [Edge(piece.id, one, _WANTED, priority=Priority.HOLD) for one in wanted]
        if work.is_to_bore:
            reasons += _with_its_bore(piece.id, wanted, found)
        if piece.goes_on:
            reasons += _with_its_set_up(piece.id, found.piece_of[first], found, last)
        at = before.setdefault(found.piece_of[first], [])
        # What must stay in the chuck is turned last.
        at.insert(len(at) if piece.goes_on else 0, piece.id)
    whole = replace(
        found,
        operations=tuple(operations),
        reasons=tuple(reasons),
        pieces=pieces,
        piece_of=piece_of,
    )
    return whole, tuple(_merged(sequence, before, found))


def _with_its_set_up(
    tool: str, setup: str, found: Whole, last: Mapping[str, str]
) -> Iterator[Edge]:
    """What stays in the chuck behind the `last` acts of all that its set-up waits for."""
    for earlier in found.waits[setup]:
        yield Edge(last[earlier], tool, _IN_THE_CHUCK, priority=Priority.HOLD)


def _with_its_bore(tool: str, wanted: Sequence[str], found: Whole) -> Iterator[Edge]:
    """What is turned to a bore behind the measuring of it before its first use."""
    parts = {one.id: one.part for one in found.operations}
    for user in wanted:
        for one in found.operations:
            if one.id == user:
                break
            if one.act == "measure" and one.part == parts.get(user):
                yield Edge(one.id, tool, _TO_BORE, priority=Priority.HOLD)


def _users(
    works: Mapping[str, SmallWork], tools: ToolsFact | None, found: Whole, design: Design
) -> dict[str, list[str]]:
    """For each thing that is made the first operations of the pieces that want it."""
    first: dict[str, str] = {}
    for operation in found.operations:
        first.setdefault(found.piece_of[operation.id], operation.id)
    users: dict[str, list[str]] = {}
    for piece, names in tools.by_piece.items() if tools is not None else ():
        is_made = piece.removeprefix(PREFIX) in works and piece.startswith(PREFIX)
        user = first.get(piece) or (piece if is_made else "")
        for name in names:
            if name in works and user:
                users.setdefault(name, []).append(user)
    for work in works.values():
        at = [first[one] for one in _of_joints(work, design) if one in first]
        if at:
            users.setdefault(work.subject, []).extend(at)
    return users


def _users_first(users: Mapping[str, list[str]]) -> list[str]:
    """What is made, a tool before the tools that it is itself made with: those stand before it."""
    found: list[str] = []

    def put(name: str) -> None:
        if name in users and name not in found:
            for one in users[name]:
                put(one.removeprefix(PREFIX))
            found.append(name)

    for name in users:
        put(name)
    return found


def _in_the_end(name: str, users: Mapping[str, list[str]]) -> list[str]:
    """The operations on the model for which it is made, by way of other tools or at once."""
    found: list[str] = []
    for one in users[name]:
        tool = one.removeprefix(PREFIX)
        found += _in_the_end(tool, users) if one.startswith(PREFIX) and tool in users else [one]
    return found


def _of_joints(work: SmallWork, design: Design) -> Iterator[str]:
    """The pieces in which a joint that wants it is put together or worked."""
    for name in design.tasks:
        time = design.facts.about(TaskTime, name)
        if time is not None and any(line.what in work.joints for line in time.lines):
            yield name
    for route in design.facts.all(Route):
        for setup in route.setups if route.subject in design.tasks else ():
            if any(set(act.joints) & set(work.joints) for act in setup.acts):
                yield f"{route.subject} {setup.number}"


def _first_of(sequence: Sequence[str], found: Whole) -> dict[str, int]:
    order: dict[str, int] = {}
    for number, one in enumerate(sequence):
        order.setdefault(found.piece_of[one], number)
    return order


def _merged(
    sequence: Sequence[str], before: Mapping[str, list[str]], found: Whole
) -> Iterator[str]:
    done: set[str] = set()
    for one in sequence:
        piece = found.piece_of[one]
        if piece not in done:
            done.add(piece)
            yield from before.get(piece, ())
        yield one


def _piece(work: SmallWork, design: Design) -> Piece:
    off = f"{work.count} " if work.count > 1 else "the "
    return Piece(
        f"{PREFIX}{work.subject}",
        f"make {off}{work.subject}",
        1,
        None,
        minutes=work.minutes,
        what=work.stock,
        acts=frozenset({"make-tool"}),
        pace=design.workshop.pace_at(""),
        goes_on=work.is_kept_in,
    )
