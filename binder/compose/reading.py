"""How to read this binder."""

from __future__ import annotations

from binder.design import Design
from binder.pages import Blank, Facts, Paragraph, Place, Section, Text

_FIRST_WORDS = (
    "Read a part's leaf to the end before the first cut. Tick each line when it is done, and "
    "write measured sizes into the ruled blanks: next year they are worth more than memory."
)


def read_this(design: Design) -> Section:
    """What the marks and words of the binder mean."""
    head = design.spec.written.model
    return Section(
        id="read-this",
        title="How to read this binder",
        place=Place.READ_THIS,
        starts_page=True,
        blocks=(
            Paragraph((_FIRST_WORDS,)),
            Facts(_words(head.units, head.bare_numbers or "")),
        ),
    )


def _words(units: str, bare: str) -> tuple[tuple[str, Text], ...]:
    master = "millimetres" if units == "mm" else "inches"
    other = "a size written in the other system is shown as its author wrote it"
    pairs: list[tuple[str, Text]] = [
        ("Units", (f"{master}; {other}.",)),
        ("n off", ("so many are needed for one model, all assemblies counted.",)),
        ("± after a size", ("the standard uncertainty of a size taken off a picture.",)),
        ("no place told", ("what carries no size to place it lies in the middle.",)),
        ("no gauge told", ("the caliper reads it, and a drilled hole is as its drill left it.",)),
        ("dummy", ("made for looks: left out of the checks of what must work.",)),
        ("master", ("the half of a joint that is made and measured first.",)),
        ("because", ("the maker departs from the usual way, for the reason given.",)),
        ("measure first", ("in hand and measured before anything is made to fit it.",)),
        ("why", ("ten words beside a figure; binder why prints the whole chain.",)),
        ("blank", ("measured size: ", Blank("example", units))),
    ]
    if bare:
        unit = "millimetres" if bare == "mm" else "inches"
        pairs.insert(1, ("Bare numbers", (f"a length without a unit is in {unit}.",)))
    return tuple(pairs)
