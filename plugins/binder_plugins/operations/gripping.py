"""The first grip of turned work: chuck or collet, how far it stands out, what carries it."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import round_holder, steady_for
from binder_plugins.operations.centre_holes import centre_hole
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.hole_kinds import HOLES
from binder_plugins.operations.reaching import SHORT, cut_reach
from binder_plugins.operations.spindle import passes
from binder_solid.facts import Located

if TYPE_CHECKING:
    from binder_plugins.operations.turning import Turning

# Common practice, no source: so many times its thickness work stands out by itself, and between
# chuck and centre; small work goes in collets.
SUPPORTED = 3.0
STEADIED = 10.0
COLLET_MM = 6.0
_JAW_MM = 10.0
# An end thinner than this holds no centre; common practice, no source.
_THIN_END_MM = 1.5


def first_grip(turning: Turning, out: float, bores: Sequence[Located]) -> Grip:
    """How the bar or piece is held for the first end, which stands out so far in mm when faced."""
    across = turning.work.stock_across or max(turning.form.size[1:])
    holder, kind = round_holder(
        turning.work.design.workshop, across, true=not turning.plan.is_parted or across <= COLLET_MM
    )
    if turning.work.stock_form == "board" or any(one.corners == 4 for one in turning.steps):
        holder, kind = _four_jaw(turning, holder, kind)
    if not holder:
        words = f"nothing here grips ⌀{across:g} mm, which '{turning.work.name}' is cut from"
        turning.trouble.append(("nothing-to-grip", words))
    support = _support(turning, out, bores)
    start, end = _jaws(turning, out)
    on = (
        "the bar"
        if turning.plan.is_parted or turning.work.stock_form in {"", "drawn rod"}
        else "the piece"
    )
    long, free = abs(end - start), turning.plan.free
    # The bar is set before it is faced.
    out += turning.work.facing
    return Grip(holder, kind, on, across, long, out, support, (start, end), free)


def _jaws(turning: Turning, out: float) -> tuple[float, float]:
    """Where the jaws are along the part; beyond its end where it is still on the bar."""
    if turning.plan.free == "right":
        edge = turning.length - out
        return (min(edge - _JAW_MM, 0.0), edge) if turning.plan.is_parted else (0.0, max(edge, 1.0))
    far = max(out + _JAW_MM, turning.length)
    return (
        (out, far) if turning.plan.is_parted else (min(out, turning.length - 1.0), turning.length)
    )


def _four_jaw(turning: Turning, holder: str, kind: str) -> tuple[str, str]:
    chucks = turning.work.design.workshop.entry.holding.chucks
    return next(((n, "four-jaw") for n, one in chucks.items() if one.jaws == 4), (holder, kind))


def _support(turning: Turning, out: float, bores: Sequence[Located]) -> str:
    """What carries the free end where it stands out far; finished thickness decides."""
    thin = min(
        (turning.steps[i].across for i in turning.plan.first), default=turning.work.stock_across
    )
    across = max(turning.work.stock_across, thin)
    far = turning.plan.reach if turning.plan.is_threaded else out
    ratio = max(far / across if across else 0.0, _slender(turning))
    is_cut = bool(turning.plan.first) or cut_reach(turning, turning.plan.free) > 0
    if ratio <= SUPPORTED or not is_cut:
        return ""
    name = turning.work.name
    if ratio > STEADIED and not steady_for(turning.work.design.workshop, across):
        words = f"'{name}' stands out {ratio:.0f} times its thickness; no steady takes it"
        turning.trouble.append(("needs-steady", words))
    end = end_across(turning, turning.plan.free)
    is_thin = end < _THIN_END_MM
    if not _tailstock(turning) or is_thin or centre_hole(turning, turning.plan.free, end) is None:
        if ratio > SUPPORTED + 1:
            why = (
                "and no tailstock is told that would carry its end"
                if not _tailstock(turning)
                else f"and its end, ⌀{end:g} mm, is too thin for a centre"
                if is_thin
                else "and a groove leaves its end no room for a centre"
            )
            words = (
                f"'{name}' stands {out:g} mm out of the jaws, {ratio:.1f} times its thickness, "
                f"{why}"
            )
            turning.trouble.append(("stands-out-too-far", words))
        return ""
    return (
        "tailstock centre"
        if not any(b.kind in HOLES for b in bores)
        else "tailstock centre, in the mouth of the bore"
    )


def ended_short(turning: Turning, grip: Grip, acts: Sequence[Act]) -> Iterator[Act]:
    """The facing and the centring of an end that its centre does not carry yet.

    Gripped short, with a diameter out, and drawn out to its length after: from so far out the end
    is thrown about. What stands between the two is cut in the same short grip. Where the stock
    does not go back through the spindle it stays as it is.
    """
    first, *others, centre = acts
    if not goes_short(turning, grip):
        yield from acts
        return
    mm, long = turning.work.mm, math.ceil(grip.stand_out)
    yield replace(first, what=f"with {mm(short_out(grip))} out of the jaws {first.what}")
    yield from others
    ending = f"; then draw it out to {mm(long)}, grip it, and bring the centre up"
    yield replace(centre, what=f"{centre.what}{ending}")


def goes_short(turning: Turning, grip: Grip) -> bool:
    """Whether an end is faced and centred short out of the grip before it is drawn out."""
    is_far = grip.stand_out > SUPPORTED * grip.across
    return is_far and grip.kind in {"chuck", "collet"} and passes(turning, grip.across)


def short_out(grip: Grip) -> float:
    """How far the end stands out for that, in mm."""
    return math.ceil(grip.across) + SHORT


def _slender(turning: Turning) -> float:
    """The worst length over thickness among what is turned down."""
    first = [turning.steps[i] for i in turning.plan.first]
    return max(((one.end - one.start) / one.across for one in first if one.across), default=0.0)


def is_carried(turning: Turning, grip: Grip, bores: Sequence[Located], *, is_firm: bool) -> bool:
    """Whether the second end, standing out far, is carried by a centre as the first one is."""
    out, thin = grip.stand_out, grip.across
    is_far = thin > 0 and (out > SUPPORTED * thin or not is_firm)
    is_far = is_far and grip.kind in {"chuck", "collet", "four-jaw"}
    end = end_across(turning, turning.plan.other)
    is_able = end >= _THIN_END_MM and centre_hole(turning, turning.plan.other, end) is not None
    return is_far and not bores and _tailstock(turning) and is_able


def end_across(turning: Turning, end: str) -> float:
    """How thick the finished part is at an end, in mm."""
    return turning.steps[-1].end_across if end == "right" else turning.steps[0].across


def _tailstock(turning: Turning) -> bool:
    found = turning.work.design.workshop.entry.machines.lathes.get(turning.lathe)
    return found is not None and found.tailstock is not None
