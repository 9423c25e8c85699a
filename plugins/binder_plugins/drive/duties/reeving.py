"""A rope to its way: over which sheaves it goes, where its end is made fast, how much to cut."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from math import ceil, dist, pi

from binder.api import Design, Diagnostic, Joint, PlaceFact, Size, did_you_mean
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.duties.duty import Rows
from binder_plugins.drive.duties.shown import size
from binder_plugins.drive.train.strength import drum_radius, rope_of, tackle_of
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import placed

# All common practice, no source: turns that stay on the drum, what an end takes to be knotted
# or whipped in mm, and to how much a length to cut is rounded up.
_STAY = 2
_KNOT_MM = 60.0
_ROUND_MM = 10.0


@dataclass(frozen=True, slots=True)
class Reeved:
    """What the page says of a rope's way, and what is to be remarked of it."""

    rows: Rows = ()
    findings: tuple[Diagnostic, ...] = ()
    cut: str = ""


def reeved(joint: Joint, design: Design) -> Reeved:
    """The way of a rope whose sheaves are named `over:`; nothing where they are not."""
    over = [str(one) for one in getattr(joint.entry, "over", None) or ()]
    end = getattr(joint.entry, "dead_end", None)
    if not over and end is None:
        return Reeved()
    wrong = _wrong(joint, [*over, *([str(end)] if end is not None else [])], len(over), design)
    if wrong is not None:
        return Reeved((), (wrong,))
    rows = [("The rope goes", _way(joint, over, end, design))]
    long = _long(joint, [*over, *([str(end)] if end is not None else [])], design)
    if long is None:
        return Reeved(tuple(rows))
    rows.append(("Cut of rope", long.words))
    return Reeved(tuple(rows), _too_short(joint, long.mm, design), size(long.mm, design))


def _wrong(joint: Joint, names: list[str], sheaves: int, design: Design) -> Diagnostic | None:
    unknown = next((one for one in names if design.item(one) is None), None)
    if unknown is not None:
        known = [one.name for one in design.items()]
        return codes.ROPE_WAY_WRONG.at(
            joint.at, f"there is no '{unknown}' on the way of '{joint.name}'",
            help=did_you_mean(unknown, known),
        )  # fmt: skip
    tackle = tackle_of(joint)
    wanted = tackle.leads + tackle.falls - 1
    if sheaves == wanted:
        return None
    lines = f"{tackle.falls} lines and {tackle.leads} on the way to the drum"
    return codes.ROPE_WAY_WRONG.at(
        joint.at, f"'{joint.name}' goes over {sheaves} sheaves; {lines} want {wanted}",
        help="name every sheave from the drum on, one that it passes twice twice",
    )  # fmt: skip


def _way(joint: Joint, over: list[str], end: object, design: Design) -> str:
    """`from the drum of the barrel over the head sheave, ..., its end made fast to the jib`."""
    titles = [_title(one, design) for one in over]
    legs = "".join(
        f", {'over' if n % 2 == 0 else 'round'} the {one}" for n, one in enumerate(titles)
    )
    last = f", its end made fast to the {_title(str(end), design)}" if end is not None else ""
    place = joint.ends[0].place.replace("_", " ")
    drum = f"the {place} of the " if place else "the "
    return f"from {drum}{_title(joint.ends[0].item, design)}{legs}{last}"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name


@dataclass(frozen=True, slots=True)
class _Long:
    mm: float
    words: str


def _long(joint: Joint, names: list[str], design: Design) -> _Long | None:
    """Along its way as the model is put together, with the lift, what stays on, and the knots."""
    radius, rope = drum_radius(joint, design), rope_of(joint, design)
    spots = _spots([joint.ends[0].item, *names], design)
    if radius is None or not rope or not spots:
        return None
    straight = sum(dist(a, b) for a, b in pairwise(spots))
    height = getattr(joint.entry, "height", None)
    lift = height.mm * tackle_of(joint).falls if isinstance(height, Size) else 0.0
    stays, bends = _STAY * 2 * pi * radius, sum(_half_round(one, design) for one in names)
    parts = {
        "its way as drawn": straight + bends,
        "the lift, in all lines": lift,
        f"{_STAY} turns that stay on": stays,
        "two knots": 2 * _KNOT_MM,
    }
    whole = ceil(sum(parts.values()) / _ROUND_MM) * _ROUND_MM
    sums = ", ".join(f"{size(mm, design)} {name}" for name, mm in parts.items() if mm)
    return _Long(whole, f"{size(whole, design)}: {sums}")


def _spots(names: list[str], design: Design) -> list[Vector]:
    """The middle of each on the way, of the copy that is nearest; none if one is not placed."""
    spots: list[Vector] = []
    for name in names:
        found = [_middle(one) for one in design.facts.all(PlacedFact) if one.item == name]
        if not found:
            return []
        spots.append(min(found, key=lambda one: dist(one, spots[-1])) if spots else found[0])
    return spots


def _middle(one: PlacedFact) -> Vector:
    least, most = one.corners
    x, y, z = ((a + b) / 2 for a, b in zip(least, most, strict=True))
    return placed((x, y, z), one.frame)


def _half_round(name: str, design: Design) -> float:
    """Half round a sheave, in mm; nothing for what is no round part."""
    across = [
        float(one.diameter)
        for one in design.facts.all(PlaceFact)
        if one.item == name and one.form == "step" and one.diameter is not None
    ]
    return pi / 2 * max(across) if across else 0.0


def _too_short(joint: Joint, wanted: float, design: Design) -> tuple[Diagnostic, ...]:
    bought = design.bought.get(joint.ends[-1].item)
    length = next((one for name, one in bought.sizes if name == "length"), None) if bought else None
    if length is None or length.mm >= wanted - 1e-6:
        return ()
    return (
        codes.ROPE_TOO_SHORT.at(
            length.span, f"'{joint.name}' wants {size(wanted, design)} of rope",
            help=f"write `length: {size(wanted, design)}`, or lift less high",
        ),
    )  # fmt: skip
