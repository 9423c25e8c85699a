"""A place among tokens: what comes next, and taking it if it is what is wanted."""

from __future__ import annotations

from fractions import Fraction
from typing import Final

from binder_trade.fastening.faults import Unreadable, quoted
from binder_trade.fastening.sizes import UNITS, Size
from binder_trade.fastening.tokens import Token, cut

_NUMERALS: Final = {
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
    "nine": 9,
    "ten": 10,
    "eleven": 11,
    "twelve": 12,
}
_END: Final = Token("end", "")


class Cursor:
    """Walks over the tokens of one text, never back but to a place it was told."""

    def __init__(self, text: str) -> None:
        self.text = text
        self._tokens = cut(text)
        self.place = 0

    @property
    def is_done(self) -> bool:
        """Nothing is left."""
        return self.place >= len(self._tokens)

    def ahead(self, by: int = 0) -> Token:
        """The token that many places ahead, without taking it."""
        at = self.place + by
        return self._tokens[at] if at < len(self._tokens) else _END

    def take(self, *words: str) -> bool:
        """Takes these words or signs, if they come next in this order."""
        if all(self.ahead(by).text == word for by, word in enumerate(words)):
            self.place += len(words)
            return True
        return False

    def take_any(self, *words: str) -> bool:
        """Takes the first of these that comes next."""
        return any(self.take(word) for word in words)

    def count(self) -> int | None:
        """Takes a whole number, in figures or as a word up to twelve."""
        token = self.ahead()
        if token.kind == "number" and "." not in token.text:
            self.place += 1
            return int(token.text)
        if token.text in _NUMERALS:
            self.place += 1
            return _NUMERALS[token.text]
        return None

    def size(self) -> Size | None:
        """Takes a size: `12 mm`, `3/8 in`, `1 1/2 in`, `0.5`; raises Unreadable for n/0."""
        if self.ahead().kind != "number":
            return None
        start = self.place
        value = Fraction(self.ahead().text)
        is_mixed = self.ahead(1).kind == "number" and self.ahead(2).text == "/"
        self.place += 1
        is_fraction = self._slash(self.ahead().text) if not is_mixed else True
        if is_mixed:
            over = self._over(self.ahead().text, self.ahead(2).text)
            value += over
            self.place += 3
        elif is_fraction:
            value = self._over(self._tokens[start].text, self.ahead(1).text)
            self.place += 2
        text = self._written(start)
        unit = UNITS.get(self.ahead().text, "")
        self.place += bool(unit)
        return Size(value, unit, text, is_fraction=is_fraction)

    def _slash(self, sign: str) -> bool:
        return sign == "/" and self.ahead(1).kind == "number"

    def _over(self, above: str, below: str) -> Fraction:
        if "." in above or "." in below or int(below) == 0:
            raise Unreadable(f"{quoted(self.text)} has no fraction", "write it as 3/8 in")
        return Fraction(int(above), int(below))

    def _written(self, start: int) -> str:
        parts = [token.text for token in self._tokens[start : self.place]]
        return f"{parts[0]} {''.join(parts[1:])}" if len(parts) == 4 else "".join(parts)
