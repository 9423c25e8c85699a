"""A design to the signs that call for cautions."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    ActsFact,
    Assembly,
    Bought,
    Design,
    Fabrication,
    Item,
    MaterialFact,
    Part,
    SmallWork,
)
from binder_plugins.cautions.signs import Sign, SignKind, key_sign
from binder_plugins.cautions.words import phrases
from binder_solid.filled import done_as, locking

SCRAP_BOX = "scrap box"
# What a mill cuts in metal, and saw and chisel in wood: common practice, no source.
_CHISELLED = frozenset({"slotted", "pocketed", "stepped", "recessed", "bevelled"})
# What is polished in the lathe among what is made without a leaf, by its tools.
_ABRASIVE, _TURNED = "abrasive strip", "knife tool"
_WOODS = frozenset({"hardwood", "softwood", "plywood"})


def signs_of(design: Design) -> Iterator[Sign]:
    """All signs, in the order in which things are written."""
    yield from _of_model(design)
    # First, since their steps are told; what is only of a kind that may need it comes after them.
    for work in design.facts.all(SmallWork):
        if _ABRASIVE in work.tools and _TURNED in work.tools:
            yield key_sign(SignKind.WORDS, _ABRASIVE, work.subject)
    for part in design.parts.values():
        yield from _of_part(part, design)
    for fabrication in design.fabrications.values():
        yield from _of_fabrication(fabrication)
    for bought in design.bought.values():
        if bought.is_salvaged:
            yield key_sign(SignKind.SALVAGED, SCRAP_BOX, bought.name)
    for item in design.items():
        yield from (_said(SignKind.WORDS, text, item.name) for text in texts_of(item) if text)
    yield from _of_joints(design)
    for fact in design.facts.all(ActsFact):
        yield from (Sign(SignKind.ACT, act[0], fact.subject, frozenset(act)) for act in fact.acts)
    yield from _of_machines(design)


def texts_of(item: Item) -> tuple[str, ...]:
    """What is said of an item in plain words."""
    texts = (item.name, item.title, item.note)
    if isinstance(item, Part):
        return (*texts, item.material, str(item.stock.text) if item.stock else "")
    if isinstance(item, Bought):
        return (*texts, item.what)
    if isinstance(item, Assembly):
        return (*texts, *item.steps, item.test)
    return texts


def _said(kind: SignKind, text: str, item: str) -> Sign:
    return Sign(kind, text, item, phrases(text))


def _of_model(design: Design) -> Iterator[Sign]:
    head = design.spec.written.model
    for text in (head.title, head.about):
        if text:
            yield _said(SignKind.WORDS, text, "")
    if head.driven_by:
        yield _said(SignKind.DRIVEN_BY, head.driven_by, "")


def _of_part(part: Part, design: Design) -> Iterator[Sign]:
    if part.shape_kind:
        yield key_sign(SignKind.SHAPE, part.shape_kind, part.name)
    if part.finish:
        yield _said(SignKind.FINISH, part.finish, part.name)
    fact = design.facts.about(MaterialFact, part.name)
    by_hand = _CHISELLED if fact is not None and fact.group in _WOODS else frozenset()
    for kind in dict.fromkeys(feature.kind for feature in part.features):
        if kind not in by_hand:
            yield key_sign(SignKind.FEATURE, kind, part.name)
    if fact is None:
        yield Sign(SignKind.MATERIAL, part.material, part.name, frozenset())
        return
    for hazard in fact.hazards:
        yield key_sign(SignKind.HAZARD, hazard, part.name)


def _of_fabrication(one: Fabrication) -> Iterator[Sign]:
    yield key_sign(SignKind.JOINT, one.joined.replace("-", "_"), one.name)
    if one.finish:
        yield _said(SignKind.FINISH, one.finish, one.name)
    for kind in dict.fromkeys(feature.kind for feature in one.features):
        yield key_sign(SignKind.FEATURE, kind, one.name)


def _of_joints(design: Design) -> Iterator[Sign]:
    for joint in design.joints.values():
        for item in joint.items:
            yield key_sign(SignKind.JOINT, done_as(joint, design), item)
            yield _said(SignKind.WORDS, joint.name, item)
            if locked := locking(joint):
                yield _said(SignKind.WORDS, locked, item)


def _of_machines(design: Design) -> Iterator[Sign]:
    """Machines by name and note; a saw of any name counts as a power saw unless by hand."""
    machines = design.workshop.entry.machines
    for machine_list in (machines.lathes, machines.mills, machines.drilling_machines):
        for name, machine in machine_list.items():
            yield _said(SignKind.TOOL, f"{name}; {machine.note or ''}", "")
    for name, saw in machines.saws.items():
        if not saw.by_hand:
            yield _said(SignKind.TOOL, f"power saw; {name}; {saw.note or ''}", "")
    for name, words in machines.others.items():
        yield _said(SignKind.TOOL, f"{name}; {words}", "")
