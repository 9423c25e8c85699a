"""The questions that this plugin answers; the sums are imported when they are asked for."""

from __future__ import annotations

from collections.abc import Sequence
from importlib import import_module

from binder.api import Answer, Diagnostic, Reckoning, Workshop


def _late(module: str, function: str, words: Sequence[str], workshop: Workshop) -> Answer:
    found = import_module(f"binder_plugins.drive.asking.{module}")
    answer: Answer = getattr(found, function)(words, workshop)
    return answer


def _belt(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    return _tried("belt", "belt_answer", words, workshop)


def _gear(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    return _tried("gear", "gear_answer", words, workshop)


def _train(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    return _tried("trains", "train_answer", words, workshop)


def _ratio(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    return _tried("trains", "ratio_answer", words, workshop)


def _travel(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    return _tried("moves", "travel_answer", words, workshop)


def _divide(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    return _tried("dividing", "divide_answer", words, workshop)


def _tried(
    module: str, function: str, words: Sequence[str], workshop: Workshop
) -> Answer | Diagnostic:
    from binder_plugins.drive.asking.answering import answered

    return answered(lambda said, shop: _late(module, function, said, shop))(words, workshop)


RECKONINGS = (
    Reckoning(
        "belt",
        "24 mm to 40 mm centres 180 mm [laid crossed] [cord 3 mm], or `length 460 mm`",
        "length and wraps of a belt, or the centres for a length",
        _belt,
    ),
    Reckoning(
        "gear",
        "54 module 0.5 mm [mate 18] [shift 0.2], or `54 outside 28 mm [bore 4 mm]`",
        "blank, depth, measures and cutter of a gear, or what a found one is",
        _gear,
    ),
    Reckoning(
        "train",
        "18/54 20/60 [speed 60]",
        "ratio and speed of a train of gears, driver / driven",
        _train,
    ),
    Reckoning(
        "ratio",
        "1:3.75 [wheels 20 25 30 40], or `pitch 1.5 mm [leadscrew 8 tpi]`",
        "the best train of the wheels on the shelf, for a ratio or a thread",
        _ratio,
    ),
    Reckoning(
        "screw-travel",
        "lead 2 mm divisions 100 [travel 12.34 mm]",
        "travel of a screw for a turn and a division of its dial",
        _travel,
    ),
    Reckoning(
        "divide",
        "54 [ratio 40] [holes 27 33 39], or `54 ratio 90 mark 1 min`",
        "turns and holes of the dividing head, or places by the dial of a rotary table",
        _divide,
    ),
)
