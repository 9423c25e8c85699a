"""What is filed to another part, in words: which part, which place of it, and who is first."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Before, Bought, Design, Feature, Item, Size, Span
from binder_plugins.shapes.words import what
from binder_plugins.shapes.written import written_rows
from binder_solid.rounded import RoundedFact

# Words that lead to what it must fit: `to the ratchet's tooth`, `to enter the hammer head`.
_LEADS = re.compile(
    r"\b(?:to|for|into|onto|over|against)"
    r"(?: (?P<act>fit over|fit|fill|suit|enter|match|meet|clear))?"
    r"(?: (?P<the>the|its|their))? (?P<rest>[^,;.]{1,80})"
)
_LOOSE = re.compile(r"\b(?:to (?:fit|suit|match)|fitted)\b *(?:$|[,;.])")
_OF = re.compile(r"^(?P<place>[a-z0-9 _]{1,40}?) of (?:the )?(?P<rest>.+)$")
# What a shape may be filed to that is no part; common practice, no source.
_NO_PART = re.compile(
    r"^(?:scribed |marked |punched |same )*(?:line|lines|mark|marks|drawing|shape|size|template|"
    r"outline|curve|radius|point|edge|edges|depth|length|width|thickness|middle|centre|"
    r"touch|look|looks|finish|hand|fingers?|grip|bend|root|ends?|rule|gauge)\b"
)


@dataclass(frozen=True, slots=True)
class Fitted:
    """A feature that is filed to an item, at a place of it where its words or a joint name one."""

    feature: Feature
    item: str
    place: str


@dataclass(frozen=True, slots=True)
class Unfound:
    """Words that ask for a fit and name no part: what they say, and where."""

    feature: Feature
    said: str
    at: Span


def words_of(feature: Feature) -> str:
    """What is told of filing in words: by the feature itself, or by a note that orders it."""
    said = str(getattr(feature.entry, "filed", "") or "")
    note = str(feature.entry.note or "")
    return said or (note.removeprefix("filed ") if note.startswith("filed ") else "")


def span_of(feature: Feature) -> Span:
    """Where those words stand in the spec."""
    text = getattr(feature.entry, "filed", None) or feature.entry.note
    span = getattr(text, "span", feature.at)
    return span if isinstance(span, Span) else feature.at


def fitted(design: Design) -> Iterator[Fitted | Unfound]:
    """Each feature that is filed to something, and each that does not say to what."""
    names = _names(design)
    for feature in design.features():
        words = words_of(feature).lower().replace("_", " ")
        found = list(_found(feature, words, names, design)) if words else []
        yield from [one for one in found if isinstance(one, Fitted)][:1] or found[:1]


def _found(
    feature: Feature, words: str, names: list[tuple[str, str]], design: Design
) -> Iterator[Fitted | Unfound]:
    for lead in _LEADS.finditer(words):
        rest = str(lead["rest"])
        of = _OF.match(rest)
        place, rest = (str(of["place"]), str(of["rest"])) if of else ("", rest)
        item, behind = _item_in(rest, feature.owner, names)
        if item:
            yield Fitted(feature, item, _place(feature, item, place or behind, design))
        elif (lead["act"] or lead["the"]) and not _is_known(rest, feature, design):
            yield Unfound(feature, str(lead[0]), span_of(feature))
    if _LOOSE.search(words):
        yield Unfound(feature, words, span_of(feature))


def _names(design: Design) -> list[tuple[str, str]]:
    """Titles and names of all items in small letters, the longest first."""
    found = {
        words.lower().replace("_", " "): item.name
        for item in design.items()
        for words in (item.name, item.title)
    }
    return sorted(found.items(), key=lambda one: -len(one[0]))


def _item_in(rest: str, owner: str, names: list[tuple[str, str]]) -> tuple[str, str]:
    """The item whose name the words begin with, and what they say behind it."""
    for words, item in names:
        if item != owner and re.match(rf"{re.escape(words)}(?:\b|$)", rest):
            behind = rest[len(words) :].removeprefix("'s").removeprefix("'").strip()
            return item, behind
    return "", ""


def _is_known(rest: str, feature: Feature, design: Design) -> bool:
    """Whether the words mean something of the part itself, or no part at all."""
    owner = design.parts.get(feature.owner) or design.fabrications.get(feature.owner)
    own = [one.name.replace("_", " ") for one in owner.features] if owner is not None else []
    own += [owner.title.lower(), owner.name.replace("_", " ")] if owner is not None else []
    return bool(_NO_PART.match(rest)) or any(rest.startswith(one) for one in own)


def _place(feature: Feature, item: str, words: str, design: Design) -> str:
    """The place of the item: the feature that the words name, else what a joint brings here."""
    other = design.parts.get(item) or design.fabrications.get(item)
    features = other.features if other is not None else ()
    for one in features:
        if words and words.startswith(one.name.replace("_", " ")):
            return one.name
    own = f"{feature.owner}.{feature.name}"
    for joint in design.joints.values():
        ends = {str(end) for end in joint.ends}
        for end in joint.ends:
            if own in ends and end.item == item and end.place:
                return end.place
    return words


def filed_later(design: Design) -> Iterator[Before]:
    """What another is filed to is made, or measured, before it."""
    found = [one for one in fitted(design) if isinstance(one, Fitted)]
    pairs = {(one.feature.owner, one.item) for one in found}
    for one in found:
        if (one.item, one.feature.owner) in pairs:
            continue  # each filed to the other: a finding asks which is first
        item = design.item(one.item)
        first = "measure" if isinstance(item, Bought) else "make"
        title = item.title if item is not None else one.item
        why = f"its {one.feature.name.replace('_', ' ')} is filed to the {title} as it is"
        later = f"make {one.feature.owner}"
        yield Before(f"{first} {one.item}", later, why, at=span_of(one.feature))


def fitted_of(owner: str, design: Design) -> Iterator[Fitted]:
    """What of one part is filed to others."""
    for one in fitted(design):
        if isinstance(one, Fitted) and one.feature.owner == owner:
            yield one


def fitting(one: Fitted, design: Design) -> str:
    """`hammer head, made first: eye: slot, width 8 mm, 10 mm long, through; tried in it`."""
    item = design.item(one.item)
    title = item.title if item is not None else one.item
    size = told(one, design)
    section = design.facts.about(RoundedFact, f"{one.feature.owner}.{one.feature.name}")
    so = f", so {', '.join(filter(None, section.told(design)))}" if section is not None else ""
    known = f" ({size})" if size else ""
    return f"{title}, made first{known}{so}; file it to that, and try it there"


def told(one: Fitted, design: Design) -> str:
    """The size that it is filed to, as the leaf tells it; '' where nothing tells one."""
    item = design.item(one.item)
    if isinstance(item, Bought):
        return "as measured"
    target = target_of(one, design)
    if target is not None:
        size = getattr(target.entry, target.kind, None)
        has_size = isinstance(size, Size)
        return f"{target.name.replace('_', ' ')}: {what(target, design.units)}" if has_size else ""
    return _shaped(item, design.units)


def target_of(one: Fitted, design: Design) -> Feature | None:
    """The feature to which it is filed."""
    other = design.parts.get(one.item) or design.fabrications.get(one.item)
    features = other.features if other is not None else ()
    return next((each for each in features if each.name == one.place), None)


def _shaped(item: Item | None, units: str) -> str:
    shape = getattr(item, "shape", None)
    if isinstance(shape, Size):
        return f"{item.title if item is not None else ''}, to its sizes"
    if isinstance(shape, list):
        return "its turned sizes"
    return ", ".join(f"{name.lower()} {text}" for name, text in written_rows(shape, units))
