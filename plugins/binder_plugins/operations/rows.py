"""A row of places that one tool goes through: the holes with their parts, and their sizes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Fabrication, FitFact, HalfFact, Size
from binder_plugins.operations.hole_kinds import HOLES
from binder_plugins.operations.work import Work
from binder_solid.facts import Located
from binder_solid.forms import Frame

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Feature, TogetherFact


@dataclass(frozen=True, slots=True)
class Hole:
    """One hole of a row: its part, where it lies, and how deep it is in mm."""

    work: Work
    one: Located
    deep: float

    @property
    def title(self) -> str:
        """`bore of the cheek bush`."""
        return f"{self.one.name.replace('_', ' ')} of the {self.work.item.title}"


def holes_of(line: Sequence[str], works: Mapping[str, Work]) -> Iterator[Hole]:
    """The holes of a row that are made here."""
    for place in line:
        item, _, name = place.partition(".")
        work = works.get(item)
        one = _located(work, name) if work is not None else None
        if work is not None and one is not None:
            yield Hole(work, one, _deep(work, one))


def _located(work: Work, name: str) -> Located | None:
    """Where a hole lies; of a fabrication, whose form is not known, what is told of it."""
    for one in work.form.located if work.form is not None else ():
        if one.name == name:
            return one
    feature = work.feature(name)
    if feature is None or not isinstance(work.item, Fabrication):
        return None
    return hole_in_words(work, feature)


def hole_in_words(work: Work, feature: Feature) -> Located | None:
    """A hole of a fabrication, whose place is told in words."""
    size = getattr(feature.entry, feature.kind, None)
    if feature.kind not in HOLES or not isinstance(size, Size):
        return None
    depth = getattr(feature.entry, "depth", None)
    deep = depth.mm if isinstance(depth, Size) else None
    return Located(
        feature.name,
        feature.kind,
        "top",
        Frame(),
        ((0.0, 0.0, 0.0),),
        (),
        f"{feature.kind} ⌀{work.mm(size.mm)}",
        diameter=size.mm,
        depth=deep,
        at=feature.at,
    )


def _deep(work: Work, one: Located) -> float:
    """The metal that a tool goes through; the hole's own width where it is not told."""
    if one.depth is not None:
        return one.depth
    if work.form is None:
        return one.diameter or 1.0
    for step in work.form.stretches if one.face == "across" else ():
        if step.start - 1e-6 <= one.frame.origin[0] <= step.end + 1e-6:
            return step.across
    return sum(abs(way) * size for way, size in zip(one.frame.z, work.form.size, strict=True))


def mate_of(fact: TogetherFact, hole: Hole) -> str:
    """The title of the shaft that runs in a hole; "" where it is not told."""
    design = hole.work.design
    place = f"{hole.work.name}.{hole.one.name}"
    for joint in fact.joints:
        fit = design.facts.about(FitFact, joint)
        if fit is not None and fit.hole == place:
            item = design.item(fit.shaft.partition(".")[0])
            return item.title if item is not None else ""
    return ""


def running_half(fact: TogetherFact, hole: Hole) -> HalfFact | None:
    """The half of a hole in the joints that a task serves."""
    found = hole.work.halves.get(hole.one.name, ())
    return next((one for one in found if one.joint in fact.joints), None)
