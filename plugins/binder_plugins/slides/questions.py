"""The questions at the bench that this plugin answers."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from binder.api import Answer, Diagnostic, NotAskedError, Reckoning, Workshop
from binder_plugins.slides.answering import refused
from binder_trade.explained import NotDefined

_Asked = Callable[[Sequence[str], Workshop], Answer]


# The sums are imported when they are asked for: most runs ask for none.
def _dovetail(words: Sequence[str], workshop: Workshop) -> Answer:
    from binder_plugins.slides.ask_dovetail import dovetail_answer

    return dovetail_answer(words, workshop)


def _taper(words: Sequence[str], workshop: Workshop) -> Answer:
    from binder_plugins.slides.ask_taper import taper_answer

    return taper_answer(words, workshop)


def _leadscrew(words: Sequence[str], workshop: Workshop) -> Answer:
    from binder_plugins.slides.ask_leadscrew import leadscrew_answer

    return leadscrew_answer(words, workshop)


def _wood(words: Sequence[str], workshop: Workshop) -> Answer:
    from binder_plugins.slides.ask_wood import wood_answer

    return wood_answer(words, workshop)


def _answered(run: _Asked) -> Callable[[Sequence[str], Workshop], Answer | Diagnostic]:
    """The question with its refusals turned into findings."""

    def tried(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
        try:
            return run(words, workshop)
        except (NotAskedError, NotDefined) as refusal:
            return refused(refusal)

    return tried


RECKONINGS = (
    Reckoning(
        "dovetail",
        "root 24 mm depth 6 mm [angle 60 deg] [gib 2 mm] [clearance 0.1 mm] [pins 5 mm]",
        "tail and slot from one definition (or `top 31 mm`), and both over two pins",
        _answered(_dovetail),
    ),
    Reckoning(
        "taper",
        "large 20 mm small 18 mm length 40 mm, or `1:20 large 20 mm length 40 mm`, or `Morse 2`",
        "angle of the topslide, ends, tailstock set-over, and whether it holds",
        _answered(_taper),
    ),
    Reckoning(
        "leadscrew",
        "Tr 10 x 2 [starts 2] [load 200 N] [friction 0.15] [nut 15 mm] (or square, or M8 x 1.25)",
        "travel for a turn, sizes of screw and nut, torque, and whether it runs back",
        _answered(_leadscrew),
    ),
    Reckoning(
        "wood",
        "oak width 100 mm [cut flat-sawn] [now 10 driest 8 dampest 13] [hole 4.5 mm]",
        "how far a board moves across its grain, and the slot that lets it",
        _answered(_wood),
    ),
)
