"""Flats that are not of the bar itself, and slots across an end."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, divider, mill_for
from binder_plugins.operations.end_cutters import STOUT_MM, end_cutter
from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.set_up import set_up
from binder_plugins.operations.thin_saws import slit_tool

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Stretch


def flat_setups(turning: Turning, number: int) -> Iterator[SetUp]:
    """Hexagons and squares that are not of the bar itself."""
    work = turning.work
    cut = [s for s in turning.steps if s.corners and not _is_of_bar(turning, s)]
    if not cut:
        return
    workshop = work.design.workshop
    head, mill = divider(workshop), mill_for(workshop)
    if head and mill:
        tool, size = end_cutter(workshop)
        acts = [
            work.act(
                "mill-flat",
                f"mill {s.corners} flats, {work.mm(s.across)} across",
                machine=mill,
                feature=s.name,
                tool=tool,
                size=size or STOUT_MM,
                times=s.corners,
                tags=("indexed",),
            )
            for s in cut
        ]
        yield set_up(number, "mill", mill, Grip(head, "divider", "its shank"), "the axis", acts)
        return
    acts = [
        work.act(
            "file",
            f"file {s.corners} flats, {work.mm(s.across)} across, between filing buttons",
            feature=s.name,
            tool="files and filing buttons",
        )
        for s in cut
    ]
    yield set_up(number, "bench", "", at_the_bench(turning), "the axis", acts)


def slit_setups(turning: Turning, number: int) -> Iterator[SetUp]:
    """Slots across an end, as for a screwdriver."""
    found = [one for one in turning.axial if one.kind in {"slotted", "flatted"}]
    if not found:
        return
    acts = [
        turning.work.act(
            "slit",
            one.note,
            feature=one.name,
            tool=slit_tool(turning.work, one.width or one.diameter or 0.0),
            meets=tuple(t.name for t in turning.form.located if t.kind == "screwed"),
        )
        for one in found
    ]
    grip = at_the_bench(turning)
    if turning.plan.is_threaded:
        grip = replace(grip, on="the thread, in a split tapped ring")
    yield set_up(number, "bench", "", grip, "the middle of the end", acts)


def _is_of_bar(turning: Turning, step: Stretch) -> bool:
    wanted = {4: "square bar", 6: "hexagon bar"}.get(step.corners, "")
    return turning.work.stock_form == wanted and abs(turning.work.stock_across - step.across) < 1e-6


def at_the_bench(turning: Turning) -> Grip:
    """The plain part in the bench vice."""
    vice = bench_vice(turning.work.design.workshop)
    return Grip(f"{vice or 'vice'}, soft jaws", "bench", "the plain part")
