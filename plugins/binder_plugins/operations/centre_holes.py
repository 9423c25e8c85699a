"""The centre hole in an end that the tailstock carries: no wider and no deeper than it bears."""

from __future__ import annotations

from dataclasses import dataclass
from math import radians, tan
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located

# How much of an end its centre may take, and what is wide enough for any; common practice, no
# source.
_MOUTH, _WIDE = 0.6, 3.0
# Centre drills of form A: the pilot, and how long it is at the most, in mm (ISO 866, from memory).
_PILOTS = ((1.6, 2.8), (1.25, 2.2), (1.0, 1.9), (0.8, 1.5), (0.63, 1.2), (0.5, 1.0))
# The mouth of the whole drill in pilots (ISO 6411, from memory), and of the least cone that
# carries a light cut; common practice, no source.
_FULL, _LEAST = 2.12, 1.7
# Between the hole and a groove, in mm: before it, and round the hole where it runs under it.
# Common practice, no source.
_BEFORE, _ROUND = 0.2, 0.5
_PLAIN = frozenset({"grooved", "undercut"})


@dataclass(frozen=True, slots=True)
class CentreHole:
    """Its mouth in mm; `pilot` is 0 where any serves, else the drill that ends before `groove`."""

    mouth: float
    pilot: float = 0.0
    groove: str = ""


def centre_hole(turning: Turning, end: str, across: float) -> CentreHole | None:
    """The centre hole for an end so thick in mm; None where a groove leaves no room for any."""
    widest = min(_MOUTH * across, _WIDE)
    rooms = sorted(_rooms(turning, end, _pilot_of(widest)))
    if not rooms:
        return CentreHole(widest)
    room, groove = rooms[0]
    for pilot, long in _PILOTS:
        mouth = min(widest, _FULL * pilot, pilot + 2 * (room - long) * tan(radians(30)))
        if mouth >= _LEAST * pilot:
            return CentreHole(mouth, pilot, groove)
    return None


def centre_words(mm: Callable[[float], str], hole: CentreHole) -> str:
    """`, its mouth no wider than 1.8 mm`; and why no deeper."""
    small = f", its mouth no wider than {mm(round(hole.mouth, 1))}" if hole.mouth < _WIDE else ""
    if not hole.pilot:
        return small
    return f"{small} and no deeper, or it runs under the {hole.groove.replace('_', ' ')}"


def _pilot_of(mouth: float) -> tuple[float, float]:
    """The pilot and its length where a maker is free to choose: the largest with a whole cone."""
    return next((one for one in _PILOTS if _LEAST * one[0] <= mouth), _PILOTS[-1])


def _rooms(turning: Turning, end: str, usual: tuple[float, float]) -> Iterator[tuple[float, str]]:
    """How deep the hole may go before each groove that the usual one would run under."""
    pilot, long = usual
    for one in turning.around:
        if one.kind not in _PLAIN or one.diameter is None:
            continue
        for x, *_ in one.spots:
            far = turning.length - x if end == "right" else x
            room = far - one.diameter / 2 - _BEFORE
            is_under = room < long + (_FULL - 1) * pilot / 2 / tan(radians(30))
            if is_under and _wall(turning, one, x, pilot) < _ROUND:
                yield room, one.name


def _wall(turning: Turning, one: Located, x: float, pilot: float) -> float:
    """The metal between the floor of a groove and a pilot under it, in mm."""
    across = min((s.across for s in turning.steps if s.start <= x <= s.end), default=0.0)
    deep = one.depth if one.depth is not None else (one.diameter or 0.0) / 2
    return (across - 2 * deep - pilot) / 2
