"""What the rows, steps and test of an assembly leave of its page for the picture, in mm."""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from binder.api import (
    CautionLines,
    ChainFact,
    ClosedWithFact,
    Design,
    HardwareFact,
    Joint,
    JointFact,
    ShaftFact,
    text_of,
)
from binder_plugins.arrangement.general import undrawn
from binder_solid.filled import done_as, locking
from binder_solid.float_tried import float_wanted, shut_by
from binder_solid.leaning import leans_at
from binder_solid.set_there import put_on, set_there
from binder_solid.tripped import trip_words
from binder_solid.watched import slip_line, slips_unseen

# A page less its headings, and what a row, the edges of a step and a note of a test take.
_PAGE = 230.0
_ROW, _STEP, _LINE, _TEST = 6.2, 2.0, 5.0, 16.0
# A line of what stands small under a step; letters on a line, large and small.
_SMALL_LINE = 4.5
_LETTERS, _SMALL_LETTERS = 86, 96
# `done before (...)`, and what is said at a joint that is locked at the end, but for its line.
_PREFACE, _DRY = 45, 160
# What stands round the name of bought hardware, and before many a step: `the same way round as
# they are marked`, `each screw starts by hand before one is tightened`.
_OFF, _AROUND = 10, 25
# What is put together dry first, before a float is shut, beside what it is found to be.
_TRIED = 110
# The words over the list of what is locked last, a step of it, and its last step.
_WHEN, _LOCK, _CURES = 110, 130, 92
# What is said where an evening ends for what has to cure.
_LEFT_ALONE = 130
_LEAST, _MOST = 55.0, 190.0
# A step that sets an end float by hubs which screws hold; what is said of an item left undrawn.
_FLOAT, _UNDRAWN = 230, 8.0
# A long first step, which keeps the rows on the page of the picture if it begins there.
_FIRST = 40.0


def picture_height(name: str, owners: dict[str, str], design: Design) -> float:
    """All that the rows, steps and test leave of a page.

    `owners` names for each item the member in which it stands. Where too little is left the
    steps go on to the next page, but for the first.
    """
    one = design.assemblies[name]
    closed = design.facts.about(ClosedWithFact, name)
    rows = len(one.members) + (len(closed.items) if closed is not None else 0)
    left_out = undrawn(design, {member.item for member in one.members})
    above = _PAGE - _ROW * rows - (_UNDRAWN if left_out else 0.0)
    below = sum(_steps(name, owners, design)) + (_test(owners, design) if one.test else 0.0)
    left = above - below
    return min(_MOST, left if left > _LEAST else max(above - _FIRST, _LEAST))


def _steps(name: str, owners: dict[str, str], design: Design) -> Iterator[float]:
    """How tall each step is, and what is locked last with the words over it."""
    lines = CautionLines(design)
    yield from (_tall(len(words)) for words in design.assemblies[name].steps)
    closed = list(_closed(owners, design))
    yield from (_joint(joint, fact, lines, design) for joint, fact in closed)
    if any(fact.is_lasting for _, fact in closed):
        yield _tall(_LEFT_ALONE)
    yield from (
        _tall(_FLOAT) for one in design.facts.all(ShaftFact) if _is_set(one, owners, design)
    )
    last = [joint for joint in design.joints.values() if _is_locked(joint, name, owners, design)]
    for joint in last:
        yield _tall(_LOCK, len(text_of(lines.at(("bond",), joint.items))))
    if last:
        yield _LINE * ceil(_WHEN / _LETTERS) + _STEP + _tall(_CURES)


def _is_set(shaft: ShaftFact, owners: dict[str, str], design: Design) -> bool:
    """Whether hubs that screws hold are the stops of a shaft which goes in here."""
    stops = [design.joints.get(shaft.pieces[n].joint) for n in shaft.stops]
    held = [one for one in stops if one is not None and one.kind == "clamped"]
    closed = {joint.name for joint, _ in _closed(owners, design)}
    return any(one.name in closed for one in held)


def _closed(owners: dict[str, str], design: Design) -> Iterator[tuple[Joint, JointFact]]:
    """The joints between members of an assembly."""
    for joint in design.joints.values():
        members = {owners.get(item, "") for item in joint.items}
        fact = design.facts.about(JointFact, joint.name)
        if fact is not None and len(members) > 1 and "" not in members:
            yield joint, fact


def _joint(joint: Joint, fact: JointFact, lines: CautionLines, design: Design) -> float:
    """A step that closes a joint, with what stands small under it."""
    before = _PREFACE if fact.is_lasting or fact.is_hot else 0
    dried = _dry(joint, design) if locking(joint) else 0
    place = (set_there if fact.is_lasting else put_on)(joint, design)
    if not place and fact.group == "fixing":
        place = leans_at(joint, design)
    small = (
        text_of(lines.at((done_as(joint, design),), joint.items)),
        joint.entry.feel,
        place,
        joint.entry.note,
    )
    bought = sum(
        _OFF + len(one.what) for one in design.facts.where(HardwareFact, "joint", joint.name)
    )
    words = len(fact.step) + len(trip_words(joint, design)) + before + dried + bought + _AROUND
    for wanted in shut_by(joint, design):
        tried = (float_wanted(wanted, design), wanted.little, wanted.much)
        words += _TRIED + sum(map(len, tried))
    return _tall(words, *(len(one or "") for one in small))


def _dry(joint: Joint, design: Design) -> int:
    """The letters of what is said of a joint that stays dry while the model runs in."""
    return _DRY + len(slip_line(joint, design)) + len(slips_unseen(joint, design))


def _tall(letters: int, *small: int) -> float:
    """A step of so many letters, with lines under it of so many each."""
    under = sum(ceil(count / _SMALL_LETTERS) for count in small)
    return _STEP + _LINE * ceil(letters / _LETTERS) + _SMALL_LINE * under


def _is_locked(joint: Joint, name: str, owners: dict[str, str], design: Design) -> bool:
    """Whether a joint is locked when this assembly, which stands in no other, is together."""
    is_outermost = not any(
        member.item == name for one in design.assemblies.values() for member in one.members
    )
    return is_outermost and bool(locking(joint)) and set(joint.items) <= owners.keys()


def _test(owners: dict[str, str], design: Design) -> float:
    """How tall the note of the test is: a line more for each end float that it may tell."""
    closing = (design.joints.get(fact.closed_by) for fact in design.facts.all(ChainFact))
    floats = [joint for joint in closing if joint is not None and set(joint.items) <= set(owners)]
    return _TEST + _LINE * len(floats)
