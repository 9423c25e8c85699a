"""One act of the work as a plain record, which the rules of precedence and the order read."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Operation:
    """One act in one set-up: `act` and `tags` are words of `precedence/data/words.yaml`.

    `feature` and `end` are names within the part; `meets` are features of the same part that
    this one breaks into or borders on. `setup` is one gripping of one piece, `holding` what
    grips it (chuck, collet, vice); "" stands for work that needs none. `joints` and
    `assemblies` are those that the act serves. `minutes` is its run, set-up left out.
    """

    id: str
    act: str
    part: str = ""
    feature: str = ""
    end: str = ""
    machine: str = ""
    holding: str = ""
    setup: str = ""
    tool: str = ""
    tags: frozenset[str] = frozenset()
    meets: tuple[str, ...] = ()
    joints: tuple[str, ...] = ()
    assemblies: tuple[str, ...] = ()
    minutes: float = 0.0
