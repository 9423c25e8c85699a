"""A maker's words cut into numbers, words and signs, with a bound on their length."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from binder_trade.fastening.faults import Unreadable, quoted

LONGEST: Final = 120
_LONGEST_NUMBER: Final = 8
_SIGNS: Final = str.maketrans(
    {
        "½": " 1/2",
        "¼": " 1/4",
        "¾": " 3/4",
        "⅛": " 1/8",
        "⅜": " 3/8",
        "⅝": " 5/8",
        "⅞": " 7/8",
        "⁄": "/",
        "∕": "/",
        "×": " x ",
        "″": '"',
        "”": '"',
        "°": " deg ",
        "–": "-",
        "Ø": " ",
        "⌀": " ",
        "#": " no ",
        "&": " and ",
    }
)
_TOKEN: Final = re.compile(r"\s*(?:([0-9]*\.[0-9]+|[0-9]+)|([a-z]+)|([-/\",;.()]))")
# A minus after a times sign or a blank; `4-40` and `M3-10` are other things.
_BELOW_NOTHING: Final = re.compile(r"(?:^|[x×\s]\s*)[-–−]\s*[0-9]")
_COMMA_FOR_POINT: Final = re.compile(r"[0-9],[0-9]")


@dataclass(frozen=True, slots=True)
class Token:
    """A number, a word in small letters, or a sign."""

    kind: str
    text: str


def cut(text: str) -> tuple[Token, ...]:
    """The tokens of a text of at most 120 characters; raises Unreadable."""
    if len(text) > LONGEST:
        raise Unreadable(
            f"{quoted(text)} is longer than {LONGEST} characters",
            "name the kind and the sizes only, and put the rest in a note",
        )
    if _COMMA_FOR_POINT.search(text):
        raise Unreadable(
            f"{quoted(text)} has a comma inside a number", "write a point: 1.5 mm, not 1,5 mm"
        )
    if _BELOW_NOTHING.search(text.lower()):
        raise Unreadable(
            f"{quoted(text)} has a size below nothing", "write the size without a minus sign"
        )
    return tuple(_each(text.translate(_SIGNS).lower().strip(), text))


def _each(plain: str, text: str) -> list[Token]:
    found: list[Token] = []
    place = 0
    while place < len(plain):
        match = _TOKEN.match(plain, place)
        if match is None:
            raise Unreadable(
                f"{quoted(text)} has the sign {quoted(plain[place])}",
                "use letters, figures, and the signs / - . , x only",
            )
        found.append(_token(match, text))
        place = match.end()
    return found


def _token(match: re.Match[str], text: str) -> Token:
    number, word, sign = match.groups()
    if number is None:
        return Token("word", word) if word is not None else Token("sign", sign)
    if len(number) > _LONGEST_NUMBER:
        raise Unreadable(f"{quoted(text)} has a number of too many figures", "eight figures do")
    return Token("number", number)
