"""What was looked at when the drive was turned once."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Fact


@dataclass(frozen=True, slots=True)
class TurnFact(Fact):
    """What was looked at through one turn; the subject is ''. `pairs` could reach one another."""

    driver: str
    bodies: tuple[str, ...]
    pairs: tuple[tuple[str, str], ...]
    steps: int
