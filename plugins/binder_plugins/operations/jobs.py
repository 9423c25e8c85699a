"""Set-ups and tasks in the order of work to jobs that evenings are packed from."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import TYPE_CHECKING

from binder_making.sessions import Day, Job
from binder_making.times import joining
from binder_plugins.operations.kept_together import together
from binder_plugins.operations.minutes import setup_minutes, whole_minutes

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import SetUp
    from binder_plugins.operations.whole import Whole

_RISKY = frozenset({"tap", "part-off", "cut-teeth", "silver-solder", "braze", "weld", "harden"})
_HOT = frozenset(
    {
        "silver-solder",
        "braze",
        "soft-solder",
        "weld",
        "anneal",
        "stress-relieve",
        "harden",
        "temper",
    }
)
_COATED = frozenset({"mask", "paint", "plate", "blacken"})
_CLEAN = frozenset({"bond", "glue", "assemble", "dry-assemble", "strip", "gauge", "measure"})
_BONDED = {"bond": "retained", "glue": "glued"}
_HOUR = 60.0


@dataclass(frozen=True, slots=True)
class Piece:
    """One set-up of an item, or one task of the build order without any.

    Without a set-up `minutes`, `what` and `acts` tell of it; `tools` is what lies ready for it.
    `wait_h` is how many hours pass by themselves afterwards, `pace` the maker's factor at its
    machine; one that `goes_on` is not left before what follows is done, nor one that leaves
    parts clamped to one another, which `then` names the next for.
    """

    id: str
    title: str
    count: int
    setup: SetUp | None
    minutes: float = 0.0
    what: str = ""
    acts: frozenset[str] = frozenset()
    tools: tuple[str, ...] = ()
    wait_h: float = 0.0
    pace: float = 1.0
    goes_on: bool = False
    then: str = ""

    @property
    def takes(self) -> float:
        """Whole minutes for all that are made, at the maker's pace."""
        if self.setup is None:
            return whole_minutes(self.pace * self.minutes)
        return setup_minutes(self.setup, self.count, self.pace)

    @property
    def done(self) -> frozenset[str]:
        """The acts of it."""
        if self.setup is None:
            return self.acts
        return frozenset(act.act for act in self.setup.acts)

    @property
    def rests_h(self) -> float:
        """Hours before anything else is done to it; an hour or less passes within an evening."""
        if self.setup is None:
            return self.wait_h
        cures = [joining(kind).wait_h for act, kind in _BONDED.items() if act in self.done]
        alone = [act.alone / _HOUR for act in self.setup.acts if act.alone > _HOUR]
        return max([self.wait_h, *cures, *alone])


def jobs_of(sequence: Sequence[str], whole: Whole, useful: float) -> list[Job]:
    """The jobs in order; a piece longer than an evening comes in several parts."""
    runs = dict.fromkeys(name for name, _ in groupby(whole.piece_of[one] for one in sequence))
    jobs: list[Job] = []
    ends: dict[str, str] = {}
    waits = whole.waits
    for name in together(list(runs), waits, whole.pieces):
        earlier = tuple(ends[one] for one in waits[name] if one in ends)
        jobs += _parts(whole.pieces[name], useful, earlier)
        ends[name] = jobs[-1].id
    return jobs


def _parts(piece: Piece, useful: float, earlier: tuple[str, ...]) -> Iterator[Job]:
    count = max(-(-int(piece.takes) // max(int(useful), 1)), 1)
    for number in range(1, count + 1):
        name = piece.id if count == 1 else f"{piece.id}, part {number} of {count}"
        minutes = share_of(piece, number, count)
        yield _job(piece, name, minutes, earlier, is_last=number == count)
        earlier = (name,)


def share_of(piece: Piece, number: int, count: int) -> float:
    """Whole minutes of one of the parts that a long piece comes in; they add up to it."""
    return float(piece.takes * number // count - piece.takes * (number - 1) // count)


def _job(piece: Piece, name: str, minutes: float, after: tuple[str, ...], *, is_last: bool) -> Job:
    setup, acts = piece.setup, piece.done
    return Job(
        id=name,
        minutes=minutes,
        title=_titled(piece, name),
        stop="" if is_last else _stop(acts),
        family=_family(piece),
        setup=piece.id if setup is not None and setup.machine else "",
        tools=piece.tools,
        is_risky=bool(acts & _RISKY),
        is_safe_after=not (piece.goes_on or piece.then)
        and (is_last or setup is None or not setup.machine),
        cure_minutes=_HOUR * piece.rests_h if is_last else 0.0,
        gate=_gate(piece) if is_last else "",
        day=_day(acts),
        after=after,
    )


def _titled(piece: Piece, name: str) -> str:
    """A job as its line in the evening calls it: the item, its set-up, and which part of it."""
    setup = f", set-up {piece.setup.number}" if piece.setup is not None else ""
    return f"{piece.title}{setup}{name.removeprefix(piece.id)}"


def _stop(acts: frozenset[str]) -> str:
    """Where a set-up longer than an evening is stopped."""
    if "cut-teeth" in acts:
        return "stop with a gap cut right through, write down which round and which gap it was"
    return "stop with a line of its leaf done"


def _family(piece: Piece) -> str:
    setup = piece.setup
    return f"{setup.machine} {setup.grip.kind}" if setup is not None and setup.machine else "bench"


def _day(acts: frozenset[str]) -> Day:
    if acts & _COATED:
        return Day.PAINT
    if acts & _HOT:
        return Day.HEAT
    return Day.ANY if acts <= _CLEAN else Day.ORDINARY


def _gate(piece: Piece) -> str:
    acts = piece.setup.acts if piece.setup is not None else ()
    found = [act.feature.replace("_", " ") for act in acts if act.act == "measure"]
    return f"{piece.title}: {', '.join(found)}" if found else ""


def piece_id(job: str) -> str:
    """The piece of a job, which may be a part of it."""
    return job.split(", part ", maxsplit=1)[0]
