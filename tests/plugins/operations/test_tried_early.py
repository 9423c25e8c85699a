"""What is turned to a bore as measured comes behind the writing down of that bore.

That a mandrel is turned to the bore of its own work: common practice, no source.
"""

from __future__ import annotations

import pytest

from binder.api import SmallWork
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import PREFIX
from binder_plugins.operations.facts import Route
from tests.plugins.operations.test_order import MODELS, design_of, plan_of


@pytest.mark.parametrize("name", MODELS[:2])
def test_a_bore_is_written_down_before_a_mandrel_is_turned_to_it(name: str) -> None:
    design, plan = design_of(name), plan_of(name)
    turn: dict[str, int] = {}
    for evening in plan.evenings:
        for job in evening.jobs:
            turn[job.split(", part ", maxsplit=1)[0]] = len(turn)
    found = 0
    for route in design.facts.all(Route):
        for number, setup in enumerate(route.setups):
            if "mandrel" not in setup.grip.holder or not setup.grip.on.startswith("its bore"):
                continue
            written = [
                one.number
                for one in route.setups[:number]
                if any(act.act == "measure" and act.feature == "bore" for act in one.acts)
            ]
            assert written, (route.subject, setup.number)
            for work in (one for one in collect_tools(design).facts if isinstance(one, SmallWork)):
                if work.is_to_bore and work.of == route.title:
                    made = turn[f"{PREFIX}{work.subject}"]
                    assert turn[f"{route.subject} {written[0]}"] < made
                    found += 1
    assert found


@pytest.mark.parametrize("name", MODELS)
def test_a_mandrel_is_trued_before_the_teeth_are_cut(name: str) -> None:
    for work in collect_tools(design_of(name)).facts:
        if isinstance(work, SmallWork) and work.subject.startswith("mandrel"):
            assert "true within 0.02 mm" in work.steps[-1]
            assert not any("teeth are cut" in step for step in work.steps)
