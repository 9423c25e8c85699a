"""A graph without rings that takes one edge after another, or refuses it.

Only the stretch of the order between the two ends is searched and sorted anew. Source: the
limited search for dynamic topological sorting of Pearce and Kelly (2007).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence


class Growing:
    """An order of places, and its edges, of which `add` takes more."""

    def __init__(self, order: Sequence[int], pairs: Iterable[tuple[int, int]]) -> None:
        self.after: list[list[int]] = [[] for _ in order]
        self.before: list[list[int]] = [[] for _ in order]
        self._pairs: set[tuple[int, int]] = set()
        self._rank = [0] * len(order)
        for rank, place in enumerate(order):
            self._rank[place] = rank
        for earlier, later in pairs:
            self._link(earlier, later)

    def add(self, earlier: int, later: int) -> bool:
        """Takes an edge; False, and nothing is changed, where it would close a ring."""
        if (earlier, later) in self._pairs:
            return True
        if earlier == later:
            return False
        if self._rank[later] < self._rank[earlier] and not self._make_room(earlier, later):
            return False
        self._link(earlier, later)
        return True

    def _link(self, earlier: int, later: int) -> None:
        self._pairs.add((earlier, later))
        self.after[earlier].append(later)
        self.before[later].append(earlier)

    def _make_room(self, earlier: int, later: int) -> bool:
        """Moves what hangs on `later` behind what `earlier` hangs on; False for a ring."""
        low, high = self._rank[later], self._rank[earlier]
        ahead = self._reached(later, self.after, low, high)
        if earlier in ahead:
            return False
        behind = self._reached(earlier, self.before, low, high)
        moved = sorted(behind, key=self._rank.__getitem__)
        moved += sorted(ahead, key=self._rank.__getitem__)
        ranks = sorted(self._rank[one] for one in moved)
        for one, rank in zip(moved, ranks, strict=True):
            self._rank[one] = rank
        return True

    def _reached(self, start: int, edges: list[list[int]], low: int, high: int) -> set[int]:
        found = {start}
        waiting = [start]
        while waiting:
            for one in edges[waiting.pop()]:
                if one not in found and low <= self._rank[one] <= high:
                    found.add(one)
                    waiting.append(one)
        return found
