"""The holes of a flat part: by coordinates, spotted through a mate, or bored in the lathe."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import (
    bench_vice,
    drill_for,
    flat_holder,
    largest_drill_taken,
    lathe_for,
    place_of,
)
from binder_plugins.operations.bolted import alone, bolt_holes, in_jaws, on_plate
from binder_plugins.operations.facts import Act, Grip
from binder_plugins.operations.hole_kinds import HOLES, SINKS, Where, narrows_to, through
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.out_of_balance import SWING, most_rpm, off_middle, swept
from binder_plugins.operations.paired import cut_by_now, is_paired, pair_by, pair_held
from binder_plugins.operations.parallels import clear_of
from binder_plugins.operations.plugged import plugged
from binder_plugins.operations.several import (
    clamped,
    gripped,
    in_stack,
    is_stacked,
    stacked,
    taken_apart,
)
from binder_plugins.operations.sides import CLOCKED, SAID, SHEET_MM, datum
from binder_plugins.operations.spotting import lined_bore, spotted
from binder_plugins.operations.waste import on_waste

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from binder_plugins.operations.flat import Flat
    from binder_solid.facts import Located


# A vice holds no higher piece upright, and so much goes for drill and chuck over one, in mm;
# common practice, no source.
_TALL_MM = 80.0


def drilled(flat: Flat, face: str, found: Sequence[Located]) -> None:
    """The holes of one face; those spotted through a mate come last."""
    together = [one for one in found if _is_spotted(flat, one)]
    stack = stacked(flat, [one for one in found if one not in together])
    plain = [one for one in found if one not in together and one not in stack]
    if stack:
        _holes(flat, face, stack, is_stack=True)
    if plain:
        _holes(flat, face, plain)
    if not lined_bore(flat):
        for one in together:
            spotted(flat, face, one)


def _is_spotted(flat: Flat, one: Located) -> bool:
    return flat.work.made(one.name) == "spotted through" and one.kind == "tapped"


def spotted_on_bar(flat: Flat, sides: Mapping[str, Sequence[Located]]) -> None:
    """Holes spotted through a mate with a bar through the bores, which are all made by now."""
    if lined_bore(flat):
        for face, found in sides.items():
            for one in found:
                if _is_spotted(flat, one):
                    spotted(flat, face, one)


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
        made = hole_acts(flat.work, one, in_stack(flat, where) if is_stack else where)
        acts += plugged(flat.work, one, flat.form, list(made))
    _too_large(flat, found)
    vice = _upright(flat) if _is_tall(flat, face) else flat.vice()
    vice, clear = clear_of(vice, flat.form.size, face, found)
    vice, clear = on_waste(vice, clear, found, is_wood=flat.is_wood)
    if not is_stack:
        flat.add(place, machine, vice, datum(face), acts, true=clear)
        return
    clamp = clamped(flat, found, "their made edges level")
    acts = [clamp, *acts, taken_apart(flat, clamp)]
    grip = gripped(flat, vice)
    flat.add(place, machine, grip, datum(face), acts, true=clear, at_once=flat.work.count)


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


def is_bored_in_lathe(flat: Flat, one: Located) -> bool:
    """A bore, or a hole that no drilling machine takes, in a part that the lathe swings."""
    if len(one.spots) > 1 or flat.is_wood:
        return False
    most = largest_drill_taken(flat.workshop)
    is_bored = one.kind == "bored" or narrows_to(flat.work, one) > 0
    is_wanted = is_bored or (one.kind in HOLES and (one.diameter or 0.0) > max(most, 1.0))
    across = swept(flat.form.size, one)
    return (
        is_wanted
        and bool(lathe_for(flat.workshop, across))
        and bool(flat_holder(flat.workshop, across)[0])
    )


def _off_edges(flat: Flat, one: Located) -> str:
    """How far a single centre is from the nearest edges: what it may be told from comes later."""
    if one.face not in {"top", "underside"} or len(one.spots) != 1:
        return ""
    (long, wide, _), (x, y, _) = flat.form.size, one.spots[0]
    ends = ((x, "left"), (long - x, "right")), ((y, "front"), (wide - y, "back"))
    told = [min(pair) for pair in ends]
    return ", " + " and ".join(f"{flat.work.mm(far)} from the {side}" for far, side in told) + ","


def bored(flat: Flat, face: str, one: Located) -> None:
    """A bore, marked out and turned about its pop mark."""
    across = swept(flat.form.size, one)
    lathe = lathe_for(flat.workshop, across)
    holder, kind = flat_holder(flat.workshop, across)
    mark = flat.work.act(
        "mark-out",
        f"mark the centre of the {one.name.replace('_', ' ')}{_off_edges(flat, one)} and pop it",
        feature=f"marks {one.name}",
        amount=1.0,
    )
    vice = bench_vice(flat.workshop)
    flat.add("bench", "", Grip(vice or "surface plate", "bench", "its base"), datum(face), [mark])
    grip = Grip(
        holder,
        kind,
        "its edges" if kind == "four-jaw" else "its face, clamped and balanced",
        across,
    )
    _about_its_pop(flat, face, one, lathe, grip)


def _about_its_pop(flat: Flat, face: str, one: Located, lathe: str, grip: Grip) -> None:
    """Clocked and bored, no faster than its heavy side allows; a stack of them at one go."""
    work = flat.work
    is_pair = is_paired(flat, one)
    is_stack = is_pair or is_stacked(flat, one)
    where = Where(lathe, through(one, flat.form.size), end=face, is_lathe=True)
    most = most_rpm(flat.form.size, off_middle(flat.form.size, one), work.count if is_stack else 1)
    with work.no_faster(most):
        acts = list(hole_acts(work, one, in_stack(flat, where) if is_stack else where))
    swing = SWING if math.isfinite(most) else ""
    true = f"the pop mark within 0.05 mm, the face square{swing}"
    if not is_stack:
        if grip.kind == "faceplate" and acts:
            held = on_plate(work, one, bolt_holes(work, one, cut_by_now(flat)))
            grip, acts = alone(grip, acts, held)
        many = work.count > 1
        alike = f"; the {work.count} at one height: the same packing under each" if many else ""
        by = f"the centre pop, {CLOCKED}"
        flat.add("lathe", lathe, grip, by, acts, true=f"{true}{alike}")
        return
    clamp = _as_one(flat, one, grip, is_block=is_pair and not flat.is_sheet())
    acts = [clamp, *acts, taken_apart(flat, clamp)]
    flat.add(
        "lathe",
        lathe,
        gripped(flat, grip),
        f"the centre pop of the first, {CLOCKED}",
        acts,
        true=true,
        at_once=work.count,
    )


def _as_one(flat: Flat, one: Located, grip: Grip, *, is_block: bool) -> Act:
    """The stack put together, and held so that it turns as one."""
    if is_block:
        return replace(clamped(flat, [one], pair_by(flat, one)), tool=pair_held(flat, one))
    level = "their made edges level"
    if grip.kind == "four-jaw" and not _has_holes(flat):
        clamp = clamped(flat, [one], level)
        said = f"{clamp.what}; no hole goes through yet: the four jaws alone hold them"
        return replace(clamp, what=said, tool="flat plate, superglue")
    clamp = clamped(flat, [one], f"{level}, pegged where a hole is there")
    bolts = bolt_holes(flat.work, one, cut_by_now(flat), pieces=flat.work.count)
    if grip.kind == "four-jaw":
        return replace(clamp, tool=in_jaws(bolts))
    held = on_plate(flat.work, one, bolts)
    return replace(clamp, what=f"{clamp.what}{held.where}", tool=held.tool)


def _has_holes(flat: Flat) -> bool:
    """Whether a hole goes through by then: a bolt or a peg holds the pieces together there."""
    cut = cut_by_now(flat)
    return any(one.name in cut and one.depth is None for one in flat.form.located)
