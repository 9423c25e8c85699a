"""What a maker says of a fit, in any of three tongues, to the classes and clearances wanted."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from binder.api import Diagnostic, Joint, Size, Span, Words
from binder_plugins.fits import codes
from binder_plugins.fits.facts import Wish
from binder_plugins.fits.families import GAPPED, USUAL_DUTY
from binder_plugins.fits.kinds import FitEntry
from binder_trade.explained import NotDefined
from binder_trade.fits.bush import SINTERED_NIP_UM, SINTERED_SOURCE
from binder_trade.fits.drawn_rod import clearances
from binder_trade.fits.duties import choose
from binder_trade.fits.gaps import gap
from binder_trade.fits.given import Told, read_tool
from binder_trade.limits import name_of, read_fit

_CLASSES = re.compile(r"[A-Za-z]{1,3} ?[0-9]{1,3} ?[/ ] ?[A-Za-z]{1,3} ?[0-9]{1,3}")
_TOOLS = re.compile(
    r"ream|drill|bor(?:ed|ing)|lap|hon(?:ed|ing)|turned|ground|bought|rod|bar|steel"
)
# A gap that the maker wrote is kept to a quarter of itself: common practice, no source.
_GAP_PART = 0.25


@dataclass(frozen=True, slots=True)
class Wished:
    """A wish, and what the maker told of tools where he told it."""

    wish: Wish
    told: Told | None = None


def wish_of(
    joint: Joint, said: FitEntry, nominal_mm: float, *, sintered: bool
) -> Wished | Diagnostic:
    """The wish of a joint at a nominal size in mm, or why its words cannot be read."""
    if said.gap is not None and joint.kind in GAPPED:
        return Wished(_gap_wish(joint, said.gap))
    if said.fit is not None and _CLASSES.fullmatch(said.fit.strip()):
        return _class_wish(said.fit, nominal_mm)
    try:
        return _worded(joint, said, nominal_mm, sintered=sintered)
    except NotDefined as refused:
        at = _at(said.fit or said.duty, joint.at)
        return codes.FIT_UNREADABLE.at(at, refused.reason, help=refused.way_out)


def _worded(joint: Joint, said: FitEntry, nominal_mm: float, *, sintered: bool) -> Wished:
    """By tool, by duty, or by the kind of joint alone."""
    told = None
    words: Words | None = said.duty or said.fit
    if said.fit is not None and _TOOLS.search(said.fit.lower()):
        told, words = read_tool(said.fit), said.duty
    if joint.kind in GAPPED:
        return Wished(_kind_gap(joint), told)
    if words is None and sintered and joint.kind == "pressed":
        return Wished(_sintered(), told)
    duty = str(words) if words is not None else USUAL_DUTY.get(joint.kind, "located")
    return Wished(_duty_wish(duty, nominal_mm, words, joint.at), told)


def _duty_wish(duty: str, nominal_mm: float, words: Words | None, at: Span) -> Wish:
    choice = choose(duty, nominal_mm)
    least, most = clearances(nominal_mm, choice.hole, choice.shaft)
    return Wish(
        f"{choice.hole}/{choice.shaft}, {choice.duty}",
        choice.why,
        choice.source,
        least,
        most,
        choice.hole,
        choice.shaft,
        choice.duty,
        is_said=words is not None,
        at=_at(words, at),
    )


def _class_wish(text: Words, nominal_mm: float) -> Wished | Diagnostic:
    try:
        hole, shaft = read_fit(text.strip().replace(" ", ""))
        least, most = clearances(nominal_mm, hole, shaft)
        name = name_of(f"{hole}/{shaft}", nominal_mm)
    except NotDefined as refused:
        return codes.CLASS_UNDEFINED.at(text.span, refused.reason, help=refused.way_out)
    source = "ISO 286-1"
    says = f"{hole}/{shaft}, {name}"
    why = "the class is the maker's"
    wish = Wish(says, why, source, least, most, hole, shaft, is_said=True, is_class=True)
    return Wished(replace(wish, at=text.span))


def _gap_wish(joint: Joint, size: Size) -> Wish:
    amount = size.mm * 1000
    least, most = amount * (1 - _GAP_PART), amount * (1 + _GAP_PART)
    filler = gap(joint.kind).filler
    says = f"gap of {amount:.0f} µm for {filler}"
    why = "the gap is the maker's"
    return Wish(says, why, "the spec", least, most, is_said=True, at=size.span)


def _kind_gap(joint: Joint) -> Wish:
    wanted = gap(joint.kind)
    says = f"gap of {wanted.least_um:.0f} to {wanted.most_um:.0f} µm for {wanted.filler}"
    why = f"room for the {wanted.filler}, close enough to hold"
    return Wish(says, why, wanted.source, wanted.least_um, wanted.most_um, at=joint.at)


def _sintered() -> Wish:
    least, most = SINTERED_NIP_UM
    says = f"nip of {least:.0f} to {most:.0f} µm for a sintered bush"
    return Wish(says, "a porous bush gives: it needs more nip", SINTERED_SOURCE, -most, -least)


def _at(words: Words | None, otherwise: Span) -> Span:
    return words.span if words is not None else otherwise
