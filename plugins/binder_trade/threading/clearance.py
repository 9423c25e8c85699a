"""A screw and a choice of drills to its clearance hole: close, usual or for marking out."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.drills import Drill, NoDrill, at_or_above, drill_named
from binder_trade.explained import NotDefined, Step
from binder_trade.threading.keys import UNIFIED, size_key
from binder_trade.threading.listed import said_source
from binder_trade.threads import MOVING, Thread

FITS: Final = ("fine", "medium", "coarse")
# A clearance hole may be so much larger than wanted before its bolt rattles.
_MOST_OVER_MM: Final = 0.3
_RULES: Final = {"fine": 1.02, "medium": 1.05, "coarse": 1.1}
_WIDER_RULES: Final = {"fine": 1.05, "medium": 1.1, "coarse": 1.2}
_RULE_SOURCE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Clearance:
    """The clearance hole wanted, in mm, with the list or the rule that it is from."""

    mm: float
    fit: str
    source: str
    convention: str


@dataclass(frozen=True, slots=True)
class ClearanceDrill:
    """The drill for a clearance hole; `gap_mm` is what the screw has on the diameter.

    `others` are the drills for the other fits of the same screw, with their words.
    """

    drill: Drill
    wanted: Clearance
    gap_mm: float
    why: str
    others: tuple[tuple[str, Drill], ...]
    steps: tuple[Step, ...]


def clearance(thread: Thread, fit: str = "medium") -> Clearance:
    """The clearance hole in mm for a screw of this thread.

    `fit` is fine (spotted through), medium, or coarse (several holes marked out by hand).
    Source: ISO 273:1979 (metric), published charts (unified, inch and BA); sizes in no list
    follow a stated rule. Raises `NotDefined` for a fit that is none of the three.
    """
    if fit not in FITS:
        raise NotDefined(f"no clearance is called {fit!r}", f"say {', '.join(FITS)}")
    return _listed(thread, fit) or _by_rule(thread, fit)


def clearance_drill(
    thread: Thread, drills: Iterable[Drill | tuple[str, float]], fit: str = "medium"
) -> ClearanceDrill:
    """The smallest of the drills that is not below the clearance hole, up to 0.3 mm above it.

    Raises `NoDrill` where there is none, `NotDefined` as `clearance`.
    """
    owned = tuple(one if isinstance(one, Drill) else Drill(*one, "owned") for one in drills)
    wanted = clearance(thread, fit)
    drill = _fitting(wanted, owned)
    if drill is None:
        raise NoDrill(
            f"no drill here clears {thread.designation} with {wanted.mm:g} mm",
            f"a drill of {wanted.mm:g} to {wanted.mm + _MOST_OVER_MM:g} mm will do",
        )
    gap = drill.mm - thread.major_mm
    why = f"{drill.name} clears {thread.designation} by {gap:.2f} mm ({fit})"
    others = [(other, _fitting(clearance(thread, other), owned)) for other in FITS if other != fit]
    return ClearanceDrill(
        drill,
        wanted,
        gap,
        why,
        tuple((other, found) for other, found in others if found is not None),
        _steps(wanted, drill, gap),
    )


def _fitting(wanted: Clearance, owned: tuple[Drill, ...]) -> Drill | None:
    drill = at_or_above(wanted.mm, owned)
    if drill is None or drill.mm > wanted.mm + _MOST_OVER_MM + 1e-6:
        return None
    return drill


def _steps(wanted: Clearance, drill: Drill, gap: float) -> tuple[Step, ...]:
    return (
        Step("clearance hole", wanted.convention, f"{wanted.mm:.3f} mm", wanted.source),
        Step("drill", "the next drill up", f"{drill.name} ({drill.mm:.3f} mm)", "choice"),
        Step("clearance", "drill − D", f"{gap:.3f} mm", "calculation"),
    )


def _listed(thread: Thread, fit: str) -> Clearance | None:
    for name, fits in _tables(thread.family):
        table: Mapping[str, Any] = load_data("binder_trade.threading", "clearance.yaml")[name]
        members = {str(key): value for key, value in table["members"].items()}
        row = members.get(size_key(thread))
        if row is None or fit not in fits:
            continue
        size = row[fits.index(fit)] if isinstance(row, list) else row
        return Clearance(_mm(size), fit, said_source(table), table["convention"])
    return None


def _tables(family: str) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """The tables that may list a family, each with the fits that it gives."""
    if family == "metric":
        return (("iso273", FITS),)
    if family in UNIFIED:
        return (("unified", FITS[:2]),)
    if family == "BA":
        return (("ba", FITS[1:2]), ("ba_numbers", FITS[:1]))
    return () if family in ("BSP", *MOVING) else (("inch", FITS[1:2]),)


def _mm(size: object) -> float:
    return float(size) if isinstance(size, int | float) else drill_named(str(size)).mm


def _by_rule(thread: Thread, fit: str) -> Clearance:
    """Less for the older series, whose published lists clear a screw by 3 to 5 per cent.

    A rule never gives less than a list gives for a closer fit.
    """
    rules = _WIDER_RULES if thread.family in ("metric", *UNIFIED) else _RULES
    closer = [_listed(thread, one) for one in FITS[: FITS.index(fit)]]
    floor = max((one.mm for one in closer if one is not None), default=0.0)
    size = rules[fit] * thread.major_mm
    if floor > size:
        return Clearance(floor, fit, _RULE_SOURCE, "as the closer fit, which is listed")
    return Clearance(size, fit, _RULE_SOURCE, f"rule: {rules[fit]:g} D, in no list")
