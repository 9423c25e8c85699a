"""The questions at the bench that this plugin answers: O-rings and packed glands."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from binder.api import COMMAND_LINE, Answer, Diagnostic, Reckoning, Workshop
from binder_plugins.seals.codes import RECKON_UNREADABLE
from binder_trade.explained import NotDefined

_Asked = Callable[[Sequence[str], Workshop], Answer]


# The sums are imported when they are asked for: most runs ask for none.
def _ring(words: Sequence[str], workshop: Workshop) -> Answer:
    from binder_plugins.seals.ask_seals import ring_answer

    return ring_answer(words, workshop)


def _box(words: Sequence[str], workshop: Workshop) -> Answer:
    from binder_plugins.seals.ask_seals import box_answer

    return box_answer(words, workshop)


def _answered(run: _Asked) -> Callable[[Sequence[str], Workshop], Answer | Diagnostic]:
    def tried(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
        try:
            return run(words, workshop)
        except NotDefined as refusal:
            return RECKON_UNREADABLE.at(COMMAND_LINE, refusal.reason, help=refusal.way_out)

    return tried


RECKONINGS = (
    Reckoning(
        "oring",
        "bore 12 mm (or rod 6 mm) [moving | standing] [ring 9 mm x 1.8 mm]",
        "the ring, its groove, how far it is pressed and stretched, and the lead-in",
        _answered(_ring),
    ),
    Reckoning(
        "packing",
        "rod 6 mm [packing 2 mm] [rings 4]",
        "stuffing box, gland and the length of each ring",
        _answered(_box),
    ),
)
