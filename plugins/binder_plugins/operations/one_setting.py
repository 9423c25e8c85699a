"""Both halves of a taper joint at one setting of the top-slide: its angle serves, whatever it is.

The half that is made first leaves the slide as it stands, and the other is cut next. Where the two
would swing it to either side, the bore is cut on the far wall by a tool turned upside down: there
its wall runs as the near side of the shaft does (geometry). What cuts square between them stands
on a tool post that is turned on the slide. Common practice, no source.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import HalfFact
from binder_plugins.operations.taper_mates import WRITE, set_from, setting, writing, written_for

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Design, Joint
    from binder_plugins.operations.facts import Act, Route, SetUp

_WAY = re.compile(r"swung (towards you|away from you)")
_NEAR = ", the tool on the near wall"
_SQUARE = (
    "turn the tool post on it till the tool is square again, by a square against the chuck or the "
    "work"
)


@dataclass(frozen=True, slots=True)
class Half:
    """One half: its item, the set-up of its taper, and the act itself."""

    item: str
    setup: SetUp
    act: Act

    @property
    def piece(self) -> str:
        """The id of its piece of work."""
        return f"{self.item} {self.setup.number}"

    @property
    def way(self) -> str:
        """To which side the handle's end swings for it."""
        found = _WAY.search(self.act.what)
        return found[1] if found else ""


@dataclass(frozen=True, slots=True)
class Pair:
    """Two halves that one setting serves, the first of them made first."""

    joint: str
    first: Half
    second: Half


def pairs(routes: Sequence[Route], design: Design) -> Iterator[Pair]:
    """The taper joints whose halves one lathe cuts, each the one taper of its set-up."""
    by_item = {one.subject: one for one in routes}
    taken: set[str] = set()
    for joint in design.joints.values():
        halves = [half for name in joint.items if (half := _half(joint, by_item.get(name)))]
        if joint.kind != "tapered" or len(halves) != 2 or len(set(joint.items)) != 2:
            continue
        master = {one.item for one in design.facts.all(HalfFact)
                  if one.joint == joint.name and one.is_master}  # fmt: skip
        first, second = sorted(halves, key=lambda one: one.item not in master)
        names = {first.piece, second.piece}
        is_one = first.setup.machine == second.setup.machine and first.way and second.way
        if len(master) == 1 and is_one and not names & taken:
            taken |= names
            yield Pair(joint.name, first, second)


def _half(joint: Joint, route: Route | None) -> Half | None:
    """The one taper of a route, where it is that of the joint and a lathe turns it."""
    if route is None:
        return None
    found = [
        Half(route.subject, setup, act)
        for setup in route.setups
        for act in setup.acts
        if act.act == "taper" and setup.place == "lathe"
    ]
    return found[0] if len(found) == 1 and joint.name in found[0].act.joints else None


def at_one_setting(routes: Sequence[Route], design: Design) -> list[Route]:
    """The routes, with both halves of such a pair told to be cut at one setting."""
    found = {one.subject: one for one in routes}
    for pair in pairs(routes, design):
        later, earlier = written_for(pair.first.act.what), set_from(pair.second.act.what)
        if not later or not earlier:
            continue
        for half, setup in (
            (pair.first, _first(pair.first, pair.second, later)),
            (pair.second, _second(pair.second, pair.first, earlier)),
        ):
            route = found[half.item]
            setups = tuple(setup if one is half.setup else one for one in route.setups)
            found[half.item] = replace(route, setups=setups)
    return [found[one.subject] for one in routes]


def _first(half: Half, other: Half, mate: str) -> SetUp:
    """The half after which the slide stays as it is, whatever is cut square behind it."""
    what = _far_wall(half, other, mate).replace(
        writing(mate), f"{WRITE}, lock it and leave it so: the {mate} is cut next, as it stands"
    )
    acts = [replace(one, what=what) if one is half.act else one for one in half.setup.acts]
    stays = f"stop the lathe; the top-slide stays locked for the {mate}: {_SQUARE}"
    is_after = False
    for n, act in enumerate(half.setup.acts):
        is_after = is_after or act is half.act
        if is_after and act.act == "set-back":
            acts[n] = replace(act, what=stays)
    return replace(half.setup, acts=tuple(acts))


def _second(half: Half, other: Half, mate: str) -> SetUp:
    """The half that finds the slide locked; what is cut square before it is told how."""
    what = _far_wall(half, other, mate).replace(
        setting(mate),
        f"the slide locked as it was left for the {mate}, its angle not touched (moved since, it "
        "is set by what was written down); ",
    )
    acts = tuple(replace(one, what=what) if one is half.act else one for one in half.setup.acts)
    stands = f"the top-slide locked as it was left for the {mate}; for square tools {_SQUARE}"
    return replace(half.setup, acts=acts, true="; ".join(filter(None, (half.setup.true, stands))))


def _far_wall(half: Half, other: Half, mate: str) -> str:
    """A bore that would swing the slide to the other side is cut at the back, and so does not."""
    what = half.act.what
    if _NEAR not in what or half.way == other.way:
        return what
    far = (
        f"swung {other.way} as for the {mate}, the tool upside down on the far wall, the lathe "
        "running forward"
    )
    return what.replace(f"swung {half.way}{_NEAR}", far)
