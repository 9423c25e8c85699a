"""What is known of a dovetail slide: its two halves, its sizes, or why it has none."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import End, Fact, Feature, Joint, PlaceFact
from binder_plugins.slides.kinds import DovetailEntry, DovetailFeature
from binder_trade.slides import Dovetail, NotDefined, OverPins, Wanted


@dataclass(frozen=True, slots=True)
class Side:
    """One end of the joint: the feature that is written there, and what is known of the place."""

    end: End
    feature: Feature | None
    place: PlaceFact | None
    is_made: bool

    @property
    def entry(self) -> DovetailFeature | None:
        """The dovetail that is written there."""
        entry = self.feature.entry if self.feature is not None else None
        return entry if isinstance(entry, DovetailFeature) else None

    @property
    def is_inside(self) -> bool | None:
        """Whether a slot is written here, or a tail; None where neither can be told."""
        return self.entry.inside if self.entry is not None else None


@dataclass(frozen=True, slots=True)
class SlideFact(Fact):
    """A dovetail slide; the subject is its joint. Sizes are None where they cannot be told.

    `refusal` says why there are none although a width is known. `play_mm` is what two
    written halves leave between them.
    """

    joint: Joint
    entry: DovetailEntry
    male: Side
    female: Side
    wanted: Wanted | None = None
    slide: Dovetail | None = None
    pins: OverPins | None = None
    pin_name: str = ""
    refusal: NotDefined | None = None
    play_mm: float | None = None
