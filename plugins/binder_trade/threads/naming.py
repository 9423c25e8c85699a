"""Turns a name of a thread, read by whatever grammar, into the thread."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from binder_trade.threads.complete import thread
from binder_trade.threads.thread import Thread

if TYPE_CHECKING:
    from fractions import Fraction


class Named(Protocol):
    """What a name of a thread carries when its grammar has been read; sizes in mm."""

    @property
    def family(self) -> str:
        """The family, as `metric` or `BSF`."""

    @property
    def major_mm(self) -> Fraction | None:
        """The diameter, where the name states one."""

    @property
    def number(self) -> str:
        """A size that is a name and no length: `2` of 2 BA, `1/8` of 1/8 BSP."""

    @property
    def pitch_mm(self) -> Fraction | None:
        """The pitch, where the name states one."""

    @property
    def tpi(self) -> int | None:
        """The threads to the inch, where the name states them."""

    @property
    def is_left_hand(self) -> bool:
        """Whether the name says left hand."""

    @property
    def starts(self) -> int:
        """How many threads run beside one another."""


def from_name(name: Named) -> Thread:
    """The thread that a name means. Raises NotMade as `thread` does."""
    return thread(
        name.family,
        name.major_mm,
        name.number,
        name.pitch_mm,
        name.tpi,
        is_left_hand=name.is_left_hand,
        starts=name.starts,
    )
