"""The limits of size of a thread, made from a basic size, an allowance and tolerances."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import NotDefined
from binder_trade.threads.thread import Thread


@dataclass(frozen=True, slots=True)
class ThreadLimits:
    """The largest and smallest diameters of a thread of one class, in mm.

    None stands where the standard leaves a diameter to the tool: the major diameter of a nut
    has a least and no greatest. `convention` says what was chosen where practice differs.
    """

    cls: str
    is_internal: bool
    major_max: float | None
    major_min: float
    effective_max: float
    effective_min: float
    minor_max: float
    minor_min: float | None
    source: str
    convention: str = ""


@dataclass(frozen=True, slots=True)
class Tolerances:
    """What a class allows, in mm: how far from basic it begins and how wide it is."""

    allowance: float
    effective: float
    major: float = 0.0
    minor: float = 0.0


def screw_limits(
    thread: Thread, cls: str, given: Tolerances, source: str, convention: str = ""
) -> ThreadLimits:
    """The limits in mm of a screw whose core is toleranced like its other diameters."""
    return ThreadLimits(
        cls,
        is_internal=False,
        major_max=thread.major_mm - given.allowance,
        major_min=thread.major_mm - given.allowance - given.major,
        effective_max=thread.effective_mm - given.allowance,
        effective_min=thread.effective_mm - given.allowance - given.effective,
        minor_max=thread.minor_internal_mm - given.allowance,
        minor_min=thread.minor_internal_mm - given.allowance - given.minor,
        source=source,
        convention=convention,
    )


def nut_limits(
    thread: Thread, cls: str, given: Tolerances, source: str, convention: str = ""
) -> ThreadLimits:
    """The limits in mm of a nut; its major diameter has no greatest."""
    bore = thread.minor_internal_mm + given.allowance
    effective = thread.effective_mm + given.allowance
    return ThreadLimits(
        cls,
        is_internal=True,
        major_max=None,
        major_min=thread.major_mm + given.allowance,
        effective_max=effective + given.effective,
        effective_min=effective,
        minor_max=bore + given.minor,
        minor_min=bore,
        source=source,
        convention=convention,
    )


def no_class(thread: Thread, cls: str, known: tuple[str, ...]) -> NotDefined:
    """For a class that the standard of a thread has not."""
    return NotDefined(
        f"{thread.designation} has no class {cls[:20]!r}", f"use {' or '.join(known)}"
    )
