"""What is filed to another part: is it there, has it a size, and can one of them be first."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from binder.api import Design, Diagnostic, Feature, PlaceFact, Size, shown_length
from binder_plugins.shapes import fitted_codes
from binder_plugins.shapes.fitted import Fitted, Unfound, fitted, span_of, target_of, told, words_of

_OPENINGS = re.compile(
    r"\b(?:holes?|slots?|openings?|windows?|mortises?|apertures?|eyes?|keyholes?|sockets?)\b"
)
# Words before it that make it another thing's: `round the hole`, `to the eye of the hook`.
_OTHERS = re.compile(
    r"\b(?:to|for|into|round|around|over|under|from|near|beside|of|enter|past|clear|in|at)\b"
)
_LONG = re.compile(r"\b([0-9]{1,6}(?:\.[0-9]{1,6})?) ?(mm|in) long\b")
# What may be filed out: a hole or slot that is there already, under the same words.
_CUT = ("drilled", "bored", "reamed", "slotted", "pocketed")


def check_fitted(design: Design) -> Iterator[Diagnostic]:
    """All findings about what is filed in words."""
    found = list(fitted(design))
    pairs = {(one.feature.owner, one.item): one for one in found if isinstance(one, Fitted)}
    for one in found:
        if isinstance(one, Unfound):
            yield _unfound(one)
        elif (one.item, one.feature.owner) in pairs:
            yield from _both(one, pairs[one.item, one.feature.owner])
        elif not told(one, design):
            yield _without_size(one, design)
        else:
            yield from _length(one, design)
    for feature in design.features():
        yield from _opening(feature, design)


def _unfound(one: Unfound) -> Diagnostic:
    return fitted_codes.FILED_TO_NOTHING.at(
        one.at,
        f"'{one.feature.name}' of '{one.feature.owner}' is filed '{one.said}': no part is "
        "called that",
        help="name the part that it must fit, as under parts; or give the size",
    )


def _both(one: Fitted, other: Fitted) -> Iterator[Diagnostic]:
    """Said once of the two, where the second is written."""
    here, there = span_of(one.feature), span_of(other.feature)
    if (here.file, here.line, here.column) < (there.file, there.line, there.column):
        return
    yield fitted_codes.FILED_TO_EACH_OTHER.at(
        span_of(one.feature),
        f"'{one.feature.owner}.{one.feature.name}' and "
        f"'{other.feature.owner}.{other.feature.name}' are each filed to the other",
        help="make one to a size, and file the other alone to it; the opening is best made first",
    )


def _without_size(one: Fitted, design: Design) -> Diagnostic:
    item = design.item(one.item)
    title = item.title if item is not None else one.item
    return fitted_codes.FILED_TO_NO_SIZE.at(
        span_of(one.feature),
        f"'{one.feature.name}' of '{one.feature.owner}' is filed to the {title}, which has no "
        "size there",
        help=f"give the {title} its size there; it is made first",
    )


def _length(one: Fitted, design: Design) -> Iterator[Diagnostic]:
    """How long it is against the depth of the hole that it goes into."""
    long, hole = _long(one.feature), design.facts.about(PlaceFact, f"{one.item}.{one.place}")
    target = target_of(one, design)
    if long is None or hole is None or target is None or target.kind not in _CUT:
        return
    deep = hole.depth if hole.depth is not None else hole.thickness
    is_blind = hole.depth is not None
    if deep is None or (long <= deep if is_blind else long >= deep or not _passes(one)):
        return
    size, own = (shown_length(mm, design.units) for mm in (deep, long))
    says = "no deeper than" if is_blind else "deep"
    yield fitted_codes.FILED_TOO_SHORT.at(
        span_of(one.feature),
        f"'{one.feature.name}' of '{one.feature.owner}' is {own} long, and "
        f"'{one.item}.{one.place}', which it goes into, is "
        f"{f'{says} {size}' if is_blind else f'{size} {says}'}",
        help=f"write `length: {size}`",
    )


def _passes(one: Fitted) -> bool:
    """Whether the other part must come on with all of its hole: it is to be filled, or is along."""
    at = getattr(one.feature.entry, "at", None)
    return at is not None or "fill" in words_of(one.feature).lower()


def _long(feature: Feature) -> Fraction | None:
    """How long it is filed, in mm: as its `length:` says, or its words."""
    size = getattr(feature.entry, "length", None)
    if isinstance(size, Size):
        return size.exact
    said = _LONG.search(words_of(feature))
    if said is None:
        return None
    return Fraction(said[1]) * (1 if said[2] == "mm" else Fraction("25.4"))


def _opening(feature: Feature, design: Design) -> Iterator[Diagnostic]:
    """An opening told in words, on no hole: a file needs a way in."""
    if feature.kind != "filed" or not _is_opening(words_of(feature).lower()):
        return
    owner = design.parts.get(feature.owner) or design.fabrications.get(feature.owner)
    others = owner.features if owner is not None else ()
    on = str(getattr(feature.entry, "on", "") or "")
    if any(one.name == on and one.kind in _CUT for one in others):
        return
    yield fitted_codes.OPENING_WITHOUT_START.at(
        span_of(feature),
        f"'{feature.name}' of '{feature.owner}' is an opening, and no hole lets a file in",
        help="write the hole that is drilled first, as `start: {drilled: 5 mm, depth: through}`, "
        f"and `on: start` for '{feature.name}'",
    )


def _is_opening(words: str) -> bool:
    found = _OPENINGS.search(words)
    return found is not None and not _OTHERS.search(words[: found.start()])
