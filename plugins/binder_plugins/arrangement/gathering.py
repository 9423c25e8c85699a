"""The model as it stands to pictures of it, drawn by the kernel and kept by content."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from binder.api import Design, Fact
from binder_solid.cache import own_store
from binder_solid.facts import SolidFact
from binder_solid.forms import Frame, Placed, Vector
from binder_solid.jobs import Gathering, Pictured
from binder_solid.placed import PlacedFact
from binder_solid.space import plus
from binder_solid.spread import answered
from binder_solid.views import Projection, View


@dataclass(frozen=True, slots=True)
class Shown:
    """A copy in a picture: where it stands there, and what is seen of it in each view."""

    copy: PlacedFact
    moved: Vector
    views: tuple[View, ...]

    @property
    def frame(self) -> Frame:
        """Where it stands in the picture."""
        frame = self.copy.frame
        return Frame(plus(frame.origin, self.moved), frame.z, frame.x)


@dataclass(frozen=True, slots=True)
class PictureFact(Fact):
    """Copies drawn together; the subject is `arrangement`, or `exploded NAME`.

    `lines` are the ways, from and to in the model, along which parts were moved apart.
    """

    shown: tuple[Shown, ...]
    lines: tuple[tuple[Vector, Vector], ...] = ()


def buildable(design: Design) -> tuple[PlacedFact, ...]:
    """The copies that the kernel can build: those of parts whose solid was made, and bought."""
    return tuple(
        fact
        for fact in design.facts.all(PlacedFact)
        if fact.item in design.bought or design.facts.about(SolidFact, fact.item) is not None
    )


def pictured(
    subject: str,
    copies: Sequence[tuple[PlacedFact, Vector]],
    sides: tuple[Projection, ...],
    lines: Iterable[tuple[Vector, Vector]] = (),
) -> PictureFact | None:
    """Copies, each moved so far, drawn together; None where the kernel cannot."""
    forms = tuple(
        Placed(
            fact.drawn,
            Frame(plus(fact.frame.origin, moved), fact.frame.z, fact.frame.x),
        )
        for fact, moved in copies
    )
    answer = answered(Gathering(forms, sides), own_store())
    if not isinstance(answer, Pictured):
        return None
    by_copy = zip(*answer.pictures, strict=True)
    shown = tuple(
        Shown(fact, moved, views) for (fact, moved), views in zip(copies, by_copy, strict=True)
    )
    return PictureFact(subject, shown, tuple(lines))
