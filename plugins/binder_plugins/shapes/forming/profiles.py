"""Turned profiles told by points to bodies about x."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Part, Size, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.outline import Node, fault_of, outline_of
from binder_plugins.shapes.forming.told import note_at
from binder_plugins.shapes.forming.turned import AXIS, round_body
from binder_plugins.shapes.vocabulary.points import Turn, bulge
from binder_plugins.shapes.vocabulary.wheels import Profile
from binder_solid.facts import Located, Stretch, Told
from binder_solid.forms import Revolved


def profile_nodes(shape: Profile) -> tuple[Node, ...]:
    """The profile as a closed outline of (along, radius), back along the axis.

    Points on the axis are left to the lines that close it.
    """
    nodes = [Node((one.at.mm, one.diameter.mm / 2), bulge(one)) for one in shape.points]
    first, last = shape.points[0], shape.points[-1]
    if last.diameter.exact > 0:
        nodes.append(Node((last.at.mm, 0.0)))
    if first.diameter.exact > 0:
        nodes.append(Node((first.at.mm, 0.0)))
    return tuple(nodes)


def profile_body(part: Part, shape: Profile, units: str) -> Body | None:
    """The profile turned about its axis, each point told along and across."""
    nodes = profile_nodes(shape)
    points = shape.points
    last = points[-1].at.exact
    is_bad = points[0].at.exact != 0 or any(
        one.diameter.exact < 0 or not 0 <= one.at.exact <= last for one in points
    )
    if is_bad or fault_of(nodes) is not None:
        return None
    widest = max(points, key=lambda one: one.diameter.exact)
    across = _most(shape)
    long = points[-1].at.mm
    stretch = Stretch(
        "outside", 0.0, long, across, across, 0, (f"{part.name}.outside", f"{part.name}.overall"),
        f"⌀{size_text(widest.diameter, units)}", size_text(points[-1].at, units),
    )  # fmt: skip
    form = Revolved(outline_of(nodes), AXIS)
    notes = tuple(_notes(part, shape, units))
    return round_body("profile", (form,), (stretch,), across / 2, notes)


def _most(shape: Profile) -> float:
    """The largest diameter, over arcs that bulge out."""
    from binder_solid.lines import least_and_most

    return 2 * least_and_most(outline_of(profile_nodes(shape)))[1][1]


def _notes(part: Part, shape: Profile, units: str) -> Iterator[Located]:
    for number, one in enumerate(shape.points, 1):
        key = f"{part.name}.points.{number}"
        radius = one.diameter.mm / 2
        told = [Told(f"{key}.diameter", "z", -radius, radius, f"⌀{size_text(one.diameter, units)}")]
        if number > 1:
            told.append(Told(f"{key}.at", "x", 0.0, one.at.mm, size_text(one.at, units)))
        words, field = _arc(one, units)
        yield note_at(
            part, f"point {number}", (one.at.mm, 0.0, radius), words,
            (f"points.{number}.{field}",) if field else (),
            told=tuple(one for one in told if one.start != one.end),
        )  # fmt: skip


def _arc(one: Turn, units: str) -> tuple[str, str]:
    for field in ("arc", "hollow"):
        size = getattr(one, field)
        if isinstance(size, Size):
            return f"R{size_text(size, units)}{' hollow' if field == 'hollow' else ''}", field
    return "", ""
