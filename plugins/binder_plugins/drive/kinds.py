"""The kinds of drive: each row of the table with the model that reads it; the toothed feature."""

from __future__ import annotations

from binder.api import (
    Count,
    FeatureEntry,
    JointEntry,
    Kind,
    Length,
    Meeting,
    Name,
    Number,
    Slot,
    drive_kind,
    load_data,
)
from binder_plugins.drive.vocabulary import powered, running, toothed

PACKAGE = "binder_plugins.drive"

_MEETING: dict[str, type[JointEntry]] = {
    "meshes": toothed.GearsEntry,
    "bevels": toothed.BevelsEntry,
    "worms": toothed.WormEntry,
    "racks": toothed.RackEntry,
    "skews": toothed.SkewEntry,
    "orbits": toothed.OrbitEntry,
    "belted": running.BeltEntry,
    "chained": toothed.ChainEntry,
    "rubs": running.FrictionEntry,
    "ratchets": toothed.RatchetEntry,
    "indexes": toothed.IndexEntry,
    "cranks": running.CrankEntry,
    "rocks": running.RockEntry,
    "cams": running.CamEntry,
    "trips": running.TripEntry,
    "winds": running.WindEntry,
}
_ALONE: dict[str, tuple[type[JointEntry], str]] = {
    "turns": (powered.MoverEntry, "what turns a shaft: hand, motor, engine, at what speed"),
    "works": (powered.WorkEntry, "what a shaft has to do: torque or power, speed and way"),
    "steadies": (powered.SteadyEntry, "a flywheel, and how even the shaft has to run"),
    "feeds": (powered.FeedEntry, "a feed screw: its dial, its travel, and which way it goes"),
    "prototype": (powered.PrototypeEntry, "the speed of this shaft on the prototype"),
}


class ToothedFeature(FeatureEntry):
    """Teeth cut round a turned blank or a disc: so many, by module or diametral pitch."""

    kind = "toothed"
    toothed: Count
    module: Length | None = None
    dp: Number | None = None
    on: Name | None = None


def kinds() -> list[Kind]:
    """A kind of drive for each row, those of one end, and the feature."""
    rows = load_data(PACKAGE, "drives.yaml")["kinds"]
    meeting = [
        drive_kind(key, _MEETING[key], Meeting(group="drive", **row), f"A {row['says']} B")
        for key, row in rows.items()
    ]
    alone = [drive_kind(key, model, None, says, least=1) for key, (model, says) in _ALONE.items()]
    says = "teeth cut in a blank: how many, and their module"
    return [*meeting, *alone, Kind(Slot.FEATURE, "toothed", ToothedFeature, says)]
