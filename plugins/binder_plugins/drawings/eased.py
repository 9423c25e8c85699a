"""Stretches of a rod as bought that are eased to a measured bore, to rows of the table of data."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import HalfFact, exact, shown_length
from binder_drafting import Datum
from binder_plugins.drawings.callouts import bare, fine
from binder_solid.eased_along import eased_along

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design


def eased_rows(item: str, design: Design) -> Iterator[Datum]:
    """For each mate where it sits, and what counts there where the bar is tight in it."""
    for half in design.facts.all(HalfFact):
        if half.item == item and half.is_eased and half.suits is not None:
            least, most = (fine(add, design.units, "+").replace("-", "−") for add in half.suits)
            for number, where in enumerate(_where(half, design)):
                key = f"{half.subject}.eased{number or ''}"
                yield Datum(key, f"Eased, {where}", f"bore {most} to {least}")


def _where(half: HalfFact, design: Design) -> Iterator[str]:
    """`43 to 51 from left`, two in a row; the mate where nobody knows where it sits."""
    spans = eased_along(half, design).own
    for n in range(0, len(spans), 2):
        told = ", ".join(_from_to(one, design.units) for one in spans[n : n + 2])
        yield f"{told} from left"
    if not spans:
        yield f"to {half.mate}"


def _from_to(span: tuple[float, float], units: str) -> str:
    low, high = (bare(shown_length(exact(round(one, 2)), units)) for one in span)
    return f"{low} to {high}"
