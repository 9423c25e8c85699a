"""A symmetric matrix to its eigenvalues, by Jacobi's rotations."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

_SWEEPS: Final = 60


def eigenvalues(matrix: Sequence[Sequence[float]]) -> tuple[float, ...]:
    """The eigenvalues of a symmetric matrix, in no order."""
    rows = [list(map(float, row)) for row in matrix]
    size = len(rows)
    largest = max((abs(each) for row in rows for each in row), default=0.0)
    for _ in range(_SWEEPS):
        if all(abs(rows[i][j]) <= 1e-14 * largest for i in range(size) for j in range(i)):
            break
        for i in range(size):
            for j in range(i + 1, size):
                _rotate(rows, i, j)
    return tuple(rows[i][i] for i in range(size))


def _rotate(rows: list[list[float]], i: int, j: int) -> None:
    if rows[i][j] == 0:
        return
    angle = math.atan2(2 * rows[i][j], rows[i][i] - rows[j][j]) / 2
    cos, sin = math.cos(angle), math.sin(angle)
    for row in rows:
        row[i], row[j] = cos * row[i] + sin * row[j], cos * row[j] - sin * row[i]
    upper, lower = rows[i], rows[j]
    rows[i] = [cos * a + sin * b for a, b in zip(upper, lower, strict=True)]
    rows[j] = [cos * b - sin * a for a, b in zip(upper, lower, strict=True)]
