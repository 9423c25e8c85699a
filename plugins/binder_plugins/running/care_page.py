"""Moving joints to the chart of oil, and what is looked after between runs."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Column, Design, Paragraph, Place, Section, Table, Text
from binder_plugins.running.moving import Moving, moving
from binder_plugins.running.oiling import oil_for, oil_source
from binder_plugins.running.upright import lifts_out

_COLUMNS = (
    Column("No.", 0.8, is_figure=True),
    Column("Joint", 3.4),
    Column("Runs at", 2.4, is_figure=True),
    Column("Way in", 2.2),
    Column("What", 3.2),
    Column("How often", 2.2),
    Column("Why", 3),
)
_WORDS = (
    "Numbers follow the motion, outwards from what drives it. A drop is what hangs from a wire "
    "of 1 mm; what runs out is wiped off. Too much oil is how belts slip and dust sticks. Before "
    "the model stands for a season, run it, wipe it, and oil every joint once."
)

# Slower rubbing than this is no matter for the oil.
_FAST_MS = 0.05


def care_pages(design: Design) -> Iterator[Section]:
    """One page: the chart."""
    rows = tuple(_row(n, one) for n, one in enumerate(moving(design), 1))
    if rows:
        source = Paragraph((f"After: {oil_source()}.",))
        lifted = lifts_out(design)
        more = (Paragraph((lifted,)),) if lifted else ()
        blocks = (Paragraph((_WORDS,)), *more, Table(_COLUMNS, rows), source)
        yield Section("care", "Care", Place.CARE, blocks)


def _row(number: int, one: Moving) -> tuple[Text, ...]:
    oil = oil_for(one)
    is_dry = oil is None or oil.what == "none"
    return (
        (str(number),),
        (one.phrase,),
        (_speed(one),),
        ("" if is_dry else one.way_in,),
        (oil.what if oil is not None else "as its maker says",),
        (oil.often if oil is not None else "",),
        (oil.why if oil is not None else "",),
    )


def _speed(one: Moving) -> str:
    if one.rpm is None:
        return ""
    is_fast = one.rubbing is not None and one.rubbing >= _FAST_MS
    return f"{one.rpm:.3g} r/min{f', {one.rubbing:.2g} m/s' if is_fast else ''}"
