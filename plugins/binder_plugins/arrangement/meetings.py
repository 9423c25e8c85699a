"""Joints to meetings: which spot of which copy meets which spot of which other copy."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

from binder.api import Design, End, Joint
from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.places import Spot, implied_spots, spots_of

NOT_PLACED_BY = ("meshes", "belted", "tied", "clipped")
PATTERNED = ("screwed", "bolted", "studded", "dowelled", "buttoned", "riveted", "pinned")
Copies = Mapping[str, Sequence[Copy]]
Half = tuple[Copy, Spot]


@dataclass(frozen=True, slots=True)
class Meeting:
    """Two spots that a joint brings together.

    `holes` is the middle of the first copy's holes where the joint made none in the other.
    """

    joint: Joint
    one: Copy
    spot: Spot
    other: Copy
    other_spot: Spot
    holes: Spot | None = None

    def seen_from(self, name: str) -> Meeting:
        """The same meeting with the named copy first."""
        if self.one.name == name:
            return self
        return Meeting(self.joint, self.other, self.other_spot, self.one, self.spot, self.holes)


def meetings_of(design: Design, copies: Copies) -> tuple[Meeting, ...]:
    """All meetings of the model, in the order of its joints."""
    used: dict[tuple[str, str], int] = {}
    found: list[Meeting] = []
    for joint in design.joints.values():
        if joint.kind not in NOT_PLACED_BY:
            for one, other in combinations(joint.ends, 2):
                found += _of_ends(joint, one, other, design, copies, used)
                if joint.kind in PATTERNED:
                    found += _of_patterns(joint, one, other, design, copies)
    return tuple(found)


def _of_ends(
    joint: Joint,
    one: End,
    other: End,
    design: Design,
    copies: Copies,
    used: dict[tuple[str, str], int],
) -> Iterator[Meeting]:
    first, second = _one_to_a_hole(*(_halves(end, design, copies) for end in (one, other)))
    for here, there in _paired(first, second, (str(one), str(other)), used):
        spots = _as_faces(joint, here[1], there[1])
        if _can_meet(*spots):
            holes = _only_holes(joint, here[0], there[0], design)
            if holes is None and spots != (here[1], there[1]):
                holes = here[1] if here[1].sort == "socket" else there[1]
            yield Meeting(joint, here[0], spots[0], there[0], spots[1], holes)


def _one_to_a_hole(
    first: list[list[Half]], second: list[list[Half]]
) -> tuple[list[list[Half]], list[list[Half]]]:
    """Several plugs and a pattern of holes: each plug has a hole of its own, in their order."""
    if _are("plug", second) and _are("socket", first):
        second, first = _one_to_a_hole(second, first)
        return first, second
    if not (_are("plug", first) and _are("socket", second)):
        return first, second
    plugs = sum(len(spots) for spots in first)
    holes = [[(copy, one) for copy, spot in spots for one in spot.singly] for spots in second]
    is_short = sum(len(spots) for spots in second) < plugs <= sum(len(one) for one in holes)
    return first, holes if is_short else second


def _are(sort: str, halves: list[list[Half]]) -> bool:
    return bool(halves) and all(spot.sort == sort for spots in halves for _, spot in spots)


def _as_faces(joint: Joint, one: Spot, other: Spot) -> tuple[Spot, Spot]:
    """Holes that are screwed on a face lie on it with the face that they start from."""
    if joint.kind in PATTERNED and {one.sort, other.sort} == {"socket", "face"}:
        return replace(one, sort="face"), replace(other, sort="face")
    return one, other


def _only_holes(joint: Joint, one: Copy, other: Copy, design: Design) -> Spot | None:
    """The pattern that a joint made in one of two, where it made none in the other."""
    halves = [implied_spots(copy, joint.name, design) for copy in (one, other)]
    if bool(halves[0]) == bool(halves[1]):
        return None
    return (halves[0] or halves[1])[0]


def _can_meet(one: Spot, other: Spot) -> bool:
    """Two faces, two on one axis, or two of one slide; a screw through a face says no more."""
    sorts = {one.sort, other.sort}
    if sorts in ({"face"}, {"way"}):
        return True
    return sorts <= {"plug", "socket"} and "socket" in sorts


def _of_patterns(
    joint: Joint, one: End, other: End, design: Design, copies: Copies
) -> Iterator[Meeting]:
    """The holes that the joint itself made in both."""
    halves = [
        [
            [(copy, spot) for spot in implied_spots(copy, joint.name, design)]
            for copy in _copies_at(end, design, copies)
        ]
        for end in (one, other)
    ]
    for here, there in _paired(halves[0], halves[1], ("", ""), {}):
        yield Meeting(joint, *here, *there)


def _copies_at(end: End, design: Design, copies: Copies) -> list[Copy]:
    """The copies of an item; of a fabrication those of its pieces."""
    whole = design.fabrications.get(end.item)
    names = [piece.item for piece in whole.pieces] if whole is not None else [end.item]
    return [copy for name in names for copy in copies.get(name, ())]


def _halves(end: End, design: Design, copies: Copies) -> list[list[Half]]:
    """For each copy its spots at the end of a joint."""
    found = [
        [(copy, spot) for spot in spots_of(copy, end.place, design)]
        for copy in _copies_at(end, design, copies)
    ]
    return [spots for spots in found if spots]


def _paired(
    first: list[list[Half]],
    second: list[list[Half]],
    names: tuple[str, str],
    used: dict[tuple[str, str], int],
) -> Iterator[tuple[Half, Half]]:
    """Copy with copy where there are as many; else each place with a copy of its own."""
    if not first or not second:
        return
    ones, others = ([half for copy in side for half in copy] for side in (first, second))
    if len(ones) != len(others) and min(len(ones), len(others)) > 1:
        fewer = min(len(ones), len(others))
        ones, others = _next(ones, fewer, names[0], used), _next(others, fewer, names[1], used)
    if len(ones) == len(others):
        yield from zip(ones, others, strict=True)
    elif len(ones) == 1:
        yield from ((ones[0], other) for other in others)
    elif len(others) == 1:
        yield from ((one, others[0]) for one in ones)


def _next(
    halves: list[Half], count: int, name: str, used: dict[tuple[str, str], int]
) -> list[Half]:
    """Of more halves than are needed those that no joint has taken yet."""
    if len(halves) <= count:
        return halves
    start = used.get((name, ""), 0)
    if start + count > len(halves):
        start = 0
    used[name, ""] = start + count
    return halves[start : start + count]
