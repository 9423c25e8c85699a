"""Joints to bodies: what is fixed together turns together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise

import networkx as nx

from binder.api import Design, Joint

# Fixings of the table that let a part turn on the other, or pull on it by a rope.
_LOOSE = frozenset(("tied", "clipped"))


@dataclass(frozen=True, slots=True)
class Body:
    """Items that turn as one: `name` is the shaft's, or that of the first item."""

    name: str
    title: str
    items: tuple[str, ...]


def bodies(design: Design) -> Mapping[str, Body]:
    """The body of every item that a joint names, by item."""
    graph: nx.Graph[str] = nx.Graph()
    for joint in design.joints.values():
        graph.add_nodes_from(joint.items)
        if _fixes(joint):
            graph.add_edges_from(pairwise(joint.items))
    place = {item.name: number for number, item in enumerate(design.items())}
    found: dict[str, Body] = {}
    for group in nx.connected_components(graph):
        items = sorted(group, key=lambda name: place.get(name, len(place)))
        body = _body(tuple(items), design)
        found.update(dict.fromkeys(items, body))
    return found


def _fixes(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    return meeting is not None and meeting.group == "fixing" and joint.kind not in _LOOSE


def _body(items: tuple[str, ...], design: Design) -> Body:
    listed = getattr(design.spec.written, "shafts", None) or {}
    name = next((one for one in items if one in listed), "")
    name = name or next((one for one in items if _is_shaft(one)), items[0])
    item = design.item(name)
    return Body(name, item.title if item is not None else name, items)


def _is_shaft(name: str) -> bool:
    return any(word in name for word in ("shaft", "axle", "spindle", "arbor", "arbour"))
