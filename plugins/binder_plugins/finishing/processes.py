"""The words of a finish to the processes that they ask for."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import TreatmentStep, load_data
from binder_making.times import act_time
from binder_trade.explained import NotDefined
from binder_trade.fits.finish import Finish, finish

PACKAGE = "binder_plugins.finishing"
_MOST_WORDS = 200


@dataclass(frozen=True, slots=True)
class Process:
    """How a finish is done: `next_h`, `handle_h`, `hard_h` are hours to wait.

    `on` are the groups of material that take it, () for all. `acts` are its evenings in order; a
    `is_bright` one is done to the metal before any coat. `heat` is what the part comes to in it,
    in °C, 0 where it stays cool.
    """

    name: str
    words: tuple[str, ...]
    on: tuple[str, ...]
    masks: bool
    is_heat: bool
    coats: str
    next_h: int
    handle_h: int
    hard_h: int
    steps: tuple[str, ...]
    coat: Finish | None
    acts: tuple[TreatmentStep, ...] = ()
    is_bright: bool = False
    heat: int = 0

    def takes(self, group: str) -> bool:
        """Whether a material of the group takes it; one that is not known is let pass."""
        return not self.on or not group or group in self.on


@cache
def processes() -> tuple[Process, ...]:
    """The table, read once."""
    return tuple(_process(row) for row in load_data(PACKAGE, "finishes.yaml")["finishes"])


def finish_source() -> str:
    """What the table of processes goes by."""
    return str(load_data(PACKAGE, "finishes.yaml")["source"])


def processes_in(text: str) -> tuple[Process, ...]:
    """The processes that a finish names, in the order of its words; the longest phrase counts."""
    words = re.findall(r"[\w-]+", text.lower())[:_MOST_WORDS]
    return tuple(dict.fromkeys(_named(words)))


def _named(words: list[str]) -> Iterator[Process]:
    start = 0
    while start < len(words):
        long, found = _longest(words, start)
        if found is not None:
            yield found
        start += long


def _longest(words: list[str], start: int) -> tuple[int, Process | None]:
    for long in range(min(4, len(words) - start), 0, -1):
        found = _by_phrase().get(" ".join(words[start : start + long]))
        if found is not None:
            return long, found
    return 1, None


@cache
def _by_phrase() -> Mapping[str, Process]:
    return {word: one for one in processes() for word in one.words}


def _process(row: Mapping[str, Any]) -> Process:
    return Process(
        row["name"],
        tuple(row["words"]),
        tuple(row.get("metals", ())),
        bool(row["masks"]),
        bool(row.get("is_heat", False)),
        row["coats"],
        row["waits"]["next"],
        row["waits"]["handle"],
        row["waits"]["hard"],
        tuple(row["steps"]),
        _coat(row["coat"]),
        tuple(_act(one, row) for one in row.get("acts", ())),
        bool(row.get("bright", False)),
        int(row.get("heat", 0)),
    )


def _act(one: Mapping[str, Any], row: Mapping[str, Any]) -> TreatmentStep:
    """One evening's act; those of one name and process are done at one go."""
    wait = one.get("wait", 0)
    time = act_time(one["time"]) if "time" in one else None
    return TreatmentStep(
        one["act"],
        one["what"],
        one["tool"],
        time.set_min if time is not None else one["ready"],
        time.run_min if time is not None else one["run"],
        float(row["waits"].get(wait, wait)),
        f"{row['name']}: {one['what']}",
        one["spoils"],
        tuple(one.get("buys", ())),
    )


def _coat(name: str) -> Finish | None:
    try:
        return finish(name) if name else None
    except NotDefined:
        return None
