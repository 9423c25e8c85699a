"""What is known of a seal: its two sides, and the groove, gasket or box that follows."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import End, Fact, Feature, Joint, PlaceFact
from binder_trade.seals import Gasket, Groove, LeadIn, StuffingBox


@dataclass(frozen=True, slots=True)
class Side:
    """One end of the joint: the written feature, its place, and the step it stands on."""

    end: End
    feature: Feature | None
    place: PlaceFact | None
    under: PlaceFact | None
    is_made: bool

    @property
    def across(self) -> float | None:
        """The diameter of the step or hole in mm, that of the step under a groove."""
        place = self.under if self.is_grooved else self.place
        known = place.diameter if place is not None else None
        return float(known) if known is not None else None

    @property
    def is_grooved(self) -> bool:
        """Whether a groove is written here."""
        return self.feature is not None and self.feature.kind == "grooved"

    @property
    def on(self) -> str:
        """The step or face that a feature of this end stands on."""
        return self.under.place if self.under is not None else self.end.place


@dataclass(frozen=True, slots=True)
class RingFact(Fact):
    """A joint sealed by an O-ring: which side has the groove, and the groove itself.

    `surface_mm` is the diameter of the surface that the groove is cut in, `mate_mm` that of
    the surface which the ring presses on.
    """

    joint: Joint
    grooved: Side
    mate: Side
    groove: Groove
    lead: LeadIn
    surface_mm: float
    mate_mm: float

    @property
    def depth_mm(self) -> float:
        """How deep the groove is cut from its own surface; mm, not above 0 where there is none."""
        sign = -1 if self.groove.place == "rod" else 1
        return sign * (self.surface_mm - self.groove.diameter_mm) / 2


@dataclass(frozen=True, slots=True)
class GasketFact(Fact):
    """A joint with a gasket between its faces."""

    joint: Joint
    gasket: Gasket


@dataclass(frozen=True, slots=True)
class BoxFact(Fact):
    """A rod that runs through packing."""

    joint: Joint
    rod: Side
    gland: Side
    box: StuffingBox
