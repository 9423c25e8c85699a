"""The holes of a flat part: by coordinates, spotted through a mate, or bored in the lathe."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import (
    bench_vice,
    drill_for,
    flat_holder,
    largest_drill_taken,
    lathe_for,
    place_of,
)
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.holes import HOLES, SINKS, Where, hole_acts, through
from binder_plugins.operations.several import (
    clamped,
    gripped,
    in_stack,
    is_stacked,
    stacked,
    taken_apart,
)
from binder_plugins.operations.sides import SAID, SHEET_MM, datum

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.flat import Flat
    from binder_solid.facts import Located


# A vice holds no higher piece upright, and so much goes for drill and chuck over one, in mm;
# common practice, no source.
_TALL_MM = 80.0
# Gib screws are no larger, in mm; common practice, no source.
_SMALL_TAP = 3.0
_MARKED = "scriber and centre punch"
_ASIDE = " from the side "


def drilled(flat: Flat, face: str, found: Sequence[Located]) -> None:
    """The holes of one face; those spotted through a mate come last."""
    together = [
        one
        for one in found
        if flat.work.made(one.name) == "spotted through" and one.kind == "tapped"
    ]
    stack = stacked(flat, [one for one in found if one not in together])
    plain = [one for one in found if one not in together and one not in stack]
    if stack:
        _holes(flat, face, stack, is_stack=True)
    if plain:
        _holes(flat, face, plain)
    for one in together:
        _spotted(flat, face, one)


def _holes(flat: Flat, face: str, found: Sequence[Located], *, is_stack: bool = False) -> None:
    largest = (
        max(one.diameter or 0.0 for one in found if one.kind not in SINKS)
        if any(one.kind not in SINKS for one in found)
        else 1.0
    )
    machine = _for_holes(flat, min(largest, 13.0), face)
    place = place_of(flat.workshop, machine)
    by_rows = place == "mill"
    tags = ("coordinates",) if by_rows else ()
    if flat.thin < SHEET_MM:
        tags = (*tags, "sheet")
    acts: list[Act] = []
    if not by_rows:
        count = sum(len(one.spots) for one in found)
        acts.append(
            flat.work.act(
                "mark-out",
                f"mark out {count} hole{'s' if count > 1 else ''} on the {SAID[face]}",
                feature=f"marks {face}",
                amount=count,
            )
        )
    for one in sorted(found, key=lambda one: one.kind in SINKS):
        more = ("master",) if flat.work.made(one.name) == "spotted through" else ()
        where = Where(machine, through(one, flat.form.size), tags=(*tags, *more))
        acts += hole_acts(flat.work, one, in_stack(flat, where) if is_stack else where)
    _too_large(flat, found)
    vice = _upright(flat) if _is_tall(flat, face) else flat.vice()
    if not is_stack:
        flat.add(place, machine, vice, datum(face), acts)
        return
    acts = [clamped(flat, found, "their made edges level"), *acts, taken_apart(flat)]
    grip = gripped(flat, vice)
    flat.add(place, machine, grip, datum(face), acts, at_once=flat.work.count)


def _is_tall(flat: Flat, face: str) -> bool:
    """Whether a long piece stands on its end under the drill."""
    return face in {"left", "right"} and flat.form.size[0] > _TALL_MM


def _upright(flat: Flat) -> Grip:
    """No vice holds a long bar upright: it is clamped to the side of an angle plate."""
    owned = flat.workshop.entry.holding.angle_plate is not None
    to = "an angle plate" if owned else "a block squared for it"
    return Grip(f"clamped upright to {to}", "plate", "its side", min(flat.form.size))


def _for_holes(flat: Flat, largest: float, face: str) -> str:
    """The mill where holes are placed by coordinates in metal, else the drilling machine."""
    found = flat.workshop.entry.machines.mills.get(flat.mill)
    high = flat.form.size[0] + _TALL_MM if _is_tall(flat, face) else 0.0
    is_under = found is None or high <= found.travels.z.mm
    if flat.mill and not flat.is_wood and flat.thin >= SHEET_MM and is_under:
        return flat.mill
    return drill_for(flat.workshop, largest)


def _too_large(flat: Flat, found: Sequence[Located]) -> None:
    most = largest_drill_taken(flat.workshop)
    for one in found:
        if one.kind == "drilled" and most and (one.diameter or 0.0) > most and not flat.is_wood:
            words = (
                f"'{one.name}' of '{flat.work.name}' is ⌀{one.diameter:g} mm; what is here "
                f"drill ⌀{most:g} mm, and the part does not go in the lathe"
            )
            flat.trouble.append(("hole-too-large", words))


def _spotted(flat: Flat, face: str, one: Located) -> None:
    mate = _mate(flat, one.name)
    machine = drill_for(flat.workshop, one.diameter or 0.0)
    count = len(one.spots)
    spot = flat.work.act(
        "spot-through",
        f"clamp the {mate} on where it will stand, spot {count} through its holes with their own "
        "drill, take it off",
        machine=machine,
        feature=one.name,
        times=count,
    )
    where = Where(machine, through(one, flat.form.size), tags=("later",), is_started=True)
    flat.add(
        place_of(flat.workshop, machine),
        machine,
        flat.vice(),
        f"{SAID[face]} up; the holes of the {mate}",
        [spot, *hole_acts(flat.work, one, where)],
    )


def tapped_in_place(flat: Flat) -> None:
    """Holes that a joint wants where no face of the part tells their place: gib screws."""
    for place, halves in flat.work.halves.items():
        told = [one for one in halves if one.what.startswith("tap ") and _ASIDE in one.what]
        if not told or place in SAID or flat.work.feature(place) is not None:
            continue
        machine = drill_for(flat.workshop, _SMALL_TAP)
        words = told[0].what.removeprefix("tap ").split(",")[0]
        size = told[0].what.partition("drill ")[2].split(";")[0]
        where = told[0].what.partition("; ")[2]
        make, said = flat.work.act, place.replace("_", " ")
        acts = [
            make("spot-through", f"{told[0].how}: {said}, {where}", feature=place, tool=_MARKED),
            make("drill", f"drill {size} for {words}", machine=machine, feature=place,
                 tool=f"{size.removesuffix(' drill')} drill", tags=("later",)),
            make("tap", f"tap {words}", feature=place, tool="taps: taper, then plug"),
        ]  # fmt: skip
        flat.add(
            place_of(flat.workshop, machine), machine, flat.vice(), "the side, square up", acts
        )


def _mate(flat: Flat, place: str) -> str:
    """The title of the part whose holes are spotted through."""
    design, own = flat.work.design, flat.work.name
    for joint in flat.work.joints_at(place):
        others = (item for item in design.joints[joint].items if item != own)
        found = next((item for name in others if (item := design.item(name)) is not None), None)
        if found is not None:
            return found.title
    return "mate"


def is_bored_in_lathe(flat: Flat, one: Located) -> bool:
    """A bore, or a hole that no drilling machine takes, in a part that the lathe swings."""
    if len(one.spots) > 1 or flat.is_wood:
        return False
    most = largest_drill_taken(flat.workshop)
    is_wanted = one.kind == "bored" or (
        one.kind in HOLES and (one.diameter or 0.0) > max(most, 1.0)
    )
    across = _swung(flat, one)
    return (
        is_wanted
        and bool(lathe_for(flat.workshop, across))
        and bool(flat_holder(flat.workshop, across)[0])
    )


def _swung(flat: Flat, one: Located) -> float:
    """The circle in mm that the part sweeps when it turns about a hole."""
    axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
    spans = [
        max(one.frame.origin[n], flat.form.size[n] - one.frame.origin[n])
        for n in range(3)
        if n != axis
    ]
    return 2 * math.hypot(*spans)


def bored(flat: Flat, face: str, one: Located) -> None:
    """A bore, marked out and turned about its pop mark."""
    across = _swung(flat, one)
    lathe = lathe_for(flat.workshop, across)
    holder, kind = flat_holder(flat.workshop, across)
    mark = flat.work.act(
        "mark-out",
        f"mark the centre of the {one.name.replace('_', ' ')} and pop it",
        feature=f"marks {one.name}",
        amount=1.0,
    )
    vice = bench_vice(flat.workshop)
    flat.add("bench", "", Grip(vice or "surface plate", "bench", "its base"), datum(face), [mark])
    where = Where(lathe, through(one, flat.form.size), end=face, is_lathe=True)
    grip = Grip(
        holder,
        kind,
        "its edges" if kind == "four-jaw" else "its face, clamped and balanced",
        across,
    )
    true = "the pop mark within 0.05 mm, the face square"
    if not is_stacked(flat, one):
        acts = list(hole_acts(flat.work, one, where))
        count = flat.work.count
        alike = f"; the {count} at one height: the same packing under each" if count > 1 else ""
        flat.add("lathe", lathe, grip, "the centre pop, clocked true", acts, true=f"{true}{alike}")
        return
    acts = [
        clamped(flat, [one], "their made edges level, pegged where a hole is there"),
        *hole_acts(flat.work, one, in_stack(flat, where)),
        taken_apart(flat),
    ]
    flat.add(
        "lathe",
        lathe,
        gripped(flat, grip),
        "the centre pop of the first, clocked true",
        acts,
        true=true,
        at_once=flat.work.count,
    )
