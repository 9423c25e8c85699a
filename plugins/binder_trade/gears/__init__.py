"""Gears: teeth and blanks, meshes, measures, strength; wheels for chains and clocks.

Trains, dividing and stepping wheels stand in packages of their own below.
"""

from binder_trade.explained import NotDefined, Step
from binder_trade.gears.bevel import BevelGear, BevelPair, bevel
from binder_trade.gears.candidates import Candidate
from binder_trade.gears.centres import (
    check_mates,
    reference,
    shift_for,
    tight_centres,
    usual_backlash,
)
from binder_trade.gears.clock_teeth import ClockPair, ClockWheel, clock_pair
from binder_trade.gears.contact import overlap
from binder_trade.gears.crossed import CrossedPair, crossed
from binder_trade.gears.form_cutters import FormCutter, cutter_for, form_cutter
from binder_trade.gears.gear import Blank, Gear, blank
from binder_trade.gears.identify import Identified, identify
from binder_trade.gears.involute import angle_of, involute
from binder_trade.gears.measuring import (
    Chord,
    Pins,
    Span,
    base_pitch_from,
    best_pin,
    choose_pin,
    chordal,
    over_pins,
    span,
)
from binder_trade.gears.pair import Mesh, mesh, shifted
from binder_trade.gears.pitches import (
    Pitch,
    from_circular,
    from_dp,
    from_module,
    modules,
    nearest,
    pitches,
)
from binder_trade.gears.proportions import Body, body, largest_bore
from binder_trade.gears.rack_drive import RackDrive, rack_drive
from binder_trade.gears.racks import Rack, rack, racks
from binder_trade.gears.strength import (
    Forces,
    Strength,
    forces,
    form_factor,
    safe_factor,
    strength,
    stress_of,
    tabulated_factor,
)
from binder_trade.gears.telling_apart import Measure
from binder_trade.gears.undercut import Limits, least_teeth, least_teeth_with, limits, top_of
from binder_trade.gears.worm import (
    WormForces,
    WormPair,
    back_efficiency,
    efficiency,
    holds,
    worm,
    worm_forces,
)

__all__ = [
    "BevelGear",
    "BevelPair",
    "Blank",
    "Body",
    "Candidate",
    "Chord",
    "ClockPair",
    "ClockWheel",
    "CrossedPair",
    "Forces",
    "FormCutter",
    "Gear",
    "Identified",
    "Limits",
    "Measure",
    "Mesh",
    "NotDefined",
    "Pins",
    "Pitch",
    "Rack",
    "RackDrive",
    "Span",
    "Step",
    "Strength",
    "WormForces",
    "WormPair",
    "angle_of",
    "back_efficiency",
    "base_pitch_from",
    "best_pin",
    "bevel",
    "blank",
    "body",
    "check_mates",
    "choose_pin",
    "chordal",
    "clock_pair",
    "crossed",
    "cutter_for",
    "efficiency",
    "forces",
    "form_cutter",
    "form_factor",
    "from_circular",
    "from_dp",
    "from_module",
    "holds",
    "identify",
    "involute",
    "largest_bore",
    "least_teeth",
    "least_teeth_with",
    "limits",
    "mesh",
    "modules",
    "nearest",
    "over_pins",
    "overlap",
    "pitches",
    "rack",
    "rack_drive",
    "racks",
    "reference",
    "safe_factor",
    "shift_for",
    "shifted",
    "span",
    "strength",
    "stress_of",
    "tabulated_factor",
    "tight_centres",
    "top_of",
    "usual_backlash",
    "worm",
    "worm_forces",
]
