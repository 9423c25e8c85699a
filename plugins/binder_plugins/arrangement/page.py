"""The general arrangement as a section, and the exploded picture at the head of each assembly."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Diagnostic,
    Inset,
    Paragraph,
    Picture,
    Place,
    Section,
)
from binder_drafting import Request, Sheet, draft
from binder_plugins.arrangement.gathering import PictureFact
from binder_plugins.arrangement.general import picture_sheet, undrawn, unseen, views_sheet
from binder_plugins.arrangement.page_room import picture_height
from binder_plugins.arrangement.sheets import PICTURE_SCALES, balloons_of, view_of
from binder_plugins.arrangement.wound import wound
from binder_solid.placed import MotionFact

_WIDE = 178.0
# What a shaft does in its bearings changes no size over all that is worth a word.
_MOVES = ("slide", "screw")


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
        f"{_drawn_at(design)}"
    )
    seen, told = picture_sheet(fact, design), views_sheet(fact, design)
    blocks = (
        Picture(seen.drawing, "the model put together"),
        Paragraph((words,)),
        Picture(told.drawing, f"general arrangement, scale {told.scale}"),
    )
    return Section("arrangement", "General arrangement", Place.ARRANGEMENT, blocks)


def _drawn_at(design: Design) -> str:
    """In which of their places what moves is drawn, of which the sizes over all are."""
    told = [one.told(design) for one in wound(design)]
    moves = any(one.motion in _MOVES for one in design.facts.all(MotionFact))
    if told:
        return f" The model is drawn {' and '.join(told)}; its sizes over all are of that place."
    return (
        " What moves is drawn in one of its places, and the sizes over all are of that one." * moves
    )


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
    owners = owners_of(name, design)
    names = [owners[one.copy.item] for one in fact.shown]
    return draft(
        Request(
            (view_of(fact, 0),),
            balloons=balloons_of(fact, design, (0,), names),
            rooms=((_WIDE, picture_height(name, owners, design)),),
            scales=PICTURE_SCALES,
        )
    )


def owners_of(name: str, design: Design) -> dict[str, str]:
    """For each item of an assembly the member in which it stands."""
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
