"""Entries of the drive to links: teeth and diameters become ratios of speed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction

from binder.api import Design, Diagnostic, Joint
from binder_plugins.drive import codes
from binder_plugins.drive.train.bodies import Body
from binder_plugins.drive.train.links import Link, ratio_link
from binder_plugins.drive.train.pulleys import belt_link
from binder_plugins.drive.train.told import teeth_of

Read = tuple[Link | Diagnostic, ...]
_ZERO, _ONE = Fraction(0), Fraction(1)


def read_links(design: Design, of: Mapping[str, Body]) -> Read:
    """The links of all drives that join two speeds, or why one does not."""
    found: list[Link | Diagnostic] = []
    for joint in design.joints.values():
        reader = _READERS.get(joint.kind)
        if reader is not None and all(item in of for item in joint.items):
            found += reader(joint, design, of)
    return tuple(found)


def _teeth(joint: Joint, design: Design, count: int) -> list[int] | Diagnostic:
    known = [teeth_of(joint, number, design) for number in range(min(count, len(joint.ends)))]
    missing = [joint.ends[number] for number, one in enumerate(known) if one is None]
    if missing or len(joint.ends) < count:
        name = missing[0] if missing else joint.name
        return codes.TEETH_MISSING.at(
            missing[0].at if missing else joint.at,
            f"how many teeth has '{name}'?",
            help="write `teeth: [18, 54]`, in the order of the wheels",
        )
    return [one for one in known if one is not None]


def _gears(joint: Joint, design: Design, of: Mapping[str, Body]) -> Read:
    """Each meshes with the next and turns the other way, but for the one with inside teeth."""
    teeth = _teeth(joint, design, len(joint.ends))
    if isinstance(teeth, Diagnostic):
        return (teeth,)
    names = [of[end.item].name for end in joint.ends]
    last = len(teeth) - 2
    links = []
    for number in range(last + 1):
        sign = 1 if getattr(joint.entry, "internal", False) and number == last else -1
        ratio = Fraction(sign * teeth[number], teeth[number + 1])
        links.append(ratio_link(joint, names[number], names[number + 1], (ratio,), ("",)))
    return tuple(links)


def _two(joint: Joint, design: Design, of: Mapping[str, Body]) -> Read:
    """Bevels, skew gears and chains: teeth by teeth, the same way round."""
    teeth = _teeth(joint, design, 2)
    if isinstance(teeth, Diagnostic):
        return (teeth,)
    a, b = (of[end.item].name for end in joint.ends[:2])
    return (ratio_link(joint, a, b, (Fraction(teeth[0], teeth[1]),), ("",)),)


def _worm(joint: Joint, design: Design, of: Mapping[str, Body]) -> Read:
    wheel = teeth_of(joint, 1, design)
    if wheel is None:
        end = joint.ends[1]
        return (
            codes.TEETH_MISSING.at(
                end.at, f"how many teeth has '{end}'?", help="write `teeth: 40`"
            ),
        )
    starts = getattr(joint.entry, "starts", None) or 1
    a, b = (of[end.item].name for end in joint.ends[:2])
    return (ratio_link(joint, a, b, (Fraction(int(starts), wheel),), ("",)),)


def _rubs(joint: Joint, design: Design, of: Mapping[str, Body]) -> Read:
    first, second = (one.exact for one in joint.entry.diameters)  # type: ignore[attr-defined]
    a, b = (of[end.item].name for end in joint.ends[:2])
    return (ratio_link(joint, a, b, (-first / second,), ("",)),)


def _index(joint: Joint, design: Design, of: Mapping[str, Body]) -> Read:
    """One slot a turn on the average, the other way round."""
    slots = int(joint.entry.slots)  # type: ignore[attr-defined]
    a, b = (of[end.item].name for end in joint.ends[:2])
    return (ratio_link(joint, a, b, (Fraction(-1, slots),), ("",)),)


def _orbits(joint: Joint, design: Design, of: Mapping[str, Body]) -> Read:
    """(sun - arm) × z_sun + (ring - arm) × z_ring = 0 (Willis), and one of them stands still."""
    if len(joint.ends) != 4:
        return (
            codes.ORBIT_WANTS_FOUR.at(
                joint.at, f"'{joint.name}' names {len(joint.ends)} of its four members"
            ),
        )
    teeth = _teeth(joint, design, 3)
    if isinstance(teeth, Diagnostic):
        return (teeth,)
    sun, _, ring, arm = (of[end.item].name for end in joint.ends)
    z_sun, z_planet, z_ring = teeth
    if z_sun + 2 * z_planet != z_ring:
        return (
            codes.ORBIT_TEETH.at(
                joint.at,
                f"{z_sun} + 2 × {z_planet} is not the {z_ring} of the ring",
                help=f"give the ring {z_sun + 2 * z_planet} teeth",
            ),
        )
    terms = ((sun, Fraction(z_sun)), (ring, Fraction(z_ring)), (arm, Fraction(-z_sun - z_ring)))
    members = dict(zip(("sun", "planet", "ring", "arm"), joint.ends, strict=True))
    held = str(getattr(joint.entry, "held", ""))
    end = members.get(held) or next((e for e in joint.ends if held in (e.item, str(e))), None)
    if end is None or held == "planet":
        span = joint.entry.held.span  # type: ignore[attr-defined]
        return (codes.ORBIT_HELD.at(span, f"'{held}' is none of sun, ring and arm"),)
    still = Link(joint, (of[end.item].name,), (((of[end.item].name, _ONE),),), ("",))
    return (Link(joint, (sun, ring, arm), (terms,), ("",)), still)


_READERS: dict[str, Callable[[Joint, Design, Mapping[str, Body]], Read]] = {
    "meshes": _gears,
    "bevels": _two,
    "skews": _two,
    "chained": _two,
    "worms": _worm,
    "rubs": _rubs,
    "indexes": _index,
    "orbits": _orbits,
    "belted": belt_link,
}
