"""Does a shaft bear what sits on it: its bushes, how it bends, and how near it is to whirling."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from binder.api import Design, Diagnostic
from binder_plugins.drive import shaft_codes as codes
from binder_plugins.drive.carrying.facts import Bearing, CarriedFact, Sag
from binder_plugins.drive.duties.shown import at_most, two_figures
from binder_trade.fits.bearings import Wear
from binder_trade.fits.printed import figures
from binder_trade.shafting.critical import KEEP_AWAY
from binder_trade.shafting.twist import ALLOWED_MPA


def check_shafts(design: Design) -> Iterator[Diagnostic]:
    """Each shaft of the train whose bearings are known."""
    for fact in design.facts.all(CarriedFact):
        told: set[str] = set()
        for one in fact.bearings:
            # Two bushes of one joint are made alike: the worse is enough.
            if one.joint not in told:
                alike = [other for other in fact.bearings if other.joint == one.joint]
                told.add(one.joint)
                yield from _bush(alike, design)
                yield from _leans(alike, design)
        for sag in fact.sags:
            yield from _bends(sag, fact, design)
        yield from _slides(fact, design)
        yield from _thin(fact, design)
        yield from _whirls(fact, design)


def _bush(alike: list[Bearing], design: Design) -> Iterator[Diagnostic]:
    at = design.joints[alike[0].joint].at
    refused = next((one for one in alike if one.refusal), None)
    if refused is not None:
        yield codes.BUSH_TOO_FAST.at(at, f"'{refused.item}': {refused.refusal}")
        return
    worn = [(one, one.wear) for one in alike if one.wear is not None]
    if not worn:
        return
    one, wear = max(worn, key=lambda pair: _pressed(pair[1]))
    if _pressed(wear) > 1:
        long = one.long * _pressed(wear) * (2 if one.is_half else 1)
        where = "one end of " if one.is_half else ""
        yield codes.BUSH_OVERLOADED.at(
            at,
            f"{where}'{one.item}' carries {figures(one.load, 'N')}: {_limits(wear)}",
            help=f"a bush {ceil(long * 10) / 10:g} mm long, a thicker journal, or another bush "
            "metal",
        )
    quick = max((pair[1] for pair in worn), key=lambda wear: wear.speed_use or 0.0)
    if quick.speed_use is not None and quick.speed_use > 1:
        metal = quick.material
        yield codes.BUSH_TOO_FAST.at(
            at,
            f"the shaft runs at {quick.speed_ms:.2g} m/s in '{one.item}'; {metal.material} bears "
            f"{metal.speed_ms:g} m/s",
            help="a thinner journal, sintered bronze, or a ball race",
        )


def _pressed(wear: Wear) -> float:
    return max(wear.pressure_use or 0.0, wear.pv_use or 0.0)


def _limits(wear: Wear) -> str:
    """The limits that are passed, each with what there is of it."""
    metal = wear.material
    words = []
    if wear.pressure_use is not None and wear.pressure_use > 1:
        words.append(f"{figures(wear.pressure_mpa, 'N/mm²')}, {metal.pressure_mpa:g} is the most")
    if wear.pv_use is not None and wear.pv_use > 1:
        words.append(f"{figures(wear.pv, 'N/mm² × m/s')}, {metal.pv:g} is the most")
    return f"{' and '.join(words)} for {metal.material}"


def _leans(alike: list[Bearing], design: Design) -> Iterator[Diagnostic]:
    """It lies on both edges where its slope over the bush takes up all of the clearance.

    In a single bush every shaft does, by its play alone.
    """
    one = max(alike, key=lambda each: each.lean * each.long)
    if one.is_half or not one.clearance or one.lean * one.long <= one.clearance:
        return
    yield codes.SHAFT_LEANS.at(
        design.joints[one.joint].at,
        f"the shaft leans {one.lean * one.long:.3f} mm over the {one.long:g} mm of '{one.item}', "
        f"which gives it {one.clearance:.3f} mm",
        help=f"a bush {one.clearance / one.lean:.3g} mm long, a thicker shaft, or a freer fit",
    )


def _bends(sag: Sag, fact: CarriedFact, design: Design) -> Iterator[Diagnostic]:
    words, over = [], 1.0
    if sag.sag > sag.allowed:
        words.append(f"gives way {sag.sag:.3f} mm, {sag.allowed:.3f} mm is allowed")
        over = sag.sag / sag.allowed
    if sag.lean_allowed is not None and sag.lean > sag.lean_allowed:
        words.append(f"leans {sag.lean:.2g} rad, {sag.lean_allowed:g} is allowed")
        over = max(over, sag.lean / sag.lean_allowed)
    if words:
        # The stiffness of a round shaft goes with the fourth power of its diameter.
        yield codes.SHAFT_BENDS.at(
            design.joints[sag.joint].at,
            f"'{fact.shaft}' under '{sag.item}' {' and '.join(words)}",
            help=f"a shaft {over**0.25:.2g} times as thick, or bearings nearer to '{sag.item}'",
        )


def _slides(fact: CarriedFact, design: Design) -> Iterator[Diagnostic]:
    """A thrust towards an end where nothing on the shaft comes up against a bearing."""
    free = [one for one in fact.thrusts if one.by_what == ""]
    if not free:
        return
    ends = [("right", "left") if one.way > 0 else ("left", "right") for one in free]
    worst = max(free, key=lambda one: one.size)
    yield codes.THRUST_NOT_MET.at(
        design.joints[worst.joints[0]].at,
        f"it pushes '{fact.shaft}' along by {figures(worst.size, 'N')} towards its "
        f"{' or its '.join(end for end, _ in ends)} end, and nothing on it comes up against a "
        "bearing there",
        help=f"a shoulder or a pinned collar on the {' and on the '.join(at for _, at in ends)} "
        "of a bearing",
    )


def _thin(fact: CarriedFact, design: Design) -> Iterator[Diagnostic]:
    if fact.stress > ALLOWED_MPA:
        yield codes.SHAFT_TOO_THIN.at(
            design.parts[fact.shaft].at,
            f"torque and bending make {figures(fact.stress, 'N/mm²')} of shear in '{fact.shaft}'; "
            f"{ALLOWED_MPA:g} is usual",
            help=f"a shaft of {ceil(fact.least_mm * 10) / 10:g} mm, more at a keyway or cross hole",
        )


def _whirls(fact: CarriedFact, design: Design) -> Iterator[Diagnostic]:
    low, high = KEEP_AWAY
    for speed in fact.whirl.speeds_rpm if fact.whirl is not None else ():
        if low * speed <= fact.fastest <= high * speed:
            yield codes.SHAFT_WHIRLS.at(
                design.parts[fact.shaft].at,
                f"'{fact.shaft}' runs at {fact.fastest:.0f} r/min, and whirls at "
                f"{two_figures(speed)} r/min",
                help=f"run it below {at_most(low * speed)} r/min, thicken it, or bring its "
                "bearings together",
            )
            return
