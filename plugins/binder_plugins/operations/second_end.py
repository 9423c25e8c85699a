"""The second end of a turned part: what it is held by, and what is cut there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import round_holder
from binder_plugins.operations.closing_piece import suited_length
from binder_plugins.operations.edges import axial_acts, centre_back, edge_acts
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.floors import floor_chamfers
from binder_plugins.operations.gripping import COLLET_MM, SHORT, is_carried
from binder_plugins.operations.lengthwise import (
    GRIP_MM,
    SAME,
    grips,
    has_limits,
    is_spoiled,
    is_true,
)
from binder_solid.facts import Located, Stretch

if TYPE_CHECKING:
    from binder_plugins.operations.turning import Turning

# What stays clear between a rounded edge and the jaws, in mm; common practice, no source.
_ROUND_CLEAR = 0.5


def second(turning: Turning) -> None:
    """The other end: faced to length, and what could not be got at before."""
    end, work = turning.plan.other, turning.work
    bores = [a for a in turning.axial if not turning.is_first(a)]
    bored = list(bores)
    over_all = suited_length(work, turning.length) or f"{work.mm(turning.length)} over all"
    acts = [turning.face(end, f"face to {over_all}", ("back",))]
    acts += list(turning.turns(turning.plan.second, end, ("back",)))
    acts += list(
        axial_acts(
            work, turning.form, bored, turning.lathe, end, turning.postponed(), tags=("back",)
        )
    )
    edges = turning.edges(end, first=False)
    cut = edge_acts(work, turning.form, edges, turning.lathe, end, tags=("back",))
    acts += [_other_end(act) if _is_at_both(turning, act) else act for act in cut]
    acts += floor_chamfers(turning, end, ("back",))
    grip = _second_grip(turning)
    if acts[1:] and is_carried(turning, grip, bores):
        grip = replace(grip, support="tailstock centre")
        acts = [acts[0], turning.centre(end), *map(centre_back, acts[1:])]
    fitted = _is_fitted(turning, bores)
    true = f"run {grip.on} true to 0.02 mm first" if fitted and grip.kind != "mandrel" else ""
    _two_settings(turning, grip, fitted=fitted)
    turning.add(
        "lathe",
        turning.lathe,
        grip,
        turning.datum(end),
        acts,
        true=true,
        until="all of this is done" if len(acts) > 1 else "",
    )


def _is_at_both(turning: Turning, act: Act) -> bool:
    """Whether the same is cut at either end of a bar left as bought."""
    found = next((one for one in turning.around if one.name == act.feature), None)
    return found is not None and len(found.spots) > 1 and not turning.is_turned_at(found)


def _is_fitted(turning: Turning, bores: Sequence[Located]) -> bool:
    late = any(has_limits(turning.steps[i], turning.work) for i in turning.plan.second)
    late = late or any(is_true(one, turning.work) for one in bores)
    early = any(has_limits(turning.steps[i], turning.work) for i in turning.plan.first)
    early = early or any(
        is_true(one, turning.work) for one in turning.axial if turning.is_first(one)
    )
    return late and early


def _second_grip(turning: Turning) -> Grip:
    end = turning.plan.other
    threaded = [
        i for i in range(len(turning.steps)) if is_spoiled(turning.form.located, turning.steps[i])
    ]
    able = grips(
        turning.work, turning.steps, turning.plan.first, threaded, end, turning.form.located
    )
    able = [i for i in able if i not in turning.plan.second] or able
    if not able:
        return _no_grip(turning, end)
    step = turning.steps[able[0]]
    fitted = _is_fitted(turning, [a for a in turning.axial if not turning.is_first(a)])
    holder, kind = round_holder(
        turning.work.design.workshop,
        step.across,
        true=fitted or has_limits(step, turning.work) or step.across <= COLLET_MM,
    )
    out_of = _between(turning, able[0], end)
    out = step.start if end == "left" else turning.length - step.end
    out = max(out if turning.plan.second else min(out, turning.cut_reach(end) + SHORT), 2.0)
    rounded = _rounded(turning, end) if not out_of else 0.0
    out = max(out, rounded + _ROUND_CLEAR if rounded else 0.0)
    if rounded and step.end - step.start - rounded < GRIP_MM:
        words = (
            f"'{turning.work.name}' is rounded at its {end}-hand end, and little is left to grip"
        )
        turning.trouble.append(("nothing-to-grip", words))
    is_rod = bool(out_of) and all(abs(one.across - step.across) < SAME for one in out_of)
    said = "" if is_rod or not step.name else f" ({_title(step.name)})"
    on = f"⌀{turning.work.mm(step.across)}{said}"
    if has_limits(step, turning.work) and kind != "collet":
        on += ", in card or copper"
    _crushed(turning, step, kind)
    return Grip(
        holder,
        kind,
        on,
        step.across,
        step.end - step.start,
        out,
        "",
        (step.start, step.end),
        end,
    )


def _between(turning: Turning, place: int, end: str) -> Sequence[Stretch]:
    """The steps from the gripped one to the end that is worked."""
    return turning.steps[:place] if end == "left" else turning.steps[place + 1 :]


def _rounded(turning: Turning, end: str) -> float:
    """How far the edges rounded at an end reach along the work, in mm."""
    mine = turning.edges(end, first=False)
    mine += [one for one in turning.axial if not turning.is_first(one)]
    return max((one.diameter or 0.0 for one in mine if one.kind == "rounded"), default=0.0)


def _crushed(turning: Turning, step: Stretch, kind: str) -> None:
    bore = max(
        (
            a.diameter or 0.0
            for a in turning.axial
            if a.kind in {"bored", "reamed", "drilled"} and _covers(a, step, turning.length)
        ),
        default=0.0,
    )
    wall = (step.across - bore) / 2
    if kind == "chuck" and bore and wall < step.across / 12:
        words = (
            f"'{turning.work.name}' is gripped on a wall of {wall:.2g} mm at ⌀{step.across:g} mm"
        )
        turning.trouble.append(("thin-part-crushed", words))


def _no_grip(turning: Turning, end: str) -> Grip:
    """On a mandrel in its bore, else on a thread in a split ring; else nothing is there."""
    if any(a.depth is None and a.kind in {"reamed", "bored"} for a in turning.axial):
        return Grip(
            "stub mandrel turned to the bore",
            "mandrel",
            "its bore",
            0.0,
            0.0,
            2.0,
            "",
            (0.0, 0.0),
            end,
        )
    screwed = [one for one in turning.form.located if one.kind == "screwed"]
    tapped = any(a.kind == "tapped" for a in turning.axial)
    if screwed or tapped:
        on = f"the thread, in a {'split tapped ring' if screwed else 'screwed stub'}"
        name, kind = round_holder(
            turning.work.design.workshop, max(s.across for s in turning.steps), true=False
        )
        return Grip(name, kind, on, 0.0, 5.0, 2.0, "", _on_thread(turning), end)
    if turning.plan.second or any(not turning.is_first(a) for a in turning.axial):
        words = f"nothing on '{turning.work.name}' is long enough to grip for its {end}-hand end"
        turning.trouble.append(("nothing-to-grip", words))
    return Grip(
        "soft jaws bored to suit",
        "chuck",
        "its outside",
        max(s.across for s in turning.steps),
        2.0,
        1.0,
        "",
        (0.0, turning.length),
        end,
    )


def _on_thread(turning: Turning) -> tuple[float, float]:
    """Where the ring is on an outside thread; nowhere in particular for a stub in a tapped hole."""
    found = next((one for one in turning.form.located if one.kind == "screwed"), None)
    middle = found.frame.origin[0] if found is not None else 0.0
    half = min(found.length or 5.0, 8.0) / 2 if found is not None else 0.0
    return middle - half, middle + half


def _two_settings(turning: Turning, grip: Grip, *, fitted: bool) -> None:
    if fitted and grip.kind == "chuck":
        words = (
            f"fits of '{turning.work.name}' are cut in two grips that must be true to each other, "
            f"and the {grip.holder} cannot be trued"
        )
        turning.trouble.append(("two-settings-for-true", words))


def _covers(one: Located, step: Stretch, length: float) -> bool:
    if one.depth is None:
        return True
    start = one.frame.origin[0]
    low, high = (start - one.depth, start) if one.frame.z[0] > 0 else (start, start + one.depth)
    return low < step.end and high > step.start


def _other_end(act: Act) -> Act:
    """The act as one of a feature of its own, so that no rule takes both ends for one."""
    return replace(act, feature=f"{act.feature}, other end")


def _title(name: str) -> str:
    return name.replace("_", " ")
