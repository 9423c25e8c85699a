"""Evenings with heat, cures and coats, and what holds the model up.

Order, cures at the end, nothing done before a cure is over: the trade's rules for evenings,
common practice, no source. The network: the critical path method, worked out by hand here.
"""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from binder.api import Design, HoursFact, Subheading, Table, TaskTime
from binder.compiler import Phase
from binder.pages import text_of
from binder_making.sessions import Evening
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.facts import PREFIX
from binder_plugins.operations.evening_pages import evening_pages
from binder_plugins.operations.facts import Route
from binder_plugins.operations.holding_up import holding_up
from binder_plugins.operations.jobs import Piece, share_of
from binder_plugins.operations.minutes import route_minutes, setup_minutes
from binder_plugins.operations.planning import WorkPlan, plan_work
from binder_plugins.partslist.pages import list_pages
from tests.plugins.operations.conftest import HEAD, Plan, RouteOf
from tests.plugins.operations.test_order import MODELS, design_of, plan_of

PAWL = (
    "{material: silver steel, finish: hardened and tempered to dark straw and polished,"
    " stock: 10 mm round bar,"
    " turned: [{name: body, diameter: 6 mm, length: 20 mm}, {diameter: 9 mm, length: 4 mm}]}"
)
PAINTED = f"""{HEAD}\
  arm:
    material: mild steel
    finish: painted black
    because: its bore is masked
    block: {{length: 40 mm, width: 20 mm, height: 6 mm}}
    features: {{bore: {{reamed: 6 mm, on: top, depth: through}}}}
  pin: {{material: silver steel, stock: 6 mm drawn rod, cut: 30 mm}}
joints:
  a: {{slides: [pin, arm.bore]}}
assemblies:
  all: {{of: [arm, pin], test: it slides}}
"""


def evening_of(plan: WorkPlan, piece: str) -> list[int]:
    """The evenings of a piece."""
    return [
        evening.number
        for evening in plan.evenings
        for job in evening.jobs
        if job.split(", part ", maxsplit=1)[0] == piece
    ]


def test_a_pawl_is_hardened_when_it_is_cut_and_polished_when_it_is_tempered(
    route_of: RouteOf,
) -> None:
    acts = [act.act for act in route_of(PAWL).acts]
    assert acts.index("part-off") < acts.index("deburr") < acts.index("harden")
    assert acts[acts.index("harden") :] == ["harden", "temper", "polish"]


def test_annealed_stock_is_softened_between_saw_and_cutter(route_of: RouteOf) -> None:
    block = "block: {length: 40 mm, width: 9 mm, height: 6 mm}"
    part = f"{{material: mild steel, finish: annealed, {block}}}"
    acts = [act.act for act in route_of(part).acts]
    assert acts[:2] == ["saw", "anneal"]
    assert "mill" in acts[2:]


def test_a_joined_thing_is_softened_after_the_joining(plan: Plan) -> None:
    text = (
        f"{HEAD}  a: {{material: brass, stock: 6 mm drawn rod, cut: 9 mm}}\n"
        "  b: {material: brass, stock: 8 mm drawn rod, cut: 9 mm}\n"
        "fabrications:\n"
        "  ab: {pieces: [a, b], joined: silver_soldered, finish: stress relieved}\n"
    )
    design = plan(text).design
    assert design is not None
    route = design.facts.about(Route, "ab")
    assert route is not None
    assert [act.act for act in route.acts[:2]] == ["silver-solder", "stress-relieve"]


def test_a_coat_waits_for_the_trial_and_dries_before_the_screws(plan: Plan) -> None:
    design = plan(PAINTED, upto=Phase.COMPOSE).design
    assert design is not None
    found = design.facts.about(WorkPlan, "")
    assert found is not None
    order = ["test all", "strip all", *(f"finish arm, coat {n}" for n in (1, 2, 3)), "close all"]
    at = [evening_of(found, name)[0] for name in order]
    assert at == sorted(at)
    # 24 h between coats, and before it is handled: each on an evening of its own.
    assert len(set(at[2:])) == 4


@pytest.mark.parametrize("model", MODELS)
def test_nothing_is_done_on_what_cures(model: str) -> None:
    plan = plan_of(model)
    for name, waits in plan.waits.items():
        for earlier in waits:
            if plan.pieces[earlier].rests_h:
                assert evening_of(plan, earlier)[-1] < evening_of(plan, name)[0], (earlier, name)


@pytest.mark.parametrize("model", MODELS)
def test_cures_end_an_evening_and_nothing_risky_does(model: str) -> None:
    plan = plan_of(model)
    for evening in plan.evenings:
        curing = [job in evening.cures for job in evening.jobs]
        assert curing == sorted(curing), evening.jobs
        last = plan.pieces[evening.jobs[-1].split(", part ", maxsplit=1)[0]]
        risky = {"part-off", "tap", "cut-teeth"} & last.done
        assert not risky or len(evening.jobs) == 1 or any("risky" in r for r in evening.remarks)


def piece(name: str, minutes: float, rests: float = 0.0) -> Piece:
    """A task that takes so long, and rests so many hours afterwards."""
    return Piece(name, name, 1, None, minutes=minutes, wait_h=rests)


def test_the_chain_and_the_float_of_a_network_by_hand() -> None:
    """a 30 → b 20 (cures 24 h) → d 10; a → c 40 → d. An evening has 100.

    By hand: a-b-d is 30 + 20 + 100 + 10 = 160, a-c-d 80, so c has 80 of float. One pair of hands
    does a, b and c by 90, and waits until 150 for the cure: 60 of an evening's 100.
    """
    pieces = {one.id: one for one in (piece("a", 30), piece("b", 20, 24), piece("c", 40),
                                      piece("d", 10))}  # fmt: skip
    waits = {"a": (), "b": ("a",), "c": ("a",), "d": ("b", "c")}
    evenings = (evening(1, "a", "c", "b"), evening(2, "d"))
    found = holding_up(WorkPlan("", pieces, waits, evenings, 0, 0, 0, 100), 100)
    assert [one.owner for one in found.chain] == ["a", "b", "d"]
    assert (found.length, found.rests) == (160, 100)
    assert found.idle == pytest.approx(0.6)
    (other,) = found.others
    assert (other.owner, other.slack) == ("c", 80)
    assert (other.may_begin, other.begins, other.ends, other.needed) == (1, 1, 1, 2)


def kept(name: str, minutes: float) -> Piece:
    """A tool that is turned in the chuck for what comes next and stays there."""
    return Piece(f"{PREFIX}{name}", f"make the {name}", 1, None, minutes=minutes, goes_on=True)


def test_a_tool_that_stays_in_the_chuck_floats_with_what_it_is_for() -> None:
    """b waits for stub, both for a; stub for tool. a 30, tool 10, stub 20, b 5; c 90 → end 10.

    By hand: the longest is c and end, 100; a, stub, b and end are 65, so that a, stub and b have
    35 of float, the tool 100 − 10 − 20 − 5 − 10 = 55.
    """
    stub = kept("stub M3 for the b", 20)
    pieces = {one.id: one for one in (piece("a", 30), piece("b", 5), piece("c", 90),
                                      piece("end", 10), piece("tool", 10), stub)}  # fmt: skip
    waits = {"a": (), "b": ("a", stub.id), "c": (), "end": ("b", "c"), "tool": (),
             stub.id: ("tool", "a")}  # fmt: skip
    evenings = (evening(1, "a"), evening(2, "tool"), evening(3, stub.id, "b", "c"),
                evening(4, "end"))  # fmt: skip
    found = holding_up(WorkPlan("", pieces, waits, evenings, 0, 0, 0, 165), 100)
    assert [one.title for one in found.chain] == ["c", "end"]
    rows = {one.title: one for one in found.others}
    assert {title: one.slack for title, one in rows.items()} == {
        "a": 35, "b with its stub M3": 35, "tool": 55
    }  # fmt: skip
    both = rows["b with its stub M3"]
    assert (both.minutes, both.may_begin, both.begins, both.needed) == (25, 2, 3, 4)


@pytest.mark.parametrize("model", MODELS)
def test_a_tool_that_stays_in_the_chuck_waits_for_all_that_its_set_up_waits_for(model: str) -> None:
    """Any work between would take it out of the chuck: common practice, no source."""
    plan = plan_of(model)
    kept_in = [name for name, one in plan.pieces.items() if one.goes_on]
    assert kept_in
    for name in kept_in:
        users = [one for one, waits in plan.waits.items() if name in waits]
        own = [one for one in plan.waits[users[0]] if not one.startswith(PREFIX)]
        assert set(own) <= set(plan.waits[name])


@pytest.mark.parametrize("model", MODELS)
def test_every_piece_of_work_is_in_the_chain_or_among_the_others(model: str) -> None:
    plan = plan_of(model)
    found = holding_up(plan, 98)
    rows = [*found.chain, *found.others]
    assert sum(one.minutes for one in rows) == sum(one.takes for one in plan.pieces.values())
    titles = [(one.owner.startswith("finish "), one.title) for one in rows]
    assert len(set(titles)) == len(titles)


@pytest.mark.parametrize("model", MODELS)
def test_a_form_tool_waits_for_the_template_that_it_is_ground_to(model: str) -> None:
    plan = plan_of(model)
    for name in plan.pieces:
        if name.startswith(f"{PREFIX}form tool"):
            assert any(one.startswith(f"{PREFIX}template") for one in plan.waits[name])


def evening(number: int, *jobs: str) -> Evening:
    """An evening with these jobs."""
    return Evening(number, jobs, 0, 0, (), (), (), (), ())


@pytest.mark.parametrize("model", MODELS)
def test_a_part_is_planned_between_what_it_waits_for_and_what_waits_for_it(model: str) -> None:
    plan = plan_of(model)
    found = holding_up(plan, 98)
    everything = [*found.chain, *found.others]
    assert {one.owner for one in everything} >= set(design_of(model).parts)
    for one in everything:
        assert one.may_begin <= one.begins <= one.ends <= one.needed
    assert all(one.slack >= 0 for one in everything)
    assert found.length >= max(one.minutes for one in everything)


def test_tasks_without_a_route_are_timed_by_what_is_in_them() -> None:
    """Reading: 3 min, and 3 a size. Trying: 5, and 3 a moving joint (common practice)."""
    design: Design = design_of("tilt-hammer/tilt-hammer")
    times = {one.subject: one for one in time_tasks(design).facts if isinstance(one, TaskTime)}
    assert times["measure gear"].minutes == 3 + 3 * len(design.bought["gear"].measured)
    # In this assembly the screw moves in its bracket, its tip in the slide, and that on the bed.
    assert times["test anvil_slide"].minutes == 5 + 3 * 3
    screws = next(one for one in times["assemble anvil_slide"].lines if "anvil" in one.what)
    assert screws.minutes == 2 + 1 + 2 * 1.5
    # Glue and compound hold for good after a day.
    assert times["assemble hammer"].wait_h == 24
    assert times["size bush in pedestal"].wait_h == 0
    untimed = {name for name, task in design.tasks.items() if task.kind not in {"make", "join"}}
    assert untimed - set(times) == {"finish base"}


def test_what_lies_ready_for_a_joint_that_sets_goes_by_the_joint() -> None:
    """Steel on beech is glued with epoxy and clamped; a brass wheel on a steel shaft is retained.

    What is bonded so is degreased first.

    Common practice, no source.
    """
    design: Design = design_of("tilt-hammer/tilt-hammer")
    pieces = plan_of("tilt-hammer/tilt-hammer").pieces
    tools = {
        name: pieces[name].tools for name in ("assemble hammer", "begin line", "assemble line")
    }
    assert tools == {
        "assemble hammer": ("epoxy", "spirit to degrease with", "clamps"),
        "begin line": ("retaining compound", "spirit to degrease with"),
        "assemble line": (),
    }
    (shopping,) = (one for one in list_pages(design, ()) if one.id == "shopping")
    (table,) = (block for block in shopping.blocks if isinstance(block, Table))
    notes = {text_of(row[2]): text_of(row[5]) for row in table.rows}
    assert notes["epoxy"] == "for head on helve, collar on helve"
    assert notes["retaining compound"] == "for cam on shaft, wheel on line shaft"


@pytest.mark.parametrize("model", MODELS)
def test_the_hours_of_the_evenings_add_up_to_those_of_the_cover(model: str) -> None:
    design = design_of(model)
    timed = replace(design, facts=design.facts.plus(time_tasks(design).facts))
    planned = replace(timed, facts=timed.facts.plus(plan_work(timed).facts))
    cover = planned.facts.about(HoursFact, "")
    assert cover is not None
    page = next(iter(evening_pages(planned, ())))
    heads = [one.text for one in page.blocks if isinstance(one, Subheading)]
    ranges = [re.findall(r"(\d+) to (\d+) min", head)[0] for head in heads]
    told = [float(one.replace("½", ".5")) for one in re.findall(r"\d+½?", cover.text)]
    for side, hours in enumerate(told):
        # The cover rounds to half an hour.
        assert sum(int(one[side]) for one in ranges) / 60 == pytest.approx(hours, abs=0.55)


@pytest.mark.parametrize("model", MODELS)
def test_whoever_adds_the_lines_of_an_evening_has_its_minutes(model: str) -> None:
    """Lines and a fifth, then a quarter under to three fifths over, as the page says."""
    plan, design = plan_of(model), design_of(model)
    (section,) = evening_pages(replace(design, facts=design.facts.plus((plan,))), ())
    heads = [one.text for one in section.blocks if isinstance(one, Subheading)]
    tables = [one for one in section.blocks if isinstance(one, Table)]
    added = 0
    for head, table in zip(heads, tables, strict=True):
        lines = [int(text_of(row[3]).removesuffix(" min")) for row in table.rows]
        least, most = (int(one) for one in re.findall(r"(\d+) to (\d+) min", head)[0])
        assert abs(least - 0.75 * 1.2 * sum(lines)) < 0.5 + 1e-6
        assert abs(most - 1.6 * 1.2 * sum(lines)) < 0.5 + 1e-6
        added += sum(lines)
    assert plan.minutes == added


@pytest.mark.parametrize("model", MODELS)
def test_whoever_adds_the_set_ups_of_a_part_has_what_it_takes(model: str) -> None:
    plan, design = plan_of(model), design_of(model)
    for route in design.facts.all(Route):
        off = [plan.pieces[name] for name in plan.pieces
               if name.rsplit(" ", 1)[0] == route.subject and plan.pieces[name].setup]  # fmt: skip
        shop = design.workshop
        each = [setup_minutes(one, route.count, shop.pace_at(one.machine)) for one in route.setups]
        assert all(one == int(one) for one in each)
        assert route_minutes(route, shop) == sum(each)
        if len(off) == len(route.setups):
            assert sum(one.takes for one in off) == sum(each)


@pytest.mark.parametrize("model", MODELS)
def test_whoever_adds_the_chain_has_its_length(model: str) -> None:
    found = holding_up(plan_of(model), 98)
    assert sum(one.minutes for one in found.chain) == found.length - found.rests


@pytest.mark.parametrize(("minutes", "count"), [(233, 3), (100, 2), (99, 2), (7, 7)])
def test_the_parts_of_a_long_piece_add_up_to_it(minutes: int, count: int) -> None:
    parts = [share_of(piece("a", minutes), number, count) for number in range(1, count + 1)]
    assert sum(parts) == minutes
    assert max(parts) - min(parts) <= 1


@pytest.mark.parametrize("model", MODELS)
def test_sawing_waits_for_nothing(model: str) -> None:
    """Stock is sawn off long, whatever its part is made to: common practice, no source."""
    plan = plan_of(model)
    sawn = [
        name
        for name, piece in plan.pieces.items()
        if piece.setup is not None
        and piece.setup.number == 1
        and {act.act for act in piece.setup.acts} == {"saw"}
    ]
    assert sawn
    assert not [name for name in sawn if plan.waits[name]]
    assert any(plan.waits[f"{name.removesuffix(' 1')} 2"] != (name,) for name in sawn)


@pytest.mark.parametrize(
    ("mate", "first"),
    # The nut is screwed on as the thread is cut; on the other end the pin is turned to the saddle,
    # which the keeper shuts.
    [("body", 2), ("saddle", 3), ("keeper", 3)],
)
def test_a_mate_is_wanted_by_the_set_up_that_first_uses_it(mate: str, first: int) -> None:
    """A part that is not touched yet holds up nothing: the critical path method."""
    plan = plan_of(MODELS[2])
    waiting = [
        piece.setup.number
        for name, piece in plan.pieces.items()
        if name.startswith("screw ") and piece.setup is not None
        for earlier in plan.waits[name]
        if earlier.startswith(f"{mate} ")
    ]
    assert min(waiting) == first
