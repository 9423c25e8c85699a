"""Readers of what is no plain size: words, names, references, stock, places, threads."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction

from pydantic import ValidationInfo
from pydantic_core import PydanticCustomError

from binder.parameters.near import did_you_mean
from binder.source import Written
from binder.spec import codes
from binder.spec.forms import FORMS
from binder.spec.pieces import Piece, read_piece, split_at
from binder.spec.reading import LEAST_LENGTH, MOST_LENGTH, size_reader, written
from binder.spec.refusal import refused, with_help
from binder.spec.values import SUIT, Member, Position, Reference, Size, Stock, Taper
from binder.units import LENGTH, Misread, Quantity, ThreadName, read_thread

_NAME = re.compile(r"[A-Za-z][A-Za-z0-9_-]*")
_REFERENCE = re.compile(r"([A-Za-z][A-Za-z0-9_-]*)(?:\.([A-Za-z][A-Za-z0-9_-]*))?")
_MEMBER = re.compile(r"(?:([0-9]{1,3}) off )?([A-Za-z][A-Za-z0-9_-]*)")
_ALONG = re.compile(
    r"(.{1,200}?) ((?:from|above|below|left of|right of|in front of|behind) .{1,100})"
)
_WHOLE = re.compile(r"[0-9]{1,6}")
MOST_WORDS = 4000
MOST_PIECES = 999


def read_words(value: object) -> Written:
    """A line or a few of plain text."""
    text = written(value, "words")
    if len(text) > MOST_WORDS:
        raise refused(
            codes.TEXT_TOO_LONG,
            f"{len(text)} characters are too many here",
            f"keep it under {MOST_WORDS}",
        )
    if not text.strip():
        raise refused(codes.TEXT_EMPTY, "there are no words here", "write some, or drop the key")
    return text


def read_name(value: object) -> Written:
    """One word that names something."""
    text = written(value, "a name")
    if not _NAME.fullmatch(text):
        raise refused(
            codes.BAD_NAME,
            f"'{text}' cannot be a name",
            "use letters, figures, _ and -, beginning with a letter",
        )
    return text


def read_flag(value: object) -> bool:
    """`true` or `false`, and nothing else that YAML might take for them."""
    text = written(value, "true or false")
    if text not in ("true", "false"):
        raise refused(
            codes.NOT_TRUE_OR_FALSE, f"'{text}' is neither true nor false", "write true or false"
        )
    return text == "true"


def read_count(value: object) -> int:
    """A whole number from 1 to 999."""
    text = written(value, "a whole number")
    if not _WHOLE.fullmatch(text) or not 1 <= int(text) <= MOST_PIECES:
        raise refused(
            codes.BAD_COUNT,
            f"'{text}' is not a count from 1 to 999",
            "write a whole number from 1 to 999",
        )
    return int(text)


def read_reference(value: object) -> Reference:
    """`item` or `item.place`."""
    text = written(value, "a part and a feature, as crank.bore")
    found = _REFERENCE.fullmatch(text)
    if not found:
        raise refused(
            codes.BAD_REFERENCE,
            f"'{text}' names no part or feature",
            "write a part, or a part and a feature, as crank.bore",
        )
    return Reference(found[1], found[2] or "", text)


def read_member(value: object) -> Member:
    """`item`, or `2 off item`."""
    text = written(value, "a part, as crank or 2 off crank")
    found = _MEMBER.fullmatch(text)
    if not found or found[1] in ("0", "00", "000"):
        raise refused(
            codes.BAD_MEMBER,
            f"'{text}' names no part",
            "write the part's name, or `2 off` and its name",
        )
    return Member(found[2], int(found[1] or 1), text.span)


def read_stock(value: object, info: ValidationInfo) -> Stock:
    """A form as sold, with its sizes before it: `25 mm x 6 mm flat bar`, or `round bar`."""
    text = written(value, "stock, as 20 mm round bar")
    form = next((name for name in FORMS if text == name or text.endswith(" " + name)), None)
    if form is None:
        raise refused(
            codes.STOCK_UNKNOWN,
            f"'{text}' is no form of stock",
            did_you_mean(_last_words(text), FORMS) or f"one of: {', '.join(FORMS)}",
        )
    sizes = text.removesuffix(form)
    return Stock(form, _sizes(text, sizes, form, info) if sizes.strip() else (), text)


def _last_words(text: str) -> str:
    return " ".join(text.split()[-2:])


def _sizes(text: Written, sizes: str, form: str, info: ValidationInfo) -> tuple[Size, ...]:
    wanted = FORMS[form].sizes
    pieces = split_at(sizes, " [x×] ")
    if len(pieces) != len(wanted):
        raise refused(
            codes.STOCK_SIZES,
            f"{form} is told by {' x '.join(wanted) or 'no size'}",
            f"as in `{' x '.join('6 mm' for _ in wanted)} {form}`",
        )
    read = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)
    return tuple(read_piece(text, piece, lambda part: read(part, info)) for piece in pieces)


def read_position(value: object, info: ValidationInfo) -> Position:
    """`6 mm from flange`, `height above base, 4 mm from front`, or plain words (`middle`)."""
    text = written(value, "a place, as 6 mm from flange")
    first, *others = (
        read_piece(text, piece, lambda part: _place(part, info)) for piece in split_at(text, ", ")
    )
    return replace(first, more=tuple(others))


def _place(text: Written, info: ValidationInfo) -> Position:
    found = _ALONG.fullmatch(text)
    if not found:
        return Position(text)
    read = size_reader(LENGTH, -MOST_LENGTH, MOST_LENGTH)
    distance = read_piece(text, Piece(0, found[1]), lambda piece: read(piece, info))
    return Position(text, distance, found[2])


def read_thread_name(value: object) -> ThreadName:
    """A thread by its designation."""
    text = written(value, "a thread, as M3 or 2 BA")
    found = read_thread(text)
    if isinstance(found, Misread):
        raise refused(codes.THREAD_UNKNOWN, f"'{text}' names no thread", found.reason)
    return found


def read_length_or(word: str) -> Callable[[object, ValidationInfo], Size | Written]:
    """A reader of a length, or of one word that stands for it."""
    read = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)

    def read_either(value: object, info: ValidationInfo) -> Size | Written:
        if isinstance(value, Written) and value == word:
            return value
        try:
            return read(value, info)
        except PydanticCustomError as error:
            near = did_you_mean(str(value), (word,)) if isinstance(value, Written) else ""
            raise (with_help(error, near) if near else error) from None

    return read_either


def read_length_to_come(value: object, info: ValidationInfo) -> Size:
    """A length, or `to suit`: nothing yet, until a drive settles it."""
    if isinstance(value, Written) and value == SUIT:
        return Size(Quantity(Fraction(0), LENGTH), value)
    return size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)(value, info)


def read_thread_or_suit(value: object) -> ThreadName | Written:
    """A thread, or `to suit` where a joint says which."""
    return value if isinstance(value, Written) and value == SUIT else read_thread_name(value)


def read_taper(value: object, info: ValidationInfo) -> Taper:
    """`22 mm to 16 mm`: the diameters at both ends."""
    text = written(value, "a taper, as 22 mm to 16 mm")
    if len(split_at(text, " to ")) != 2:
        raise refused(
            codes.BAD_TAPER,
            f"'{text}' is no taper",
            "write the diameters at its ends, as 22 mm to 16 mm",
        )
    return Taper(*_both(text, info), text.span)


def read_range(value: object, info: ValidationInfo) -> Taper:
    """`0.1 mm to 0.2 mm`: the least and the most."""
    text = written(value, "a least and a most, as 0.1 mm to 0.2 mm")
    pieces = split_at(text, " to ")
    least, most = _both(text, info) if len(pieces) == 2 else (None, None)
    if least is None or most is None or least.exact > most.exact:
        raise refused(
            codes.BAD_RANGE,
            f"'{text}' is no range",
            "write the least and the most, as 0.1 mm to 0.2 mm",
        )
    return Taper(least, most, text.span)


def _both(text: Written, info: ValidationInfo) -> tuple[Size, Size]:
    read = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)
    first, second = (
        read_piece(text, piece, lambda part: read(part, info)) for piece in split_at(text, " to ")
    )
    return first, second
