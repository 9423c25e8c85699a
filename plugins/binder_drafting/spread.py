"""Places along a line to places that keep their distance."""

from __future__ import annotations

from collections.abc import Sequence


def spread(wanted: Sequence[float], apart: float) -> list[float]:
    """Values as near as may be to those wanted, which must rise, but no nearer to one another."""
    groups: list[tuple[float, int]] = []
    for n, value in enumerate(wanted):
        groups.append((value - n * apart, 1))
        while len(groups) > 1 and groups[-2][0] > groups[-1][0]:
            (one, many), (two, more) = groups[-2], groups[-1]
            groups[-2:] = [((one * many + two * more) / (many + more), many + more)]
    level = [value for value, many in groups for _ in range(many)]
    return [value + n * apart for n, value in enumerate(level)]
