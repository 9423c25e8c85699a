"""Joints on shafts by key and by circlip: keyways and grooves to the table of the shaft."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder.api import PlaceFact, implied_feature, made_size
from binder_plugins.fasteners import codes, shaft_codes
from binder_plugins.fasteners.choosing import wanted, working
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import made_here, says_many
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined, Step
from binder_trade.fastening import FastenerName, with_length
from binder_trade.hardware import (
    Circlip,
    NotListed,
    ParallelKey,
    circlip_bore,
    circlip_shaft,
    parallel_key,
)

_SAME_MM = 0.02
_GROOVE_MM = 0.15
_GROOVES_IN = 2  # widths of a groove from the end of its step to its inner wall, as drawn
_LENGTH_SHARE = 1.5  # shaft diameters that a key is long, at most its hub


def keyed(seen: Seen) -> Iterator[Said]:
    """All that follows from a parallel key: both keyways, the key and its length."""
    hub, shaft = _hub_and_shaft(seen)
    across = _diameter(shaft) or _diameter(hub)
    name = seen.asked.name
    if across is None or name.kind != "parallel key":
        yield wanted(seen, name)
        return
    try:
        key = parallel_key(across)
    except NotListed as fault:
        yield codes.HARDWARE_NOT_LISTED.at(seen.asked.at, fault.reason, help=fault.way_out)
        yield wanted(seen, name)
        return
    yield from _standard(seen, key, across)
    yield from _hub_wall(seen, hub, key, across)
    yield from _keyways(seen, hub, shaft, key)
    yield from _key(seen, hub, key, across)


def _hub_and_shaft(seen: Seen) -> tuple[Half, Half]:
    first, second = seen.halves[0], seen.halves[-1]
    is_hole = second.place is not None and second.place.form == "hole"
    return (second, first) if is_hole else (first, second)


def _diameter(half: Half) -> float | None:
    place = half.place
    return float(place.diameter) if place is not None and place.diameter is not None else None


def _standard(seen: Seen, key: ParallelKey, across: float) -> Iterator[Said]:
    wide = seen.asked.name.diameter_mm
    if wide is not None and abs(wide - key.b_mm) > _SAME_MM:
        yield shaft_codes.KEY_NOT_STANDARD.at(
            seen.asked.at,
            f"a key {wide:g} mm wide on a shaft of {across:g} mm",
            help=f"{key.standard} has {key.b_mm:g} mm × {key.h_mm:g} mm for it",
        )


def _hub_wall(seen: Seen, hub: Half, key: ParallelKey, across: float) -> Iterator[Said]:
    outside = _outside(seen, hub)
    if outside is None:
        return
    wall = (outside - across) / 2 - key.hub_depth_mm
    if wall < key.h_mm:
        yield shaft_codes.KEYWAY_THINS_HUB.at(
            hub.end.at,
            f"{wall:.1f} mm of hub are left over the keyway, {key.h_mm:g} mm is the least",
            help=f"make the hub {across + 2 * (key.hub_depth_mm + key.h_mm):.1f} mm or more",
        )


def _outside(seen: Seen, hub: Half) -> float | None:
    on = hub.place.on if hub.place is not None else ""
    for name in (on, "outside"):
        place = seen.design.facts.about(PlaceFact, f"{hub.end.item}.{name}")
        if name and place is not None and place.form == "step" and place.diameter is not None:
            return float(place.diameter)
    return None


def _keyways(seen: Seen, hub: Half, shaft: Half, key: ParallelKey) -> Iterator[Said]:
    for half, deep, other in (
        (shaft, key.shaft_depth_mm, hub),
        (hub, key.hub_depth_mm, shaft),
    ):
        place = half.place
        if not half.is_made or place is None or place.kind == "keywayed":
            continue
        on = place.place if place.form == "step" else place.on
        values: dict[str, object] = {
            "keywayed": made_size(key.b_mm, seen.joint),
            "depth": made_size(deep, seen.joint),
        }
        if on:
            values["on"] = on
        yield made_here(seen, half, "keyway", "keywayed", values)
        what = f"keyway {key.b_mm:g} mm wide, {deep:g} +{key.depth_plus_mm:g} mm deep"
        yield half_fact(seen, half, what, str(other.end), key.source)


def _key(seen: Seen, hub: Half, key: ParallelKey, across: float) -> Iterator[Said]:
    name = seen.asked.name
    long = hub.thick
    if name.length_mm is None and long is not None:
        most = min(long, _LENGTH_SHARE * across)
        able = [one for one in key.lengths_mm if one <= most]
        if able:
            name = with_length(_sized(name, key), able[-1], f"{able[-1]:g} mm")
            yield working(
                seen, "key", "key", f"{key.b_mm:g} × {key.h_mm:g} × {able[-1]:g} mm",
                "by the shaft; as long as the hub, 1.5 shafts at most", (
                    Step("key", f"table, shaft over {key.over_mm:g} to {key.to_mm:g} mm",
                         f"{key.b_mm:g} × {key.h_mm:g} mm", key.source),
                ),
            )  # fmt: skip
    yield wanted(seen, name)


def _sized(name: FastenerName, key: ParallelKey) -> FastenerName:
    """The key with the section of the table where its words give none."""
    if name.diameter_mm is not None:
        return name
    return replace(
        name,
        diameter_mm=key.b_mm,
        height_mm=key.h_mm,
        diameter_text=f"{key.b_mm:g} mm × {key.h_mm:g} mm",
    )


def clipped(seen: Seen) -> Iterator[Said]:
    """All that follows from a circlip: its groove, by the table of the shaft or bore."""
    holder = _holder(seen)
    clip = _clip(seen, holder)
    if clip is None or holder is None:
        yield wanted(seen, seen.asked.name)
        return
    place = holder.place
    if place is not None and place.kind == "grooved":
        yield from _groove(seen, holder, place, clip)
    elif place is not None and place.form in ("step", "hole") and holder.is_made:
        yield from _cut_groove(seen, holder, place, clip)
    for half in seen.halves:
        if half is not holder and half.is_made:
            yield half_fact(seen, half, _between(seen, place, clip), str(holder.end), "")
    name = seen.asked.name
    if name.diameter_mm is None:
        text = f"{clip.d_mm:g} mm {name.says}"
        yield wanted(seen, _renamed(name, clip.d_mm, text))
    else:
        yield wanted(seen, name)


def _between(seen: Seen, place: PlaceFact | None, clip: Circlip) -> str:
    """How much of the other half goes between two clips, or that one clip holds it."""
    if place is None or place.kind != "grooved" or place.count < 2:
        return "held on one side by the circlip"
    step = seen.design.facts.about(PlaceFact, f"{place.item}.{place.on}")
    if place.count != 2 or step is None or step.length is None or _is_placed(seen, place):
        return "between the circlips"
    room = float(step.length) - 2 * _GROOVES_IN * clip.width_mm
    return f"between the circlips, {room:g} mm wide at the most" if room > 0 else "no room"


def _is_placed(seen: Seen, place: PlaceFact) -> bool:
    owner = seen.design.parts.get(place.item)
    features = owner.features if owner is not None else ()
    return any(getattr(one.entry, "at", None) for one in features if one.name == place.place)


def _renamed(name: FastenerName, size: float, says: str) -> FastenerName:
    return replace(name, diameter_mm=size, diameter_text=f"{size:g} mm", says=says)


def _holder(seen: Seen) -> Half | None:
    """The half with the groove: the last one, where its size is known, else any."""
    known = [half for half in reversed(seen.halves) if _nominal(seen, half) is not None]
    return known[0] if known else None


def _nominal(seen: Seen, half: Half) -> float | None:
    """The diameter that the groove is cut in."""
    place = half.place
    if place is None:
        return None
    if place.kind == "grooved":
        under = seen.design.facts.about(PlaceFact, f"{half.end.item}.{place.on}")
        place = under if under is not None else place
        return float(place.diameter) if place.form == "step" and place.diameter else None
    return float(place.diameter) if place.diameter is not None else None


def _clip(seen: Seen, holder: Half | None) -> Circlip | None:
    asked = seen.asked
    size = asked.diameter_mm
    if size is None and holder is not None:
        size = _nominal(seen, holder)
    if size is None:
        return None
    try:
        find = circlip_bore if asked.name.kind == "internal circlip" else circlip_shaft
        return find(size) if asked.name.kind != "e-clip" else None
    except (NotListed, NotDefined):
        return None


def _groove(seen: Seen, holder: Half, place: PlaceFact, clip: Circlip) -> Iterator[Said]:
    """A written groove against the table: its width, and the diameter at its bottom."""
    nominal = _nominal(seen, holder)
    if place.is_to_suit:
        yield from _settle_groove(seen, holder, place, clip)
        return
    wide = float(place.diameter) if place.diameter is not None else None
    deep = float(place.depth) if place.depth is not None else None
    wrong = []
    if wide is not None and not clip.thickness_mm < wide <= clip.width_mm + _GROOVE_MM:
        wrong.append(f"{wide:g} mm wide for {clip.width_mm:g}")
    if deep is not None and nominal is not None:
        bottom = nominal - 2 * deep
        if abs(bottom - clip.groove_mm) > _GROOVE_MM:
            wrong.append(f"{bottom:g} mm at its bottom for {clip.groove_mm:g}")
    if wrong:
        yield shaft_codes.CIRCLIP_GROOVE_WRONG.at(
            holder.end.at,
            f"the groove of '{holder.end}' is {' and '.join(wrong)}",
            help=f"cut it {clip.width_mm:g} mm wide to {clip.groove_mm:g} mm ({clip.standard})",
        )


def _deep_of(clip: Circlip) -> float:
    return abs(clip.d_mm - clip.groove_mm) / 2


def _settle_groove(seen: Seen, holder: Half, place: PlaceFact, clip: Circlip) -> Iterator[Said]:
    owner = seen.design.parts.get(place.item)
    if owner is None:
        return
    entry = next(one.entry for one in owner.features if one.name == place.place)
    kept = ("on", "across", "at", "off", "each_end", "note")
    values = {name: getattr(entry, name, None) for name in kept}
    yield implied_feature(
        seen.design, seen.joint, place.item, place.place, "grooved",
        **{name: value for name, value in values.items() if value is not None},
        grooved=made_size(clip.width_mm, seen.joint),
        depth=made_size(_deep_of(clip), seen.joint),
    )  # fmt: skip
    yield _groove_fact(seen, holder, clip)


def _cut_groove(seen: Seen, holder: Half, place: PlaceFact, clip: Circlip) -> Iterator[Said]:
    if place.form != "step":
        return
    values = {
        "grooved": made_size(clip.width_mm, seen.joint),
        "on": place.place,
        "depth": made_size(_deep_of(clip), seen.joint),
    }
    yield made_here(seen, holder, "groove", "grooved", values)
    yield _groove_fact(seen, holder, clip)


def _groove_fact(seen: Seen, holder: Half, clip: Circlip) -> Said:
    low, high = (clip.groove_mm + um / 1000 for um in (clip.groove_lower_um, clip.groove_upper_um))
    what = f"groove {clip.width_mm:g} mm wide to ⌀{clip.groove_mm:g}, {low:.3f} to {high:.3f}"
    what += f"{says_many(seen, holder)}"
    others = [str(half.end) for half in seen.halves if half is not holder]
    return half_fact(seen, holder, what, others[0] if others else "the circlip", clip.source)
