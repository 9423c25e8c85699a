"""Machines as a workshop file describes them."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.source import Written
from binder.spec.choices import OneOf
from binder.spec.fields import Flag, Length, Words
from binder.spec.models import Model
from binder.workshop.fields import Lengths, Pitches, PitchOf, PowerOf, Teeth
from binder.workshop.ranges import Speeds

Reads = Annotated[Written, OneOf("what a dial reads", "diameter", "radius", "travel")]
StockClass = Annotated[Written, OneOf("a class of stock", "bars", "sheet", "wood")]


class Dial(Model):
    """A graduated handwheel and the screw behind it."""

    turn: PitchOf = Field(
        description="travel for one turn: the pitch of the screw, in mm, in, or tpi"
    )
    division: Length = Field(description="what one division is numbered as, in mm or in")
    reads: Reads | None = Field(
        default=None,
        description="whether the dial counts `diameter` or `radius`; left out: plain `travel`",
    )


class Tailstock(Model):
    """The barrel of a tailstock."""

    travel: Length = Field(description="how far the barrel travels, in mm or in")
    division: Length | None = Field(
        default=None, description="one division of its scale, in mm or in; left out: no scale"
    )
    taper: Words | None = Field(default=None, description="its socket, as `Morse 2`")


class Machine(Model):
    """What may be said of every machine."""

    power: PowerOf | None = Field(default=None, description="of its motor, in W")
    reverses: Flag = Field(
        default=False, description="true where its spindle runs both ways, as power tapping wants"
    )
    note: Words | None = Field(default=None, description="anything worth knowing of it")


class Lathe(Machine):
    """A lathe: what goes in, what turns it, what it can screwcut, and what its dials say."""

    swing: Length = Field(
        description="largest diameter over the bed, twice the centre height, in mm or in"
    )
    swing_over_cross_slide: Length | None = Field(
        default=None, description="largest diameter that passes over the cross-slide, in mm or in"
    )
    between_centres: Length = Field(description="longest work between centres, in mm or in")
    spindle_bore: Length = Field(
        title="largest bar through the spindle",
        description="largest bar that passes through the spindle, in mm or in",
    )
    spindle_taper: Words | None = Field(default=None, description="its socket, as `Morse 3`")
    speeds: Speeds = Field(description="a list of speeds in r/min, or a range where stepless")
    feeds: Lengths | None = Field(
        default=None, description="self-acting feeds for one turn, in mm or in"
    )
    leadscrew: PitchOf | None = Field(default=None, description="its pitch, in mm, in, or tpi")
    change_wheels: Teeth | None = Field(
        default=None, description="teeth of the change wheels, each as often as it is there"
    )
    conversion_wheels: Teeth | None = Field(
        default=None, description="teeth of the wheels for threads of the other system"
    )
    gearbox_pitches: Pitches | None = Field(
        default=None, description="pitches that a screwcutting gearbox gives, in mm or tpi"
    )
    cross_slide: Dial | None = Field(default=None, description="the dial of the cross-slide")
    top_slide: Dial | None = Field(default=None, description="the dial of the top-slide")
    tailstock: Tailstock | None = Field(default=None, description="the tailstock barrel")
    read_out: Length | None = Field(
        default=None, description="step of a digital read-out, in mm or in; left out: none"
    )


class Travels(Model):
    """How far the table and head of a mill travel."""

    x: Length = Field(description="along the table, in mm or in")
    y: Length = Field(description="across it, in mm or in")
    z: Length = Field(description="up and down, in mm or in")


class Dials(Model):
    """The handwheels of a mill."""

    x: Dial | None = Field(default=None, description="along the table")
    y: Dial | None = Field(default=None, description="across it")
    z: Dial | None = Field(default=None, description="up and down")


class Mill(Machine):
    """A milling machine, or a mill-drill."""

    travels: Travels = Field(description="how far it travels in each direction")
    speeds: Speeds = Field(description="a list of speeds in r/min, or a range where stepless")
    dials: Dials | None = Field(default=None, description="its handwheels")
    largest_drill: Length | None = Field(
        default=None, description="largest drill in mild steel, in mm or in"
    )
    largest_end_mill: Length | None = Field(
        default=None, description="largest end mill in mild steel, in mm or in"
    )
    spindle_taper: Words | None = Field(default=None, description="its socket, as `Morse 3`")
    read_out: Length | None = Field(
        default=None, description="step of a digital read-out, in mm or in; left out: none"
    )


class DrillingMachine(Machine):
    """A bench drill."""

    largest_drill: Length = Field(description="largest drill in mild steel, in mm or in")
    speeds: Speeds = Field(description="a list of speeds in r/min, or a range where stepless")
    travel: Length | None = Field(default=None, description="of the quill, in mm or in")
    throat: Length | None = Field(
        default=None, description="from the spindle to the column, in mm or in"
    )


class Saw(Machine):
    """A saw, of a machine or by hand."""

    kerf: Length = Field(description="width of the cut, in mm or in")
    cuts: list[StockClass] = Field(
        min_length=1, description="what it is used for: `bars`, `sheet`, `wood`"
    )
    takes: Length | None = Field(
        default=None, description="largest section that it takes, in mm or in"
    )
    by_hand: Flag = Field(default=False, description="true for a saw that is pushed by hand")


class Machines(Model):
    """All machines, by the names that the shop has for them."""

    lathes: dict[str, Lathe] = Field(default_factory=dict, description="lathes by name")
    mills: dict[str, Mill] = Field(default_factory=dict, description="mills by name")
    drilling_machines: dict[str, DrillingMachine] = Field(
        default_factory=dict, description="drilling machines by name"
    )
    saws: dict[str, Saw] = Field(
        default_factory=dict, description="saws by name, the first choice first"
    )
    others: dict[str, Words] = Field(
        default_factory=dict,
        description="anything else, as `hearth: propane torch, 4 kW`, in plain words",
    )
