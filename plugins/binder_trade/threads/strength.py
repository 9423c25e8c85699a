"""Turns a thread and a property class into the load that a screw of it carries."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined
from binder_trade.threads.thread import Thread

SOURCE: Final = "ISO 898-1"
_STEP_MM: Final = 16.0


@dataclass(frozen=True, slots=True)
class PropertyClass:
    """The steel of a screw: the stress it is proved at and the least it breaks at, in MPa."""

    name: str
    proof_mpa: float
    ultimate_mpa: float


# ISO 898-1, stress under proof load and least tensile strength. 4.8, 8.8, 10.9 and 12.9 read
# in public tables; the others from memory.
_CLASSES: Final = (
    PropertyClass("4.6", 225, 400),
    PropertyClass("4.8", 310, 420),
    PropertyClass("5.6", 280, 500),
    PropertyClass("5.8", 380, 520),
    PropertyClass("6.8", 440, 600),
    PropertyClass("8.8", 580, 800),
    PropertyClass("9.8", 650, 900),
    PropertyClass("10.9", 830, 1040),
    PropertyClass("12.9", 970, 1220),
)
_THICK_8_8: Final = PropertyClass("8.8", 600, 830)


def property_class(name: str, major_mm: float) -> PropertyClass:
    """The class of a screw of a diameter in mm; 8.8 is stronger above 16 mm (ISO 898-1).

    Raises NotDefined for a class that is none, and for 9.8 above 16 mm.
    """
    for one in _CLASSES:
        if one.name == name:
            return _for_diameter(one, major_mm)
    names = ", ".join(one.name for one in _CLASSES)
    raise NotDefined(f"there is no property class {name[:20]!r}", f"use one of {names}")


def _for_diameter(found: PropertyClass, major_mm: float) -> PropertyClass:
    if not major_mm > 0:
        raise NotDefined("the diameter is not a size above nought", "write it as a plain number")
    if major_mm <= _STEP_MM:
        return found
    if found.name == "9.8":
        raise NotDefined("9.8 is defined up to 16 mm", "use 8.8 or 10.9")
    return _THICK_8_8 if found.name == "8.8" else found


def proof_load_n(thread: Thread, name: str) -> float:
    """The proof load of a screw in N: stress area times proof stress (ISO 898-1).

    Raises NotDefined as `property_class` does. For threads that are not metric it is the same
    sum, and no standard's.
    """
    return thread.stress_area_mm2 * property_class(name, thread.major_mm).proof_mpa


def ultimate_load_n(thread: Thread, name: str) -> float:
    """The least breaking load of a screw in N: stress area times tensile strength (ISO 898-1).

    Raises NotDefined as `property_class` does.
    """
    return thread.stress_area_mm2 * property_class(name, thread.major_mm).ultimate_mpa
