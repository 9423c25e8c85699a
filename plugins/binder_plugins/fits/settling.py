"""A joint to the fit that will be made of it: which half is fixed, and what the other becomes."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from binder.api import (
    Design,
    Diagnostic,
    Joint,
    Labelled,
    PlaceFact,
    Size,
    Workshop,
    shown_length,
)
from binder_plugins.fits import codes
from binder_plugins.fits.ends import Pair, pair_of, place_of
from binder_plugins.fits.facts import Half, MadeFit, Wish
from binder_plugins.fits.families import GAPPED, HUBS, PRESSED
from binder_plugins.fits.gauged import as_gauged
from binder_plugins.fits.kinds import FitEntry
from binder_plugins.fits.limiting import limited
from binder_plugins.fits.suiting import named, suit_of, suited
from binder_plugins.fits.ways import half_of, is_fixed, reamed
from binder_plugins.fits.wishes import Wished, wish_of
from binder_trade.explained import NotDefined
from binder_trade.fits.given import Told, Way

# How far the two sizes may be written apart and still be meant as a clearance or a nip: common
# practice, no source.
_LOOSE_PART, _LOOSE_MM = Fraction(6, 100), Fraction(1, 2)
_TIGHT_PART = Fraction(1, 100)
_ONE_IN_OTHER = ("runs_in", "slides", "swivels", "pressed", "shrunk")


def settle(joint: Joint, design: Design) -> MadeFit | Diagnostic | None:
    """The fit of a joint, or why there is none; nothing where no round halves meet."""
    entry = said_of(joint)
    if entry is None or joint.kind == "tapered":
        return None  # What another plugin joins, it sizes; cones are told by their own sums.
    pair = pair_of(joint, design)
    if pair is None:
        return _unpaired(joint, design)
    if joint.kind in HUBS and _is_sized_elsewhere(joint, pair, design):
        return None
    hole = half_of(pair.hole, pair.hole_place, "hole", design)
    shaft = half_of(pair.shaft, pair.shaft_place, "shaft", design)
    sizes = _sizes(joint, pair, hole, shaft, design.units)
    if entry.size is not None and not isinstance(sizes, Diagnostic):
        sizes = _said_apart(joint, entry.size, sizes, design.units)
    if isinstance(sizes, Diagnostic):
        return sizes
    nominal, written = sizes
    if not (shaft.is_fixed and joint.kind in GAPPED):
        hole = reamed(hole, nominal, design)
    sintered = shaft.material == "sintered-bronze"
    wished = wish_of(joint, entry, float(nominal), sintered=sintered)
    if isinstance(wished, Diagnostic):
        return wished
    return _made(joint, nominal, written, (hole, shaft), wished, design.workshop)


def _is_sized_elsewhere(joint: Joint, pair: Pair, design: Design) -> bool:
    """Whether the hole is the pin's own, or a fit is written of the same two places."""
    if joint.kind == "pinned" and _is_for_the_pin(pair.hole_place):
        return True
    ends = {str(end) for end in joint.ends}
    return any(
        isinstance(other.entry, FitEntry) and {str(end) for end in other.ends} == ends
        for other in design.joints.values()
        if other is not joint
    )


def _is_for_the_pin(hole: PlaceFact) -> bool:
    """A hole in a plate goes over the pin: a hub that goes over the shaft has metal to drill."""
    return hole.is_to_suit and not hole.on


def _unpaired(joint: Joint, design: Design) -> Diagnostic | None:
    """Why there is no round fit, where there should be one."""
    if joint.kind in HUBS:
        return None
    return _alike(joint, design) or (_untold(joint) if _waits(joint, design) else None)


def _said_apart(
    joint: Joint, size: Size, sizes: tuple[Fraction, Fraction | None], units: str
) -> tuple[Fraction, Fraction | None] | Diagnostic:
    """The sizes of the halves, or that the joint says another one."""
    nominal = sizes[0]
    if size.exact == nominal:
        return sizes
    return codes.FIT_HALVES_DIFFER.at(
        size.span,
        f"'{joint.name}' says {shown_length(size.exact, units)}, its halves are "
        f"{shown_length(nominal, units)}",
        help="leave `size:` out, or change the half that is wrong",
    )


def _alike(joint: Joint, design: Design) -> Diagnostic | None:
    """Two holes, or two shafts, where the one has to go into the other."""
    places = [place_of(end, design) for end in joint.ends]
    forms = {place.form for place in places if place is not None}
    if joint.kind not in _ONE_IN_OTHER or len(places) != len(joint.ends):
        return None
    if len(forms) != 1 or not forms <= {"hole", "step"} or None in places:
        return None
    return codes.FIT_HALVES_DIFFER.at(
        joint.ends[-1].at,
        f"both halves of '{joint.name}' are {'holes' if forms == {'hole'} else 'shafts'}",
        help="name the bore of the one and the step of the other",
    )


def said_of(joint: Joint) -> FitEntry | None:
    """What a joint says of its fit; a hub that is clamped or keyed may say its `fit:` too."""
    if isinstance(joint.entry, FitEntry):
        return joint.entry
    if joint.kind not in HUBS:
        return None
    return FitEntry.model_construct(fit=getattr(joint.entry, "fit", None))


def _sizes(
    joint: Joint, pair: Pair, hole: Half, shaft: Half, units: str
) -> tuple[Fraction, Fraction | None] | Diagnostic:
    """The nominal size, and the difference of the two where it was written."""
    inside = None if pair.face else pair.hole_place.diameter
    outside = pair.shaft_place.diameter
    known = [size for size in (outside, inside) if size is not None and size > 0]
    if not known:
        return _untold(joint)
    if len(known) == 1 or inside is None or outside is None or inside == outside:
        return known[0], None
    return _unlike(joint, inside, outside, hole, shaft, units)


def _waits(joint: Joint, design: Design) -> bool:
    """Whether a hole waits for its size from this joint, and nothing here tells it."""
    places = [place_of(end, design) for end in joint.ends]
    said = getattr(joint.entry, "size", None) is not None
    if joint.kind == "hinged" and any(one is not None and one.diameter for one in places):
        return False  # The pin that one eye is for is the pin of the other.
    return not said and any(place is not None and place.is_to_suit for place in places)


def _untold(joint: Joint) -> Diagnostic:
    return codes.FIT_SIZE_MISSING.at(
        joint.at,
        f"neither half of '{joint.name}' tells its size",
        help="write the size of one half, or `size:` here",
    )


def _unlike(
    joint: Joint, inside: Fraction, outside: Fraction, hole: Half, shaft: Half, units: str
) -> tuple[Fraction, Fraction | None] | Diagnostic:
    """Sizes that were written apart: a clearance, a nip, or a slip."""
    apart = inside - outside
    if joint.kind in PRESSED:
        is_meant = -_TIGHT_PART * outside <= apart < 0
    else:
        is_meant = 0 < apart <= max(_LOOSE_MM, _LOOSE_PART * outside)
    if is_meant:
        return outside, apart
    if (hole.way == "bought") != (shaft.way == "bought"):
        return (inside if hole.way == "bought" else outside), None
    holds = shown_length(inside, units)
    return codes.FIT_HALVES_DIFFER.at(
        hole.end.at,
        f"'{hole.end}' is {holds}, and '{shaft.end}' is {shown_length(outside, units)}",
        related=[Labelled(shaft.end.at, "this is the other half")],
        help=f"write {shown_length(outside, units)} for both, and let the joint find the rest",
    )


def _made(
    joint: Joint,
    nominal: Fraction,
    written: Fraction | None,
    halves: tuple[Half, Half],
    wished: Wished,
    workshop: Workshop,
) -> MadeFit | Diagnostic:
    """Both halves with their limits, hole first; which is made to the other."""
    hole, shaft = _retold(*halves, wished.told)
    wish = wished.wish if written is None else _as_written(wished.wish, float(written))
    suit = suit_of(joint, hole, shaft, apart=written is not None)
    apart = None if written is None else float(written) * 1000
    try:
        hole, shaft = limited(float(nominal), hole, shaft, wish, suit, apart or 0.0)
    except NotDefined as refused:
        at = wish.at if wish.is_said else joint.at
        return codes.CLASS_UNDEFINED.at(at, refused.reason, help=refused.way_out)
    hole = as_gauged(hole, float(nominal), workshop)
    made = MadeFit(joint.name, joint, nominal, hole, shaft, wish, suit, apart)
    # What the maker told of tool and bar is believed: nothing is eased behind his back.
    return named(made if wished.told is not None and not suit else suited(made))


def _retold(hole: Half, shaft: Half, told: Told | None) -> tuple[Half, Half]:
    """The halves by the maker's own words of tool and bar, where he told them."""
    if told is None:
        return hole, shaft
    if told.hole is not None:
        hole = _by_way(hole, told.hole)
    return hole, _by_way(shaft, told.shaft) if told.shaft is not None else shaft


def _by_way(half: Half, way: Way) -> Half:
    return replace(
        half, way=way.way, is_fixed=is_fixed(way), cls=way.cls, says=way.says, source=way.source
    )


def _as_written(wish: Wish, apart_mm: float) -> Wish:
    """The wish of sizes that were written apart: the difference, with the width of the fit."""
    spread = (wish.most_um - wish.least_um) / 2
    middle = apart_mm * 1000
    return replace(
        wish,
        says=f"{abs(middle):.0f} µm {'clearance' if middle > 0 else 'nip'}, as the sizes say",
        why="the two sizes were written so",
        source="the spec",
        least_um=middle - spread,
        most_um=middle + spread,
        hole="",
        shaft="",
    )
