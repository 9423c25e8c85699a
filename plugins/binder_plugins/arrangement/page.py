"""The general arrangement as a section, and the exploded picture at the head of each assembly."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from binder.api import Design, Diagnostic, Inset, JointFact, Paragraph, Picture, Place, Section
from binder_drafting import Request, Sheet, draft
from binder_plugins.arrangement.gathering import PictureFact
from binder_plugins.arrangement.general import picture_sheet, views_sheet
from binder_plugins.arrangement.sheets import PICTURE_SCALES, balloons_of, view_of
from binder_solid.placed import PlacedFact

_WIDE = 178.0
# What a sheet has room for: a page less its headings; a picture grows with what it shows.
_PAGE = 222.0
_ROW, _STEP, _LINE, _TEST = 6.2, 2.0, 5.0, 16.0
_LETTERS, _PREFACE = 80, 35
_FEWEST, _EACH, _HIGHER, _MOST = 70.0, 9.0, 30.0, 190.0
_LEAST = 90.0


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
            yield Inset(f"assembly-{one.name}", (picture,))


def _whole(fact: PictureFact, design: Design) -> Section:
    count = len({one.item for one in design.facts.all(PlacedFact)})
    words = (
        f"The numbers are those of the parts list; {count} items are shown. Screws, pins, cord "
        "and belts are left out."
    )
    seen, told = picture_sheet(fact, design), views_sheet(fact, design)
    blocks = (
        Picture(seen.drawing, "the model put together"),
        Paragraph((words,)),
        Picture(told.drawing, f"general arrangement, scale {told.scale}"),
    )
    return Section("arrangement", "General arrangement", Place.ARRANGEMENT, blocks)


def exploded_sheet(fact: PictureFact, design: Design) -> Sheet:
    """The picture of an assembly taken apart; inner assemblies stay together."""
    name = fact.subject.removeprefix("exploded ")
    owners = _owners(name, design)
    names = [owners[one.copy.item] for one in fact.shown]
    return draft(
        Request(
            (view_of(fact, 0),),
            balloons=balloons_of(fact, design, (0,), names),
            rooms=(_room(fact, names, _left(name, owners, design)),),
            scales=PICTURE_SCALES,
        )
    )


def _room(fact: PictureFact, names: list[str], left: float) -> tuple[float, float]:
    """Many parts, and what stands high, have a larger picture, as far as the page has room.

    Where the steps leave too little of a page they go on to the next one.
    """
    seen = [one.views[0].bounds for one in fact.shown if one.views[0].edges]
    wide = max(most[0] for _, most in seen) - min(least[0] for least, _ in seen)
    high = max(most[1] for _, most in seen) - min(least[1] for least, _ in seen)
    wished = _FEWEST + _EACH * len(set(names)) + (_HIGHER if high > wide else 0.0)
    return (_WIDE, min(wished, _MOST, left if left > _LEAST else _MOST))


def _left(name: str, owners: dict[str, str], design: Design) -> float:
    """What the rows, steps and test of a sheet leave of its page, mm."""
    one = design.assemblies[name]
    met = [{owners.get(item, "") for item in joint.items} for joint in design.joints.values()]
    closed = [
        joint
        for joint, members in zip(design.joints, met, strict=True)
        if len(members) > 1 and "" not in members
    ]
    facts = [fact for joint in closed if (fact := design.facts.about(JointFact, joint))]
    steps = [len(words) for words in one.steps] + [len(fact.step) + _PREFACE for fact in facts]
    tall = sum(_STEP + _LINE * ceil(letters / _LETTERS) for letters in steps)
    return _PAGE - _ROW * len(one.members) - tall - (_TEST if one.test else 0.0)


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
