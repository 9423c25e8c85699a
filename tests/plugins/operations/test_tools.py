"""Every tool, fixture and gauge of a leaf is owned, made first, or to be had.

What a tool is made of and by which steps is common practice, no source; here it is tested that
none is missing, that none stands twice, and that what is made is made once and in time.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from binder.api import BarPlan, Design, SmallWork
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder.pages import text_of
from binder_plugins.cutlist.bars import plan_bars
from binder_plugins.operations import words
from binder_plugins.operations.aids.collecting import collect_tools, own_names
from binder_plugins.operations.aids.facts import ToolsFact, Whose
from binder_plugins.operations.aids.vocabulary import unread
from binder_plugins.operations.evening_pages import evening_pages, gates_told
from binder_plugins.operations.facts import Route, SetUp
from tests.plugins.operations.conftest import HEAD, Plan, without
from tests.plugins.operations.test_order import MODELS, SPECS, design_of, plan_of

INCH = SPECS / "workshops" / "inch.yaml"
# What an apprentice would call a tool, a fixture or a gauge: written down from the printed
# leaves, without a look at the program's own table.
NOUNS = (
    "V-block", "angle-plate", "parallels", "mandrel", "ring", "snap", "plug", "D-bit",
    "form-tool", "grooving-tool", "template", "undercut-tool", "punch", "file", "scraper",
    "scriber", "square", "hacksaw", "piercing-saw", "tenon-saw", "drill", "reamer", "taps", "die",
    "mill", "cutter", "countersink", "counterbore", "boring-bar", "boring-tool", "knurls",
    "chuck", "collets", "vice", "steady", "centre-drill", "hammer", "mallet", "pliers",
    "screwdriver", "torch", "iron", "caliper", "micrometer", "bush", "pad", "packing", "wrench",
    "lap", "knife-tool", "parting-tool", "chamfering-tool", "top-slide", "plane", "table",
)  # fmt: skip
# What stands for a tool under another name: soft jaws are pads, hole and bore gauges are plugs.
SAID = {
    "taps": "tap",
    "ring": "ring",
    "table": "table",
    "file": "file",
    "plug": "plug|micrometer by",
}
SPOKEN = re.compile(r"superglue|cigarette paper|template|flat plate|\ba peg\b|\bpegged|by a square")


@cache
def told(model: str, shop: Path | None) -> Design:
    """An example model in a workshop, expanded."""
    design = compiled(Job(SPECS / f"{model}.yaml", shop), Host.load(), Phase.CHECK).design
    assert design is not None
    return design


def tools_of(design: Design) -> ToolsFact:
    """The list of tools."""
    return next(one for one in collect_tools(design).facts if isinstance(one, ToolsFact))


def printed(setup: SetUp) -> list[str]:
    """The texts of a set-up that name tools, without what is told of the work."""
    grip = [setup.grip.holder, setup.grip.support]
    if "ring" in setup.grip.on:
        grip.append(setup.grip.on)
    acts = [text for act in setup.acts for text in (act.tool, act.measure)]
    return [text for text in (*grip, *acts) if text and not text.startswith("its ")]


def named(text: str) -> set[str]:
    """The nouns of a text."""
    plain = text.replace(" ", "-")
    return {
        noun
        for noun in NOUNS
        if re.search(rf"(^|-|/){noun}s?($|[-,;:.])", plain)
        and not (noun == "square" and re.search(r"square-to|key,-square|three-square", plain))
        and not (noun == "table" and "on-the-table" in plain)
        and not (noun == "plug" and "taper" in plain)
    }


@pytest.mark.parametrize("shop", [None, INCH], ids=["metric", "inch"])
@pytest.mark.parametrize("model", MODELS)
def test_no_tool_word_of_a_leaf_is_missing_from_the_list(model: str, shop: Path | None) -> None:
    design = told(model, shop)
    fact = tools_of(design)
    missing = []
    for route in design.facts.all(Route):
        for setup in route.setups:
            listed = " | ".join(fact.by_piece.get(f"{route.subject} {setup.number}", ()))
            for text in printed(setup):
                missing += [
                    (text, noun)
                    for noun in named(text)
                    if not re.search(SAID.get(noun, noun.replace("-", ".")), listed)
                ]
            spoken = [one for act in setup.acts for one in SPOKEN.findall(act.what)]
            missing += [
                (one, "spoken")
                for one in spoken
                if one.split()[-1].removesuffix("ged") not in listed
            ]
    assert not missing


@pytest.mark.parametrize("shop", [None, INCH], ids=["metric", "inch"])
@pytest.mark.parametrize("model", MODELS)
def test_each_tool_is_owned_made_or_had(model: str, shop: Path | None) -> None:
    design = told(model, shop)
    fact = tools_of(design)
    names = [one.name for one in fact.tools]
    assert len(names) == len(set(names)) > 10
    assert all(one.uses for one in fact.tools)
    made = {one.subject: one for one in collect_tools(design).facts if isinstance(one, SmallWork)}
    assert {one.name for one in fact.tools if one.whose is Whose.MADE} == set(made)
    for work in made.values():
        assert work.minutes > 0
        assert work.steps
        assert work.stock
        assert not re.search(r"[{}]", " ".join((work.subject, *work.steps)))


@pytest.mark.parametrize("model", MODELS)
def test_every_word_of_a_tool_is_understood(model: str) -> None:
    """What no row reads would be listed as it stands: these are all read."""
    design = told(model, None)
    holding = design.workshop.entry.holding
    own = [*design.workshop.entry.measuring, *holding.vices, *holding.chucks, *holding.collets]
    for route in design.facts.all(Route):
        for act in route.acts:
            for text in (act.tool, act.measure):
                for name in own:
                    text = text.replace(name, "")  # noqa: PLW2901
                assert text.startswith("its ") or not unread(text), (text, unread(text))


def test_every_tool_of_the_table_of_acts_is_understood() -> None:
    left = {tool: unread(tool) for row in words.table()["acts"].values() if (tool := row["tool"])}
    assert {tool for tool, unknown in left.items() if unknown} == set()


@pytest.mark.parametrize("model", MODELS)
def test_what_is_made_is_made_once_and_before_it_is_wanted(model: str) -> None:
    plan, fact = plan_of(model), tools_of(design_of(model))
    order = [job.split(", part ")[0] for evening in plan.evenings for job in evening.jobs]
    made = [one for one in fact.tools if one.whose is Whose.MADE]
    assert made
    for tool in made:
        place = order.index(f"tool {tool.name}")
        assert order.count(f"tool {tool.name}") == 1
        assert all(place < order.index(piece) for piece, _ in tool.uses if piece in order)


@pytest.mark.parametrize("model", MODELS)
def test_a_mandrel_is_turned_when_its_bore_is_there(model: str) -> None:
    """Common practice, no source: a stub mandrel is true only until it leaves the chuck."""
    plan, design = plan_of(model), design_of(model)
    order = [job.split(", part ")[0] for evening in plan.evenings for job in evening.jobs]
    for tool in tools_of(design).tools:
        if tool.name.startswith("stub mandrel"):
            piece = tool.uses[0][0]
            part, number = piece.rsplit(" ", 1)
            if int(number) > 1:
                assert order.index(f"{part} {int(number) - 1}") < order.index(f"tool {tool.name}")
            assert not plan.pieces[f"tool {tool.name}"].setup
            assert plan.pieces[f"tool {tool.name}"].goes_on


@pytest.mark.parametrize("model", MODELS)
def test_the_stock_of_what_is_made_stands_in_the_cut_list_once(model: str) -> None:
    design = design_of(model)
    whole = replace(design, facts=design.facts.plus(collect_tools(design).facts))
    pieces = [
        (piece.item, piece.count)
        for plan in plan_bars(whole).facts
        if isinstance(plan, BarPlan)
        for piece in plan.pieces
    ]
    sawn = [one for one in whole.facts.all(SmallWork) if one.form]
    assert sawn
    assert [pieces.count((one.subject, one.count)) for one in sawn] == [1] * len(sawn)


def test_gibs_and_their_screws_are_made_once() -> None:
    """A 2 mm screw 20 mm long and 15 mm to hold it by; three of them: common practice."""
    design = design_of("tilt-hammer/tilt-hammer")
    screws = design.facts.about(SmallWork, "gib screws, slide on bed")
    strip = design.facts.about(SmallWork, "gib, slide on bed")
    assert screws is not None
    assert strip is not None
    assert screws.count == 3
    assert [float(one) for one in (*screws.section, screws.length)] == [2, 35]
    plan = plan_of("tilt-hammer/tilt-hammer")
    jobs = [job for evening in plan.evenings for job in evening.jobs]
    for work in (screws, strip):
        assert jobs.count(f"tool {work.subject}") == 1
        assert plan.pieces[f"tool {work.subject}"].takes == work.minutes


@pytest.mark.parametrize("model", MODELS)
def test_all_that_is_laid_out_is_printed_and_the_first_evening_has_a_list(model: str) -> None:
    plan, design = plan_of(model), design_of(model)
    (section,) = evening_pages(replace(design, facts=design.facts.plus([plan])), ())
    said = " ".join(text_of(getattr(block, "text", ())) for block in section.blocks
                    if not isinstance(getattr(block, "text", ""), str))  # fmt: skip
    assert not re.search(r"and \d+ more", said)
    assert "Lay out before you start: " in said
    for evening, following in zip(plan.evenings, plan.evenings[1:], strict=False):
        made = {job.removeprefix("tool ") for job in following.jobs}
        assert "; ".join(one for one in evening.next_tools if one not in made) in said
    first = plan.evenings[0]
    assert "; ".join(one for one in first.tools if f"tool {one}" not in first.jobs) in said


PULLEY = (
    "{material: brass, stock: 20 mm round bar, "
    "turned: [{name: rim, diameter: 18 mm, length: 9 mm}],"
    " features: {bore: {reamed: 6 mm, on: rim, depth: through},"
    " groove: {grooved: 2 mm, on: rim, at: middle}}}"
)


@pytest.mark.parametrize(
    ("shop", "whose"),
    [
        ("", Whose.MADE),
        (without(cutters__others="[grooving tool of 2 mm]"), Whose.OWNED),
        (without("machines/others/grinder"), Whose.HAD),
    ],
)
def test_whose_a_tool_is_follows_from_the_workshop(shop: str, whose: Whose, plan: Plan) -> None:
    """A grooving tool is ground from a blank: without a grinder it is bought."""
    design = plan(f"{HEAD}  part: {PULLEY}\n", shop).design
    assert design is not None
    (tool,) = [one for one in tools_of(design).tools if one.name.startswith("grooving tool")]
    assert tool.whose is whose


CROSS = (
    "{material: mild steel, stock: 12 mm round bar,"
    " turned: [{name: rod, diameter: 10 mm, length: 30 mm}],"
    " features: {eye: {drilled: 3 mm, across: rod, at: middle, depth: through}}}"
)


@pytest.mark.parametrize(
    ("fixtures", "whose"), [("[one V-block]", Whose.OWNED), ("[parallels]", Whose.HAD)]
)
def test_a_fixture_is_owned_when_the_workshop_says_so(
    fixtures: str, whose: Whose, plan: Plan
) -> None:
    shop = without(holding__fixtures=fixtures)
    design = plan(f"{HEAD}  part: {CROSS}\n", shop).design
    assert design is not None
    (tool,) = [one for one in tools_of(design).tools if one.name == "V-block"]
    assert tool.whose is whose


def test_a_piece_to_set_the_micrometer_by_is_had_in_the_size_that_it_reads() -> None:
    """A pin of 2.5 mm, turned to 25 µm, is compared: the piece for that is on the list by size."""
    crane = design_of("wharf-crane/wharf-crane")
    fact = next(one for one in collect_tools(crane).facts if isinstance(one, ToolsFact))
    (known,) = [one for one in fact.tools if one.name.startswith("known piece of 2.5 mm")]
    assert known.whose is Whose.HAD
    assert [piece for piece, _ in known.uses] == ["handle_pin 1"]


def test_what_is_measured_of_one_piece_of_work_is_named_once() -> None:
    """A row reamed in one set-up and gauged in another is one task in the maker's note book."""
    said = "ream the bearings in line: bore, lower"
    gates = (said, "head sheave: bore", "ream the bearings in line: gap, bore")
    told = tuple(gates_told(gates))
    assert told == (f"{said}, gap", "head sheave: bore")


def test_names_of_one_length_stand_in_one_order(plan: Plan) -> None:
    """A set has another order on every run: what is laid out would be printed in another, too."""
    design = plan(
        f"{HEAD}  part: {{material: mild steel, stock: 8 mm round bar, cut: 9 mm}}\n"
    ).design
    assert design is not None
    names = own_names(design)
    assert names == sorted(names, key=lambda name: (-len(name), name))
    assert {"bench vice", "micrometer"} <= set(names)
