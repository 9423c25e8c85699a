"""What a recipe is printed with besides its own: words for its steps, and the size of its bar."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping


@dataclass(frozen=True, slots=True)
class Suited:
    """Words for the steps of a recipe, and its bar in mm: 0 where the recipe says it.

    It takes `minutes` more than the recipe says.
    """

    told: Mapping[str, str] = field(default_factory=dict)
    across: float = 0.0
    long: float = 0.0
    minutes: float = 0.0

    @property
    def bare(self) -> Mapping[str, int]:
        """What its own bar sets aside of the recipe: nothing more is wanted past that."""
        return {"over": 0} if self.across else {}
