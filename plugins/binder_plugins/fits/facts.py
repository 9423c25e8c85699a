"""What the plugin works out for its own checks and pages: both halves of a fit, and the wish."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder.api import NOWHERE, End, Fact, Joint, PlaceFact, Span


@dataclass(frozen=True, slots=True)
class Half:
    """One half of a fit: where it is, how it is made, and its deviations from nominal in µm.

    A fixed half comes as a tool or a bar leaves it; the other is made to it. `cls` is '' where
    a tool leaves no class. A half without limits is made to the measured mate alone; its
    deviations are then those beside the middle of the mate. One that `is_ruled` is made to the
    measured mate too, and its deviations are where that may lie. `material` is the id, '' where
    it is not known.
    """

    end: End
    place: PlaceFact
    title: str
    way: str
    is_fixed: bool
    material: str = ""
    group: str = ""
    cls: str = ""
    upper_um: float = 0.0
    lower_um: float = 0.0
    has_limits: bool = True
    is_ruled: bool = False
    says: str = ""
    source: str = ""


@dataclass(frozen=True, slots=True)
class Wish:
    """What the fit should be: classes, or a gap, and least and most clearance in µm.

    `is_said` is true where the maker said it by `fit:`, `duty:` or `gap:`; `at` is there.
    """

    says: str
    why: str
    source: str
    least_um: float
    most_um: float
    hole: str = ""
    shaft: str = ""
    duty: str = ""
    is_said: bool = False
    is_class: bool = False
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class MadeFit(Fact):
    """A fit as it will be made; the subject is the joint. `suit` is hole, shaft or ''.

    `written_um` is the difference of the two sizes where the maker wrote them unlike, and None
    where both have one nominal.
    """

    joint: Joint
    nominal: Fraction
    hole: Half
    shaft: Half
    wish: Wish
    suit: str
    written_um: float | None = None

    @property
    def is_eased(self) -> bool:
        """Whether the shaft is a rod as bought, polished to the measured bore."""
        return self.suit == "shaft" and self.shaft.is_fixed

    @property
    def comes_um(self) -> tuple[float, float]:
        """Least and most clearance with nothing made to the other; raw limits of both."""
        return (
            self.hole.lower_um - self.shaft.upper_um,
            self.hole.upper_um - self.shaft.lower_um,
        )

    @property
    def least_um(self) -> float:
        """The tightest that comes out: the wish where one half is made to the other."""
        return self.wish.least_um if self.suit else self.comes_um[0]

    @property
    def most_um(self) -> float:
        """The loosest that comes out; a rod that came small stays small."""
        if self.is_eased:
            return max(self.wish.most_um, self.comes_um[1])
        return self.wish.most_um if self.suit else self.comes_um[1]

    @property
    def wanted_um(self) -> float:
        """The clearance to aim at where one half is made to the other; of a rod, the least."""
        if self.is_eased:
            return self.wish.least_um
        return (self.wish.least_um + self.wish.most_um) / 2

    @property
    def mm(self) -> float:
        """The nominal size in mm."""
        return float(self.nominal)
