"""Gears, racks, ratchets and sprockets: what may be written of each."""

from __future__ import annotations

from binder.api import Angle, Count, Flag, Length, Model, Number


class Gear(Model):
    """A spur gear by its module, or its diametral pitch; `outside` of an internal one's rim."""

    module: Length | None = None
    dp: Number | None = None
    teeth: Count
    width: Length
    pressure_angle: Angle | None = None
    backlash: Length | None = None
    hub: Length | None = None
    hub_length: Length | None = None
    internal: Flag = False
    outside: Length | None = None


class Rack(Model):
    """A rack: its height is over the tips of the teeth."""

    module: Length | None = None
    dp: Number | None = None
    teeth: Count
    width: Length
    height: Length
    pressure_angle: Angle | None = None


class Ratchet(Model):
    """A ratchet wheel: `lean` is how far its stopping faces lean back, to draw the pawl in."""

    teeth: Count
    outside: Length
    depth: Length
    width: Length
    lean: Angle | None = None
    hub: Length | None = None
    hub_length: Length | None = None


class Sprocket(Model):
    """A sprocket for roller chain, by the chain's pitch and the diameter of its rollers."""

    pitch: Length
    roller: Length
    teeth: Count
    width: Length
    hub: Length | None = None
    hub_length: Length | None = None
