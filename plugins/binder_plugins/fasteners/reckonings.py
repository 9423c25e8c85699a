"""The questions at the bench that this plugin answers."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Answer, Diagnostic, Reckoning, Workshop


# The tables of hardware are read only when a question is asked.
def _screw(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.fasteners.about_screws import about_screw

    return about_screw(words, workshop)


def _key(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.fasteners.about_shafts import about_key

    return about_key(words, workshop)


def _circlip(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.fasteners.about_shafts import about_circlip

    return about_circlip(words, workshop)


def _pattern(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.fasteners.about_patterns import about_pattern

    return about_pattern(words, workshop)


def reckonings() -> Sequence[Reckoning]:
    """Screws, keys, circlips and patterns."""
    return (
        Reckoning(
            "screw",
            "SCREW [grip SIZE] [into MATERIAL [SIZE deep | SIZE through]] [counterbored], as "
            '"M3 cap screw" grip 5 mm into brass 10 mm deep',
            "Its holes, its head and seat, and the length that holds and does not bottom.",
            _screw,
        ),
        Reckoning("key", "SHAFT, as 12 mm", "The parallel key and both keyways.", _key),
        Reckoning(
            "circlip",
            "SHAFT, as 8 mm, or a bore as bore 20 mm",
            "The circlip and its groove.",
            _circlip,
        ),
        Reckoning(
            "pattern",
            "PATTERN [face LENGTH x WIDTH], as 4 off on 30 mm PCD",
            "Where each hole is, the chord for the dividers, and the least distances.",
            _pattern,
        ),
    )
