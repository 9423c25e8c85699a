"""Holes turned into the length of the dowel, cross pin or grub screw that goes in."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from binder_trade.explained import NotDefined, not_negative, positive
from binder_trade.fastening.reach import NEAR_ENOUGH, Length, NoLength, neighbours, sold
from binder_trade.fastening.steps import mm, step

LEAST_IN_EACH: Final = 1.5  # diameters in each half
MOST_IN_EACH: Final = 2.0


def choose_dowel(
    lengths: Iterable[float], diameter_mm: float, first_deep_mm: float, second_deep_mm: float
) -> Length | NoLength:
    """The dowel that enters each half by 1.5 to 2 diameters and stays inside; in mm.

    The depths are those of the two holes. Raises NotDefined. Source: common practice, no
    source.
    """
    d = positive(diameter_mm, "a dowel")
    depths = (positive(first_deep_mm, "a depth"), positive(second_deep_mm, "a depth"))
    known, shallow = sold(lengths), min(depths)
    least, room = 2 * LEAST_IN_EACH * d, sum(depths)
    most = min(room, 2 * MOST_IN_EACH * d)
    steps = (
        step("shortest", "1.5 d in each half", mm(least)),
        step("longest", "2 d in each half, within the holes", mm(most)),
    )
    if shallow < LEAST_IN_EACH * d - NEAR_ENOUGH:
        return NoLength(
            f"a hole of {mm(shallow)} is too shallow for a {mm(d)} dowel",
            (f"deepen it to {mm(LEAST_IN_EACH * d)}", "use a thinner dowel"),
            neighbours(known, least),
            steps,
        )
    good = [one for one in known if least - NEAR_ENOUGH <= one <= room + NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"no dowel is sold between {mm(least)} and {mm(room)}",
            (f"cut one to {mm(most)} and chamfer the end",),
            neighbours(known, least),
            steps,
        )
    usual = [one for one in good if one <= most + NEAR_ENOUGH]
    chosen = usual[-1] if usual else good[0]
    inside = min(shallow, chosen / 2)
    return Length(chosen, inside, room - chosen, f"{inside / d:.1f} d in each half", steps)


def choose_cross_pin(lengths: Iterable[float], hub_mm: float) -> Length | NoLength:
    """The longest pin sold that does not stand out of a hub or collar this thick, in mm.

    Raises NotDefined. Source: common practice, no source.
    """
    known = sold(lengths)
    across = positive(hub_mm, "a hub")
    steps = (step("longest", "through the hub, flush or below", mm(across)),)
    good = [one for one in known if one <= across + NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"the shortest sold, {mm(known[0])}, stands out of the hub",
            (f"cut it to {mm(across)} and chamfer the end",),
            (known[0],),
            steps,
        )
    why = f"next sold down; {mm((across - good[-1]) / 2)} below the surface at each end"
    return Length(good[-1], good[-1], across - good[-1], why, steps)


def choose_through_pin(lengths: Iterable[float], across_mm: float) -> Length | NoLength:
    """The shortest pin sold that comes out of thin plates on both sides, in mm.

    In a plate no thicker than the pin, what the pin falls short of is bearing that is missing.
    Raises NotDefined. Source: common practice, no source.
    """
    known = sold(lengths)
    across = positive(across_mm, "the plates")
    steps = (step("shortest", "through all plates", mm(across)),)
    good = [one for one in known if one >= across - NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"the longest sold, {mm(known[-1])}, does not come through",
            (f"cut {mm(across)} of rod of that size",),
            (known[-1],),
            steps,
        )
    out = max(0.0, good[0] - across)
    why = f"next sold up; stands {mm(out / 2)} out on each side"
    return Length(good[0], across, -out, why, steps)


def choose_taper_pin(
    lengths: Iterable[float], hub_mm: float, dome_mm: float = 0.0
) -> Length | NoLength:
    """The longest taper pin of which no more than its rounded ends stands out, in mm.

    It is drawn in until its large end is flush. Raises NotDefined. Source: common practice, no
    source.
    """
    across = positive(hub_mm, "a hub")
    known, room = sold(lengths), across + 2 * not_negative(dome_mm, "a rounded end")
    steps = (step("longest", "through the hub, both rounded ends out", mm(room)),)
    good = [one for one in known if one <= room + NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"the shortest sold, {mm(known[0])}, stands out of the hub",
            (f"cut its small end off to {mm(across)}, and file it round",),
            (known[0],),
            steps,
        )
    inside = max(0.0, across - good[-1])
    ends = "both ends flush" if inside < NEAR_ENOUGH else f"small end {mm(inside)} inside"
    why = f"drawn in till its large end is flush; {ends}"
    return Length(good[-1], min(good[-1], across), across - good[-1], why, steps)


def choose_split_pin(
    lengths: Iterable[float], diameter_mm: float, bolt_mm: float
) -> Length | NoLength:
    """The shortest split pin whose legs come through a bolt by enough to be bent round it, in mm.

    They stand out by half the bolt and by two pins at least. The length is that from the eye to
    the end of the shorter leg (ISO 1234). Raises NotDefined. Source: common practice, no source.
    """
    d, bolt = positive(diameter_mm, "a split pin"), positive(bolt_mm, "a bolt")
    known, least = sold(lengths), bolt + max(2 * d, bolt / 2)
    steps = (step("shortest", "bolt + half of it, 2 pins at least", mm(least)),)
    good = [one for one in known if one >= least - NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"the longest sold, {mm(known[-1])}, leaves nothing to bend",
            ("use the next thicker pin", f"bend one of wire, {mm(least)} long"),
            (known[-1],),
            steps,
        )
    out = good[0] - bolt
    return Length(good[0], bolt, -out, f"legs stand {mm(out)} out, to be bent round", steps)


def choose_grub(
    lengths: Iterable[float], hub_mm: float, shaft_mm: float, flat_mm: float, least_mm: float
) -> Length | NoLength:
    """The longest grub screw that reaches the shaft and does not stand out of its hub, in mm.

    `flat_mm` is the depth of the flat or dimple that it enters, `least_mm` the thread that must
    hold in the hub's wall. Raises NotDefined. Source: common practice, no source.
    """
    wall = (positive(hub_mm, "a hub") - positive(shaft_mm, "a shaft")) / 2
    if wall <= 0:
        raise NotDefined("the hub is no larger than its shaft", "give the hub's outside diameter")
    room = wall + not_negative(flat_mm, "a flat")
    shortest = flat_mm + positive(least_mm, "an engagement")
    known = sold(lengths)
    steps = (
        step("wall", "(hub − shaft) / 2", mm(wall)),
        step("longest", "wall + flat", mm(room)),
        step("shortest", "flat + engagement", mm(shortest)),
    )
    good = [one for one in known if shortest - NEAR_ENOUGH <= one <= room + NEAR_ENOUGH]
    if good:
        below = room - good[-1]
        left = "flush with the hub" if below < NEAR_ENOUGH else f"{mm(below)} below its surface"
        why = f"next sold down; {left}"
        return Length(good[-1], good[-1] - flat_mm, room - good[-1], why, steps)
    thick = mm(2 * least_mm + shaft_mm)
    reason = f"no grub screw is sold between {mm(shortest)} and {mm(room)}"
    if wall < least_mm - NEAR_ENOUGH:
        reason = f"a wall of {mm(wall)} is too thin for {mm(least_mm)} of thread"
    return NoLength(
        reason,
        (f"make the hub {thick} or more", "use a smaller grub screw", "let it stand out"),
        neighbours(known, room),
        steps,
    )
