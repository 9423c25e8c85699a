"""Set-ups and tasks in the order of work to jobs that evenings are packed from."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import TYPE_CHECKING

from binder_making.sessions import Day, Job
from binder_plugins.operations.minutes import setup_minutes

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from binder_plugins.operations.facts import SetUp

_RISKY = frozenset({"tap", "part-off", "cut-teeth", "silver-solder", "braze", "weld"})
_HOT = frozenset({"silver-solder", "braze", "soft-solder", "weld"})
_BONDED = frozenset({"bond", "glue"})


@dataclass(frozen=True, slots=True)
class Piece:
    """One set-up of an item, or one task of the build order without any."""

    id: str
    title: str
    count: int
    setup: SetUp | None
    minutes: float = 0.0

    @property
    def takes(self) -> float:
        """Minutes for all that are made."""
        return setup_minutes(self.setup, self.count) if self.setup is not None else self.minutes


def jobs_of(
    sequence: Sequence[str],
    piece_of: Mapping[str, str],
    pieces: Mapping[str, Piece],
    useful: float,
    waits: Mapping[str, Iterable[str]],
) -> list[Job]:
    """The jobs in order; a piece longer than an evening comes in several parts.

    `waits` are the pieces that must be done before a piece. Work in the heat keeps its turn.
    """
    jobs: list[Job] = []
    last: dict[str, str] = {}
    for name, _ in groupby(piece_of[one] for one in sequence):
        if name not in last:
            piece = pieces[name]
            before = dict.fromkeys(last[one] for one in waits.get(name, ()) if one in last)
            if jobs and _is_hot(piece):
                before[jobs[-1].id] = None
            jobs += _parts(piece, useful, tuple(before))
            last[name] = jobs[-1].id
    return jobs


def _is_hot(piece: Piece) -> bool:
    return piece.setup is not None and any(act.act in _HOT for act in piece.setup.acts)


def _parts(piece: Piece, useful: float, earlier: tuple[str, ...]) -> Iterator[Job]:
    count = max(-(-int(piece.takes) // max(int(useful), 1)), 1)
    for number in range(1, count + 1):
        name = piece.id if count == 1 else f"{piece.id}, part {number} of {count}"
        yield _job(piece, name, piece.takes / count, earlier, is_last=number == count)
        earlier = (name,)


def _job(piece: Piece, name: str, minutes: float, after: tuple[str, ...], *, is_last: bool) -> Job:
    setup = piece.setup
    if setup is None:
        return Job(id=name, minutes=minutes, family="bench", after=after)
    acts = {act.act for act in setup.acts}
    return Job(
        id=name,
        minutes=minutes,
        family=f"{setup.machine} {setup.grip.kind}" if setup.machine else "bench",
        setup=piece.id if setup.machine else "",
        tools=tuple(dict.fromkeys(act.tool for act in setup.acts if _is_laid_out(act.tool))),
        is_risky=bool(acts & _RISKY),
        is_safe_after=is_last,
        cure_minutes=60.0 if acts & _BONDED and is_last else 0.0,
        gate=_gate(piece) if is_last else "",
        day=Day.HEAT if acts & _HOT else Day.ORDINARY,
        after=after,
    )


def _is_laid_out(tool: str) -> bool:
    """Whether a tool lies on the bench beforehand: a mate or a plug does not."""
    return bool(tool) and not tool.startswith(("its ", "a plug"))


def _gate(piece: Piece) -> str:
    acts = piece.setup.acts if piece.setup is not None else ()
    found = [act.feature.replace("_", " ") for act in acts if act.act == "measure"]
    return f"{piece.title}: {', '.join(found)}" if found else ""
