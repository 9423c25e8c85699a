"""What a joint asks for, as features of its parts: sizes that were reckoned, not written."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from binder.design.design import Design
from binder.design.items import Feature, Joint
from binder.source import Written
from binder.spec.kinds import Slot
from binder.spec.values import Position, Size
from binder.units import LENGTH, Quantity, shown

_PLACES = 6


class WorkedOut(Written):
    """The words of a size that was reckoned: nobody wrote it in any system."""

    __slots__ = ()


def exact(mm: float) -> Fraction:
    """A length in mm that was reckoned in floats, to a millionth of a millimetre."""
    return Fraction(round(mm * 10**_PLACES), 10**_PLACES)


def made_size(mm: Fraction | float, joint: Joint, text: str = "") -> Size:
    """A size in mm that a joint works out; `text` is how it is named, where it has a name."""
    quantity = Quantity(mm if isinstance(mm, Fraction) else exact(mm), LENGTH)
    words = Written(text, joint.at) if text else WorkedOut(shown(quantity), joint.at)
    return Size(quantity, words)


def made_at(mm: Fraction | float, face: str, joint: Joint) -> Position:
    """A place that a joint works out: so many mm from a face."""
    size = made_size(mm, joint)
    return Position(Written(f"{size.text} from {face}", joint.at), size, f"from {face}")


def made_places(places: tuple[Position, ...], joint: Joint) -> Position:
    """Several places that a joint works out, as one: `3 mm from left, 4 mm from front`."""
    text = ", ".join(str(one.text) for one in places)
    first, *more = places
    return Position(Written(text, joint.at), first.distance, first.rest, tuple(more))


def implied_feature(
    design: Design, joint: Joint, owner: str, name: str, kind: str, **values: object
) -> Feature:
    """A feature that a joint asks for on one of its parts.

    `values` are the fields of that kind of feature, typed: sizes by `made_size`, words as
    plain text. Raises KeyError where no plugin knows the kind.
    """
    model: Any = design.spec.kinds.of(Slot.FEATURE)[kind].model
    typed = {
        key: Written(value, joint.at) if type(value) is str else value
        for key, value in values.items()
    }
    return Feature(name, owner, kind, model.model_construct(**typed), joint.at, joint.name)
