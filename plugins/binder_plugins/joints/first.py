"""Which half of a joint is made first, and why: the one answer for every page and the order."""

from __future__ import annotations

from binder.api import Design, End, FitFact, HalfFact, Joint, Meeting

Fitted = frozenset[frozenset[str]]
_ANY = Meeting("meets", "fixing", "put {a} and {b} together")
_CHOSEN = "measured first, the other half is made to it"
_EASED = "bore first; the rod as bought is polished to it"
_AS_BOUGHT = "bore first; the rod goes into it as bought"
_OWN_SIZES = "each to its own size; the other is tried with it"
# The same of a bore that nobody cuts here: it is bought or salvaged.
_EASED_TO = "measure the bore; the rod as bought is polished to it"
_INTO = "measure the bore; the rod goes into it as bought"
_ROD = "the rod stays as bought: measure it, then the bore"


def fitted_in(design: Design) -> Fitted:
    """The parts that some joint fits to one another."""
    return frozenset(
        frozenset(joint.items)
        for joint in design.joints.values()
        if meeting_of(joint).group == "fit"
    )


def meeting_of(joint: Joint) -> Meeting:
    """How the halves of a joint meet."""
    return joint.entry.meeting or _ANY


def halves_of(design: Design) -> dict[str, list[HalfFact]]:
    """The halves that are known, by joint."""
    found: dict[str, list[HalfFact]] = {}
    for one in design.facts.all(HalfFact):
        found.setdefault(one.joint, []).append(one)
    return found


def first_half(joint: Joint, design: Design, fitted: Fitted, halves: list[HalfFact]) -> End | None:
    """The half that is made first, None where either may be.

    Where the plugin that sizes the joint says which half is the master, that one, since the
    other is made to it. Else the master that is named; what is not made here; the trade's
    usual one. A fixing beside a fit of the same two parts leaves the order to the fit.
    """
    told = _told(joint, halves)
    if told is not None:
        return told
    if joint.master is not None:
        return joint.master
    if design.facts.about(FitFact, joint.name) is not None:
        return None
    row = meeting_of(joint)
    if row.group == "fixing" and frozenset(joint.items) in fitted:
        return None
    return _usual(joint, row, design)


def _told(joint: Joint, halves: list[HalfFact]) -> End | None:
    """The end of the half that is the master, by its place, else by its item."""
    master = next((one for one in halves if one.is_master), None)
    if master is None:
        return None
    mine = [end for end in joint.ends if end.item == master.item]
    return next((end for end in mine if end.place == master.place), mine[0] if mine else None)


def _usual(joint: Joint, row: Meeting, design: Design) -> End | None:
    bought = [end for end in joint.ends if end.item in design.bought]
    if bought and row.first:
        return bought[0]
    is_free = row.through and joint.made == "to drawing"
    if not row.first or is_free:
        return None
    return joint.ends[row.first - 1]


def is_rod(halves: list[HalfFact]) -> bool:
    """Whether the half that comes first is a rod as bought: it can be measured before it is cut."""
    return any(one.is_master and "as bought" in one.what for one in halves)


def why_first(joint: Joint, first: End, halves: list[HalfFact], design: Design) -> str:
    """Why a half is made first, at most ten words: the trade's reason, or another's choice.

    Where neither half of a fit is made to the other as measured, no reason says so.
    """
    fit = design.facts.about(FitFact, joint.name)
    row = meeting_of(joint)
    if is_rod(halves):
        return _ROD
    has_rod = any("as bought" in one.what for one in halves)
    if fit is not None and not fit.suit and not has_rod:
        return _OWN_SIZES
    usual = joint.ends[row.first - 1] if row.first else None
    if usual is None or str(first) != str(usual):
        return _CHOSEN
    # No journal is turned to its bore where it is the rod itself.
    rods = [one for one in halves if not one.is_master and "as bought" in one.what]
    is_bought = first.item in design.bought
    if rods:
        is_eased = any(one.is_eased for one in rods)
        if is_bought:
            return _EASED_TO if is_eased else _INTO
        return _EASED if is_eased else _AS_BOUGHT
    return (row.why_bought or row.why) if is_bought else row.why
