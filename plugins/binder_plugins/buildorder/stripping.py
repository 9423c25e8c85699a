"""Coats to tasks: what has gone together dry comes apart, is finished, and is closed for good."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Assembly,
    Before,
    Design,
    Fabrication,
    Joint,
    Part,
    Task,
    TaskKind,
    TreatmentFact,
)
from binder_plugins.buildorder.closing import inside_of, is_lasting
from binder_plugins.buildorder.cords_across import across, is_cord, put_on, reached, taken_off

_DRY = "it has gone together and run once: what is changed after painting is painted twice"
_LOOSE = "a coat goes on the loose part"
_HARD = "the coat is dry before a screw goes down on it"


def coated(design: Design) -> dict[str, TreatmentFact]:
    """The items that get a coat when all is made."""
    return {fact.subject: fact for fact in design.facts.all(TreatmentFact) if fact.last}


def outermost(item: str, design: Design) -> Assembly | None:
    """The whole in which an item is tried before it is finished, if it goes into any."""
    holding = [one for one in design.assemblies.values() if item in inside_of(one, design)]
    return max(holding, key=lambda one: len(inside_of(one, design)), default=None)


def opened(whole: Assembly, design: Design) -> list[Joint]:
    """The joints undone so that the items with a coat come out of a whole, in closing order.

    Belts, chains and ropes are the last, also those that only join what comes apart.
    """
    out = {item for item in coated(design) if outermost(item, design) is whole}
    out |= {piece for item in out for piece in _pieces(item, design)}
    found = [
        joint
        for joint in design.joints.values()
        if out & set(those := reached(joint))
        and not set(those) <= out
        and not is_lasting(joint, design)
    ]
    found += across(whole, found, design)
    return sorted(found, key=is_cord)


def _pieces(item: str, design: Design) -> Iterator[str]:
    fabrication = design.fabrications.get(item)
    if fabrication is not None:
        yield from (piece.item for piece in fabrication.pieces)


def finish_tasks(design: Design) -> Iterator[Task]:
    """Taking apart, a coat for each item, putting together for good."""
    wholes: dict[str, list[str]] = {}
    for item in coated(design):
        found = outermost(item, design)
        if found is not None:
            wholes.setdefault(found.name, []).append(_title(item, design))
    for name, titles in wholes.items():
        yield _strip(design.assemblies[name], titles, design)
    for item in coated(design):
        yield _finish(_made(item, design))
    for name in wholes:
        yield _close(design.assemblies[name], design)


def finish_befores(design: Design) -> Iterator[Before]:
    """What a coat waits for, and what waits for it to be dry."""
    for item in coated(design):
        one, whole = _made(item, design), outermost(item, design)
        finish = f"finish {item}"
        if whole is None:
            yield Before(f"make {item}", finish, "a coat is the last thing", at=one.at)
            continue
        tried = f"test {whole.name}" if whole.test else f"assemble {whole.name}"
        strip, close = f"strip {whole.name}", f"close {whole.name}"
        yield Before(tried, strip, _DRY, at=whole.at)
        yield Before(strip, finish, _LOOSE, at=one.at)
        yield Before(finish, close, _HARD, at=one.at)


def _strip(whole: Assembly, titles: list[str], design: Design) -> Task:
    far = f"as far as it frees {' and '.join(f'the {one}' for one in titles)}"
    detail = "; ".join(filter(None, (far, taken_off(opened(whole, design), design))))
    title = f"take the {whole.title} apart again"
    return Task(f"strip {whole.name}", title, TaskKind.STRIP, whole.name, detail, whole.at)


def _finish(one: Part | Fabrication) -> Task:
    title = f"finish the {one.title}"
    return Task(f"finish {one.name}", title, TaskKind.FINISH, one.name, one.finish, one.at)


def _close(whole: Assembly, design: Design) -> Task:
    test = whole.test and f"then once more: {whole.test}"
    return Task(
        f"close {whole.name}",
        f"put the {whole.title} together for good",
        TaskKind.ASSEMBLE,
        whole.name,
        "; ".join(filter(None, (put_on(opened(whole, design), design), test))),
        whole.at,
    )


def _made(name: str, design: Design) -> Part | Fabrication:
    part = design.parts.get(name)
    return part if part is not None else design.fabrications[name]


def _title(name: str, design: Design) -> str:
    return _made(name, design).title
