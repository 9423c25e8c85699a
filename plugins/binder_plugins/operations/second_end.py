"""The second end of a turned part: what is cut there, and what carries it."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

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
from binder_plugins.operations.necks import carried
from binder_plugins.operations.row_walls import spaced_length
from binder_plugins.operations.second_grip import is_fitted, second_grip
from binder_plugins.operations.steadied import fingers, most_rpm, steadied
from binder_plugins.operations.thin_ends import on_half_centre
from binder_plugins.operations.threads_past import far_chamfers

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located


def second(turning: Turning) -> None:
    """The other end: faced to length, and what could not be got at before."""
    end, work = turning.plan.other, turning.work
    bores = [a for a in turning.axial if not turning.is_first(a)]
    made, most = work.numbered, math.inf
    acts = _cut(turning, end, bores)
    grip, is_firm = second_grip(turning)
    if acts[1:] and is_carried(turning, grip, bores, is_firm=is_firm):
        grip = on_half_centre(turning, replace(grip, support="tailstock centre"), end)
        acts = [acts[0], turning.centre(end), *carried(turning, acts[1:], end, turning.plan.second)]
    elif not is_firm:
        grip = steadied(turning, grip, end)
        most, work.numbered = most_rpm(turning, grip, end), made
        with work.no_faster(most):
            acts = _cut(turning, end, bores)
    acts += list(trials(work, acts, carried="centre" in grip.support))
    if grip.kind == "mandrel" and grip.support:
        acts[0] = _past_centre(acts[0])
    with work.no_faster(most):
        acts += far_chamfers(turning)
    fitted = is_fitted(turning, bores)
    true = f"run {grip.on} true to 0.02 mm first" if fitted and grip.kind != "mandrel" else ""
    true = "; ".join(filter(None, (true, fingers(most))))
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


def _cut(turning: Turning, end: str, bores: Sequence[Located]) -> list[Act]:
    """What is cut at the other end, the facing first."""
    work = turning.work
    over_all = _over_all(turning, end)
    acts = [turning.face(end, f"face to {over_all}", ("back",))]
    acts += list(turning.turns(turning.plan.second, end, ("back",)))
    acts += list(axial_acts(work, turning.form, bores, turning.lathe, end, tags=("back",)))
    edges = turning.edges(end, first=False)
    cut = edge_acts(work, turning.form, edges, turning.lathe, end, tags=("back",))
    acts += [_other_end(act) if _is_at_both(turning, act) else act for act in cut]
    acts += floor_edges(turning, end, ("back",))
    return acts


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
