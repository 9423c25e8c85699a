"""What locks a thread for good, to a task of its own: the last, when all is finished and has run.

Common practice, no source: what is locked does not come apart for a finish, nor for what is found
in running in. Until then it holds dry, nipped tight and watched.
"""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Assembly, Before, CautionLines, Design, Joint, Task, TaskKind, Tick
from binder_plugins.buildorder.closing import inside_of
from binder_plugins.buildorder.running_in import is_run_in
from binder_plugins.buildorder.stripping import coated, outermost
from binder_solid.filled import locking
from binder_solid.watched import slip_line, slips_unseen

_LAST = "what is locked does not come apart again"
_CURES = "Try the test once more before the compound sets, then leave it alone until it has cured."


def lock_tasks(design: Design) -> Iterator[Task]:
    """One for each whole in which something is locked."""
    for one in design.assemblies.values():
        joints = locked_in(one, design)
        if joints:
            names = ", ".join(joint.name for joint in joints)
            detail = f"{names}: the {_compounds(joints)}, as the sheet of the {one.title} tells"
            yield Task(_id(one), f"lock the {one.title}", TaskKind.JOIN, one.name, detail, one.at)


def lock_befores(design: Design) -> Iterator[Before]:
    """After the test of the whole, and after it is together for good where it gets a coat."""
    finished = {whole.name for item in coated(design) if (whole := outermost(item, design))}
    for one in design.assemblies.values():
        if not locked_in(one, design):
            continue
        tried = f"test {one.name}" if one.test else f"assemble {one.name}"
        last = f"close {one.name}" if one.name in finished else tried
        yield Before(last, _id(one), _LAST, is_must=True, at=one.at)


def locked_in(one: Assembly, design: Design) -> list[Joint]:
    """The joints that are locked in a whole, when it is together."""
    return [
        joint for joint in design.joints.values() if locking(joint) and _whole(joint, design) is one
    ]


def dry(joint: Joint, design: Design) -> str:
    """What is said behind a step that is done dry for now."""
    whole = _whole(joint, design) if locking(joint) else None
    if whole is None:
        return ""
    words = "; dry for now, nipped tight"
    if is_run_in(whole, design):
        unseen = slips_unseen(joint, design)
        words += (
            f", with {slip_line(joint, design)}: watch the line while it runs in, and nip it "
            f"tight again where the line parts{f'; {unseen}' if unseen else ''}"
        )
    return f"{words}; the {locking(joint)} goes on last of all ('lock the {whole.title}')"


def locked(one: Assembly, lines: CautionLines, design: Design) -> Iterator[Tick]:
    """The steps that lock what stands in a whole."""
    joints = locked_in(one, design)
    for joint in joints:
        words = (
            f"'{joint.name}': undo it, wash the oil off both threads, put on the "
            f"{locking(joint)}, and set it again as it was"
        )
        said = lines.at(("bond",), joint.items)
        yield Tick(f"{one.name} lock {joint.name}", (words,), (said,) if said else ())
    if joints:
        yield Tick(f"{one.name} lock cures", (_CURES,))


def when(one: Assembly, design: Design) -> str:
    """When they are done: after running in, test and coat, as far as there are any."""
    done = ["run in"] if is_run_in(one, design) else []
    done += ["tested"] if one.test else []
    done += ["finished", "together for good"] if f"close {one.name}" in design.tasks else []
    words = " and ".join((", ".join(done[:-1]), *done[-1:])[-min(len(done), 2) :])
    return f"Lock it last of all{f', when it is {words}' if words else ''}: {_LAST}."


def _id(one: Assembly) -> str:
    return f"lock {one.name}"


def _compounds(joints: list[Joint]) -> str:
    return " and the ".join(dict.fromkeys(locking(joint) for joint in joints))


def _whole(joint: Joint, design: Design) -> Assembly | None:
    """The outermost whole in which all halves of a joint stand."""
    inside = {one.name: inside_of(one, design) for one in design.assemblies.values()}
    holding = [name for name, items in inside.items() if set(joint.items) <= items]
    name = max(holding, key=lambda one: len(inside[one]), default="")
    return design.assemblies.get(name)
