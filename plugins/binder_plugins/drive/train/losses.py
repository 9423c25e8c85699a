"""How much of the power comes through a drive and the bearings behind it."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan2, degrees

from binder.api import Joint, Size
from binder_plugins.drive.train.links import Link
from binder_trade.explained import NotDefined
from binder_trade.losses.stages import Loss as Stage
from binder_trade.losses.stages import loss, worm_loss

_STAGES = {
    "meshes": ("spur gears",),
    "bevels": ("bevel gears",),
    "orbits": ("spur gears", "internal gears"),
    "rubs": ("friction wheels",),
}
_BELTS = {"round": "round belt", "flat": "flat belt", "vee": "V belt", "toothed": "toothed belt"}
_BUSH = "plain bush"
# Bronze on steel, oiled; as the worm's own sum takes it.
_FRICTION = 0.08
_USUAL_LEAD_DEG = 5.0


@dataclass(frozen=True, slots=True)
class Loss:
    """What comes through, in parts of one, and the losses in words."""

    kept: float
    words: str


def loss_of(link: Link) -> Loss:
    """What the drive usually loses, and the bearings of its driven shaft."""
    joint = link.joint
    stages = [loss(name) for name in _names(joint)]
    bush = loss(_BUSH)
    kept, words = 1 - bush.usual, f"bearings\u00a0{_range(bush)}"
    for stage in stages:
        kept *= 1 - stage.usual
        words = f"{stage.stage}\u00a0{_range(stage)}, {words}"
    if joint.kind in ("worms", "skews"):
        through = _sliding(joint)
        kept *= through
        words = f"its own teeth\u00a0{1 - through:.0%}, {words}"
    return Loss(kept, words)


def bearings_kept() -> float:
    """What comes through the bearings of a shaft, in parts of one."""
    return 1 - loss(_BUSH).usual


def _range(stage: Stage) -> str:
    return f"{stage.least * 100:g} to {stage.most * 100:g}\u00a0%"


def _names(joint: Joint) -> tuple[str, ...]:
    if joint.kind == "belted":
        return (_BELTS[str(getattr(joint.entry, "belt", None) or "flat")],)
    if joint.kind == "chained":
        return ("bead chain" if getattr(joint.entry, "bead", False) else "roller chain",)
    return _STAGES.get(joint.kind, ())


def _sliding(joint: Joint) -> float:
    """What comes through teeth that slide along one another, by their lead angle."""
    try:
        return worm_loss(_lead(joint), _FRICTION).forward
    except NotDefined:
        return worm_loss(_USUAL_LEAD_DEG, _FRICTION).forward


def _lead(joint: Joint) -> float:
    """The lead angle in degrees: of the worm, or what its helix leaves of a right angle."""
    entry = joint.entry
    helix = getattr(entry, "helix", None)
    if helix:
        return 90 - float(helix[0].exact)
    module, diameter = getattr(entry, "module", None), getattr(entry, "diameter", None)
    if not isinstance(module, Size) or not isinstance(diameter, Size):
        return _USUAL_LEAD_DEG
    starts = int(getattr(entry, "starts", None) or 1)
    return degrees(atan2(starts * module.mm, diameter.mm))
