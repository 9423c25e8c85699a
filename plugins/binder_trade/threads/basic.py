"""Turns a diameter and a pitch of a family into a thread with all its basic sizes."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi
from types import MappingProxyType
from typing import Final

from binder_trade.threads.form import BA_47, ISO_60, UNIFIED_60, WHITWORTH_55, Form
from binder_trade.threads.thread import Thread

INCH: Final = 25.4
_BA_DEPTH_STEP: Final = 0.005


@dataclass(frozen=True, slots=True)
class Family:
    """What the threads of one family share: their form and where they are listed."""

    form: Form
    standard: str


FAMILIES: Final = MappingProxyType(
    {
        "metric": Family(ISO_60, "ISO 261, ISO 724"),
        "BA": Family(BA_47, "BS 93"),
        "BSW": Family(WHITWORTH_55, "BS 84"),
        "BSF": Family(WHITWORTH_55, "BS 84"),
        "BSP": Family(WHITWORTH_55, "ISO 228-1"),
        "ME": Family(WHITWORTH_55, "model engineers' series, no standard"),
        "brass": Family(WHITWORTH_55, "brass thread, no standard"),
        "UNC": Family(UNIFIED_60, "ASME B1.1"),
        "UNF": Family(UNIFIED_60, "ASME B1.1"),
        "UNEF": Family(UNIFIED_60, "ASME B1.1"),
        "UNS": Family(UNIFIED_60, "ASME B1.1"),
    }
)


@dataclass(frozen=True, slots=True)
class Size:
    """What a series states of one thread, in mm; the rest follows from its form."""

    family: str
    designation: str
    major_mm: float
    pitch_mm: float
    tpi: int | None = None
    is_coarse: bool = False


def build(size: Size) -> Thread:
    """The right-hand thread of a size, with the basic sizes that its form gives (its standard)."""
    family = FAMILIES[size.family]
    depth = depth_of(family.form, size.pitch_mm)
    drop, bore = _drops(family.form, size.pitch_mm)
    effective, core = size.major_mm - drop, size.major_mm - 2 * depth
    return Thread(
        designation=size.designation,
        family=size.family,
        form=family.form,
        major_mm=size.major_mm,
        pitch_mm=size.pitch_mm,
        tpi=size.tpi,
        effective_mm=effective,
        minor_internal_mm=size.major_mm - bore,
        minor_external_mm=core,
        depth_mm=depth,
        stress_area_mm2=_stress_area(size, effective, core),
        is_left_hand=False,
        is_coarse=size.is_coarse,
        standard=family.standard,
    )


def depth_of(form: Form, pitch_mm: float) -> float:
    """The depth of the external thread in mm; BS 93 rounds that of BA to 0.005 mm."""
    depth = form.depth * pitch_mm
    return round(round(depth / _BA_DEPTH_STEP) * _BA_DEPTH_STEP, 3) if form.is_rounded else depth


def _drops(form: Form, pitch_mm: float) -> tuple[float, float]:
    """How far the effective diameter and the nut's bore lie below the major diameter, in mm."""
    if form.is_rounded:
        depth = depth_of(form, pitch_mm)
        return depth, 2 * depth
    return form.effective_drop * pitch_mm, form.internal_drop * pitch_mm


def _stress_area(size: Size, effective_mm: float, core_mm: float) -> float:
    """The stress area in mm² (ISO 898-1; ASME B1.1; others the mean of effective and core)."""
    form = FAMILIES[size.family].form
    if form is UNIFIED_60:
        across = size.major_mm - 0.9743 * size.pitch_mm
    elif form is ISO_60:
        across = size.major_mm - 0.9382 * size.pitch_mm
    else:
        across = (effective_mm + core_mm) / 2
    return pi / 4 * across**2
