"""Joints by a parallel key: both keyways to the table of the shaft, the key and its length."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder_plugins.fasteners import codes, shaft_codes
from binder_plugins.fasteners.choosing import wanted, working
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.hubs import diameter, hub_and_shaft
from binder_plugins.fasteners.keyways import Way, hub_wall, keyway
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_plugins.fasteners.woodruffs import woodruff_keyed
from binder_trade.explained import Step
from binder_trade.fastening import FastenerName, with_length
from binder_trade.hardware import NotListed, ParallelKey, parallel_key

_SAME_MM = 0.02
_LENGTH_SHARE = 1.5  # shaft diameters that a key is long, at most its hub


def keyed(seen: Seen) -> Iterator[Said]:
    """All that follows from a key: both keyways, the key and its length."""
    hub, shaft = hub_and_shaft(seen)
    across = diameter(seen, shaft) or diameter(seen, hub)
    name = seen.asked.name
    if across is None:
        yield wanted(seen, name)
        return
    if name.kind == "woodruff key":
        yield from woodruff_keyed(seen, hub, shaft, across)
        return
    try:
        key = parallel_key(across)
    except NotListed as fault:
        yield codes.HARDWARE_NOT_LISTED.at(seen.asked.at, fault.reason, help=fault.way_out)
        yield wanted(seen, name)
        return
    yield from _standard(seen, key, across)
    yield from hub_wall(seen, hub, key.hub_depth_mm, key.h_mm, across)
    yield from _keyways(seen, hub, shaft, key)
    yield from _key(seen, hub, key, across)


def _standard(seen: Seen, key: ParallelKey, across: float) -> Iterator[Said]:
    wide = seen.asked.name.diameter_mm
    if wide is not None and abs(wide - key.b_mm) > _SAME_MM:
        yield shaft_codes.KEY_NOT_STANDARD.at(
            seen.asked.at,
            f"a key {wide:g} mm wide on a shaft of {across:g} mm",
            help=f"{key.standard} has {key.b_mm:g} mm × {key.h_mm:g} mm for it",
        )


def _keyways(seen: Seen, hub: Half, shaft: Half, key: ParallelKey) -> Iterator[Said]:
    for half, deep, other in (
        (shaft, key.shaft_depth_mm, hub),
        (hub, key.hub_depth_mm, shaft),
    ):
        what = f"keyway {key.b_mm:g} mm wide, {deep:g} +{key.depth_plus_mm:g} mm deep"
        yield from keyway(seen, half, Way(key.b_mm, deep, what, key.source), other)


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
