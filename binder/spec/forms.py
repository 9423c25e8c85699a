"""The forms in which stock is sold, and how many sizes tell the section of each."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Form:
    """A form of stock: `sizes` tell its section; `is_bar` says that it is cut to length."""

    name: str
    sizes: tuple[str, ...]
    is_bar: bool = True


_FORMS = (
    Form("round bar", ("diameter",)),
    Form("drawn rod", ("diameter",)),
    Form("hexagon bar", ("across flats",)),
    Form("square bar", ("side",)),
    Form("flat bar", ("width", "thickness")),
    Form("tube", ("outside diameter", "wall")),
    Form("wire", ("diameter",)),
    Form("strip", ("width", "thickness")),
    Form("board", ("width", "thickness")),
    Form("plate", ("thickness",), is_bar=False),
    Form("sheet", ("thickness",), is_bar=False),
    Form("casting", (), is_bar=False),
)

FORMS: dict[str, Form] = {form.name: form for form in _FORMS}
