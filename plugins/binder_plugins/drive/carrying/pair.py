"""What two wheels of a drive do to one another, whatever makes them."""

from __future__ import annotations

from dataclasses import dataclass
from math import hypot


@dataclass(frozen=True, slots=True)
class Pair:
    """A drive's force on its driven wheel: away from the driver, and along the driver's way.

    On the driver it is the same the other way round, but where the shafts cross: there it has
    its size `at_driver`. `along` are the thrusts on driver and driven wheel, `radii` where they
    act, in mm.
    """

    apart: float
    across: float
    at_driver: float | None = None
    along: tuple[float, float] = (0.0, 0.0)
    radii: tuple[float, float] = (0.0, 0.0)
    is_apart: bool = False

    @property
    def size(self) -> float:
        """How strong it is."""
        return hypot(self.apart, self.across)
