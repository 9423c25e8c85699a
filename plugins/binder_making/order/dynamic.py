"""A graph without rings that takes one edge after another, or refuses it.

Only the stretch of the order between the two ends is searched and sorted anew. Source: the
limited search for dynamic topological sorting of Pearce and Kelly (2007).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

# Places in the order in which they came, each once.
Row = dict[int, None]


class Growing:
    """A graph in rows, and an order of its places that keeps it; `add` puts more into the rows."""

    def __init__(self, order: Sequence[int], after: list[Row], before: list[Row]) -> None:
        self._after = after
        self._before = before
        self._rank = [0] * len(order)
        for rank, place in enumerate(order):
            self._rank[place] = rank

    def add(self, earlier: int, later: int) -> bool:
        """Takes an edge; False, and nothing is changed, where it would close a ring."""
        if later in self._after[earlier]:
            return True
        if earlier == later:
            return False
        if self._rank[later] < self._rank[earlier] and not self._make_room(earlier, later):
            return False
        self._after[earlier][later] = None
        self._before[later][earlier] = None
        return True

    def _make_room(self, earlier: int, later: int) -> bool:
        """Moves what hangs on `later` behind what `earlier` hangs on; False for a ring."""
        low, high = self._rank[later], self._rank[earlier]
        ahead = self._reached(later, self._after, low, high)
        if earlier in ahead:
            return False
        behind = self._reached(earlier, self._before, low, high)
        moved = sorted(behind, key=self._rank.__getitem__)
        moved += sorted(ahead, key=self._rank.__getitem__)
        ranks = sorted(self._rank[one] for one in moved)
        for one, rank in zip(moved, ranks, strict=True):
            self._rank[one] = rank
        return True

    def _reached(self, start: int, rows: Sequence[Iterable[int]], low: int, high: int) -> set[int]:
        found = {start}
        waiting = [start]
        while waiting:
            for one in rows[waiting.pop()]:
                if one not in found and low <= self._rank[one] <= high:
                    found.add(one)
                    waiting.append(one)
        return found
