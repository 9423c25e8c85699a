"""The words of a size to labels: how much room they take and where each of them stands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from binder.api import DrawnLabel, text_width
from binder_drafting.plane import Point, Rectangle, union

# ISO 3098-1: preferred heights of lettering 2.5 and 3.5 mm; lines 1.6 of their height apart or
# more. From memory of the standard.
FIGURE = 3.5
SMALL = 2.5
_LINE = 5.6
_STACK = 3.5
_ABOVE = 1.05
_BELOW = 0.34
# A line is not broken at a comma that leaves less of it than this.
_LATE = 0.4
_HANGING = frozenset("gjpqyQ,;()[]{}|/↧⌀Ø")

# What fits here is marked, for it is measured; all else is plain. Common practice has no sign, so
# the title block explains ours.
SIGNS = {"fit": "◆ "}


@dataclass(frozen=True, slots=True)
class Written:
    """Some letters: how far along and how far above the first base line, and their height."""

    along: float
    above: float
    text: str
    height: float


@dataclass(frozen=True)
class Words:
    """What belongs together and is read as one."""

    parts: tuple[Written, ...]

    @cached_property
    def extent(self) -> Rectangle:
        """The room from the base line's beginning, y downwards."""
        return union(
            Rectangle(
                part.along,
                -part.above - _ABOVE * part.height,
                part.along + text_width(part.text, part.height),
                -part.above + (_BELOW if _HANGING.intersection(part.text) else 0.05) * part.height,
            )
            for part in self.parts
        )

    @property
    def width(self) -> float:
        """From the first letter to the end of the longest line."""
        return self.extent.right

    @property
    def height(self) -> float:
        """From the lowest hanging letter to the highest."""
        return self.extent.height

    @property
    def drop(self) -> float:
        """How far letters hang under the first base line."""
        return self.extent.bottom

    def labels(self, at: Point, *, is_upright: bool = False) -> tuple[DrawnLabel, ...]:
        """The labels with the first base line's beginning at a point; upright reads upwards."""
        x, y = at
        if is_upright:
            return tuple(
                DrawnLabel(x - one.above, y - one.along, one.text, one.height, turn=90)
                for one in self.parts
            )
        return tuple(
            DrawnLabel(x + one.along, y - one.above, one.text, one.height) for one in self.parts
        )

    def box(self, at: Point, *, is_upright: bool = False) -> Rectangle:
        """The rectangle of the labels at a point."""
        here = self.extent
        if is_upright:
            return Rectangle(
                at[0] + here.top, at[1] - here.right, at[0] + here.bottom, at[1] - here.left
            )
        return here.moved(*at)


def size_words(text: str, limits: Sequence[str] = (), tier: str = "tool") -> Words:
    """A figure, with its deviations stacked behind it: the lower on the figure's base line.

    Source: ISO 129-1, figures with deviations in smaller lettering; from memory.
    """
    main = SIGNS.get(tier, "") + text
    parts = [Written(0.0, 0.0, main, FIGURE)]
    after = text_width(main, FIGURE) + 0.8
    for place, limit in enumerate(reversed(limits)):
        parts.append(Written(after, place * _STACK, limit, SMALL))
    return Words(tuple(parts))


def lines_of_words(lines: Sequence[str], tier: str = "tool", height: float = FIGURE) -> Words:
    """Several lines, one under the other; the last stands on the base line."""
    marked = [SIGNS.get(tier, "") + lines[0], *lines[1:]]
    step = _LINE * height / FIGURE
    return Words(
        tuple(
            Written(0.0, step * (len(marked) - 1 - n), line, height)
            for n, line in enumerate(marked)
        )
    )


def wrapped(lines: Sequence[str], width: float, height: float = FIGURE) -> tuple[str, ...]:
    """Lines broken to fit a width in mm: at their spaces, and within a word that is too long."""
    found: list[str] = []
    for line in lines:
        now = ""
        for word in _short_enough(line.split(" "), width, height):
            longer = f"{now} {word}" if now else word
            if now and text_width(longer, height) > width:
                found.append(now)
                now = word
            else:
                now = longer
        found.append(now)
    return tuple(found)


def folded(lines: Sequence[str], width: float, height: float = FIGURE) -> tuple[str, ...]:
    """Lines broken to fit a width in mm, after a comma where one comes late enough."""
    found: list[str] = []
    for line in lines:
        rest = line
        while text_width(rest, height) > width:
            cuts = [n + 1 for n, letter in enumerate(rest) if rest[n : n + 2] == ", "]
            fits = [n for n in cuts if width * _LATE <= text_width(rest[:n], height) <= width]
            if not fits:
                break
            found.append(rest[: fits[-1]])
            rest = rest[fits[-1] + 1 :]
        found += wrapped([rest], width, height)
    return tuple(found)


def _short_enough(words: Sequence[str], width: float, height: float) -> Iterator[str]:
    for word in words:
        rest = word
        while text_width(rest, height) > width:
            cuts = range(len(rest) - 1, 1, -1)
            cut = next((n for n in cuts if text_width(rest[:n], height) <= width), 1)
            yield rest[:cut]
            rest = rest[cut:]
        if rest or not word:
            yield rest
