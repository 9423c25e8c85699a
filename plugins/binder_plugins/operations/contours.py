"""The contour of a cam: milled step by step by its table of settings, or filed to a template."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, divider, mill_for
from binder_plugins.operations.end_cutters import STOUT_MM, end_cutter
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.sides import SAME_MM
from binder_plugins.operations.words import holding_min
from binder_solid.facts import ContourFact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.turning import Turning

# Half a minute for each place of the table, a step of 5° to the next; three minutes of filing
# for each centimetre round. Common practice, no source.
_PLACES, _PLACE_MIN = 72, 0.5
_FILED_MIN_MM = 0.3
_ROUND = 6.3


def contour_setups(turning: Turning, number: int) -> Iterator[SetUp]:
    """One set-up for a part whose contour a drive gives; none for another."""
    work = turning.work
    contour = work.design.facts.about(ContourFact, work.name)
    if contour is None:
        return
    mill, head = mill_for(work.design.workshop), divider(work.design.workshop)
    if mill and head and contour.cutter:
        grip = Grip(f"mandrel on the {head}", "divider", "its bore")
        words = (
            f"mill the contour by the table of settings, {contour.cutter}; "
            "then file off the ridges alone"
        )
        wide = contour.cutter_mm or STOUT_MM
        tool, size = end_cutter(work.design.workshop, wide)
        if not size or (contour.cutter_mm and abs(size - wide) > SAME_MM):
            tool, size = f"{work.mm(wide)} cutter, not owned", wide
        act = work.act("mill", words, machine=mill, tool=tool, size=size, feature="contour")
        act = replace(act, run=_PLACES * _PLACE_MIN)
        yield SetUp(
            number, "mill", mill, grip, "the bore", (act,), "the bore to the table's axis", "",
            holding_min(grip.kind),
        )  # fmt: skip
    else:
        yield _filed(turning, contour, number)


def _filed(turning: Turning, contour: ContourFact, number: int) -> SetUp:
    work = turning.work
    words = "stick the template on by the bore; saw, and file to its line, square to the face"
    act: Act = work.act("outline", words, feature="contour")
    act = replace(act, run=_FILED_MIN_MM * _ROUND * contour.reach_mm)
    grip = Grip(bench_vice(work.design.workshop) or "vice", "bench", "its faces, jaws clothed")
    return SetUp(number, "bench", "", grip, "the bore", (act,), "", "", holding_min(grip.kind))
