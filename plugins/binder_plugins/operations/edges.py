"""What is cut on the axis and round turned work: bores, grooves, threads, knurls, edges."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import HOLES, SINKS, Where, through
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.mouths import mouths_of
from binder_plugins.operations.on_steps import beside, step_of
from binder_plugins.operations.outside_threads import thread_acts
from binder_plugins.operations.recesses import recess_acts
from binder_plugins.operations.relieved import relief_of, relieved_acts
from binder_plugins.operations.round_grooves import groove_act
from binder_plugins.operations.shoulders import thickness
from binder_solid.forms import Revolved

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch

_BROKEN = frozenset({"chamfered", "rounded"})
_SAME_MM = 1e-6
_TURNED = frozenset(
    {"chamfered", "rounded", "bevelled", "knurled", "grooved", "undercut", "screwed", "recessed"}
)


def axial_acts(
    work: Work,
    form: FormFact,
    bores: Iterable[Located],
    lathe: str,
    end: str,
    tags: tuple[str, ...] = (),
    past: float = 0.0,
) -> Iterator[Act]:
    """Holes on the axis from the smallest up: the next one finds its start in it.

    `past` is how far from this end in mm the piece comes off its bar after, 0 where it is off.
    """
    found = [one for one in bores if one.kind in HOLES | SINKS.keys() | {"recessed", "centred"}]
    mouths = mouths_of(work, bores)
    started, first = False, 0.0
    for one in sorted(found, key=lambda one: (one.kind in SINKS, one.diameter or 0.0)):
        deep = through(one, (form.size[0], 0.0, 0.0))
        where = Where(
            lathe,
            deep,
            end,
            tags=tags,
            is_started=started,
            first=first,
            is_lathe=True,
            mouth=mouths.get(one.name),
            past=past,
        )
        if one.kind == "recessed":
            yield from recess_acts(work, form, one, lathe, end, tags)
            continue
        relief = relief_of(one, form)
        yield from (
            relieved_acts(work, form, one, relief, where)
            if relief is not None
            else hole_acts(work, one, where)
        )
        started = True
        first = max(first, one.diameter or 0.0) if one.depth is None else first
    for one in bores:
        if one.kind in {"chamfered", "rounded", "bevelled"} and one not in mouths.values():
            yield _edge(work, form, one, lathe, end, tags)


def corners(one: Located, steps: Sequence[Stretch]) -> Iterator[Located]:
    """A broken edge as one piece for each corner: both ends of the work are not come at at once.

    A corner at an end of the work belongs to the grip in which that end is free.
    """
    rings = [form for form in one.tools if isinstance(form, Revolved)]
    if one.kind not in _BROKEN or not rings or len(rings) < len(one.tools):
        yield one
        return
    ends = {"left": min(s.start for s in steps), "right": max(s.end for s in steps)}
    for ring in rings:
        x = ring.outline.start[0]
        face = next((end for end, at in ends.items() if abs(at - x) < _SAME_MM), one.face)
        origin = (x, *one.frame.origin[1:])
        yield replace(one, face=face, tools=(ring,), frame=replace(one.frame, origin=origin))


def edge_acts(
    work: Work,
    form: FormFact,
    around: Sequence[Located],
    lathe: str,
    end: str,
    tags: tuple[str, ...] = (),
) -> Iterator[Act]:
    """Knurls first, then undercuts and grooves, edges, threads."""
    turn = {"knurled": 0, "undercut": 1, "grooved": 2, "chamfered": 3, "bevelled": 3, "rounded": 4}
    mine = [one for one in around if one.kind in _TURNED and one.face != "axis"]
    for one in sorted(mine, key=lambda one: turn.get(one.kind, 5)):
        if one.kind == "screwed":
            yield from thread_acts(work, form, one, lathe, end, tags)
        elif one.kind == "knurled":
            yield _knurl(work, form, one, lathe, end, tags)
        elif one.kind in {"undercut", "grooved"}:
            yield groove_act(work, form, one, lathe, end, tags)
        else:
            yield _edge(work, form, one, lathe, end, tags)


def _knurl(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Act:
    across = thickness(form, one.frame.origin[0])
    wrong: tuple[tuple[str, str], ...] = ()
    if across < 4.0:
        words = (
            f"'{one.name}' on '{work.name}' knurls ⌀{across:g} mm, which bends away from the wheels"
        )
        wrong = (("knurl-bends-it", words),)
    stiff = ("stiff",) if across > max(form.size[1:]) - 1e-6 else ()
    act = work.act(
        "knurl",
        one.note,
        machine=lathe,
        feature=one.name,
        tool=_knurls(work, one.diameter or 0.0),
        size=across,
        end=end,
        tags=(*tags, *stiff),
        meets=(step_of(form, one),),
    )
    return replace(act, trouble=(*act.trouble, *wrong))


def _knurls(work: Work, pitch: float) -> str:
    owned = any(abs(k.pitch.mm - pitch) < 1e-6 for k in work.design.workshop.entry.cutters.knurls)
    return f"{work.mm(pitch)} knurls" if owned else f"{work.mm(pitch)} knurls, not owned"


def _edge(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Act:
    act = "chamfer" if one.kind in {"chamfered", "bevelled"} else "form"
    return work.act(
        act,
        one.note,
        machine=lathe,
        feature=one.name,
        size=thickness(form, one.frame.origin[0]),
        end=end,
        tags=tags,
        meets=tuple(beside(form, one)),
    )
