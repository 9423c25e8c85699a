"""The piece that closes a row: made when all that it lies between can be measured."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Before, Design, Role, ShaftFact, TogetherFact
from binder_solid.pinned_stop import pinned_stop, waits_for

_PIECE = "its length is what the measured row leaves"
_SET = "the last stop of a shaft is set to the row as it stands"
_GAP = "the gap is measured while the housings stand for the reamer"
_IN_LINE = ("reamed in line", "lapped together")
# Held up by screws, or fixed for good: what carries a bearing sets the gap as well.
_CARRYING = ("screwed", "bolted", "studded", "pressed", "retained")


def made_last(fact: ShaftFact, design: Design) -> Iterator[Before]:
    """The order of making for a piece made to suit; wishes, where another reason forbids them."""
    if fact.to_suit is None:
        return
    closing = fact.pieces[fact.to_suit].item
    if closing not in design.parts:
        return
    for name in _row(fact, closing, design):
        kind = "measure" if name in design.bought else "make"
        yield _wish(f"{kind} {name}", closing, _PIECE, fact)
    bearings = {one.joint for one in fact.pieces if one.role is Role.BEARING}
    for task in design.facts.all(TogetherFact):
        if task.how in _IN_LINE and bearings & set(task.joints):
            yield _wish(task.subject, closing, _GAP, fact)


def set_last(fact: ShaftFact, design: Design) -> Iterator[Before]:
    """The order of making where a pin fixes the last stop: the row is there when it is drilled."""
    for task in design.facts.all(TogetherFact):
        for name in task.joints:
            stop = pinned_stop(design.joints[name], design) if name in design.joints else None
            if stop is None or stop.shaft.subject != fact.subject:
                continue
            for item in waits_for(stop):
                kind = "measure" if item in design.bought else "make"
                yield Before(f"{kind} {item}", task.subject, _SET, is_must=False, at=fact.at)
            bearings = {one.joint for one in fact.pieces if one.role is Role.BEARING}
            for other in design.facts.all(TogetherFact):
                is_stop = stop.other.joint in other.joints and other.subject != task.subject
                if is_stop or (other.how in _IN_LINE and bearings & set(other.joints)):
                    yield Before(other.subject, task.subject, _SET, is_must=False, at=fact.at)


def _wish(earlier: str, closing: str, reason: str, fact: ShaftFact) -> Before:
    return Before(earlier, f"make {closing}", reason, is_must=False, at=fact.at)


def _row(fact: ShaftFact, closing: str, design: Design) -> list[str]:
    """The other pieces between the outer bearings, the bearings, and what carries those."""
    places = [n for n, piece in enumerate(fact.pieces) if piece.role is Role.BEARING]
    pieces = fact.pieces[places[0] : places[-1] + 1] if places else fact.pieces
    found = dict.fromkeys(piece.item for piece in pieces)
    carried = {piece.item for piece in pieces if piece.role is Role.BEARING}
    for _ in range(2):  # a bush in a housing, the housing on what it stands on
        for joint in design.joints.values():
            if joint.kind in _CARRYING and carried & set(joint.items):
                found |= dict.fromkeys(joint.items)
        carried = {*found} - {piece.item for piece in pieces if piece.role is not Role.BEARING}
    return [name for name in found if name not in (closing, fact.subject)]
