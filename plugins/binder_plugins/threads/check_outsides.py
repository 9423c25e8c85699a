"""Outside threads to findings: the step under them, its shoulder, and what crosses them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from binder.api import (
    Design,
    Diagnostic,
    Fabrication,
    Feature,
    Labelled,
    Part,
    PlaceFact,
    shown_length,
)
from binder_plugins.threads import codes
from binder_plugins.threads.found import Found
from binder_trade.threading import screwcutting

# A step for a thread may be written as it is turned for the die, a little under size.
_MOST_UNDER_PITCHES = 0.25
_MOST_OVER_MM = 0.02
_RUN_OUT_PITCHES = 2
_SLITS = ("slotted", "flatted")
_HOLES = ("drilled", "reamed", "bored")


def check_outsides(found: Iterable[Found], design: Design) -> Iterator[Diagnostic]:
    """All findings about outside threads, and about what is cut through any thread."""
    steps = _steps(design)
    for one in found:
        if not one.is_internal:
            yield from _size(one, design.units)
            yield from _shoulder(one, steps.get(one.feature.owner, []), design)
            yield from _crossed(one, design)
        yield from _slit(one, design)


def _size(one: Found, units: str) -> Iterator[Diagnostic]:
    step = one.surface
    if step is None or step.form != "step" or not step.is_round or step.diameter is None:
        return
    across, thread = float(step.diameter), one.thread
    under = thread.major_mm - across
    if -_MOST_OVER_MM <= under <= _MOST_UNDER_PITCHES * thread.pitch_mm:
        return
    major = shown_length(Fraction(round(thread.major_mm * 1000), 1000), units)
    here = shown_length(step.diameter, units)
    way = "thicker" if under < 0 else "thinner"
    yield codes.THREAD_OFF_SIZE.at(
        one.at,
        f"'{step.place}' is {here} across, {way} than {thread.designation}",
        help=f"turn a step of {major} for it, or take the thread that suits {here}",
    )


def _shoulder(one: Found, steps: list[PlaceFact], design: Design) -> Iterator[Diagnostic]:
    step = one.surface
    if step is None or step.length is None or step.start is None or one.length is None:
        return
    room = Fraction(round(_RUN_OUT_PITCHES * one.thread.pitch_mm * 1000), 1000)
    if one.length <= step.length - room or not _beside(one, step, steps):
        return
    if any(
        other.kind == "undercut" and _on(other) == step.place for other in _features(one, design)
    ):
        return
    figures = screwcutting(one.thread)
    free = step.length - room
    shorter = f"end the thread at {shown_length(free, design.units)}; or " if free > 0 else ""
    width = f"{figures.groove_narrow_mm:.2g} to {figures.groove_mm:.2g} mm"
    yield codes.THREAD_TO_SHOULDER.at(
        one.at,
        f"{one.thread.designation} runs {shown_length(one.length, design.units)} up to a shoulder",
        help=f"{shorter}undercut {width} wide, {figures.groove_diameter_mm:.2f} mm across",
    )


def _steps(design: Design) -> dict[str, list[PlaceFact]]:
    """The steps of each item that have their place along it."""
    steps: dict[str, list[PlaceFact]] = {}
    for fact in design.facts.all(PlaceFact):
        if fact.form == "step" and fact.start is not None and fact.length is not None:
            steps.setdefault(fact.item, []).append(fact)
    return steps


def _beside(one: Found, step: PlaceFact, steps: list[PlaceFact]) -> list[PlaceFact]:
    """The steps that stand up beside this one, higher than the crests of its thread."""
    start, end = _ends(step)
    high = one.thread.major_mm + _MOST_OVER_MM
    return [
        other
        for other in steps
        if other.diameter is not None
        and float(other.diameter) > high
        and (_ends(other)[0] == end or _ends(other)[1] == start)
    ]


def _ends(step: PlaceFact) -> tuple[Fraction, Fraction]:
    start = step.start or Fraction(0)
    return start, start + (step.length or 0)


def _slit(one: Found, design: Design) -> Iterator[Diagnostic]:
    """The order of the lines is the order of the work."""
    step = one.surface
    if step is None or step.form != "step":
        return
    for other in _before(one, design):
        if other.kind in _SLITS and _on(other) in (step.place, one.feature.name):
            yield codes.SLIT_BEFORE_THREAD.at(
                other.at,
                f"'{other.name}' is cut before {one.thread.designation} on '{step.place}'",
                related=(Labelled(one.at, "the thread"),),
                help=f"write '{one.feature.name}' above it: thread, then slit, then chase",
            )


def _crossed(one: Found, design: Design) -> Iterator[Diagnostic]:
    step = one.surface
    if step is None or step.form != "step" or one.length != step.length:
        return
    for other in _before(one, design):
        if other.kind in _HOLES and str(getattr(other.entry, "across", "")) == step.place:
            yield codes.CROSS_HOLE_MEETS_THREAD.at(
                other.at,
                f"'{other.name}' goes through {one.thread.designation} on '{step.place}'",
                related=(Labelled(one.at, "the thread"),),
                help=f"write '{one.feature.name}' above it: thread, then drill, then chase",
            )


def _before(one: Found, design: Design) -> Iterator[Feature]:
    for other in _features(one, design):
        if other.name == one.feature.name:
            return
        if not other.is_dummy and not other.implied_by:
            yield other


def _features(one: Found, design: Design) -> tuple[Feature, ...]:
    owner = design.item(one.feature.owner)
    return owner.features if isinstance(owner, (Part, Fabrication)) else ()


def _on(feature: Feature) -> str:
    return str(getattr(feature.entry, "on", None) or "")
