"""All work of a model at once: its acts, the reasons between them, and the pieces they make."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_making.operation import Operation
    from binder_making.precedence import Edge
    from binder_plugins.operations.jobs import Piece


@dataclass(frozen=True, slots=True)
class Whole:
    """All operations with the reasons between them, and the piece that each belongs to."""

    operations: tuple[Operation, ...]
    reasons: tuple[Edge, ...]
    pieces: dict[str, Piece]
    piece_of: dict[str, str]

    @property
    def waits(self) -> dict[str, tuple[str, ...]]:
        """For each piece those that must be done before it, without what is only preferred."""
        found: dict[str, dict[str, None]] = {name: {} for name in self.pieces}
        for edge in self.reasons:
            one, other = self.piece_of[edge.before], self.piece_of[edge.after]
            if edge.is_must and one != other:
                found[other][one] = None
        return {name: tuple(earlier) for name, earlier in found.items()}
