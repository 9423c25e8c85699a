"""Shafts to findings: does it stay in place, has it room, can it be put together."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Diagnostic,
    Joint,
    Located,
    Part,
    PlaceFact,
    Reference,
    ShaftFact,
    did_you_mean,
    shown_length,
)
from binder_plugins.shafts import codes
from binder_plugins.shafts.clipped import clipped_play
from binder_plugins.shafts.flush import check_flush
from binder_plugins.shafts.kinds import ShaftEntry
from binder_plugins.shafts.roles import FILLING, ends_of
from binder_plugins.shafts.shouldered import shouldered
from binder_plugins.shafts.stacking import bearings, entries


def check_shafts(design: Design) -> Iterator[Diagnostic]:
    """All findings about shafts and about what is slid on them."""
    for name, entry in entries(design).items():
        yield from _unknown(name, entry, design)
    for fact in design.facts.all(ShaftFact):
        yield from _located(fact)
        is_named = entries(design)[fact.subject].to_suit is not None
        yield from _float(fact, design.units, is_closed=is_named and _closes(fact))
        yield from _clipped(fact, design)
        yield from _between_shoulders(fact, design)
        yield from check_flush(fact, design)
    named = {str(end) for one in design.joints.values() for end in one.ends}
    for joint in design.joints.values():
        yield from _assembled(joint, design)
        yield from _stopped(joint, named, design)


def _unknown(name: str, entry: ShaftEntry, design: Design) -> Iterator[Diagnostic]:
    if name not in design.parts:
        yield codes.SHAFT_UNKNOWN.at(
            entry.along[0].span,
            f"there is no part '{name}' to be a shaft",
            help=did_you_mean(name, design.parts) or "call it by the name of its part",
        )
    known = [item.name for item in design.items()]
    for reference in entry.along:
        yield from _place_faults(name, reference, design)
        if design.item(reference.item) is None:
            yield codes.SHAFT_UNKNOWN.at(
                reference.span,
                f"there is no '{reference.item}'",
                help=did_you_mean(reference.item, known) or "write it under parts or bought",
            )
    if entry.to_suit is not None and entry.to_suit not in [one.item for one in entry.along]:
        yield codes.SHAFT_UNKNOWN.at(
            entry.to_suit.span,
            f"'{entry.to_suit}' is not in the row",
            help="name a piece that stands along the shaft",
        )


def _place_faults(name: str, reference: Reference, design: Design) -> Iterator[Diagnostic]:
    """A place that the piece does not have, or the shaft itself without a step of it."""
    if reference.item == name and not reference.place:
        yield codes.SHAFT_UNKNOWN.at(
            reference.span,
            f"'{name}' cannot stand along itself",
            help=f"name a step of it that is a shoulder, as {name}.head",
        )
    item = design.parts.get(reference.item)
    if item is None or not reference.place:
        return
    places = [one.place for one in design.facts.all(PlaceFact) if one.item == item.name]
    if reference.place not in places:
        yield codes.SHAFT_UNKNOWN.at(
            reference.span,
            f"'{item.name}' has no '{reference.place}'",
            help=did_you_mean(reference.place, places) or f"it has: {', '.join(sorted(places))}",
        )


def _located(fact: ShaftFact) -> Iterator[Diagnostic]:
    if not bearings(fact.pieces):
        yield codes.NOTHING_CARRIES.at(
            fact.at,
            f"nothing in the row carries '{fact.subject}'",
            help="say by a joint what it runs in",
        )
    elif fact.located is Located.NOT:
        yield codes.NOT_LOCATED.at(
            fact.at,
            f"'{fact.subject}' can slide {_free_way(fact)}",
            help="fix a collar, circlip or hub on it beside a bearing",
        )
    elif fact.located is Located.TWICE:
        yield codes.LOCATED_TWICE.at(
            fact.at,
            f"'{fact.subject}' is located between its bearings and outside them as well",
            help="leave the outer pieces out, or let what is between stand 1 mm clear",
        )


def _free_way(fact: ShaftFact) -> str:
    if not fact.stops:
        return "both ways"
    first = bearings(fact.pieces)[0]
    return "to the left" if fact.stops[0] < first else "one way"


def _float(fact: ShaftFact, units: str, *, is_closed: bool) -> Iterator[Diagnostic]:
    if fact.located is Located.INSIDE and fact.play is None:
        yield codes.APART_MISSING.at(
            fact.at,
            f"the row on '{fact.subject}' cannot be added up",
            help="write `apart:`, and the length of " + _unmeasured(fact),
        )
    if fact.play is None or is_closed:
        return
    play = shown_length(fact.play, units)
    wanted = f"{shown_length(fact.least, units)} to {shown_length(fact.most, units)}"
    middle = (fact.least + fact.most) / 2
    if fact.play <= 0:
        yield codes.NO_END_FLOAT.at(
            fact.at,
            f"'{fact.subject}' has {play} of end float",
            help=f"take {shown_length(middle - fact.play, units)} off a piece of the row",
        )
    elif not fact.least <= fact.play <= fact.most:
        change = shown_length(abs(middle - fact.play), units)
        way = "longer" if fact.play > middle else "shorter"
        yield codes.END_FLOAT_OFF.at(
            fact.at,
            f"'{fact.subject}' has {play} of end float, {wanted} is wanted",
            help=f"make the piece that closes the row {change} {way}",
        )


def _clipped(fact: ShaftFact, design: Design) -> Iterator[Diagnostic]:
    """The grooves of two clips against what stands between them."""
    play = clipped_play(fact, design)
    if play is None or fact.least <= play <= fact.most:
        return
    wanted = f"{shown_length(fact.least, design.units)} to {shown_length(fact.most, design.units)}"
    change = (fact.least + fact.most) / 2 - play
    way = "further apart" if change > 0 else "nearer to one another"
    code = codes.NO_END_FLOAT if play <= 0 else codes.END_FLOAT_OFF
    yield code.at(
        fact.at,
        f"the clips leave '{fact.subject}' {shown_length(play, design.units)} of end float, "
        f"{wanted} is wanted",
        help=f"cut their grooves {shown_length(abs(change), design.units)} {way}",
    )


def _between_shoulders(fact: ShaftFact, design: Design) -> Iterator[Diagnostic]:
    """A row that two shoulders of the shaft stop: nothing is left that could close it."""
    row = shouldered(fact, design)
    if row is None or fact.least <= row.play <= fact.most:
        return
    wanted = f"{shown_length(fact.least, design.units)} to {shown_length(fact.most, design.units)}"
    change = (fact.least + fact.most) / 2 - row.play
    way = "longer" if change > 0 else "shorter"
    code = codes.NO_END_FLOAT if row.play <= 0 else codes.END_FLOAT_OFF
    yield code.at(
        fact.at,
        f"'{fact.subject}' is {shown_length(row.between, design.units)} between the shoulders that "
        f"stop it, and {row.sizes} stand there: {shown_length(row.play, design.units)} of end "
        f"float, {wanted} is wanted",
        help=f"make the shaft {shown_length(abs(change), design.units)} {way} between them, or "
        "what stands there by as much the other way",
    )


def _closes(fact: ShaftFact) -> bool:
    """A piece is made last to the float that is wanted, and there is room for it."""
    if fact.to_suit is None or fact.play is None:
        return False
    length = fact.pieces[fact.to_suit].length
    return length is not None and length + fact.play - fact.most > 0


def _unmeasured(fact: ShaftFact) -> str:
    names = [piece.title for piece in fact.pieces if piece.length is None]
    return ", ".join(dict.fromkeys(names)) or "every piece"


def _stopped(joint: Joint, named: set[str], design: Design) -> Iterator[Diagnostic]:
    """Holes across a bore that a fixed shaft fills, which are not `named` by a joint."""
    for end in joint.ends if joint.kind in FILLING else ():
        bore, part = design.facts.about(PlaceFact, str(end)), design.parts.get(end.item)
        if (
            bore is None
            or part is None
            or bore.form != "hole"
            or not bore.is_through
            or bore.across
        ):
            continue
        for feature in part.features:
            name = f"{part.name}.{feature.name}"
            hole = design.facts.about(PlaceFact, name)
            if hole is None or not hole.across or not hole.is_through or hole.form != "hole":
                continue
            if not feature.implied_by and name not in named:
                yield codes.HOLE_STOPPED.at(
                    feature.at,
                    f"'{name}' goes across '{end}', which '{joint.name}' fills",
                    help="drill it through a flange, beside the bore",
                )


def _assembled(joint: Joint, design: Design) -> Iterator[Diagnostic]:
    for end in joint.ends:
        shaft = design.parts.get(end.item)
        if isinstance(shaft, Part) and ends_of(joint, shaft, design) == (False, False):
            yield codes.CANNOT_BE_ASSEMBLED.at(
                joint.at,
                f"'{joint.name}': the bore passes over neither end of '{shaft.name}'",
                help=f"thin one end of '{shaft.name}' below the bore, or split the piece",
            )
