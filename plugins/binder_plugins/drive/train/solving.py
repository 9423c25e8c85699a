"""Links and given speeds to the speed of each body, exactly."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from binder_plugins.drive.train.links import Terms


@dataclass(slots=True)
class Equation:
    """A sum of factor times speed that comes to `right`."""

    terms: dict[str, Fraction]
    right: Fraction

    def less(self, other: Equation, factor: Fraction) -> None:
        """This equation less so many times another."""
        for name, value in other.terms.items():
            left = self.terms.get(name, Fraction(0)) - factor * value
            if left:
                self.terms[name] = left
            else:
                self.terms.pop(name, None)
        self.right -= factor * other.right


@dataclass(slots=True)
class Speeds:
    """Equations solved as they come; each is told whether it agrees with those before it."""

    _solved: dict[str, Equation] = field(default_factory=dict)

    def add(self, terms: Iterable[tuple[str, Fraction]], right: Fraction = Fraction(0)) -> str:
        """`new`, `known` where it follows from the others, `against` where it contradicts them."""
        fresh = Equation(_gathered(terms), right)
        for name, known in self._solved.items():
            if name in fresh.terms:
                fresh.less(known, fresh.terms[name])
        if not fresh.terms:
            return "against" if fresh.right else "known"
        self._take(fresh)
        return "new"

    def _take(self, fresh: Equation) -> None:
        lead = min(fresh.terms)
        factor = fresh.terms[lead]
        fresh.terms = {name: value / factor for name, value in fresh.terms.items()}
        fresh.right /= factor
        for known in self._solved.values():
            if lead in known.terms:
                known.less(fresh, known.terms[lead])
        self._solved[lead] = fresh

    def known(self) -> Mapping[str, Fraction]:
        """The speeds that the equations settle."""
        return {name: one.right for name, one in self._solved.items() if set(one.terms) == {name}}


def _gathered(terms: Iterable[tuple[str, Fraction]]) -> dict[str, Fraction]:
    found: dict[str, Fraction] = {}
    for name, factor in terms:
        found[name] = found.get(name, Fraction(0)) + factor
    return {name: factor for name, factor in found.items() if factor}


def is_rest(terms: Terms) -> bool:
    """Whether a link holds nothing: all its factors are nothing."""
    return not _gathered(terms)
