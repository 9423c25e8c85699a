"""The questions at the bench that this plugin answers."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Answer, Diagnostic, Reckoning, Workshop


# The tables of the trade are read only when a question is asked.
def _thread(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.threads.answers import about_thread

    return about_thread(words, workshop)


def _drill(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.threads.answers import about_drill

    return about_drill(words, workshop)


def _wires(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    from binder_plugins.threads.answers import about_wires

    return about_wires(words, workshop)


RECKONINGS = (
    Reckoning(
        "thread",
        'THREAD [into MATERIAL], as "1/4 x 40 ME" or M3 into brass',
        "Its diameters, pitch and depth, its tapping and clearance drills.",
        _thread,
    ),
    Reckoning("drill", 'DRILL, as "no. 34", F, 7/64 in or 3.3 mm', "Its diameter.", _drill),
    Reckoning(
        "wires",
        "THREAD [over WIRE], as M6 over 0.58 mm",
        "The size over three wires, the best wire, and those that can be used.",
        _wires,
    ),
)
