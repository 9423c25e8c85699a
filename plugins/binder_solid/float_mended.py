"""The end float of a row on a shaft, to what is done where it comes out too little or too much."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import JointFact, Located, Role, shown_length

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Design, Piece, ShaftFact

# What lets go by hand, so that a stop is set again without a cut.
_MOVED = frozenset({"clamped"})
_CLIPPED = "clipped"


def remedies(shaft: ShaftFact, design: Design) -> tuple[str, str]:
    """What is done where the float is under what is wanted, and where it is over.

    Between the stops of a shaft lie one bearing or all of them: a piece that stands between two
    bearings sets the float only where it is itself the stop. Common practice, no source.
    """
    shim = _shim(shaft, design)
    if shaft.located is Located.INSIDE:
        last = _made_last(shaft)
        name = f"the {_name(last)}"
        if _is_for_good(last, design):
            bearing = _name(shaft.pieces[_bearings(shaft)[0]])
            faced = f"face the inner side of a {bearing}: {name} is on for good by then"
            return faced, f"{shim} beside {name}"
        return f"face {name}", f"{shim} beside {name}"
    stops = [shaft.pieces[n] for n in shaft.stops]
    if any(_kind(one, shaft, design) in _MOVED for one in stops):
        return "move a stop out", "move a stop in"
    loose = _loose(shaft)
    if loose:
        name = f"the {_name(_shortest(loose))}"
        return f"face {name}", f"{shim} beside {name}"
    clipped = [one for one in stops if _kind(one, shaft, design) == _CLIPPED]
    if clipped:
        under = "a clip" if len(clipped) > 1 else "the clip"
        groove = "one groove" if len(clipped) > 1 else "the groove"
        return f"cut the outer wall of {groove} back by what is wanting", f"{shim} under {under}"
    name = f"the {_name(_shortest(stops))}"
    return f"face {name} where it stops the shaft", f"{shim} beside {name}"


def _is_for_good(piece: Piece, design: Design) -> bool:
    """Whether a piece is fixed on its shaft so that it does not come off to be faced."""
    fact = design.facts.about(JointFact, piece.joint)
    return fact is not None and fact.is_lasting


def _shim(shaft: ShaftFact, design: Design) -> str:
    middle = shown_length((shaft.least + shaft.most) / 2, design.units)
    return f"a shim washer, as thick as the float found less {middle},"


def _kind(stop: Piece, shaft: ShaftFact, design: Design) -> str:
    """The kind of joint that holds a stop; a groove of the shaft itself is that of its clip."""
    if stop.item != shaft.subject:
        joint = design.joints.get(stop.joint)
        return joint.kind if joint is not None else ""
    end = f"{stop.item}.{stop.place}"
    found = (
        one.kind
        for one in design.joints.values()
        if one.kind == _CLIPPED and end in [str(each) for each in one.ends]
    )
    return next(found, "")


def _made_last(shaft: ShaftFact) -> Piece:
    """The piece between two bearings that is faced: the one made to suit, a loose, a short one."""
    if shaft.to_suit is not None:
        return shaft.pieces[shaft.to_suit]
    places = _bearings(shaft)
    inside = shaft.pieces[places[0] + 1 : places[-1]]
    return _shortest([one for one in inside if one.role is Role.LOOSE] or inside)


def _loose(shaft: ShaftFact) -> list[Piece]:
    """What is loose between a stop and the bearing that it meets; none of it is the shaft's."""
    places, stops = set(_bearings(shaft)), shaft.stops
    found = []
    for stop in stops:
        for way in (-1, 1):
            row = []
            n = stop + way
            while 0 <= n < len(shaft.pieces) and shaft.pieces[n].role is Role.LOOSE:
                row.append(shaft.pieces[n])
                n += way
            if n in places and (_is_toward(stop, n, shaft)):
                found += row
    return found


def _is_toward(stop: int, bearing: int, shaft: ShaftFact) -> bool:
    """Whether another stop lies beyond the bearing: the bearing is held between the two."""
    return any((other > bearing) != (stop > bearing) for other in shaft.stops if other != stop)


def _bearings(shaft: ShaftFact) -> list[int]:
    return [n for n, piece in enumerate(shaft.pieces) if piece.role is Role.BEARING]


def _shortest(pieces: Sequence[Piece]) -> Piece:
    return min(pieces, key=lambda one: one.length or 0)


def _name(piece: Piece) -> str:
    return piece.title.partition(",")[0]
