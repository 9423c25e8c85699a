"""What is glued flat on a finished face, as a badge is: after the finish, and by a task of its own.

Common practice, no source: glued on before, it is in the way of the rubbing down and gets the coat
on itself; and glue on a coat holds no better than the coat.
"""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Before, Design, End, Joint, PlaceFact, Task, TaskKind
from binder_plugins.buildorder.stripping import coated, outermost

_KIND = "glued"
_WHY = "it would be in the way of the finish, and would get the coat on itself"
HOW = "the finish scraped off under it, inside its outline, or it holds no better than the coat; "


def coat_end(joint: Joint, design: Design) -> End | None:
    """The face with a coat that something else is glued on; None where there is none.

    What is glued on must hang on this joint alone: what carries more is wanted for the trial.
    """
    if joint.kind != _KIND:
        return None
    coats = coated(design)
    for end in joint.ends:
        place = design.facts.about(PlaceFact, str(end))
        others = [name for name in joint.items if name != end.item]
        if end.item in coats and place is not None and place.form == "face":
            is_free = all(_hangs_on(name, joint, design) for name in others)
            return end if others and is_free else None
    return None


def _hangs_on(name: str, joint: Joint, design: Design) -> bool:
    return all(one is joint for one in design.joints.values() if name in one.items)


def stick_tasks(design: Design) -> Iterator[Task]:
    """One for each such joint."""
    for joint in design.joints.values():
        end = coat_end(joint, design)
        if end is not None:
            title = f"glue on what the finish of the {_title(end.item, design)} waited for"
            yield Task(f"stick {joint.name}", title, TaskKind.JOIN, end.item, joint.name, joint.at)


def stick_befores(design: Design) -> Iterator[Before]:
    """After every coat of its items, and when all is together for good."""
    coats = coated(design)
    for joint in design.joints.values():
        end = coat_end(joint, design)
        if end is None:
            continue
        task, whole = f"stick {joint.name}", outermost(end.item, design)
        for name in joint.items:
            made = f"finish {name}" if name in coats else f"make {name}"
            if name in coats or name in design.parts or name in design.fabrications:
                yield Before(made, task, _WHY, is_must=True, at=joint.at)
        if whole is not None:
            yield Before(f"close {whole.name}", task, "it is the last thing", at=joint.at)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name
