"""Every act of the three models names a tool that makes its size and goes in; no act is lost.

A drill leaves its own size, a reamer too; an end mill cuts a slot no narrower than itself, a
boring bar needs a hole as wide as it is told for. All: common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from binder.compiler import Job, Phase, compiled
from binder.design import Design
from binder.host import Host
from binder_plugins.operations.facts import Act, Route

ROOT = Path(__file__).parents[3]
SPECS = ("screw-jack", "tilt-hammer", "wharf-crane")
SIZE = re.compile(r"(\d+(?:\.\d+)?) mm")


@cache
def design(name: str) -> Design:
    found = compiled(
        Job(ROOT / "specs" / name / f"{name}.yaml", None), Host.load(), Phase.CHECK
    ).design
    assert found is not None
    return found


def acts(name: str, *kinds: str) -> Iterator[tuple[str, Act]]:
    for route in design(name).facts.all(Route):
        yield from ((route.subject, act) for act in route.acts if act.act in kinds)


def first_mm(text: str) -> float:
    found = SIZE.search(text)
    assert found is not None, text
    return float(found[1])


@pytest.mark.parametrize("name", SPECS)
def test_drills_and_reamers_leave_the_size(name: str) -> None:
    for part, act in acts(name, "drill", "ream"):
        assert "not owned" not in act.tool, (part, act.what)
        over = 0.1 if "next above" in act.tool else 0.0
        if act.size:
            assert abs(first_mm(act.tool) - act.size) <= over + 0.02, (part, act.what, act.tool)


@pytest.mark.parametrize("name", SPECS)
def test_a_hole_grows_from_tool_to_tool(name: str) -> None:
    """Each drill of a hole is larger than the one before it, and a reamer takes 0.1 to 0.3 mm."""
    for route in design(name).facts.all(Route):
        for feature in {act.feature for act in route.acts}:
            mine = [act for act in route.acts if act.feature == feature]
            drills = [act.size for act in mine if act.act == "drill"]
            assert drills == sorted(set(drills)), (route.subject, feature, drills)
            for act in mine:
                if act.act == "ream" and drills:
                    assert 0.1 - 1e-6 <= act.size - drills[-1] <= 0.3 + 1e-6, (route.subject, act)


@pytest.mark.parametrize("name", SPECS)
def test_a_boring_bar_goes_into_the_hole_that_is_drilled(name: str) -> None:
    for part, act in acts(name, "bore"):
        if not act.tool.startswith("boring bar") or part in design(name).tasks:
            continue  # What is bored again when it is pressed in was drilled on its own leaf.
        there = [
            one.size
            for one in design(name).facts.about(Route, part).acts  # type: ignore[union-attr]
            if one.feature == act.feature and one.act == "drill"
        ]
        # A bush that is sized in its place comes with its hole: its leaf leaves 0.3 mm.
        there = there or [act.size - 0.3]
        assert float(act.tool.split("⌀")[1].split(" ")[0]) <= max(there), (part, act.tool)


@pytest.mark.parametrize("name", SPECS)
def test_no_cutter_is_wider_than_its_slot(name: str) -> None:
    for part, act in acts(name, "mill", "keyway"):
        found = re.search(r"slot, width (\d+(?:\.\d+)?) mm", act.what)
        if found is None:
            continue
        width = float(found[1])
        assert act.size <= width, (part, act.what)
        assert ("open it" in act.what) == (act.size < width), (part, act.what)


@pytest.mark.parametrize("name", SPECS)
def test_nothing_is_centred_wider_than_its_end(name: str) -> None:
    """The tailstock's centre leaves metal round its mouth; a point of 1 mm takes none."""
    for route in design(name).facts.all(Route):
        for act in route.acts:
            if act.act == "centre" and "tailstock" in act.what:
                thin = min(one.size for one in route.acts if one.act in {"turn", "taper"})
                assert act.size < thin, (route.subject, act.what)


@pytest.mark.parametrize("name", SPECS)
def test_what_is_left_for_a_joint_is_not_made_before(name: str) -> None:
    """A hole drilled together is not there on the leaf, nor its size written down."""
    for route in design(name).facts.all(Route):
        places = [one.said.split(":")[0].replace(" ", "_") for one in route.left]
        for act in route.acts:
            if act.feature in places:
                assert act.act not in {"ream", "measure"}, (route.subject, act.what)


@pytest.mark.parametrize("name", SPECS)
def test_a_plate_is_marked_out_before_it_is_sawn(name: str) -> None:
    for route in design(name).facts.all(Route):
        kinds = [act.act for act in route.acts if "on-the-plate" in act.tags or act.act == "saw"]
        if "mark-out" in kinds:
            assert kinds.index("mark-out") < kinds.index("saw"), route.subject


@pytest.mark.parametrize("name", SPECS)
def test_the_cut_list_cuts_what_the_leaf_cuts(name: str) -> None:
    """The length in the saw's act is that of the cut list, where both saw it off a bar."""
    from binder.api import BarPlan

    pieces = {
        piece.item: piece for plan in design(name).facts.all(BarPlan) for piece in plan.pieces
    }
    for part, act in acts(name, "saw"):
        found = re.search(r"(?:saw|cut) off (\S+) mm", act.what)
        if found is not None and part in pieces:
            assert float(found[1]) == pytest.approx(float(pieces[part].length), abs=1e-3), part
            assert pieces[part].verb == "saw"
