"""Stock on the shelf and stock that can be bought, as a workshop file describes them."""

from __future__ import annotations

from pydantic import Field

from binder.spec.fields import Count, Length, StockOf, Words
from binder.spec.models import Model
from binder.workshop.fields import Allowance, Lengths, Price


class Piece(Model):
    """Stock of one kind and length."""

    stock: StockOf = Field(description="form and section, as `20 mm round bar` or `2 mm sheet`")
    material: Words = Field(description="as a spec would name it, as `mild steel`")
    length: Length = Field(description="of one piece, in mm or in")
    width: Length | None = Field(default=None, description="of sheet and plate, in mm or in")
    price: Price | None = Field(
        default=None, description="of one piece, in the currency under `buying`"
    )
    note: Words | None = Field(default=None, description="anything worth knowing of it")


class ShelfPiece(Piece):
    """Stock that is there."""

    quantity: Count = Field(default=1, description="how many such pieces; left out: one")


class Buying(Model):
    """How stock is bought here."""

    currency: Words | None = Field(default=None, description="of all prices, as `EUR`")
    bar_lengths: Lengths | None = Field(
        default=None, description="lengths in which bars are sold here, in mm or in"
    )
    prices: list[Piece] = Field(
        default_factory=list, description="what can be bought, one line for each size"
    )


class Allowances(Model):
    """What cutting stock loses, besides the width of the saw."""

    facing: Allowance | None = Field(
        default=None, description="for facing each end of a piece, in mm or in"
    )
    holding: Allowance | None = Field(
        default=None, description="held in the chuck and lost, once for each bar, in mm or in"
    )
