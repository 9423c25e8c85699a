"""Two clips on a shaft to the sum that sets their grooves apart, at the step that cuts the last.

A groove keeps its distance from the end that it is cut from: where the grooves are cut in two
grips, facing the second end to a sum sets their walls apart; where one grip cuts both, the second
is placed from the first. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_solid.clip_walls import holds_clip
from binder_solid.suited import suited_in

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import ChainFact
    from binder_plugins.operations.facts import Act, SetUp
    from binder_plugins.operations.work import Work

# How an act tells the end from which lengths are taken, and the whole length to which it faces.
_FROM, _OVER = " from this end", "over all"
_WALLS, _RING = " walls", "clip at "
_ITS, _BOTH = "its outer wall ", "their outer walls "
_PAIR = 2
_SAME_MM = 1e-6


def clips_apart(work: Work, setups: Sequence[SetUp]) -> list[SetUp]:
    """The set-ups, the last of the two grooves set apart from the first by the sum."""
    chain = _chain(work)
    cuts = _cuts(work, setups) if chain is not None else []
    if chain is None or not cuts:
        return list(setups)
    at, last = cuts[-1]
    acts = list(setups[at].acts)
    is_one_grip = sum(1 for number, _ in cuts if number == at) == _PAIR or len(cuts) < _PAIR
    over = f"{work.mm(_long(work))} {_OVER}"
    face = next((n for n, one in enumerate(acts) if one.act == "face" and over in one.what), None)
    if face is not None and not is_one_grip:
        acts[face] = replace(acts[face], what=acts[face].what.replace(over, _faced(work, chain)))
    else:
        place = acts.index(last)
        acts[place] = replace(last, what=_placed(work, last.what, chain, is_one_grip=is_one_grip))
    done = list(setups)
    done[at] = replace(done[at], acts=tuple(acts))
    return done


def _chain(work: Work) -> ChainFact | None:
    """The chain from groove to groove of a shaft; None where no two clips hold it."""
    closed = suited_in(work.name, work.design)
    return next((one.chain for one in closed if one.link.key.endswith(_WALLS)), None)


def _cuts(work: Work, setups: Sequence[SetUp]) -> list[tuple[int, Act]]:
    """Each act that cuts a groove for a clip, with the number of its set-up, as they come."""
    form = work.form
    names = (
        {one.name for one in form.located if holds_clip(work.name, one, work.design)}
        if form is not None
        else set()
    )
    return [
        (number, act)
        for number, setup in enumerate(setups)
        for act in setup.acts
        if act.act == "groove" and act.feature.partition(",")[0] in names
    ]


def _long(work: Work) -> float:
    return work.form.size[0] if work.form is not None else 0.0


def _walls(chain: ChainFact) -> float:
    return next(one.nominal for one in chain.links if one.name == chain.closing)


def _faced(work: Work, chain: ChainFact) -> str:
    """The sum for the whole length: what stands outside of the grooves stays as drawn."""
    beyond = _long(work) - _walls(chain)
    outside = f" + {work.mm(round(beyond, 3))} outside the grooves" if beyond > _SAME_MM else ""
    drawn = round(_drawn(chain) + beyond, 3)
    return f"{_sum(work, chain)}{outside} = ______, {work.mm(drawn)} if they come as drawn"


def _placed(work: Work, what: str, chain: ChainFact, *, is_one_grip: bool) -> str:
    """The words of a groove with the sum: from the outer wall of the other one to its own."""
    before, _, after = what.partition(_FROM)
    moves = ": the tool moves by that less its own width" if is_one_grip else ""
    drawn = work.mm(round(_drawn(chain), 3))
    told = (
        f"at {_sum(work, chain)} = ______ ({drawn} if they come as drawn) from the outer wall of "
    )
    head, is_two, places = before.partition(_BOTH)
    if is_two:
        first, _, second = places.partition(" and ")
        told = f"the outer wall of one {first}{_FROM}, that of the other {told}the first{moves}"
        return f"{head}{told}; {second}{_FROM} as drawn{after}"
    head, its, place = before.partition(_ITS)
    return f"{head}{its}{told}the other{moves}; {place}{_FROM} as drawn{after}"


def _sum(work: Work, chain: ChainFact) -> str:
    """`the jib over both walls as measured + both clips as measured + 0.15 mm of float`."""
    terms = [f"the {name} as measured" for name in _gripped(chain)]
    terms += ["both clips as measured", f"{work.mm((chain.least + chain.most) / 2)} of float"]
    return " + ".join(terms)


def _gripped(chain: ChainFact) -> Iterator[str]:
    return (
        one.name
        for one in chain.links
        if one.name != chain.closing and not one.name.startswith(_RING)
    )


def _drawn(chain: ChainFact) -> float:
    others = sum(one.nominal for one in chain.links if one.name != chain.closing)
    return others + (chain.least + chain.most) / 2
