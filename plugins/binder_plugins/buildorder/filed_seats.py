"""Where a part goes on a seat that was filed along a longer one, told when it is fixed for good."""

from __future__ import annotations

from binder.api import Design, Joint, Position, filed_stretch, shown_length


def seated_at(joint: Joint, design: Design) -> str:
    """`the middle of the helve collar 44.7 mm from left of the helve`; '' where none is told.

    Where the seat's own length is told, its leaf marks where it begins and ends.
    """
    for end in joint.ends:
        part = design.parts.get(end.item)
        features = part.features if part is not None else ()
        seat = next((one for one in features if one.name == end.place), None)
        at = getattr(seat.entry, "at", None) if seat is not None else None
        other = next((design.item(item) for item in joint.items if item != end.item), None)
        if part is None or seat is None or seat.kind != "filed" or other is None:
            continue
        if isinstance(at, Position) and at.distance is not None:
            size = shown_length(at.distance.exact, design.units)
            lines = ", between its lines" if filed_stretch(seat) is not None else ""
            return f"the middle of the {other.title} {size} {at.rest} of the {part.title}{lines}"
    return ""
