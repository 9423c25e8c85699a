"""A whole workshop file, as it is written."""

from __future__ import annotations

from pydantic import Field

from binder.spec.fields import Words
from binder.spec.models import Format, Model, UnitWord
from binder.workshop.cutters import Cutters, Reamers, Taps
from binder.workshop.fields import Evening, Pace
from binder.workshop.holding import Holding
from binder.workshop.machines import Machines
from binder.workshop.measuring import MeasuringTool
from binder.workshop.runs import Sizes
from binder.workshop.shelf import Allowances, Buying, ShelfPiece


class WorkshopEntry(Model):
    """What a maker owns, format 1."""

    format: Format = Field(description="the version of this language: 1")
    name: Words = Field(description="of the workshop, for the cover of a binder")
    units: UnitWord = Field(description="the system of its tools for the most part: mm or inch")
    note: Words | None = Field(default=None, description="anything worth knowing of it")
    machines: Machines = Field(default_factory=Machines, description="machines and saws")
    holding: Holding = Field(
        default_factory=Holding, description="chucks, collets, vices, dividing head"
    )
    drills: dict[str, Sizes] = Field(
        default_factory=dict,
        description="sets of drills by name: sizes, or runs as `1 mm to 13 mm by 0.1 mm`",
    )
    reamers: dict[str, Reamers] = Field(default_factory=dict, description="sets of reamers by name")
    taps: Taps = Field(default_factory=Taps, description="taps by kind and thread")
    dies: list[Words] = Field(
        default_factory=list, description="dies by thread, as `M3` or `1/4-20 UNC`"
    )
    cutters: Cutters = Field(default_factory=Cutters, description="all other cutters")
    measuring: dict[str, MeasuringTool] = Field(
        default_factory=dict, description="measuring tools by name"
    )
    hand_tools: list[Words] = Field(
        default_factory=list,
        description="files, scribers, hammers, oils and the like, in plain words, as `fine file`",
    )
    shelf: list[ShelfPiece] = Field(
        default_factory=list, description="bars and sheet that are there"
    )
    buying: Buying = Field(default_factory=Buying, description="currency, lengths and prices")
    allowances: Allowances = Field(
        default_factory=Allowances, description="what is lost in cutting and holding stock"
    )
    evening: Evening | None = Field(
        default=None, description="how long an evening in the shop lasts, door to door, in h"
    )
    pace: dict[str, Pace] = Field(
        default_factory=dict,
        description=(
            "how your times compare with those printed, by machine, and `bench`: "
            "1.3 takes a third longer"
        ),
    )
