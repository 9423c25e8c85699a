"""Features to a line for the bench."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Feature, Position, Size, ThreadName, shown, size_text
from binder_plugins.shapes.features import Placed

_VERB = {
    "drilled": "drill ⌀",
    "reamed": "ream ⌀",
    "bored": "bore ⌀",
    "counterbored": "counterbore ⌀",
    "countersunk": "countersink to ⌀",
    "spotfaced": "spotface ⌀",
    "centred": "centre ISO 6411 A ",
    "tapped": "tap ",
    "screwed": "thread ",
    "chamfered": "chamfer ",
    "rounded": "round to R",
    "bevelled": "bevel ",
    "knurled": "knurl, pitch ",
    "grooved": "groove, width ",
    "undercut": "undercut, width ",
    "slotted": "slot, width ",
    "t_slotted": "T-slot, neck ",
    "dovetailed": "dovetail, narrow ",
    "pocketed": "pocket ",
    "stepped": "step ",
    "bossed": "boss ⌀",
    "flatted": "flat, to ",
    "recessed": "recess ⌀",
    "keywayed": "keyway, width ",
    "filed": "file: ",
}
# Further sizes of a feature in the order in which they are read out.
_SIZES = (
    ("width", "× {}"),
    ("narrows_to", "tapering to ⌀{}"),
    ("depth", "{} deep"),
    ("length", "{} long"),
    ("height", "{} high"),
    ("head", "head {}"),
    ("head_depth", "head {} deep"),
    ("counterbore", "counterbored ⌀{}"),
    ("cutter", "Woodruff cutter ⌀{}"),
    ("corner", "corners R{}"),
)
_WORDS = (("side", "at the {}"), ("style", "{}"), ("runs", "{} the face"))
_ANGLES = (("angle", "at {}"), ("lean", "leaning {}"), ("clock", "{} from the top"))
_FLATS = {2: "two flats, ", 4: "square, ", 6: "hexagon, "}

_TIMES = re.compile(r"(.{1,120}), ([0-9]{1,3}) times")
_COUNTED = re.compile(r"([0-9]+) off(?:,? |$)")


def what(feature: Feature, units: str) -> str:
    """`drill ⌀3.1 mm, through`."""
    value = getattr(feature.entry, feature.kind, "")
    extent = "".join(
        word if word.startswith(" ") else f", {word}" for word in _extent(feature, units)
    )
    return f"{_verb(feature)}{_size(value, units)}{extent}"


def callout(feature: Feature, count: int, units: str) -> str:
    """`4 × drill ⌀3.4 mm, through, 12 mm apart`: how many, what, and how they are laid out.

    The count is said once, though the words of the pattern may hold it too.
    """
    entry = feature.entry
    words = what(feature, units)
    pattern = str(getattr(entry, "pattern", None) or "")
    several = _TIMES.fullmatch(pattern)
    if several is not None:
        pattern = f"{several[2]} sets of {several[1]}"
    said = _COUNTED.match(pattern)
    rest = pattern[said.end() :] if said else pattern
    is_both = getattr(entry, "each_end", False) or str(getattr(entry, "on", None) or "") == "ends"
    if is_both and count > 1:
        each = f"{count // 2 if count > 2 else 'one'} at each end"
        rest = f"{each}, {rest}" if rest else each
    return (
        f"{count} × {words}{f', {rest}' if rest else ''}"
        if count > 1
        else words + (f", {rest}" if rest else "")
    )


def _verb(feature: Feature) -> str:
    count = getattr(feature.entry, "off", None)
    if feature.kind == "flatted" and count in _FLATS:
        return _FLATS[count]
    return _VERB.get(feature.kind, f"{feature.kind} ")


def _size(value: object, units: str) -> str:
    if isinstance(value, Size):
        return size_text(value, units)
    return value.text if isinstance(value, ThreadName) else str(value)


def _extent(feature: Feature, units: str) -> Iterator[str]:
    entry = feature.entry
    for name, words in _SIZES:
        size = getattr(entry, name, None)
        if isinstance(size, Size):
            said = words.format(size_text(size, units))
            yield f" {said}" if said.startswith("×") else said
        elif size is not None and name == "depth":
            yield "through"
    for name, words in _WORDS:
        word = getattr(entry, name, None)
        if word:
            yield words.format(word)
    for name, words in _ANGLES:
        angle = getattr(entry, name, None)
        if isinstance(angle, Size):
            yield words.format(shown(angle.quantity))


def _along(position: Position, units: str, but: tuple[str, ...] = ()) -> str:
    return ", ".join(_one(place, units) for place in position.all if place.rest not in but)


def _one(place: Position, units: str) -> str:
    if place.distance is None:
        return str(place.text)
    return f"{shown(place.distance.quantity, units)} {place.rest}"


def _is_measured(at: Position | None) -> bool:
    return at is not None and any(one.distance is not None for one in at.all)


def where(feature: Feature, units: str, but: tuple[str, ...] = ()) -> str:
    """`across head, at middle; 4 off on 16 mm PCD`, without places that are told `but` from."""
    entry = feature.entry
    if not isinstance(entry, Placed):
        on, at = getattr(entry, "on", None), getattr(entry, "at", None)
        told = _along(at, units, but) if at else ""
        return ", ".join(filter(None, (f"on {on}" if on else "", f"at {told}" if told else "")))
    words = [f"on {entry.on}"] if entry.on else []
    words += [f"across {entry.across}"] if entry.across else []
    its = "its middle " if feature.kind == "filed" and _is_measured(entry.at) else ""
    told = _along(entry.at, units, but) if entry.at else ""
    words += [f"{its}at {told}"] if told else []
    words += ["at each end"] if entry.each_end else []
    pattern = str(entry.pattern or "")
    # The words of a pattern often say how many; saying it twice would read as a product.
    if entry.off and not _COUNTED.match(pattern):
        pattern = f"{entry.off} off {pattern}".strip()
    # What `at` tells of holes in a row is their middle, not the first of them.
    is_row = bool(entry.at) and "apart" in pattern and "times" not in pattern
    words += (
        [f"{pattern}, measured to the middle of them" if is_row else pattern] if pattern else []
    )
    return ", ".join(words)
