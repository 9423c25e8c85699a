"""The labels of sizes as sold to a series that expressions can choose from."""

from __future__ import annotations

from collections.abc import Iterable

from binder.parameters.environment import Series
from binder.parameters.expression import parse


def series_of(name: str, title: str, labels: Iterable[str], source: str) -> Series:
    """A series of literal sizes such as `1/4 in`, in any order.

    ExpressionFault for a label that is no size; ValueError where two are equal, or unlike.
    """
    sizes = []
    for label in labels:
        value = parse(label).value
        if value is None:
            raise ValueError(f"{label} in series {name} is no plain size")
        sizes.append((label, value))
    return Series(name, title, tuple(sorted(sizes, key=lambda size: size[1].amount)), source)
