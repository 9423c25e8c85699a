"""The second end of a turned part: what is cut there, and what carries it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import steady_for
from binder_plugins.operations.closing_piece import (
    closing_journal,
    suited_length,
)
from binder_plugins.operations.early_corners import slips
from binder_plugins.operations.edges import axial_acts, edge_acts
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.floats import suited_hub, trials
from binder_plugins.operations.gripping import is_carried
from binder_plugins.operations.kept_grooves import floor_edges
from binder_plugins.operations.lengthwise import SAME, is_spoiled
from binder_plugins.operations.necks import carried
from binder_plugins.operations.row_walls import spaced_length
from binder_plugins.operations.second_grip import is_fitted, second_grip
from binder_plugins.operations.thin_ends import on_half_centre
from binder_plugins.operations.threads_past import far_chamfers

if TYPE_CHECKING:
    from binder_plugins.operations.turning import Turning

# A land is no shorter than the fingers of a small steady are wide; common practice, no source.
_LAND_MM = 4.0
_FINGERS = "the land tapped true by the indicator, then the fingers of the steady touched on, oiled"


def second(turning: Turning) -> None:
    """The other end: faced to length, and what could not be got at before."""
    end, work = turning.plan.other, turning.work
    bores = [a for a in turning.axial if not turning.is_first(a)]
    over_all = _over_all(turning, end)
    acts = [turning.face(end, f"face to {over_all}", ("back",))]
    acts += list(turning.turns(turning.plan.second, end, ("back",)))
    acts += list(axial_acts(work, turning.form, bores, turning.lathe, end, tags=("back",)))
    edges = turning.edges(end, first=False)
    cut = edge_acts(work, turning.form, edges, turning.lathe, end, tags=("back",))
    acts += [_other_end(act) if _is_at_both(turning, act) else act for act in cut]
    acts += floor_edges(turning, end, ("back",))
    grip, is_firm = second_grip(turning)
    if acts[1:] and is_carried(turning, grip, bores, is_firm=is_firm):
        grip = on_half_centre(turning, replace(grip, support="tailstock centre"), end)
        acts = [acts[0], turning.centre(end), *carried(turning, acts[1:], end, turning.plan.second)]
    elif not is_firm:
        grip = _steadied(turning, grip, end)
    acts += list(trials(work, acts, carried="centre" in grip.support))
    if grip.kind == "mandrel" and grip.support:
        acts[0] = _past_centre(acts[0])
    acts += far_chamfers(turning)
    fitted = is_fitted(turning, bores)
    true = f"run {grip.on} true to 0.02 mm first" if fitted and grip.kind != "mandrel" else ""
    if grip.land != (0.0, 0.0):
        true = "; ".join(filter(None, (true, _FINGERS)))
    _two_settings(turning, grip, fitted=fitted)
    turning.trouble += slips(grip, acts, turning.work.name)
    turning.add(
        "lathe",
        turning.lathe,
        grip,
        turning.datum(end),
        acts,
        true=true,
        until="all of this is done" if len(acts) > 1 else "",
    )


def _past_centre(act: Act) -> Act:
    """No tool passes a full centre: a half one leaves it way to the bore, or none stands there."""
    words = "light cuts, from the outside as far as the half centre lets the tool; draw it back for"
    return replace(act, what=f"{act.what}; {words} the last of them, which goes to the bore")


def _over_all(turning: Turning, end: str) -> str:
    """To what length the end is faced; beyond a journal made to its mate the last step counts."""
    work = turning.work
    row = suited_length(work, turning.length) or suited_hub(work, turning.length)
    row = row or spaced_length(work, turning.length)
    if row:
        return row
    place = 0 if end == "left" else len(turning.steps) - 1
    last = turning.steps[place]
    inner = [one for one in turning.steps if one is not last]
    # A shoulder that is only cut in this set-up is no place to measure from yet.
    is_there = place not in turning.plan.second
    if is_there and any(closing_journal(work, one.name) for one in inner):
        return f"{work.mm(last.end - last.start)} beyond the shoulder"
    return f"{work.mm(turning.length)} over all"


def _steadied(turning: Turning, grip: Grip, end: str) -> Grip:
    """The grip with the steady on a finished round land at the end; what is amiss without."""
    place = 0 if end == "left" else len(turning.steps) - 1
    step = turning.steps[place]
    is_plain = not step.corners and abs(step.across - step.end_across) < SAME
    is_long = step.end - step.start >= _LAND_MM - SAME
    is_whole = not is_spoiled(turning.form.located, step)
    found = steady_for(turning.work.design.workshop, step.across)
    if found and is_plain and is_long and is_whole and place not in turning.plan.second:
        mm, name = turning.work.mm, step.name.replace("_", " ") or "end"
        on = f"{found} on the {name}, ⌀{mm(step.across)}, {mm(step.end - step.start)} long"
        support = f"{on}, at the {end}-hand end"
        return replace(grip, support=support, land=(step.start, step.end))
    words = (
        f"'{turning.work.name}' stands {grip.stand_out:g} mm out of jaws that grip "
        f"{grip.long:g} mm of it, and nothing carries its {end}-hand end: no steady here has a "
        f"finished round land of {_LAND_MM:g} mm to run on there"
    )
    turning.trouble.append(("stands-out-too-far", words))
    return grip


def _is_at_both(turning: Turning, act: Act) -> bool:
    """Whether the same is cut at either end of a bar left as bought."""
    found = next((one for one in turning.around if one.name == act.feature), None)
    return found is not None and len(found.spots) > 1 and not turning.is_turned_at(found)


def _two_settings(turning: Turning, grip: Grip, *, fitted: bool) -> None:
    if fitted and grip.kind == "chuck":
        words = (
            f"fits of '{turning.work.name}' are cut in two grips that must be true to each other, "
            f"and the {grip.holder} cannot be trued"
        )
        turning.trouble.append(("two-settings-for-true", words))


def _other_end(act: Act) -> Act:
    """The act as one of a feature of its own, so that no rule takes both ends for one."""
    return replace(act, feature=f"{act.feature}, other end")
