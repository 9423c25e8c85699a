"""What a tool that is made needs itself: its tools and stock are listed, made first, laid out.

With which tools a thing is made is common practice, no source.
"""

from __future__ import annotations

import re
from collections import defaultdict
from dataclasses import replace
from typing import Any

import pytest

from binder.api import Design, SmallWork, load_data
from binder.pages import Paragraph, text_of
from binder_making.sessions import Evening
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import PREFIX, ToolsFact, Whose
from binder_plugins.operations.aids.vocabulary import said_in, unread
from binder_plugins.operations.facts import Route
from binder_plugins.operations.jobs import piece_id
from binder_plugins.operations.made_page import made_pages
from binder_plugins.operations.planning import plan_work
from binder_plugins.operations.wanted_page import wanted_pages
from tests.plugins.operations.conftest import HEAD, Plan, without
from tests.plugins.operations.test_order import MODELS, design_of, plan_of
from tests.plugins.operations.test_stopped_and_held import KNOB

RECIPES: dict[str, Any] = load_data("binder_plugins.operations", "recipes.yaml")["recipes"]
# What a maker would reach for at each step: written down from its words alone.
STEPS = {
    r"\bgrind\b": "grinder",
    r"\bstone (its|the|both) (edge|face|flat|three|faces|flank)|\bstoned?\b": "oilstone",
    r"\bquench\b": "torch",
    r"with the die\b": "die",
    r"\btap \{thread\}": "tap",
    r"\bchamfer\b": "chamfering tool",
    r"\bpart off\b": "parting tool",
    r"\bsaw (through|across|from|and)\b": "saw",
    r"\b(draw-)?file (it|one|to|or)\b|\bfile away\b": "files",
    r"^turn (it|one|a|the|its|two)|\bface the bar\b": "knife tool",
}
WORDS = defaultdict(
    str,
    vice="vice",
    tap_drill="3.3 mm drill",
    thread="M4",
    groover_tool="grooving tool 1 mm wide",
    over_drill="4.1 mm drill",
)
TAPER = (
    "{material: brass, stock: 25 mm round bar, turned: [{name: foot, diameter: 25 mm, length:"
    " 5 mm}, {name: waist, taper: 22 mm to 16 mm, length: 20 mm}, {name: collar, diameter:"
    " 20 mm, length: 8 mm}]}"
)
RIDGED = (
    "  disc: {material: brass, stock: 20 mm round bar, turned: [{name: rim, diameter: 18 mm,"
    " length: 9 mm}], features: {ridge: {grooved: 0.6 mm, on: rim, at: middle, dummy: true}}}\n"
)


def designed(plan: Plan, text: str, workshop: str = "") -> Design:
    """A small spec, expanded, with its tools."""
    design = plan(HEAD + text, workshop).design
    assert design is not None
    return replace(design, facts=design.facts.plus(collect_tools(design).facts))


def tools_of(design: Design) -> ToolsFact:
    """The list of tools."""
    fact = design.facts.about(ToolsFact, "")
    assert fact is not None
    return fact


def evenings_of(design: Design) -> tuple[Evening, ...]:
    """The evenings of a small spec."""
    (plan, *_) = plan_work(design).facts
    return plan.evenings  # type: ignore[attr-defined, no-any-return]


def stub_of(design: Design) -> SmallWork:
    """The screwed stub that a knob is held on."""
    (found,) = (one for one in design.facts.all(SmallWork) if "screwed stub" in one.subject)
    return found


@pytest.mark.parametrize("name", RECIPES)
def test_the_tools_of_a_recipe_are_read_and_are_those_of_its_steps(name: str) -> None:
    recipe = RECIPES[name]
    tools = recipe["tools"].format_map(WORDS)
    assert said_in(tools)
    assert not unread(tools)
    listed = " | ".join(one.name for one in said_in(tools))
    # What is sawn is held for it.
    assert "hacksaw" not in tools or "vice" in listed
    # What another tool's steps only name, as a hardened end or a bought one, needs no tool here.
    for step in recipe["steps"]:
        for words, tool in STEPS.items():
            if re.search(words, step):
                assert tool in listed, (name, step, tool)


@pytest.mark.parametrize(
    ("more", "workshop", "tool"),
    [
        ("", "", "grooving tool 1 mm"),
        (RIDGED, "", "grooving tool 0.6 mm"),
        ("", without(cutters__parting_tool="{width: 1 mm, reach: 16 mm}"), "parting tool 1 mm"),
        ("", without(cutters__others="[knife tools, grooving tool of 1 mm]"), "grooving tool"),
        ("", without(cutters__others="[knife tools, grooving tool of 3 mm]"), "grooving tool 1 mm"),
    ],
)
def test_the_undercut_of_a_stub_has_a_tool_that_is_narrow_enough(
    more: str, workshop: str, tool: str, plan: Plan
) -> None:
    """The neck of M3 is 1 mm wide or narrower; the built-in parting tool cuts 2 mm."""
    design = designed(plan, more + KNOB % 5.5, workshop)
    stub = stub_of(design)
    fact = tools_of(design)
    assert tool in fact.by_piece[f"{PREFIX}{stub.subject}"]
    assert "with the grooving tool" in stub.steps[0] or "with the parting tool" in stub.steps[0]
    order = [piece_id(job) for evening in evenings_of(design) for job in evening.jobs]
    (known,) = (one for one in fact.tools if one.name == tool)
    if known.whose is Whose.MADE:
        assert order.count(f"{PREFIX}{tool}") == 1
        assert order.index(f"{PREFIX}{tool}") < order.index(f"{PREFIX}{stub.subject}")
    else:
        assert f"{PREFIX}{tool}" not in order


@pytest.mark.parametrize(
    ("workshop", "whose"),
    [
        ("", Whose.MADE),
        (without(cutters__others="[knife tools, pointed tool]"), Whose.OWNED),
        (without("machines/others/grinder"), Whose.HAD),
    ],
)
def test_the_tool_for_a_taper_behind_a_collar_is_one_like_the_others(
    workshop: str, whose: Whose, plan: Plan
) -> None:
    """A common knife tool strikes the collar with its end edge: it does not stand for it."""
    design = designed(plan, f"  part: {TAPER}\n", workshop)
    (tool,) = [one for one in tools_of(design).tools if one.name.startswith("pointed tool")]
    assert tool.whose is whose
    made = [one for one in design.facts.all(SmallWork) if one.subject == tool.name]
    assert bool(made) == (whose is Whose.MADE)
    assert all(one.buys for one in made)


def test_a_pin_between_webs_has_a_tool_that_clears_both(plan: Plan) -> None:
    """Its owned knife tools have one flank relieved: the other rubs on the web behind it."""
    crank = (
        "  part: {material: mild steel, stock: 40 mm round bar, turned: [{name: journal, diameter:"
        " 8 mm, length: 12 mm}, {name: pin, diameter: 6 mm, length: 12 mm, throw: 10 mm}]}\n"
    )
    fact = tools_of(designed(plan, crank))
    assert [one.whose for one in fact.tools if one.name == "narrow knife tool"] == [Whose.MADE]
    own = without(cutters__others="[narrow knife tool, knife tools]")
    fact = tools_of(designed(plan, crank, own))
    assert [one.whose for one in fact.tools if one.name == "narrow knife tool"] == [Whose.OWNED]


@pytest.mark.parametrize("model", MODELS)
def test_what_is_clamped_together_has_its_clamps(model: str) -> None:
    design = design_of(model)
    fact = next(one for one in collect_tools(design).facts if isinstance(one, ToolsFact))
    for route in design.facts.all(Route):
        for setup in route.setups:
            said = [act.what for act in setup.acts if re.search(r"clamp \d+ together", act.what)]
            names = fact.by_piece.get(f"{route.subject} {setup.number}", ())
            assert not said or "toolmaker's clamps" in names


@pytest.mark.parametrize("model", MODELS)
def test_what_a_tool_is_made_with_and_from_lies_ready_that_evening(model: str) -> None:
    design = design_of(model)
    told = collect_tools(design).facts
    fact = next(one for one in told if isinstance(one, ToolsFact))
    works = [one for one in (*told, *design.facts.all(SmallWork)) if isinstance(one, SmallWork)]
    evenings = plan_of(model).evenings
    seen = 0
    for work in works:
        (evening,) = (
            one for one in evenings if f"{PREFIX}{work.subject}" in map(piece_id, one.jobs)
        )
        earlier = [one.next_tools for one in evenings if one.number == evening.number - 1]
        ready = earlier[0] if earlier else evening.tools
        assert any(one.startswith(f"for the {work.subject}: ") for one in ready)
        wanted = fact.by_piece.get(f"{PREFIX}{work.subject}", ())
        assert set(wanted) <= set(ready)
        seen += len(wanted)
    assert seen > len(works)


@pytest.mark.parametrize("model", MODELS)
def test_one_tool_has_one_name(model: str) -> None:
    fact = next(one for one in collect_tools(design_of(model)).facts if isinstance(one, ToolsFact))
    assert [one.name for one in fact.tools if "parting tool" in one.name] == ["parting tool 2 mm"]


def test_what_the_words_of_a_setup_name_is_listed(plan: Plan) -> None:
    """A hole across a rod is set by a steel rule; the die's end is scribed."""
    part = (
        "  part: {material: mild steel, stock: 10 mm drawn rod, turned: [{name: rod, diameter:"
        " 10 mm, length: 60 mm}], features: {eye: {drilled: 3 mm, across: rod, at: middle, depth:"
        " through}, thread: {screwed: M10, on: rod, length: 20 mm}}}\n"
    )
    names = {one.name: one.whose for one in tools_of(designed(plan, part)).tools}
    assert names["rule"] is Whose.OWNED
    assert names["scriber"] is Whose.OWNED
    bare = without("measuring/rule", hand_tools="[files, scraper]")
    names = {one.name: one.whose for one in tools_of(designed(plan, part, bare)).tools}
    assert names["steel rule"] is Whose.HAD
    assert names["scriber"] is Whose.HAD


def test_a_tool_is_first_wanted_where_the_evenings_want_it_first(plan: Plan) -> None:
    """The disc comes before the knob in the spec; its tool may be wanted for the stub first."""
    design = designed(plan, RIDGED + KNOB % 5.5)
    whole = replace(design, facts=design.facts.plus(plan_work(design).facts))
    (section,) = wanted_pages(whole, ())
    rows = [row for block in section.blocks for row in getattr(block, "rows", ())]
    (first,) = (text_of(row[1]) for row in rows if text_of(row[0]) == "grooving tool 0.6 mm")
    order = [piece_id(job) for one in evenings_of(design) for job in one.jobs]
    (tool,) = (one for one in tools_of(design).tools if one.name == "grooving tool 0.6 mm")
    assert len(tool.uses) == 2
    assert first == min(tool.uses, key=lambda use: order.index(use[0]))[1]


def test_a_grooving_tool_that_is_bought_is_told_with_its_width(plan: Plan) -> None:
    design = designed(plan, RIDGED, without("machines/others/grinder"))
    names = {one.name: one.whose for one in tools_of(design).tools}
    assert names["grooving tool 0.6 mm"] is Whose.HAD


@pytest.mark.parametrize("model", MODELS)
def test_quenching_is_spoken_of_where_something_is_hardened(model: str) -> None:
    design = design_of(model)
    whole = replace(design, facts=design.facts.plus(collect_tools(design).facts))
    steps = [step for one in whole.facts.all(SmallWork) for step in one.steps]
    (section,) = made_pages(whole, ())
    words = " ".join(text_of(one.text) for one in section.blocks if isinstance(one, Paragraph))
    is_hardened = any("quench" in step or "harden" in step for step in steps)
    assert ("hardened" in words) is ("quench" in words) is is_hardened
    assert ("oil in a metal tin" in words) is any("quench in oil" in step for step in steps)


@pytest.mark.parametrize("model", MODELS)
def test_a_piece_that_is_parted_off_leaves_something_in_the_chuck(model: str) -> None:
    """15 mm in the jaws is little enough for 2 mm of parting tool: common practice, no source."""
    told = [one for one in collect_tools(design_of(model)).facts if isinstance(one, SmallWork)]
    for work in told:
        said = re.search(r"part off ([\d.]+) mm long", " ".join(work.steps))
        if said is not None and work.form:
            assert float(work.length) >= float(said[1]) + 2 + 15, work.subject


def test_of_two_drills_of_one_size_the_second_is_bought(plan: Plan) -> None:
    """A set holds one drill of each size; its pointed drill leads the one that is ground flat."""
    design = design_of(MODELS[1])
    told = collect_tools(design).facts
    fact = next(one for one in told if isinstance(one, ToolsFact))
    whose = {one.name: one.whose for one in fact.tools}
    assert whose["6.5 mm drill"] is whose["1.9 mm drill"] is Whose.OWNED
    assert [one.whose for one in fact.tools if one.name.startswith("second 1.9 mm drill")] == [
        Whose.HAD
    ]
    ground = next(
        one for one in told if isinstance(one, SmallWork) and "ground flat" in one.subject
    )
    assert any(one.startswith("6.5 mm drill") for one in ground.buys)


def test_a_cutter_is_not_bought_where_a_fly_cutter_is_made_in_its_place() -> None:
    fact = next(
        one for one in collect_tools(design_of(MODELS[0])).facts if isinstance(one, ToolsFact)
    )
    names = [one.name for one in fact.tools]
    assert any(one.startswith("fly cutter for") for one in names)
    assert not [one for one in names if one.startswith("gear cutter")]


@pytest.mark.parametrize("model", MODELS)
def test_what_an_act_fills_or_melts_in_lies_ready(model: str) -> None:
    design = design_of(model)
    fact = next(one for one in collect_tools(design).facts if isinstance(one, ToolsFact))
    filled = {
        "bond": "retaining compound",
        "silver-solder": "silver solder",
        "soft-solder": "soft solder",
    }
    for route in design.facts.all(Route):
        for setup in route.setups:
            ready = "; ".join(fact.by_piece.get(f"{route.subject} {setup.number}", ()))
            for act in setup.acts:
                what = filled.get(act.act, "")
                assert what in ready or "epoxy" in act.tool or "glue" in act.tool


@pytest.mark.parametrize("model", MODELS)
def test_a_stub_mandrel_tells_its_own_end(model: str) -> None:
    """A thread of half the bore or less: common practice, no source."""
    told = collect_tools(design_of(model)).facts
    stubs = [one for one in told if isinstance(one, SmallWork) and "stub mandrel" in one.subject]
    for work in stubs:
        bore = float(re.search(r"⌀([\d.]+)", work.subject)[1])  # type: ignore[index]
        thread = re.search(r"tap it M([\d.]+)", " ".join(work.steps))
        assert (thread is not None) == bool(work.buys)
        assert thread is None or float(thread[1]) <= bore / 2
        assert not any("where it is held" in step for step in work.steps)


def test_a_stub_mandrel_is_shorter_than_its_work() -> None:
    """Under a washer half a millimetre; 3 mm where the end is faced: common practice, no source.

    The spec's own: a cam of 8 mm, pulleys of three lands of 6 and a boss of 6.
    """
    told = collect_tools(design_of("tilt-hammer/tilt-hammer")).facts
    steps = {
        one.subject: " ".join(one.steps)
        for one in told
        if isinstance(one, SmallWork) and "stub mandrel" in one.subject
    }
    whole = 3 * 6 + 6
    for name, long in (("cam", 7.5), ("cam shaft", whole - 3), ("line shaft", whole - 0.5)):
        (found,) = [text for subject, text in steps.items() if subject.endswith(f"the {name}")]
        assert f"without shake, {long:g} mm long, so that" in found
