"""What a joint is closed with at assembly, or set to its place by, is listed and made in time.

Which tool closes what is common practice, no source; lengths are worked out beside each check.
"""

from __future__ import annotations

import math
from dataclasses import replace
from functools import cache

import pytest

from binder.api import Design, SmallWork, TogetherFact
from binder.pages import text_of
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.operations.facts import Route
from binder_plugins.operations.planning import WorkPlan, plan_work
from binder_plugins.operations.together_pages import together_pages
from tests.plugins.operations.test_order import design_of

CRANE, HAMMER = "wharf-crane/wharf-crane", "tilt-hammer/tilt-hammer"
JACK = "screw-jack/screw-jack"


@cache
def _timed(model: str) -> Design:
    design = design_of(model)
    return replace(design, facts=design.facts.plus(time_tasks(design).facts))


def _tools(model: str) -> ToolsFact:
    return next(one for one in collect_tools(_timed(model)).facts if isinstance(one, ToolsFact))


@pytest.mark.parametrize(
    ("model", "task", "tool", "whose"),
    [
        # A barrel of 22.05 mm in the middle of an axle of 30 mm: 3.975 mm of rod before it.
        (CRANE, "bond barrel on axle 1", "distance tube ⌀4 mm × 3.97 mm", Whose.MADE),
        (CRANE, "begin winch", "distance tube ⌀4 mm × 9.65 mm", Whose.MADE),
        (HAMMER, "begin cam_line", "distance tube ⌀6 mm × 34 mm", Whose.MADE),
        # Two pedestals of 9 mm, 24 mm apart, and 5 mm out at either end, to the next 5 mm.
        (HAMMER, "pedestal 6", "lining rod ⌀10 mm × 55 mm", Whose.MADE),
        # Bushes of 4 mm, 30 mm over all, 10 mm out at either end, and a depth at each.
        (CRANE, "line up axle in cheeks 1", "trying rod ⌀3.8 mm × 60 mm", Whose.MADE),
        (CRANE, "set crank to barrel 2", "pointed rod to clock a mark by", Whose.MADE),
        (CRANE, "assemble jib_head", "circlip pliers", Whose.HAD),
        (CRANE, "assemble block", "flat dolly", Whose.MADE),
        (CRANE, "assemble block", "hammer", Whose.OWNED),
        (HAMMER, "assemble anvil_slide", "screwdriver or key", Whose.OWNED),
        # The plate is spotted through and its pilot holes drilled when it is screwed on.
        (HAMMER, "assemble tilt_hammer", "1.2 mm drill", Whose.OWNED),
        (HAMMER, "assemble tilt_hammer", "hand drill", Whose.OWNED),
        # The tail is filed back on the standing machine, its pivots are held by lock nuts.
        (HAMMER, "assemble tilt_hammer", "files", Whose.OWNED),
        (HAMMER, "assemble tilt_hammer", "spanner for M4 nuts", Whose.HAD),
        (HAMMER, "assemble anvil_slide", "spanner for M2 nuts", Whose.HAD),
        # What is screwed comes apart with what it went together with.
        (HAMMER, "strip tilt_hammer", "screwdriver or key", Whose.OWNED),
        (CRANE, "strip crane", "pin punch", Whose.OWNED),
        (CRANE, "strip crane", "circlip pliers", Whose.HAD),
        # By the words of the tests; a pair of parallels is on the list of what is owned.
        (HAMMER, "test hammer", "second centre punch", Whose.HAD),
        (HAMMER, "test hammer", "centre punch", Whose.OWNED),
        (
            HAMMER,
            "test cam_line",
            "two straight edges (a pair of parallels serves)",
            Whose.OWNED,
        ),
        # The edges of the pedestals are scribed on the bed that they are spotted through.
        (HAMMER, "pedestal 6", "rule", Whose.OWNED),
        (HAMMER, "pedestal 6", "scriber", Whose.OWNED),
        # The line over what is locked later is drawn anew, its screw tried, its float read again.
        (JACK, "run jack", "soft pencil", Whose.HAD),
        (JACK, "run jack", "screwdriver or key", Whose.OWNED),
        (JACK, "run jack", "dial indicator", Whose.OWNED),
        (CRANE, "run crane", "soft pencil", Whose.HAD),
    ],
)
def test_what_closes_a_joint_is_listed(model: str, task: str, tool: str, whose: Whose) -> None:
    fact = _tools(model)
    (found,) = [one for one in fact.tools if one.name == tool]
    assert found.whose is whose
    assert task in [piece for piece, _ in found.uses]
    assert tool in fact.by_piece[task]


def test_where_nothing_is_locked_running_in_draws_no_line() -> None:
    assert "soft pencil" not in _tools(HAMMER).by_piece.get("run tilt_hammer", ())


def test_what_goes_back_into_its_own_holes_wants_no_drill() -> None:
    laid = _tools(HAMMER).by_piece
    assert "hand drill" in laid["assemble tilt_hammer"]
    assert "hand drill" not in laid["close tilt_hammer"]


def test_screws_alone_want_no_spanner() -> None:
    assert not [one for one in _tools(CRANE).by_piece["strip crane"] if "spanner" in one]


@pytest.mark.parametrize("model", [CRANE, HAMMER])
def test_what_sets_a_bond_is_made_before_it_and_has_stock(model: str) -> None:
    design = _timed(model)
    told = collect_tools(design).facts
    works = {one.subject: one for one in told if isinstance(one, SmallWork)}
    tubes = [one for one in works.values() if one.subject.startswith(("distance tube", "lining"))]
    assert tubes
    for one in tubes:
        assert one.length > 0
        assert one.section[0] > 0
    planned = plan_work(replace(design, facts=design.facts.plus(told))).facts
    (plan,) = [one for one in planned if isinstance(one, WorkPlan)]
    order = [job.split(", part ")[0] for evening in plan.evenings for job in evening.jobs]
    for tool in _tools(model).tools:
        if tool.name in {one.subject for one in tubes}:
            made = order.index(f"tool {tool.name}")
            assert all(made < order.index(piece) for piece, _ in tool.uses)
    laid = [tool for evening in plan.evenings for tool in evening.next_tools]
    assert "screwdriver or key" in laid


def test_what_is_made_later_does_not_lie_on_the_bench() -> None:
    """The cam shaft is made to the bushes that are pressed; a bush is bored to the post."""
    assert _bench(HAMMER, "cam") == ["bush", "pedestal"]
    assert "slewing post" in _bench(CRANE, "bush in housing")


def _bench(model: str, word: str) -> list[str]:
    design = design_of(model)
    (fact,) = [
        one
        for one in design.facts.all(TogetherFact)
        if one.how in {"pressed", "sized in place"}
        and any(word in joint for joint in one.joints)
        and design.facts.about(Route, one.subject) is not None
    ]
    (section,) = together_pages(design, ())
    named = "-".join(fact.subject.split())
    (leaf,) = [one for one in section.sections if one.id == f"together-{named}"]
    head = text_of(leaf.blocks[0].text)  # type: ignore[union-attr]
    return head.partition("On the bench: ")[2].rstrip(".").split(", ")


@pytest.mark.parametrize("model", [CRANE, HAMMER])
def test_a_hole_is_spotted_with_a_drill_of_a_told_size(model: str) -> None:
    """The clearance hole of M3 is 3.4 mm, ISO 273 medium: the drill that fits it spots its mate."""
    acts = [act for route in _timed(model).facts.all(Route) for act in route.acts]
    led = [act.tool for act in acts if "led by the mate" in act.tool]
    assert led
    assert all(tool.startswith("3.4 mm drill") for tool in led)
    assert not [one.name for one in _tools(model).tools if "drill of the mate" in one.name]


@pytest.mark.parametrize(("model", "across", "long"), [(CRANE, 3.8, 60.0), (HAMMER, 5.8, 100.0)])
def test_a_trying_rod_is_held_at_both_ends_while_it_is_turned(
    model: str, across: float, long: float
) -> None:
    """15 mm in the jaws, 5 for the centre hole, 2 to saw: 22 over its name. By a beam held at one
    end and borne at the other, P L³ / 107 E I, a cut of 0.05 mm (some 6 N) bends it 6 µm."""
    bent = 6 * (long + 5) ** 3 / (107 * 210_000 * math.pi * across**4 / 64)
    assert bent < 0.01
    told = collect_tools(_timed(model)).facts
    (rod,) = [one for one in told if isinstance(one, SmallWork)
              and one.subject.startswith("trying rod")]  # fmt: skip
    assert float(rod.length) == long + 22
    assert "the tailstock centre in the hole" in rod.steps[0]
    assert "tailstock centre" in rod.tools
