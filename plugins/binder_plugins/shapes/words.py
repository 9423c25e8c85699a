"""Features to a line for the bench."""

from __future__ import annotations

from binder.api import Feature, Position, Size, ThreadName, shown, size_text
from binder_plugins.shapes.features import Cut, Edge, Hole, Placed, Screwed

_VERB = {
    "drilled": "drill ⌀",
    "reamed": "ream ⌀",
    "bored": "bore ⌀",
    "counterbored": "counterbore ⌀",
    "countersunk": "countersink to ⌀",
    "spotfaced": "spotface ⌀",
    "tapped": "tap ",
    "screwed": "thread ",
    "chamfered": "chamfer ",
    "rounded": "round to R",
    "knurled": "knurl, pitch ",
    "grooved": "groove, width ",
    "undercut": "undercut, width ",
    "slotted": "slot, width ",
    "flatted": "flat, to ",
    "recessed": "recess ",
    "keywayed": "keyway, width ",
    "filed": "file: ",
}


def what(feature: Feature, units: str) -> str:
    """`drill ⌀3.1 mm, through`."""
    entry = feature.entry
    value = getattr(entry, feature.kind, "")
    size = _size(value, units)
    return f"{_VERB.get(feature.kind, feature.kind + ' ')}{size}{_extent(entry, units)}"


def _size(value: object, units: str) -> str:
    if isinstance(value, Size):
        return size_text(value, units)
    return value.text if isinstance(value, ThreadName) else str(value)


def _extent(entry: object, units: str) -> str:
    words: list[str] = []
    if isinstance(entry, (Hole, Cut)) and entry.depth is not None:
        depth = entry.depth
        words.append(f"{size_text(depth, units)} deep" if isinstance(depth, Size) else "through")
    if isinstance(entry, (Screwed, Cut)) and entry.length is not None:
        words.append(f"{size_text(entry.length, units)} long")
    if isinstance(entry, Edge) and entry.angle is not None:
        words.append(f"at {shown(entry.angle.quantity)}")
    return "".join(f", {word}" for word in words)


def _along(position: Position, units: str) -> str:
    if position.distance is None:
        return str(position.text)
    return f"{shown(position.distance.quantity, units)} {position.rest}"


def where(feature: Feature, units: str) -> str:
    """`across head, at middle; 4 off on 16 mm PCD`."""
    entry = feature.entry
    if not isinstance(entry, Placed):
        return ""
    words = [f"on {entry.on}"] if entry.on else []
    words += [f"across {entry.across}"] if entry.across else []
    words += [f"at {_along(entry.at, units)}"] if entry.at else []
    words += ["at each end"] if entry.each_end else []
    if entry.off:
        words.append(f"{entry.off} off" + (f" {entry.pattern}" if entry.pattern else ""))
    elif entry.pattern:
        words.append(str(entry.pattern))
    return ", ".join(words)
