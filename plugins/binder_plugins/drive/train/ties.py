"""What is fixed to what, item by item, and what hangs together by it."""

from __future__ import annotations

from collections.abc import Iterator


class Ties:
    """Items and the ties between two of them, in the order in which they came."""

    def __init__(self) -> None:
        self._beside: dict[str, dict[str, None]] = {}

    def __contains__(self, item: str) -> bool:
        return item in self._beside

    def put(self, item: str) -> None:
        """Takes an item in, tied to nothing yet."""
        self._beside.setdefault(item, {})

    def tie(self, one: str, other: str) -> None:
        """Ties two items that were taken in; nothing is tied to itself."""
        if one != other:
            self._beside[one][other] = None
            self._beside[other][one] = None

    def cut(self, one: str, other: str) -> None:
        """Takes away a tie, where there is one."""
        self._beside[one].pop(other, None)
        self._beside[other].pop(one, None)

    def beside(self, item: str) -> tuple[str, ...]:
        """What is tied to an item itself."""
        return tuple(self._beside[item])

    def group(self, item: str, without: str = "") -> list[str]:
        """What hangs together with an item, itself the first, one of them taken away."""
        found = {item: None}
        waiting = [item]
        while waiting:
            for near in self._beside[waiting.pop()]:
                if near not in found and near != without:
                    found[near] = None
                    waiting.append(near)
        return list(found)

    def groups(self) -> Iterator[list[str]]:
        """All that hangs together, each item in one group."""
        seen: set[str] = set()
        for item in self._beside:
            if item not in seen:
                group = self.group(item)
                seen.update(group)
                yield group
