"""What holds the work or the tool, as a workshop file describes it."""

from __future__ import annotations

from pydantic import Field

from binder.spec.fields import Flag, Length, Words
from binder.spec.models import Model
from binder.workshop.fields import Holes, Jaws, Ratio, Turn
from binder.workshop.ranges import LengthRange
from binder.workshop.runs import Sizes


class Chuck(Model):
    """A chuck of the lathe or of a dividing head."""

    jaws: Jaws = Field(description="how many jaws it has")
    grips: LengthRange = Field(
        description="smallest and largest diameter that it grips outside, in mm or in"
    )
    opens: LengthRange | None = Field(
        default=None, description="bores that it grips from inside, in mm or in"
    )
    independent: Flag = Field(default=False, description="true where each jaw is set by itself")
    run_out: Length | None = Field(
        default=None, description="what bar in it runs out, total reading, in mm or in"
    )
    note: Words | None = Field(default=None, description="anything worth knowing of it")


class Collets(Model):
    """A set of collets."""

    sizes: Sizes = Field(description="largest size of each collet, in mm or in")
    closes: Length | None = Field(
        default=None, description="by how much each one closes, in mm or in; left out: not at all"
    )
    run_out: Length | None = Field(
        default=None, description="what bar in them runs out, total reading, in mm or in"
    )
    note: Words | None = Field(default=None, description="anything worth knowing of them")


class Vice(Model):
    """A machine or bench vice."""

    opens: Length = Field(description="how far the jaws open, in mm or in")
    jaw_width: Length | None = Field(default=None, description="width of the jaws, in mm or in")
    jaw_depth: Length | None = Field(default=None, description="depth of the jaws, in mm or in")


class Steady(Model):
    """A rest that keeps slender work from bending away."""

    takes: LengthRange = Field(description="diameters that it takes, in mm or in")
    travels: Flag = Field(default=False, description="true for one that rides on the saddle")


class DividingHead(Model):
    """A dividing head with its plates."""

    ratio: Ratio = Field(description="turns of the crank for one turn of the work")
    plates: dict[str, Holes] = Field(
        default_factory=dict, description="the circles of each plate: numbers of holes"
    )
    direct: Holes | None = Field(
        default=None, description="positions of direct dividing, as 24 on the spindle itself"
    )
    swing: Length | None = Field(
        default=None, description="largest diameter that it turns, in mm or in"
    )


class RotaryTable(Model):
    """A rotary table."""

    diameter: Length = Field(description="of the table, in mm or in")
    ratio: Ratio = Field(description="turns of the handwheel for one turn of the table")
    division: Turn | None = Field(default=None, description="one division of its dial, in deg")
    plates: dict[str, Holes] = Field(
        default_factory=dict, description="the circles of each plate: numbers of holes"
    )


class Holding(Model):
    """All that holds work, by the names that the shop has for it."""

    chucks: dict[str, Chuck] = Field(default_factory=dict, description="chucks by name")
    collets: dict[str, Collets] = Field(default_factory=dict, description="collet sets by name")
    drill_chucks: dict[str, LengthRange] = Field(
        default_factory=dict, description="what each drill chuck takes, in mm or in"
    )
    faceplate: Length | None = Field(default=None, description="its diameter, in mm or in")
    angle_plate: Length | None = Field(default=None, description="its height, in mm or in")
    vices: dict[str, Vice] = Field(default_factory=dict, description="vices by name")
    steadies: dict[str, Steady] = Field(default_factory=dict, description="steadies by name")
    dividing_heads: dict[str, DividingHead] = Field(
        default_factory=dict, description="dividing heads by name"
    )
    rotary_tables: dict[str, RotaryTable] = Field(
        default_factory=dict, description="rotary tables by name"
    )
    fixtures: list[Words] = Field(
        default_factory=list,
        description="other things that hold work, in plain words, as `pair of V-blocks, 50 mm`",
    )
