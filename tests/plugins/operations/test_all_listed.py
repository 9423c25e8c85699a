"""What the words of any act take in the hand is listed, and lies ready for that act.

The nouns were written down from the printed leaves, without a look at the program's own table.
What is owned, made or bought is common practice, no source.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import cache

import pytest

from binder.api import Design, HardwareFact, SmallWork, SupplyFact, TaskTime
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import PREFIX, ToolsFact, Whose
from binder_plugins.operations.facts import Route
from tests.plugins.operations.test_order import MODELS, design_of

# A noun as acts use it, and how a list may call it.
NOUNS = {
    r"pencil": "pencil",
    r"(?<!old )knife(?! tool)(?! blade)": "knife",
    r"whipped": "thread to whip",
    r"candle wax": "candle wax",
    r"marking blue|engineer's blue": "blue",
    r"cigarette paper|slip of paper": "paper",
    r"fine paper": "abrasive paper",
    r"(flag of|masking) tape": "tape",
    r"card or copper": "card",
    r"iron wire": "wire",
    r"(wood block|pieces? of wood|pads of wood|on wood( packing)?\b)": "wood",
    r"\bpegged\b": "pegs",
    r"wire cutters": "cutters",
    r"wet rag": "rag",
    r"superglue": "superglue",
    r"in the vice": "vice",
    r"washer (no )?wider": "washers",
    r"file the end": "files",
    r"straight edge": "straight edge",
    r"by a square": "square",
    r"flat dolly": "dolly|hammer on",
    r"shim\b": "shim",
    r"spirit\b(?! level)": "spirit",
}
# A drill that the steps of a tool to be made ask for by its size.
DRILLED = re.compile(r"\b(?:drill|open it)\b(?! and ream)[^;,]*?⌀([\d.]+ mm)")


@cache
def _listed(model: str) -> Design:
    design = design_of(model)
    timed = replace(design, facts=design.facts.plus(time_tasks(design).facts))
    return replace(timed, facts=timed.facts.plus(collect_tools(timed).facts))


def _tools(design: Design) -> ToolsFact:
    found = design.facts.about(ToolsFact, "")
    assert found is not None
    return found


def _words(design: Design) -> Iterator[tuple[str, str]]:
    """Each piece of work with what its act, its grip or its step says."""
    for route in design.facts.all(Route):
        for setup in route.setups:
            piece = f"{route.subject} {setup.number}"
            yield piece, f"{setup.grip.holder} {setup.grip.on} {setup.datum} {setup.true}"
            for act in setup.acts:
                yield piece, f"{act.what}; {act.spoils}; {act.tool}; {act.measure}"
    for work in design.facts.all(SmallWork):
        yield f"{PREFIX}{work.subject}", "; ".join(work.steps)
    for time in design.facts.all(TaskTime):
        for line in time.lines:
            yield time.subject, line.said


@pytest.mark.parametrize("model", MODELS)
def test_what_an_act_takes_in_hand_lies_ready(model: str) -> None:
    design = _listed(model)
    laid = _tools(design).by_piece
    wanted = [
        (piece, match.group(), called)
        for piece, said in _words(design)
        for noun, called in NOUNS.items()
        for match in re.finditer(noun, said)
    ]
    assert wanted
    missing = {
        (piece, noun)
        for piece, noun, called in wanted
        if not re.search(called, " | ".join(laid.get(piece, ())))
    }
    assert not missing


@pytest.mark.parametrize("model", MODELS)
def test_what_lies_ready_is_owned_made_or_bought(model: str) -> None:
    """What stands in the lists of the tools, or among the things to buy."""
    design = _listed(model)
    tools = {one.name: one.whose for one in _tools(design).tools}
    made = {one.subject for one in design.facts.all(SmallWork)}
    used = {one.what for one in design.facts.all(SupplyFact)}
    nowhere = {
        name
        for names in _tools(design).by_piece.values()
        for name in names
        if name not in tools and name not in used and not _is_bought(name, design)
    }
    assert not nowhere
    assert {name for name, whose in tools.items() if whose is Whose.MADE} <= made


def _is_bought(name: str, design: Design) -> bool:
    """What a joint is filled, melted or held with, or what the spec itself buys."""
    bought = {one.title for one in design.bought.values()}
    if name.startswith("clips of the "):
        return any("clip" in one.what for one in design.facts.all(HardwareFact))
    return name in bought or bool(
        re.search("solder|brazing|pickle|compound|epoxy|glue|spirit|steel screw|card", name)
    )


@pytest.mark.parametrize("model", MODELS)
def test_a_drill_in_the_steps_of_a_tool_is_listed(model: str) -> None:
    design = _listed(model)
    laid = _tools(design).by_piece
    asked = [
        (work.subject, size)
        for work in design.facts.all(SmallWork)
        for step in work.steps
        for size in DRILLED.findall(step)
    ]
    assert all(f"{size} drill" in laid[f"{PREFIX}{name}"] for name, size in asked), asked


@pytest.mark.parametrize("model", MODELS)
def test_a_drill_in_the_tailstock_is_held_by_a_chuck(model: str) -> None:
    """The built-in workshop calls its only one the keyed chuck."""
    design = _listed(model)
    laid = _tools(design).by_piece
    pieces = [
        f"{route.subject} {setup.number}"
        for route in design.facts.all(Route)
        for setup in route.setups
        if setup.place == "lathe" and any(act.tool.endswith(" drill") for act in setup.acts)
    ]
    assert pieces
    assert all("keyed chuck" in laid[piece] for piece in pieces)


def test_a_cord_is_laid_out_with_what_cuts_and_whips_it() -> None:
    design = _listed("wharf-crane/wharf-crane")
    laid = _tools(design).by_piece["assemble winch"]
    wanted = {"braided cord", "sharp knife", "bench vice", "files", "marking blue"}
    assert wanted <= set(laid)
    (thread,) = [one for one in design.facts.all(SupplyFact) if "whip" in one.what]
    assert thread.what in laid
    assert thread.of == design.tasks["assemble winch"].title


def test_the_load_of_a_crane_is_weighed_out_for_each_of_its_tests() -> None:
    """Run in under its shares, tested under all of it, and once more when it is up for good."""
    design = _listed("wharf-crane/wharf-crane")
    laid = _tools(design).by_piece
    (tool,) = [one for one in _tools(design).tools if one.name.startswith("load of")]
    assert tool.name.startswith("load of 1.5 kg, weighed")
    assert tool.whose is Whose.HAD
    assert {piece for piece, names in laid.items() if tool.name in names} == {
        "run crane",
        "test crane",
        "close crane",
    }


def test_a_rivet_snap_is_listed_with_what_sinks_and_polishes_its_cup() -> None:
    """DIN 660: the head of a 1 mm rivet, 1.8 mm across and 0.6 mm high, is of a ball of 1.95 mm."""
    laid = _tools(_listed("wharf-crane/wharf-crane")).by_piece
    for name in ("rivet snap ⌀1 mm", "dolly hollowed to the rivet's head ⌀1 mm"):
        assert {"1.9 mm drill", "grinder"} <= set(laid[f"{PREFIX}{name}"])
        assert any("abrasive paper" in one for one in laid[f"{PREFIX}{name}"])
    assert "1.1 mm drill" in laid[f"{PREFIX}rivet set ⌀1 mm"]


def test_the_key_lies_ready_where_a_part_is_tried_on_with_its_screw() -> None:
    """The keeper is screwed on to the pin of the jack's screw while that is in the chuck."""
    design = _listed("screw-jack/screw-jack")
    (tried,) = [
        f"{route.subject} {setup.number}"
        for route in design.facts.all(Route)
        for setup in route.setups
        if any("its screw" in act.what for act in setup.acts)
    ]
    assert "screwdriver or key" in _tools(design).by_piece[tried]
