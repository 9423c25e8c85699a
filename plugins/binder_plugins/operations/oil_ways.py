"""The oil hole of a bush that is fixed in a housing with one: drilled through both, once it is in.

Drilled before, the two are lined up blind. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import TogetherFact
from binder_plugins.operations.hole_tools import drill_name
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

_FIXED = frozenset({"pressed", "shrunk", "retained", "bonded"})


@dataclass(frozen=True, slots=True)
class OilWay:
    """The hole of a bush, the task in which it is fixed, and the housing with its hole above."""

    own: Located
    fact: TogetherFact
    joint: str
    housing: str
    above: Located


def oil_way_of(work: Work) -> OilWay | None:
    """The oil hole of a bush that lies under one of its housing, no wider than that."""
    design = work.design
    own = next((one for one in _across(work.form) if one.diameter), None)
    if own is None or work.form is None or not work.form.stretches:
        return None
    for joint in design.joints.values():
        if joint.kind not in _FIXED or len(joint.items) != 2 or joint.items[0] != work.name:
            continue
        fact = next((f for f in design.facts.all(TogetherFact) if joint.name in f.joints), None)
        above = _above(design.facts.about(FormFact, joint.items[1]), own.diameter or 0.0)
        if fact is not None and above is not None:
            return OilWay(own, fact, joint.name, joint.items[1], above)
    return None


def drilled_through(work: Work, joint: str) -> Iterator[Act]:
    """One drill through the housing's hole and the bush, and its burr out of the bore."""
    way = oil_way_of(work)
    if way is None or way.joint != joint:
        return
    size, housing = way.own.diameter or 0.0, work.design.item(way.housing)
    title = housing.title if housing is not None else way.housing
    act = work.act(
        "drill",
        f"drill ⌀{work.mm(size)} down the {way.above.name.replace('_', ' ')} hole of the {title} "
        f"through the wall of the {work.item.title}; break the burr in the bore with a scraper",
        feature=way.own.name,
        tool=f"{drill_name(work, size, fitted=False)}, in a hand drill, a flag of tape, scraper",
        amount=1.0,
        tags=("bush", "later", "oil-hole"),
        spoils="running on into the far wall: a flag of tape on the drill tells when to stop",
    )
    yield replace(act, joints=(joint,))


def _above(form: FormFact | None, least: float) -> Located | None:
    """The hole of a housing that lets oil in: one called so, else one across round work."""
    found = form.located if form is not None else ()
    named = [one for one in found if "oil" in one.name and one.kind in {"drilled", "tapped"}]
    able = (one for one in named or _across(form) if (one.diameter or 0.0) >= least)
    return next(able, None)


def _across(form: FormFact | None) -> list[Located]:
    found = form.located if form is not None else ()
    return [one for one in found if one.face == "across" and one.kind == "drilled"]
