"""What two operations must share for a rule to speak of them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from binder_making.operation import Operation

Key = tuple[str, ...]
Keys = Callable[[Operation], tuple[Key, ...]]


def _feature(one: Operation) -> tuple[Key, ...]:
    return ((one.part, one.feature),) if one.feature else ()


def _neighbour(one: Operation) -> tuple[Key, ...]:
    names = (one.feature, *one.meets) if one.feature else one.meets
    return tuple((one.part, name) for name in dict.fromkeys(names))


def _end(one: Operation) -> tuple[Key, ...]:
    return ((one.part, one.end),) if one.end else ()


def _setup(one: Operation) -> tuple[Key, ...]:
    return ((one.machine, one.setup),) if one.setup else ()


def _part(one: Operation) -> tuple[Key, ...]:
    return ((one.part,),) if one.part else ()


def _joint(one: Operation) -> tuple[Key, ...]:
    return tuple((name,) for name in one.joints)


def _assembly(one: Operation) -> tuple[Key, ...]:
    return tuple((name,) for name in one.assemblies)


# `mate` shares a joint and is of another part; `neighbour` is another feature of the same part
# that this one breaks into or borders on.
SCOPES: Final[Mapping[str, Keys]] = {
    "feature": _feature,
    "neighbour": _neighbour,
    "end": _end,
    "setup": _setup,
    "part": _part,
    "joint": _joint,
    "mate": _joint,
    "assembly": _assembly,
}
