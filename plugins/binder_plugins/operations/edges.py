"""What is cut on the axis and round turned work: bores, grooves, threads, knurls, edges."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_plugins.operations.hole_kinds import HOLES, SINKS, Where, through
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.kept_grooves import keeper_of
from binder_plugins.operations.lengthwise import is_turned
from binder_plugins.operations.mouths import mouths_of
from binder_plugins.operations.recesses import recess_acts
from binder_plugins.operations.relieved import relief_of, relieved_acts
from binder_plugins.operations.shoulders import begins, thickness, to_shoulder
from binder_solid.clip_walls import holds_clip, outer_wall
from binder_solid.forms import Revolved

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch

_BROKEN = frozenset({"chamfered", "rounded"})
_SAME_MM = 1e-6
# How the half of a thread that is fitted with the die begins.
_OPENED = "open the die"
# What the length of a thread is taken as where it is not told, in mm.
_UNTOLD_MM = 5.0
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
            yield from _thread(work, form, one, lathe, end, tags)
        elif one.kind == "knurled":
            yield _knurl(work, form, one, lathe, end, tags)
        elif one.kind in {"undercut", "grooved"}:
            yield _groove(work, form, one, lathe, end, tags)
        else:
            yield _edge(work, form, one, lathe, end, tags)


def _step_of(form: FormFact, one: Located) -> str:
    return next(_beside(form, one), form.stretches[0].name or "step 1")


def _beside(form: FormFact, one: Located) -> Iterator[str]:
    """The steps on either side of an edge, or the one that a feature lies on."""
    x = one.frame.origin[0]
    for n, step in enumerate(form.stretches):
        if step.start - _SAME_MM <= x <= step.end + _SAME_MM:
            yield step.name or f"step {n + 1}"


def _thread(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Iterator[Act]:
    long, to = one.length or _UNTOLD_MM, _turned_to(work, one)
    if to:
        yield work.act(
            "turn",
            f"turn to ⌀{to} × {work.mm(long)}{begins(work, form, one)} for the thread",
            machine=lathe,
            feature=one.name,
            size=thickness(form, one.frame.origin[0]),
            start=thickness(form, one.frame.origin[0]) + 0.3,
            deep=long,
            end=end,
            tags=(*tags, "outside", "for-thread"),
            meets=(_step_of(form, one), *_neighbours(form, one)),
        )
    yield work.act(
        "chamfer",
        "chamfer the end to the core of the thread",
        machine=lathe,
        feature=one.name,
        size=thickness(form, one.frame.origin[0]),
        end=end,
        tags=tags,
    )
    yield _die(work, form, one, end, tags)


def _die(work: Work, form: FormFact, one: Located, end: str, tags: tuple[str, ...]) -> Act:
    """The die over a thread, in the tailstock holder where it is owned."""
    thread = one.note.split(",")[0].split("×")[-1].strip().removeprefix("thread ")
    dies = work.design.workshop.owns_die(thread)
    ending = f", {work.mm(one.length)} long" if one.length else ""
    return work.act(
        "die",
        f"cut the thread {thread}{ending}{_fitted(work, one)}{to_shoulder(work, form, one)}",
        feature=one.name,
        tool=f"{thread} die in the tailstock holder" if dies else f"{thread} die",
        amount=one.length or _UNTOLD_MM,
        end=end,
        tags=tags,
        meets=(_step_of(form, one), *_neighbours(form, one)),
        times=1,
    )


def _fitted(work: Work, one: Located) -> str:
    """How the die is set for the mate, as the half says it after its sizes."""
    half = work.half(one.name)
    how = half.how if half is not None else ""
    return f": {how}" if how.startswith(_OPENED) else ""


def _turned_to(work: Work, one: Located) -> str:
    """The size under a die, as `2.95 mm`: a little less than the thread's outside."""
    for half in work.halves.get(one.name, ()):
        if "turn to " in half.what:
            return half.what.split("turn to ")[1]
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{one.name}")
    return work.mm(fact.turn_to) if fact is not None and fact.turn_to else ""


def _neighbours(form: FormFact, one: Located) -> Iterator[str]:
    """Undercuts and cross cuts on the step that carries a thread."""
    for other in form.located:
        if (
            other.name != one.name
            and other.face != "axis"
            and _step_of(form, other) == _step_of(form, one)
        ):
            yield other.name


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
        meets=(_step_of(form, one),),
    )
    return replace(act, trouble=(*act.trouble, *wrong))


def _knurls(work: Work, pitch: float) -> str:
    owned = any(abs(k.pitch.mm - pitch) < 1e-6 for k in work.design.workshop.entry.cutters.knurls)
    return f"{work.mm(pitch)} knurls" if owned else f"{work.mm(pitch)} knurls, not owned"


def _groove(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Act:
    name = "undercut" if one.kind == "undercut" else "groove"
    half = work.half(one.name)
    what = half.what if half is not None else one.note
    cuts = _cuts(work, form, one)
    if cuts < len(one.spots):
        what = what.replace(f", {len(one.spots)} off", "")
    what += f"{_deep(work, one, what)}, {_from_end(work, form, one, end, cuts)}"
    tool = "grooving tool, its nose round" if "round at its bottom" in what else ""
    keeper = keeper_of(work, one, _step_of(form, one))
    if keeper is not None:
        at_mark = what.replace("its middle", "its middle at that mark,")
        what = f"{keeper.words}{at_mark} as drawn"
        tool = f"{tool or 'grooving tool'}, {keeper.tool}"
    return work.act(
        name,
        what,
        machine=lathe,
        feature=one.name,
        tool=tool,
        size=thickness(form, one.frame.origin[0]),
        end=end,
        tags=tags,
        meets=(_step_of(form, one),),
        times=cuts,
    )


def _deep(work: Work, one: Located, what: str) -> str:
    """How deep a groove is where its words tell neither depth nor floor; as it is drawn."""
    if "deep" in what or "⌀" in what or one.diameter is None:
        return ""
    return f", {work.mm(one.depth if one.depth is not None else one.diameter / 2)} deep"


def _from_end(work: Work, form: FormFact, one: Located, end: str, cuts: int) -> str:
    """Where the grooves of a grip lie, from the end that is worked: the middle of each.

    Of a groove for a clip the wall is told that the clip bears on.
    """
    if holds_clip(work.name, one, work.design):
        return _walls(work, form, one, end, cuts)
    places = sorted(form.size[0] - x if end == "right" else x for x, *_ in one.spots)
    told = " and ".join(work.mm(place) for place in places[:cuts])
    return f"{'its middle' if cuts == 1 else 'their middles'} {told} from this end"


def _walls(work: Work, form: FormFact, one: Located, end: str, cuts: int) -> str:
    """The outer walls of grooves for clips, from the end that is worked."""
    walls = (outer_wall(one, x, form.size[0]) for x, *_ in one.spots)
    places = sorted(form.size[0] - wall if end == "right" else wall for wall in walls)
    told = " and ".join(work.mm(round(place, 3)) for place in places[:cuts])
    its = "its outer wall" if cuts == 1 else "their outer walls"
    return f"{its} {told} from this end, any more width inwards of that: the clip bears there"


def _cuts(work: Work, form: FormFact, one: Located) -> int:
    """How many grooves are cut in one grip: one at each end of a bar that stays as bought."""
    step = next((s for s in form.stretches if s.name == _step_of(form, one)), None)
    is_bar = step is not None and not is_turned(step, work)
    return 1 if is_bar else len(one.spots)


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
        meets=tuple(_beside(form, one)),
    )
