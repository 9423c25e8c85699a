"""A thread to the hole that is aimed at before tapping: by its list, its depth or its metal."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.threading.listed import listed
from binder_trade.threading.metals import metal
from binder_trade.threading.percent import bases, drill_for_percent
from binder_trade.threads import MOVING, Thread

USUAL_PERCENT: Final = 75.0
_CUSTOM: Final = "common practice, no standard"


@dataclass(frozen=True, slots=True)
class Aim:
    """The hole wanted in mm; `why` reads after the name of the drill or of the size."""

    mm: float
    why: str
    formula: str
    source: str
    convention: str


def aimed(thread: Thread, engagement: float | None, material: str) -> Aim:
    """What to aim at: the engagement asked, else the thread's list, else the metal, else 75 %."""
    if engagement is not None:
        why = f"leaves the {engagement:g} % of thread that was asked"
        return _by_percent(thread, engagement, why, "as asked")
    if thread.family in MOVING:
        source = thread.form.standard
        why = f"is the bore of the nut, D − P, for {thread.designation}"
        return Aim(thread.minor_internal_mm, why, "D − P", source, "full depth")
    by_list = _listed(thread)
    if by_list is not None:
        return by_list
    by_metal = aimed_for_material(thread, material)
    if by_metal is not None:
        return by_metal
    why = f"leaves {USUAL_PERCENT:g} % of thread; no standard lists a drill"
    return _by_percent(thread, USUAL_PERCENT, why, _CUSTOM)


def aimed_for_material(thread: Thread, material: str) -> Aim | None:
    """What the metal asks by itself, or None where its name is not known."""
    kind = metal(material)
    if kind is None:
        return None
    why = f"leaves the {kind.depth:.4g} % of thread that suits {kind.name}"
    return _by_percent(thread, kind.depth, why, kind.depth_source)


def _listed(thread: Thread) -> Aim | None:
    found = listed(thread)
    if found is not None:
        why = f"is what {found.said} lists for {thread.designation}"
        return Aim(found.mm, why, "as listed", found.source, found.convention)
    if thread.family != "metric":
        return None
    why = f"is D − P, the rule of ISO 2306, for {thread.designation}"
    size = thread.major_mm - thread.pitch_mm
    return Aim(size, why, "D − P", "ISO 2306, rule", "ISO 2306: about D − P")


def _by_percent(thread: Thread, wanted: float, why: str, source: str) -> Aim:
    basis = bases(thread)[-1]
    formula = f"D − {wanted:.4g} % × {basis.pitches:.5g} × P"
    convention = f"{wanted:.4g} % of {basis.text}"
    return Aim(drill_for_percent(thread, wanted), why, formula, source, convention)
