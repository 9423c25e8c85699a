"""The records that evenings are packed from, and what comes out."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum


class Day(StrEnum):
    """Work that has a day of its own: it scales, smells, or must not meet swarf.

    What is put together, bonded or tried makes no swarf and stands beside any of them.
    """

    ORDINARY = "ordinary"
    HEAT = "heat"
    PAINT = "paint"
    ANY = "any"


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """One act as an evening sees it; `minutes` with its set-up and tool changes.

    `family` is the kind of set-up (chuck in the lathe, vice on the mill), `setup` the one
    gripping. `is_safe_after` is False where the work must not be left: a bore half finished, a
    joint fluxed. `cure_minutes` runs by itself afterwards. `gate` is a size that must be
    written down. `after` are the jobs that it waits for. `title` is its name for the maker where
    its `id` is none, `stop` where it may be stopped in the middle of its set-up.
    """

    id: str
    minutes: float
    title: str = ""
    stop: str = ""
    family: str = ""
    setup: str = ""
    tools: tuple[str, ...] = ()
    is_risky: bool = False
    is_safe_after: bool = True
    cure_minutes: float = 0.0
    gate: str = ""
    day: Day = Day.ORDINARY
    after: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """What it is called to the maker."""
        return self.title or self.id


@dataclass(frozen=True, slots=True)
class Lengths:
    """An evening in minutes: getting ready and clearing up are taken off its whole length.

    Source: common practice, no source: 2 h from door to door leave 70 to 100 minutes.
    """

    whole_min: float = 120.0
    ready_min: float = 12.0
    clear_min: float = 10.0

    @property
    def useful_min(self) -> float:
        """What is left for work; minutes."""
        return self.whole_min - self.ready_min - self.clear_min


@dataclass(frozen=True, slots=True)
class Evening:
    """What is done in one evening, in order.

    `remarks` say what could not be had: a safe stop, a risky act early, a cure at the end.
    `day` is the earliest that it can be, one evening to a day from 1 on: what cures for longer
    than a day pushes the evening that waits for it, and all behind that. `held_by` is what cures.
    """

    number: int
    jobs: tuple[str, ...]
    minutes: float
    spare_min: float
    families: tuple[str, ...]
    tools: tuple[str, ...]
    gates: tuple[str, ...]
    cures: tuple[str, ...]
    next_tools: tuple[str, ...]
    remarks: tuple[str, ...] = field(default=())
    day: int = 0
    held_by: str = ""
