"""How much of the power comes through a drive and the bearings behind it."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import load_data
from binder_plugins.drive.train.links import Link


@dataclass(frozen=True, slots=True)
class Loss:
    """What is lost, in parts of one, and in words."""

    part: float
    words: str

    @property
    def kept(self) -> float:
        """What comes through."""
        return 1 - self.part


def loss_of(link: Link) -> Loss:
    """The middle of the usual range for the drive, and for the bearings of its driven shaft."""
    table = load_data("binder_plugins.drive", "losses.yaml")
    row, bearing = table["kinds"].get(link.joint.kind), table["bearing"]
    if row is None:
        return Loss(0.0, "none known")
    drive = (row["least"] + row["most"]) / 200
    bush = (bearing["least"] + bearing["most"]) / 200
    kept = (1 - drive) * (1 - bush)
    words = (
        f"{row['words']}\u00a0{row['least']} to {row['most']}\u00a0%, "
        f"{bearing['words']}\u00a0{bearing['least']} to {bearing['most']}\u00a0%"
    )
    return Loss(1 - kept, words)
