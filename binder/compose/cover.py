"""The facts of the cover."""

from __future__ import annotations

from binder.design import Design, HoursFact, NumberOff


def summary(design: Design) -> tuple[tuple[str, str], ...]:
    """What drives it, how much there is to make, and in whose workshop."""
    head = design.spec.written.model
    pairs = [
        ("Driven by", head.driven_by or ""),
        ("Scale", head.scale or ""),
        ("To be made", _made(design)),
        ("To be bought", _bought(design)),
        ("At the bench", _hours(design)),
        ("Drawn in", "millimetres" if head.units == "mm" else "inches"),
        ("Worked out for", design.workshop.name),
    ]
    return tuple((name, " ".join(value.split())) for name, value in pairs if value)


def _made(design: Design) -> str:
    kinds = len(design.parts)
    pieces = sum(_count(design, name, part.quantity) for name, part in design.parts.items())
    return f"{_counted(kinds, 'part')}, {_counted(pieces, 'piece')} in all"


def _bought(design: Design) -> str:
    return _counted(len(design.bought), "item") if design.bought else "nothing but stock"


def _hours(design: Design) -> str:
    """The range of hours, where a plugin has worked it out."""
    found = design.facts.about(HoursFact, "")
    return f"{found.text}, in {_counted(found.evenings, 'evening')}" if found is not None else ""


def _count(design: Design, name: str, written: int | None) -> int:
    known = design.facts.about(NumberOff, name)
    return known.count if known else written or 1


def _counted(number: int, noun: str) -> str:
    return f"{number} {noun}{'' if number == 1 else 's'}"
