"""The way of the oil into a running bearing, through the wall of every part round it."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic
from binder_plugins.fits import joining_codes as codes
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import BONDED
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.pressing import length_of
from binder_plugins.fits.running import Bearing

_DRY = ("dry", "sealed", "graphite")
_OIL_FROM_MM = 10.0
_SILENT = ("sintered-bronze", "nylon", "ptfe", "acetal")
_HOLES = ("drilled", "reamed", "bored", "tapped", "slotted")
# A bush that stands out of its housing by this can be oiled beside it: common practice, no source.
_BESIDE_MM = 3.0


def check_oil(bearing: Bearing, design: Design) -> Iterator[Diagnostic]:
    """A long running bearing that oil cannot reach, or only as far as one of its walls."""
    fit, length = bearing.fit, bearing.length_mm
    if length is None or fit.hole.material in _SILENT or _is_dry(fit, design):
        return
    walls = _walls(fit, length, design)
    closed = [one for one in walls if not _has_hole(one, design)]
    if not closed or _comes_by_shaft(fit, design):
        return
    together = f" through {_listed(walls)} in one, when they are together," if walls[1:] else ""
    if len(closed) < len(walls):
        yield codes.NO_WAY_FOR_OIL.at(
            fit.joint.at,
            f"the way of the oil into '{fit.subject}' is closed by '{closed[0]}'",
            help=f"drill {_oil_hole(design)}{together} and call it `oil` in '{closed[0]}' too",
        )
    elif length >= _OIL_FROM_MM:
        across = together or " across it"
        yield codes.NO_WAY_FOR_OIL.at(
            fit.joint.at,
            f"no oil gets into {with_unit(length, design.units)} of bearing in '{fit.subject}'",
            help=f"drill {_oil_hole(design)}{across} on the unloaded side, and call it `oil`",
        )


def _is_dry(fit: MadeFit, design: Design) -> bool:
    entry = fit.joint.entry
    words = f"{entry.note or ''} {getattr(entry, 'duty', None) or ''}".lower()
    bought = design.bought.get(fit.hole.end.item)
    # Sintered bronze holds its own oil.
    is_soaked = bought is not None and "sintered" in bought.what.lower()
    return is_soaked or any(word in words for word in _DRY)


def _oil_hole(design: Design) -> str:
    return "1 to 1.5 mm" if design.units == "mm" else "3/64 to 1/16 in"


def _walls(fit: MadeFit, length: float, design: Design) -> tuple[str, ...]:
    """What has the bearing, and what that is fixed in where it is covered over its length."""
    bush = fit.hole.end.item
    walls = [bush]
    for other in design.facts.where(MadeFit, "shaft.end.item", bush):
        if other.joint.kind not in ("pressed", *BONDED):
            continue
        covered = length_of(other)
        if covered is None or covered > length - _BESIDE_MM:
            walls.append(other.hole.end.item)
    return tuple(dict.fromkeys(walls))


def _has_hole(item: str, design: Design) -> bool:
    """A hole called oil, or a cross hole: a groove carries oil, and lets none in."""
    return any(
        one.kind in _HOLES and ("oil" in one.name or getattr(one.entry, "across", None))
        for one in design.features_of(item)
    )


def _comes_by_shaft(fit: MadeFit, design: Design) -> bool:
    """A shaft that is drilled for oil brings it from inside, past every wall."""
    return any(
        one.kind in _HOLES and "oil" in one.name for one in design.features_of(fit.shaft.end.item)
    )


def _listed(items: tuple[str, ...]) -> str:
    return " and ".join(f"'{one}'" for one in reversed(items))
