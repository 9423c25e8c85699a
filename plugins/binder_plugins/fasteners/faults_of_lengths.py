"""What is wrong with a written length of a bolt, pin or rivet."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Diagnostic
from binder_plugins.fasteners import codes
from binder_plugins.fasteners.choosing import better_words
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import Length, NoLength, NutEnd

_NEAR_MM = 1e-6
_MOST_PAST_THREADS = 10


def bolt_faults(
    seen: Seen, end: NutEnd, best: Length | NoLength, lengths: dict[float, str]
) -> Iterator[Diagnostic]:
    """A bolt that does not fill its nut, or stands far out of it."""
    name = seen.asked.name
    length = name.length_mm or 0.0
    past = length - end.stack_mm
    if past < -_NEAR_MM:
        yield codes.ENGAGEMENT_SHORT.at(
            seen.asked.at,
            f"'{name.says}' ends {-past:.1f} mm inside its nut in '{seen.joint.name}'",
            help=_past(best, lengths, end),
        )
    elif past > _MOST_PAST_THREADS * end.pitch_mm:
        yield codes.SCREW_TOO_LONG.at(
            seen.asked.at,
            f"'{name.says}' stands {past:.1f} mm out of its nut in '{seen.joint.name}'",
            help=_past(best, lengths, end),
        )


def _past(best: Length | NoLength, lengths: dict[float, str], end: NutEnd) -> str:
    if isinstance(best, NoLength):
        return better_words(best, lengths)
    past = (best.chosen_mm - end.stack_mm) / end.pitch_mm
    text = lengths.get(best.chosen_mm, f"{best.chosen_mm:g} mm")
    return f"{text} is sold and stands {past:.1f} threads past the nut"
