"""The general arrangement as a section, and the exploded picture at the head of each assembly."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from binder.api import (
    ChainFact,
    Design,
    Diagnostic,
    Inset,
    JointFact,
    Paragraph,
    Picture,
    Place,
    Section,
)
from binder_drafting import Request, Sheet, draft
from binder_plugins.arrangement.gathering import PictureFact
from binder_plugins.arrangement.general import picture_sheet, undrawn, unseen, views_sheet
from binder_plugins.arrangement.sheets import PICTURE_SCALES, balloons_of, view_of
from binder_solid.filled import locking

_WIDE = 178.0
# What a sheet has room for, in mm: a page less its headings; and what its rows and steps take.
_PAGE = 230.0
_ROW, _STEP, _LINE, _TEST = 6.2, 2.0, 5.0, 16.0
_LETTERS, _PREFACE = 86, 45
# What a joint that is locked at the end is told besides: dry for now, watched, then set.
_DRY = 190
_LEAST, _MOST = 85.0, 190.0


def arrangement_pages(
    design: Design, _findings: tuple[Diagnostic, ...]
) -> Iterator[Section | Inset]:
    """The drawing of the whole, and each assembly taken apart."""
    whole = design.facts.about(PictureFact, "arrangement")
    if whole is not None:
        yield _whole(whole, design)
    for one in design.assemblies.values():
        fact = design.facts.about(PictureFact, f"exploded {one.name}")
        if fact is not None:
            picture = Picture(exploded_sheet(fact, design).drawing, f"{one.title}, taken apart")
            left = undrawn(design, {member.item for member in one.members})
            told = (Paragraph((f"Not drawn: {_listed(left)}.",)),) if left else ()
            yield Inset(f"assembly-{one.name}", (picture, *told))


def _whole(fact: PictureFact, design: Design) -> Section:
    hidden = ", ".join(str(one) for one in unseen(fact, design))
    inside = f"Inside others, and seen from no side: {hidden}. " if hidden else ""
    words = (
        "The numbers are those of the parts list; what this picture hides is numbered in the "
        f"views. {inside}Screws, pins, cord and belts are left out{_without(fact, design)}."
    )
    seen, told = picture_sheet(fact, design), views_sheet(fact, design)
    blocks = (
        Picture(seen.drawing, "the model put together"),
        Paragraph((words,)),
        Picture(told.drawing, f"general arrangement, scale {told.scale}"),
    )
    return Section("arrangement", "General arrangement", Place.ARRANGEMENT, blocks)


def _without(fact: PictureFact, design: Design) -> str:
    """What else is in no picture, and so not in the sizes over all."""
    left = undrawn(design, set(design.bought) - {one.copy.item for one in fact.shown})
    return f"; so is {_listed(left)}: the sizes over all are without it" if left else ""


def _listed(left: tuple[tuple[int, str], ...]) -> str:
    """`27 (brass clock wheel, of which no size is known before it is measured)`."""
    said = (f"{number} ({title}, no size known before it is measured)" for number, title in left)
    return " and ".join(said)


def exploded_sheet(fact: PictureFact, design: Design) -> Sheet:
    """The picture of an assembly taken apart; inner assemblies stay together."""
    name = fact.subject.removeprefix("exploded ")
    owners = _owners(name, design)
    names = [owners[one.copy.item] for one in fact.shown]
    return draft(
        Request(
            (view_of(fact, 0),),
            balloons=balloons_of(fact, design, (0,), names),
            rooms=(_room(name, owners, design),),
            scales=PICTURE_SCALES,
        )
    )


def _room(name: str, owners: dict[str, str], design: Design) -> tuple[float, float]:
    """All that the rows, steps and test leave of a page.

    Where they leave too little the steps go on to the next page.
    """
    one = design.assemblies[name]
    above = _PAGE - _ROW * len(one.members)
    below = _steps(name, owners, design) + (_test(owners, design) if one.test else 0.0)
    return (_WIDE, min(_MOST, above - below if above - below > _LEAST else max(above, _LEAST)))


def _steps(name: str, owners: dict[str, str], design: Design) -> float:
    """How far down the page the steps reach, mm."""
    letters = [len(words) for words in design.assemblies[name].steps]
    for joint in design.joints.values():
        members = {owners.get(item, "") for item in joint.items}
        fact = design.facts.about(JointFact, joint.name)
        if fact is not None and len(members) > 1 and "" not in members:
            done_before = _PREFACE if fact.is_lasting or fact.is_hot else 0
            felt = _LETTERS if joint.entry.feel else 0
            dried = _DRY if locking(joint) else 0
            letters.append(len(fact.step) + done_before + felt + dried)
    return sum(_STEP + _LINE * ceil(count / _LETTERS) for count in letters)


def _test(owners: dict[str, str], design: Design) -> float:
    """How tall the note of the test is, mm: a line more for each end float that it may tell."""
    closing = (design.joints.get(fact.closed_by) for fact in design.facts.all(ChainFact))
    floats = [joint for joint in closing if joint is not None and set(joint.items) <= set(owners)]
    return _TEST + _LINE * len(floats)


def _owners(name: str, design: Design) -> dict[str, str]:
    found: dict[str, str] = {}
    for member in design.assemblies[name].members:
        waiting = [member.item]
        while waiting:
            item = waiting.pop()
            found[item] = member.item
            if item in design.assemblies:
                waiting += [one.item for one in design.assemblies[item].members]
            if item in design.fabrications:
                waiting += [one.item for one in design.fabrications[item].pieces]
    return found
