"""Which half is made, or eased, to the measured other, and what limits it may still print."""

from __future__ import annotations

from dataclasses import replace

from binder.api import Joint
from binder_plugins.fits.facts import Half, MadeFit, Wish
from binder_plugins.fits.families import BORE_FIRST, GAPPED, PRESSED
from binder_trade.limits import limits

# What is polished off a rod with a stick and abrasive, on diameter, and the least room between
# limits that a bench lathe can keep: common practice, no source.
_EASED_UM = 50.0
_ROOM_UM = 5.0
_SAME_UM = 1e-6


def suit_of(joint: Joint, hole: Half, shaft: Half, *, apart: bool) -> str:
    """Which half is made to the measured other, '' where both come as they come.

    Sizes that were written `apart` are a clearance that the maker chose: a drilled hole and
    what goes through it keep them.
    """
    if hole.is_fixed and shaft.is_fixed:
        return ""
    is_loose = joint.kind not in (*GAPPED, *PRESSED) and hole.way == "drilled"
    if apart and is_loose:
        return ""
    if hole.is_fixed or shaft.is_fixed:
        return "shaft" if hole.is_fixed else "hole"
    if joint.entry.made == "to drawing":
        return ""
    return "hole" if usual_of(joint, hole, shaft) is shaft else "shaft"


def usual_of(joint: Joint, hole: Half, shaft: Half) -> Half | None:
    """The half that is named as master, else the trade's usual one; None where neither is.

    Where a bore comes first it is told by its shape, not by the order of the ends.
    """
    if joint.master is None and joint.kind in BORE_FIRST:
        return hole
    first = str(first_end(joint))
    return next((half for half in (hole, shaft) if str(half.end) == first), None)


def master_of(fit: MadeFit) -> Half | None:
    """The half that is made, or measured, first, as every page and the build order have it.

    What the other is made to suit; where neither suits, the one that is named or usual, and
    none where both come as they come and the maker names none.
    """
    if fit.suit:
        return fit.hole if fit.suit == "shaft" else fit.shaft
    if fit.joint.master is None and fit.hole.is_fixed and fit.shaft.is_fixed:
        return None
    return usual_of(fit.joint, fit.hole, fit.shaft)


def first_end(joint: Joint) -> object:
    """The end that is named as master, or the usual one by its position."""
    meeting = joint.entry.meeting
    if joint.master is not None:
        return joint.master
    return joint.ends[meeting.first - 1] if meeting is not None and meeting.first else None


def suited(fit: MadeFit) -> MadeFit:
    """A fit whose made half goes by the measured mate alone, and says how far from it.

    Where class and tool are closer than the wish, the wish is what they give.
    """
    if not fit.suit:
        return eased(fit)
    least = fit.hole.lower_um - fit.shaft.upper_um
    most = fit.hole.upper_um - fit.shaft.lower_um
    made, mate = (fit.shaft, fit.hole) if fit.suit == "shaft" else (fit.hole, fit.shaft)
    keeps = fit.wish.least_um - _SAME_UM <= least <= most <= fit.wish.most_um + _SAME_UM
    room = made.upper_um - made.lower_um
    if mate.way != "bought" and keeps and room >= (0 if made.cls else _ROOM_UM):
        return ruled(named(replace(fit, wish=replace(fit.wish, least_um=least, most_um=most))))
    return unlimited(fit)


def ruled(fit: MadeFit) -> MadeFit:
    """A fit whose made half lies where the sum with its measured mate puts it, in no class.

    Limits of its own beside that sum would condemn a half that fits its mate.
    """
    low, high, add = fit.hole.lower_um, fit.hole.upper_um, -fit.wanted_um
    if fit.suit == "shaft":
        made = replace(fit.shaft, cls="", is_ruled=True, lower_um=low + add, upper_um=high + add)
        return replace(fit, shaft=made)
    low, high = fit.shaft.lower_um - add, fit.shaft.upper_um - add
    return replace(fit, hole=replace(fit.hole, cls="", is_ruled=True, lower_um=low, upper_um=high))


def unlimited(fit: MadeFit) -> MadeFit:
    """A fit whose made half has no limits: it is shown against the middle of the mate's."""
    mate = fit.hole if fit.suit == "shaft" else fit.shaft
    middle = (mate.upper_um + mate.lower_um) / 2
    if fit.suit == "shaft":
        low, high = middle - fit.wish.most_um, middle - fit.wish.least_um
        made = replace(fit.shaft, cls="", has_limits=False, lower_um=low, upper_um=high)
        return replace(fit, shaft=made)
    low, high = middle + fit.wish.least_um, middle + fit.wish.most_um
    return replace(
        fit, hole=replace(fit.hole, cls="", has_limits=False, lower_um=low, upper_um=high)
    )


def eased(fit: MadeFit) -> MadeFit:
    """A rod as bought that may come too tight is eased to the measured bore."""
    hole, shaft, wish = fit.hole, fit.shaft, fit.wish
    is_rod = shaft.is_fixed and shaft.place.is_bought_rod and shaft.way != "bought"
    if not (is_rod and hole.is_fixed and hole.way != "bought") or fit.joint.kind in PRESSED:
        return fit
    wish = _by_hole(fit, wish)
    middle = (wish.least_um + wish.most_um) / 2
    is_tight = hole.lower_um - shaft.upper_um < wish.least_um - _SAME_UM
    if not is_tight or middle > _EASED_UM:
        return fit
    return replace(fit, suit="shaft", wish=wish)


def named(fit: MadeFit) -> MadeFit:
    """A fit that the duty chose, by the classes that are really made."""
    wish = fit.wish
    is_by_wish = bool(fit.suit) and not (fit.hole.has_limits and fit.shaft.has_limits)
    if not wish.hole or wish.is_class or is_by_wish:
        return fit
    hole = fit.hole.cls or wish.hole
    shaft = wish.shaft if fit.is_eased else fit.shaft.cls or wish.shaft
    says = wish.says.replace(f"{wish.hole}/{wish.shaft}", f"{hole}/{shaft}", 1)
    return replace(fit, wish=replace(wish, says=says))


def _by_hole(fit: MadeFit, wish: Wish) -> Wish:
    """The wish with the hole that the reamer gives, where that is the closer one."""
    if not wish.shaft or fit.written_um is not None:
        return wish
    made = limits(fit.mm, wish.shaft)
    least, most = fit.hole.lower_um - made.upper_um, fit.hole.upper_um - made.lower_um
    is_closer = wish.least_um <= least and most <= wish.most_um
    return replace(wish, least_um=least, most_um=most) if is_closer else wish
