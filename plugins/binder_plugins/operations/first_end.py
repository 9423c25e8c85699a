"""The first end of a turned part: what is cut there before it comes off the bar."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.around import is_thread
from binder_plugins.operations.as_bought import left_as_bought
from binder_plugins.operations.cutting_off import parted, past, stand_out
from binder_plugins.operations.edges import axial_acts, edge_acts
from binder_plugins.operations.floats import trials
from binder_plugins.operations.gripping import ended_short, first_grip
from binder_plugins.operations.kept_grooves import floor_edges
from binder_plugins.operations.necks import carried, uncarried
from binder_plugins.operations.reaching import from_end
from binder_plugins.operations.thin_ends import ended_bare, on_half_centre, thin_end
from binder_plugins.operations.threads_past import past_line, past_words, run_past
from binder_plugins.operations.true import true_to_one_another

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Stretch


def first(turning: Turning) -> None:
    """The first end: faced, turned, bored and parted off where the bar passes."""
    free, work = turning.plan.free, turning.work
    out = stand_out(turning)
    bores = [a for a in turning.axial if turning.is_first(a) and a not in turning.early]
    grip = first_grip(turning, out, bores)
    words = f"face the end{left_as_bought(work, turning.form)}"
    acts = [turning.face(free, words, ("first-end", "needs-waste"))]
    thin = thin_end(turning, grip)
    if grip.support == "tailstock centre":
        bare = ended_bare(turning, thin)
        acts = [*ended_short(turning, grip, [acts[0], *bare, turning.centre(free)])]
    ended = len(acts)
    threads = _threads_first(turning) if turning.plan.is_threaded else []
    acts += threads
    rest = [place for place in turning.plan.first if place != thin]
    acts += list(turning.turns(rest, free, ("first-end",)))
    acts += list(axial_acts(work, turning.form, bores, turning.lathe, free, past=past(turning)))
    edges = [one for one in turning.edges(free, first=True) if not threads or not is_thread(one)]
    cut = list(run_past(turning, edge_acts(work, turning.form, edges, turning.lathe, free), edges))
    acts += carried(turning, cut, free, turning.plan.first) if grip.support else cut
    acts += uncarried(floor_edges(turning, free, ("first-end",)), acts)
    acts = [*acts[:ended], *_knurls_first(acts[ended:])]
    acts += list(trials(work, acts, carried="centre" in grip.support))
    if turning.plan.is_parted:
        acts += list(parted(turning))
    if thin is None:
        grip = on_half_centre(turning, grip, free)
    turning.add(
        "lathe",
        turning.lathe,
        grip,
        turning.datum(free),
        acts,
        true=true_to_one_another(work, turning.steps, acts),
        until=_until(turning, acts),
    )


def _until(turning: Turning, acts: Sequence[Act]) -> str:
    if not turning.plan.is_parted:
        return "all of this is done"
    return "it is sawn off" if any(act.tool == "hacksaw" for act in acts) else "it is parted off"


def _threads_first(turning: Turning) -> list[Act]:
    """Threads over the bar, with what stands in front of them, which is cut from it after."""
    found: list[Act] = []
    for one in filter(is_thread, turning.edges(turning.plan.free, first=True)):
        step = turning.steps[turning.step_at(one)]
        over = past_line(turning, one)
        far = turning.work.mm(from_end(turning, step, one, turning.plan.free) + over)
        front = _in_front(turning, step)
        for act in edge_acts(turning.work, turning.form, [one], turning.lathe, turning.plan.free):
            said = act.what.split(" × ")[0].split(",")[0]
            past_it = past_words(act.act) if over else ""
            words = f"{said} × {far} from the end{past_it}{front}"
            is_long = act.act in {"turn", "die"}
            found.append(replace(act, what=words) if is_long else act)
    return found


def _in_front(turning: Turning, step: Stretch) -> str:
    """What is turned out of a thread, since it stands nearer to the free end."""
    place = turning.steps.index(step)
    front = turning.steps[:place] if turning.plan.free == "left" else turning.steps[place + 1 :]
    names = " and ".join(_title(one.name) for one in front if one.name)
    return f"; the {names} comes out of it after" if names else ""


def _knurls_first(acts: Sequence[Act]) -> list[Act]:
    """A knurl on the stiff part comes before the end is turned thin."""
    thin = next((n for n, act in enumerate(acts) if "slender" in act.tags), len(acts))
    early = [act for act in acts[thin:] if act.act == "knurl" and "stiff" in act.tags]
    late = [act for act in acts[thin:] if act not in early]
    return [*acts[:thin], *early, *late]


def _title(name: str) -> str:
    return name.replace("_", " ")
