"""Which part is placed next: of those that can be the one that waits for the fewest others."""

from __future__ import annotations

from collections.abc import Iterable

from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.model import Model
from binder_plugins.arrangement.words import references

Waiting = tuple[bool, int, int]


class Queue:
    """The parts that do not stand yet; those that can are kept, so that it stays quick."""

    def __init__(self, model: Model) -> None:
        self._model = model
        copies = [copy for every in model.copies.values() for copy in every]
        self._left = {copy.name: copy for copy in copies if copy.name not in model.standing}
        self._turn = {copy.name: turn for turn, copy in enumerate(copies)}
        self._near = {
            name: {one.other.name for one in model.meetings_with(copy)}
            for name, copy in self._left.items()
        }
        self._moved_by = self._dependants()
        self._ready: dict[str, Waiting] = {}
        self._look(self._left)

    def _dependants(self) -> dict[str, set[str]]:
        """For each copy the others for which it matters that it stands."""
        found: dict[str, set[str]] = {}
        for name, copy in self._left.items():
            items = references(self._model.said(copy))
            named = [one.name for item in items for one in self._model.copies.get(item, ())]
            rows = [one for row in self._model.rows_with(copy) for one in row.carriers]
            for other in (*self._near[name], *named, *rows):
                found.setdefault(other, set()).add(name)
        return found

    def _look(self, names: Iterable[str]) -> None:
        """Looks again whether some parts can be placed, and for how many each waits."""
        for name in names:
            copy = self._left.get(name)
            if copy is not None and self._can_stand(copy):
                near = self._near[name]
                left = sum(1 for one in near if one in self._left)
                self._ready[name] = (bool(near) and left == len(near), left, self._turn[name])

    def _can_stand(self, copy: Copy) -> bool:
        model = self._model
        needed = list(references(model.said(copy)))
        if any(not self._is_there(item) for item in needed):
            return False
        rows = model.rows_with(copy)
        if any(not row.is_carried(model.standing) for row in rows):
            return False
        is_met = any(name in model.standing for name in self._near[copy.name])
        return is_met or bool(needed) or any(copy.name != row.shaft.name for row in rows)

    def _is_there(self, item: str) -> bool:
        return any(one.name in self._model.standing for one in self._model.copies.get(item, ()))

    def pop(self) -> Copy | None:
        """The next part, None where no more can be placed."""
        if not self._ready:
            return None
        name = min(self._ready, key=lambda one: self._ready[one])
        del self._ready[name]
        return self._left.pop(name)

    def placed(self, copy: Copy) -> None:
        """Looks again at all that waited for a part which stands now."""
        self._look(sorted(self._moved_by.get(copy.name, ())))
