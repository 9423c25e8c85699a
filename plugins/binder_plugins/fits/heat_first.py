"""A size that a flame moves is measured when it is cold, and its mate is fitted to it then."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from binder.api import Design, Joint, TogetherFact
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.lining import hot_on
from binder_plugins.fits.naming import is_made

MEASURED_COLD = "the flame scales it and moves its size: solder, measure it again cold, then fit"


def fitted_after(
    fits: Iterable[MadeFit], done: Iterable[TogetherFact], design: Design
) -> Iterator[tuple[Joint, str]]:
    """A joint made in a flame on the half that is measured, and the task that fits its mate.

    The mate gets its size on its own leaf, or in the task on parts put together that `done` tells.
    """
    left = {place: fact.subject for fact in done for place in fact.left}
    for fit in fits:
        if not fit.suit:
            continue
        first, follows = (fit.hole, fit.shaft) if fit.suit == "shaft" else (fit.shaft, fit.hole)
        if not is_made(follows.end.item, design):
            continue
        later = left.get(str(follows.end), f"make {follows.end.item}")
        for hot in hot_on((first.end.item,), (follows.end.item,), design):
            yield hot, later
