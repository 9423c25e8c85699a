"""Cutters, reamers and knurls as a workshop file describes them."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.source import Written
from binder.spec.choices import OneOf
from binder.spec.fields import Flag, Length, Number, Words
from binder.spec.models import Model
from binder.workshop.fields import CutterAngle, CutterNumbers
from binder.workshop.runs import Sizes

KnurlPattern = Annotated[Written, OneOf("a pattern of knurl", "straight", "diamond")]


class DiscCutter(Model):
    """A cutter told by its diameter and width: a slitting saw, T-slot or Woodruff cutter."""

    diameter: Length = Field(description="outside diameter, in mm or in")
    width: Length = Field(description="along the axis, which is the width of its cut, in mm or in")


class DovetailCutter(Model):
    """A dovetail cutter."""

    diameter: Length = Field(description="at its widest, in mm or in")
    angle: CutterAngle = Field(description="between flank and face, in deg")
    width: Length = Field(description="height of its teeth along the axis, in mm or in")


class GearCutters(Model):
    """Involute cutters of one pitch; either `module` or `diametral_pitch` is written."""

    module: Length | None = Field(default=None, description="in mm")
    diametral_pitch: Number | None = Field(
        default=None, description="teeth to the inch of pitch diameter, a plain number"
    )
    pressure_angle: CutterAngle = Field(description="in deg, mostly 20 deg or 14.5 deg")
    numbers: CutterNumbers = Field(description="which of the set of eight, 1 to 8, are there")


class BoringBar(Model):
    """A boring bar or boring tool."""

    least_bore: Length = Field(description="smallest bore that it enters, in mm or in")
    reach: Length = Field(description="deepest bore that it can do, in mm or in")


class PartingTool(Model):
    """The parting tool."""

    width: Length = Field(description="width of the cut, in mm or in")
    reach: Length | None = Field(
        default=None, description="largest radius that it parts, in mm or in"
    )


class Knurl(Model):
    """A pair or one of knurling wheels."""

    pattern: KnurlPattern = Field(description="`straight` or `diamond`")
    pitch: Length = Field(description="from ridge to ridge, in mm or in")


class Countersink(Model):
    """A countersink or a large drill ground as one."""

    angle: CutterAngle = Field(description="included angle, in deg")
    diameter: Length = Field(description="largest diameter, in mm or in")


class Reamers(Model):
    """A set of reamers."""

    sizes: Sizes = Field(description="nominal sizes, in mm or in")
    gives: Words | None = Field(
        default=None, description="the limits of hole that they leave, as `H7`"
    )
    by_hand: Flag = Field(default=False, description="true for hand reamers, with their long lead")


class Taps(Model):
    """Taps by their kinds, each thread by its designation."""

    sets: list[Words] = Field(
        default_factory=list, description="threads of which there are taper, second and plug taps"
    )
    taper: list[Words] = Field(default_factory=list, description="threads with a taper tap")
    second: list[Words] = Field(default_factory=list, description="threads with a second tap")
    plug: list[Words] = Field(
        default_factory=list, description="threads with a plug tap, which goes to the bottom"
    )


class Cutters(Model):
    """All cutters but drills, reamers, taps and dies."""

    end_mills: Sizes | None = Field(default=None, description="diameters, in mm or in")
    slot_drills: Sizes | None = Field(
        default=None, description="diameters of cutters that may plunge, in mm or in"
    )
    ball_nosed: Sizes | None = Field(default=None, description="diameters, in mm or in")
    slitting_saws: list[DiscCutter] = Field(default_factory=list, description="slitting saws")
    dovetail_cutters: list[DovetailCutter] = Field(
        default_factory=list, description="dovetail cutters"
    )
    tee_slot_cutters: list[DiscCutter] = Field(
        default_factory=list, description="T-slot and Woodruff cutters"
    )
    gear_cutters: list[GearCutters] = Field(
        default_factory=list, description="involute cutters, one line for each pitch"
    )
    boring_bars: list[BoringBar] = Field(default_factory=list, description="boring bars")
    knurls: list[Knurl] = Field(default_factory=list, description="knurling wheels")
    countersinks: list[Countersink] = Field(default_factory=list, description="countersinks")
    counterbores: Sizes | None = Field(
        default=None, description="diameters of counterbores with pilots, in mm or in"
    )
    parting_tool: PartingTool | None = Field(default=None, description="the parting tool")
    others: list[Words] = Field(
        default_factory=list, description="anything else, in plain words, as `fly cutter`"
    )
