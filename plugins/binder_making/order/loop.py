"""A ring of musts, which has no order."""

from __future__ import annotations

from dataclasses import dataclass

from binder_making.precedence import Edge


@dataclass(frozen=True, slots=True)
class Loop:
    """A ring of musts, each edge leading to the next and the last to the first."""

    edges: tuple[Edge, ...]

    @property
    def words(self) -> tuple[str, ...]:
        """One line for each edge: what comes before what, and why."""
        return tuple(f"{one.before} before {one.after}: {one.reason}" for one in self.edges)
