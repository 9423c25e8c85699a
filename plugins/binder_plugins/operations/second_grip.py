"""What the second end of a turned part is held by: a step, its own bore, or its thread."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bench import round_holder
from binder_plugins.operations.die_torque import longest_grip
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.gripping import COLLET_MM
from binder_plugins.operations.hole_kinds import narrows_to
from binder_plugins.operations.lengthwise import (
    BACK_MM,
    GRIP_MM,
    SAME,
    grips,
    has_limits,
    is_marred,
    is_spoiled,
    is_true,
    is_weak,
    wall_of,
)
from binder_plugins.operations.overhang import (
    between,
    gripped,
    is_firm,
    rounded_to,
    stand_out,
)
from binder_plugins.operations.thickest import thickest

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located, Stretch

# What a ring stays clear of the end of a thread, in mm. Common practice, no source.
_RUN_OUT = 2.0
SOFT_JAWS = "soft jaws bored to suit"
STUB = "screwed stub"
# How far the shoulder of a stub stands out of the jaws in mm, so that tool and die come to it in
# the grip in which it is used, and how much of it is gripped. Common practice, no source.
_STUB_OUT_MM, _STUB_GRIP_MM = 7.0, 15.0
# What stands out of soft jaws when it is faced to length, in mm: common practice, no source.
_PROUD_MM = 0.5
# A stub is drilled, split and spread from this bore on, in mm: common practice, no source.
_SPREAD_MM = 5.0


def is_fitted(turning: Turning, bores: Sequence[Located]) -> bool:
    """Whether limits are cut in both grips, so that these must be true to each other."""
    late = any(has_limits(turning.steps[i], turning.work) for i in turning.plan.second)
    late = late or any(is_true(one, turning.work) for one in bores)
    early = any(has_limits(turning.steps[i], turning.work) for i in turning.plan.first)
    early = early or any(
        is_true(one, turning.work) for one in turning.axial if turning.is_first(one)
    )
    return late and early


def second_grip(turning: Turning) -> tuple[Grip, bool]:
    """How the second end is held, and whether it stands out no farther than the grip bears."""
    end = turning.plan.other
    able = _able(turning, end)
    place = _place(turning, able, end)
    if place is None:
        return _no_grip(turning, end), True
    _too_round(turning, place, end)
    return _on_step(turning, place, end), is_firm(turning, place, end)


def place_held(turning: Turning) -> int | None:
    """The step that the second grip holds; None where its bore or its thread does."""
    end = turning.plan.other
    return _place(turning, _able(turning, end), end)


def jaws_of(turning: Turning, place: int, end: str) -> tuple[float, float]:
    """From where to where along the part the jaws grip a step to work at an end, in mm."""
    out = stand_out(turning, place, end)
    far = out + gripped(turning, place, end)
    return (out, far) if end == "left" else _mirrored(turning, out, far)


def _able(turning: Turning, end: str) -> list[int]:
    """Steps that may be gripped; none that was bored thin, where a thread is cut."""
    located = turning.form.located
    spoiled = [i for i, one in enumerate(turning.steps) if is_spoiled(located, one)]
    able = grips(turning.work, turning.steps, turning.plan.first, spoiled, end, located)
    able = [i for i in able if i not in turning.plan.second] or able
    if any(_is_knurled(turning, i) for i in able) and _has_thread(turning, end):
        # Jaws crush a fresh knurl; the ring is better than what else is marred or thin.
        # Common practice, no source.
        marred = [i for i in able if is_marred(turning.steps[i], turning.form.located)]
        able = [i for i in able if i not in marred and is_firm(turning, i, end)]
    if not any(one.kind == "screwed" for one in turning.edges(end, first=False)):
        return able
    bores = [one for one in turning.axial if turning.is_first(one)]
    return [i for i in able if not is_weak(turning.steps[i], bores)]


def _has_thread(turning: Turning, end: str) -> bool:
    """Whether an outside thread that was cut in the first grip can be held in a ring."""
    late = {one.name for one in turning.edges(end, first=False)}
    return any(one.kind == "screwed" and one.name not in late for one in turning.form.located)


def _is_knurled(turning: Turning, place: int) -> bool:
    knurls = [one for one in turning.form.located if one.kind == "knurled"]
    return is_marred(turning.steps[place], knurls)


def _place(turning: Turning, able: Sequence[int], end: str) -> int | None:
    """The step to grip; None where the bore or the thread holds it better, or nothing else does.

    A mandrel drives light cuts only, so a marred step is gripped before it where more is done.
    """
    firm = [i for i in able if is_firm(turning, i, end)]
    plain = [i for i in firm if not is_marred(turning.steps[i], turning.form.located)]
    if plain:
        return plain[0]
    if finished_bore(turning) is not None and not (firm and turning.plan.second):
        return None
    found = [*firm, *able]
    return found[0] if found else None


def _on_step(turning: Turning, place: int, end: str) -> Grip:
    work, step = turning.work, turning.steps[place]
    out, long = stand_out(turning, place, end), gripped(turning, place, end)
    jaws = jaws_of(turning, place, end)
    fitted = is_fitted(turning, [a for a in turning.axial if not turning.is_first(a)])
    held = [one for one in turning.steps if one.end > jaws[0] + SAME and one.start < jaws[1] - SAME]
    is_fit = any(_is_fit(one, turning) for one in held)
    is_trued = fitted or _follows_thread(turning) or wants_collet(turning, place, end)
    is_trued = is_trued or step.across <= COLLET_MM
    holder, kind = _holder(work, thickest(work, step, *held), is_trued=is_trued, is_fit=is_fit)
    front = between(turning, place, end)
    is_rod = bool(front) and all(abs(one.across - step.across) < SAME for one in front)
    said = "" if is_rod or not step.name else f" ({step.name.replace('_', ' ')})"
    on = f"⌀{work.mm(step.across)}{said}"
    if is_fit and kind != "collet":
        on += ", in card or copper"
    _crushed(turning, step, kind)
    return Grip(holder, kind, on, step.across, long, out + turning.over, "", jaws, end)


def _holder(work: Work, across: float, *, is_trued: bool, is_fit: bool) -> tuple[str, str]:
    """A collet leaves no print on a fit; without one what need not run true goes in the chuck."""
    found = round_holder(work.design.workshop, across, true=is_trued or is_fit)
    if found[1] == "collet" or is_trued:
        return found
    return round_holder(work.design.workshop, across, true=False)


def _follows_thread(turning: Turning) -> bool:
    """Whether a fit is cut at this end that must be true to a thread of the other."""
    early = turning.edges(turning.plan.free, first=True)
    late = any(has_limits(turning.steps[i], turning.work) for i in turning.plan.second)
    return late and any(one.kind == "screwed" for one in early)


def wants_collet(turning: Turning, place: int, end: str) -> bool:
    """Whether jaws would let a thread turn the work, which a collet of its size may hold."""
    if not turning.has_collets:
        return False
    threads = [one.name for one in turning.edges(end, first=False) if one.kind == "screwed"]
    wanted = longest_grip(turning.work, threads, turning.steps[place].across)
    return gripped(turning, place, end) < wanted - SAME


def _mirrored(turning: Turning, near: float, far: float) -> tuple[float, float]:
    return turning.length - far, turning.length - near


def _is_fit(step: Stretch, turning: Turning) -> bool:
    """Whether a step is finished to a fit, or fits as it is bought: bare jaws would mark it."""
    work = turning.work
    return has_limits(step, work) or (bool(step.name) and work.is_bought_outside(step.name))


def _too_round(turning: Turning, place: int, end: str) -> None:
    step, rounded = turning.steps[place], rounded_to(turning, end)
    if between(turning, place, end) or not rounded:
        return
    if step.end - step.start - rounded < GRIP_MM:
        words = (
            f"'{turning.work.name}' is rounded at its {end}-hand end, and little is left to grip"
        )
        turning.trouble.append(("nothing-to-grip", words))


def _crushed(turning: Turning, step: Stretch, kind: str) -> None:
    wall = wall_of(step, turning.axial)
    if kind == "chuck" and wall < step.across / 12:
        words = (
            f"'{turning.work.name}' is gripped on a wall of {wall:.2g} mm at ⌀{step.across:g} mm"
        )
        turning.trouble.append(("thin-part-crushed", words))


def finished_bore(turning: Turning) -> Located | None:
    """A finished bore right through, that a mandrel can follow; None where there is none."""
    return next(
        (
            one
            for one in turning.axial
            if one.depth is None
            and one.kind in {"reamed", "bored"}
            and len(one.spots) == 1
            and turning.work.waits(one.name) is None
            and not narrows_to(turning.work, one)
        ),
        None,
    )


def _mandrel(bore: Located, end: str) -> Grip:
    """A stub that holds along the axis too, and leaves the end free to be faced."""
    held, support = "split and spread by a taper screw in its end", ""
    if (bore.diameter or 0.0) < _SPREAD_MM:
        held, support = "wrung on", "light half centre in the tailstock, in the mouth of the bore"
    name = f"stub mandrel turned to the bore, with a shoulder, {held}"
    return Grip(name, "mandrel", "its bore", support=support, free=end)


def _no_grip(turning: Turning, end: str) -> Grip:
    """On a mandrel in its bore, else on a thread in a split ring; else nothing is there."""
    if (bore := finished_bore(turning)) is not None:
        return _mandrel(bore, end)
    screwed = [one for one in turning.form.located if one.kind == "screwed"]
    if screwed:
        return _in_ring(turning, screwed[0], end)
    if any(a.kind == "tapped" for a in turning.axial):
        return _on_stub(turning, end)
    if turning.plan.second or any(not turning.is_first(a) for a in turning.axial):
        words = f"nothing on '{turning.work.name}' is long enough to grip for its {end}-hand end"
        turning.trouble.append(("nothing-to-grip", words))
    widest = max(s.across for s in turning.steps)
    deep = _pocket(turning.length)
    seat = (0.0, deep) if end == "right" else (turning.length - deep, turning.length)
    back = BACK_MM if turning.plan.is_parted else turning.work.facing
    out = turning.length + back - deep
    return Grip(SOFT_JAWS, "chuck", "its outside", widest, deep, out, "", seat, end)


def _pocket(length: float) -> float:
    """How deep soft jaws are bored: what is finished stands out of them, for the tool to pass."""
    return max(length - _PROUD_MM, length / 2)


def _in_ring(turning: Turning, thread: Located, end: str) -> Grip:
    """In a split ring on an outside thread."""
    widest = max(s.across for s in turning.steps)
    name, kind = round_holder(turning.work.design.workshop, widest, true=False)
    half = min(thread.length or 5.0, 8.0) / 2
    # The ring is near the end that is worked, clear of the thread's run-out.
    aside = max((thread.length or 0.0) / 2 - half - _RUN_OUT, 0.0)
    middle = thread.frame.origin[0] + (-aside if end == "left" else aside)
    ring = (middle - half, middle + half)
    near = ring[0] if end == "left" else turning.length - ring[1]
    out, on = max(near, 0.0) + turning.over, "the thread, in a split tapped ring"
    return Grip(name, kind, on, 0.0, 2 * half, out, "", ring, end)


def _on_stub(turning: Turning, end: str) -> Grip:
    """On a stub in a tapped hole, against its shoulder: all of the part is beyond that."""
    widest = max(s.across for s in turning.steps)
    name, kind = round_holder(turning.work.design.workshop, widest, true=False)
    shoulder = turning.work.mm(_STUB_OUT_MM)
    on = f"the thread, in a {STUB}, its shoulder {shoulder} out of the jaws"
    out = _STUB_OUT_MM + turning.length + turning.over
    jaws = (-_STUB_OUT_MM - _STUB_GRIP_MM, -_STUB_OUT_MM)
    if end == "left":
        jaws = _mirrored(turning, *jaws)
    return Grip(name, kind, on, 0.0, _STUB_GRIP_MM, out, "", jaws, end)
