"""What is filed round to go into a hole of another part: the radius and where its centres lie."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Design, Fact, exact, shown_length


@dataclass(frozen=True, slots=True)
class RoundedFact(Fact):
    """The section of a shape that is filed to a slot with round ends, or to a round hole.

    The subject is the feature, `helve.seat`. Its two edges are round to `radius` about centres
    `apart` from each other on the middle line of its thickness, 0 where it is round all over; mm.
    """

    radius: float
    apart: float

    @property
    def across(self) -> float:
        """How wide it is over both round edges, in mm."""
        return self.apart + 2 * self.radius

    def told(self, design: Design) -> tuple[str, str]:
        """`R4.5 mm on both edges` and `their centres 3 mm apart`; `⌀6 mm` and '' of a round one."""
        radius, apart, across = (
            shown_length(exact(round(mm, 3)), design.units)
            for mm in (self.radius, self.apart, self.across)
        )
        if not self.apart:
            return f"⌀{across}", ""
        return f"R{radius} on both edges", f"their centres {apart} apart"
