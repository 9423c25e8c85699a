"""Joints to bodies: what is fixed together turns together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise

from binder.api import Design, Joint
from binder_plugins.drive.train.ties import Ties

# Fixings of the table that let a part turn on the other, or pull on it by a rope.
_LOOSE = frozenset(("tied", "clipped"))


@dataclass(frozen=True, slots=True)
class Body:
    """Items that turn as one: `name` is the shaft's, or that of the first item."""

    name: str
    title: str
    items: tuple[str, ...]


def bodies(design: Design) -> Mapping[str, Body]:
    """The body of every item that a joint names, by item.

    A wheel that is made twice, for two shafts, stands for the first of them.
    """
    ties = _joined(design)
    for name in shared(design):
        _part(ties, name, design)
    place = {item.name: number for number, item in enumerate(design.items())}
    found: dict[str, Body] = {}
    for group in ties.groups():
        items = sorted(group, key=lambda name: place.get(name, len(place)))
        body = _body(tuple(items), design)
        found.update(dict.fromkeys(items, body))
    return found


def shared(design: Design) -> Mapping[str, tuple[str, ...]]:
    """What is made more than once and stands on several shafts, with these shafts."""
    ties = _joined(design)
    found = {}
    for item in design.items():
        if item.name in ties and (item.quantity or 1) > 1:
            shafts = tuple(
                next(one for one in group if _is_shaft(one, design))
                for group in _beyond(ties, item.name, design)
            )
            if len(shafts) > 1:
                found[item.name] = shafts
    return found


def _joined(design: Design) -> Ties:
    ties = Ties()
    for joint in design.joints.values():
        for item in joint.items:
            ties.put(item)
        if _fixes(joint):
            for one, other in pairwise(joint.items):
                ties.tie(one, other)
    return ties


def _beyond(ties: Ties, name: str, design: Design) -> list[list[str]]:
    """What holds together without the item and has a shaft in it, in the order of the joints."""
    groups = []
    for near in ties.beside(name):
        group = sorted(ties.group(near, without=name))
        if group not in groups and any(_is_shaft(one, design) for one in group):
            groups.append(group)
    return groups


def _part(ties: Ties, name: str, design: Design) -> None:
    """Leaves the item on the first of its shafts alone."""
    for group in _beyond(ties, name, design)[1:]:
        for near in group:
            ties.cut(name, near)


def _fixes(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    return meeting is not None and meeting.group == "fixing" and joint.kind not in _LOOSE


def _body(items: tuple[str, ...], design: Design) -> Body:
    listed = getattr(design.spec.written, "shafts", None) or {}
    name = next((one for one in items if one in listed), "")
    name = name or next((one for one in items if _is_called_shaft(one)), items[0])
    item = design.item(name)
    return Body(name, item.title if item is not None else name, items)


def _is_shaft(name: str, design: Design) -> bool:
    """Whether it is listed or called a shaft, or runs in a bearing itself."""
    listed = getattr(design.spec.written, "shafts", None) or {}
    runs = any(
        joint.kind == "runs_in" and joint.ends[0].item == name for joint in design.joints.values()
    )
    return name in listed or _is_called_shaft(name) or runs


def _is_called_shaft(name: str) -> bool:
    return any(word in name for word in ("shaft", "axle", "spindle", "arbor", "arbour"))
