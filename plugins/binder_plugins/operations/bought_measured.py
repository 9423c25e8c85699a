"""What is bought and stands in a measured sum: measured where the sum is worked to.

A made part is measured on its own leaf; a clip or a washer has none. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import Bought, ShaftFact
from binder_plugins.operations.gauging import read_along
from binder_solid.suited import suited_in

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import ChainFact, ChainLink
    from binder_plugins.operations.facts import Act, SetUp
    from binder_plugins.operations.work import Work
    from binder_solid.suited import Suited

_RING, _SUM = "clip at the ", "= ______"
_SAME_MM = 1e-6


def bought_measured(work: Work, setups: Sequence[SetUp]) -> list[SetUp]:
    """The set-ups, each sum for a row preceded by the measuring of what is bought in it."""
    done = list(setups)
    for suited in suited_in(work.name, work.design):
        acts = list(_acts(suited, work))
        if not acts:
            continue
        for at, setup in enumerate(done):
            place = next((n for n, act in enumerate(setup.acts) if _uses(act, suited)), None)
            if place is not None:
                told = (*setup.acts[:place], *acts, *setup.acts[place:])
                done[at] = replace(setup, acts=told)
                break
    return done


def _uses(act: Act, suited: Suited) -> bool:
    """Whether an act works to the sum of a chain: it names what is measured for it."""
    is_sum = act.act in {"face", "groove"} and _SUM in act.what
    return is_sum and ("clips as measured" in act.what) == _has_clips(suited.chain)


def _has_clips(chain: ChainFact) -> bool:
    return any(one.name.startswith(_RING) for one in chain.links)


def _acts(suited: Suited, work: Work) -> Iterator[Act]:
    chain = suited.chain
    rings = [one for one in chain.links if one.name.startswith(_RING)]
    if rings:
        yield _clips(rings, work)
    shaft = work.design.facts.about(ShaftFact, suited.shaft) if suited.shaft else None
    for link in chain.links if shaft is not None else ():
        name, _, which = link.key.rpartition(" ")
        if shaft is None or name != shaft.subject or not which.isdigit():
            continue
        item = work.design.item(shaft.pieces[int(which) - 1].item)
        # One with sizes to be measured first has a task of its own for that.
        if isinstance(item, Bought) and not item.measured and link is not suited.link:
            yield work.act(
                "measure",
                f"measure the {link.name} along its bore, face to face: ______, "
                f"{work.mm(link.nominal)} as drawn",
                feature=f"length of the {link.name}",
                tool=read_along(work, link.nominal),
            )


def _clips(rings: Sequence[ChainLink], work: Work) -> Act:
    """Both rings between the anvils, beside their lugs: a burr of the stamping reads as metal."""
    thick = [work.mm(one.nominal) for one in rings]
    is_alike = abs(rings[0].nominal - rings[-1].nominal) < _SAME_MM
    drawn = f"{thick[0]} each" if is_alike else f"{thick[0]} the left one, {thick[-1]} the other"
    return work.act(
        "measure",
        "lay the clips out, and measure how thick each is, across its ring beside the lugs, clear "
        f"of the burr: ______ and ______, {drawn} as drawn",
        feature="thickness of the clips",
        tool=f"{read_along(work, rings[0].nominal)}, clips of the {work.item.title}",
    )
