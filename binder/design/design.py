"""The design: all that is to be made, and all that is known of it so far."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import chain
from typing import TypeVar

from binder.design.contribution import Contribution
from binder.design.facts import Facts
from binder.design.graph import Before, Task
from binder.design.items import Assembly, Bought, Departure, Fabrication, Feature, Item, Joint, Part
from binder.parameters import Working
from binder.spec.validate import Spec
from binder.workshop import Workshop

Answer = TypeVar("Answer")


@dataclass(frozen=True, slots=True)
class Design:
    """A model between spec and page; each step of a plugin gives a new one."""

    spec: Spec
    workshop: Workshop
    parts: Mapping[str, Part]
    bought: Mapping[str, Bought]
    fabrications: Mapping[str, Fabrication]
    assemblies: Mapping[str, Assembly]
    joints: Mapping[str, Joint]
    departures: tuple[Departure, ...] = ()
    facts: Facts = field(default_factory=Facts)
    tasks: Mapping[str, Task] = field(default_factory=dict)
    befores: tuple[Before, ...] = ()
    workings: Mapping[str, Working] = field(default_factory=dict)
    # The joints of each item; no step adds any, so they are sorted once.
    _joints_at: dict[str, list[Joint]] = field(
        default_factory=dict, init=False, compare=False, repr=False
    )
    # What `once` was asked already: a design never changes, so an answer stays right.
    _answers: dict[tuple[object, str], object] = field(
        default_factory=dict, init=False, compare=False, repr=False
    )

    @property
    def units(self) -> str:
        """The master system of the drawings: `mm` or `inch`."""
        return str(self.spec.written.model.units)

    @property
    def is_first_angle(self) -> bool:
        """Whether views stand as in first angle projection (ISO 5456-2), the usual one here."""
        return self.spec.written.model.projection != "third angle"

    def item(self, name: str) -> Item | None:
        """The part, bought item, fabrication or assembly of a name."""
        for table in (self.parts, self.bought, self.fabrications, self.assemblies):
            if name in table:
                return table[name]
        return None

    def items(self) -> Iterator[Item]:
        """Parts, bought items, fabrications and assemblies, each in the order written."""
        return chain(
            self.parts.values(),
            self.bought.values(),
            self.fabrications.values(),
            self.assemblies.values(),
        )

    def joints_at(self, item: str) -> Sequence[Joint]:
        """The joints in which an item meets others, in the order written."""
        if not self._joints_at:
            for joint in self.joints.values():
                for name in joint.items:
                    self._joints_at.setdefault(name, []).append(joint)
        return self._joints_at.get(item, ())

    def features_of(self, item: str) -> Sequence[Feature]:
        """The features of a part or a fabrication; none of anything else."""
        owner = self.parts.get(item) or self.fabrications.get(item)
        return owner.features if owner is not None else ()

    def features(self) -> Iterator[Feature]:
        """All features of parts and fabrications."""
        for part in self.parts.values():
            yield from part.features
        for fabrication in self.fabrications.values():
            yield from fabrication.features

    def once(self, reckon: Callable[[Design, str], Answer], name: str) -> Answer:
        """What a function says of a name in this design, worked out the first time it is asked."""
        key = (reckon, name)
        if key not in self._answers:
            self._answers[key] = reckon(self, name)
        return self._answers[key]  # type: ignore[return-value]

    def with_contribution(self, more: Contribution) -> Design:
        """This design and what a step adds to it."""
        return replace(
            self,
            facts=self.facts.plus(more.facts) if more.facts else self.facts,
            parts=_with_features(_shaped(self.parts, more.shapes), more.features),
            fabrications=_with_features(self.fabrications, more.features),
            bought={**self.bought, **{item.name: item for item in more.bought}},
            tasks={**self.tasks, **{task.id: task for task in more.tasks}},
            befores=(*self.befores, *more.befores),
            workings={**self.workings, **{working.id: working for working in more.workings}},
        )


def _shaped(parts: Mapping[str, Part], shapes: Mapping[str, object]) -> Mapping[str, Part]:
    if not shapes:
        return parts
    return {
        name: replace(part, shape=shapes[name]) if name in shapes else part
        for name, part in parts.items()
    }


Owner = TypeVar("Owner", Part, Fabrication)


def _with_features(owners: Mapping[str, Owner], features: Sequence[Feature]) -> Mapping[str, Owner]:
    added: dict[str, list[Feature]] = {}
    for feature in features:
        if feature.owner in owners:
            added.setdefault(feature.owner, []).append(feature)
    if not added:
        return owners
    return {name: _with(owner, added.get(name, ())) for name, owner in owners.items()}


def _with(owner: Owner, more: Sequence[Feature]) -> Owner:
    return replace(owner, features=_settled(owner.features, more)) if more else owner


def _settled(written: Sequence[Feature], more: Sequence[Feature]) -> tuple[Feature, ...]:
    """A feature of the same name takes the place of the one that was left to suit."""
    fresh = {feature.name: feature for feature in more}
    kept = tuple(fresh.pop(feature.name, feature) for feature in written)
    return (*kept, *fresh.values())
