"""A thread and a choice of drills to the drill for its tap, with the reason and the next best."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.drills import Drill, NoDrill
from binder_trade.explained import Step
from binder_trade.threading.aims import Aim, aimed, aimed_for_material
from binder_trade.threading.listed import Listed, listed, published
from binder_trade.threading.percent import Percent, drill_for_percent, percent
from binder_trade.threads import MOVING, Thread

# Between these a thread holds and a hand tap lives, counted as shop tables do.
LEAST_PERCENT: Final = 50.0
MOST_PERCENT: Final = 85.0
_MOST_OTHERS: Final = 3
_SAME_MM: Final = 1e-6
# A nut that moves bears on its whole depth, but for a tenth of the pitch.
_LEAST_OF_A_NUT: Final = 90.0
_COMMON_PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Window:
    """The holes that can be tapped: per cent of thread as shop tables count it, and mm.

    The smallest hole never lies below the basic minor diameter of the nut.
    """

    least_percent: float
    most_percent: float
    least_mm: float
    most_mm: float

    def holds(self, mm: float) -> bool:
        """Whether a hole of this diameter in mm can be tapped."""
        return self.least_mm - _SAME_MM <= mm <= self.most_mm + _SAME_MM


@dataclass(frozen=True, slots=True)
class Choice:
    """Another drill that serves, and what changes by it."""

    drill: Drill
    percent: Percent
    why: str


@dataclass(frozen=True, slots=True)
class TappingDrill:
    """The drill before the tap.

    `wanted_mm` is what the standard or the depth of thread asks; `why` says how the drill was
    chosen and `reason` the same in ten words, without the drill. `others` are the next best,
    `published` what lists without a standard give.
    """

    drill: Drill
    percent: Percent
    window: Window
    wanted_mm: float
    why: str
    reason: str
    source: str
    convention: str
    others: tuple[Choice, ...]
    published: tuple[Listed, ...]
    steps: tuple[Step, ...]


def tapping_window(thread: Thread) -> Window:
    """The holes in which this thread can be tapped: 50 to 85 per cent of depth (shop tables).

    A tighter hole that the thread's own standard lists will do too; a nut that moves wants 90
    to 100 per cent. Source: common practice;
    the floor is the basic minor diameter of the standard.
    """
    core = thread.minor_internal_mm
    if thread.family in MOVING:
        return Window(_LEAST_OF_A_NUT, 100.0, core, drill_for_percent(thread, _LEAST_OF_A_NUT))
    by_list = listed(thread)
    tight = drill_for_percent(thread, MOST_PERCENT)
    if by_list is not None:
        tight = min(tight, by_list.mm)
    tight = max(tight, core)
    return Window(LEAST_PERCENT, MOST_PERCENT, tight, drill_for_percent(thread, LEAST_PERCENT))


def tapping_drill(
    thread: Thread,
    drills: Iterable[Drill | tuple[str, float]],
    engagement: float | None = None,
    material: str = "",
) -> TappingDrill:
    """The best of the drills for tapping this thread; diameters in mm.

    `engagement` is a per cent of thread as shop tables count it. Without it the drill that the
    standard lists is wanted (ISO 2306, the 75 % unified chart, BS 1157); where none lists one
    (BA, ME, 26 to the inch) the depth follows the material, or is 75 %. The nearest drill of
    the window is taken, the larger of two as near. Raises `NoDrill` where none of the drills
    gives 50 to 85 per cent, `NotDefined` for an engagement outside 1 to 120.
    """
    aim = aimed(thread, engagement, material)
    owned = tuple(drill for one in drills if math.isfinite((drill := _drill(one)).mm))
    window = tapping_window(thread)
    fitting = [drill for drill in owned if window.holds(drill.mm)]
    if not fitting:
        raise _none(thread, owned, window, aim)
    ranked = sorted(fitting, key=lambda d: (round(abs(d.mm - aim.mm), 6), -d.mm, d.name))
    best = ranked[0]
    others = _others(thread, ranked, aim, material)
    return TappingDrill(
        drill=best,
        percent=percent(thread, best.mm),
        window=window,
        wanted_mm=aim.mm,
        why=_why(best, aim),
        reason=_reason(best, aim),
        source=aim.source,
        convention=aim.convention,
        others=others,
        published=published(thread),
        steps=_steps(thread, best, aim, window),
    )


def _drill(one: Drill | tuple[str, float]) -> Drill:
    return one if isinstance(one, Drill) else Drill(one[0], float(one[1]), "owned")


def _why(best: Drill, aim: Aim) -> str:
    if abs(best.mm - aim.mm) < _SAME_MM:
        return f"{best.name} {aim.why}"
    return f"{best.name} is the nearest to {aim.mm:.2f} mm, which {aim.why}"


def _reason(best: Drill, aim: Aim) -> str:
    is_exact = abs(best.mm - aim.mm) < _SAME_MM
    return (
        aim.why.removeprefix("is ") if is_exact else f"nearest here to the {aim.mm:.2f} mm wanted"
    )


def _others(thread: Thread, ranked: list[Drill], aim: Aim, material: str) -> tuple[Choice, ...]:
    best = ranked[0]
    apart = [drill for drill in ranked if abs(drill.mm - best.mm) > _SAME_MM]
    found = [_choice(thread, drill, best) for drill in apart[:_MOST_OTHERS]]
    other_aim = aimed_for_material(thread, material)
    if other_aim is not None and other_aim != aim and apart:
        suited = min(ranked, key=lambda drill: (abs(drill.mm - other_aim.mm), -drill.mm))
        if abs(suited.mm - best.mm) > _SAME_MM:
            why = f"nearest to {other_aim.mm:.2f} mm, which {other_aim.why}"
            choice = Choice(suited, percent(thread, suited.mm), why)
            found = [choice, *(one for one in found if one.drill != suited)]
    return tuple(found[:_MOST_OTHERS])


def _choice(thread: Thread, drill: Drill, best: Drill) -> Choice:
    got = percent(thread, drill.mm)
    if drill.mm > best.mm:
        why = f"easier on the tap, {got.on_chart:.0f} % of thread"
    else:
        why = f"deeper thread, {got.on_chart:.0f} %, harder on the tap"
    return Choice(drill, got, why)


def _none(thread: Thread, owned: tuple[Drill, ...], window: Window, aim: Aim) -> NoDrill:
    near = min(owned, key=lambda drill: abs(drill.mm - aim.mm), default=None)
    percents = f"{window.least_percent:g} to {window.most_percent:g} %"
    reason = f"no drill here gives {percents} of {thread.designation}"
    if near is not None and near.mm >= thread.major_mm:
        reason += f": the nearest, {near.name}, leaves nothing to tap"
    elif near is not None and near.mm < thread.minor_internal_mm:
        reason += f": the nearest, {near.name}, is below the core"
    elif near is not None:
        got = percent(thread, near.mm).on_chart
        reason += f": the nearest, {near.name}, gives {got:.0f} %"
    size = f"{window.least_mm:.2f} to {window.most_mm:.2f} mm"
    return NoDrill(reason, f"a drill of {aim.mm:.2f} mm is wanted, {size} will do")


def _steps(thread: Thread, best: Drill, aim: Aim, window: Window) -> tuple[Step, ...]:
    got = percent(thread, best.mm)
    limits = f"{window.least_mm:.3f} to {window.most_mm:.3f} mm"
    percents = f"{window.least_percent:g} to {window.most_percent:g} %"
    return (
        Step("drill wanted", aim.formula, f"{aim.mm:.3f} mm", aim.source),
        Step("holes that will do", f"{percents} of thread, not below D1", limits, _COMMON_PRACTICE),
        Step("drill", "the nearest of the drills", f"{best.name} ({best.mm:.3f} mm)", "choice"),
        Step("per cent of thread", "(D − drill) ÷ (k × P)", got.basis, thread.form.standard),
    )
