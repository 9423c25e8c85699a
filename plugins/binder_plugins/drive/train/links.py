"""What joins the speeds of bodies: each link is a sum of speeds that comes to nothing."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder.api import Joint

Terms = tuple[tuple[str, Fraction], ...]


@dataclass(frozen=True, slots=True)
class Link:
    """One drive between bodies; `ways` are its alternatives, a step of its pulleys each.

    Each way is a list of (body, factor): the sum of factor times speed is nothing. `label` of
    a way is how the maker calls it, '' where there is one alone.
    """

    joint: Joint
    bodies: tuple[str, ...]
    ways: tuple[Terms, ...]
    labels: tuple[str, ...]


def ratio_link(
    joint: Joint, driver: str, driven: str, ratios: tuple[Fraction, ...], labels: tuple[str, ...]
) -> Link:
    """A link of two bodies: `ratios` are the speed of the driven over that of the driver."""
    ways = tuple(((driver, ratio), (driven, Fraction(-1))) for ratio in ratios)
    return Link(joint, (driver, driven), ways, labels)
