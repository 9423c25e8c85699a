"""What a task measures and hardens with lies ready for it: common practice, no source.

A step that tells a size to set or to read is not begun without the instrument that reads it.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from binder.api import Design
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.buildorder.timing import time_tasks
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact

SPEC = Path(__file__).parents[3] / "specs" / "tilt-hammer" / "tilt-hammer.yaml"


@pytest.fixture(scope="module")
def hammer(host: Host) -> Design:
    design = compiled(Job(SPEC), host, Phase.CHECK).design
    assert design is not None
    return replace(design, facts=design.facts.plus(time_tasks(design).facts))


@pytest.fixture(scope="module")
def laid_out(hammer: Design) -> ToolsFact:
    return next(one for one in collect_tools(hammer).facts if isinstance(one, ToolsFact))


@pytest.mark.parametrize(
    ("task", "tools"),
    [
        # A bought wheel to the bore, outside and teeth that it has.
        ("measure the brass clock wheel on the line shaft", {"digital caliper"}),
        # A float that is set by a distance over faces, and tried by push and pull.
        ("assemble the tilt hammer", {"digital caliper", "dial indicator"}),
        ("assemble the base with the line shaft", {"digital caliper", "dial indicator"}),
    ],
)
def test_a_task_has_its_instruments(
    task: str, tools: set[str], hammer: Design, laid_out: ToolsFact
) -> None:
    (ident,) = [one.id for one in hammer.tasks.values() if one.title == task]
    assert tools <= set(laid_out.by_piece[ident])


@pytest.mark.parametrize(
    ("made", "tools"),
    [
        # Cut to 187.1 mm, longer than a caliper opens.
        ("belt, pulleys", {"rule"}),
        # Red hot into oil.
        ("D-bit ⌀6 mm", {"tongs", "metal tin with a lid"}),
    ],
)
def test_what_is_made_has_its_tools(made: str, tools: set[str], laid_out: ToolsFact) -> None:
    assert tools <= {one.name for one in laid_out.tools if made in {use[1] for use in one.uses}}
